// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/atmosphere.h"

#include <gtest/gtest.h>

#include "tests/physics/support.h"

namespace leadline {
namespace {

/// Geometric altitude of a geopotential one, with the radius of the standard (ICAO Doc 7488/3).
double geometric_altitude(double geopotential) {
    constexpr double radius = 6356766.0;
    return radius * geopotential / (radius - geopotential);
}

class Atmosphere : public RowTest {};

TEST_P(Atmosphere, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const std::string& check = row.text("check");
    const double input = row.number("input");
    if (check == "geometric") {
        const Altitude altitude{Meters(input)};
        expect_near(row, must(standard_atmosphere_pressure(altitude)).value());
    } else if (check == "geopotential") {
        const Altitude altitude{Meters(geometric_altitude(input))};
        expect_near(row, must(standard_atmosphere_pressure(altitude)).value());
    } else if (check == "psi") {
        expect_near(row, Psi(Pascals(input)).value());
    } else if (check == "bar") {
        expect_near(row, Bars(Pascals(input)).value());
    } else if (check == "mmhg") {
        expect_near(row, input / millimeters_of_mercury(1.0).value());
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(Atmosphere, "atmosphere");

class Gravity : public RowTest {};

TEST_P(Gravity, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const auto gravity = normal_gravity(Degrees(row.number("latitude_deg")),
                                        Altitude(Meters(row.number("altitude_m"))));
    expect_near(row, must(gravity).value());
}

LEADLINE_REFERENCE_TABLE(Gravity, "gravity");

}  // namespace
}  // namespace leadline
