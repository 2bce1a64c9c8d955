// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
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

/// Pressure across the eardrum at which the tube may need to be opened: from 10 mmHg, 30 mmHg at
/// the most; usual after about 25 cm of descent. Discomfort begins here: the time to clear is
/// before.
/// @source  hosted diving-medicine text, chapter on middle ear barotrauma of descent (read; by
///          memory after Edmonds et al., Diving and Subaquatic Medicine)
inline constexpr Pascals ear_opening_least = millimeters_of_mercury(10.0);
inline constexpr Pascals ear_opening_most = millimeters_of_mercury(30.0);
inline constexpr Meters ear_opening_usual_descent{0.25};

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

/// Longest step between two clearings that uses no more than a share of the locking pressure,
/// taken at 60 m, where a metre weighs most: the safe side. For half of it about 0.53 m in the sea.
///
/// @param margin  share of `eustachian_tube_locking` that may be used, 0.1 to 1
/// @returns the step; ErrorCode::out_of_range otherwise
/// @source  hydrostatics; threshold above. Which share to use: common practice, no source
Result<Meters> largest_clearing_step(const WaterColumn& water, double margin);

/// A corner of a diver's way, straight lines between.
struct WayPoint {
    Minutes time{};
    Depth depth{};
};

/// A moment of a descent as the middle ear meets it.
struct EarPoint {
    Minutes time{};
    Depth depth{};
    Pascals difference{};  ///< ambient less middle ear; going up, air leaves by itself: never negative
};

/// The difference across the eardrum over a way down, for a chart: straight lines between points; a
/// clearing is two points at one time.
struct EarTrace {
    std::vector<EarPoint> cleared;       ///< with the clearings asked for
    std::vector<EarPoint> never_cleared; ///< had the diver not cleared at all
    Pascals largest{};                   ///< of `cleared`
    /// Where the difference first came to `eustachian_tube_locking`: from there on the tube does
    /// not open any more, and only going up helps. None: it never did.
    std::optional<Depth> locked_at;
};

/// The trace when the ears are cleared each time another `step` has been gone down. Rigid middle
/// ear: see clearing_ladder().
///
/// @param way   2 to 100 corners, times from 0 to 240 min and increasing, depths 0 to 60 m
/// @param step  0.1 to 20 m (steps beyond the locking show what they lead to)
/// @returns the trace; ErrorCode::out_of_range, bad_count or time_not_increasing otherwise
/// @source  hydrostatics; thresholds above. That air leaves by itself going up: common knowledge of
///          diving medicine, from memory; the 10 to 30 mmHg it can take are left out, which makes
///          the next descent begin with too high a difference, the safe side
Result<EarTrace> ear_trace_by_step(const WaterColumn& water, const std::vector<WayPoint>& way,
                                   Meters step);

/// The same when the ears are cleared every so many seconds from the way's start on.
/// @param interval  1 to 600 s
Result<EarTrace> ear_trace_by_interval(const WaterColumn& water, const std::vector<WayPoint>& way,
                                       Seconds interval);

/// The plain descent: from the surface to `deepest` at a rate.
/// @param deepest  0.1 to 60 m
/// @param rate     1 to 30 m/min
/// @returns two corners; ErrorCode::out_of_range naming the input otherwise
Result<std::vector<WayPoint>> straight_descent(Depth deepest, MetersPerMinute rate);

}  // namespace leadline
