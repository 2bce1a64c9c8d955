// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// What the group does on the way to a corner point of the profile.
enum class Phase { surface, descent, skills, tour, ascent };

/// Factor on a guest's RMV in a phase: settling at the surface 1.2, descent 1.1, skills 1.2, tour
/// 1.0, ascent 1.0. Common practice, no source; at or above one, which errs to the high side.
double rmv_factor(Phase phase);

/// A corner of the dive: at this time the group is at this depth, and it came there by this phase.
struct ProfilePoint {
    Minutes time{};
    Depth depth{};
    Phase phase = Phase::surface;
    friend bool operator==(const ProfilePoint& a, const ProfilePoint& b) {
        return a.time.value() == b.time.value() && a.depth == b.depth && a.phase == b.phase;
    }
};

/// The planned dive: depth over time, straight lines between corner points. The first point is the
/// start (time 0, depth 0); the last is back at the surface.
struct Profile {
    std::vector<ProfilePoint> points;
    friend bool operator==(const Profile&, const Profile&) = default;
};

inline constexpr Depth deepest_profile{Meters(60.0)};
inline constexpr Minutes longest_profile{240.0};

/// Checks a profile: 3 to 50 points; starts at time 0 and 0 m; ends at 0 m; times increase by at
/// least 1 s and end by 240 min; depths 0 to 60 m.
/// @returns Done, or the first error with the point in `place` ("profile/points/3/depth_m")
Result<Done> check(const Profile& profile);

/// Depth at a time, by the straight line between corners; 0 m before the start and after the end.
Depth depth_at(const Profile& profile, Minutes time);
Depth deepest(const Profile& profile);
Minutes duration(const Profile& profile);
/// Time-weighted mean depth.
Depth mean_depth(const Profile& profile);
/// Fastest downward and upward legs; 0 where there is none.
MetersPerMinute fastest_descent(const Profile& profile);
MetersPerMinute fastest_ascent(const Profile& profile);
/// Index of the corner from which the final ascent starts: back from the end over the legs marked as
/// ascent (or surface); the last leg counts as ascent whatever its mark. 0 < index < last.
std::size_t final_ascent_start(const Profile& profile);

/// The plain introductory dive: at the surface, down, skills at the deepest depth or at
/// `skills_depth`, tour, up. Every part can be changed afterwards.
Profile standard_profile(Depth deepest, Depth skills_depth, Minutes skills, Minutes tour);

}  // namespace leadline
