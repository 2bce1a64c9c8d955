// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/physics/water.h"

namespace leadline {

/// Pressure across the eardrum at which muscles can no longer open the Eustachian tube ("locking"):
/// 80 mmHg, the lower end of the published 80 to 90 mmHg, which is the safe side.
/// @source  90 mmHg: quoted in scuba medicine question-and-answer text (by memory Martin, Scuba
///          Diving Explained); 1.2 m of sea water: Atlas of Emergency Medicine, barotitis media;
///          80 to 90 mmHg: aviation physiology teaching material
inline constexpr Pascals eustachian_tube_locking = millimeters_of_mercury(80.0);

/// Lowest pressure at which normal eardrums tore in the laboratory, 49.0 kPa (0.5 kp/cm2).
/// Scarred drums tore from 29.4 kPa. Pain and injury come far earlier: a warning figure only.
/// @source  Jensen & Bonding, Acta Otolaryngologica 113 (1993) 62-67 (abstract)
inline constexpr Pascals eardrum_rupture_lowest = Pascals(49000.0);
inline constexpr Pascals scarred_eardrum_rupture_lowest = Pascals(29400.0);

/// When to clear the ears on the way down.
struct ClearingLadder {
    Meters step{};                  ///< clear at least once in every `step` of descent
    std::vector<Depth> clear_at;    ///< step, 2 step, ... down to the deepest point
    Seconds interval{};             ///< time between two clearings at the descent rate
    Pascals largest_difference{};   ///< across the drum just before a clearing: rho g step
    Pascals locking = eustachian_tube_locking;
    Depth locks_at{};               ///< depth at which the tube locks if never cleared from 0 m
    Pascals uncleared_at_bottom{};  ///< difference at the deepest point without any clearing
};

/// The ladder for a descent to `deepest`. The ear is taken as a rigid cavity closed between two
/// clearings; the drum's own give (which lowers the difference a little) is left out: safe side.
///
/// @param step          0.1 to 1 m
/// @param deepest       0 to 60 m
/// @param descent_rate  1 to 30 m/min
/// @returns the ladder; ErrorCode::out_of_range naming the input otherwise
/// @source  hydrostatics; thresholds above
Result<ClearingLadder> clearing_ladder(const WaterColumn& water, Meters step, Depth deepest,
                                       MetersPerMinute descent_rate);

}  // namespace leadline
