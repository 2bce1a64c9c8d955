// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/forecast_plan.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

const GroupForecast& forecast_of(const Plan& plan, const GroupId& group) {
    for (const GroupForecast& forecast : plan.forecasts) {
        if (forecast.group == group) return forecast;
    }
    static const GroupForecast none;
    ADD_FAILURE() << "no forecast of " << group.text;
    return none;
}

double middle(const TimeBand& band) { return band.middle.value_or(Minutes(1e9)).value(); }

TEST(Forecast, CoversEveryGuestWithACylinder) {
    const Plan plan = plan_of(sound_scene());
    const GroupForecast& forecast = forecast_of(plan, blue_group);
    ASSERT_EQ(forecast.guests.size(), 2U);
    double sum = 0.0;
    for (const GuestForecast& guest : forecast.guests) {
        sum += guest.ends_dive;
        EXPECT_LT(*guest.turn.early, *guest.turn.middle);
        EXPECT_LT(*guest.turn.middle, *guest.turn.late);
        EXPECT_LT(*guest.turn.middle, *guest.reserve.middle);
    }
    EXPECT_NEAR(sum, 1.0, 1e-6);
    EXPECT_EQ(forecast.runs.runs, forecast_runs);
}

TEST(Forecast, MedianOfOneGuestIsThePlanItself) {
    const Plan plan = plan_of(sound_scene());
    const GroupForecast& forecast = forecast_of(plan, blue_group);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_NEAR(middle(forecast.guests[i].reserve), plan.guests[i].minutes_to_reserve->value(),
                    1e-9);
    }
}

TEST(Forecast, FirstOfTheGroupIsSoonerThanAnyOne) {
    const Plan plan = plan_of(sound_scene());
    const GroupForecast& forecast = forecast_of(plan, blue_group);
    for (const GuestForecast& guest : forecast.guests) {
        EXPECT_LT(middle(forecast.first_at_reserve), middle(guest.reserve));
    }
}

TEST(Forecast, AgreesWithItsRuns) {
    const Plan plan = plan_of(sound_scene());
    const GroupForecast& forecast = forecast_of(plan, blue_group);
    EXPECT_NEAR(forecast.runs.completes, forecast.completes,
                4.0 * std::max(forecast.runs.completes_error, 1e-4));
    for (std::size_t i = 0; i < forecast.guests.size(); ++i) {
        EXPECT_NEAR(forecast.runs.first[i], forecast.guests[i].ends_dive, 0.015);
    }
}

TEST(Forecast, MishapsNeverHelp) {
    const Plan plan = plan_of(sound_scene());
    const GroupForecast& forecast = forecast_of(plan, blue_group);
    EXPECT_LT(forecast.completes_after_loss, forecast.completes);
    EXPECT_LE(forecast.completes_after_free_flow, forecast.runs.completes);
    ASSERT_TRUE(forecast.sharing_lasts);
    EXPECT_GT(*forecast.sharing_lasts, 0.5);
    EXPECT_LE(*forecast.sharing_lasts, 1.0);
}

TEST(Forecast, WithoutTheInstructorsCylinderSaysNothingOfSharing) {
    Scene scene = sound_scene();
    scene.session.staff.front().cylinder.reset();
    EXPECT_FALSE(forecast_of(plan_of(scene), blue_group).sharing_lasts);
}

TEST(Forecast, WithoutCylindersThereIsNone) {
    Scene scene = sound_scene();
    for (Guest& guest : scene.session.guests) guest.kit.cylinder.reset();
    EXPECT_TRUE(plan_of(scene).forecasts.empty());
    EXPECT_TRUE(plan_of(scene).levers.empty());
}

TEST(Forecast, ANervousGuestIsLikelyFirst) {
    Scene scene = sound_scene();
    scene.session.guests[1].breathing = BreathingClass::nervous;
    const Plan plan = plan_of(scene);
    const GroupForecast& forecast = forecast_of(plan, blue_group);
    EXPECT_EQ(forecast.likely_first, second_guest);
    EXPECT_GT(forecast.guests[1].ends_dive, 0.7);
}

TEST(Forecast, IsTheSameEveryTime) {
    const Plan once = plan_of(sound_scene());
    const Plan again = plan_of(sound_scene());
    EXPECT_EQ(once.forecasts[0].runs.middle_load, again.forecasts[0].runs.middle_load);
    EXPECT_EQ(once.forecasts[0].completes_after_free_flow,
              again.forecasts[0].completes_after_free_flow);
}

TEST(Forecast, RefusesANumberOfRunsThatIsNone) {
    const Scene scene = sound_scene();
    EXPECT_FALSE(plan(scene.session, scene.rules, 0));
    EXPECT_FALSE(plan(scene.session, scene.rules, 2'000'000));
}

TEST(GaugeAndFill, AWarmFillLosesPressureInColdWater) {
    Scene scene = sound_scene();
    scene.session.guests[0].kit.cylinder->fill_temperature = celsius(45.0);
    scene.session.conditions.water_temperature = celsius(12.0);
    const GuestGas gas = plan_of(scene).guests[0];
    EXPECT_GT(gas.lost_by_cooling.value(), 15.0);
    EXPECT_NEAR((gas.start_pressure + gas.lost_by_cooling).value(),
                scene.session.guests[0].kit.cylinder->fill_pressure.value(), 1e-9);
}

TEST(GaugeAndFill, TheSignalAllowsForAGaugeThatReadsHigh) {
    Scene scene = sound_scene();
    for (double bar = 20.0; bar < 100.0; bar += 5.0) {
        scene.session.profile.points[1].depth = meters(bar / 2.0);
        scene.session.profile.points[2].depth = meters(bar / 2.0);
        const auto result = plan(scene.session, scene.rules, 1);
        if (!result) continue;
        const GuestGas& gas = result->guests[0];
        EXPECT_GE(gas.signal_pressure.value(), (gas.minimum_gas + gauge_error).value() - 1e-9);
        EXPECT_EQ(std::fmod(gas.signal_pressure.value(), 10.0), 0.0);
    }
}

}  // namespace
}  // namespace leadline
