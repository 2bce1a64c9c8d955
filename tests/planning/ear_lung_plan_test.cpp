// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/ear_lung_plan.h"

#include <cmath>
#include <limits>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

WaterColumn water() {
    return WaterColumn::make(Pascals(101325.0), MetersPerSecondSquared(9.80665),
                             PracticalSalinity{38.0}, celsius(24.0))
        .value();
}

TEST(EarLungPlan, FollowsThePlannedWayDown) {
    const Profile profile = sound_scene().session.profile;  // leaves at 3 min, 8 m at 5 min
    const EarLungCharts charts = must(plan_ears_and_lungs(water(), profile, Meters(0.5)));
    EXPECT_EQ(charts.step.value(), 0.5);
    EXPECT_EQ(charts.ears.cleared.front().time.value(), 3.0);
    EXPECT_EQ(charts.ears.cleared.back().time.value(), 5.0);
    EXPECT_EQ(charts.ears.cleared.back().depth, meters(8.0));
    EXPECT_FALSE(charts.ears.locked_at);
    EXPECT_LT(charts.ears.largest, charts.locking);
    EXPECT_GT(charts.ears.never_cleared.back().difference, charts.drum_tears);
    EXPECT_NEAR(charts.largest_step.value(), 0.53, 0.01);
    EXPECT_EQ(charts.lungs.size(), 17U);
    EXPECT_EQ(charts.lungs.back().from, meters(8.0));
}

TEST(EarLungPlan, FollowsADescentInTwoParts) {
    const Profile profile =
        standard_profile(meters(9.0), meters(3.0), Minutes(6.0), Minutes(12.0));
    ASSERT_TRUE(check(profile));
    const EarLungCharts charts = must(plan_ears_and_lungs(water(), profile, Meters(0.5)));
    EXPECT_EQ(charts.ears.cleared.back().depth, meters(9.0));
    EXPECT_GT(charts.ears.cleared.back().time.value(), 9.0);
    // Skills at 3 m: nothing changes there.
    EXPECT_LE(charts.ears.largest.value(), 0.5 * 1030.0 * 9.81);
}

TEST(EarLungPlan, ShowsAStepBeyondTheLocking) {
    const Profile profile = sound_scene().session.profile;
    const EarLungCharts charts = must(plan_ears_and_lungs(water(), profile, Meters(1.5)));
    ASSERT_TRUE(charts.ears.locked_at);
    EXPECT_LT(charts.ears.locked_at->meters().value(), 1.2);
}

TEST(EarLungPlan, RefusesWhatItCannotDraw) {
    Profile profile = sound_scene().session.profile;
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {nan, 0.0, 21.0}) {
        const auto refused = plan_ears_and_lungs(water(), profile, Meters(bad));
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::out_of_range);
        EXPECT_EQ(refused.error().place, "step");
    }
    profile.points[2].depth = meters(nan);
    const auto refused = plan_ears_and_lungs(water(), profile, Meters(0.5));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().place, "/profile/points/2/depth_m");
}

}  // namespace
}  // namespace leadline
