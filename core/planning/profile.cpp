// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/profile.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/physics/number_text.h"

namespace leadline {
namespace {

constexpr std::size_t fewest_points = 3;
constexpr std::size_t most_points = 50;
constexpr double shortest_leg_minutes = 1.0 / 60.0;

std::string point_place(std::size_t index, const char* field) {
    return "/profile/points/" + std::to_string(index) + "/" + field;
}

/// Speed of the leg that ends at point `index`, downward positive.
double leg_rate(const Profile& profile, std::size_t index) {
    const ProfilePoint& from = profile.points[index - 1];
    const ProfilePoint& to = profile.points[index];
    return (to.depth - from.depth).value() / (to.time - from.time).value();
}

}  // namespace

double rmv_factor(Phase phase) {
    switch (phase) {
        case Phase::surface: return 1.2;
        case Phase::descent: return 1.1;
        case Phase::skills: return 1.2;
        case Phase::tour: return 1.0;
        case Phase::ascent: return 1.0;
    }
    return 1.2;
}

Result<Done> check(const Profile& profile) {
    const auto& points = profile.points;
    if (points.size() < fewest_points || points.size() > most_points) {
        return Error{ErrorCode::bad_count, "/profile/points", std::to_string(points.size()),
                     "3 to 50"};
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double time = points[i].time.value();
        const double depth = points[i].depth.meters().value();
        if (!(time >= 0.0 && time <= longest_profile.value())) {
            return Error{ErrorCode::out_of_range, point_place(i, "time_min"), number_text(time),
                         "0 to 240"};
        }
        if (!(depth >= 0.0 && depth <= deepest_profile.meters().value())) {
            return Error{ErrorCode::out_of_range, point_place(i, "depth_m"), number_text(depth),
                         "0 to 60"};
        }
        // A hair of slack: times are typed and stored as decimal minutes.
        if (i > 0 && time - points[i - 1].time.value() < shortest_leg_minutes - 1e-9) {
            return Error{ErrorCode::time_not_increasing, point_place(i, "time_min"), number_text(time),
                         number_text(points[i - 1].time.value())};
        }
    }
    if (points.front().time.value() != 0.0) {
        return Error{ErrorCode::out_of_range, point_place(0, "time_min"),
                     number_text(points.front().time.value()), "0"};
    }
    for (const std::size_t i : {std::size_t{0}, points.size() - 1}) {
        if (points[i].depth.meters().value() != 0.0) {
            return Error{ErrorCode::profile_not_closed, point_place(i, "depth_m"),
                         number_text(points[i].depth.meters().value()), "0"};
        }
    }
    if (deepest(profile).meters().value() <= 0.0) {
        return Error{ErrorCode::out_of_range, "/profile/points", "0", "0.1 to 60"};
    }
    return Done{};
}

Depth depth_at(const Profile& profile, Minutes time) {
    const auto& points = profile.points;
    if (points.empty() || time.value() <= points.front().time.value() ||
        time.value() >= points.back().time.value()) {
        return Depth();
    }
    const auto after = std::upper_bound(
        points.begin(), points.end(), time.value(),
        [](double wanted, const ProfilePoint& point) { return wanted < point.time.value(); });
    const ProfilePoint& to = *after;
    const ProfilePoint& from = *(after - 1);
    const double share = (time - from.time).value() / (to.time - from.time).value();
    return Depth(from.depth.meters() + (to.depth - from.depth) * share);
}

Depth deepest(const Profile& profile) {
    Depth found;
    for (const ProfilePoint& point : profile.points) found = std::max(found, point.depth);
    return found;
}

Minutes duration(const Profile& profile) {
    return profile.points.empty() ? Minutes(0.0) : profile.points.back().time;
}

Depth mean_depth(const Profile& profile) {
    double area = 0.0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        const ProfilePoint& from = profile.points[i - 1];
        const ProfilePoint& to = profile.points[i];
        area += (to.time - from.time).value() *
                (from.depth.meters() + to.depth.meters()).value() / 2.0;
    }
    const double minutes = duration(profile).value();
    return minutes > 0.0 ? Depth(Meters(area / minutes)) : Depth();
}

MetersPerMinute fastest_descent(const Profile& profile) {
    double fastest = 0.0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        fastest = std::max(fastest, leg_rate(profile, i));
    }
    return MetersPerMinute(fastest);
}

MetersPerMinute fastest_ascent(const Profile& profile) {
    double fastest = 0.0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        fastest = std::max(fastest, -leg_rate(profile, i));
    }
    return MetersPerMinute(fastest);
}

std::size_t final_ascent_start(const Profile& profile) {
    std::size_t corner = profile.points.size() - 2;
    while (corner > 1) {
        // The leg that ends at the corner: is it part of the way up?
        const ProfilePoint& point = profile.points[corner];
        // A stop marked as ascent is part of it: its air must be there when the group leaves.
        const bool rises = profile.points[corner - 1].depth >= point.depth;
        const bool at_surface = point.depth.meters().value() == 0.0;
        if (!at_surface && !(rises && point.phase == Phase::ascent)) break;
        --corner;
    }
    return corner;
}

Profile standard_profile(Depth deepest_depth, Depth skills_depth, Minutes skills, Minutes tour) {
    // Speeds well inside the usual limits: 4 m/min down leaves time for ears, 6 m/min up. Common
    // practice, no source.
    constexpr double down = 4.0;
    constexpr double up = 6.0;
    constexpr double settling_minutes = 3.0;
    Profile profile;
    double time = 0.0;
    Depth depth;
    const auto add = [&](double minutes, Depth to, Phase phase) {
        if (minutes <= 0.0) return;
        // Whole seconds, and at least one: check(profile) wants as much.
        time = std::max(std::round((time + minutes) * 60.0), std::round(time * 60.0) + 1.0) / 60.0;
        depth = to;
        profile.points.push_back({Minutes(time), to, phase});
    };
    profile.points.push_back({Minutes(0.0), Depth(), Phase::surface});
    add(settling_minutes, Depth(), Phase::surface);
    add(skills_depth.meters().value() / down, skills_depth, Phase::descent);
    add(skills.value(), skills_depth, Phase::skills);
    const double way = (deepest_depth - depth).value();
    add(std::abs(way) / down, deepest_depth, way >= 0.0 ? Phase::descent : Phase::ascent);
    add(tour.value(), deepest_depth, Phase::tour);
    add(deepest_depth.meters().value() / up, Depth(), Phase::ascent);
    return profile;
}

}  // namespace leadline
