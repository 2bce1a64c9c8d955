// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/json_gate.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/files/text_file.h"
#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

Error refused(const std::string& text) {
    const Result<json> parsed = parse_json(text);
    if (parsed) {
        ADD_FAILURE() << "let in: " << text.substr(0, 100);
        return {};
    }
    return parsed.error();
}

TEST(JsonGate, LetsPlainJsonIn) {
    const Result<json> parsed = parse_json(R"({"a": [1, -2.5, "é", true, null, {"b": []}]})");
    ASSERT_TRUE(parsed);
    EXPECT_EQ(parsed->at("a").at(1), -2.5);
    EXPECT_EQ(parsed->at("a").at(2), "é");
}

TEST(JsonGate, LetsAByteOrderMarkIn) {
    const Result<json> parsed = parse_json("\xEF\xBB\xBF{\"a\": 1}");
    ASSERT_TRUE(parsed);
    EXPECT_EQ(parsed->at("a"), 1);
}

TEST(JsonGate, LetsDeepestNestingIn) {
    EXPECT_TRUE(parse_json(std::string(32, '[') + std::string(32, ']')));
}

TEST(JsonGate, RefusesOneLevelMore) {
    const Error error = refused(std::string(33, '[') + std::string(33, ']'));
    EXPECT_EQ(error.code, ErrorCode::nested_too_deep);
    EXPECT_EQ(error.allowed, "32");
    EXPECT_EQ(refused(R"({"x": )" + std::string(32, '[')).place.substr(0, 6), "/x/0/0");
}

TEST(JsonGate, RefusesTenMegabytesOfBrackets) {
    EXPECT_EQ(refused(std::string(10U << 20U, '[')).code, ErrorCode::file_too_large);
}

TEST(JsonGate, RefusesTheMostBracketsThatFit) {
    for (const char* opening : {"[", "{\"a\":", "[[],"}) {
        std::string text;
        while (text.size() + 5 <= largest_text_file) text += opening;
        EXPECT_EQ(refused(text).code, ErrorCode::nested_too_deep) << opening;
    }
}

TEST(JsonGate, TellsLineAndColumn) {
    EXPECT_EQ(refused("{\n  \"a\": 1,\n  \"b\": ?\n}").place, "line 3, column 8");
    EXPECT_EQ(refused("").place, "line 1, column 1");
    EXPECT_EQ(refused("{\n").place, "line 2, column 1");
    // Columns count characters, not bytes.
    EXPECT_EQ(refused("[\"éé\" ?]").place, "line 1, column 7");
}

TEST(JsonGate, ComplaintsAreShortAndValidText) {
    const std::string long_word(100000, 'a');
    const std::vector<std::string> texts = {long_word, "[\"" + long_word + "\xFF\"]",
                                            "[\"\xE9\"]", std::string("\xFF\xFE{\0", 4)};
    for (const std::string& text : texts) {
        const Error error = refused(text);
        EXPECT_EQ(error.code, ErrorCode::not_json);
        EXPECT_LT(error.given.size(), 300U);
        EXPECT_NO_THROW((void)json(error.given).dump()) << "not UTF-8";
    }
}

TEST(JsonGate, RefusesADoubledKey) {
    EXPECT_EQ(refused(R"({"a": {"b": 1, "c": 2, "b": 3}})"),
              (Error{ErrorCode::duplicate_id, "/a/b", "b", ""}));
    EXPECT_TRUE(parse_json(R"({"a": {"b": 1}, "c": {"b": 1}})"));
}

TEST(JsonGate, EscapesPointers) {
    EXPECT_EQ(refused(R"({"a/b~c": [0, {"x": 1, "x": 2}]})").place, "/a~1b~0c/1/x");
}

TEST(JsonGate, RefusesNumbersThatNoDoubleHolds) {
    EXPECT_EQ(refused("[0, 1e400]").code, ErrorCode::out_of_range);
    EXPECT_EQ(refused("[0, 1e400]").place, "/1");
    EXPECT_EQ(refused("-1e400").place, "/");
    EXPECT_EQ(refused(R"({"a": 9007199254740993})").place, "/a");
    EXPECT_EQ(refused(R"({"a": -9007199254740994})").place, "/a");
    EXPECT_TRUE(parse_json("[9007199254740992, 1e308, 5e-324, 1e-400]"));
}

TEST(JsonGate, RefusesOverlongTextsAndKeys) {
    const std::string longest(longest_text, 'a');
    EXPECT_TRUE(parse_json("[\"" + longest + "\"]"));
    EXPECT_EQ(refused("[\"" + longest + "a\"]").code, ErrorCode::bad_text);
    const Error key = refused("{\"" + longest + "a\": 1}");
    EXPECT_EQ(key.code, ErrorCode::bad_text);
    EXPECT_LT(key.place.size(), 100U);
}

TEST(JsonGate, RefusesNul) {
    EXPECT_EQ(refused(R"(["a\u0000b"])"),
              (Error{ErrorCode::bad_text, "/0", "a\\x00b", "no U+0000"}));
}

TEST(JsonGate, ShortensBetweenCharacters) {
    EXPECT_EQ(shortened("short"), "short");
    const std::string cut = shortened("a" + std::string(29, ' ') + std::string(40, '.') + "é");
    EXPECT_EQ(cut.size(), 63U);
    std::string accents;
    for (int i = 0; i < 40; ++i) accents += "é";
    EXPECT_EQ(shortened("a" + accents), "a" + accents.substr(0, 58) + "...");
}

}  // namespace
}  // namespace leadline::files_test
