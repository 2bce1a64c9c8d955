// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/physics/water.h"

namespace leadline {

/// Air of the balloon that is shown to guests, at the pressure where it is filled: an example, about
/// what a grown person's lungs hold. Common practice, no source.
inline constexpr Liters shown_balloon{6.0};

/// A soft balloon at a depth, and what its air does. Lungs that are held shut would want the same
/// room on the way up and cannot have it: they tear.
struct BalloonAt {
    Depth depth;
    Pascals pressure{};        ///< absolute
    double shrinks_to = 1.0;   ///< volume here as a share of that at the surface, at most 1
    double swells_to = 1.0;    ///< volume at the surface of what is filled here, a multiple of 1 or more
    Liters taken_down{};       ///< volume here when filled with shown_balloon at the surface
    Liters taken_up{};         ///< volume at the surface when filled with shown_balloon here
};

/// The balloon at the surface, at 5 m, at 10 m and at the deepest point, in the order of depth; a
/// deepest point within 0.5 m of one of them takes its place.
///
/// The rubber's own pull is left out (a few hundred pascals), and so is any change of temperature.
///
/// @param deepest  0 to 60 m
/// @returns the balloons; out_of_range for another depth
/// @source  Boyle's law; U.S. Navy Diving Manual, chapter 2
/// @tests   tests/reference/gas_laws.csv
Result<std::vector<BalloonAt>> balloon_at_depths(const WaterColumn& water, Depth deepest);

}  // namespace leadline
