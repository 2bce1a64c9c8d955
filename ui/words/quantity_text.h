// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/physics/quantities.h"
#include "core/planning/cylinder.h"
#include "core/planning/dates.h"
#include "core/planning/finding.h"

namespace leadline {

/// Units at the edge: never mixed on one screen or sheet.
enum class UnitSystem { metric, imperial };

/// Which way a shown figure is rounded. `nearest` for information; `up` and `down` where rounding
/// must err to one side (a pressure to signal at: up; a maximum depth: down).
enum class Rounding { nearest, up, down };

// Quantities as people read them: number, no-break space, unit; decimal sign of the locale.
QString text(Depth depth, UnitSystem units, Rounding rounding = Rounding::nearest);  // "8.0 m", "26 ft"
QString text(Meters length, UnitSystem units);                                       // "0.9 m", "3.0 ft"
QString text(Bars gauge, UnitSystem units, Rounding rounding = Rounding::nearest);   // "120 bar", "1740 psi"
QString text(Pascals absolute, UnitSystem units);                                    // "1.82 bar", "26.4 psi"
QString text(Kelvins temperature, UnitSystem units);                                 // "18 °C", "64 °F"
QString text(LitersPerMinute rmv, UnitSystem units);                                 // "25 L/min", "0.88 cu ft/min"
QString text(MetersPerMinute rate, UnitSystem units);                                // "9 m/min", "30 ft/min"
// "35 min", "31.5 min"; rounded to a side: whole minutes, for estimates.
QString text(Minutes time, Rounding rounding = Rounding::nearest);
QString text(Liters volume, UnitSystem units);                                       // "2329 L", "82 cu ft"
QString text(Kilograms mass, UnitSystem units);                                      // "6 kg", "13 lb"
QString text(const FindingValue& value, UnitSystem units);
/// A person's height, "172 cm" or "5 ft 8 in".
QString height_text(Meters height, UnitSystem units);
/// Date and time by the locale: "Sat 4 July 2026", "09:30".
QString text(Date date);
QString text(TimeOfDay time);
/// "17 May 1990": with the month in letters, so that day and month cannot be mixed up.
QString spelled(Date date);
/// "Steel 12 L, 232 bar".
QString text(const CylinderType& type, UnitSystem units);

}  // namespace leadline
