// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/rule_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

class PublishedRules : public testing::TestWithParam<std::filesystem::path> {};

TEST_P(PublishedRules, LoadWithASourceForEveryRule) {
    const Result<RuleSet> set = read_rule_set(slurp(GetParam()), rules_schema());
    ASSERT_TRUE(set) << testing::PrintToString(set.error());
    EXPECT_EQ(set->id.text, GetParam().stem().string());
    EXPECT_FALSE(set->title.empty());
    EXPECT_FALSE(set->note.empty());
    ASSERT_FALSE(set->rules.empty());
    for (const Rule& rule : set->rules) {
        EXPECT_GE(rule.source.size(), 20U) << name(rule.kind);
        // What has no source says so, and nothing else does.
        EXPECT_EQ(rule.standing == Standing::common_practice,
                  rule.source.starts_with("common practice, no source"))
            << name(rule.kind);
    }
}

TEST_P(PublishedRules, StandInTheReadme) {
    const std::string readme = slurp(source_dir() / "resources/rules/README.md");
    EXPECT_THAT(readme, testing::HasSubstr("`" + GetParam().filename().string() + "`"));
}

INSTANTIATE_TEST_SUITE_P(, PublishedRules, testing::ValuesIn(rule_paths()), [](const auto& one) {
    std::string name = one.param.stem().string();
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

TEST(PublishedRuleSets, AreAllThere) {
    std::vector<std::string> ids;
    for (const RuleSet& set : load_rules().sets) ids.push_back(set.id.text);
    EXPECT_THAT(ids, testing::UnorderedElementsAre(
                         "flying-after-diving-2002", "france-code-du-sport",
                         "france-federation-children", "house", "iso-11121-2017", "maldives-2003",
                         "queensland", "rstc-2001", "spain-rd-550-2020", "thailand-2025"));
}

TEST(PublishedRuleSets, HouseRulesCoverEveryKindButMinutes) {
    const RuleBook book = load_rules();
    for (int i = 0; i <= static_cast<int>(RuleKind::screening_valid_months); ++i) {
        const auto kind = static_cast<RuleKind>(i);
        EXPECT_EQ(strictest(book, {RuleSetId("house")}, kind).has_value(),
                  kind != RuleKind::max_minutes)
            << name(kind);
    }
}

TEST(PublishedRuleSets, GiveTheStrictestAndSayWhose) {
    const RuleBook book = load_rules();
    const std::vector<RuleSetId> chosen = {RuleSetId("house"), RuleSetId("france-code-du-sport"),
                                           RuleSetId("flying-after-diving-2002")};
    const auto depth = strictest(book, chosen, RuleKind::max_depth_m);
    ASSERT_TRUE(depth);
    EXPECT_EQ(depth->value, 6.0);
    EXPECT_EQ(depth->rule_set, "France, Code du sport");
    EXPECT_EQ(depth->standing, Standing::read);
    const auto no_fly = strictest(book, chosen, RuleKind::no_fly_hours);
    ASSERT_TRUE(no_fly);
    EXPECT_EQ(no_fly->value, 24.0);
}

TEST(PublishedRuleSets, BandsOfAgeMeetWithoutGap) {
    const RuleBook book = load_rules();
    const auto depth = [&](const char* set, int age) {
        const auto limit =
            strictest_for_age(book, {RuleSetId(set)}, RuleKind::max_depth_m, age);
        return limit ? limit->value : 0.0;
    };
    EXPECT_EQ(depth("france-federation-children", 9), 2.0);
    EXPECT_EQ(depth("france-federation-children", 10), 3.0);
    EXPECT_EQ(depth("france-federation-children", 13), 3.0);
    EXPECT_EQ(depth("france-federation-children", 14), 6.0);
    EXPECT_EQ(depth("spain-rd-550-2020", 8), 6.0);
    EXPECT_EQ(depth("spain-rd-550-2020", 11), 12.0);
    EXPECT_EQ(depth("spain-rd-550-2020", 12), 21.0);
    EXPECT_EQ(depth("spain-rd-550-2020", 16), 0.0);
}

// ---- refusals ----------------------------------------------------------------------------------

json one_rule() {
    return json::parse(R"({"leadline_rules": 1, "id": "x", "title": "X", "note": "",
        "rules": [{"kind": "max_depth_m", "value": 10, "severity": "stop", "source": "somebody",
                   "standing": "memory"}]})");
}

struct Change {
    const char* what;
    const char* pointer;
    json value;
    Error error;
};

void PrintTo(const Change& change, std::ostream* out) { *out << change.pointer; }

class BrokenRules : public testing::TestWithParam<Change> {};

TEST_P(BrokenRules, AreRefused) {
    const Change& change = GetParam();
    json rules = one_rule();
    ASSERT_TRUE(read_rule_set(rules.dump(), rules_schema()));
    rules[json::json_pointer(change.pointer)] = change.value;
    const Result<RuleSet> read = read_rule_set(rules.dump(), rules_schema());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, change.error.code);
    EXPECT_EQ(read.error().place, change.error.place);
    EXPECT_EQ(read.error().given, change.error.given);
}

INSTANTIATE_TEST_SUITE_P(
    , BrokenRules,
    testing::Values(
        Change{"UnknownKind", "/rules/0/kind", "max_depth_ft",
               {ErrorCode::not_a_choice, "/rules/0/kind", "max_depth_ft", ""}},
        Change{"ValueOutOfReason", "/rules/0/value", 900,
               {ErrorCode::out_of_range, "/rules/0/value", "900.0", ""}},
        Change{"ValueAsText", "/rules/0/value", "10",
               {ErrorCode::wrong_type, "/rules/0/value", "10", ""}},
        Change{"EmptySource", "/rules/0/source", "",
               {ErrorCode::bad_text, "/rules/0/source", "", ""}},
        Change{"BlankSource", "/rules/0/source", "   ",
               {ErrorCode::bad_text, "/rules/0/source", "   ", ""}},
        Change{"UnknownStanding", "/rules/0/standing", "certain",
               {ErrorCode::not_a_choice, "/rules/0/standing", "certain", ""}},
        Change{"UnknownSeverity", "/rules/0/severity", "fatal",
               {ErrorCode::not_a_choice, "/rules/0/severity", "fatal", ""}},
        Change{"ThresholdWithoutMeaning", "/rules/0/threshold", 3,
               {ErrorCode::unknown_field, "/rules/0", "threshold", ""}},
        Change{"ThresholdMissing", "/rules/0/kind", "places_in_waves",
               {ErrorCode::missing_field, "/rules/0", "threshold", ""}},
        Change{"UnknownField", "/rules/0/unit", "m",
               {ErrorCode::unknown_field, "/rules/0", "unit", ""}},
        Change{"NewerVersion", "/leadline_rules", 2,
               {ErrorCode::unsupported_version, "/leadline_rules", "2", ""}},
        Change{"NoRules", "/rules", json::array(), {ErrorCode::bad_count, "/rules", "0", ""}},
        Change{"TitleWithControl", "/title", "a\u0007b",
               {ErrorCode::bad_text, "/title", "a\\x07b", ""}}),
    [](const auto& one) { return std::string(one.param.what); });

TEST(BrokenRuleFiles, MissSource) {
    json rules = one_rule();
    rules["rules"][0].erase("source");
    const Result<RuleSet> read = read_rule_set(rules.dump(), rules_schema());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error(), (Error{ErrorCode::missing_field, "/rules/0", "source", ""}));
}

TEST(BrokenRuleFiles, EndAnAgeBandBeforeItStarts) {
    json rules = one_rule();
    rules["rules"][0]["from_age"] = 12;
    rules["rules"][0]["to_age"] = 10;
    const Result<RuleSet> read = read_rule_set(rules.dump(), rules_schema());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().place, "/rules/0/to_age");
}

TEST(BrokenRuleFiles, AreNoJson) {
    const Result<RuleSet> read = read_rule_set("{", rules_schema());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::not_json);
}

TEST(RuleSchema, NamesExactlyTheKindsThereAre) {
    const json schema = json::parse(rules_schema());
    const json& kinds = schema["definitions"]["rule"]["properties"]["kind"]["enum"];
    EXPECT_EQ(kinds.size(), static_cast<std::size_t>(RuleKind::screening_valid_months) + 1);
    for (const json& kind : kinds) EXPECT_TRUE(rule_kind(kind.get<std::string>())) << kind;
}

TEST(RuleFile, CarriesEveryMember) {
    json rules = one_rule();
    rules["note"] = "two\nlines";
    rules["rules"][0] = {{"kind", "places_with_children"}, {"value", 2}, {"threshold", 12.5},
                         {"from_age", 8}, {"to_age", 9}, {"severity", "note"},
                         {"source", "somebody"}, {"standing", "summary"}};
    const Result<RuleSet> read = read_rule_set(rules.dump(), rules_schema());
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(read->id, RuleSetId("x"));
    EXPECT_EQ(read->title, "X");
    EXPECT_EQ(read->note, "two\nlines");
    const Rule& rule = read->rules.at(0);
    EXPECT_EQ(rule.kind, RuleKind::places_with_children);
    EXPECT_EQ(rule.value, 2.0);
    EXPECT_EQ(rule.threshold, 12.5);
    EXPECT_EQ(rule.from_age, 8);
    EXPECT_EQ(rule.to_age, 9);
    EXPECT_EQ(rule.severity, Severity::note);
    EXPECT_EQ(rule.source, "somebody");
    EXPECT_EQ(rule.standing, Standing::summary);
}

}  // namespace
}  // namespace leadline::files_test
