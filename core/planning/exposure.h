// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/water.h"
#include "core/planning/ids.h"
#include "core/planning/session.h"

namespace leadline {

/// How an earlier dive, of which only depth, time and ascents are known, is taken: down at once,
/// at the deepest point for all of its time, the ascents on top without credit for the gas lost.
/// Common practice, no source, but for the ascent: U.S. Navy Diving Manual, 30 feet a minute, rounded
/// down. Whether it needed a stop is judged at the lower of sea level and the site's own pressure.
inline constexpr MetersPerMinute assumed_descent_rate{30.0};
inline constexpr MetersPerMinute assumed_ascent_rate{9.0};
inline constexpr Minutes assumed_surface_time{1.0};
/// Earlier dives are taken to have been in water at least this dense, that of salty seas.
inline constexpr KilogramsPerCubicMeter assumed_water_density{1030.0};
/// Dives of this many days before the session's count; a week leaves 0.002 % even of the slowest
/// tissue.
inline constexpr int exposure_days = 7;
/// A dive this long or less before another makes the two repeated dives, for flying: the longest of
/// the published intervals. Common practice, no source.
inline constexpr Hours repeated_within{48.0};

/// Hours before flying after the last dive.
/// @source  12: DAN workshop 2002 and UHMS workshop 1989 alike; 24 and 48: UHMS workshop 1989 (DAN
///          2002 has 18 h, and "substantially longer" after stops): the longer, which is the safe
///          side. Both read in summaries of the DAN proceedings
/// @tests   tests/reference/flying.csv
inline constexpr Hours no_fly_single{12.0};
inline constexpr Hours no_fly_repeated{24.0};
inline constexpr Hours no_fly_after_stops{48.0};

/// What a member of staff's body carries into this session and out of it, by the ZH-L16C tissues
/// with the gradient factors of the house. An aid: the diver's own computer and a physician
/// prevail.
struct StaffExposure {
    StaffId staff;
    bool dives_now = false;           ///< is in the water with a group of this session
    int dives_today = 0;              ///< this session's dive included
    int ascents_today = 0;            ///< all times at the surface, this session's included
    int days_in_a_row = 0;            ///< days with a dive up to and with today, at most 8 known
    std::optional<Minutes> surface_interval;  ///< since the last dive; none: no dive on record
    std::optional<Minutes> no_stop_left;      ///< at the deepest planned point, before this session;
                                              ///< none: more than 24 h
    Minutes planned_time{};           ///< of this session's dive; 0: does not dive now
    bool needs_stop = false;          ///< the planned dive, extra ascents included, passes the limit
    /// Largest share of the allowed tissue gradient that going straight up would use, at any
    /// moment of the planned dive (for those who do not dive: before the session); 1 = the limit.
    double highest_saturation = 0.0;
    int leading_compartment = 0;      ///< 1 to 16
    Hours no_fly{};                   ///< after the last dive, planned or on record, by published
                                      ///< guidance; 0: no dive
    std::string no_fly_source;        ///< empty: no dive
};

/// The exposure of one member of staff. Where something is not known, what loads more is taken:
///
/// - Before the session the body is at the site's surface pressure or at 1013.25 hPa, whichever is
///   higher: at an altitude site as if just come from the sea, its dives made there.
/// - Earlier dives: see the assumptions above. A dive said to begin during another begins when that
///   ends; one not over before the session is counted in full and leaves no surface interval.
/// - `extra_ascents` are spread evenly over the time below, come on top of the planned time (up and
///   down at the assumed rates, a minute at the surface), and no gas lost on them is credited.
/// - A stop is needed as soon as, at any corner or ascent, going straight up would pass the limit.
///
/// Outside the model: bubbles and what repeated ascents do to them, cold, work, dehydration, age.
/// HSE Research Report RR214 (2004 by memory; summary read) predicts fewer bubbles when the time of
/// one no-stop dive is split into short ones: a model's result, not a licence, as each ascent
/// carries its own risk of gas embolism. Ups and downs within minutes lie outside (A. Salm 2021,
/// abstract).
///
/// @param session  one that check(session) accepts. An earlier dive that it would refuse counts as
///                 the worst it accepts (60 m, 240 min, 30 ascents), and so does an unsound profile
///                 (60 m for 240 min): the answer is then of no use, but finite and on the safe
///                 side
/// @source  core/body/tissues.h; flying: see the constants above
/// @tests   tests/planning/exposure_test.cpp, tests/reference/flying.csv
StaffExposure plan_staff_exposure(const Session& session, const StaffMember& member,
                                  const WaterColumn& water);

}  // namespace leadline
