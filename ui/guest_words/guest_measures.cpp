// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/guest_measures.h"

#include <cmath>

namespace leadline {

ShownNumber clearing_step_number(Meters step, UnitSystem units) {
    constexpr double meters_per_foot = 0.3048;
    // Keeps 0.9999999 from being shown as 0.9 when it is 1.
    constexpr double slack = 1e-6;
    if (units == UnitSystem::imperial && step.value() / meters_per_foot >= 1.0) {
        return {std::floor(step.value() / meters_per_foot + slack), 0};
    }
    const double value =
        units == UnitSystem::imperial ? step.value() / meters_per_foot : step.value();
    const double tenths = std::floor(value * 10.0 + slack);
    return {tenths / 10.0, std::fmod(tenths, 10.0) == 0.0 ? 0 : 1};
}

}  // namespace leadline
