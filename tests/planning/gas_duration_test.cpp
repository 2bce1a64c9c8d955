// SPDX-License-Identifier: GPL-3.0-or-later
// A handbook's sums of gas supply, done with the planner's own curve, air and water.
#include "core/physics/air.h"
#include "core/planning/gas_plan.h"
#include "tests/planning/scene.h"
#include "tests/reference_table.h"

namespace leadline {
namespace {

constexpr double cubic_foot = 0.3048 * 0.3048 * 0.3048;  // m3
constexpr double liters_per_cubic_foot = cubic_foot * 1000.0;
constexpr double atmosphere_bar = 1.01325;
/// Sea in which 33 feet weigh one atmosphere, as the handbook has it: gravity is set so.
WaterColumn handbook_sea(Kelvins temperature) {
    const PracticalSalinity salinity{35.0};
    const double density = water_density(salinity, temperature, Pascals(0.0)).value().value();
    const double gradient = atmosphere.value() / Meters(Feet(33.0)).value();
    return WaterColumn::make(atmosphere, MetersPerSecondSquared(gradient / density), salinity,
                             temperature)
        .value();
}

class Example {
public:
    explicit Example(const ReferenceRow& row)
        : row_(row),
          temperature_(celsius(row.number("temperature_c"))),
          water_(handbook_sea(temperature_)),
          rmv_(row.number("rmv_acfm") * liters_per_cubic_foot) {
        const auto point = [](double minutes, Depth depth, Phase phase) {
            return ProfilePoint{Minutes(minutes), depth, phase};
        };
        const Depth depth{Meters(Feet(row.number("depth_fsw")))};
        profile_.points = {point(0, meters(0), Phase::surface), point(1, depth, Phase::descent),
                           point(101, depth, Phase::tour), point(108, meters(0), Phase::ascent)};
        type_ = CylinderType{CylinderTypeId("handbook"), CylinderMetal::steel,
                             Liters(row.has("volume_ft3")
                                        ? row.number("volume_ft3") * liters_per_cubic_foot
                                        : 1.0),
                             Bars(300.0)};
    }

    /// Free air breathed between two times of the dive [scf].
    [[nodiscard]] double breathed(double from, double to) const {
        const BreathingCurve curve = BreathingCurve::along(profile_, water_);
        const BarMinutes load = curve.load_at(Minutes(to)) - curve.load_at(Minutes(from));
        return load.value() * rmv_.value() / atmosphere_bar / liters_per_cubic_foot;
    }

    /// All cylinders, between the two readings.
    [[nodiscard]] Moles available() const {
        return row_.number("cylinders") * (content(row_.number("start_psig")) -
                                           content(row_.number("end_psig")));
    }

    [[nodiscard]] double scf(Moles amount) const {
        return amount.value() * molar_gas_constant * temperature_.value() / atmosphere.value() /
               cubic_foot;
    }

    /// Minutes at depth on the available air.
    [[nodiscard]] double duration() const {
        const GasContext gas = context();
        const BarMinutes at_depth = gas.dive.load_at(Minutes(1.0));
        const auto end = gas.dive.time_of(at_depth + load_for(gas, rmv_, available()));
        EXPECT_TRUE(end);
        return end.value_or(Minutes(0.0)).value() - 1.0;
    }

    /// Reading from which the last 10 minutes can be breathed down to the last reading [psig].
    [[nodiscard]] double start_reading() const {
        const Moles needed(breathed(98.0, 108.0) * cubic_foot * atmosphere.value() /
                           (molar_gas_constant * temperature_.value()));
        return Psi(gauge_pressure(type_, content(row_.number("end_psig")) + needed, temperature_,
                                  atmosphere))
            .value();
    }

private:
    [[nodiscard]] GasContext context() const {
        return {water_,
                profile_,
                conditions_,
                BreathingCurve::along(profile_, water_),
                BreathingCurve::held_at_depth(profile_, water_),
                Bars(50.0),
                MetersPerMinute(9.0)};
    }

    [[nodiscard]] Moles content(double psig) const {
        return content_at_gauge(type_, Bars(Psi(psig)), temperature_, atmosphere);
    }

    const ReferenceRow& row_;
    Kelvins temperature_;
    WaterColumn water_;
    LitersPerMinute rmv_;
    Profile profile_;
    Conditions conditions_;
    CylinderType type_;
};

class HandbookSupply : public testing::TestWithParam<ReferenceRow> {};

TEST_P(HandbookSupply, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const Example example(row);
    const std::string& check = row.text("check");
    double found = -1.0;
    if (check == "flow") found = example.breathed(50.0, 51.0);
    if (check == "bottom_gas") found = example.breathed(98.0, 101.0);
    if (check == "ascent_gas") found = example.breathed(101.0, 108.0);
    if (check == "bottom_and_ascent_gas") found = example.breathed(98.0, 108.0);
    if (check == "available") found = example.scf(example.available());
    if (check == "duration") found = example.duration();
    if (check == "start_reading") found = example.start_reading();
    EXPECT_NEAR(found, row.number("expected"), row.number("tolerance"))
        << row.text("source") << " (" << row.text("standing") << ")\n"
        << row.text("why");
}

INSTANTIATE_TEST_SUITE_P(reference, HandbookSupply,
                         testing::ValuesIn(load_reference("gas_duration")),
                         [](const auto& tested) { return tested.param.text("id"); });

}  // namespace
}  // namespace leadline
