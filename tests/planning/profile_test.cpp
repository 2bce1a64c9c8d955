// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/profile.h"

#include <limits>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

ProfilePoint at(double minutes, double depth, Phase phase = Phase::tour) {
    return {Minutes(minutes), meters(depth), phase};
}

Profile plain_profile() { return {{at(0, 0), at(2, 8), at(20, 8), at(22, 0)}}; }

void expect_error(const Profile& profile, ErrorCode code, const std::string& place) {
    const Result<Done> checked = check(profile);
    ASSERT_FALSE(checked) << place;
    EXPECT_EQ(checked.error().code, code) << place;
    EXPECT_EQ(checked.error().place, place);
}

TEST(ProfileCheck, AcceptsAPlainDive) { EXPECT_TRUE(check(plain_profile())); }

TEST(ProfileCheck, WantsThreeToFiftyPoints) {
    expect_error({}, ErrorCode::bad_count, "/profile/points");
    expect_error({{at(0, 0), at(10, 0)}}, ErrorCode::bad_count, "/profile/points");
    EXPECT_TRUE(check(Profile{{at(0, 0), at(10, 5), at(20, 0)}}));
    Profile many{{at(0, 0)}};
    for (int i = 1; i < 49; ++i) many.points.push_back(at(i, 5));
    many.points.push_back(at(49, 0));
    EXPECT_TRUE(check(many));
    many.points.insert(many.points.begin() + 1, at(0.5, 5));
    expect_error(many, ErrorCode::bad_count, "/profile/points");
}

TEST(ProfileCheck, StartsAtTimeZeroAndEndsAtTheSurface) {
    Profile late = plain_profile();
    late.points.front().time = Minutes(0.5);
    expect_error(late, ErrorCode::out_of_range, "/profile/points/0/time_min");
    Profile deep_start = plain_profile();
    deep_start.points.front().depth = meters(0.1);
    expect_error(deep_start, ErrorCode::profile_not_closed, "/profile/points/0/depth_m");
    Profile deep_end = plain_profile();
    deep_end.points.back().depth = meters(0.1);
    expect_error(deep_end, ErrorCode::profile_not_closed, "/profile/points/3/depth_m");
}

TEST(ProfileCheck, WantsTimesASecondApart) {
    Profile profile = plain_profile();
    profile.points[2].time = profile.points[1].time + Minutes(1.0 / 60.0);
    EXPECT_TRUE(check(profile));
    profile.points[2].time = profile.points[1].time + Minutes(0.5 / 60.0);
    expect_error(profile, ErrorCode::time_not_increasing, "/profile/points/2/time_min");
    profile.points[2].time = profile.points[1].time - Minutes(1.0);
    expect_error(profile, ErrorCode::time_not_increasing, "/profile/points/2/time_min");
}

TEST(ProfileCheck, KeepsTimeAndDepthInRange) {
    Profile profile = plain_profile();
    profile.points.back().time = longest_profile;
    EXPECT_TRUE(check(profile));
    profile.points.back().time = Minutes(240.01);
    expect_error(profile, ErrorCode::out_of_range, "/profile/points/3/time_min");
    profile = plain_profile();
    profile.points[1].depth = deepest_profile;
    EXPECT_TRUE(check(profile));
    profile.points[1].depth = meters(60.01);
    expect_error(profile, ErrorCode::out_of_range, "/profile/points/1/depth_m");
    profile.points[1].depth = meters(-0.01);
    expect_error(profile, ErrorCode::out_of_range, "/profile/points/1/depth_m");
}

TEST(ProfileCheck, RefusesNumbersThatAreNone) {
    for (const double bad : {std::numeric_limits<double>::quiet_NaN(),
                             std::numeric_limits<double>::infinity(),
                             -std::numeric_limits<double>::infinity()}) {
        Profile profile = plain_profile();
        profile.points[1].depth = meters(bad);
        EXPECT_FALSE(check(profile));
        profile = plain_profile();
        profile.points[1].time = Minutes(bad);
        EXPECT_FALSE(check(profile));
    }
}

TEST(ProfileCheck, RefusesADiveThatNeverLeavesTheSurface) {
    expect_error({{at(0, 0), at(5, 0), at(10, 0)}}, ErrorCode::out_of_range, "/profile/points");
}

TEST(ProfileDepth, FollowsTheLinesBetweenCorners) {
    const Profile profile = plain_profile();
    EXPECT_EQ(depth_at(profile, Minutes(0)).meters().value(), 0.0);
    EXPECT_DOUBLE_EQ(depth_at(profile, Minutes(0.5)).meters().value(), 2.0);
    EXPECT_DOUBLE_EQ(depth_at(profile, Minutes(2)).meters().value(), 8.0);
    EXPECT_DOUBLE_EQ(depth_at(profile, Minutes(11)).meters().value(), 8.0);
    EXPECT_DOUBLE_EQ(depth_at(profile, Minutes(21.5)).meters().value(), 2.0);
    EXPECT_EQ(depth_at(profile, Minutes(22)).meters().value(), 0.0);
}

TEST(ProfileDepth, IsZeroOutsideTheDive) {
    EXPECT_EQ(depth_at(plain_profile(), Minutes(-1)).meters().value(), 0.0);
    EXPECT_EQ(depth_at(plain_profile(), Minutes(100)).meters().value(), 0.0);
    EXPECT_EQ(depth_at(Profile{}, Minutes(1)).meters().value(), 0.0);
}

TEST(ProfileFigures, OfAPlainDive) {
    const Profile profile = plain_profile();
    EXPECT_EQ(deepest(profile).meters().value(), 8.0);
    EXPECT_EQ(duration(profile).value(), 22.0);
    // 2 min at 4 m, 18 min at 8 m, 2 min at 4 m.
    EXPECT_DOUBLE_EQ(mean_depth(profile).meters().value(), (2 * 4.0 + 18 * 8.0 + 2 * 4.0) / 22.0);
    EXPECT_DOUBLE_EQ(fastest_descent(profile).value(), 4.0);
    EXPECT_DOUBLE_EQ(fastest_ascent(profile).value(), 4.0);
}

TEST(ProfileFigures, FindTheFastestOfSeveralLegs) {
    const Profile profile{{at(0, 0), at(1, 3), at(1.5, 9), at(10, 9), at(11, 3), at(20, 0)}};
    EXPECT_DOUBLE_EQ(fastest_descent(profile).value(), 12.0);
    EXPECT_DOUBLE_EQ(fastest_ascent(profile).value(), 6.0);
}

TEST(ProfileFigures, OfNothingAreZero) {
    EXPECT_EQ(duration(Profile{}).value(), 0.0);
    EXPECT_EQ(deepest(Profile{}).meters().value(), 0.0);
    EXPECT_EQ(mean_depth(Profile{}).meters().value(), 0.0);
}

TEST(FinalAscent, StartsAtTheEndOfTheTour) {
    EXPECT_EQ(final_ascent_start(plain_profile()), 2U);
    EXPECT_EQ(final_ascent_start(sound_scene().session.profile), 4U);
}

TEST(FinalAscent, StartsAtTheOnlyCornerOfABounce) {
    EXPECT_EQ(final_ascent_start(Profile{{at(0, 0), at(10, 5), at(20, 0)}}), 1U);
}

TEST(FinalAscent, LooksThroughALastStretchAtTheSurface) {
    EXPECT_EQ(final_ascent_start(Profile{{at(0, 0), at(2, 8), at(20, 8), at(22, 0), at(30, 0)}}), 2U);
}

TEST(FinalAscent, IncludesAChangeOfSpeedOnTheWayUp) {
    const auto up = Phase::ascent;
    EXPECT_EQ(final_ascent_start(
                  Profile{{at(0, 0), at(2, 8), at(20, 8), at(21, 5, up), at(25, 0, up)}}),
              2U);
}

TEST(FinalAscent, IncludesAStopOnTheWayUp) {
    const auto up = Phase::ascent;
    EXPECT_EQ(final_ascent_start(Profile{{at(0, 0), at(2, 10), at(20, 10), at(21, 5, up),
                                          at(24, 5, up), at(25, 0, up)}}),
              2U);
}

TEST(FinalAscent, StartsAfterATourThatRises) {
    EXPECT_EQ(final_ascent_start(Profile{{at(0, 0), at(2, 10), at(15, 10), at(25, 5),
                                          at(26, 0, Phase::ascent)}}),
              3U);
}

TEST(FinalAscent, IgnoresAnEarlierVisitToTheSurface) {
    EXPECT_EQ(final_ascent_start(
                  Profile{{at(0, 0), at(2, 8), at(5, 0), at(7, 0), at(9, 6), at(20, 6), at(22, 0)}}),
              5U);
}

TEST(FinalAscent, TakesTheLastLegAsAscentWhateverItsMark) {
    EXPECT_EQ(final_ascent_start(Profile{{at(0, 0), at(2, 8), at(20, 8, Phase::skills),
                                          at(22, 0, Phase::descent)}}),
              2U);
}

TEST(StandardProfile, ReachesTheDepthsAskedFor) {
    const Profile profile = standard_profile(meters(8), meters(3), Minutes(10), Minutes(20));
    EXPECT_TRUE(check(profile));
    EXPECT_EQ(deepest(profile).meters().value(), 8.0);
    double skills = 0.0;
    double tour = 0.0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        const Minutes leg = profile.points[i].time - profile.points[i - 1].time;
        if (profile.points[i].phase == Phase::skills) {
            skills += leg.value();
            EXPECT_EQ(profile.points[i].depth.meters().value(), 3.0);
        }
        if (profile.points[i].phase == Phase::tour) {
            tour += leg.value();
            EXPECT_EQ(profile.points[i].depth.meters().value(), 8.0);
        }
    }
    EXPECT_NEAR(skills, 10.0, 1.0 / 60.0);
    EXPECT_NEAR(tour, 20.0, 1.0 / 60.0);
}

TEST(StandardProfile, IsSoundForEveryDepthAndTime) {
    for (const double deep : {0.5, 1.0, 2.0, 5.0, 8.0, 8.01, 12.0, 18.0, 60.0}) {
        for (const double skills_depth : {0.0, 0.01, 1.0, 3.0, 7.99, 8.0, 12.0}) {
            for (const double minutes : {0.0, 0.001, 1.0, 10.0, 60.0}) {
                const Profile profile = standard_profile(meters(deep), meters(skills_depth),
                                                         Minutes(minutes), Minutes(20));
                const Result<Done> checked = check(profile);
                EXPECT_TRUE(checked) << deep << " " << skills_depth << " " << minutes;
                if (!checked) continue;
                EXPECT_LE(fastest_descent(profile).value(), 6.0 + 1e-9) << deep;
                EXPECT_LE(fastest_ascent(profile).value(), 9.0) << deep;
            }
        }
    }
}

TEST(PhaseFactor, NeverTakesAirOffTheRmv) {
    for (const Phase phase :
         {Phase::surface, Phase::descent, Phase::skills, Phase::tour, Phase::ascent}) {
        EXPECT_GE(rmv_factor(phase), 1.0);
        EXPECT_LE(rmv_factor(phase), 1.5);
    }
    EXPECT_EQ(rmv_factor(Phase::tour), 1.0);
}

}  // namespace
}  // namespace leadline
