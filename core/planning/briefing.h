// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/dates.h"

namespace leadline {

/// The trade's common hand signals that a guest is shown, the most needed first.
/// @source  "Common Hand Signals for Recreational Scuba Diving", Recreational Scuba Training Council,
///          2005 (read as repeated elsewhere); look, come_here and the numbers from memory
enum class HandSignal {
    ok,               ///< asked and answered alike
    something_wrong,
    ears,
    stop,
    up,               ///< a thumb up ends the dive: it never means "good"
    down,
    low_on_air,
    out_of_air,
    share_air,
    look,
    come_here,
    stay_together,
    hold_hands,
    level_off,
    slow_down,
    cold,
    how_much_air,
    ok_at_surface,
    help_at_surface,
};
inline constexpr int hand_signal_count = 19;

/// What a guest practises with the instructor before the tour.
enum class Skill {
    breathe_from_mouthpiece,  ///< at the surface, face in the water
    clear_mask,               ///< of a little water
    clear_mouthpiece,         ///< by breathing out and by the purge button
    find_mouthpiece,          ///< when it has come out of the mouth
    clear_ears,
    fill_and_empty_bcd,
    share_air,
    float_at_surface,
};
inline constexpr int skill_count = 8;

/// The skills of a session where nobody has chosen others: all.
std::vector<Skill> standard_skills();

/// In which units a guest thinks. `house`: as the window shows them, and as the gauges read.
enum class UnitHabit { house, metric, imperial };

/// Which signals a guest has shown to know, and when.
struct BriefingCheck {
    std::vector<HandSignal> understood;  ///< each once, in the order of HandSignal
    std::optional<Date> checked_on;      ///< none: not asked yet
    std::string language;                ///< BCP 47 tag in which it was asked; may be empty
    friend bool operator==(const BriefingCheck&, const BriefingCheck&) = default;
};

/// Notes a signal as understood, or takes the note back; keeps the order.
void set_understood(BriefingCheck& check, HandSignal signal, bool understood);
[[nodiscard]] bool is_understood(const BriefingCheck& check, HandSignal signal);

/// The signals of the short check before the water: those that a first dive cannot do without.
std::vector<HandSignal> signals_to_know();

}  // namespace leadline
