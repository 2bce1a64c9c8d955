// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/breathing_spread.h"

#include <cmath>

#include "tests/physics/support.h"

namespace leadline {
namespace {

BreathingFacts facts_of(const ReferenceRow& row) {
    BreathingFacts facts;
    if (row.text("class") == "calm") facts.breathing = BreathingClass::calm;
    if (row.text("class") == "nervous") facts.breathing = BreathingClass::nervous;
    if (row.text("class") == "child") facts.breathing = BreathingClass::child;
    if (row.has("mass_kg")) facts.body_mass = Kilograms(row.number("mass_kg"));
    if (row.has("dives_before")) facts.dives_before = static_cast<int>(row.number("dives_before"));
    return facts;
}

class BreathingTable : public RowTest {};

TEST_P(BreathingTable, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const BreathingSpread spread = must(breathing_spread(facts_of(row)));
    const std::string& check = row.text("check");
    if (check == "median") {
        expect_near(row, spread.median.value());
    } else if (check == "quantile") {
        expect_near(row, must(rmv_quantile(spread, row.number("input"))).value());
    } else if (check == "sigma") {
        expect_near(row, spread.sigma());
    } else if (check == "stressed") {
        expect_near(row, stressed_guest_rmv.value());
    } else if (check == "current_factor") {
        BreathingFacts facts = facts_of(row);
        facts.current = static_cast<int>(row.number("input"));
        expect_near(row, must(breathing_spread(facts)).current_factor);
    } else if (check == "mass_factor") {
        expect_near(row, spread.mass_factor);
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(BreathingTable, "breathing_spread");

BreathingSpread spread_of(const BreathingFacts& facts) { return must(breathing_spread(facts)); }

TEST(BreathingSpreadTest, PutsAFactorOfTwoBetweenSlightAndHeavyBreathers) {
    const BreathingSpread spread = spread_of({});
    EXPECT_NEAR(must(rmv_quantile(spread, 0.9)) / must(rmv_quantile(spread, 0.1)), 2.0, 0.02);
}

TEST(BreathingSpreadTest, CorrelatesTwoStrangersByAFifth) {
    const BreathingSpread spread = spread_of({});
    EXPECT_NEAR(std::pow(spread.shared_sigma / spread.sigma(), 2.0), 0.2, 0.005);
}

TEST(BreathingSpreadTest, NeverPlansWithLessThanTheClassSays) {
    for (const BreathingClass breathing : {BreathingClass::calm, BreathingClass::average,
                                           BreathingClass::nervous, BreathingClass::child}) {
        for (const double mass : {15.0, 40.0, 75.0, 110.0, 250.0}) {
            for (const double water : {-2.0, 15.9, 16.0, 24.0, 36.0}) {
                for (const double suit : {0.0, 5.0, 20.0}) {
                    BreathingFacts facts;
                    facts.breathing = breathing;
                    facts.body_mass = Kilograms(mass);
                    facts.water = Celsius(water);
                    facts.suit_millimeters = suit;
                    EXPECT_GE(spread_of(facts).median, planning_rmv(breathing));
                }
            }
        }
    }
}

TEST(BreathingSpreadTest, GrowsWithMassColdThinSuitAndCurrent) {
    BreathingFacts facts;
    facts.water = Celsius(17.0);
    facts.suit_millimeters = 7.0;
    const double plain = spread_of(facts).median.value();
    facts.suit_millimeters = 5.0;
    EXPECT_NEAR(spread_of(facts).median.value(), plain * 1.1, 1e-9);
    facts.suit_millimeters = 0.0;
    EXPECT_NEAR(spread_of(facts).cold_factor, 1.331, 1e-9);
    facts.suit_millimeters = 7.0;
    facts.current = 3;
    EXPECT_NEAR(spread_of(facts).median.value(), plain * 1.3, 1e-9);
    facts.current = 0;
    facts.body_mass = Kilograms(120.0);
    EXPECT_GT(spread_of(facts).median.value(), plain);
    facts.body_mass.reset();
    facts.water = Celsius(10.0);
    facts.suit_millimeters = 8.0;
    EXPECT_NEAR(spread_of(facts).cold_factor, 1.1, 1e-9) << "cold even in the right suit";
}

TEST(BreathingSpreadTest, TakesAMeasuredRateWithTodaysColdAndCurrentOnTop) {
    BreathingFacts facts;
    facts.measured = LitersPerMinute(17.5);
    facts.body_mass = Kilograms(150.0);
    const BreathingSpread spread = spread_of(facts);
    EXPECT_EQ(spread.median.value(), 17.5) << "mass is in it already";
    facts.water = Celsius(5.0);
    facts.current = 3;
    EXPECT_NEAR(spread_of(facts).median.value(), 17.5 * 1.1 * 1.3, 1e-9);
    EXPECT_LT(spread.sigma(), spread_of({}).sigma());
}

TEST(BreathingSpreadTest, RefusesFactsOutOfRange) {
    const auto place = [](auto change) {
        BreathingFacts facts;
        change(facts);
        const auto result = breathing_spread(facts);
        return result ? std::string("accepted") : result.error().place;
    };
    const double nan = std::nan("");
    EXPECT_EQ(place([&](auto& f) { f.measured = LitersPerMinute(nan); }), "rmv");
    EXPECT_EQ(place([&](auto& f) { f.measured = LitersPerMinute(4.0); }), "rmv");
    EXPECT_EQ(place([&](auto& f) { f.body_mass = Kilograms(14.0); }), "body_mass");
    EXPECT_EQ(place([&](auto& f) { f.suit_millimeters = nan; }), "suit");
    EXPECT_EQ(place([&](auto& f) { f.dives_before = -1; }), "dives_before");
    EXPECT_EQ(place([&](auto& f) { f.current = 4; }), "current");
    EXPECT_EQ(place([&](auto& f) { f.water = Celsius(40.0); }), "water");
    EXPECT_FALSE(rmv_quantile(spread_of({}), 0.0));
    EXPECT_FALSE(rmv_quantile(spread_of({}), nan));
}

}  // namespace
}  // namespace leadline
