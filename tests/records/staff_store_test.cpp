// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/staff_store.h"

#include <gtest/gtest.h>

#include "core/records/session_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::day;
using test::must;

LogEntry logged(const char* guest, std::vector<double> depths) {
    LogEntry entry{GuestId(guest), Bars(200.0), Bars(100.0), Minutes(30.0), {}, false, ""};
    double minute = 0.0;
    for (const double depth : depths) {
        entry.samples.push_back({Minutes(minute), Depth(Meters(depth))});
        minute += 1.0;
    }
    return entry;
}

/// Two groups, Blue of Mara (assisted by Tom) and White of Ilse, with a guest each; planned to 5 m,
/// in the water from 10:12 to 10:55.
SessionFile dived(const Date& date) {
    SessionFile file = test::session_with(
        date, {test::guest_named("guest-1", "Anna"), test::guest_named("guest-2", "Bo")});
    Session& session = file.session;
    session.dive_time = TimeOfDay{600};
    session.staff = {{StaffId("m"), "Mara Lind", StaffRole::instructor, {}, {}},
                     {StaffId("i"), "Ilse", StaffRole::instructor, {}, {}},
                     {StaffId("t"), "Tom", StaffRole::assistant, {}, {}},
                     {StaffId("x"), "On the boat", StaffRole::instructor, {}, {}}};
    session.groups = {{GroupId("blue"), "Blue", StaffId("m"), StaffId("t")},
                      {GroupId("white"), "White", StaffId("i"), StaffId()}};
    session.guests[0].group = GroupId("blue");
    session.guests[1].group = GroupId("white");
    file.log = DiveLog{TimeOfDay{612}, TimeOfDay{655}, 5, 5,
                       {logged("guest-1", {0.0, 6.25, 3.0}), logged("guest-2", {0.0, 11.5})}, ""};
    return file;
}

class StaffStoreTest : public testing::Test {
protected:
    SessionRow insert(const SessionFile& file) { return must(sessions_.insert(file)); }
    std::vector<EarlierDive> dives(const std::string& name, Date date = day(2026, 7, 5),
                                   TimeOfDay time = TimeOfDay{600}, int days = 7) {
        return must(store_.earlier_dives_of(name, date, time, days));
    }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    SessionStore sessions_{*database_};
    StaffStore store_{*database_};
};

TEST_F(StaffStoreTest, GivesDepthAndTimeOfTheGroupLed) {
    insert(dived(day(2026, 7, 4)));
    EXPECT_EQ(dives("Mara Lind"),
              (std::vector<EarlierDive>{{day(2026, 7, 4), TimeOfDay{612}, Depth(Meters(6.25)),
                                         Minutes(43.0), 1}}));
    ASSERT_EQ(dives("Ilse").size(), 1U);
    EXPECT_EQ(dives("Ilse")[0].deepest.meters().value(), 11.5);
    EXPECT_EQ(dives("Tom"), dives("Mara Lind")) << "assisting counts as leading does";
    EXPECT_TRUE(dives("On the boat").empty());
}

TEST_F(StaffStoreTest, KnowsPeopleByTheWholeNameOnly) {
    SessionFile file = dived(day(2026, 7, 4));
    file.session.staff[1].name = "  Ilse\t";
    insert(file);
    EXPECT_EQ(dives(" Mara Lind ").size(), 1U);
    EXPECT_EQ(dives("Ilse").size(), 1U);
    for (const char* name : {"Mara", "mara lind", "Mara Lind%", "%", "' OR 1=1 --", "", "  "}) {
        EXPECT_TRUE(dives(name).empty()) << name;
    }
}

TEST_F(StaffStoreTest, OfTwoGroupsTheDeeperCounts) {
    SessionFile file = dived(day(2026, 7, 4));
    file.session.groups[1].instructor = StaffId("m");
    insert(file);
    ASSERT_EQ(dives("Mara Lind").size(), 1U);
    EXPECT_EQ(dives("Mara Lind")[0].deepest.meters().value(), 11.5);
}

TEST_F(StaffStoreTest, WithoutSamplesThePlannedDepthServes) {
    SessionFile file = dived(day(2026, 7, 4));
    file.log->divers[0].samples.clear();
    file.log->divers.pop_back();
    insert(file);
    EXPECT_EQ(dives("Mara Lind").at(0).deepest.meters().value(), 5.0);
    EXPECT_EQ(dives("Ilse").at(0).deepest.meters().value(), 5.0) << "nobody of the group is logged";
}

TEST_F(StaffStoreTest, SamplesAtTheSurfaceAreNoDepth) {
    SessionFile file = dived(day(2026, 7, 4));
    file.log->divers[0] = logged("guest-1", {0.0, 0.0});
    insert(file);
    EXPECT_EQ(dives("Mara Lind").at(0).deepest.meters().value(), 5.0);
}

TEST_F(StaffStoreTest, WithoutALogNobodyHasDived) {
    SessionFile file = dived(day(2026, 7, 4));
    file.log.reset();
    insert(file);
    EXPECT_TRUE(dives("Mara Lind").empty());
}

TEST_F(StaffStoreTest, GivesTheTimeAsAnEarlierDiveMayHaveIt) {
    SessionFile file = dived(day(2026, 7, 3));
    file.log->time_out = file.log->time_in;
    insert(file);
    file = dived(day(2026, 7, 4));
    file.log->time_out = TimeOfDay{612 + 300};
    insert(file);
    const std::vector<EarlierDive> found = dives("Mara Lind");
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].duration.value(), 1.0);
    EXPECT_EQ(found[1].duration.value(), 240.0);
}

TEST_F(StaffStoreTest, LooksBackAsFarAsAskedAndNoDiveThatIsNotOver) {
    for (unsigned of_month = 1; of_month <= 5; ++of_month) insert(dived(day(2026, 7, of_month)));
    const auto count = [&](Date date, int minutes, int days) {
        return dives("Mara Lind", date, TimeOfDay{minutes}, days).size();
    };
    EXPECT_EQ(count(day(2026, 7, 5), 654, 2), 1U) << "10:54 two days before lies after 10:12";
    EXPECT_EQ(count(day(2026, 7, 5), 655, 2), 2U) << "today's is over at 10:55";
    EXPECT_EQ(count(day(2026, 7, 5), 612, 2), 2U) << "from the very minute";
    EXPECT_EQ(count(day(2026, 7, 5), 611, 2), 2U);
    EXPECT_EQ(count(day(2026, 7, 5), 655, 7), 5U);
    EXPECT_EQ(count(day(2026, 7, 1), 0, 7), 0U);
}

TEST_F(StaffStoreTest, GivesTheOldestFirst) {
    insert(dived(day(2026, 7, 4)));
    SessionFile early = dived(day(2026, 7, 4));
    early.log->time_in = TimeOfDay{500};
    early.log->time_out = TimeOfDay{540};
    insert(early);
    insert(dived(day(2026, 6, 30)));
    const std::vector<EarlierDive> found = dives("Tom");
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].date, day(2026, 6, 30));
    EXPECT_EQ(found[1].start, TimeOfDay{500});
    EXPECT_EQ(found[2].start, TimeOfDay{612});
}

TEST_F(StaffStoreTest, WhatItGivesPassesTheCheckOfASession) {
    insert(dived(day(2025, 8, 1)));
    insert(dived(day(2026, 7, 4)));
    SessionFile next = dived(day(2026, 7, 5));
    next.log.reset();
    next.session.staff[0].earlier_dives =
        dives("Mara Lind", next.session.date, next.session.dive_time, earlier_dives_kept_days);
    EXPECT_EQ(next.session.staff[0].earlier_dives.size(), 2U);
    EXPECT_TRUE(check(next.session));
}

TEST_F(StaffStoreTest, RefusesWhatIsNoTime) {
    for (const int days : {0, -1, earlier_dives_kept_days + 1}) {
        const auto found = store_.earlier_dives_of("Tom", day(2026, 7, 4), {}, days);
        ASSERT_FALSE(found);
        EXPECT_EQ(found.error().code, ErrorCode::out_of_range);
        EXPECT_EQ(found.error().place, "days");
    }
    const auto found = store_.earlier_dives_of("Tom", day(2026, 2, 30), {}, 7);
    ASSERT_FALSE(found);
    EXPECT_EQ(found.error().code, ErrorCode::bad_date);
}

}  // namespace
}  // namespace leadline
