// SPDX-License-Identifier: GPL-3.0-or-later
// The inputs the fuzzers have kept, and those that once went wrong, in every build.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/fuzz/target.h"

namespace leadline::fuzz {
namespace {

struct Corpus {
    const char* folder;
    void (*target)(std::string_view);
};

void PrintTo(const Corpus& corpus, std::ostream* out) { *out << corpus.folder; }

class Replay : public testing::TestWithParam<Corpus> {};

TEST_P(Replay, OfTheCorpusHolds) {
    const std::filesystem::path folder =
        std::filesystem::path(LEADLINE_SOURCE_DIR "/tests/fuzz/corpus") / GetParam().folder;
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    EXPECT_GE(files.size(), 3U) << "a corpus that tests nothing";
    for (const std::filesystem::path& path : files) {
        SCOPED_TRACE(path.filename().string());
        std::ifstream file(path, std::ios::binary);
        std::ostringstream bytes;
        bytes << file.rdbuf();
        ASSERT_TRUE(file.good());
        GetParam().target(bytes.str());  // ends the program where something does not hold
    }
}

INSTANTIATE_TEST_SUITE_P(Of, Replay,
                         testing::Values(Corpus{"session", session_file},
                                         Corpus{"rules", rule_file},
                                         Corpus{"booking", booking_list}),
                         [](const auto& one) { return std::string(one.param.folder); });

TEST(ReplayDeathTest, EndsWhereSomethingDoesNotHold) {
    EXPECT_DEATH(must(false, "a promise"), "does not hold: a promise");
}

}  // namespace
}  // namespace leadline::fuzz
