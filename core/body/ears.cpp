// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/ears.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/physics/range.h"

namespace leadline {
namespace {

std::vector<Depth> marks(double step, double deepest) {
    // A deepest point that is a whole number of steps keeps its mark in spite of rounding.
    const int count = static_cast<int>(std::floor(deepest / step * (1.0 + 1e-12)));
    std::vector<Depth> depths;
    depths.reserve(static_cast<std::size_t>(count));
    for (int k = 1; k <= count; ++k) {
        depths.emplace_back(Meters(std::min(k * step, deepest)));
    }
    return depths;
}

/// Difference across the drum after one step without clearing, at the deep end, where water is
/// densest; a descent shorter than a step is given the whole step, which is the safe side.
Pascals difference_over_step(const WaterColumn& water, Meters step, Depth deepest) {
    const Depth lower(std::max(step, deepest.meters()));
    const Depth upper(lower.meters() - step);
    return water.absolute_pressure(lower) - water.absolute_pressure(upper);
}

}  // namespace

Result<ClearingLadder> clearing_ladder(const WaterColumn& water, Meters step, Depth deepest,
                                       MetersPerMinute descent_rate) {
    if (const auto error = outside_range("step", step.value(), 0.1, 1.0, "m")) {
        return *error;
    }
    if (const auto error = outside_range("deepest", deepest.meters().value(), 0.0, 60.0, "m")) {
        return *error;
    }
    if (const auto error =
            outside_range("descent_rate", descent_rate.value(), 1.0, 30.0, "m/min")) {
        return *error;
    }
    ClearingLadder ladder;
    ladder.step = step;
    ladder.clear_at = marks(step.value(), deepest.meters().value());
    ladder.interval = step / descent_rate;
    ladder.largest_difference = difference_over_step(water, step, deepest);
    ladder.locks_at = water.depth_at(water.surface_pressure() + ladder.locking);
    ladder.uncleared_at_bottom = water.gauge_pressure(deepest);
    return ladder;
}

}  // namespace leadline
