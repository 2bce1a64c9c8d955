// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"
#include "core/physics/water.h"

namespace leadline {

/// What a depth does to air in something soft: a balloon, or lungs that breathe.
struct AirAtDepth {
    Pascals pressure{};       ///< absolute
    double shrinks_to = 1.0;  ///< volume here as a share of that at the surface, at most 1
    /// Volume at the surface of what is filled here, a multiple of 1 or more; also by how often the
    /// pressure here is that at the surface.
    double swells_to = 1.0;
};

/// Both demonstrations, the balloon and the held breath, take their figures from here.
/// @param depth  0 to 60 m
/// @validity  an ideal gas at one temperature; what holds the air pulls on it by nothing
/// @source  Boyle's law; U.S. Navy Diving Manual, chapter 2
/// @tests   tests/reference/gas_laws.csv
AirAtDepth air_at_depth(const WaterColumn& water, Depth depth);

}  // namespace leadline
