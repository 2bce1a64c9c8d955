// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/breathing_curve.h"

#include "tests/planning/scene.h"

namespace leadline {
namespace {

WaterColumn sound_sea() {
    const Result<WaterColumn> made =
        WaterColumn::make(Pascals(101325.0), MetersPerSecondSquared(9.80665),
                          PracticalSalinity{35.0}, celsius(18.0));
    EXPECT_TRUE(made);
    return made.value();
}

double bar_at(const WaterColumn& water, Depth depth) {
    return Bars(water.absolute_pressure(depth)).value();
}

Profile stepped() {
    const auto point = [](double minutes, double depth, Phase phase) {
        return ProfilePoint{Minutes(minutes), meters(depth), phase};
    };
    return {{point(0, 0, Phase::surface), point(3, 0, Phase::surface), point(4, 3, Phase::descent),
             point(12, 3, Phase::skills), point(14, 11, Phase::descent), point(25, 7, Phase::tour),
             point(30, 7, Phase::tour), point(32, 0, Phase::ascent), point(33, 0, Phase::surface)}};
}

TEST(BreathingCurve, IntegratesPressureTimesFactorExactly) {
    const WaterColumn water = sound_sea();
    const BreathingCurve curve = BreathingCurve::along(stepped(), water);
    // Legs one by one: minutes x factor x mean of the pressures at both ends.
    const double p0 = bar_at(water, meters(0));
    const double p3 = bar_at(water, meters(3));
    const double p7 = bar_at(water, meters(7));
    const double p11 = bar_at(water, meters(11));
    double load = 3 * 1.2 * p0;
    EXPECT_NEAR(curve.load_at(Minutes(3)).value(), load, 1e-12);
    load += 1 * 1.1 * (p0 + p3) / 2;
    EXPECT_NEAR(curve.load_at(Minutes(4)).value(), load, 1e-12);
    load += 8 * 1.2 * p3;
    EXPECT_NEAR(curve.load_at(Minutes(12)).value(), load, 1e-12);
    load += 2 * 1.1 * (p3 + p11) / 2;
    load += 11 * 1.0 * (p11 + p7) / 2;
    // Within the leg: 2 min at the pressure linear in time.
    EXPECT_NEAR(curve.load_at(Minutes(16)).value(),
                curve.load_at(Minutes(14)).value() +
                    2 * (p11 + (p11 + (p7 - p11) * 2.0 / 11.0)) / 2,
                1e-12);
    load += 5 * 1.0 * p7;
    load += 2 * 1.0 * (p7 + p0) / 2;
    load += 1 * 1.2 * p0;
    EXPECT_NEAR(curve.total().value(), load, 1e-12);
}

TEST(BreathingCurve, LiesAHairAboveTheTruePressure) {
    const WaterColumn water = sound_sea();
    Profile deep{{{Minutes(0), meters(0), Phase::tour},
                  {Minutes(10), meters(60), Phase::tour},
                  {Minutes(20), meters(0), Phase::tour}}};
    const BreathingCurve curve = BreathingCurve::along(deep, water);
    constexpr int steps = 20000;
    double load = 0.0;
    for (int i = 0; i < steps; ++i) {
        const Minutes middle((i + 0.5) * 20.0 / steps);
        load += 20.0 / steps * bar_at(water, depth_at(deep, middle));
    }
    EXPECT_GE(curve.total().value(), load);
    EXPECT_LE(curve.total().value(), load * (1.0 + 1e-4));
}

TEST(BreathingCurve, NeverFalls) {
    const BreathingCurve curve = BreathingCurve::along(stepped(), sound_sea());
    double last = -1.0;
    for (double minutes = 0.0; minutes <= 33.0; minutes += 0.01) {
        const double load = curve.load_at(Minutes(minutes)).value();
        ASSERT_GT(load, last) << minutes;
        last = load;
    }
}

TEST(BreathingCurve, StaysAtItsEndsOutsideTheDive) {
    const BreathingCurve curve = BreathingCurve::along(stepped(), sound_sea());
    EXPECT_EQ(curve.load_at(Minutes(-5)).value(), 0.0);
    EXPECT_EQ(curve.load_at(Minutes(0)).value(), 0.0);
    EXPECT_EQ(curve.load_at(Minutes(33)).value(), curve.total().value());
    EXPECT_EQ(curve.load_at(Minutes(500)).value(), curve.total().value());
}

TEST(BreathingCurve, GivesTheTimeOfALoadBackToABillionth) {
    const BreathingCurve curve = BreathingCurve::along(stepped(), sound_sea());
    for (double minutes = 0.0; minutes <= 33.0; minutes += 0.0371) {
        const std::optional<Minutes> back = curve.time_of(curve.load_at(Minutes(minutes)));
        ASSERT_TRUE(back) << minutes;
        EXPECT_NEAR(back->value(), minutes, 1e-9);
    }
    for (const ProfilePoint& corner : stepped().points) {
        const std::optional<Minutes> back = curve.time_of(curve.load_at(corner.time));
        ASSERT_TRUE(back) << corner.time.value();
        EXPECT_NEAR(back->value(), corner.time.value(), 1e-9);
    }
}

TEST(BreathingCurve, HasNoTimeForMoreThanItsTotal) {
    const BreathingCurve curve = BreathingCurve::along(stepped(), sound_sea());
    EXPECT_FALSE(curve.time_of(BarMinutes(curve.total().value() + 0.001)));
    ASSERT_TRUE(curve.time_of(curve.total()));
    EXPECT_NEAR(curve.time_of(curve.total())->value(), 33.0, 1e-9);
    ASSERT_TRUE(curve.time_of(BarMinutes(-1.0)));
    EXPECT_EQ(curve.time_of(BarMinutes(-1.0))->value(), 0.0);
}

TEST(HeldCurve, IsTheDiveUpToTheFinalAscent) {
    const BreathingCurve dive = BreathingCurve::along(stepped(), sound_sea());
    const BreathingCurve held = BreathingCurve::held_at_depth(stepped(), sound_sea());
    for (double minutes = 0.0; minutes <= 30.0; minutes += 0.25) {
        EXPECT_DOUBLE_EQ(held.load_at(Minutes(minutes)).value(),
                         dive.load_at(Minutes(minutes)).value())
            << minutes;
    }
}

TEST(HeldCurve, GoesOnAtTheDepthTheAscentStartsFrom) {
    const WaterColumn water = sound_sea();
    const BreathingCurve held = BreathingCurve::held_at_depth(stepped(), water);
    const double at_ascent = held.load_at(Minutes(30)).value();
    for (const double more : {1.0, 10.0, 100.0, 210.0}) {
        EXPECT_NEAR(held.load_at(Minutes(30 + more)).value(),
                    at_ascent + more * bar_at(water, meters(7)), 1e-9)
            << more;
    }
}

TEST(HeldCurve, StaysAtTheBottomOfABounce) {
    const WaterColumn water = sound_sea();
    const Profile bounce{{{Minutes(0), meters(0), Phase::tour},
                          {Minutes(2), meters(10), Phase::tour},
                          {Minutes(4), meters(0), Phase::ascent}}};
    const BreathingCurve held = BreathingCurve::held_at_depth(bounce, water);
    EXPECT_NEAR((held.load_at(Minutes(12)) - held.load_at(Minutes(2))).value(),
                10 * bar_at(water, meters(10)), 1e-9);
}

TEST(HeldCurve, LastsPastTheLongestDive) {
    Profile longest = stepped();
    longest.points.back().time = longest_profile;
    const BreathingCurve held = BreathingCurve::held_at_depth(longest, sound_sea());
    EXPECT_GT(held.load_at(Minutes(260)).value(), held.load_at(Minutes(240)).value());
}

}  // namespace
}  // namespace leadline
