// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/backup_schedule.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace leadline {
namespace {

using namespace std::chrono_literals;
using std::chrono::days;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;

/// Wednesday 5 August 2026, 8 in the morning.
const CopyTime now = std::chrono::sys_days(std::chrono::year(2026) / 8 / 5) + 8h;

CopyTime on(int year, unsigned month, unsigned day) {
    return std::chrono::sys_days(std::chrono::year(year) / int(month) / int(day)) + 7h;
}

/// Without the rule about the newest, which would hide the others in short lists.
CopySchedule by_age_alone() {
    CopySchedule schedule;
    schedule.newest_kept = 0;
    return schedule;
}

/// Copies on every day, thinned every day as the program would.
std::vector<CopyTime> after_days_of_use(int count) {
    std::vector<CopyTime> kept;
    for (int day = count; day >= 0; --day) {
        const CopyTime time = now - days(day);
        kept.push_back(time);
        for (const CopyTime gone : copies_to_remove(kept, time)) std::erase(kept, gone);
    }
    return kept;
}

TEST(CopyIsDue, WhenThereIsNone) { EXPECT_TRUE(copy_is_due({}, now)); }

TEST(CopyIsDue, AfterTwentyHoursAndNotBefore) {
    EXPECT_FALSE(copy_is_due({now - 20h}, now));
    EXPECT_TRUE(copy_is_due({now - 20h - 1ms}, now));
    EXPECT_FALSE(copy_is_due({now - 300h, now - 1h, now - 40h}, now));
}

TEST(CopyIsDue, ACopyFromTheFutureCountsForNothing) {
    EXPECT_TRUE(copy_is_due({now + 24h}, now));
    EXPECT_FALSE(copy_is_due({now + 1min}, now)) << "a clock set back by a minute";
}

TEST(CopiesToRemove, NoneOfNone) { EXPECT_THAT(copies_to_remove({}, now), IsEmpty()); }

TEST(CopiesToRemove, EveryCopyOfTheLastSevenDaysStays) {
    std::vector<CopyTime> copies;
    for (int hours = 0; hours <= 7 * 24; hours += 6) copies.push_back(now - std::chrono::hours(hours));
    EXPECT_THAT(copies_to_remove(copies, now, by_age_alone()), IsEmpty());
}

TEST(CopiesToRemove, OfAnEarlierWeekTheOldestStays) {
    // Monday 13 July to Sunday 19 July 2026, and the Monday after.
    EXPECT_THAT(copies_to_remove({on(2026, 7, 20), on(2026, 7, 19), on(2026, 7, 13),
                                  on(2026, 7, 16)},
                                 now, by_age_alone()),
                ElementsAre(on(2026, 7, 16), on(2026, 7, 19)));
}

TEST(CopiesToRemove, OfAnEarlierMonthTheOldestStays) {
    EXPECT_THAT(copies_to_remove({on(2026, 4, 1), on(2026, 3, 31), on(2026, 4, 9), on(2026, 3, 2)},
                                 now, by_age_alone()),
                ElementsAre(on(2026, 3, 31), on(2026, 4, 9)));
}

TEST(CopiesToRemove, OlderThanAllRulesGo) {
    // 7 days, 8 weeks and 12 months before 5 August 2026 is 3 June 2025.
    EXPECT_THAT(copies_to_remove({on(2025, 6, 3), on(2025, 6, 2), on(2020, 1, 1)}, now,
                                 by_age_alone()),
                ElementsAre(on(2020, 1, 1), on(2025, 6, 2)));
}

TEST(CopiesToRemove, TheSevenNewestStayHoweverOld) {
    std::vector<CopyTime> copies;
    for (unsigned day = 1; day <= 9; ++day) copies.push_back(on(2019, 5, day));
    EXPECT_THAT(copies_to_remove(copies, now), ElementsAre(on(2019, 5, 1), on(2019, 5, 2)));
}

TEST(CopiesToRemove, FromTheFutureStay) {
    std::vector<CopyTime> copies{now + days(400), now + days(401)};
    EXPECT_THAT(copies_to_remove(copies, now, by_age_alone()), IsEmpty());
}

TEST(CopiesToRemove, LeaveAboutTwentyEightOfThreeYearsOfDailyUse) {
    const std::vector<CopyTime> kept = after_days_of_use(3 * 365);
    // 8 days with today, 8 or 9 weeks, 12 or 13 months.
    EXPECT_GE(kept.size(), 8U + 8U + 12U);
    EXPECT_LE(kept.size(), 8U + 9U + 13U);
    // The state of any day of the last week is there to the day,
    std::vector<CopyTime> week;
    for (int day = 0; day <= 7; ++day) week.push_back(now - days(day));
    EXPECT_THAT(kept, IsSupersetOf(week));
    // and of any day of the last year within about a month.
    for (std::size_t i = 1; i < kept.size(); ++i) EXPECT_LE(kept[i] - kept[i - 1], days(45));
    EXPECT_LT(kept.front(), now - days(365));
}

TEST(CopiesToRemove, ASecondLookRemovesNoMore) {
    const std::vector<CopyTime> kept = after_days_of_use(500);
    EXPECT_THAT(copies_to_remove(kept, now), IsEmpty());
}

}  // namespace
}  // namespace leadline
