// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/retention_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

std::string retention_schema() { return slurp(source_dir() / "resources/schema/retention.schema.json"); }
std::string house_text() { return slurp(source_dir() / "resources/retention/house.json"); }

ErrorCode code_of(const json& document) {
    const Result<RetentionRules> rules = read_retention_rules(document.dump(), retention_schema());
    EXPECT_FALSE(rules.has_value());
    return rules ? ErrorCode::not_found : rules.error().code;
}

TEST(RetentionFile, TheHousePeriodsCoverEveryKindAndNameTheirSource) {
    const Result<RetentionRules> rules = read_retention_rules(house_text(), retention_schema());
    ASSERT_TRUE(rules) << testing::PrintToString(rules.error());
    EXPECT_EQ(rules->rules.size(), std::size_t(kept_kind_count));
    for (const RetentionRule& rule : rules->rules) {
        EXPECT_GE(rule.source.size(), 20U);
        if (rule.standing == Standing::common_practice) {
            EXPECT_TRUE(rule.source.starts_with("common practice, no source")) << rule.source;
        }
    }
    EXPECT_THAT(rules->note, testing::HasSubstr("Nothing is erased by itself"));
}

TEST(RetentionFile, RefusesWhatDoesNotFit) {
    const json house = json::parse(house_text());
    json twice = house;
    twice["rules"][1]["kind"] = "health";
    EXPECT_EQ(code_of(twice), ErrorCode::duplicate_id);
    json early = house;
    early["rules"][2]["keep_at_least_months"] = 40;
    EXPECT_EQ(code_of(early), ErrorCode::out_of_range);
    json never = house;
    never["rules"][0]["erase_after_months"] = 0;
    EXPECT_EQ(code_of(never), ErrorCode::out_of_range);
    json other = house;
    other["rules"][0]["kind"] = "shoes";
    EXPECT_EQ(code_of(other), ErrorCode::not_a_choice);
    json silent = house;
    silent["rules"][0].erase("source");
    EXPECT_EQ(code_of(silent), ErrorCode::missing_field);
    EXPECT_EQ(read_retention_rules("{", retention_schema()).error().code, ErrorCode::not_json);
}

}  // namespace
}  // namespace leadline::files_test
