// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/balloon.h"

#include <algorithm>
#include <cmath>

#include "core/body/air_at_depth.h"
#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double merged_within_m = 0.5;

BalloonAt balloon_at(const WaterColumn& water, Depth depth) {
    BalloonAt balloon;
    balloon.depth = depth;
    const AirAtDepth air = air_at_depth(water, depth);
    balloon.pressure = air.pressure;
    balloon.swells_to = air.swells_to;
    balloon.shrinks_to = air.shrinks_to;
    balloon.taken_down = shown_balloon * balloon.shrinks_to;
    balloon.taken_up = shown_balloon * balloon.swells_to;
    return balloon;
}

}  // namespace

Result<std::vector<BalloonAt>> balloon_at_depths(const WaterColumn& water, Depth deepest) {
    if (const auto error = outside_range("deepest", deepest.meters().value(), 0.0, 60.0, "m")) {
        return *error;
    }
    std::vector<Depth> depths{Depth(Meters(0.0)), Depth(Meters(5.0)), Depth(Meters(10.0))};
    const auto near = std::find_if(depths.begin(), depths.end(), [&](Depth depth) {
        return std::abs((depth - deepest).value()) < merged_within_m;
    });
    // The surface stays what it is.
    if (near == depths.end()) {
        depths.push_back(deepest);
    } else if (near != depths.begin()) {
        *near = deepest;
    }
    std::sort(depths.begin(), depths.end());
    std::vector<BalloonAt> balloons;
    balloons.reserve(depths.size());
    for (const Depth depth : depths) balloons.push_back(balloon_at(water, depth));
    return balloons;
}

}  // namespace leadline
