// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/lungs.h"

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

}  // namespace leadline
