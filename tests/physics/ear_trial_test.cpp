// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/ear_trial.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/physics/support.h"

namespace leadline {
namespace {

Depth at(double meters) {
    return Depth(Meters(meters));
}

/// Down in steps of a centimetre without clearing.
EarTrial taken_down(const WaterColumn& water, double to) {
    EarTrial trial = ear_trial_at_surface(water);
    for (double depth = 0.01; depth < to; depth += 0.01) {
        trial = ear_trial_moved(water, trial, at(depth));
    }
    return ear_trial_moved(water, trial, at(to));
}

TEST(EarTrial, StartsFineAtTheSurface) {
    const EarTrial trial = ear_trial_at_surface(sea(18.0));
    EXPECT_EQ(trial.feeling, EarFeeling::fine);
    EXPECT_DOUBLE_EQ(trial.difference.value(), 0.0);
    EXPECT_TRUE(can_clear(trial));
}

TEST(EarTrial, WithoutClearingGoesThroughEveryFeelingWhereTheThresholdsLie) {
    const WaterColumn water = sea(18.0);
    const std::vector<std::pair<Pascals, EarFeeling>> steps{
        {ear_opening_least, EarFeeling::discomfort},
        {ear_pain_usual, EarFeeling::pain},
        {eustachian_tube_locking, EarFeeling::locked}};
    EarFeeling before = EarFeeling::fine;
    for (const auto& [threshold, feeling] : steps) {
        const double depth = water.depth_at(water.surface_pressure() + threshold).meters().value();
        EXPECT_EQ(taken_down(water, depth - 0.005).feeling, before) << depth;
        EXPECT_EQ(taken_down(water, depth + 0.005).feeling, feeling) << depth;
        before = feeling;
    }
}

TEST(EarTrial, LocksWhereTheLadderSaysSo) {
    const WaterColumn water = sea(18.0);
    const ClearingLadder ladder =
        must(clearing_ladder(water, Meters(0.5), at(8.0), MetersPerMinute(9.0)));
    const double locks = ladder.locks_at.meters().value();
    EXPECT_FALSE(taken_down(water, locks - 0.01).locked);
    EXPECT_TRUE(taken_down(water, locks + 0.01).locked);
    EXPECT_NEAR(taken_down(water, 8.0).difference.value(), ladder.uncleared_at_bottom.value(), 1.0);
}

TEST(EarTrial, ClearingEveryStepOfTheLadderNeverHurts) {
    const WaterColumn water = sea(4.0);
    EarTrial trial = ear_trial_at_surface(water);
    for (int step = 1; step <= 16; ++step) {
        trial = ear_trial_moved(water, trial, at(0.5 * step));
        EXPECT_NE(trial.feeling, EarFeeling::pain) << step;
        EXPECT_NE(trial.feeling, EarFeeling::locked) << step;
        trial = ear_trial_cleared(water, trial);
        EXPECT_DOUBLE_EQ(trial.difference.value(), 0.0);
        EXPECT_EQ(trial.feeling, EarFeeling::fine);
    }
}

TEST(EarTrial, ClearingDoesNothingInPainOrWhenLocked) {
    const WaterColumn water = sea(18.0);
    for (const double depth : {0.9, 1.5, 8.0}) {
        const EarTrial trial = taken_down(water, depth);
        EXPECT_FALSE(can_clear(trial)) << depth;
        const EarTrial tried = ear_trial_cleared(water, trial);
        EXPECT_EQ(tried.feeling, trial.feeling);
        EXPECT_DOUBLE_EQ(tried.difference.value(), trial.difference.value());
    }
}

TEST(EarTrial, GoingUpUnlocksOnlyWhenNearlyAllIsGone) {
    const WaterColumn water = sea(18.0);
    const EarTrial locked = taken_down(water, 1.5);
    ASSERT_TRUE(locked.locked);
    // Half way up the difference is that of a pain no more, but the tube stays shut.
    const EarTrial half = ear_trial_moved(water, locked, at(0.5));
    EXPECT_LT(half.difference, ear_pain_usual);
    EXPECT_EQ(half.feeling, EarFeeling::locked);
    EXPECT_FALSE(can_clear(half));
    const EarTrial up = ear_trial_moved(water, half, at(0.1));
    EXPECT_EQ(up.feeling, EarFeeling::fine);
    EXPECT_TRUE(can_clear(up));
}

TEST(EarTrial, AirLeavesByItselfOnTheWayUp) {
    const WaterColumn water = sea(18.0);
    EarTrial trial = ear_trial_at_surface(water);
    trial = ear_trial_moved(water, trial, at(0.3));
    trial = ear_trial_cleared(water, trial);
    trial = ear_trial_moved(water, trial, at(0.0));
    EXPECT_DOUBLE_EQ(trial.difference.value(), 0.0);
    EXPECT_EQ(trial.feeling, EarFeeling::fine);
}

TEST(EarTrial, StaysInTheWater) {
    const WaterColumn water = sea(18.0);
    const EarTrial trial = ear_trial_at_surface(water);
    EXPECT_EQ(ear_trial_moved(water, trial, at(-3.0)).depth, at(0.0));
    EXPECT_EQ(ear_trial_moved(water, trial, at(90.0)).depth, at(60.0));
}

}  // namespace
}  // namespace leadline
