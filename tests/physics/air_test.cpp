// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/air.h"

#include <gtest/gtest.h>

#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr double moles_per_liter = 1000.0;  // mol/m3

/// The printed density is the right one if its rounding interval holds the density of the printed
/// pressure; on the gas side of the isotherm that is so if the pressures of its ends enclose it.
void expect_brackets(const ReferenceRow& row, Pascals pressure, Kelvins temperature) {
    const double density = row.number("expected");
    const double half_digit = row.number("tolerance");
    const auto below = must(air_pressure((density - half_digit) * moles_per_liter, temperature));
    const auto above = must(air_pressure((density + half_digit) * moles_per_liter, temperature));
    EXPECT_LE(below.value(), pressure.value());
    EXPECT_GE(above.value(), pressure.value());
}

class AirDensity : public RowTest {};

TEST_P(AirDensity, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const std::string& check = row.text("check");
    const Kelvins temperature(row.number("temperature_k"));
    const Pascals pressure(row.number("pressure_pa"));
    if (check == "density_brackets_pressure") {
        expect_brackets(row, pressure, temperature);
    } else if (check == "molar_density") {
        expect_near(row, must(air_molar_density(pressure, temperature)) / moles_per_liter);
    } else if (check == "mass_density") {
        const Moles in_a_cubic_meter = must(air_content(CubicMeters(1.0), pressure, temperature));
        expect_near(row, mass_of_air(in_a_cubic_meter).value());
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(AirDensity, "air_density");

class AirCompressibility : public RowTest {};

TEST_P(AirCompressibility, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const Bars pressure(row.number("pressure_bar"));
    expect_near(row, must(air_compressibility(pressure, Kelvins(row.number("temperature_k")))));
}

LEADLINE_REFERENCE_TABLE(AirCompressibility, "air_compressibility");

}  // namespace
}  // namespace leadline
