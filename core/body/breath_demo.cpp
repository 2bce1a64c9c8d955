// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/breath_demo.h"

#include <cmath>

#include "core/body/lungs.h"
#include "core/physics/range.h"

namespace leadline {

Result<BreathDemo> breath_demo(const WaterColumn& water, Depth depth) {
    if (const auto error = outside_range("depth", depth.meters().value(), 0.0, 60.0, "m")) {
        return *error;
    }
    BreathDemo demo;
    demo.depth = depth;
    demo.pressure = water.absolute_pressure(depth);
    demo.pressure_ratio = demo.pressure.value() / water.surface_pressure().value();
    demo.balloon_volume = 1.0 / demo.pressure_ratio;
    demo.balloon_width = std::cbrt(demo.balloon_volume);
    demo.held_breath_growth = held_breath_expansion(water, depth);
    demo.uncleared = water.gauge_pressure(depth);
    if (demo.uncleared >= lung_tearing_lowest) {
        demo.danger_ascent = held_breath_danger_ascent(water, depth);
    }
    return demo;
}

}  // namespace leadline
