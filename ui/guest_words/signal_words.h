// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/planning/briefing.h"
#include "ui/guest_words/guest_language.h"

namespace leadline {

/// The picture of a signal, a resource: ":/leadline/signals/low-on-air.svg".
QString signal_picture(HandSignal hand_signal);
/// Its caption on a card: a word or two.
QString signal_caption(HandSignal hand_signal, const GuestTongue& tongue);
/// What it tells, as a short sentence: "I am low on air".
QString signal_meaning(HandSignal hand_signal, const GuestTongue& tongue);
/// How it is made: "A closed fist at the chest."
QString signal_making(HandSignal hand_signal, const GuestTongue& tongue);
/// Stands between the signs of a number where reading starts on the right: the first sign is the
/// rightmost, and nobody takes 120 for 021.
inline constexpr QChar arrow_to_next_sign(0x2190);

/// The picture of a skill, a resource: ":/leadline/skills/clear-mask.svg".
QString skill_picture(Skill skill);
QString skill_name(Skill skill, const GuestTongue& tongue);
/// What it is for, as a short sentence.
QString skill_purpose(Skill skill, const GuestTongue& tongue);

/// A piece of kit that a guest is given.
enum class KitPart { suit, bcd, fins, mask, mouthpiece, weights, cylinder, gauge };
inline constexpr int kit_part_count = 8;
/// ":/leadline/kit/bcd.svg".
QString kit_picture(KitPart part);
QString kit_name(KitPart part, const GuestTongue& tongue);
/// What it does, as a short sentence.
QString kit_purpose(KitPart part, const GuestTongue& tongue);

}  // namespace leadline
