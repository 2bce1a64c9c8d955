// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/dates.h"

#include "tests/planning/scene.h"

namespace leadline {
namespace {

TEST(Age, GrowsOnTheBirthday) {
    EXPECT_EQ(age_in_years(day(2016, 7, 4), day(2026, 7, 3)), 9);
    EXPECT_EQ(age_in_years(day(2016, 7, 4), day(2026, 7, 4)), 10);
    EXPECT_EQ(age_in_years(day(2016, 7, 4), day(2026, 7, 5)), 10);
    EXPECT_EQ(age_in_years(day(2016, 12, 31), day(2026, 1, 1)), 9);
}

TEST(Age, OfALeapDayGrowsOnTheFirstOfMarch) {
    EXPECT_EQ(age_in_years(day(2008, 2, 29), day(2026, 2, 28)), 17);
    EXPECT_EQ(age_in_years(day(2008, 2, 29), day(2026, 3, 1)), 18);
    EXPECT_EQ(age_in_years(day(2008, 2, 29), day(2028, 2, 28)), 19);
    EXPECT_EQ(age_in_years(day(2008, 2, 29), day(2028, 2, 29)), 20);
}

TEST(Age, IsZeroOnTheDayOfBirthAndNegativeBefore) {
    EXPECT_EQ(age_in_years(day(2026, 7, 4), day(2026, 7, 4)), 0);
    EXPECT_EQ(age_in_years(day(2026, 7, 5), day(2026, 7, 4)), -1);
}

TEST(Age, CountsACenturyWithoutALeapDay) {
    EXPECT_EQ(age_in_years(day(1900, 2, 28), day(2000, 2, 28)), 100);
    EXPECT_EQ(age_in_years(day(1900, 3, 1), day(2000, 2, 29)), 99);
}

TEST(DateText, ReadsBackWhatItWrote) {
    for (const Date date : {day(1900, 1, 1), day(2024, 2, 29), day(2026, 7, 4), day(2200, 12, 31)}) {
        EXPECT_EQ(must(parse_date(to_text(date), "/date")), date) << to_text(date);
    }
    EXPECT_EQ(to_text(day(2026, 7, 4)), "2026-07-04");
}

TEST(DateText, RefusesWhatIsNoCalendarDate) {
    for (const char* const text :
         {"", "2026", "2026-7-4", "2026-07-4 ", " 2026-07-04", "2026/07/04", "04-07-2026",
          "2026-13-01", "2026-00-10", "2026-02-29", "2026-04-31", "2026-01-00", "2026-0a-01",
          "2026--1-01", "+026-01-01", "2026-07-04T", "1899-12-31", "2201-01-01", "20260704"}) {
        const Result<Date> date = parse_date(text, "/date");
        ASSERT_FALSE(date) << text;
        EXPECT_EQ(date.error().code, ErrorCode::bad_date) << text;
        EXPECT_EQ(date.error().place, "/date");
        EXPECT_EQ(date.error().given, text);
    }
}

TEST(Later, CountsWholeMinutesBegunAndGoesOnPastMidnight) {
    EXPECT_EQ(later(TimeOfDay{600}, Minutes(0.0)), TimeOfDay{600});
    EXPECT_EQ(later(TimeOfDay{600}, Minutes(22.5)), TimeOfDay{622});
    EXPECT_EQ(later(TimeOfDay{600}, Minutes(0.1) * 200.0), TimeOfDay{620});
    EXPECT_EQ(later(TimeOfDay{23 * 60 + 50}, Minutes(25.0)), TimeOfDay{15});
}

TEST(TimeText, ReadsBackEveryMinuteOfTheDay) {
    for (int minute = 0; minute < 24 * 60; ++minute) {
        const TimeOfDay time{minute};
        ASSERT_EQ(must(parse_time_of_day(to_text(time), "/time")), time) << to_text(time);
    }
    EXPECT_EQ(to_text(TimeOfDay{9 * 60 + 5}), "09:05");
}

TEST(TimeText, RefusesWhatIsNoTimeOfDay) {
    for (const char* const text : {"", "9:30", "24:00", "23:60", "0930", "09.30", "09:3", "09:300",
                                   "-9:30", "09:-1", "ab:cd", "09:30 ", " 9:30"}) {
        const Result<TimeOfDay> time = parse_time_of_day(text, "/meeting_time");
        ASSERT_FALSE(time) << text;
        EXPECT_EQ(time.error().code, ErrorCode::bad_text) << text;
        EXPECT_EQ(time.error().place, "/meeting_time");
        EXPECT_EQ(time.error().given, text);
    }
}

}  // namespace
}  // namespace leadline
