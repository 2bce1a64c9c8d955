// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/retention.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace leadline {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

Date on(int year, unsigned month, unsigned day) {
    return Date(std::chrono::year(year), std::chrono::month(month), std::chrono::day(day));
}

RetentionRules periods() {
    return {"", "", {{KeptKind::identity, 36, 12, "law", Standing::read},
                     {KeptKind::health, 12, std::nullopt, "house", Standing::common_practice},
                     {KeptKind::contacts, 24, std::nullopt, "house", Standing::common_practice}}};
}

TEST(MonthsLater, StaysWithinTheMonth) {
    EXPECT_EQ(months_later(on(2026, 1, 31), 1), on(2026, 2, 28));
    EXPECT_EQ(months_later(on(2024, 1, 31), 1), on(2024, 2, 29));
    EXPECT_EQ(months_later(on(2024, 2, 29), 12), on(2025, 2, 28));
    EXPECT_EQ(months_later(on(2026, 11, 15), 14), on(2028, 1, 15));
}

TEST(DueForErasure, CountsFromTheLastSession) {
    const std::vector<KeptFacts> facts{{7, on(2024, 7, 4), true, true}};
    EXPECT_THAT(due_for_erasure(periods(), facts, on(2025, 7, 3)), IsEmpty());
    EXPECT_THAT(due_for_erasure(periods(), facts, on(2025, 7, 4)),
                ElementsAre(DueErasure{7, {KeptKind::health}, on(2025, 7, 4)}));
    EXPECT_THAT(due_for_erasure(periods(), facts, on(2026, 7, 4)),
                ElementsAre(DueErasure{7, {KeptKind::health, KeptKind::contacts},
                                       on(2025, 7, 4)}));
    EXPECT_THAT(due_for_erasure(periods(), facts, on(2030, 1, 1)),
                ElementsAre(DueErasure{
                    7, {KeptKind::health, KeptKind::contacts, KeptKind::identity},
                    on(2025, 7, 4)}));
}

TEST(DueForErasure, LeavesOutWhatIsNotKept) {
    const std::vector<KeptFacts> facts{{1, on(2020, 1, 1), false, false},
                                       {2, on(2026, 1, 1), true, true},
                                       {3, on(2024, 6, 1), false, true}};
    EXPECT_THAT(due_for_erasure(periods(), facts, on(2026, 7, 1)),
                ElementsAre(DueErasure{1, {KeptKind::identity}, on(2023, 1, 1)},
                            DueErasure{3, {KeptKind::contacts}, on(2026, 6, 1)}));
    EXPECT_THAT(due_for_erasure({}, facts, on(2050, 1, 1)), IsEmpty());
}

TEST(DueForErasure, APersonWithoutSessionIsDueAtOnce) {
    const auto due = due_for_erasure(periods(), {{1, std::nullopt, false, true}}, on(2026, 7, 1));
    ASSERT_THAT(due, SizeIs(1));
    EXPECT_THAT(due[0].kinds, ElementsAre(KeptKind::contacts, KeptKind::identity));
    EXPECT_FALSE(due[0].since);
}

TEST(KeepsLonger, WarnsUntilThePeriodIsOver) {
    const RetentionRules rules = periods();
    const RetentionRule* rule = keeps_longer(rules, on(2026, 7, 4), on(2027, 7, 3));
    ASSERT_NE(rule, nullptr);
    EXPECT_EQ(rule->source, "law");
    EXPECT_EQ(keeps_longer(rules, on(2026, 7, 4), on(2027, 7, 4)), nullptr);
    EXPECT_EQ(keeps_longer(rules, std::nullopt, on(2026, 7, 4)), nullptr);
}

TEST(TimeToLook, IsAMonthAfterTheLastTime) {
    EXPECT_TRUE(is_time_to_look(std::nullopt, on(2026, 7, 4)));
    EXPECT_FALSE(is_time_to_look(on(2026, 7, 4), on(2026, 7, 4)));
    EXPECT_FALSE(is_time_to_look(on(2026, 7, 4), on(2026, 8, 3)));
    EXPECT_TRUE(is_time_to_look(on(2026, 7, 4), on(2026, 8, 4)));
    EXPECT_TRUE(is_time_to_look(on(2027, 7, 4), on(2026, 7, 4)));
}

}  // namespace
}  // namespace leadline
