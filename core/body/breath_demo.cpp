// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/breath_demo.h"

#include <cmath>

#include "core/body/air_at_depth.h"
#include "core/body/lungs.h"
#include "core/physics/range.h"

namespace leadline {

Result<BreathDemo> breath_demo(const WaterColumn& water, Depth depth) {
    if (const auto error = outside_range("depth", depth.meters().value(), 0.0, 60.0, "m")) {
        return *error;
    }
    BreathDemo demo;
    demo.depth = depth;
    const AirAtDepth air = air_at_depth(water, depth);
    demo.pressure = air.pressure;
    demo.pressure_ratio = air.swells_to;
    demo.balloon_volume = air.shrinks_to;
    demo.balloon_width = std::cbrt(demo.balloon_volume);
    demo.held_breath_growth = air.swells_to;
    demo.uncleared = water.gauge_pressure(depth);
    if (demo.uncleared >= lung_tearing_lowest) {
        demo.danger_ascent = held_breath_danger_ascent(water, depth);
    }
    return demo;
}

}  // namespace leadline
