// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/schema_check.h"

#include <gtest/gtest.h>

#include "core/files/schema_failure.h"
#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

const char* const tried_schema = R"({
  "$schema": "http://json-schema.org/draft-07/schema#",
  "type": "object",
  "additionalProperties": false,
  "required": ["name"],
  "properties": {
    "name": { "type": "string", "minLength": 2, "maxLength": 4 },
    "day": { "type": "string", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
             "$comment": "YYYY-MM-DD" },
    "code": { "type": "string", "pattern": "^[a-z]+$", "$comment": "small letters" },
    "depth_m": { "type": "number", "minimum": 0, "maximum": 60 },
    "count": { "type": "integer", "minimum": 1 },
    "share": { "type": "number", "maximum": 1 },
    "entry": { "type": "string", "enum": ["shore", "boat"] },
    "version": { "type": "integer", "const": 1 },
    "flag": { "type": "boolean" },
    "tree": { "$ref": "#/definitions/tree" },
    "pairs": {
      "type": "array", "minItems": 1, "maxItems": 3,
      "items": { "type": "array", "minItems": 2, "maxItems": 2,
                 "items": [ { "type": "number" }, { "type": "string" } ] }
    }
  },
  "definitions": {
    "tree": {
      "type": "object", "additionalProperties": false, "required": ["leaf"],
      "properties": { "leaf": { "type": "integer" }, "tree": { "$ref": "#/definitions/tree" } }
    }
  }
})";

struct Case {
    const char* what;
    const char* document;
    Error error;
};

void PrintTo(const Case& one, std::ostream* out) { *out << one.document; }

class SchemaCheck : public testing::TestWithParam<Case> {};

TEST_P(SchemaCheck, RefusesWithCodeAndPlace) {
    const Result<Done> checked = check_schema(json::parse(GetParam().document), tried_schema);
    ASSERT_FALSE(checked);
    EXPECT_EQ(checked.error(), GetParam().error);
}

INSTANTIATE_TEST_SUITE_P(
    , SchemaCheck,
    testing::Values(
        Case{"Root", "3", {ErrorCode::wrong_type, "/", "3", "object"}},
        Case{"Missing", "{}", {ErrorCode::missing_field, "/", "name", ""}},
        Case{"MissingDeep", R"({"name": "abc", "tree": {"leaf": 1, "tree": {}}})",
             {ErrorCode::missing_field, "/tree/tree", "leaf", ""}},
        Case{"Unknown", R"({"name": "abc", "tree": {"leaf": 1, "lief": 2}})",
             {ErrorCode::unknown_field, "/tree", "lief", "leaf, tree"}},
        Case{"MisspelledIsUnknown", R"({"name": "abc", "tree": {"lief": 2}})",
             {ErrorCode::unknown_field, "/tree", "lief", "leaf, tree"}},
        Case{"DeepestFirst", R"({"nmae": "abc", "tree": {"leaf": "x"}})",
             {ErrorCode::wrong_type, "/tree/leaf", "x", "integer"}},
        Case{"Type", R"({"name": 12})", {ErrorCode::wrong_type, "/name", "12", "string"}},
        Case{"TypeOfList", R"({"name": ["abc"]})",
             {ErrorCode::wrong_type, "/name", "array", "string"}},
        Case{"Fraction", R"({"name": "abc", "count": 1.5})",
             {ErrorCode::wrong_type, "/count", "1.5", "integer"}},
        Case{"Flag", R"({"name": "abc", "flag": 1})",
             {ErrorCode::wrong_type, "/flag", "1", "boolean"}},
        Case{"Null", R"({"name": null})", {ErrorCode::wrong_type, "/name", "null", "string"}},
        Case{"TooDeep", R"({"name": "abc", "depth_m": 60.5})",
             {ErrorCode::out_of_range, "/depth_m", "60.5", "0 to 60"}},
        Case{"TooFew", R"({"name": "abc", "count": 0})",
             {ErrorCode::out_of_range, "/count", "0", ">= 1"}},
        Case{"TooMuch", R"({"name": "abc", "share": 2})",
             {ErrorCode::out_of_range, "/share", "2", "<= 1"}},
        Case{"Choice", R"({"name": "abc", "entry": "Shore"})",
             {ErrorCode::not_a_choice, "/entry", "Shore", "shore, boat"}},
        Case{"Constant", R"({"name": "abc", "version": 2})",
             {ErrorCode::not_a_choice, "/version", "2", "1"}},
        Case{"Short", R"({"name": "a"})",
             {ErrorCode::bad_text, "/name", "a", "2 to 4 characters"}},
        Case{"Long", R"({"name": "abcde"})",
             {ErrorCode::bad_text, "/name", "abcde", "2 to 4 characters"}},
        Case{"Pattern", R"({"name": "abc", "code": "ABC"})",
             {ErrorCode::bad_text, "/code", "ABC", "small letters"}},
        Case{"Date", R"({"name": "abc", "day": "1 July"})",
             {ErrorCode::bad_date, "/day", "1 July", "YYYY-MM-DD"}},
        Case{"NoItems", R"({"name": "abc", "pairs": []})",
             {ErrorCode::bad_count, "/pairs", "0", "1 to 3"}},
        Case{"ManyItems", R"({"name": "abc", "pairs": [[1, "a"], [1, "a"], [1, "a"], [1, "a"]]})",
             {ErrorCode::bad_count, "/pairs", "4", "1 to 3"}},
        Case{"Triple", R"({"name": "abc", "pairs": [[1, "a"], [1, "a", 2]]})",
             {ErrorCode::bad_count, "/pairs/1", "3", "2 to 2"}},
        Case{"Tuple", R"({"name": "abc", "pairs": [[1, "a"], ["a", 1]]})",
             {ErrorCode::wrong_type, "/pairs/1/0", "a", "number"}}),
    [](const auto& one) { return std::string(one.param.what); });

TEST(SchemaCheckAccepts, WhatFollowsTheSchema) {
    EXPECT_TRUE(check_schema(json::parse(R"({"name": "éééé", "day": "2026-02-28", "code": "abc",
        "depth_m": 60, "count": 1, "share": -5, "entry": "boat", "version": 1, "flag": false,
        "tree": {"leaf": 1, "tree": {"leaf": 2}}, "pairs": [[1, "a"], [0.5, "b"]]})"),
                             tried_schema));
}

TEST(SchemaCheckAccepts, NoBrokenSchema) {
    for (const char* broken : {"", "no schema", R"({"type": 3})", R"({"$ref": "#/nowhere"})"}) {
        const Result<Done> checked = check_schema(json(1), broken);
        ASSERT_FALSE(checked) << broken;
        EXPECT_EQ(checked.error().code, ErrorCode::not_json) << broken;
        EXPECT_EQ(checked.error().place, "schema") << broken;
    }
}

/// Every property of the project's schemas is described, and no object lets unknown fields pass.
void expect_described(const json& node, const std::string& place) {
    if (node.contains("properties")) {
        EXPECT_FALSE(node.value("additionalProperties", true)) << place;
        for (const auto& [name, property] : node["properties"].items()) {
            const std::string at = place + "/" + name;
            if (!property.contains("$ref")) {
                EXPECT_TRUE(property.contains("title")) << at;
                EXPECT_TRUE(property.contains("description")) << at;
            }
            expect_described(property, at);
        }
    }
    if (node.contains("items") && node["items"].is_object()) {
        expect_described(node["items"], place + "/items");
    }
    if (!node.contains("definitions")) return;
    for (const auto& [name, definition] : node["definitions"].items()) {
        EXPECT_TRUE(definition.contains("title") && definition.contains("description")) << name;
        expect_described(definition, "#" + name);
    }
}

TEST(Schemas, DescribeEveryProperty) {
    expect_described(json::parse(session_schema()), "session");
    expect_described(json::parse(rules_schema()), "rules");
}

}  // namespace
}  // namespace leadline::files_test
