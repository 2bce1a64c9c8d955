// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/levers.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

/// Two groups of two; the second guest breathes much and wears a thin suit in cool water.
Scene lever_scene() {
    Scene scene = sound_scene();
    Session& session = scene.session;
    session.conditions.water_temperature = celsius(17.0);
    session.groups.push_back(Group{GroupId("red"), "Red", first_instructor, {}});
    for (const char* id : {"guest-3", "guest-4"}) {
        Guest guest = session.guests.front();
        guest.id = GuestId(id);
        guest.group = GroupId("red");
        guest.breathing = BreathingClass::calm;
        session.guests.push_back(guest);
    }
    for (Guest& guest : session.guests) {
        guest.kit.suit = "5 mm M";
        guest.kit.cylinder = Cylinder{CylinderTypeId("steel-10"), Bars(200.0), celsius(20.0)};
    }
    session.guests[1].breathing = BreathingClass::nervous;
    return scene;
}

const Lever* lever(const Plan& plan, LeverKind kind, const GroupId& group = blue_group) {
    const auto found = std::find_if(plan.levers.begin(), plan.levers.end(), [&](const Lever& one) {
        return one.kind == kind && one.group == group;
    });
    return found == plan.levers.end() ? nullptr : &*found;
}

const GroupForecast& blue(const Plan& plan) { return plan.forecasts.front(); }

TEST(Levers, AreRankedBestFirst) {
    const Plan plan = plan_of(lever_scene());
    ASSERT_GE(plan.levers.size(), 5U);
    double last = 1e9;
    for (const Lever& one : plan.levers) {
        if (one.group != blue_group) continue;
        const double gain = one.gain ? one.gain->value() : 0.0;
        EXPECT_LE(gain, last);
        last = gain;
    }
}

// Whatever a lever promises must be what the plan says once it is applied.
TEST(Levers, KeepTheirPromise) {
    const Scene scene = lever_scene();
    const Plan before = plan_of(scene);
    ASSERT_FALSE(before.levers.empty());
    for (const Lever& one : before.levers) {
        Scene changed = scene;
        changed.session = with_lever(scene.session, one);
        EXPECT_NE(changed.session, scene.session);
        const Plan after = plan_of(changed);
        const auto find = [&](const Plan& plan) {
            return *std::find_if(plan.forecasts.begin(), plan.forecasts.end(),
                                 [&](const GroupForecast& f) { return f.group == one.group; });
        };
        const double was = find(before).first_at_reserve.middle->value();
        const double is = find(after).first_at_reserve.middle->value();
        ASSERT_TRUE(one.gain);
        EXPECT_NEAR(one.gain->value(), is - was, 1e-6) << static_cast<int>(one.kind);
        EXPECT_NEAR(one.completes, find(after).completes, 1e-9) << static_cast<int>(one.kind);
        EXPECT_NEAR(one.gain_completes, one.completes - find(before).completes, 1e-12);
    }
}

TEST(Levers, HelpOrAreNotListed) {
    for (const Lever& one : plan_of(lever_scene()).levers) {
        EXPECT_TRUE((one.gain && one.gain->value() > 0.0) || one.gain_completes > 0.0);
    }
}

TEST(Levers, ConcernTheGuestWhoIsLikelyFirst) {
    const Plan plan = plan_of(lever_scene());
    EXPECT_EQ(blue(plan).likely_first, second_guest);
    for (const LeverKind kind : {LeverKind::bigger_cylinder, LeverKind::warmer_suit,
                                 LeverKind::swap_guests, LeverKind::one_guest_fewer}) {
        const Lever* one = lever(plan, kind);
        ASSERT_NE(one, nullptr) << static_cast<int>(kind);
        EXPECT_EQ(one->guest, second_guest);
    }
}

TEST(Levers, TakeTheNextCylinderUpWhateverTheStockWhenItIsNotOnRecord) {
    const Plan plan = plan_of(lever_scene());
    const Lever* one = lever(plan, LeverKind::bigger_cylinder);
    ASSERT_NE(one, nullptr);
    EXPECT_EQ(one->cylinder, CylinderTypeId("aluminium-11"));
    EXPECT_FALSE(one->stock_known);
}

TEST(Levers, TakeOnlyCylindersThatAreFree) {
    Scene scene = lever_scene();
    scene.session.stock.cylinders = {{CylinderTypeId("steel-10"), 4},
                                     {CylinderTypeId("steel-15"), 1}};
    const Plan free = plan_of(scene);
    ASSERT_NE(lever(free, LeverKind::bigger_cylinder), nullptr);
    EXPECT_EQ(lever(free, LeverKind::bigger_cylinder)->cylinder, CylinderTypeId("steel-15"));
    EXPECT_TRUE(lever(free, LeverKind::bigger_cylinder)->stock_known);

    scene.session.guests[0].kit.cylinder->type = CylinderTypeId("steel-15");  // the only one
    EXPECT_EQ(lever(plan_of(scene), LeverKind::bigger_cylinder), nullptr);
}

TEST(Levers, NameTheSuitThatGoesWithTheWater) {
    Scene scene = lever_scene();
    EXPECT_EQ(lever(plan_of(scene), LeverKind::warmer_suit)->suit, "7 mm M");
    scene.session.stock.suits = {{"7 mm long M", 1}, {"3 mm M", 5}};
    EXPECT_EQ(lever(plan_of(scene), LeverKind::warmer_suit)->suit, "7 mm long M");
    scene.session.stock.suits = {{"3 mm M", 5}};
    EXPECT_EQ(lever(plan_of(scene), LeverKind::warmer_suit), nullptr);
    scene.session.stock = {};
    scene.session.conditions.water_temperature = celsius(25.0);
    EXPECT_EQ(lever(plan_of(scene), LeverKind::warmer_suit), nullptr) << "warm enough";
}

TEST(Levers, GoOneMetreUpAndNeverAboveTwo) {
    Scene scene = lever_scene();
    const Plan plan = plan_of(scene);
    const Lever* one = lever(plan, LeverKind::shallower);
    ASSERT_NE(one, nullptr);
    EXPECT_NEAR((deepest(scene.session.profile) - one->deepest).value(), 1.0, 1e-12);
    scene.session.profile = standard_profile(meters(2.0), meters(2.0), Minutes(8), Minutes(15));
    EXPECT_EQ(lever(plan_of(scene), LeverKind::shallower), nullptr);
}

TEST(Levers, LeaveTheSkillsSomeTime) {
    Scene scene = lever_scene();
    scene.session.profile = standard_profile(meters(8.0), meters(5.0), Minutes(8), Minutes(20));
    const Plan plan = plan_of(scene);
    const Lever* one = lever(plan, LeverKind::shorter_skills);
    ASSERT_NE(one, nullptr);
    EXPECT_NEAR(one->minutes_off.value(), 3.0, 1e-9);
    const Session changed = with_lever(scene.session, *one);
    EXPECT_NEAR(duration(changed.profile).value(), duration(scene.session.profile).value() - 3.0,
                1e-9);
    EXPECT_TRUE(check(changed.profile));
    scene.session.profile = standard_profile(meters(8.0), meters(5.0), Minutes(3), Minutes(20));
    EXPECT_EQ(lever(plan_of(scene), LeverKind::shorter_skills), nullptr);
}

TEST(Levers, SwapOnlyWhenTheWorseOfTheTwoGroupsIsBetterOff) {
    const Plan plan = plan_of(lever_scene());
    const Lever* one = lever(plan, LeverKind::swap_guests);
    ASSERT_NE(one, nullptr);
    EXPECT_LT(one->other_group_change, 0.0) << "what one group gains the other pays for";
    EXPECT_EQ(lever(plan, LeverKind::swap_guests, GroupId("red")), nullptr)
        << "the better group has nothing to gain";
}

TEST(Levers, ThatLeadBeyondTheLongestTimeComeFirst) {
    Scene scene = lever_scene();
    scene.session.profile = standard_profile(meters(2.5), meters(2.0), Minutes(8), Minutes(20));
    for (Guest& guest : scene.session.guests) guest.measured_rmv = LitersPerMinute(6.0);
    scene.session.guests[1].measured_rmv = LitersPerMinute(10.0);
    scene.session.guests[0].kit.cylinder->type = CylinderTypeId("steel-15");
    const Plan plan = plan_of(scene);
    const Lever& best = plan.levers.front();
    EXPECT_TRUE(best.gain_is_least);
    EXPECT_NEAR(best.gain->value(), 240.0 - blue(plan).first_at_reserve.middle->value(), 1e-9);
}

TEST(Levers, OfAGuestWhoIsGoneChangeNothing) {
    const Scene scene = lever_scene();
    for (Lever one : plan_of(scene).levers) {
        if (one.guest.empty()) continue;
        one.guest = GuestId("nobody");
        EXPECT_EQ(with_lever(scene.session, one), scene.session);
    }
}

}  // namespace
}  // namespace leadline
