// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/water.h"

#include <gtest/gtest.h>

#include "core/physics/atmosphere.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr double pascals_per_dbar = 1e4;

/// Temperature on IPTS-68, which EOS-80 asks for, from one on ITS-90: t68 = 1.000 24 t90.
/// P. M. Saunders, The International Temperature Scale of 1990, ITS-90, WOCE Newsletter 10 (1990)
/// 10 (from memory).
double to_ipts68(const ReferenceRow& row) {
    const double celsius = row.number("temperature_c");
    return row.text("temperature_scale") == "its90" ? celsius * 1.00024 : celsius;
}

class WaterDensity : public RowTest {};

TEST_P(WaterDensity, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const Pascals sea_pressure(row.number("sea_pressure_dbar") * pascals_per_dbar);
    const double density = must(water_density(PracticalSalinity{row.number("salinity")},
                                              Celsius(to_ipts68(row)), sea_pressure))
                               .value();
    const double pounds_per_cubic_foot = 0.45359237 / (0.3048 * 0.3048 * 0.3048);
    expect_near(row, row.text("unit") == "lb/ft3" ? density / pounds_per_cubic_foot : density);
}

LEADLINE_REFERENCE_TABLE(WaterDensity, "water_density");

/// The standard ocean of the oceanographers' depth formulas.
WaterColumn standard_ocean(double latitude) {
    const auto gravity = must(normal_gravity(Degrees(latitude), Altitude()));
    return make_column(Pascals(atmosphere_pa), gravity, PracticalSalinity{35.0}, Celsius(0.0));
}

double in_psi(Pascals pressure) {
    return Psi(pressure).value();
}

class PressureAtDepth : public RowTest {};

TEST_P(PressureAtDepth, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const std::string& check = row.text("check");
    const double input = row.number("input");
    const Depth meters{Meters(input)};
    const Depth feet{Feet(input)};
    if (check == "sea_pressure_dbar") {
        const WaterColumn ocean = standard_ocean(row.number("latitude_deg"));
        expect_near(row, ocean.gauge_pressure(meters).value() / pascals_per_dbar);
    } else if (check == "depth_m") {
        const WaterColumn ocean = standard_ocean(row.number("latitude_deg"));
        const Pascals absolute(atmosphere_pa + input * pascals_per_dbar);
        expect_near(row, ocean.depth_at(absolute).meters().value());
    } else if (check == "handbook_ata") {
        expect_near(row, handbook_sea().absolute_pressure(feet).value() / atmosphere_pa);
    } else if (check == "handbook_psi_per_ft") {
        expect_near(row, in_psi(handbook_sea().gauge_pressure(feet)));
    } else if (check == "sea_psi_per_ft") {
        expect_near(row, in_psi(sea(10.0).gauge_pressure(feet)));
    } else if (check == "fresh_psi_per_ft") {
        expect_near(row, in_psi(fresh_water().gauge_pressure(feet)));
    } else if (check == "sea_gauge_atm") {
        expect_near(row, sea(10.0).gauge_pressure(feet).value() / atmosphere_pa);
    } else if (check == "fresh_gauge_atm") {
        expect_near(row, fresh_water().gauge_pressure(feet).value() / atmosphere_pa);
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(PressureAtDepth, "pressure_at_depth");

}  // namespace
}  // namespace leadline
