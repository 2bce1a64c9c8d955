// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/rules.h"

#include <set>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

constexpr int kind_count = 28;

/// Kinds of which the greater value is the stricter one; of all others the lesser.
bool greater_is_stricter(RuleKind kind) {
    static const std::set<RuleKind> greater{
        RuleKind::least_age_years,         RuleKind::consent_below_age_years,
        RuleKind::companions_use_places,   RuleKind::min_water_temperature_c,
        RuleKind::reserve_pressure_bar,    RuleKind::min_visibility_m,
        RuleKind::no_fly_hours};
    return greater.contains(kind);
}

RuleBook two_sets(RuleKind kind, double first, double second) {
    RuleBook book;
    for (const auto& [id, value] : {std::pair("a", first), std::pair("b", second)}) {
        RuleSet set;
        set.id = RuleSetId(id);
        set.title = std::string("Set ") + id;
        set.rules = {make_rule(kind, value)};
        book.sets.push_back(set);
    }
    return book;
}

const std::vector<RuleSetId> both{RuleSetId("a"), RuleSetId("b")};

TEST(Strictest, IsFoundInBothDirectionsForEveryKind) {
    for (int i = 0; i < kind_count; ++i) {
        const auto kind = static_cast<RuleKind>(i);
        const double strict = greater_is_stricter(kind) ? 9.0 : 4.0;
        const double loose = greater_is_stricter(kind) ? 4.0 : 9.0;
        for (const bool strict_first : {true, false}) {
            const RuleBook book = strict_first ? two_sets(kind, strict, loose)
                                               : two_sets(kind, loose, strict);
            const auto limit = strictest(book, both, kind);
            ASSERT_TRUE(limit) << name(kind);
            EXPECT_EQ(limit->value, strict) << name(kind);
            EXPECT_EQ(limit->rule_set, strict_first ? "Set a" : "Set b") << name(kind);
        }
    }
}

TEST(Strictest, LooksOnlyAtChosenSets) {
    const RuleBook book = two_sets(RuleKind::max_depth_m, 6.0, 12.0);
    EXPECT_EQ(strictest(book, {RuleSetId("b")}, RuleKind::max_depth_m)->value, 12.0);
    EXPECT_FALSE(strictest(book, {}, RuleKind::max_depth_m));
    EXPECT_FALSE(strictest(book, {RuleSetId("unknown")}, RuleKind::max_depth_m));
    EXPECT_FALSE(strictest(book, both, RuleKind::max_wave_height_m));
}

TEST(Strictest, OfEqualValuesTakesTheMoreSevere) {
    for (const bool stop_first : {true, false}) {
        RuleBook book = two_sets(RuleKind::reserve_pressure_bar, 50.0, 50.0);
        book.sets[stop_first ? 1 : 0].rules[0].severity = Severity::caution;
        const auto limit = strictest(book, both, RuleKind::reserve_pressure_bar);
        ASSERT_TRUE(limit);
        EXPECT_EQ(limit->severity, Severity::stop) << stop_first;
        EXPECT_EQ(limit->rule_set, stop_first ? "Set a" : "Set b");
    }
}

TEST(Strictest, CarriesSourceStandingAndThreshold) {
    RuleBook book = two_sets(RuleKind::max_minutes, 25.0, 40.0);
    Rule& rule = book.sets[0].rules[0];
    rule.threshold = 23.0;
    rule.standing = Standing::read;
    rule.source = "a law";
    rule.severity = Severity::caution;
    const auto limit = strictest(book, both, RuleKind::max_minutes);
    ASSERT_TRUE(limit);
    EXPECT_EQ(limit->threshold, 23.0);
    EXPECT_EQ(limit->standing, Standing::read);
    EXPECT_EQ(limit->source, "a law");
    EXPECT_EQ(limit->severity, Severity::caution);
}

TEST(AgeBands, ApplyFromAgeToAge) {
    RuleBook book = two_sets(RuleKind::max_depth_m, 2.0, 12.0);
    Rule& rule = book.sets[0].rules[0];
    rule.from_age = 8;
    rule.to_age = 9;
    const auto depth = [&](std::optional<int> age) {
        return strictest_for_age(book, both, RuleKind::max_depth_m, age)->value;
    };
    EXPECT_EQ(depth(7), 12.0);
    EXPECT_EQ(depth(8), 2.0);
    EXPECT_EQ(depth(9), 2.0);
    EXPECT_EQ(depth(10), 12.0);
    EXPECT_EQ(depth(std::nullopt), 12.0);
}

TEST(AgeBands, MayBeOpenAtOneEnd) {
    RuleBook book = two_sets(RuleKind::max_depth_m, 3.0, 12.0);
    Rule& rule = book.sets[0].rules[0];
    rule.to_age = 13;
    const auto depth = [&](std::optional<int> age) {
        return strictest_for_age(book, both, RuleKind::max_depth_m, age)->value;
    };
    EXPECT_EQ(depth(0), 3.0);
    EXPECT_EQ(depth(13), 3.0);
    EXPECT_EQ(depth(14), 12.0);
    rule.to_age.reset();
    rule.from_age = 14;
    EXPECT_EQ(depth(13), 12.0);
    EXPECT_EQ(depth(14), 3.0);
    EXPECT_EQ(depth(99), 3.0);
}

TEST(RuleNames, AreUniqueAndReadBack) {
    std::set<std::string> names;
    for (int i = 0; i < kind_count; ++i) {
        const auto kind = static_cast<RuleKind>(i);
        EXPECT_FALSE(name(kind).empty()) << i;
        EXPECT_TRUE(names.insert(name(kind)).second) << name(kind);
        EXPECT_EQ(rule_kind(name(kind)), kind);
    }
    EXPECT_TRUE(name(static_cast<RuleKind>(kind_count)).empty());
    EXPECT_FALSE(rule_kind("max_depth"));
    EXPECT_FALSE(rule_kind(""));
}

TEST(RuleNames, OfStandings) {
    EXPECT_EQ(name(Standing::read), "read");
    EXPECT_EQ(name(Standing::summary), "summary");
    EXPECT_EQ(name(Standing::memory), "memory");
    EXPECT_EQ(name(Standing::common_practice), "common_practice");
}

TEST(ChosenRules, ThatNobodyKnowsAreRefused) {
    Scene scene = sound_scene();
    scene.session.rule_sets.emplace_back("somebody-elses");
    const Result<Plan> refused = plan(scene.session, scene.rules);
    ASSERT_FALSE(refused) << "a missing rule set would silently lift its limits";
    EXPECT_EQ(refused.error().code, ErrorCode::unknown_reference);
    EXPECT_EQ(refused.error().place, "/rule_sets/1");
    EXPECT_EQ(refused.error().given, "somebody-elses");
}

TEST(PlanLimits, ComeFromTheStrictestChosenSet) {
    Scene scene = sound_scene();
    choose_another_set(scene, "strict",
                       {make_rule(RuleKind::reserve_pressure_bar, 70.0),
                        make_rule(RuleKind::max_depth_m, 6.0),
                        make_rule(RuleKind::max_ascent_rate_m_per_min, 6.0),
                        make_rule(RuleKind::no_fly_hours, 18.0)});
    const Limits limits = plan_of(scene).limits;
    EXPECT_EQ(limits.reserve.value(), 70.0);
    EXPECT_EQ(limits.reserve_rule->rule_set, "Set strict");
    EXPECT_EQ(limits.max_depth->value, 6.0);
    EXPECT_EQ(limits.max_ascent_rate->value, 6.0);
    EXPECT_EQ(limits.no_fly.value(), 24.0);
    EXPECT_EQ(limits.no_fly_rule->rule_set, "Test rules");
}

// Common practice, no source to check against: low on air is signalled at about 50 bar, and no
// flying for 24 h is the usual advice of centres.
TEST(PlanLimits, HaveTheHouseValuesWithoutAnyRule) {
    Scene scene = sound_scene();
    scene.session.rule_sets.clear();
    const Limits limits = plan_of(scene).limits;
    EXPECT_EQ(limits.reserve.value(), 50.0);
    EXPECT_EQ(limits.no_fly.value(), 24.0);
    EXPECT_FALSE(limits.max_depth);
    EXPECT_FALSE(limits.reserve_rule);
}

}  // namespace
}  // namespace leadline
