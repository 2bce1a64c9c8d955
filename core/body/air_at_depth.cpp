// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/air_at_depth.h"

#include "core/body/lungs.h"

namespace leadline {

AirAtDepth air_at_depth(const WaterColumn& water, Depth depth) {
    AirAtDepth air;
    air.pressure = water.absolute_pressure(depth);
    air.swells_to = held_breath_expansion(water, depth);
    air.shrinks_to = 1.0 / air.swells_to;
    return air;
}

}  // namespace leadline
