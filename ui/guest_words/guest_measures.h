// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A number as it is shown, and with how many decimals.
struct ShownNumber {
    double value = 0.0;
    int decimals = 0;
};

/// The step of descent after which ears are cleared, in metres or feet: rounded down, to the safe
/// side; whole feet where there is at least one. The same on the card and on the guest screen.
/// @param step  finite, 0 m or more
ShownNumber clearing_step_number(Meters step, UnitSystem units);

}  // namespace leadline
