// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions drawn at random, sound and unsound: a plan with finite, ordered numbers or an error with
// a place.
#include <array>
#include <chrono>
#include <cmath>

#include "core/planning/levers.h"
#include "tests/planning/dice.h"
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

std::optional<Cylinder> drawn_cylinder(Dice& dice) {
    if (dice.once_in(8)) return std::nullopt;
    const auto types = cylinder_types();
    const CylinderType& type =
        types[static_cast<std::size_t>(dice.whole(0, static_cast<int>(types.size()) - 1))];
    return Cylinder{type.id, Bars(dice.typed(0.0, type.working_pressure.value())),
                    celsius(dice.typed(-20.0, 70.0))};
}

Profile drawn_profile(Dice& dice) {
    Profile profile;
    double time = 0.0;
    profile.points.push_back({Minutes(0), meters(0), Phase::surface});
    const int corners = dice.whole(1, 12);
    for (int i = 0; i < corners; ++i) {
        time += dice.typed(1.0 / 60.0, 18.0);
        profile.points.push_back(
            {Minutes(time), meters(dice.typed(0.0, 60.0)), static_cast<Phase>(dice.whole(0, 4))});
    }
    time += dice.between(1.0 / 60.0, 20.0);
    profile.points.push_back({Minutes(time), meters(0), Phase::ascent});
    return profile;
}

Guest drawn_guest(Dice& dice, const Session& session) {
    Guest guest = sound_scene().session.guests.front();
    guest.id = next_guest_id(session);
    guest.group = dice.once_in(10) ? GroupId() : session.groups.at(dice.once_in(3) ? 1 : 0).id;
    guest.breathing = static_cast<BreathingClass>(dice.whole(0, 3));
    if (dice.once_in(2)) guest.measured_rmv = LitersPerMinute(dice.typed(5.0, 100.0));
    guest.kit.cylinder = drawn_cylinder(dice);
    if (dice.once_in(3)) guest.body_mass = Kilograms(dice.typed(15.0, 250.0));
    if (dice.once_in(3)) guest.body_height = Meters(dice.typed(0.8, 2.5));
    guest.kit.suit = std::array{"", "3 mm S", "5/3 mm", "7 mm hood", "99 mm", "dry suit"}.at(
        static_cast<std::size_t>(dice.whole(0, 5)));
    if (dice.once_in(3)) guest.kit.lead = Kilograms(dice.typed(0.0, 25.0));
    if (dice.once_in(2)) guest.dives_before = dice.once_in(300) ? -1 : dice.whole(0, 20000);
    if (dice.once_in(5)) guest.birth_date = day(dice.whole(1930, 2026), 6, 15);
    if (dice.once_in(3)) {
        HealthCheck& check = guest.screening;
        check.outcome = static_cast<ScreeningOutcome>(dice.whole(0, 3));
        if (dice.once_in(2)) check.checked_on = day(dice.whole(2024, 2027), 7, 4);
        if (dice.once_in(2)) check.approval_on = day(dice.whole(2024, 2027), 7, 3);
        check.physician_approval_seen = dice.once_in(2);
        check.today = static_cast<TodayOutcome>(dice.whole(0, 3));
        check.signature = static_cast<SignatureKind>(dice.whole(0, 2));
    }
    return guest;
}

EarlierDive drawn_dive(Dice& dice, int days_ago, int hour) {
    const auto session_day = std::chrono::sys_days(sound_scene().session.date);
    return {Date(session_day - std::chrono::days(days_ago)),
            TimeOfDay{hour * 60 + dice.whole(0, dice.once_in(100) ? 1500 : 59)},
            meters(dice.typed(0.5, 60.0)), Minutes(dice.typed(1.0, 179.0)),
            dice.once_in(200) ? 31 : dice.whole(1, 30)};
}

/// Dives of the days before, four hours apart; now and then today or out of bounds.
std::vector<EarlierDive> drawn_dives(Dice& dice) {
    std::vector<EarlierDive> dives;
    const int days = dice.once_in(2) ? 0 : dice.whole(1, 8);
    for (int days_ago = days; days_ago >= 1; --days_ago) {
        for (int hour = 8; hour < 20; hour += 4) {
            if (dice.once_in(2)) dives.push_back(drawn_dive(dice, days_ago, hour));
        }
    }
    if (dice.once_in(3)) dives.push_back(drawn_dive(dice, 0, dice.whole(0, 8)));
    return dives;
}

Stock drawn_stock(Dice& dice) {
    Stock stock;
    for (const CylinderType& type : cylinder_types()) {
        if (dice.once_in(2)) stock.cylinders.push_back({type.id, dice.whole(0, 20)});
    }
    for (const char* suit : {"3 mm S", "5 mm M", "7 mm L"}) {
        if (dice.once_in(2)) stock.suits.push_back({suit, dice.whole(0, 12)});
    }
    for (const double piece : {0.5, 1.0, 2.0, 3.0}) {
        if (dice.once_in(2)) stock.lead_pieces.emplace_back(piece * dice.typed(0.9, 1.1));
    }
    return stock;
}

Scene drawn_scene(Dice& dice) {
    Scene scene = sound_scene();
    Session& session = scene.session;
    session.site.altitude = Altitude(Meters(dice.typed(-430.0, 5000.0)));
    session.site.latitude = Degrees(dice.typed(-90.0, 90.0));
    session.site.salinity = PracticalSalinity{dice.typed(0.0, 42.0)};
    session.conditions.water_temperature = celsius(dice.typed(-2.0, 36.0));
    if (dice.once_in(3)) session.conditions.barometer = Pascals(dice.typed(50000.0, 110000.0));
    if (dice.once_in(3)) session.conditions.visibility = Meters(dice.typed(0.0, 100.0));
    session.conditions.current = static_cast<Current>(dice.whole(0, 3));
    session.profile = drawn_profile(dice);
    session.groups.push_back(
        Group{GroupId("red"), "Red", dice.once_in(3) ? StaffId() : first_instructor, {}});
    session.staff.front().cylinder = drawn_cylinder(dice);
    session.staff.front().earlier_dives = drawn_dives(dice);
    session.staff.front().extra_ascents = dice.once_in(200) ? 21 : dice.whole(0, 20);
    if (dice.once_in(2)) session.stock = drawn_stock(dice);
    session.guests.clear();
    const int guests = dice.whole(0, 6);
    for (int i = 0; i < guests; ++i) session.guests.push_back(drawn_guest(dice, session));
    if (dice.once_in(3)) session.rule_sets.clear();
    if (dice.once_in(3)) {
        rule_of(scene.rules, RuleKind::max_ascent_rate_m_per_min).value = dice.between(1.0, 18.0);
    }
    return scene;
}

void expect_ordered(const GuestGas& gas, const Plan& plan) {
    for (const double number :
         {gas.start_pressure.value(), gas.content.value(), gas.used.value(), gas.left.value(),
          gas.content_volume.value(), gas.used_volume.value(), gas.end_pressure.value(),
          gas.turn_pressure.value(), gas.leave_pressure.value(), gas.minimum_gas.value(),
          gas.signal_pressure.value()}) {
        ASSERT_TRUE(std::isfinite(number));
    }
    EXPECT_GT(gas.used.value(), 0.0);
    if (!gas.has_cylinder) return;
    const double slack = 1e-7;
    EXPECT_NEAR(gas.content.value(), (gas.used + gas.left).value(), 1e-9 * gas.used.value());
    EXPECT_LE(gas.end_pressure.value(), gas.start_pressure.value() + slack);
    EXPECT_GE(gas.end_pressure.value(), 0.0);
    EXPECT_GE(gas.turn_pressure.value(), gas.leave_pressure.value() - slack);
    EXPECT_GE(gas.leave_pressure.value(), plan.limits.reserve.value() - slack);
    EXPECT_GE(gas.leave_pressure.value(), gas.minimum_gas.value() - slack);
    EXPECT_GE(gas.signal_pressure.value(),
              std::max(plan.limits.reserve, gas.minimum_gas).value() - slack);
    EXPECT_GT(gas.minimum_gas.value(), 10.0);
    if (gas.minutes_to_reserve) {
        EXPECT_GE(gas.minutes_to_reserve->value(), 0.0);
        EXPECT_LE(gas.minutes_to_reserve->value(), 240.0);
    }
    ASSERT_FALSE(gas.curve.empty());
    for (std::size_t i = 0; i < gas.curve.size(); ++i) {
        ASSERT_TRUE(std::isfinite(gas.curve[i].gauge.value()));
        if (i == 0) continue;
        EXPECT_LE(gas.curve[i].gauge.value(), gas.curve[i - 1].gauge.value() + slack);
        EXPECT_GT(gas.curve[i].time.value(), gas.curve[i - 1].time.value());
    }
}

void expect_chance(double chance) {
    ASSERT_TRUE(std::isfinite(chance));
    EXPECT_GE(chance, 0.0);
    EXPECT_LE(chance, 1.0);
}

/// Early before middle before late; what has no value is later than all that have one.
void expect_ordered(const TimeBand& band) {
    constexpr double never = 1e9;
    const double early = band.early.value_or(Minutes(never)).value();
    const double middle = band.middle.value_or(Minutes(never)).value();
    const double late = band.late.value_or(Minutes(never)).value();
    ASSERT_TRUE(early >= 0.0 && early <= middle + 1e-9 && middle <= late + 1e-9)
        << early << ' ' << middle << ' ' << late;
}

void expect_sound(const GroupForecast& forecast) {
    expect_ordered(forecast.first_at_reserve);
    for (const double chance :
         {forecast.completes, forecast.completes_after_loss, forecast.completes_after_free_flow,
          forecast.sharing_lasts.value_or(1.0), forecast.runs.completes}) {
        expect_chance(chance);
    }
    EXPECT_LE(forecast.completes_after_loss, forecast.completes + 1e-12);
    double sum = 0.0;
    for (const GuestForecast& guest : forecast.guests) {
        expect_ordered(guest.turn);
        expect_ordered(guest.reserve);
        expect_chance(guest.ends_dive);
        sum += guest.ends_dive;
    }
    EXPECT_NEAR(sum, 1.0, 1e-4);
}

void expect_sound(const Lever& lever, const Scene& scene, const Plan& plan) {
    expect_chance(lever.completes);
    ASSERT_TRUE(std::isfinite(lever.gain_completes));
    ASSERT_TRUE(std::isfinite(lever.gain.value_or(Minutes(0.0)).value()));
    EXPECT_TRUE(find_gas(plan, lever.group));
    // What a lever offers can be planned.
    EXPECT_TRUE(check(with_lever(scene.session, lever)));
}

void expect_sound(const GuestWarmth& warmth) {
    expect_ordered(TimeBand{warmth.low, warmth.middle, warmth.high});
    for (const double number : {warmth.suit_clo_at_surface, warmth.suit_clo_at_depth,
                                warmth.heat_loss_watts, warmth.core_fall_kelvin}) {
        ASSERT_TRUE(std::isfinite(number));
    }
    EXPECT_LE(warmth.suit_clo_at_depth, warmth.suit_clo_at_surface + 1e-9);
}

void expect_sound(const GuestLead& lead) {
    for (const Kilograms mass : {lead.low, lead.middle, lead.high, lead.carried,
                                 lead.at_surface_start, lead.at_surface_reserve,
                                 lead.at_depth_start, lead.at_depth_reserve, lead.bcd_lift}) {
        ASSERT_TRUE(std::isfinite(mass.value()));
    }
    if (lead.gap != LeadGap::none) return;
    EXPECT_LE(lead.low.value(), lead.middle.value() + 1e-9);
    EXPECT_LE(lead.middle.value(), lead.high.value() + 1e-9);
    EXPECT_GE(lead.low.value(), 0.0);
}

void expect_sound(const StaffExposure& exposure) {
    for (const double number : {exposure.highest_saturation, exposure.no_fly.value(),
                                exposure.planned_time.value()}) {
        ASSERT_TRUE(std::isfinite(number));
        EXPECT_GE(number, 0.0);
    }
    EXPECT_GE(exposure.no_stop_left.value_or(Minutes(0.0)).value(), 0.0);
    EXPECT_GE(exposure.surface_interval.value_or(Minutes(0.0)).value(), 0.0);
    EXPECT_GE(exposure.ascents_today, exposure.dives_today);
}

void expect_sound(const EarLungCharts& charts) {
    for (const EarPoint& point : charts.ears.cleared) {
        ASSERT_TRUE(std::isfinite(point.difference.value()));
        EXPECT_GE(point.difference.value(), 0.0);
    }
    for (const HeldBreathLimit& limit : charts.lungs) {
        ASSERT_TRUE(std::isfinite(limit.expansion));
        EXPECT_GE(limit.expansion, 1.0);
    }
    EXPECT_GT(charts.largest_step.value(), 0.0);
}

void expect_sound_parts(const Scene& scene, const Plan& plan) {
    for (const GroupForecast& forecast : plan.forecasts) expect_sound(forecast);
    for (const Lever& lever : plan.levers) expect_sound(lever, scene, plan);
    ASSERT_EQ(plan.warmth.size(), scene.session.guests.size());
    ASSERT_EQ(plan.lead.size(), scene.session.guests.size());
    ASSERT_EQ(plan.exposures.size(), scene.session.staff.size());
    for (const GuestWarmth& warmth : plan.warmth) expect_sound(warmth);
    for (const GuestLead& lead : plan.lead) expect_sound(lead);
    for (const StaffExposure& exposure : plan.exposures) expect_sound(exposure);
    expect_sound(plan.ears_and_lungs);
}

void expect_sound(const Scene& scene, const Plan& plan) {
    expect_sound_parts(scene, plan);
    const Environment& place = plan.environment;
    for (const double number :
         {place.surface_pressure.value(), place.gravity.value(), place.density.value(),
          place.bottom_pressure.value(), place.breath_expansion_from_deepest,
          place.breath_danger_ascent.value(), place.fastest_descent.value(),
          place.fastest_ascent.value(), place.ladder.interval.value()}) {
        ASSERT_TRUE(std::isfinite(number));
    }
    EXPECT_GT(place.bottom_pressure.value(), place.surface_pressure.value());
    EXPECT_GT(place.breath_expansion_from_deepest, 1.0);
    ASSERT_EQ(plan.guests.size(), scene.session.guests.size());
    ASSERT_EQ(plan.groups.size(), scene.session.groups.size());
    for (const GuestGas& gas : plan.guests) expect_ordered(gas, plan);
    for (const GroupGas& gas : plan.groups) {
        EXPECT_GE(gas.ends_at.value(), 0.0);
        EXPECT_LE(gas.ends_at.value(), duration(scene.session.profile).value());
        EXPECT_EQ(gas.cut_short, gas.ends_at.value() < duration(scene.session.profile).value());
    }
}

/// A hundred thousand in all, in shards that run side by side.
constexpr int shards = 20;
#ifdef __SANITIZE_ADDRESS__
constexpr int sessions_a_shard = 1'000;  // under the sanitizers a fifth, for the time it takes
#else
constexpr int sessions_a_shard = 5'000;
#endif
constexpr int runs_a_forecast = 20;  // the runs' own tests ask for more

class RandomSessionShard : public testing::TestWithParam<int> {};

TEST_P(RandomSessionShard, GivesAPlanInOrderOrAnErrorWithAPlace) {
    Dice dice(static_cast<std::uint64_t>(GetParam()) + 1);
    int planned = 0;
    int refused = 0;
    for (int i = 0; i < sessions_a_shard; ++i) {
        SCOPED_TRACE(i);
        const Scene scene = drawn_scene(dice);
        const Result<Plan> result = plan(scene.session, scene.rules, runs_a_forecast);
        if (result) {
            ++planned;
            expect_sound(scene, *result);
        } else {
            ++refused;
            EXPECT_FALSE(result.error().place.empty());
            EXPECT_EQ(result.error().place.front(), '/') << result.error().place;
        }
        if (testing::Test::HasFailure()) break;
    }
    // Both ways must really have been gone.
    EXPECT_GT(planned, sessions_a_shard / 5);
    EXPECT_GT(refused, sessions_a_shard / 10);
}

INSTANTIATE_TEST_SUITE_P(seeds, RandomSessionShard, testing::Range(0, shards));

TEST(RandomSessions, GiveTheSamePlanAgain) {
    Dice dice(2);
    for (int i = 0; i < 50; ++i) {
        const Scene scene = drawn_scene(dice);
        const Result<Plan> once = plan(scene.session, scene.rules);
        const Result<Plan> again = plan(scene.session, scene.rules);
        ASSERT_EQ(once.has_value(), again.has_value());
        if (!once) continue;
        ASSERT_EQ(names_of(once->findings), names_of(again->findings));
        for (std::size_t guest = 0; guest < once->guests.size(); ++guest) {
            ASSERT_EQ(once->guests[guest].left.value(), again->guests[guest].left.value());
        }
    }
}

}  // namespace
}  // namespace leadline
