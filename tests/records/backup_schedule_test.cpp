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
const CopyTime that_day = std::chrono::sys_days(std::chrono::year(2026) / 8 / 5) + 8h;

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
        const CopyTime time = that_day - days(day);
        kept.push_back(time);
        for (const CopyTime gone : copies_to_remove(kept, time)) std::erase(kept, gone);
    }
    return kept;
}

TEST(CopyIsDue, WhenThereIsNone) { EXPECT_TRUE(copy_is_due({}, that_day)); }

TEST(CopyIsDue, AfterTwentyHoursAndNotBefore) {
    EXPECT_FALSE(copy_is_due({that_day - 20h}, that_day));
    EXPECT_TRUE(copy_is_due({that_day - 20h - 1ms}, that_day));
    EXPECT_FALSE(copy_is_due({that_day - 300h, that_day - 1h, that_day - 40h}, that_day));
}

TEST(CopyIsDue, ACopyFromTheFutureCountsForNothing) {
    EXPECT_TRUE(copy_is_due({that_day + 24h}, that_day));
    EXPECT_FALSE(copy_is_due({that_day + 1min}, that_day)) << "a clock set back by a minute";
}

TEST(CopiesToRemove, NoneOfNone) { EXPECT_THAT(copies_to_remove({}, that_day), IsEmpty()); }

TEST(CopiesToRemove, EveryCopyOfTheLastSevenDaysStays) {
    std::vector<CopyTime> copies;
    for (int hours = 0; hours <= 7 * 24; hours += 6) copies.push_back(that_day - std::chrono::hours(hours));
    EXPECT_THAT(copies_to_remove(copies, that_day, by_age_alone()), IsEmpty());
}

TEST(CopiesToRemove, OfAnEarlierWeekTheOldestStays) {
    // Monday 13 July to Sunday 19 July 2026, and the Monday after.
    EXPECT_THAT(copies_to_remove({on(2026, 7, 20), on(2026, 7, 19), on(2026, 7, 13),
                                  on(2026, 7, 16)},
                                 that_day, by_age_alone()),
                ElementsAre(on(2026, 7, 16), on(2026, 7, 19)));
}

TEST(CopiesToRemove, OfAnEarlierMonthTheOldestStays) {
    EXPECT_THAT(copies_to_remove({on(2026, 4, 1), on(2026, 3, 31), on(2026, 4, 9), on(2026, 3, 2)},
                                 that_day, by_age_alone()),
                ElementsAre(on(2026, 3, 31), on(2026, 4, 9)));
}

TEST(CopiesToRemove, OlderThanAllRulesGo) {
    // 7 days, 8 weeks and 12 months before 5 August 2026 is 3 June 2025.
    EXPECT_THAT(copies_to_remove({on(2025, 6, 3), on(2025, 6, 2), on(2020, 1, 1)}, that_day,
                                 by_age_alone()),
                ElementsAre(on(2020, 1, 1), on(2025, 6, 2)));
}

TEST(CopiesToRemove, TheSevenNewestStayHoweverOld) {
    std::vector<CopyTime> copies;
    for (unsigned day = 1; day <= 9; ++day) copies.push_back(on(2019, 5, day));
    EXPECT_THAT(copies_to_remove(copies, that_day), ElementsAre(on(2019, 5, 1), on(2019, 5, 2)));
}

TEST(CopiesToRemove, FromTheFutureStay) {
    std::vector<CopyTime> copies{that_day + days(400), that_day + days(401)};
    EXPECT_THAT(copies_to_remove(copies, that_day, by_age_alone()), IsEmpty());
}

TEST(CopiesToRemove, LeaveAboutTwentyEightOfThreeYearsOfDailyUse) {
    const std::vector<CopyTime> kept = after_days_of_use(3 * 365);
    // 8 days with today, 8 or 9 weeks, 12 or 13 months.
    EXPECT_GE(kept.size(), 8U + 8U + 12U);
    EXPECT_LE(kept.size(), 8U + 9U + 13U);
    // The state of any day of the last week is there to the day,
    std::vector<CopyTime> week;
    for (int day = 0; day <= 7; ++day) week.push_back(that_day - days(day));
    EXPECT_THAT(kept, IsSupersetOf(week));
    // and of any day of the last year within about a month.
    for (std::size_t i = 1; i < kept.size(); ++i) EXPECT_LE(kept[i] - kept[i - 1], days(45));
    EXPECT_LT(kept.front(), that_day - days(365));
}

TEST(CopiesToRemove, ASecondLookRemovesNoMore) {
    const std::vector<CopyTime> kept = after_days_of_use(500);
    EXPECT_THAT(copies_to_remove(kept, that_day), IsEmpty());
}

}  // namespace
}  // namespace leadline
