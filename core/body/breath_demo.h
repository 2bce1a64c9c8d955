// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/physics/water.h"

namespace leadline {

/// What a depth does to the air that somebody takes along: the state of a balloon, of lungs, of the
/// middle ear and of a mask, for showing it to guests.
struct BreathDemo {
    Depth depth;
    Pascals pressure{};           ///< absolute
    double pressure_ratio = 1.0;  ///< of `pressure` to that at the surface: 1 and more
    /// Of a soft balloon that was filled and tied at the surface, as a share of its volume there:
    /// 1 at the surface, less below. Its skin's own pull is left out.
    double balloon_volume = 1.0;
    /// Its width as a share of that at the surface: the cube root of the volume.
    double balloon_width = 1.0;
    /// By how much a breath taken and held here grows on the way to the surface.
    double held_breath_growth = 1.0;
    /// The ascent after which held, full lungs can tear; none: the surface comes first, which is no
    /// promise (see HeldBreathLimit).
    std::optional<Meters> danger_ascent;
    /// Across the eardrum had the ears not been cleared since the surface; also inside a mask into
    /// which nobody breathed out, were it rigid: the most it can be.
    Pascals uncleared{};
};

/// The state at a depth.
///
/// @param depth  0 to 60 m
/// @returns the state; ErrorCode::out_of_range naming the depth otherwise
/// @validity  Boyle's law: an ideal gas at one temperature. To 60 m air departs from it by less
/// than
///            0.3 % (core/physics/air.h)
/// @source    Boyle's law; U.S. Navy Diving Manual, chapter 2; hydrostatics (core/physics/water.h);
///            thresholds: core/body/lungs.h
/// @tests     tests/reference/gas_laws.csv, tests/reference/breath_demo.csv
Result<BreathDemo> breath_demo(const WaterColumn& water, Depth depth);

}  // namespace leadline
