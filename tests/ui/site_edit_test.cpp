// SPDX-License-Identifier: GPL-3.0-or-later
// Hand edits of a profile, and how the drawing lays itself out.
#include <gmock/gmock.h>

#include <QFontMetricsF>
#include <QGuiApplication>

#include "ui/site/profile_edit.h"
#include "ui/site/profile_scale.h"
#include "ui/site/profile_scene.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

Profile plain_profile() {
    return standard_profile(Depth(Meters(8.0)), Depth(Meters(2.0)), Minutes(8.0), Minutes(18.0));
}

double minutes_at(const Profile& profile, std::size_t index) {
    return profile.points[index].time.value();
}
double meters_at(const Profile& profile, std::size_t index) {
    return profile.points[index].depth.meters().value();
}

TEST(ProfileEditTest, ACornerIsHeldBetweenItsNeighboursWhenTheyStay) {
    const Profile before = plain_profile();
    const Profile late =
        with_corner_at(before, 2, Minutes(99.0), Depth(Meters(3.0)), LaterCorners::stay);
    EXPECT_LT(minutes_at(late, 2), minutes_at(late, 3));
    EXPECT_EQ(minutes_at(late, 3), minutes_at(before, 3));
    const Profile early =
        with_corner_at(before, 2, Minutes(0.0), Depth(Meters(3.0)), LaterCorners::stay);
    EXPECT_GT(minutes_at(early, 2), minutes_at(early, 1));
    EXPECT_TRUE(check(late).has_value());
    EXPECT_TRUE(check(early).has_value());
}

TEST(ProfileEditTest, LaterCornersKeepTheirLegsWhenTheyFollow) {
    const Profile before = plain_profile();
    const Profile moved = with_corner_at(before, 3, Minutes(minutes_at(before, 3) + 5.0),
                                         before.points[3].depth, LaterCorners::follow);
    for (std::size_t i = 4; i < before.points.size(); ++i) {
        EXPECT_NEAR(minutes_at(moved, i), minutes_at(before, i) + 5.0, 1e-9) << i;
    }
    EXPECT_NEAR(fastest_ascent(moved).value(), fastest_ascent(before).value(), 1e-9);
}

TEST(ProfileEditTest, NothingMovesPastTheLongestDive) {
    const Profile moved = with_corner_at(plain_profile(), 3, Minutes(500.0), Depth(Meters(2.0)),
                                         LaterCorners::follow);
    EXPECT_TRUE(check(moved).has_value());
    EXPECT_NEAR(duration(moved).value(), longest_profile.value(), 1e-9);
}

TEST(ProfileEditTest, TheEndsStayAtTheSurfaceAndTheStartStaysAtNought) {
    const Profile before = plain_profile();
    EXPECT_EQ(with_corner_at(before, 0, Minutes(4.0), Depth(Meters(4.0)), LaterCorners::follow),
              before);
    const std::size_t last = before.points.size() - 1;
    const Profile moved =
        with_corner_at(before, last, Minutes(60.0), Depth(Meters(4.0)), LaterCorners::stay);
    EXPECT_EQ(meters_at(moved, last), 0.0);
    EXPECT_EQ(minutes_at(moved, last), 60.0);
}

TEST(ProfileEditTest, AStepGoesToTheNextMultiple) {
    Profile profile = plain_profile();
    profile.points[2].time = Minutes(3.83);
    profile.points[2].depth = Depth(Meters(2.2));
    const Snap snap = snap_for(UnitSystem::metric, false);
    const Profile later = with_corner_stepped(profile, 2, 1, 1, snap, LaterCorners::stay);
    EXPECT_NEAR(minutes_at(later, 2), 4.0, 1e-9);
    EXPECT_NEAR(meters_at(later, 2), 2.5, 1e-9);
    const Profile sooner = with_corner_stepped(profile, 2, -1, -1, snap, LaterCorners::stay);
    EXPECT_NEAR(minutes_at(sooner, 2), 3.5, 1e-9);
    EXPECT_NEAR(meters_at(sooner, 2), 2.0, 1e-9);
    const Profile fine = with_corner_stepped(profile, 2, 0, 1, snap_for(UnitSystem::metric, true),
                                             LaterCorners::stay);
    EXPECT_NEAR(meters_at(fine, 2), 2.3, 1e-9);
    EXPECT_EQ(minutes_at(fine, 2), 3.83);
}

TEST(ProfileEditTest, FeetAreSteppedInWholeFeet) {
    Profile profile = plain_profile();
    profile.points[2].depth = Depth(Meters(10.0 * 0.3048));
    const Profile deeper = with_corner_stepped(
        profile, 2, 0, 1, snap_for(UnitSystem::imperial, false), LaterCorners::stay);
    EXPECT_NEAR(meters_at(deeper, 2) / 0.3048, 11.0, 1e-9);
}

TEST(ProfileEditTest, ALegMovesAsAWholeAndKeepsItsSlope) {
    const Profile before = plain_profile();
    ASSERT_TRUE(leg_can_move(before, 5));
    const Profile lower = with_leg_lowered(before, 5, Meters(1.5));
    EXPECT_NEAR(meters_at(lower, 4), 9.5, 1e-9);
    EXPECT_NEAR(meters_at(lower, 5), 9.5, 1e-9);
    EXPECT_NEAR(meters_at(with_leg_lowered(before, 5, Meters(-100.0)), 5), 0.0, 1e-9);
    EXPECT_FALSE(leg_can_move(before, 1));
    EXPECT_FALSE(leg_can_move(before, before.points.size() - 1));
}

TEST(ProfileEditTest, AnAddedCornerLiesOnTheLegAndGoesAgain) {
    const Profile before = plain_profile();
    Profile profile = before;
    const auto added = add_corner(profile, 3);
    ASSERT_EQ(added, std::optional<std::size_t>(3));
    EXPECT_EQ(profile.points[3].phase, before.points[3].phase);
    EXPECT_EQ(depth_at(before, profile.points[3].time), profile.points[3].depth);
    EXPECT_EQ(without_corner(profile, 3), before);
}

TEST(ProfileEditTest, ThreeCornersStayAndSoDoesTheOneUnderWater) {
    Profile least;
    least.points = {{Minutes(0.0), Depth(), Phase::surface},
                    {Minutes(5.0), Depth(Meters(4.0)), Phase::descent},
                    {Minutes(9.0), Depth(), Phase::ascent}};
    EXPECT_FALSE(corner_can_go(least, 1));
    Profile surface = least;
    surface.points.insert(surface.points.begin() + 1, {Minutes(3.0), Depth(), Phase::surface});
    ASSERT_TRUE(corner_can_go(surface, 2));
    EXPECT_EQ(without_corner(surface, 2), surface) << "a dive without depth is none";
}

TEST(ProfileEditTest, AFullProfileTakesNoMoreCorners) {
    Profile full;
    for (int i = 0; i < 50; ++i) {
        full.points.push_back({Minutes(i), Depth(Meters(i % 2 == 0 || i == 49 ? 0.0 : 3.0)),
                               Phase::tour});
    }
    ASSERT_TRUE(check(full).has_value());
    EXPECT_FALSE(add_corner(full, 5).has_value());
    EXPECT_FALSE(add_corner_at(full, Minutes(5.5), Snap{}).has_value());
}

TEST(ProfileEditTest, ThePlainDiveIsRecognisedByItsNumbers) {
    for (const double depth : {3.0, 5.3, 8.0, 12.0}) {
        for (const double skills : {0.0, 7.5, 12.0}) {
            const Profile profile = standard_profile(Depth(Meters(depth)), Depth(Meters(2.0)),
                                                     Minutes(skills), Minutes(16.0));
            EXPECT_TRUE(is_plain_dive(profile)) << depth << " m, " << skills << " min";
        }
    }
    Profile changed = plain_profile();
    changed.points[4].depth = Depth(Meters(7.0));
    EXPECT_FALSE(is_plain_dive(changed));
}

TEST(ProfileScaleTest, GoesThereAndBack) {
    const ProfileScale scale =
        fitting_scale(QRectF(40.0, 30.0, 500.0, 300.0), plain_profile(), {Depth(Meters(12.0))});
    for (const ProfilePoint& point : plain_profile().points) {
        const QPointF at = scale.at(point);
        EXPECT_TRUE(scale.plot.contains(at));
        EXPECT_NEAR(scale.time_at(at.x()).value(), point.time.value(), 1e-9);
        EXPECT_NEAR(scale.depth_at(at.y()).meters().value(), point.depth.meters().value(), 1e-9);
    }
    EXPECT_GE(scale.meters, 12.0) << "a near limit is in view";
}

TEST(ProfileScaleTest, AFarLimitDoesNotFlattenTheDive) {
    const ProfileScale scale =
        fitting_scale(QRectF(0.0, 0.0, 500.0, 300.0), plain_profile(), {Depth(Meters(40.0))});
    EXPECT_LT(scale.meters, 20.0);
}

TEST(ProfileScaleTest, MarksAreInWholeUnitsAndKeepTheirDistance) {
    const ProfileScale scale = fitting_scale(QRectF(0.0, 0.0, 500.0, 300.0), plain_profile(), {});
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        const std::vector<Depth> marks = depth_marks(scale, units, 30.0);
        ASSERT_GE(marks.size(), 3U);
        for (std::size_t i = 1; i < marks.size(); ++i) {
            EXPECT_GE(scale.y(marks[i]) - scale.y(marks[i - 1]), 30.0 - 1e-9);
            const double unit = units == UnitSystem::imperial ? 0.3048 : 1.0;
            const double number = marks[i].meters().value() / unit;
            EXPECT_NEAR(number, std::round(number), 1e-9);
        }
    }
}

class ProfileSceneTest : public DocumentTest {
protected:
    ProfileScene scene(double width, double height) const {
        return profile_scene(document_, QRectF(0.0, 0.0, width, height),
                             QFontMetricsF(QGuiApplication::font()));
    }
    static void expect_apart(const ProfileScene& scene) {
        for (std::size_t i = 0; i < scene.labels.size(); ++i) {
            for (std::size_t j = i + 1; j < scene.labels.size(); ++j) {
                EXPECT_FALSE(scene.labels[i].box.intersects(scene.labels[j].box))
                    << scene.labels[i].text.toStdString() << " covers "
                    << scene.labels[j].text.toStdString();
            }
        }
    }
    void set_profile(const Profile& profile) {
        ASSERT_TRUE(document_.edit({}, [&](Session& session) { session.profile = profile; })
                        .has_value());
    }
    static std::string all_text(const ProfileScene& scene) {
        std::string all;
        for (const ProfileLabel& label : scene.labels) all += label.text.toStdString() + "\n";
        return all;
    }
};

TEST_F(ProfileSceneTest, LabelsStandApartAtEverySize) {
    for (const char* name : {"harbour-morning", "mountain-lake", "salt-cove", "finished-dive"}) {
        open(name);
        for (const double width : {340.0, 520.0, 900.0}) {
            for (const double height : {240.0, 330.0, 500.0}) {
                SCOPED_TRACE(::testing::Message() << name << " " << width << " x " << height);
                expect_apart(scene(width, height));
            }
        }
    }
}

TEST_F(ProfileSceneTest, PhasesAreNamedOnTheirLegs) {
    open("salt-cove");
    const std::string labels = all_text(scene(800.0, 360.0));
    for (const char* word : {"At the surface", "Skills", "Tour", "Up", "Down"}) {
        EXPECT_THAT(labels, ::testing::HasSubstr(word));
    }
}

TEST_F(ProfileSceneTest, TooFastIsSaidWithTheWordAndTheLimit) {
    open("salt-cove");
    Profile profile = document_.session().profile;
    profile.points.back().time = profile.points[profile.points.size() - 2].time + Minutes(0.4);
    set_profile(profile);
    const ProfileScene drawn = scene(700.0, 340.0);
    const auto warned =
        std::find_if(drawn.labels.begin(), drawn.labels.end(),
                     [](const ProfileLabel& label) { return label.severity == Severity::stop; });
    ASSERT_NE(warned, drawn.labels.end());
    EXPECT_THAT(warned->text.toStdString(), ::testing::HasSubstr("too fast: at most"));
    EXPECT_TRUE(drawn.legs.back().warning.has_value());
    EXPECT_FALSE(drawn.legs.front().warning.has_value());
    expect_apart(drawn);
}

TEST_F(ProfileSceneTest, TheLimitIsNamedWithItsRuleSet) {
    open("salt-cove");
    const auto& limit = document_.plan().limits.max_depth;
    ASSERT_TRUE(limit.has_value());
    const ProfileScene drawn = scene(900.0, 360.0);
    ASSERT_FALSE(drawn.lines.empty());
    EXPECT_EQ(drawn.lines[0].depth.meters().value(), limit->value);
    EXPECT_THAT(all_text(drawn), ::testing::HasSubstr(limit->rule_set));
}

TEST_F(ProfileSceneTest, EarsAreMarkedOnceAtEachRungOfTheLadder) {
    open("salt-cove");
    const ProfileScene drawn = scene(800.0, 360.0);
    EXPECT_EQ(drawn.clearing_marks.size(), document_.plan().environment.ladder.clear_at.size());
}

}  // namespace
}  // namespace leadline::testing
