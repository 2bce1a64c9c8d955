// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/warmth.h"

#include <cmath>
#include <limits>
#include <vector>

#include "core/body/composition.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr double never = 1e9;

/// One diver at one depth, as the tests vary it.
struct Trial {
    double mass = 75.0;     // kg
    double height = 1.75;   // m
    double fat = 0.20;      // fraction
    double fit = usual_fit;
    Suit suit{5.0};
    double ventilation = 25.0;  // L/min
    double water = 18.0;        // C
    double depth = 8.0;         // m
    double watts = 250.0;
    double minutes = 240.0;
    double step = 1.0;          // min

    [[nodiscard]] HeatBody body() const {
        return {Kilograms(mass), must(body_surface(Kilograms(mass), Meters(height))), fat};
    }
    [[nodiscard]] HeatLeg leg() const {
        const Pascals pressure(atmosphere_pa + 1025.0 * 9.80665 * depth);
        return {Minutes(minutes), pressure, pressure, watts};
    }
    [[nodiscard]] HeatRun run(bool stop_at_limit = false) const {
        const HeatPlace place{suit, fit, LitersPerMinute(ventilation), Celsius(water)};
        const Result<ImmersedDiver> diver = ImmersedDiver::make(body(), place);
        if (!diver) {
            ADD_FAILURE() << diver.error().place << " " << diver.error().given;
            return {};
        }
        const std::vector<HeatLeg> legs{leg()};
        return must(diver->run(legs, stop_at_limit, Minutes(step)));
    }
    [[nodiscard]] double minutes_warm() const {
        const HeatRun done = run(true);
        return done.limit_reached ? done.limit_reached->value() : never;
    }
};

/// The trained man of the wetsuit studies: 75 kg, 1.78 m, 12 % of fat.
Trial swimmer(const ReferenceRow& row) {
    Trial trial;
    trial.height = 1.78;
    trial.fat = 0.12;
    if (row.has("thickness_mm")) trial.suit.thickness_mm = row.number("thickness_mm");
    if (row.has("water_c")) trial.water = row.number("water_c");
    if (row.has("depth_m")) trial.depth = row.number("depth_m");
    if (row.has("minutes")) trial.minutes = row.number("minutes");
    if (row.has("ventilation_l_per_min")) trial.ventilation = row.number("ventilation_l_per_min");
    if (row.has("oxygen_l_per_min")) {
        trial.watts =
            must(metabolic_watts(Kilograms(trial.mass), row.number("oxygen_l_per_min")));
    }
    return trial;
}

/// A guest of middle build, as the suit table is for: with a hood on 7 mm.
Trial guest(const ReferenceRow& row) {
    Trial trial = swimmer(row);
    trial.height = 1.75;
    trial.fat = 0.25;
    trial.suit.hood = trial.suit.thickness_mm >= 7.0;
    return trial;
}

bool check_insulation(const ReferenceRow& row) {
    const Trial trial = swimmer(row);
    const double outer = must(outer_insulation(trial.suit, usual_fit, trial.leg().from));
    const double tissue = must(tissue_insulation(trial.body(), trial.watts, Celsius(25.0)));
    if (row.text("check") == "total_insulation") {
        expect_near(row, outer + tissue);
    } else if (row.text("check") == "suit_share") {
        expect_near(row, outer / (outer + tissue));
    } else {
        return false;
    }
    return true;
}

bool check_watts(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "metabolic") {
        expect_near(row, must(metabolic_watts(Kilograms(80.0), row.number("oxygen_l_per_min"))));
        return true;
    }
    if (!check.starts_with("breath")) return false;
    const Pascals pressure = row.has("absolute_bar") ? Pascals(row.number("absolute_bar") * 1e5)
                                                     : Pascals(atmosphere_pa);
    expect_near(row,
                must(breath_loss_watts(LitersPerMinute(row.number("ventilation_l_per_min")),
                                       pressure, Celsius(row.number("water_c")))));
    return true;
}

/// Water in which a resting nude person's core is at 37 C after four hours.
double balance_temperature() {
    Trial trial;
    trial.suit = Suit{0.0};
    trial.fat = 0.22;
    trial.depth = 0.0;
    trial.ventilation = 7.0;
    trial.watts = 58.0 * trial.body().surface.value();
    double cold = 25.0;
    double warm = 40.0;
    for (int i = 0; i < 40; ++i) {
        trial.water = 0.5 * (cold + warm);
        (trial.run().core < resting_core ? cold : warm) = trial.water;
    }
    return 0.5 * (cold + warm);
}

bool check_runs(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "balance_temperature") {
        expect_near(row, balance_temperature());
    } else if (check == "core_fall") {
        expect_near(row, (resting_core - swimmer(row).run().core).value());
    } else if (check == "core") {
        expect_near(row, Celsius(guest(row).run().core).value());
    } else if (check == "minutes_at_most") {
        expect_at_most(row, guest(row).minutes_warm());
    } else if (check == "minutes_at_least") {
        EXPECT_GE(guest(row).minutes_warm(), row.number("expected")) << row;
    } else {
        return false;
    }
    return true;
}

class Warmth : public RowTest {};

TEST_P(Warmth, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    if (check_insulation(row) || check_watts(row) || check_runs(row)) return;
    fail_unknown_check(row);
}

LEADLINE_REFERENCE_TABLE(Warmth, "warmth");

TEST(HeatBalance, Closes) {
    for (const double water : {-2.0, 4.0, 18.0, 28.0, 36.0}) {
        for (const double step : {0.1, 1.0, 5.0}) {
            Trial trial;
            trial.water = water;
            trial.step = step;
            trial.minutes = 87.3;
            const HeatRun run = trial.run();
            const double half = 0.5 * body_heat_capacity * trial.mass;
            const double shell_before = resting_shell(trial.body()).value();
            const double stored = half * (run.core - resting_core).value() +
                                  half * (run.shell.value() - shell_before);
            EXPECT_NEAR(stored, run.produced_joules - run.lost_joules, 1e-3);
            EXPECT_NEAR(run.produced_joules, 250.0 * 87.3 * 60.0, 1e-3);
            EXPECT_GT(run.loss_watts, run.breath_watts);
        }
    }
}

TEST(HeatBalance, DoesNotHangOnTheStep) {
    for (const double water : {5.0, 12.0, 20.0}) {
        Trial trial;
        trial.water = water;
        trial.step = 0.01;
        const double fine = trial.minutes_warm();
        ASSERT_LT(fine, never);
        trial.step = 1.0;
        EXPECT_NEAR(trial.minutes_warm(), fine, 0.1) << water;
        trial.minutes = 60.0;
        const HeatRun coarse = trial.run();
        trial.step = 0.01;
        const HeatRun exact = trial.run();
        EXPECT_NEAR(coarse.core.value(), exact.core.value(), 0.005) << water;
        EXPECT_NEAR(coarse.shell.value(), exact.shell.value(), 0.02) << water;
    }
}

TEST(HeatBalance, FollowsTheClosedFormOfTwoNodes) {
    // With open vessels nothing changes over time: two linear equations, solved by their
    // eigenvalues. Water of 33.6 C keeps the skin open; so little heat is made that the core falls.
    Trial trial;
    trial.water = 33.6;
    trial.watts = 40.0;
    trial.ventilation = 0.0;
    trial.depth = 0.0;
    trial.minutes = 60.0;
    trial.step = 0.25;
    const HeatRun run = trial.run();
    const HeatBody body = trial.body();
    const double surface = body.surface.value();
    const double fixed = must(tissue_insulation(body, trial.watts, Celsius(34.0)));
    const double inner = surface / (0.5 * fixed);
    const double outer =
        surface / (0.5 * fixed + must(outer_insulation(trial.suit, usual_fit, trial.leg().from)));
    const double capacity = 0.5 * body_heat_capacity * trial.mass;
    // Both nodes have the same capacity, so the matrix is symmetric.
    const double a = -inner / capacity;
    const double d = -(inner + outer) / capacity;
    const double b = inner / capacity;
    const double mean = 0.5 * (a + d);
    const double root = std::sqrt(0.25 * (a - d) * (a - d) + b * b);
    const double shell_end = trial.water + trial.watts / outer;
    const double core_end = shell_end + trial.watts / inner;
    const double core0 = 37.0 - core_end;
    const double shell0 = Celsius(resting_shell(body)).value() - shell_end;
    const double t = 3600.0;
    const double c = std::exp(mean * t) * std::cosh(root * t);
    const double s = std::exp(mean * t) * std::sinh(root * t) / root;
    const double core = core_end + (c + s * (a - mean)) * core0 + s * b * shell0;
    const double shell = shell_end + s * b * core0 + (c + s * (d - mean)) * shell0;
    EXPECT_NEAR(Celsius(run.core).value(), core, 1e-3);
    EXPECT_NEAR(Celsius(run.shell).value(), shell, 1e-3);
}

TEST(HeatBalance, LetsNoWorkHeatTheCoreWhileTheShellCanTakeIt) {
    for (const double water : {5.0, 12.0, 20.0}) {
        Trial trial;
        trial.water = water;
        trial.watts = 400.0;
        const HeatRun run = trial.run();
        EXPECT_LE(run.core.value(), resting_core.value() + 1e-9) << water;
        EXPECT_LE(run.shell.value(), run.core.value() + 1e-9) << water;
    }
}

TEST(HeatBalance, LetsNoLeanChildCoolInWaterThatWarmsIt) {
    Trial child;
    child.mass = 30.0;
    child.height = 1.38;
    child.fat = 0.08;
    child.water = 34.0;
    child.watts = must(metabolic_watts(Kilograms(30.0), 0.64));
    child.minutes = 15.0;
    const HeatRun run = child.run();
    ASSERT_GT(run.produced_joules, run.lost_joules);
    EXPECT_NEAR(run.core.value(), resting_core.value(), 0.05);
}

TEST(HeatBalance, GivesFewerMinutesColderDeeperThinnerLeanerSmaller) {
    const auto never_more = [](const Trial& kind, const Trial& hard, const char* what) {
        EXPECT_LE(hard.minutes_warm(), kind.minutes_warm())
            << what << " in " << kind.water << " C at " << kind.depth << " m, " << kind.mass
            << " kg";
    };
    for (const double water : {0.0, 6.0, 12.0, 18.0, 24.0, 30.0}) {
        for (const double depth : {0.0, 8.0, 20.0}) {
            for (const double mass : {32.0, 55.0, 75.0, 110.0}) {
                Trial trial;
                trial.water = water;
                trial.depth = depth;
                trial.mass = mass;
                trial.height = mass < 40.0 ? 1.38 : 1.70;
                trial.watts = must(metabolic_watts(Kilograms(mass), 0.8));
                Trial hard = trial;
                hard.water -= 1.0;
                never_more(trial, hard, "colder");
                hard = trial;
                hard.depth += 4.0;
                never_more(trial, hard, "deeper");
                hard = trial;
                hard.suit.thickness_mm = 3.0;
                never_more(trial, hard, "thinner");
                hard = trial;
                hard.fat = 0.10;
                never_more(trial, hard, "leaner");
                hard = trial;
                hard.fit = poor_fit;
                never_more(trial, hard, "flushed");
                hard = trial;
                hard.ventilation = 40.0;
                never_more(trial, hard, "breathing more");
                hard = trial;
                hard.watts *= 0.8;
                never_more(trial, hard, "stiller");
                hard = trial;
                hard.mass *= 0.85;
                hard.height *= std::cbrt(0.85);
                hard.watts = must(metabolic_watts(Kilograms(hard.mass), 0.8));
                never_more(trial, hard, "smaller");
            }
        }
    }
}

TEST(HeatBalance, ChillsBeforeTheLimit) {
    Trial trial;
    trial.water = 14.0;
    const HeatRun run = trial.run(true);
    ASSERT_TRUE(run.limit_reached);
    ASSERT_TRUE(run.chilled);
    EXPECT_LT(*run.chilled, *run.limit_reached);
    EXPECT_EQ(run.lasted.value(), run.limit_reached->value());
    EXPECT_NE(run.limit, WarmthLimit::none);
    trial.water = 33.0;
    const HeatRun warm = trial.run(true);
    EXPECT_FALSE(warm.limit_reached);
    EXPECT_EQ(warm.limit, WarmthLimit::none);
    EXPECT_NEAR(warm.lasted.value(), 240.0, 1e-9);
}

TEST(HeatBalance, IsTheSameInOneLegOrMany) {
    Trial trial;
    const HeatPlace place{trial.suit, trial.fit, LitersPerMinute(25.0), Celsius(15.0)};
    const ImmersedDiver diver = ImmersedDiver::make(trial.body(), place).value();
    HeatLeg part = trial.leg();
    part.duration = Minutes(10.0);
    HeatLeg whole = part;
    whole.duration = Minutes(30.0);
    const HeatLeg none{Minutes(0.0), whole.from, whole.from, 100.0};
    const HeatRun many = must(diver.run(std::vector<HeatLeg>{part, none, part, part}, false));
    const HeatRun one = must(diver.run(std::vector<HeatLeg>{whole}, false));
    EXPECT_NEAR(many.core.value(), one.core.value(), 1e-9);
    EXPECT_NEAR(many.shell.value(), one.shell.value(), 1e-9);
    EXPECT_NEAR(many.lasted.value(), 30.0, 1e-9);
}

std::string place_of(const auto& result) {
    EXPECT_FALSE(result);
    return result ? std::string() : result.error().place;
}

TEST(HeatRange, OfThePersonIsRefusedByName) {
    const HeatPlace place{Suit{5.0}, 0.75, LitersPerMinute(25.0), Celsius(15.0)};
    const auto made = [&](double mass, double surface, double fat) {
        return place_of(ImmersedDiver::make({Kilograms(mass), SquareMeters(surface), fat}, place));
    };
    EXPECT_EQ(made(14.0, 1.9, 0.2), "body mass");
    EXPECT_EQ(made(not_a_number, 1.9, 0.2), "body mass");
    EXPECT_EQ(made(75.0, 0.2, 0.2), "body surface");
    EXPECT_EQ(made(75.0, infinite, 0.2), "body surface");
    EXPECT_EQ(made(75.0, 1.9, 0.71), "body fat");
    EXPECT_EQ(made(75.0, 1.9, not_a_number), "body fat");
}

TEST(HeatRange, OfThePlaceIsRefusedByName) {
    const HeatBody body{Kilograms(75.0), SquareMeters(1.9), 0.2};
    const HeatPlace good{Suit{5.0}, 0.75, LitersPerMinute(25.0), Celsius(15.0)};
    const auto made = [&](auto&& change) {
        HeatPlace place = good;
        change(place);
        return place_of(ImmersedDiver::make(body, place));
    };
    EXPECT_EQ(made([](HeatPlace& p) { p.suit.thickness_mm = 11.0; }), "suit thickness");
    EXPECT_EQ(made([](HeatPlace& p) { p.fit = 1.2; }), "fit of the suit");
    EXPECT_EQ(made([](HeatPlace& p) { p.ventilation = LitersPerMinute(151.0); }), "ventilation");
    EXPECT_EQ(made([](HeatPlace& p) { p.water = Celsius(41.0); }), "water temperature");
    EXPECT_EQ(made([](HeatPlace& p) { p.water = Kelvins(not_a_number); }), "water temperature");

    const ImmersedDiver diver = ImmersedDiver::make(body, good).value();
    const auto ran = [&](auto&& change, double step = 1.0) {
        HeatLeg leg{Minutes(10.0), Pascals(2e5), Pascals(2e5), 200.0};
        change(leg);
        return place_of(diver.run(std::vector<HeatLeg>{leg}, false, Minutes(step)));
    };
    EXPECT_EQ(ran([](HeatLeg& l) { l.duration = Minutes(-1.0); }), "duration");
    EXPECT_EQ(ran([](HeatLeg& l) { l.duration = Minutes(infinite); }), "duration");
    EXPECT_EQ(ran([](HeatLeg& l) { l.from = Pascals(1e4); }), "pressure");
    EXPECT_EQ(ran([](HeatLeg& l) { l.to = Pascals(not_a_number); }), "pressure");
    EXPECT_EQ(ran([](HeatLeg& l) { l.metabolic_watts = 2001.0; }), "metabolic heat");
    EXPECT_EQ(ran([](HeatLeg&) {}, 0.0), "step");
    EXPECT_EQ(ran([](HeatLeg&) {}, not_a_number), "step");
}

TEST(HeatRange, OfThePartsIsRefusedByName) {
    const HeatBody body{Kilograms(75.0), SquareMeters(1.9), 0.2};
    EXPECT_EQ(place_of(metabolic_watts(Kilograms(14.0), 1.0)), "body mass");
    EXPECT_EQ(place_of(metabolic_watts(Kilograms(75.0), 4.1)), "oxygen uptake");
    EXPECT_EQ(place_of(metabolic_watts(Kilograms(75.0), not_a_number)), "oxygen uptake");
    EXPECT_EQ(place_of(breath_loss_watts(LitersPerMinute(-1.0), Pascals(1e5), Celsius(10.0))),
              "ventilation");
    EXPECT_EQ(place_of(breath_loss_watts(LitersPerMinute(20.0), Pascals(1e7), Celsius(10.0))),
              "pressure");
    EXPECT_EQ(place_of(breath_loss_watts(LitersPerMinute(20.0), Pascals(1e5), Celsius(-3.0))),
              "water temperature");
    EXPECT_EQ(place_of(tissue_insulation(body, not_a_number, Celsius(30.0))), "metabolic heat");
    EXPECT_EQ(place_of(tissue_insulation(body, 100.0, Celsius(50.0))), "skin temperature");
}

}  // namespace
}  // namespace leadline
