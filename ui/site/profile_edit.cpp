// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_edit.h"

#include <algorithm>
#include <cmath>

namespace leadline {
namespace {

/// Drawn corners keep this distance; check() itself asks for a second.
constexpr double closest_minutes = 0.1;
constexpr std::size_t fewest_corners = 3;
constexpr std::size_t most_corners = 50;
constexpr double feet = 0.3048;

double held(double value, double least, double most) {
    return most < least ? least : std::clamp(value, least, most);
}

/// The next multiple of `step` in a direction; from between two multiples, the nearer end counts.
double stepped(double value, int steps, double step) {
    constexpr double slack = 1e-6;
    if (steps == 0) return value;
    const double place = value / step;
    const double from = steps > 0 ? std::floor(place + slack) : std::ceil(place - slack);
    return (from + steps) * step;
}

bool is_end(const Profile& profile, std::size_t index) {
    return index == 0 || index + 1 >= profile.points.size();
}

bool sound(const Profile& profile) { return check(profile).has_value(); }

}  // namespace

double to_grid(double value, double step) { return std::round(value / step) * step; }

Snap snap_for(UnitSystem units, bool fine) {
    if (units == UnitSystem::imperial) {
        return fine ? Snap{Minutes(0.1), Meters(feet / 2.0)} : Snap{Minutes(0.5), Meters(feet)};
    }
    return fine ? Snap{Minutes(0.1), Meters(0.1)} : Snap{};
}

Profile with_corner_at(Profile profile, std::size_t index, Minutes time, Depth depth,
                       LaterCorners later) {
    auto& points = profile.points;
    if (index == 0 || index >= points.size()) return profile;
    const bool last = index + 1 == points.size();
    const double before = points[index].time.value();
    const double earliest = points[index - 1].time.value() + closest_minutes;
    // What follows moves along up to the longest dive there may be; otherwise it is the wall.
    const double latest =
        later == LaterCorners::follow || last
            ? before + longest_profile.value() - points.back().time.value()
            : points[index + 1].time.value() - closest_minutes;
    const double now = held(time.value(), std::min(earliest, before), std::max(latest, before));
    points[index].time = Minutes(now);
    if (later == LaterCorners::follow) {
        for (std::size_t i = index + 1; i < points.size(); ++i) {
            points[i].time = Minutes(
                std::min(points[i].time.value() + now - before, longest_profile.value()));
        }
    }
    if (!last) {
        points[index].depth =
            Depth(Meters(held(depth.meters().value(), 0.0, deepest_profile.meters().value())));
    }
    return profile;
}

Profile with_corner_stepped(Profile profile, std::size_t index, int time_steps, int depth_steps,
                            const Snap& snap, LaterCorners later) {
    if (index >= profile.points.size()) return profile;
    const ProfilePoint& point = profile.points[index];
    const Minutes time(stepped(point.time.value(), time_steps, snap.time.value()));
    const Depth depth(
        Meters(stepped(point.depth.meters().value(), depth_steps, snap.depth.value())));
    Profile moved = with_corner_at(profile, index, time, depth, later);
    return sound(moved) ? moved : profile;
}

bool leg_can_move(const Profile& profile, std::size_t index) {
    return index >= 1 && index < profile.points.size() && !is_end(profile, index) &&
           !is_end(profile, index - 1);
}

Profile with_leg_lowered(Profile profile, std::size_t index, Meters by) {
    if (!leg_can_move(profile, index)) return profile;
    ProfilePoint& from = profile.points[index - 1];
    ProfilePoint& to = profile.points[index];
    // The leg keeps its slope: the end that meets the surface or the floor first stops both.
    const double shallow = std::min(from.depth, to.depth).meters().value();
    const double deep = std::max(from.depth, to.depth).meters().value();
    const Meters change(held(by.value(), -shallow, deepest_profile.meters().value() - deep));
    from.depth = from.depth + change;
    to.depth = to.depth + change;
    return profile;
}

std::optional<std::size_t> add_corner(Profile& profile, std::size_t index) {
    auto& points = profile.points;
    if (index == 0 || index >= points.size() || points.size() >= most_corners) return std::nullopt;
    const ProfilePoint& from = points[index - 1];
    const ProfilePoint& to = points[index];
    const double length = (to.time - from.time).value();
    if (length < 2.0 * closest_minutes) return std::nullopt;
    ProfilePoint middle;
    middle.time = Minutes(from.time.value() + length / 2.0);
    middle.depth = depth_at(profile, middle.time);
    middle.phase = to.phase;
    points.insert(points.begin() + static_cast<std::ptrdiff_t>(index), middle);
    return index;
}

std::optional<std::size_t> add_corner_at(Profile& profile, Minutes time, const Snap& snap) {
    auto& points = profile.points;
    if (points.size() >= most_corners) return std::nullopt;
    ProfilePoint added;
    added.time = Minutes(to_grid(time.value(), snap.time.value()));
    added.depth = Depth(Meters(to_grid(depth_at(profile, time).meters().value(),
                                       snap.depth.value())));
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (added.time.value() > points[i].time.value() - closest_minutes) continue;
        if (added.time.value() < points[i - 1].time.value() + closest_minutes) return std::nullopt;
        added.phase = points[i].phase;
        points.insert(points.begin() + static_cast<std::ptrdiff_t>(i), added);
        return i;
    }
    return std::nullopt;
}

bool corner_can_go(const Profile& profile, std::size_t index) {
    return profile.points.size() > fewest_corners && !is_end(profile, index);
}

Profile without_corner(Profile profile, std::size_t index) {
    if (!corner_can_go(profile, index)) return profile;
    Profile shorter = profile;
    shorter.points.erase(shorter.points.begin() + static_cast<std::ptrdiff_t>(index));
    return sound(shorter) ? shorter : profile;  // the one corner under water must stay
}

PlainDive plain_dive_of(const Profile& profile) {
    PlainDive dive;
    dive.deepest = deepest(profile);
    // Without exercises the first stop on the way down stands where they would be.
    for (const ProfilePoint& point : profile.points) {
        dive.skills_depth = point.depth;
        if (point.depth.meters().value() > 0.0) break;
    }
    bool skills_seen = false;
    double skills = 0.0;
    double tour = 0.0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        const ProfilePoint& to = profile.points[i];
        const double minutes = (to.time - profile.points[i - 1].time).value();
        if (to.phase == Phase::skills) {
            skills += minutes;
            if (!skills_seen) dive.skills_depth = to.depth;
            skills_seen = true;
        } else if (to.phase == Phase::tour) {
            tour += minutes;
        }
    }
    // The boxes show tenths; more digits would only be the rounding of the legs to whole seconds.
    dive.skills = Minutes(to_grid(skills, 0.1));
    dive.tour = Minutes(to_grid(tour, 0.1));
    return dive;
}

Profile profile_of(const PlainDive& dive) {
    return standard_profile(dive.deepest, dive.skills_depth, dive.skills, dive.tour);
}

bool is_plain_dive(const Profile& profile) {
    constexpr double half_a_second = 0.5 / 60.0;
    constexpr double half_a_centimeter = 0.005;
    const Profile plain = profile_of(plain_dive_of(profile));
    return std::equal(profile.points.begin(), profile.points.end(), plain.points.begin(),
                      plain.points.end(), [&](const ProfilePoint& a, const ProfilePoint& b) {
                          return std::abs((a.time - b.time).value()) < half_a_second &&
                                 std::abs((a.depth - b.depth).value()) < half_a_centimeter &&
                                 a.phase == b.phase;
                      });
}

}  // namespace leadline
