// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/planning/plan.h"
#include "ui/words/quantity_text.h"

namespace leadline {

// What the ear and the lung chart say in words. All lengths are rounded down, so that a limit is
// never said later than it comes; the growth of a breath is rounded up.

/// Whole tenths of a metre or foot in a length: what length_below() says.
int tenths_below(Meters length, UnitSystem units);
/// A length or height of water, to a tenth of a metre or foot below it: "1.0 m".
QString length_below(Meters length, UnitSystem units);
/// "×1.8"; rounded up, as on the card.
QString growth_text(double expansion);
/// Whole seconds, rounded down: "6 s".
QString interval_text(Seconds interval);
QString mmhg_text(Pascals pressure);

/// "Clear at least every 0.5 m: 17 times on the way down, every 6 s at the planned speed. ..."
QString ear_sentence(const Plan& plan, UnitSystem units);
/// "Largest step for half of that: 0.5 m."
QString ear_step_sentence(const Plan& plan, UnitSystem units);
/// Pain comes before every figure. @source common practice, no source
QString ear_safety(UnitSystem units);
QString lung_sentence(const Plan& plan, UnitSystem units);
QString lung_safety();

}  // namespace leadline
