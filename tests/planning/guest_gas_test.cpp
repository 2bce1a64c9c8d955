// SPDX-License-Identifier: GPL-3.0-or-later
// One guest's air, worked out through plan().
#include <cmath>

#include "core/physics/air.h"
#include "tests/planning/scene.h"

namespace leadline {
namespace {

const CylinderType& type_of(const Guest& guest) {
    return *find_cylinder_type(guest.kit.cylinder->type);
}

/// Content at a reading with the gas as cold as the water.
double moles_at(const Scene& scene, const Plan& plan, Bars gauge) {
    return content_at_gauge(type_of(scene.session.guests.front()), gauge,
                            scene.session.conditions.water_temperature,
                            plan.environment.surface_pressure)
        .value();
}

TEST(GuestGas, LosesAndGainsNoAir) {
    Scene scene = sound_scene();
    for (const double bar : {30.0, 100.0, 200.0, 232.0}) {
        scene.session.guests.front().kit.cylinder->fill_pressure = Bars(bar);
        const GuestGas gas = plan_of(scene).guests.front();
        EXPECT_NEAR(gas.content.value(), (gas.used + gas.left).value(),
                    1e-9 * gas.content.value());
        EXPECT_NEAR(gas.content_volume.value() / gas.content.value(),
                    gas.used_volume.value() / gas.used.value(), 1e-9);
    }
}

TEST(GuestGas, AgreesWithASumByHand) {
    // Fresh water of 4 C at 45 degrees north: 999.97 kg/m3 (Kell 1975) x 9.8062 m/s2. Ten minutes
    // at 10 m, half a minute down and half up; an ideal gas, Z of air at 2 bar being 0.999.
    Scene scene = sound_scene();
    scene.session.site.salinity = PracticalSalinity{0.0};
    scene.session.site.latitude = Degrees(45.0);
    scene.session.conditions.barometer = Pascals(101325.0);
    scene.session.conditions.water_temperature = celsius(4.0);
    // Measured, and a tenth more for water that is cold in any wetsuit.
    scene.session.guests.front().measured_rmv = LitersPerMinute(25.0 / 1.1);
    scene.session.guests.front().kit.suit = "dry suit";
    scene.session.profile = {{{Minutes(0), meters(0), Phase::surface},
                              {Minutes(0.5), meters(10), Phase::tour},
                              {Minutes(10.5), meters(10), Phase::tour},
                              {Minutes(11), meters(0), Phase::ascent}}};
    const double bottom = 1.01325 + 999.97 * 9.8062 * 10.0 / 1e5;
    const double load = 10.0 * bottom + 1.0 * (1.01325 + bottom) / 2.0;
    const double moles = 25.0 * 1e-3 * load * 1e5 / (8.3145 * 277.15);
    const GuestGas gas = plan_of(scene).guests.front();
    EXPECT_NEAR(gas.rmv.value(), 25.0, 1e-9);
    EXPECT_NEAR(gas.used.value(), moles, 0.002 * moles);
    EXPECT_GE(gas.used.value(), moles);  // Z below 1: more air, the safe side
}

TEST(GuestGas, ShowsTheStartPressureInTheWater) {
    Scene scene = sound_scene();
    Guest& guest = scene.session.guests.front();
    guest.kit.cylinder->fill_temperature = scene.session.conditions.water_temperature;
    EXPECT_NEAR(plan_of(scene).guests.front().start_pressure.value(), 200.0, 1e-6);
    guest.kit.cylinder->fill_temperature = celsius(50.0);  // read on a hot deck
    EXPECT_LT(plan_of(scene).guests.front().start_pressure.value(), 184.0);
    guest.kit.cylinder->fill_temperature = celsius(5.0);
    EXPECT_GT(plan_of(scene).guests.front().start_pressure.value(), 213.0);
}

TEST(GuestGas, TakesAMeasuredRmvBeforeTheClass) {
    Scene scene = sound_scene();
    Guest& guest = scene.session.guests.front();
    guest.breathing = BreathingClass::nervous;
    GuestGas gas = plan_of(scene).guests.front();
    EXPECT_EQ(gas.rmv.value(), planning_rmv(BreathingClass::nervous).value());
    EXPECT_EQ(gas.rmv_source, RmvSource::breathing_class);
    guest.measured_rmv = LitersPerMinute(17.5);
    gas = plan_of(scene).guests.front();
    EXPECT_EQ(gas.rmv.value(), 17.5);
    EXPECT_EQ(gas.rmv_source, RmvSource::measured);
}

TEST(GuestGas, WithoutACylinderHasOnlyWhatIsBreathed) {
    Scene scene = sound_scene();
    const double used = plan_of(scene).guests.front().used.value();
    scene.session.guests.front().kit.cylinder.reset();
    const GuestGas gas = plan_of(scene).guests.front();
    EXPECT_FALSE(gas.has_cylinder);
    EXPECT_EQ(gas.used.value(), used);
    EXPECT_TRUE(gas.curve.empty());
    EXPECT_FALSE(gas.minutes_to_reserve);
}

TEST(GuestGas, RunsOutRatherThanBelowZero) {
    Scene scene = sound_scene();
    scene.session.guests.front().kit.cylinder->fill_pressure = Bars(40.0);
    const GuestGas gas = plan_of(scene).guests.front();
    EXPECT_LT(gas.left.value(), 0.0);
    EXPECT_EQ(gas.end_pressure.value(), 0.0);
    EXPECT_EQ(gas.curve.back().gauge.value(), 0.0);
    ASSERT_TRUE(gas.minutes_to_reserve);
    EXPECT_EQ(gas.minutes_to_reserve->value(), 0.0);
}

TEST(PressureCurve, FallsFromStartToEndAndHasEveryCorner) {
    const Scene scene = sound_scene();
    const GuestGas gas = plan_of(scene).guests.front();
    EXPECT_NEAR(gas.curve.front().gauge.value(), gas.start_pressure.value(), 1e-9);
    EXPECT_NEAR(gas.curve.back().gauge.value(), gas.end_pressure.value(), 1e-9);
    for (std::size_t i = 1; i < gas.curve.size(); ++i) {
        EXPECT_LT(gas.curve[i].gauge.value(), gas.curve[i - 1].gauge.value());
        EXPECT_GT(gas.curve[i].time.value(), gas.curve[i - 1].time.value());
        EXPECT_LE((gas.curve[i].time - gas.curve[i - 1].time).value(), 0.5 + 1e-9);
    }
    for (const ProfilePoint& corner : scene.session.profile.points) {
        const bool there =
            std::any_of(gas.curve.begin(), gas.curve.end(), [&](const PressurePoint& point) {
                return std::abs((point.time - corner.time).value()) < 1e-9 &&
                       std::abs((point.depth - corner.depth).value()) < 1e-9;
            });
        EXPECT_TRUE(there) << corner.time.value();
    }
}

TEST(MinutesToReserve, AreWhereALongerTourMeetsTheReserve) {
    for (const double bar : {130.0, 160.0, 200.0, 230.0}) {
        Scene scene = sound_scene();
        scene.session.guests.front().kit.cylinder->fill_pressure = Bars(bar);
        const Plan before = plan_of(scene);
        ASSERT_TRUE(before.guests.front().minutes_to_reserve) << bar;
        const Minutes reached = *before.guests.front().minutes_to_reserve;
        // The same dive, its tour ending just then.
        auto& points = scene.session.profile.points;
        ASSERT_GT(reached.value(), points[3].time.value()) << bar;
        points[4].time = reached;
        points[5].time = reached + Minutes(2.0);
        double reading = 0.0;
        const Plan after = plan_of(scene);
        for (const PressurePoint& point : after.guests.front().curve) {
            if (std::abs((point.time - reached).value()) < 1e-9) reading = point.gauge.value();
        }
        EXPECT_NEAR(reading, 50.0, 1e-6) << bar;
    }
}

TEST(MinutesToReserve, HaveNoValuePastTheLongestDive) {
    Scene scene = sound_scene();
    Guest& guest = scene.session.guests.front();
    guest.measured_rmv = LitersPerMinute(5.0);
    guest.kit.cylinder = Cylinder{CylinderTypeId("steel-18"), Bars(232.0), celsius(20.0)};
    EXPECT_FALSE(plan_of(scene).guests.front().minutes_to_reserve);
    guest.measured_rmv = LitersPerMinute(15.0);
    ASSERT_TRUE(plan_of(scene).guests.front().minutes_to_reserve);
    EXPECT_LE(plan_of(scene).guests.front().minutes_to_reserve->value(), 240.0);
}

TEST(LeavePressure, BringsTheGuestUpWithTheReserve) {
    const Scene scene = sound_scene();
    const Plan plan = plan_of(scene);
    const GuestGas& gas = plan.guests.front();
    const auto reading_at = [&](double minutes) {
        for (const PressurePoint& point : gas.curve) {
            if (std::abs(point.time.value() - minutes) < 1e-9) return point.gauge;
        }
        ADD_FAILURE() << minutes;
        return Bars(0.0);
    };
    const double breathed_on_the_way_up =
        moles_at(scene, plan, reading_at(28.0)) - moles_at(scene, plan, reading_at(30.0));
    ASSERT_LT(gas.minimum_gas.value(), gas.leave_pressure.value());
    EXPECT_NEAR(moles_at(scene, plan, gas.leave_pressure) - breathed_on_the_way_up,
                moles_at(scene, plan, plan.limits.reserve), 1e-6);
}

TEST(LeavePressure, IsNeverBelowTheMinimumGas) {
    Scene scene = sound_scene();
    rule_of(scene.rules, RuleKind::reserve_pressure_bar).value = 10.0;
    const GuestGas gas = plan_of(scene).guests.front();
    EXPECT_GT(gas.minimum_gas.value(), 15.0);
    // With what a gauge may read too high.
    EXPECT_NEAR(gas.leave_pressure.value(), (gas.minimum_gas + gauge_error).value(), 1e-6);
}

TEST(TurnPressure, HalvesWhatTheTourMayUse) {
    const Scene scene = sound_scene();
    const Plan plan = plan_of(scene);
    const GuestGas& gas = plan.guests.front();
    double at_tour = 0.0;
    for (const PressurePoint& point : gas.curve) {
        if (std::abs(point.time.value() - 13.0) < 1e-9) at_tour = moles_at(scene, plan, point.gauge);
    }
    ASSERT_GT(at_tour, 0.0);
    EXPECT_NEAR(moles_at(scene, plan, gas.turn_pressure),
                (at_tour + moles_at(scene, plan, gas.leave_pressure)) / 2.0, 1e-6);
}

TEST(Pressures, AreOrderedTurnLeaveReserve) {
    Scene scene = sound_scene();
    for (const double bar : {40.0, 60.0, 80.0, 120.0, 200.0, 232.0}) {
        for (const double rmv : {8.0, 20.0, 45.0, 90.0}) {
            Guest& guest = scene.session.guests.front();
            guest.kit.cylinder->fill_pressure = Bars(bar);
            guest.measured_rmv = LitersPerMinute(rmv);
            const Plan plan = plan_of(scene);
            const GuestGas& gas = plan.guests.front();
            EXPECT_GE(gas.turn_pressure.value(), gas.leave_pressure.value() - 1e-9);
            EXPECT_GE(gas.leave_pressure.value(), plan.limits.reserve.value() - 1e-9);
            EXPECT_GE(gas.signal_pressure.value(), plan.limits.reserve.value());
            EXPECT_GE(gas.signal_pressure.value(), gas.minimum_gas.value());
        }
    }
}

TEST(SignalPressure, IsTheGreaterRoundedUpToTen) {
    Scene scene = sound_scene();
    const auto signal_at = [&](double reserve) {
        rule_of(scene.rules, RuleKind::reserve_pressure_bar).value = reserve;
        return plan_of(scene).guests.front().signal_pressure.value();
    };
    EXPECT_EQ(signal_at(50.0), 50.0);
    EXPECT_EQ(signal_at(50.5), 60.0);
    EXPECT_EQ(signal_at(59.9), 60.0);
    EXPECT_EQ(signal_at(60.0), 60.0);
    EXPECT_EQ(signal_at(70.0), 70.0);
    const double least = plan_of(scene).guests.front().minimum_gas.value();
    EXPECT_EQ(signal_at(1.0), std::ceil(least / 10.0) * 10.0);
}

TEST(MinimumGas, AgreesWithASumByHand) {
    // One minute at 10 m and 10 m up at 9 m/min, two people on 50 + 30 L/min, over 10 bar that the
    // first stage needs. Fresh water of 4 C, ideal gas; a real one deviates by under 2 % here.
    Scene scene = sound_scene();
    scene.session.site.salinity = PracticalSalinity{0.0};
    scene.session.site.latitude = Degrees(45.0);
    scene.session.conditions.barometer = Pascals(101325.0);
    scene.session.conditions.water_temperature = celsius(4.0);
    scene.session.profile.points[2].depth = meters(10.0);
    scene.session.profile.points[3].depth = meters(10.0);
    scene.session.profile.points[4].depth = meters(10.0);
    const double bottom = 1.01325 + 999.97 * 9.8062 * 10.0 / 1e5;                 // 1.9939 bar
    const double load = 1.0 * bottom + 10.0 / 9.0 * (bottom + 1.01325) / 2.0;     // 3.6645 bar min
    const double by_hand = 10.0 + 80.0 * load / 12.0;                             // 34.43 bar
    EXPECT_NEAR(plan_of(scene).guests.front().minimum_gas.value(), by_hand, 0.02 * by_hand);
}

TEST(MinimumGas, NeedsMorePressureInASmallerCylinderAndASlowerAscent) {
    Scene scene = sound_scene();
    const double in_twelve = plan_of(scene).guests.front().minimum_gas.value();
    scene.session.guests.front().kit.cylinder->type = CylinderTypeId("steel-6");
    const double in_six = plan_of(scene).guests.front().minimum_gas.value();
    EXPECT_NEAR((in_six - 10.0) / (in_twelve - 10.0), 2.0, 0.02);
    rule_of(scene.rules, RuleKind::max_ascent_rate_m_per_min).value = 4.5;
    EXPECT_GT(plan_of(scene).guests.front().minimum_gas.value(), in_six);
}

}  // namespace
}  // namespace leadline
