// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/body/breathing.h"
#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// What is known of a guest and the day, as far as it bears on breathing.
struct BreathingFacts {
    BreathingClass breathing = BreathingClass::average;
    std::optional<LitersPerMinute> measured;  ///< RMV of an own past dive, 5 to 100 L/min
    std::optional<Kilograms> body_mass;       ///< 15 to 250 kg
    std::optional<int> dives_before;          ///< 0 to 20 000
    Kelvins water{293.15};                    ///< -2 to 36 C
    std::optional<double> suit_millimeters;   ///< 0 to 20 mm; none: taken as right for the water
    int current = 0;                          ///< 0 none, 1 slight, 2 moderate, 3 strong
};

inline constexpr double thickest_suit_millimeters = 20.0;

/// The part of sigma that everybody in the water shares; see breathing_spread().
inline constexpr double shared_breathing_sigma = 0.12;

/// RMV of a guest as a lognormal distribution: RMV = median exp(shared S + own E), with S one
/// standard normal number for the whole session (sea, briefing, visibility: what all feel) and E one
/// for each guest. Two guests' logarithms are correlated by
/// shared^2 / sqrt((shared^2 + own_1^2) (shared^2 + own_2^2)), 0.2 for two of whom nothing is known.
struct BreathingSpread {
    LitersPerMinute median{};
    double shared_sigma = 0.0;
    double own_sigma = 0.0;
    double mass_factor = 1.0;     ///< in `median` already; so are the next two
    double cold_factor = 1.0;
    double current_factor = 1.0;
    [[nodiscard]] double sigma() const;  ///< of ln RMV, both parts together
};

/// Suit in millimetres of foam that goes with a water temperature: 3 from 24 C, 5 from 21 C, 7 from
/// 16 C, 8 (a dry suit) below. Common practice, no source; retailers differ by a step.
double usual_suit_millimeters(Kelvins water);

/// The prior of a guest's RMV.
///
/// Centre: the planning RMV of the class, or the measured one. Factors never make it smaller, so an
/// unknown guest is never planned with less than the class says: the safe side.
///  - mass: (m / 75 kg)^0.75 above 75 kg, for a child (m / 40 kg)^0.75 above 40 kg. Exponent: Kleiber,
///    Body size and metabolic rate, Physiol. Rev. 27 (1947) 511-541 (from memory); that breathing
///    follows metabolism, and the two masses: common practice, no source
///  - cold: 1.1 for each step by which the suit is thinner than usual_suit_millimeters(), at most
///    three steps, and at least 1.1 below 16 C. Common practice, no source
///  - current: 1, 1.05, 1.15, 1.3. Common practice, no source; that swimming harder costs this much and
///    more: Dwyer & Lanphier, Oxygen consumption in underwater swimming (threefold oxygen uptake from
///    0.5 to 1.2 knots)
/// Mass is in a measured RMV already. The cold and the current of the day it was measured are too, but
/// nobody knows them: today's come on top, the safe side.
///
/// Spread: sigma of ln RMV, 0.27 in all where nothing is known, which puts a factor of two between
/// the 10 % and the 90 % breather; 0.30 nervous, 0.22 calm or 20 and more dives, 0.15 measured.
/// Common practice, no source; divers with fewer than 100 dives at one and the same work spread by
/// 7.1 of 31.5 L/min, sigma 0.22 ("Diving ergospirometry with suspended weights", secondary summary).
/// The shared part is 0.12 of it: common practice, no source.
///
/// @returns the spread; out_of_range naming the fact otherwise
/// @tests   tests/reference/breathing_spread.csv
Result<BreathingSpread> breathing_spread(const BreathingFacts& facts);

/// RMV that a share of such guests stay below.
/// @param share  1e-6 to 1 - 1e-6
Result<LitersPerMinute> rmv_quantile(const BreathingSpread& spread, double share);

}  // namespace leadline
