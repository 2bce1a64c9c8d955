// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/roster_edits.h"

#include <gtest/gtest.h>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/birth_date_line.h"

namespace leadline::testing {
namespace {

TEST(RosterEdits, AnOverruleNeverFallsToTheNextGuestWithTheSameId) {
    Session session = session_with({"Ana", "Bo"});
    session.overrules = {{"screening_physician:guest-2", "letter seen", "Mara"},
                         {"kit_missing:guest-1", "own mask", "Mara"},
                         {"screening_physician:guest-22", "letter seen", "Mara"}};
    remove_guests(session, {GuestId("guest-2")});
    ASSERT_EQ(session.guests.size(), 1U);
    ASSERT_EQ(session.overrules.size(), 2U);
    EXPECT_EQ(session.overrules[0].finding, "kit_missing:guest-1");
    EXPECT_EQ(add_guest(session, "Cy"), GuestId("guest-2")) << "the id is given out again";
    EXPECT_TRUE(check(session).has_value());
}

TEST(RosterEdits, GuestsAddedTogetherGetIdsOfTheirOwnAndNoGroup) {
    Session session = session_with({"Ana"});
    Guest guest = ready_guest("guest-1", "Bo");
    add_guests(session, {guest, guest});
    ASSERT_EQ(session.guests.size(), 3U);
    EXPECT_TRUE(session.guests[1].group.empty());
    EXPECT_TRUE(check(session).has_value());
}

TEST(RosterEdits, RemovingAGroupLeavesItsGuestsInNone) {
    Session session = session_with({"Ana", "Bo"});
    session.guests[1].group = GroupId("group-2");
    remove_group(session, GroupId("group-1"));
    EXPECT_TRUE(session.guests[0].group.empty());
    EXPECT_EQ(session.guests[1].group, GroupId("group-2"));
    EXPECT_TRUE(check(session).has_value());
}

TEST(RosterEdits, RemovingStaffTakesThemOutOfTheirGroupsAndTheLead) {
    Session session = staffed_session();
    session.leader = StaffId("staff-1");
    session.groups[1].assistant = StaffId("staff-1");
    remove_staff(session, StaffId("staff-1"));
    EXPECT_TRUE(session.leader.empty());
    EXPECT_TRUE(session.groups[0].instructor.empty());
    EXPECT_TRUE(session.groups[1].assistant.empty());
    EXPECT_EQ(session.groups[1].instructor, StaffId("staff-2"));
    EXPECT_TRUE(check(session).has_value());
}

TEST(RosterEdits, ANewGroupGetsAnInstructorWhoIsFree) {
    Session session = staffed_session();
    session.groups.pop_back();
    add_group(session, "White");
    EXPECT_EQ(session.groups.back().instructor, StaffId("staff-2"));
    add_group(session, "Green");
    EXPECT_TRUE(session.groups.back().instructor.empty()) << "assistants lead no group";
    EXPECT_TRUE(check(session).has_value());
}

TEST(RosterEdits, APersonOnRecordBringsWhatLastsAndNothingElse) {
    Guest known = ready_guest("x", "Ana Müller");
    known.language = "de";
    known.measured_rmv = LitersPerMinute(22.0);
    known.guardian_consent = true;
    Guest guest;
    guest.id = GuestId("guest-1");
    guest.note = "own note";
    guest.screening.outcome = ScreeningOutcome::physician_required;
    ASSERT_TRUE(nothing_lasting(guest));
    fill_lasting(guest, known);
    EXPECT_EQ(guest.name, "Ana Müller");
    EXPECT_EQ(guest.birth_date, day(1990, 5, 17));
    EXPECT_EQ(guest.language, "de");
    ASSERT_TRUE(guest.measured_rmv.has_value());
    EXPECT_DOUBLE_EQ(guest.measured_rmv->value(), 22.0);
    EXPECT_EQ(guest.id, GuestId("guest-1"));
    EXPECT_EQ(guest.screening.outcome, ScreeningOutcome::physician_required);
    EXPECT_FALSE(guest.screening.checked_on);
    EXPECT_FALSE(guest.guardian_consent);
    EXPECT_EQ(guest.kit, Kit());
    EXPECT_EQ(guest.note, "own note");
    EXPECT_FALSE(nothing_lasting(guest));
}

TEST(RosterEdits, ANewCylinderKeepsTheReadingOnlyWhereItMayHoldIt) {
    const CylinderType& small = *find_cylinder_type(CylinderTypeId("aluminium-9"));
    const CylinderType& large = *find_cylinder_type(CylinderTypeId("steel-12"));
    const Kelvins air(Celsius(28.0));
    const Cylinder first = cylinder_of_type(large, std::nullopt, air);
    EXPECT_EQ(first.fill_pressure.value(), 0.0) << "no gauge has been read yet";
    EXPECT_DOUBLE_EQ(first.fill_temperature.value(), air.value());
    EXPECT_DOUBLE_EQ(
        cylinder_of_type(large, std::nullopt, Kelvins(Celsius(2.0))).fill_temperature.value(),
        Kelvins(Celsius(15.0)).value())
        << "a cold day makes no more air";
    Cylinder full = first;
    full.fill_pressure = Bars(220.0);
    EXPECT_EQ(cylinder_of_type(small, full, air).fill_pressure.value(), 0.0);
    full.fill_pressure = Bars(200.0);
    EXPECT_EQ(cylinder_of_type(small, full, air).fill_pressure.value(), 200.0);
}

struct TypedDate {
    const char* typed;
    std::optional<Date> date;
};
class TypedDateTest : public ::testing::TestWithParam<TypedDate> {};

TEST_P(TypedDateTest, IsReadAsPeopleMeanIt) {
    const Result<Date> read = read_typed_date(QString::fromUtf8(GetParam().typed));
    ASSERT_EQ(read.has_value(), GetParam().date.has_value()) << GetParam().typed;
    if (read) {
        EXPECT_EQ(*read, *GetParam().date) << GetParam().typed;
    } else {
        EXPECT_EQ(read.error().code, ErrorCode::bad_date);
    }
}

INSTANTIATE_TEST_SUITE_P(
    , TypedDateTest,
    ::testing::Values(
        TypedDate{"1990-05-17", day(1990, 5, 17)}, TypedDate{"17/5/1990", day(1990, 5, 17)},
        TypedDate{"17.05.1990", day(1990, 5, 17)}, TypedDate{" 17 5 1990 ", day(1990, 5, 17)},
        TypedDate{"17. 5. 1990", day(1990, 5, 17)}, TypedDate{"17 May 1990", day(1990, 5, 17)},
        TypedDate{"17 may 1990", day(1990, 5, 17)}, TypedDate{"3 September 2012", day(2012, 9, 3)},
        TypedDate{"29/2/2012", day(2012, 2, 29)}, TypedDate{"29/2/2013", std::nullopt},
        TypedDate{"31/4/1990", std::nullopt}, TypedDate{"5/17/1990", std::nullopt},
        TypedDate{"17 de May de 1990", day(1990, 5, 17)},
        TypedDate{"17 DE may DEL 1990", day(1990, 5, 17)}, TypedDate{"17 de 1990", std::nullopt},
        TypedDate{"17/5/90", std::nullopt}, TypedDate{"1990-13-01", std::nullopt},
        TypedDate{"17/5/1899", std::nullopt}, TypedDate{"17 Mau 1990", std::nullopt},
        TypedDate{"yesterday", std::nullopt}, TypedDate{"", std::nullopt},
        TypedDate{"0/5/1990", std::nullopt}, TypedDate{"17/5/1990/2", std::nullopt}),
    [](const auto& param) { return "Case" + std::to_string(param.index); });

TEST(TypedDates, WhatIsSpelledCanBeReadAgain) {
    for (unsigned month = 1; month <= 12; ++month) {
        const Date date = day(2001, month, 9);
        const Result<Date> read = read_typed_date(spelled(date));
        ASSERT_TRUE(read.has_value()) << month;
        EXPECT_EQ(*read, date);
    }
}

}  // namespace
}  // namespace leadline::testing
