// SPDX-License-Identifier: GPL-3.0-or-later
#include <set>

#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

constexpr int code_count = static_cast<int>(FindingCode::head_count_open) + 1;

TEST(SoundScene, HasNothingToSay) {
    EXPECT_EQ(names_of(findings_of(sound_scene())), "");
    EXPECT_EQ(names_of(findings_of(sound_scene_with_log())), "");
}

class EveryFinding : public testing::TestWithParam<FindingCase> {};

TEST_P(EveryFinding, AppearsWhenBrokenAndNotNextToIt) {
    const FindingCase& one = GetParam();
    Scene broken = sound_scene();
    one.broken(broken);
    const std::vector<Finding> found = findings_of(broken);
    const Finding* finding = find(found, one.code, one.subject);
    ASSERT_NE(finding, nullptr) << "found only: " << names_of(found);
    EXPECT_EQ(name(finding->severity), name(one.severity));
    EXPECT_FALSE(finding->overruled_because);

    Scene neighbour = sound_scene();
    one.neighbour(neighbour);
    const std::vector<Finding> beside = findings_of(neighbour);
    EXPECT_EQ(find(beside, one.code, one.subject), nullptr) << names_of(beside);
}

INSTANTIATE_TEST_SUITE_P(cases, EveryFinding, testing::ValuesIn(all_finding_cases()),
                         [](const auto& tested) {
                             return name(tested.param.code) + "_" + tested.param.what;
                         });

TEST(FindingCases, CoverEveryCode) {
    std::set<std::string> covered;
    for (const FindingCase& one : all_finding_cases()) covered.insert(name(one.code));
    for (int i = 0; i < code_count; ++i) {
        const std::string code = name(static_cast<FindingCode>(i));
        EXPECT_FALSE(code.empty()) << i;
        EXPECT_TRUE(covered.contains(code)) << code << " has no case";
    }
    EXPECT_EQ(covered.size(), static_cast<std::size_t>(code_count));
    EXPECT_TRUE(name(static_cast<FindingCode>(code_count)).empty());
}

}  // namespace
}  // namespace leadline
