// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/exposure.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <string>

#include "core/body/tissues.h"
#include "tests/planning/dice.h"
#include "tests/planning/scene.h"
#include "tests/reference_table.h"

namespace leadline {
namespace {

constexpr double for_ever = std::numeric_limits<double>::infinity();

WaterColumn water_under(double surface_pa) {
    return WaterColumn::make(Pascals(surface_pa), MetersPerSecondSquared(9.80665),
                             PracticalSalinity{38.0}, celsius(24.0))
        .value();
}
const WaterColumn& sea() {
    static const WaterColumn water = water_under(101325.0);
    return water;
}

/// The sound scene's session is on 4 July 2026 at 10:30, 8 m for 30 min.
EarlierDive dive_at(int days_before, int hour, int minute, double depth, double minutes,
                    int ascents = 1) {
    EarlierDive dive;
    const auto date = std::chrono::sys_days(day(2026, 7, 4)) - std::chrono::days(days_before);
    dive.date = Date(date);
    dive.start = TimeOfDay{hour * 60 + minute};
    dive.deepest = meters(depth);
    dive.duration = Minutes(minutes);
    dive.ascents = ascents;
    return dive;
}

StaffExposure exposure_of(const Session& session, const WaterColumn& water = sea()) {
    return plan_staff_exposure(session, session.staff.front(), water);
}
Session after(std::vector<EarlierDive> dives) {
    Session session = sound_scene().session;
    session.staff.front().earlier_dives = std::move(dives);
    return session;
}
double no_stop(const StaffExposure& exposure) {
    return exposure.no_stop_left ? exposure.no_stop_left->value() : for_ever;
}

TEST(StaffExposure, OfARestedDiver) {
    Session session = sound_scene().session;
    for (auto& point : session.profile.points) {
        if (point.depth.meters().value() > 0.0) point.depth = meters(18.0);
    }
    const StaffExposure exposure = exposure_of(session);
    EXPECT_EQ(exposure.staff, first_instructor);
    EXPECT_TRUE(exposure.dives_now);
    EXPECT_EQ(exposure.dives_today, 1);
    EXPECT_EQ(exposure.ascents_today, 1);
    EXPECT_EQ(exposure.days_in_a_row, 1);
    EXPECT_FALSE(exposure.surface_interval);
    EXPECT_EQ(exposure.planned_time.value(), 30.0);
    const TissueLoads rested = must(tissues_at_rest(sea().surface_pressure()));
    const NoStop limit = must(no_stop_time(rested, sea().absolute_pressure(meters(18.0)),
                                           sea().surface_pressure(), 0.70));
    EXPECT_EQ(no_stop(exposure), limit.time.value().value());
    EXPECT_FALSE(exposure.needs_stop);
    EXPECT_GT(exposure.highest_saturation, 0.5);
    EXPECT_LE(exposure.highest_saturation, 1.0);
    EXPECT_GE(exposure.leading_compartment, 1);
    EXPECT_EQ(exposure.no_fly.value(), 12.0);
    EXPECT_FALSE(exposure.no_fly_source.empty());
}

TEST(StaffExposure, OfTheProfileAgreesWithLegsTakenByHand) {
    const StaffExposure exposure = exposure_of(sound_scene().session);
    TissueLoads loads = must(tissues_at_rest(sea().surface_pressure()));
    const Pascals top = sea().surface_pressure();
    const Pascals bottom = sea().absolute_pressure(meters(8.0));
    double highest = 0.0;
    const auto go = [&](Pascals from, Pascals to, double minutes) {
        loads = must(after_leg(loads, from, to, Minutes(minutes)));
        highest = std::max(highest, must(surfacing_saturation(loads, top, 0.70)).share);
    };
    go(top, top, 3.0);
    go(top, bottom, 2.0);
    go(bottom, bottom, 8.0);
    go(bottom, bottom, 15.0);
    go(bottom, top, 2.0);
    EXPECT_NEAR(exposure.highest_saturation, highest, 1e-12);
}

TEST(StaffExposure, OfAnEarlierDiveAgreesWithLegsTakenByHand) {
    // 18 m for 40 min with two ascents, over 90 min before: 20 min, up (2.0 min), 1 min there and down
    // (0.6 min) with no credit for the gas lost, 20 min, up.
    const StaffExposure exposure = exposure_of(after({dive_at(0, 8, 20, 18.0, 40.0, 2)}));
    EXPECT_NEAR(exposure.surface_interval.value().value(), 90.0, 1e-9);
    TissueLoads loads = must(tissues_at_rest(sea().surface_pressure()));
    const Pascals top = sea().surface_pressure();
    // The water of the scene is lighter than 1030 kg/m3 and is taken as that.
    ASSERT_LT(sea().surface_density().value(), 1030.0);
    const Pascals bottom =
        top + sea().gauge_pressure(meters(18.0)) * (1030.0 / sea().surface_density().value());
    const auto go = [&](Pascals from, Pascals to, double minutes) {
        loads = must(after_leg(loads, from, to, Minutes(minutes)));
    };
    go(bottom, bottom, 20.0);
    const TissueLoads before = loads;
    go(bottom, top, 18.0 / 9.0);
    go(top, top, 1.0);
    go(top, bottom, 18.0 / 30.0);
    for (std::size_t i = 0; i < loads.nitrogen.size(); ++i) {
        loads.nitrogen[i] = std::max(loads.nitrogen[i], before.nitrogen[i]);
    }
    go(bottom, bottom, 20.0);
    go(bottom, top, 18.0 / 9.0);
    go(top, top, 90.0);
    const NoStop limit =
        must(no_stop_time(loads, sea().absolute_pressure(meters(8.0)), top, 0.70));
    EXPECT_NEAR(no_stop(exposure), limit.time.value().value(), 1e-6);
    EXPECT_EQ(exposure.dives_today, 2);
    EXPECT_EQ(exposure.ascents_today, 3);
}

TEST(StaffExposure, CountsDaysDivesAndAscents) {
    Session session = after({dive_at(1, 15, 0, 6.0, 30.0, 4), dive_at(2, 15, 0, 6.0, 30.0),
                             dive_at(4, 15, 0, 6.0, 30.0), dive_at(0, 7, 0, 6.0, 30.0, 5)});
    session.staff.front().extra_ascents = 2;
    const StaffExposure exposure = exposure_of(session);
    EXPECT_EQ(exposure.dives_today, 2);
    EXPECT_EQ(exposure.ascents_today, 5 + 1 + 2);
    EXPECT_EQ(exposure.days_in_a_row, 3);
    std::vector<EarlierDive> week;
    for (int before = 1; before <= 9; ++before) week.push_back(dive_at(before, 9, 0, 5.0, 20.0));
    EXPECT_EQ(exposure_of(after(week)).days_in_a_row, 8);
    // Over midnight: of both days.
    const StaffExposure night = exposure_of(after({dive_at(1, 23, 50, 5.0, 30.0, 2)}));
    EXPECT_EQ(night.dives_today, 2);
    EXPECT_EQ(night.days_in_a_row, 2);
}

TEST(StaffExposure, CountsTheProfilesOwnAscents) {
    Session session = sound_scene().session;
    auto& points = session.profile.points;
    points[3].depth = meters(0.0);
    EXPECT_EQ(exposure_of(session).ascents_today, 2);
}

TEST(StaffExposure, OfSomebodyAshoreIsThatOfTheDivesOnRecord) {
    Session session = after({dive_at(0, 8, 0, 12.0, 40.0)});
    session.groups.front().instructor = StaffId("somebody-else");
    const StaffExposure ashore = exposure_of(session);
    EXPECT_FALSE(ashore.dives_now);
    EXPECT_EQ(ashore.dives_today, 1);
    EXPECT_EQ(ashore.ascents_today, 1);
    EXPECT_EQ(ashore.planned_time.value(), 0.0);
    EXPECT_FALSE(ashore.needs_stop);
    EXPECT_EQ(ashore.no_fly.value(), 12.0);
    EXPECT_EQ(no_stop(ashore), no_stop(exposure_of(after({dive_at(0, 8, 0, 12.0, 40.0)}))));
    session.groups.front().assistant = first_instructor;
    EXPECT_TRUE(exposure_of(session).dives_now);
    session.groups.front().assistant = StaffId();
    session.staff.front().earlier_dives.clear();
    const StaffExposure never = exposure_of(session);
    EXPECT_EQ(never.no_fly.value(), 0.0);
    EXPECT_TRUE(never.no_fly_source.empty());
    EXPECT_EQ(never.days_in_a_row, 0);
}

TEST(StaffExposure, ForgetsDivesOfMoreThanAWeekAgo) {
    const StaffExposure rested = exposure_of(after({}));
    const StaffExposure old = exposure_of(after({dive_at(8, 9, 0, 40.0, 60.0)}));
    EXPECT_EQ(no_stop(old), no_stop(rested));
    EXPECT_EQ(old.highest_saturation, rested.highest_saturation);
    EXPECT_EQ(old.days_in_a_row, 1);
    EXPECT_NEAR(old.surface_interval.value().value(), 8 * 1440.0 + 30.0, 1e-6);
    EXPECT_EQ(old.no_fly.value(), 12.0);
}

TEST(StaffExposure, DoesNotHangOnTheOrderOfTheList) {
    std::vector<EarlierDive> dives = {dive_at(0, 7, 0, 18.0, 40.0), dive_at(1, 9, 0, 30.0, 20.0),
                                      dive_at(1, 14, 0, 12.0, 60.0), dive_at(3, 9, 0, 25.0, 30.0)};
    const StaffExposure sorted = exposure_of(after(dives));
    std::reverse(dives.begin(), dives.end());
    const StaffExposure reversed = exposure_of(after(dives));
    EXPECT_EQ(no_stop(sorted), no_stop(reversed));
    EXPECT_EQ(sorted.highest_saturation, reversed.highest_saturation);
    EXPECT_EQ(sorted.no_fly.value(), reversed.no_fly.value());
}

TEST(StaffExposure, ExtraAscentsNeverMakeItSafer) {
    Session session = sound_scene().session;
    for (const double depth : {6.0, 12.0, 18.0, 30.0}) {
        for (std::size_t i = 2; i < 5; ++i) session.profile.points[i].depth = meters(depth);
        session.staff.front().extra_ascents = 0;
        const double without = exposure_of(session).highest_saturation;
        for (const int ascents : {1, 3, 10, 20}) {
            session.staff.front().extra_ascents = ascents;
            const StaffExposure with = exposure_of(session);
            EXPECT_GE(with.highest_saturation, without) << depth << " m, " << ascents;
            EXPECT_EQ(with.ascents_today, 1 + ascents);
        }
    }
}

TEST(StaffExposure, NeedsAStopWhenTheLimitIsPassed) {
    const auto at_18 = [](std::vector<EarlierDive> dives) {
        Session session = after(std::move(dives));
        for (std::size_t i = 2; i < 5; ++i) session.profile.points[i].depth = meters(18.0);
        return exposure_of(session);
    };
    EXPECT_FALSE(at_18({}).needs_stop);
    const StaffExposure tired = at_18({dive_at(0, 9, 30, 22.0, 50.0)});
    EXPECT_TRUE(tired.needs_stop);
    EXPECT_GT(tired.highest_saturation, 1.0);
    EXPECT_LT(no_stop(tired), 25.0);
}

TEST(StaffExposure, AtAltitudeTheBodyComesFromTheSea) {
    Session session = after({dive_at(0, 7, 0, 15.0, 40.0)});
    for (std::size_t i = 2; i < 5; ++i) session.profile.points[i].depth = meters(12.0);
    double last = no_stop(exposure_of(session));
    for (const double surface : {95e3, 88e3, 80e3, 70e3, 60e3, 52e3}) {
        const double here = no_stop(exposure_of(session, water_under(surface)));
        EXPECT_LE(here, last) << surface;
        last = here;
    }
    EXPECT_EQ(last, 0.0);
    EXPECT_TRUE(exposure_of(session, water_under(52e3)).needs_stop);
}

TEST(StaffExposure, DivesThatOverlapOrEndTooLateAreCountedInFull) {
    const double apart = no_stop(exposure_of(
        after({dive_at(0, 7, 0, 18.0, 40.0), dive_at(0, 8, 0, 18.0, 40.0)})));
    const double together = no_stop(exposure_of(
        after({dive_at(0, 7, 40, 18.0, 40.0), dive_at(0, 8, 0, 18.0, 40.0)})));
    EXPECT_TRUE(std::isfinite(together));
    EXPECT_LT(together, apart);
    const StaffExposure late = exposure_of(after({dive_at(0, 10, 20, 18.0, 40.0)}));
    EXPECT_EQ(late.surface_interval.value().value(), 0.0);
    EXPECT_LT(no_stop(late), no_stop(exposure_of(after({dive_at(0, 9, 20, 18.0, 40.0)}))));
    const StaffExposure tomorrow = exposure_of(after({dive_at(-1, 9, 0, 18.0, 40.0)}));
    EXPECT_EQ(no_stop(tomorrow), no_stop(late));
    EXPECT_EQ(tomorrow.dives_today, 2);
}

void expect_finite(const StaffExposure& exposure) {
    ASSERT_TRUE(std::isfinite(exposure.highest_saturation));
    EXPECT_GE(exposure.highest_saturation, 0.0);
    if (exposure.no_stop_left) {
        ASSERT_TRUE(std::isfinite(exposure.no_stop_left->value()));
        EXPECT_GE(exposure.no_stop_left->value(), 0.0);
        EXPECT_LE(exposure.no_stop_left->value(), 1440.0);
    }
    if (exposure.surface_interval) {
        EXPECT_GE(exposure.surface_interval->value(), 0.0);
    }
    EXPECT_GE(exposure.leading_compartment, 1);
    EXPECT_LE(exposure.leading_compartment, 16);
    EXPECT_GE(exposure.days_in_a_row, 0);
    EXPECT_LE(exposure.days_in_a_row, 8);
    EXPECT_GE(exposure.dives_today, exposure.dives_now ? 1 : 0);
    EXPECT_EQ(exposure.needs_stop, exposure.dives_now && exposure.highest_saturation > 1.0);
}

TEST(StaffExposure, IsFiniteAndSafeForWhatNoSessionMayHold) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const StaffExposure sound = exposure_of(after({dive_at(0, 8, 0, 5.0, 5.0)}));
    for (const double bad : {nan, -1.0, 1e308, for_ever}) {
        for (const EarlierDive& dive :
             {dive_at(0, 8, 0, bad, 5.0), dive_at(0, 8, 0, 5.0, bad), dive_at(0, 8, 0, bad, bad)}) {
            const StaffExposure exposure = exposure_of(after({dive}));
            expect_finite(exposure);
            EXPECT_LE(no_stop(exposure), no_stop(sound));
        }
        Session session = sound_scene().session;
        session.profile.points[2].depth = meters(bad);
        expect_finite(exposure_of(session));
        EXPECT_TRUE(exposure_of(session).needs_stop);
        session = sound_scene().session;
        session.profile.points[2].time = Minutes(bad);
        EXPECT_TRUE(exposure_of(session).needs_stop);
    }
    EarlierDive dive = dive_at(0, 8, 0, 10.0, 20.0);
    dive.ascents = -3;
    expect_finite(exposure_of(after({dive})));
    Session session = sound_scene().session;
    session.profile.points.clear();
    expect_finite(exposure_of(session));
    session = sound_scene().session;
    session.staff.front().extra_ascents = 1'000'000;
    EXPECT_EQ(exposure_of(session).ascents_today, 21);
}

TEST(StaffExposure, ShortDeepDivesWithManyAscentsStayFinite) {
    // 60 m needs 8.7 min down and up: no room for thirty ascents, and none at all in a minute.
    for (const double minutes : {1.0, 5.0, 8.7, 9.0, 30.0, 240.0}) {
        const StaffExposure many = exposure_of(after({dive_at(0, 5, 0, 60.0, minutes, 30)}));
        expect_finite(many);
        EXPECT_EQ(many.ascents_today, 31);
        EXPECT_LE(no_stop(many), no_stop(exposure_of(after({}))));
    }
}

EarlierDive drawn_dive(Dice& dice) {
    // All over by 10:20, the session's dive begins at 10:30.
    const double minutes = dice.between(1.0, 120.0);
    const int before = dice.whole(0, 7);
    const int latest = before == 0 ? 620 - static_cast<int>(std::ceil(minutes)) : 1439;
    EarlierDive dive = dive_at(before, 0, 0, dice.between(1.0, 45.0), minutes, dice.whole(1, 6));
    dive.start = TimeOfDay{dice.whole(0, latest)};
    return dive;
}

TEST(StaffExposureProperties, HoldForManyWeeks) {
    Dice dice(11);
    for (int i = 0; i < 1500; ++i) {
        std::vector<EarlierDive> dives;
        const int count = dice.whole(0, 6);
        for (int k = 0; k < count; ++k) dives.push_back(drawn_dive(dice));
        Session session = after(dives);
        const double depth = dice.between(4.0, 40.0);
        for (std::size_t k = 2; k < 5; ++k) session.profile.points[k].depth = meters(depth);
        const StaffExposure base = exposure_of(session);
        expect_finite(base);

        // One more dive never leaves more.
        Session more = session;
        more.staff.front().earlier_dives.push_back(drawn_dive(dice));
        EXPECT_LE(no_stop(exposure_of(more)), no_stop(base) + 1e-9);

        // Deeper never leaves more.
        Session deeper = session;
        for (std::size_t k = 2; k < 5; ++k) deeper.profile.points[k].depth = meters(depth + 2.0);
        EXPECT_LE(no_stop(exposure_of(deeper)), no_stop(base));
        EXPECT_GE(exposure_of(deeper).highest_saturation, base.highest_saturation);

        // A later session never has less.
        Session later = session;
        later.dive_time.minutes_after_midnight += dice.whole(1, 300);
        EXPECT_GE(no_stop(exposure_of(later)), no_stop(base) - 1e-9);

        // Nor does altitude ever leave more.
        EXPECT_LE(no_stop(exposure_of(session, water_under(dice.between(55e3, 101e3)))),
                  no_stop(base) + 1e-9);
    }
}

/// Dives of a row of the table, as a session.
Session flying_session(const std::string& dives) {
    if (dives == "single") return after({});
    if (dives == "same_day") return after({dive_at(0, 7, 0, 8.0, 30.0)});
    if (dives == "two_days") return after({dive_at(1, 15, 0, 8.0, 30.0)});
    if (dives == "stops_before") return after({dive_at(1, 15, 0, 30.0, 60.0)});
    if (dives != "stops") throw std::runtime_error("no dives called " + dives);
    Session session = after({});
    for (std::size_t i = 2; i < 5; ++i) session.profile.points[i].depth = meters(40.0);
    return session;
}

class Flying : public testing::TestWithParam<ReferenceRow> {};
TEST_P(Flying, IsNotSoonerThanTheGuidance) {
    const ReferenceRow& row = GetParam();
    const std::string& dives = row.text("dives");
    const StaffExposure exposure = exposure_of(flying_session(dives));
    EXPECT_EQ(exposure.needs_stop, dives == "stops");
    if (row.text("check") == "above") {
        EXPECT_GT(exposure.no_fly.value(), row.number("expected")) << row;
    } else {
        ASSERT_EQ(row.text("check"), "at_least") << row;
        EXPECT_GE(exposure.no_fly.value(), row.number("expected")) << row;
    }
    EXPECT_FALSE(exposure.no_fly_source.empty());
}
INSTANTIATE_TEST_SUITE_P(reference, Flying, testing::ValuesIn(load_reference("flying")),
                         [](const auto& tested) { return tested.param.text("id"); });

TEST(FlyingHours, AreThoseOfTheLongerGuidance) {
    EXPECT_EQ(exposure_of(flying_session("single")).no_fly.value(), 12.0);
    EXPECT_EQ(exposure_of(flying_session("same_day")).no_fly.value(), 24.0);
    EXPECT_EQ(exposure_of(flying_session("two_days")).no_fly.value(), 24.0);
    EXPECT_EQ(exposure_of(flying_session("stops")).no_fly.value(), 48.0);
    // Three days between: two single dives. Training ascents count as repeated.
    EXPECT_EQ(exposure_of(after({dive_at(3, 15, 0, 8.0, 30.0)})).no_fly.value(), 12.0);
    Session training = after({});
    training.staff.front().extra_ascents = 1;
    EXPECT_EQ(exposure_of(training).no_fly.value(), 24.0);
}

TEST(StaffExposure, OfAnEarlierDiveIsNeverLighterForMoreAscents) {
    for (const double depth : {6.0, 12.0, 18.0, 25.0}) {
        double last = 1e9;
        for (const int ascents : {1, 2, 5, 8, 12, 30}) {
            const StaffExposure exposure =
                exposure_of(after({dive_at(0, 6, 0, depth, 60.0, ascents)}));
            EXPECT_LE(no_stop(exposure), last + 1e-9) << depth << " m, " << ascents;
            last = no_stop(exposure);
        }
    }
}

TEST(RestedGuests, WaitLongerAfterADiveThatNeedsStopsAndMayNotMakeIt) {
    Scene scene = sound_scene();
    scene.session.profile = {{{Minutes(0), meters(0), Phase::surface},
                              {Minutes(2), meters(12), Phase::descent},
                              {Minutes(180), meters(12), Phase::tour},
                              {Minutes(183), meters(0), Phase::ascent}}};
    scene.session.groups.front().instructor = StaffId();  // nobody named: guests dive all the same
    const Plan plan = plan_of(scene);
    EXPECT_NE(find(plan.findings, FindingCode::staff_needs_stop, Subject{}), nullptr);
    EXPECT_GE(plan.limits.no_fly.value(), 48.0);
    const Plan plain = plan_of(sound_scene());
    EXPECT_EQ(find(plain.findings, FindingCode::staff_needs_stop, Subject{}), nullptr);
}

}  // namespace
}  // namespace leadline
