// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/cylinder.h"

#include <limits>
#include <set>

#include "core/physics/air.h"
#include "tests/planning/scene.h"
#include "tests/reference_table.h"

namespace leadline {
namespace {

constexpr double liters_in_a_cubic_foot = 28.316846592;

const CylinderType& type(const std::string& id) {
    const CylinderType* found = find_cylinder_type(CylinderTypeId(id));
    EXPECT_NE(found, nullptr) << id;
    return found != nullptr ? *found : cylinder_types().front();
}

ReferenceRow row_named(const std::string& table, const std::string& id) {
    for (const ReferenceRow& row : load_reference(table)) {
        if (row.text("id") == id) return row;
    }
    throw std::runtime_error("no row " + id + " in " + table);
}

TEST(CylinderTypes, AreFoundByTheirIdAndByNothingElse) {
    std::set<CylinderTypeId> ids;
    for (const CylinderType& known : cylinder_types()) {
        EXPECT_EQ(find_cylinder_type(known.id), &known);
        EXPECT_TRUE(ids.insert(known.id).second) << known.id.text;
        EXPECT_GT(known.water_capacity.value(), 0.0);
        EXPECT_GE(known.working_pressure.value(), 200.0);
    }
    EXPECT_EQ(find_cylinder_type(CylinderTypeId("steel-13")), nullptr);
    EXPECT_EQ(find_cylinder_type(CylinderTypeId("")), nullptr);
}

TEST(CylinderTypes, AreListedSmallestFirst) {
    double last = 0.0;
    for (const CylinderType& known : cylinder_types()) {
        EXPECT_GE(known.water_capacity.value(), last) << known.id.text;
        last = known.water_capacity.value();
    }
}

TEST(CylinderContent, OfTwelveLitresAgreesWithASecondEvaluationOfTheEquation) {
    const ReferenceRow row = row_named("gas_supply", "free_air_12L_200bar");
    const Bars gauge = Bars(row.number("start_bar_absolute")) - Bars(atmosphere);
    const Cylinder cylinder{CylinderTypeId("steel-12"), gauge, celsius(row.number("temperature_c"))};
    const Moles content = must(cylinder_content(cylinder, atmosphere));
    EXPECT_NEAR(free_air_volume(content).value(), row.number("expected"), row.number("tolerance"))
        << row.text("why");
}

TEST(CylinderContent, OfTheCommonAluminiumCylinderIsWhatIsSaidOfIt) {
    const ReferenceRow row = row_named("gas_supply", "delivered_s80");
    const Kelvins room = celsius(row.number("temperature_c"));
    // 3000 psig is 206.8 bar: a hair under the 207 bar of the type.
    const Cylinder cylinder{CylinderTypeId("aluminium-11"), Bars(Psi(row.number("start_psig"))),
                            room};
    const Moles full = must(cylinder_content(cylinder, atmosphere));
    const Moles empty = content_at_gauge(type("aluminium-11"), Bars(0.0), room, atmosphere);
    // As free air at room temperature, an ideal gas.
    const double cubic_feet = (full - empty).value() * molar_gas_constant * room.value() /
                              atmosphere.value() * 1000.0 / liters_in_a_cubic_foot;
    EXPECT_NEAR(cubic_feet, row.number("expected"), row.number("tolerance")) << row.text("why");
}

TEST(CylinderContent, CountsTheAirAroundTheGauge) {
    // An empty gauge at the surface still leaves the cylinder full of air at that pressure.
    const Cylinder empty{CylinderTypeId("steel-10"), Bars(0.0), celsius(15.0)};
    EXPECT_NEAR(free_air_volume(must(cylinder_content(empty, atmosphere))).value(), 10.0, 0.01);
    const Cylinder full{CylinderTypeId("steel-10"), Bars(200.0), celsius(15.0)};
    EXPECT_GT(must(cylinder_content(full, atmosphere)).value(),
              must(cylinder_content(full, Pascals(60000.0))).value());
}

TEST(CylinderContent, GrowsWithPressureAndFallsWithWarmth) {
    const auto content = [](double bar, double temperature) {
        return must(cylinder_content({CylinderTypeId("steel-12"), Bars(bar), celsius(temperature)},
                                     atmosphere))
            .value();
    };
    for (double bar = 0.0; bar < 230.0; bar += 5.0) {
        EXPECT_LT(content(bar, 20.0), content(bar + 2.0, 20.0)) << bar;
    }
    for (const double bar : {10.0, 50.0, 100.0, 200.0, 232.0}) {
        for (double warm = -20.0; warm < 70.0; warm += 5.0) {
            EXPECT_GT(content(bar, warm), content(bar, warm + 5.0)) << bar << " " << warm;
        }
    }
}

TEST(CylinderContent, IsRefusedWithItsReason) {
    const auto error = [](const std::string& id, double bar) {
        const Result<Moles> content =
            cylinder_content({CylinderTypeId(id), Bars(bar), celsius(20.0)}, atmosphere);
        EXPECT_FALSE(content) << id << " " << bar;
        return content ? Error{} : content.error();
    };
    EXPECT_EQ(error("steel-13", 200.0),
              (Error{ErrorCode::unknown_reference, "cylinder/type", "steel-13", ""}));
    EXPECT_EQ(error("steel-12", 232.5), (Error{ErrorCode::overfilled_cylinder,
                                               "cylinder/fill_pressure_bar", "232.5", "232"}));
    EXPECT_EQ(error("steel-12", -1.0), (Error{ErrorCode::out_of_range,
                                              "cylinder/fill_pressure_bar", "-1", "0 to 232"}));
    EXPECT_EQ(error("steel-12", std::numeric_limits<double>::quiet_NaN()).code,
              ErrorCode::out_of_range);
    EXPECT_TRUE(cylinder_content({CylinderTypeId("steel-12"), Bars(232.0), celsius(20.0)},
                                 atmosphere));
}

TEST(GaugePressure, IsTheInverseOfTheContent) {
    for (const CylinderType& known : cylinder_types()) {
        for (double bar = 0.0; bar <= known.working_pressure.value(); bar += 7.0) {
            for (const double temperature : {-2.0, 15.0, 36.0}) {
                const Moles content =
                    content_at_gauge(known, Bars(bar), celsius(temperature), atmosphere);
                EXPECT_NEAR(gauge_pressure(known, content, celsius(temperature), atmosphere).value(),
                            bar, 1e-8)
                    << known.id.text;
            }
        }
    }
}

TEST(GaugePressure, IsNeverBelowZero) {
    EXPECT_EQ(gauge_pressure(type("steel-12"), Moles(-10.0), celsius(20.0), atmosphere).value(), 0.0);
    EXPECT_EQ(gauge_pressure(type("steel-12"), Moles(0.0), celsius(20.0), atmosphere).value(), 0.0);
    EXPECT_EQ(gauge_pressure(type("steel-12"), Moles(0.1), celsius(20.0), atmosphere).value(), 0.0);
}

TEST(GaugePressure, OfMoreAirThanAnyCylinderHoldsIsNotZero) {
    // A minimum gas worked out for an absurd plan must not read as an empty cylinder.
    const CylinderType& small = type("steel-6");
    EXPECT_GT(gauge_pressure(small, Moles(300.0), celsius(20.0), atmosphere).value(), 400.0);
    EXPECT_GT(gauge_pressure(small, Moles(10000.0), celsius(20.0), atmosphere).value(), 400.0);
}

TEST(GaugePressure, FallsAsAFullCylinderCools) {
    const Moles content = content_at_gauge(type("steel-12"), Bars(200.0), celsius(35.0), atmosphere);
    const double in_water =
        gauge_pressure(type("steel-12"), content, celsius(15.0), atmosphere).value();
    // An ideal gas would lose 13.0 bar (Gay-Lussac); a dense real one more, by less than half as much
    // again.
    EXPECT_LT(in_water, 200.0 - 13.0);
    EXPECT_GT(in_water, 200.0 - 19.5);
}

}  // namespace
}  // namespace leadline
