// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/lungs.h"

#include <cmath>
#include <cstddef>

#include "core/physics/range.h"

namespace leadline {

double held_breath_expansion(const WaterColumn& water, Depth depth) {
    return water.absolute_pressure(depth).value() / water.surface_pressure().value();
}

Meters held_breath_danger_ascent(const WaterColumn& water, Depth from) {
    // Taken where the guest is, as water is a little denser there; depth_at() ends at the surface,
    // so that the ascent is never more than `from`.
    const Pascals torn_at = water.absolute_pressure(from) - lung_tearing_lowest;
    return from - water.depth_at(torn_at);
}

Result<std::vector<HeldBreathLimit>> held_breath_limits(const WaterColumn& water, Depth deepest,
                                                        Meters spacing) {
    const double bottom = deepest.meters().value();
    if (const auto error = outside_range("deepest", bottom, 0.0, 60.0, "m")) return *error;
    if (const auto error = outside_range("spacing", spacing.value(), 0.1, 10.0, "m")) return *error;
    std::vector<HeldBreathLimit> limits;
    // A last whole step within a rounding error of the deepest point gives way to it.
    const int steps = static_cast<int>(std::ceil(bottom / spacing.value() - 1e-9));
    limits.reserve(static_cast<std::size_t>(steps) + 1);
    for (int k = 0; k <= steps; ++k) {
        HeldBreathLimit limit;
        limit.from = k == steps ? deepest : Depth(spacing * k);
        limit.expansion = held_breath_expansion(water, limit.from);
        if (water.gauge_pressure(limit.from).value() >= lung_tearing_lowest.value()) {
            limit.ascent = held_breath_danger_ascent(water, limit.from);
        }
        limits.push_back(limit);
    }
    return limits;
}

}  // namespace leadline
