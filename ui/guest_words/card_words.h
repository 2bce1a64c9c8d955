// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/guest_words/guest_language.h"

namespace leadline {

/// The fixed words of a guest's card. At most 120 words stand on a card with all that is filled in,
/// and a child of ten reads the English ones with ease; a test measures both.
enum class CardWord {
    meet,             ///< before day and time
    with,             ///< before the instructor's name
    low_on_air,       ///< above the pressure
    signal_at_once,   ///< below it
    deepest,
    time,
    never_hold_breath,
    breath_reason,    ///< goes with the growth "×1.8"
    ears,             ///< "%1" a step of descent, "%2" how far to go up
    stay_close,
    no_shame,
    at_the_top,
    not_good,         ///< beside the thumb up: it does not mean "good"
    no_flying,        ///< "%1" hours
    watch_for,        ///< for 48 hours
    call,             ///< before the emergency number
    understood,       ///< beside a box to tick
    standing,         ///< a planning aid; the instructor decides
    bar,
    psi,
    meters,
    feet,
    minutes,
    kilograms,
    pounds,
    liters,
    cubic_feet,
};

QString card_word(CardWord word, const GuestTongue& tongue);

}  // namespace leadline
