// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/physics/support.h"

#include <cstdlib>
#include <iostream>

namespace leadline {
namespace {

std::string about(const ReferenceRow& row) {
    std::string text = row.text("id") + " [" + row.text("unit") + "], " + row.text("source") +
                       " (" + row.text("standing") + ")";
    if (row.has("why")) {
        text += "\ntolerance: " + row.text("why");
    }
    return text;
}

}  // namespace

std::string row_name(const testing::TestParamInfo<ReferenceRow>& info) {
    return info.param.text("id");
}

void expect_near(const ReferenceRow& row, double actual) {
    EXPECT_NEAR(actual, row.number("expected"), row.number("tolerance")) << about(row);
    const std::string side = row.has("side") ? row.text("side") : "either";
    if (side == "below") {
        EXPECT_LT(actual, row.number("expected")) << about(row);
    } else if (side == "above") {
        EXPECT_GT(actual, row.number("expected")) << about(row);
    } else {
        EXPECT_EQ(side, "either") << about(row);
    }
}

void expect_at_most(const ReferenceRow& row, double actual) {
    EXPECT_GT(actual, 0.0) << about(row);
    EXPECT_LE(actual, row.number("expected")) << about(row);
}

void fail_unknown_check(const ReferenceRow& row) {
    ADD_FAILURE() << "no test for the check '" << row.text("check") << "' of " << about(row);
}

WaterColumn make_column(Pascals surface, MetersPerSecondSquared gravity, PracticalSalinity salinity,
                        Kelvins temperature) {
    const Result<WaterColumn> column = WaterColumn::make(surface, gravity, salinity, temperature);
    if (!column) {
        // There is no column to go on with; better no test run than one that checks nothing.
        std::cerr << "no column of water: " << column.error().place << " " << column.error().given
                  << "\n";
        std::abort();
    }
    return *column;
}

WaterColumn sea(double celsius) {
    return make_column(Pascals(atmosphere_pa), MetersPerSecondSquared(9.80665),
                       PracticalSalinity{35.0}, Celsius(celsius));
}

WaterColumn fresh_water() {
    return make_column(Pascals(atmosphere_pa), MetersPerSecondSquared(9.80665),
                       PracticalSalinity{0.0}, Celsius(10.0));
}

WaterColumn column_of_gradient(double pascals_per_meter) {
    const PracticalSalinity salinity{35.0};
    const Kelvins temperature = Celsius(10.0);
    const double density = must(water_density(salinity, temperature, Pascals(0.0))).value();
    return make_column(Pascals(atmosphere_pa), MetersPerSecondSquared(pascals_per_meter / density),
                       salinity, temperature);
}

WaterColumn table_sea() { return column_of_gradient(1025.0 * 9.80665); }

WaterColumn handbook_sea() {
    return column_of_gradient(atmosphere_pa / Meters(Feet(33.0)).value());
}

}  // namespace leadline
