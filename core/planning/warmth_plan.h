// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/water.h"
#include "core/planning/ids.h"
#include "core/planning/session.h"

namespace leadline {

/// What is missing for an estimate of warmth.
enum class WarmthGap { none, body_mass, body_height, suit, outside_range };

/// How long a guest stays warm on the planned dive, were the group to stay at the depth from which
/// the final ascent starts, until the limits of core/body/warmth.h: a core of 36 C, or a net loss
/// of 3 kcal/kg. People feel cold long before (`chilled`). An estimate: the shiver or the sign of a
/// guest ends the dive. No minutes: later than 240 min.
struct GuestWarmth {
    GuestId guest;
    WarmthGap gap = WarmthGap::none;  ///< the rest holds only for none
    std::optional<Minutes> low;       ///< towards poor fit, lean, still: the safe end of the band
    std::optional<Minutes> middle;
    std::optional<Minutes> high;
    std::optional<Minutes> chilled;           ///< the guest begins to feel cold, middle case
    double suit_millimeters = 0.0;            ///< read from the suit's label
    double suit_clo_at_surface = 0.0;
    double suit_clo_at_depth = 0.0;           ///< at the deepest planned point
    double heat_loss_watts = 0.0;             ///< after ten minutes at depth, middle case
    double core_fall_kelvin = 0.0;            ///< over the planned dive, middle; below 0: a rise
};

/// The guest's warmth. Age from the birth date on the session's date; none: an adult, or a child of 12
/// where the guest is said to breathe as a child. Breathing by the guest's planning RMV.
///
///     end      fit of the suit   body fat   oxygen uptake of an 80 kg swimmer, still / touring
///     low      poor              low        0.55 / 0.55 L/min
///     middle   usual             middle     0.64 / 0.95
///     high     good              high       0.73 / 1.05
///
/// The band's low and high cases go 1/sqrt(3) of the way from the middle to these ends, in all three at
/// once: independent spreads add as squares (JCGM 100:2008, 5.1.2). Staying at depth takes the touring
/// uptake where the profile has a tour, else the still one. Oxygen: at rest in water 0.64 +/- 0.09 (Knafelc 1989), towed in a wetsuit 1.05 (Arieli et al.
/// 1997); 0.95 for a slow tour is common practice, no source. Skills are taken as still. Should
/// another case end before the low one (it has not been seen), the times are put in order: the
/// earliest is low.
///
/// @param session  passes check(session); `guest` is one of its guests, `water` its column
/// @returns the estimate, or its gap: outside_range where a value leaves the range of
///          core/body/composition.h, suit.h or warmth.h (such as a body mass index over 45)
/// @tests   tests/planning/warmth_plan_test.cpp, tests/reference/warmth.csv
GuestWarmth plan_guest_warmth(const Session& session, const Guest& guest,
                              const WaterColumn& water);

}  // namespace leadline
