// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

#include "core/physics/quantities.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// The figure at which a guest shows "low on air", wherever it is printed or shown: rounded up, the
/// safe side, to what a gauge is read to.
/// @param gauge  gauge reading, 0 or more
/// @returns whole tens of bar, or whole fifties of psi (common practice, no source)
[[nodiscard]] inline double signal_reading(Bars gauge, UnitSystem units) {
    constexpr double bar_step = 10.0;
    constexpr double psi_step = 50.0;
    // Keeps 50.0000001 bar from being shown as 60.
    constexpr double slack = 1e-6;
    const bool metric = units == UnitSystem::metric;
    const double step = metric ? bar_step : psi_step;
    const double value = metric ? gauge.value() : Psi(gauge).value();
    return std::ceil(value / step - slack) * step;
}

}  // namespace leadline
