// SPDX-License-Identifier: GPL-3.0-or-later
// Every public function refuses what lies outside its documented range, and says which input it
// was.
#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>
#include <optional>
#include <ostream>
#include <string>

#include "core/body/ears.h"
#include "core/physics/air.h"
#include "core/physics/atmosphere.h"
#include "core/physics/range.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

/// One input of one function, all others being valid.
struct Door {
    std::string name;
    std::string quantity;
    double low;
    double high;
    std::function<std::optional<Error>(double)> call;
};

std::ostream& operator<<(std::ostream& out, const Door& door) {
    return out << door.name;
}

const Kelvins room(293.15);
const MetersPerSecondSquared standard_gravity(9.80665);
const PracticalSalinity ocean{35.0};

std::vector<Door> water_doors() {
    return {
        {"density_salinity", "salinity", 0.0, 42.0,
         [](double x) {
             return error_of(water_density(PracticalSalinity{x}, room, Pascals(0.0)));
         }},
        {"density_temperature", "temperature", 271.15, 313.15,
         [](double x) { return error_of(water_density(ocean, Kelvins(x), Pascals(0.0))); }},
        {"density_sea_pressure", "sea_pressure", 0.0, 100e6,
         [](double x) { return error_of(water_density(ocean, room, Pascals(x))); }},
        {"column_surface_pressure", "surface_pressure", 50e3, 110e3,
         [](double x) {
             return error_of(WaterColumn::make(Pascals(x), standard_gravity, ocean, room));
         }},
        {"column_gravity", "gravity", 9.7, 9.9,
         [](double x) {
             return error_of(
                 WaterColumn::make(Pascals(atmosphere_pa), MetersPerSecondSquared(x), ocean, room));
         }},
        {"column_salinity", "salinity", 0.0, 42.0,
         [](double x) {
             return error_of(WaterColumn::make(Pascals(atmosphere_pa), standard_gravity,
                                               PracticalSalinity{x}, room));
         }},
        {"column_temperature", "temperature", 271.15, 313.15,
         [](double x) {
             return error_of(
                 WaterColumn::make(Pascals(atmosphere_pa), standard_gravity, ocean, Kelvins(x)));
         }},
    };
}

std::vector<Door> atmosphere_doors() {
    return {
        {"atmosphere_altitude", "altitude", -430.0, 5000.0,
         [](double x) { return error_of(standard_atmosphere_pressure(Altitude(Meters(x)))); }},
        {"gravity_latitude", "latitude", -90.0, 90.0,
         [](double x) { return error_of(normal_gravity(Degrees(x), Altitude())); }},
        {"gravity_altitude", "altitude", -430.0, 5000.0,
         [](double x) { return error_of(normal_gravity(Degrees(0.0), Altitude(Meters(x)))); }},
    };
}

std::vector<Door> air_doors() {
    const CubicMeters cylinder(0.012);
    return {
        {"air_pressure_density", "density", 0.0, 40000.0,
         [](double x) { return error_of(air_pressure(x, room)); }},
        {"air_pressure_temperature", "temperature", 100.0, 2000.0,
         [](double x) { return error_of(air_pressure(40.0, Kelvins(x))); }},
        {"air_density_pressure", "pressure", 0.0, 60e6,
         [](double x) { return error_of(air_molar_density(Pascals(x), Kelvins(349.9))); }},
        {"air_density_pressure_hot", "pressure", 0.0, 500e6,
         [](double x) { return error_of(air_molar_density(Pascals(x), Kelvins(350.0))); }},
        {"air_density_temperature", "temperature", 200.0, 2000.0,
         [](double x) { return error_of(air_molar_density(Pascals(1e5), Kelvins(x))); }},
        {"air_compressibility_pressure", "pressure", 0.0, 60e6,
         [](double x) { return error_of(air_compressibility(Pascals(x), room)); }},
        {"air_compressibility_temperature", "temperature", 200.0, 2000.0,
         [](double x) { return error_of(air_compressibility(Pascals(1e5), Kelvins(x))); }},
        {"air_content_volume", "volume", 0.0, 1.0,
         [](double x) { return error_of(air_content(CubicMeters(x), Pascals(1e5), room)); }},
        {"air_content_pressure", "pressure", 0.0, 60e6,
         [=](double x) { return error_of(air_content(cylinder, Pascals(x), room)); }},
        {"air_content_temperature", "temperature", 200.0, 2000.0,
         [=](double x) { return error_of(air_content(cylinder, Pascals(1e5), Kelvins(x))); }},
        {"vessel_volume", "volume", 0.0, 1.0,
         [](double x) { return error_of(air_vessel_pressure(CubicMeters(x), Moles(0.0), room)); }},
        {"vessel_content", "content", 0.0, 480.0,
         [=](double x) { return error_of(air_vessel_pressure(cylinder, Moles(x), room)); }},
        {"vessel_temperature", "temperature", 200.0, 2000.0,
         [=](double x) { return error_of(air_vessel_pressure(cylinder, Moles(1.0), Kelvins(x))); }},
    };
}

std::vector<Door> ear_doors() {
    const auto ladder = [](double step, double deepest, double rate) {
        return error_of(clearing_ladder(sea(10.0), Meters(step), Depth(Meters(deepest)),
                                        MetersPerMinute(rate)));
    };
    return {
        {"ladder_step", "step", 0.1, 1.0, [=](double x) { return ladder(x, 6.0, 5.0); }},
        {"ladder_deepest", "deepest", 0.0, 60.0, [=](double x) { return ladder(0.5, x, 5.0); }},
        {"ladder_rate", "descent_rate", 1.0, 30.0, [=](double x) { return ladder(0.5, 6.0, x); }},
    };
}

class Refusals : public testing::TestWithParam<Door> {
protected:
    static void expect_refused(double value) {
        const Door& door = GetParam();
        const std::optional<Error> error = door.call(value);
        ASSERT_TRUE(error.has_value()) << value << " was accepted";
        EXPECT_EQ(error->code, ErrorCode::out_of_range);
        EXPECT_EQ(error->place, door.quantity);
        EXPECT_EQ(error->given.rfind(number_text(value), 0), 0U) << error->given;
        EXPECT_EQ(error->allowed.rfind(number_text(door.low) + " to ", 0), 0U) << error->allowed;
    }
};

TEST_P(Refusals, BothEndsOfTheRangeAreAccepted) {
    EXPECT_FALSE(GetParam().call(GetParam().low).has_value());
    EXPECT_FALSE(GetParam().call(GetParam().high).has_value());
}

TEST_P(Refusals, WhatLiesOutsideIsRefusedByName) {
    const double margin = 1e-6 * (GetParam().high - GetParam().low);
    expect_refused(GetParam().low - margin);
    expect_refused(GetParam().high + margin);
    expect_refused(-1e300);
    expect_refused(1e300);
}

TEST_P(Refusals, WhatIsNotFiniteIsRefusedByName) {
    expect_refused(std::numeric_limits<double>::quiet_NaN());
    expect_refused(std::numeric_limits<double>::infinity());
    expect_refused(-std::numeric_limits<double>::infinity());
}

std::string door_name(const testing::TestParamInfo<Door>& info) {
    return info.param.name;
}

INSTANTIATE_TEST_SUITE_P(Water, Refusals, testing::ValuesIn(water_doors()), door_name);
INSTANTIATE_TEST_SUITE_P(Atmosphere, Refusals, testing::ValuesIn(atmosphere_doors()), door_name);
INSTANTIATE_TEST_SUITE_P(Air, Refusals, testing::ValuesIn(air_doors()), door_name);
INSTANTIATE_TEST_SUITE_P(Ears, Refusals, testing::ValuesIn(ear_doors()), door_name);

TEST(RangeText, NamesValueRangeAndUnit) {
    const auto error = outside_range("temperature", 400.5, 200.0, 350.0, "K");
    ASSERT_TRUE(error.has_value());
    EXPECT_EQ(*error, (Error{ErrorCode::out_of_range, "temperature", "400.5 K", "200 to 350 K"}));
    EXPECT_EQ(outside_range("salinity", std::nan(""), 0.0, 42.0, "")->given, "nan");
    EXPECT_FALSE(outside_range("salinity", 42.0, 0.0, 42.0, "").has_value());
}

TEST(RangeEnds, CelsiusAtTheEndsOfTheRangeIsAccepted) {
    for (const double celsius : {-2.0, 40.0}) {
        EXPECT_TRUE(water_density(ocean, Celsius(celsius), Pascals(0.0)).has_value());
    }
}

}  // namespace
}  // namespace leadline
