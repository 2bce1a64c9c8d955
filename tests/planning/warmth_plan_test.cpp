// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/warmth_plan.h"

#include <cmath>

#include "core/body/composition.h"
#include "tests/planning/scene.h"

namespace leadline {
namespace {

constexpr double never = 1e9;

/// The first guest of the sound scene, of middle build, in cool water.
Session cool_session() {
    Session session = sound_scene().session;
    session.guests[0].body_mass = Kilograms(75.0);
    session.guests[0].body_height = Meters(1.75);
    session.conditions.water_temperature = celsius(16.0);
    return session;
}

GuestWarmth warmth_of(const Session& session) {
    return plan_guest_warmth(session, session.guests[0], water_of(session));
}

double minutes(const std::optional<Minutes>& time) { return time ? time->value() : never; }

TEST(GuestWarmthGap, SaysWhatIsMissing) {
    Session session = cool_session();
    EXPECT_EQ(warmth_of(session).gap, WarmthGap::none);
    session.guests[0].kit.suit = "M";
    EXPECT_EQ(warmth_of(session).gap, WarmthGap::suit);
    session.guests[0].body_height.reset();
    EXPECT_EQ(warmth_of(session).gap, WarmthGap::body_height);
    session.guests[0].body_mass.reset();
    EXPECT_EQ(warmth_of(session).gap, WarmthGap::body_mass);
    EXPECT_EQ(warmth_of(session).guest, first_guest);
    EXPECT_FALSE(warmth_of(session).low);
}

TEST(GuestWarmthGap, SaysWhenTheNumbersDoNotReachSoFar) {
    Session session = cool_session();
    session.guests[0].body_mass = Kilograms(200.0);  // body mass index 65
    EXPECT_EQ(warmth_of(session).gap, WarmthGap::outside_range);
    session = cool_session();
    session.guests[0].birth_date = day(2024, 1, 1);
    EXPECT_EQ(warmth_of(session).gap, WarmthGap::outside_range);
    EXPECT_FALSE(warmth_of(session).low);
}

TEST(GuestWarmthBand, IsOrderedAndFinite) {
    for (const double water : {-2.0, 4.0, 10.0, 16.0, 22.0, 28.0, 36.0}) {
        for (const char* suit : {"0.5 mm", "3 mm shorty", "5 mm", "7 mm hood"}) {
            for (const double mass : {35.0, 55.0, 75.0, 120.0}) {
                Session session = cool_session();
                session.conditions.water_temperature = celsius(water);
                session.guests[0].kit.suit = suit;
                session.guests[0].body_mass = Kilograms(mass);
                session.guests[0].body_height = Meters(mass < 40.0 ? 1.40 : 1.75);
                session.guests[0].birth_date = day(mass < 40.0 ? 2015 : 1986, 1, 1);
                const GuestWarmth warmth = warmth_of(session);
                ASSERT_EQ(warmth.gap, WarmthGap::none);
                EXPECT_LE(minutes(warmth.low), minutes(warmth.middle)) << water << suit << mass;
                EXPECT_LE(minutes(warmth.middle), minutes(warmth.high)) << water << suit << mass;
                EXPECT_GT(minutes(warmth.low), 0.0);
                if (warmth.low) { EXPECT_LE(warmth.low->value(), 240.0); }
                EXPECT_TRUE(std::isfinite(warmth.heat_loss_watts));
                EXPECT_TRUE(std::isfinite(warmth.core_fall_kelvin));
            }
        }
    }
}

TEST(GuestWarmthBand, GoesWithWaterSuitDepthAndBuild) {
    const Session base = cool_session();
    const double low = minutes(warmth_of(base).low);
    ASSERT_LT(low, never);
    Session other = base;
    other.conditions.water_temperature = celsius(12.0);
    EXPECT_LT(minutes(warmth_of(other).low), low);
    other = base;
    other.guests[0].kit.suit = "7 mm hood";
    EXPECT_GT(minutes(warmth_of(other).low), low);
    other = base;
    for (ProfilePoint& point : other.profile.points) {
        if (point.depth.meters().value() > 0.0) point.depth = meters(18.0);
    }
    EXPECT_LT(minutes(warmth_of(other).low), low);
    other = base;
    other.guests[0].body_mass = Kilograms(60.0);
    EXPECT_LT(minutes(warmth_of(other).low), low);
    other = base;
    other.guests[0].measured_rmv = LitersPerMinute(45.0);
    EXPECT_LT(minutes(warmth_of(other).low), low);
}

TEST(GuestWarmthBand, OfAChildEndsFirst) {
    Session session = cool_session();
    Guest& child = session.guests[1];
    child.body_mass = Kilograms(34.0);
    child.body_height = Meters(1.40);
    child.birth_date = day(2016, 1, 1);
    child.breathing = BreathingClass::child;
    const GuestWarmth small = plan_guest_warmth(session, child, water_of(session));
    const GuestWarmth big = warmth_of(session);
    ASSERT_TRUE(small.low && small.middle && big.low && big.middle);
    EXPECT_LT(*small.low, *big.low);
    EXPECT_LT(*small.middle, *big.middle);
}

TEST(GuestWarmthBand, WithoutABirthDateIsAnAdults) {
    Session session = cool_session();
    session.guests[0].birth_date.reset();
    const GuestWarmth unknown = warmth_of(session);
    session.guests[0].birth_date = day(1991, 1, 1);  // 35 on the day
    EXPECT_EQ(minutes(unknown.low), minutes(warmth_of(session).low));
    EXPECT_LT(minutes(unknown.low), never);
}

TEST(GuestWarmthBand, DoesNotHangOnWhatComesAfterTheFinalAscentStarts) {
    Session session = cool_session();
    const GuestWarmth before = warmth_of(session);
    session.profile.points.back().time = Minutes(60.0);
    const GuestWarmth after = warmth_of(session);
    EXPECT_EQ(minutes(before.low), minutes(after.low));
    EXPECT_EQ(minutes(before.high), minutes(after.high));
    EXPECT_GT(after.core_fall_kelvin, before.core_fall_kelvin);
}

TEST(GuestWarmthNumbers, AreThoseOfTheSuitAndTheDepth) {
    const GuestWarmth warmth = warmth_of(cool_session());
    EXPECT_EQ(warmth.suit_millimeters, 5.0);
    // 0.75 x 5 mm / 0.0459 W/(m K) is 0.0817 m2K/W.
    EXPECT_NEAR(warmth.suit_clo_at_surface, 0.527, 0.003);
    EXPECT_LT(warmth.suit_clo_at_depth, 0.75 * warmth.suit_clo_at_surface);
    EXPECT_GT(warmth.suit_clo_at_depth, 0.40 * warmth.suit_clo_at_surface);
    EXPECT_GT(warmth.heat_loss_watts, 300.0);
    EXPECT_LT(warmth.heat_loss_watts, 1000.0);
    // Closing vessels keep work's heat in the core at first: within half an hour it may even rise.
    EXPECT_GT(warmth.core_fall_kelvin, -0.5);
    EXPECT_LT(warmth.core_fall_kelvin, 1.0);
    ASSERT_TRUE(warmth.chilled && warmth.middle);
    EXPECT_LT(*warmth.chilled, *warmth.middle);
}

TEST(GuestWarmthNumbers, HoldForAProfileThatOnlyTouchesItsDeepestPoint) {
    Session session = cool_session();
    session.profile.points = {{Minutes(0.0), meters(0.0), Phase::surface},
                              {Minutes(120.0), meters(12.0), Phase::descent},
                              {Minutes(240.0), meters(0.0), Phase::ascent}};
    const GuestWarmth warmth = warmth_of(session);
    EXPECT_EQ(warmth.gap, WarmthGap::none);
    EXPECT_GT(warmth.heat_loss_watts, 100.0);
    EXPECT_TRUE(warmth.low);
}

TEST(WarmthPlan, GivesALeanChildMoreMinutesInWarmerWaterAndInAThickerSuit) {
    Session session = sound_scene().session;
    Guest& child = session.guests[0];
    child.body_mass = Kilograms(30.0);
    child.body_height = Meters(1.38);
    child.birth_date = day(2016, 1, 1);
    child.breathing = BreathingClass::child;
    const auto low = [&](double water, const char* suit) {
        session.conditions.water_temperature = celsius(water);
        child.kit.suit = suit;
        return plan_guest_warmth(session, child, water_of(session)).low.value_or(Minutes(1e3));
    };
    for (double water = 14.0; water < 30.0; water += 2.0) {
        EXPECT_LT(low(water, "3 mm").value(), low(water + 2.0, "3 mm").value()) << water;
        EXPECT_LT(low(water, "3 mm").value(), low(water, "7 mm").value()) << water;
    }
}

TEST(WarmthPlan, TakesAChildWithoutABirthDateForAChild) {
    Session session = sound_scene().session;
    Guest& child = session.guests[0];
    child.body_mass = Kilograms(32.0);
    child.body_height = Meters(1.38);
    child.birth_date.reset();
    child.breathing = BreathingClass::child;
    session.conditions.water_temperature = celsius(18.0);
    const auto unknown = plan_guest_warmth(session, child, water_of(session)).middle;
    child.birth_date = day(2026 - assumed_child_years, 1, 1);
    EXPECT_EQ(unknown->value(),
              plan_guest_warmth(session, child, water_of(session)).middle->value());
}

}  // namespace
}  // namespace leadline
