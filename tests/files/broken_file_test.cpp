// SPDX-License-Identifier: GPL-3.0-or-later
// Each file in tests/data/broken is named for its one fault; expected.csv says what must be
// answered. An empty cell of `given` or `allowed` is not compared.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/files/text_file.h"
#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

struct Expected {
    std::string file;
    std::string code;
    std::string place;
    std::string given;
    std::string allowed;
};

void PrintTo(const Expected& expected, std::ostream* out) { *out << expected.file; }

std::vector<Expected> expected_rows() {
    std::vector<Expected> rows;
    const auto table = read_csv(data_dir() / "broken" / "expected.csv");
    for (std::size_t i = 1; i < table.size(); ++i) {
        const auto& row = table[i];
        rows.push_back({row.at(0), row.at(1), row.at(2), row.at(3), row.at(4)});
    }
    return rows;
}

std::string test_name(const std::string& file) {
    std::string name = file.substr(0, file.find('.'));
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

class BrokenFile : public testing::TestWithParam<Expected> {};

TEST_P(BrokenFile, IsRefused) {
    const Expected& expected = GetParam();
    const Result<std::string> text = read_text_file(data_dir() / "broken" / expected.file);
    ASSERT_TRUE(text) << testing::PrintToString(text.error());
    const Result<SessionFile> read = read_session(*text, session_schema());
    ASSERT_FALSE(read) << "let in";
    EXPECT_EQ(code_name(read.error().code), expected.code);
    EXPECT_EQ(read.error().place, expected.place);
    if (!expected.given.empty()) {
        EXPECT_EQ(read.error().given, expected.given);
    }
    if (!expected.allowed.empty()) {
        EXPECT_EQ(read.error().allowed, expected.allowed);
    }
}

INSTANTIATE_TEST_SUITE_P(, BrokenFile, testing::ValuesIn(expected_rows()),
                         [](const auto& one) { return test_name(one.param.file); });

TEST(BrokenFiles, AllStandInTheTable) {
    std::vector<std::string> in_table;
    for (const Expected& row : expected_rows()) in_table.push_back(row.file);
    std::vector<std::string> in_folder;
    for (const auto& entry : std::filesystem::directory_iterator(data_dir() / "broken")) {
        if (entry.path().extension() == ".json") {
            in_folder.push_back(entry.path().filename().string());
        }
    }
    EXPECT_THAT(in_table, testing::UnorderedElementsAreArray(in_folder));
}

TEST(BrokenFiles, TheSessionTheyAreMadeFromIsRight) {
    const Result<SessionFile> read =
        read_session(slurp(data_dir() / "small-session.json"), session_schema());
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_TRUE(read->log);
}

}  // namespace
}  // namespace leadline::files_test
