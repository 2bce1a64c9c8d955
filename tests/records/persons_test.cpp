// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/persons.h"

#include <gtest/gtest.h>

#include "core/records/guest_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::birth;
using test::day;
using test::first_day;
using test::guest_born;
using test::guest_named;
using test::must;
using test::session_with;

const Date second_day = day(2026, 7, 5);

class Persons : public testing::Test {
protected:
    SessionRow insert(const Date& date, const std::vector<Guest>& guests) {
        return must(sessions_.insert(session_with(date, guests)));
    }
    void save(SessionRow row, const Date& date, const std::vector<Guest>& guests) {
        must(sessions_.save(row, session_with(date, guests)));
    }
    std::vector<KnownGuest> find(const QString& text) { return must(guests_.find(text)); }
    KnownGuest only() {
        const std::vector<KnownGuest> all = find(QString());
        EXPECT_EQ(all.size(), 1U);
        return all.empty() ? KnownGuest{} : all.front();
    }
    static Guest anna() { return guest_born("guest-1", "Anna Berg", birth); }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    SessionStore sessions_{*database_};
    GuestStore guests_{*database_};
};

TEST_F(Persons, OfOneNameAndBirthDateAreOne) {
    insert(first_day, {anna()});
    Guest again = anna();
    again.id = GuestId("guest-8");
    insert(second_day, {again});
    EXPECT_EQ(only().sessions, 2);
}

TEST_F(Persons, OfOneNameAndTwoBirthDatesAreTwo) {
    insert(first_day, {anna(), guest_born("guest-2", "Anna Berg", day(1990, 5, 18))});
    EXPECT_EQ(must(guests_.count()), 2);
}

TEST_F(Persons, WithoutBirthDateAreNeverTakenForOneAnother) {
    insert(first_day, {guest_named("guest-1", "Anna"), guest_named("guest-2", "Anna")});
    insert(second_day, {guest_named("guest-1", "Anna")});
    EXPECT_EQ(must(guests_.count()), 3);
}

TEST_F(Persons, SavingAgainAddsNobody) {
    const std::vector<Guest> both{guest_named("guest-2", "Anna"), anna()};
    const SessionRow row = insert(first_day, both);
    const qint64 undated = find(u"anna"_qs).front().row;
    for (int i = 0; i < 3; ++i) save(row, first_day, both);
    EXPECT_EQ(must(guests_.count()), 2);
    EXPECT_EQ(find(u"anna"_qs).front().row, undated);
}

TEST_F(Persons, StayWhenTheirSessionIsRemoved) {
    const SessionRow row = insert(first_day, {anna()});
    must(sessions_.remove(row));
    EXPECT_EQ(only().sessions, 0);
    EXPECT_EQ(only().guest.birth_date, birth);
}

TEST_F(Persons, StayWhenTheyLeaveTheRoster) {
    const SessionRow row = insert(first_day, {anna()});
    save(row, first_day, {});
    EXPECT_EQ(only().sessions, 0);
}

TEST_F(Persons, CarryWhatLastsAndNothingElse) {
    Guest guest = test::full_session().session.guests.at(1);
    guest.group = GroupId();
    insert(day(2026, 7, 4), {guest});
    const KnownGuest known = only();
    Guest expected;
    expected.name = guest.name;
    expected.birth_date = guest.birth_date;
    expected.language = guest.language;
    expected.body_mass = guest.body_mass;
    expected.body_height = guest.body_height;
    expected.shoe_size_eu = guest.shoe_size_eu;
    expected.measured_rmv = guest.measured_rmv;
    expected.dives_before = 7;
    expected.phone = guest.phone;
    expected.email = guest.email;
    EXPECT_EQ(known.guest, expected);
    EXPECT_GT(known.row, 0);
}

TEST_F(Persons, FollowTheLatestSession) {
    Guest heavy = anna();
    heavy.body_mass = Kilograms(64.0);
    heavy.measured_rmv = LitersPerMinute(18.0);
    Guest light = anna();
    light.body_mass = Kilograms(58.0);
    light.measured_rmv = LitersPerMinute(25.0);
    const SessionRow later = insert(second_day, {heavy});
    const SessionRow earlier = insert(first_day, {light});
    EXPECT_EQ(only().guest.body_mass->value(), 64.0);
    save(earlier, first_day, {light});
    EXPECT_EQ(only().guest.measured_rmv->value(), 18.0);
    heavy.body_mass = Kilograms(66.0);
    save(later, second_day, {heavy});
    EXPECT_EQ(only().guest.body_mass->value(), 66.0);
    // The session keeps what was known on its day.
    EXPECT_EQ(must(sessions_.load(earlier)), session_with(first_day, {light}));
}

TEST_F(Persons, KeepWhatALaterSessionLeavesOpen) {
    Guest known = anna();
    known.shoe_size_eu = 39.0;
    known.measured_rmv = LitersPerMinute(18.0);
    known.dives_before = 3;
    insert(first_day, {known});
    Guest sparse = anna();
    sparse.language = "nl";
    insert(second_day, {sparse});
    EXPECT_EQ(only().guest.shoe_size_eu, 39.0);
    EXPECT_EQ(only().guest.measured_rmv->value(), 18.0);
    EXPECT_EQ(only().guest.dives_before, 3);
    EXPECT_EQ(only().guest.language, "nl");
}

TEST_F(Persons, LoseWhatTheirSessionTakesBack) {
    Guest wrong = anna();
    wrong.measured_rmv = LitersPerMinute(8.0);
    wrong.dives_before = 800;
    const SessionRow row = insert(first_day, {wrong});
    save(row, first_day, {anna()});
    EXPECT_EQ(only().guest.measured_rmv, std::nullopt);
    EXPECT_EQ(only().guest.dives_before, std::nullopt);
}

TEST_F(Persons, ACorrectedNameIsTakenOver) {
    const SessionRow row = insert(first_day, {guest_born("guest-1", "Ana Brg", birth)});
    const qint64 before = only().row;
    save(row, first_day, {anna()});
    EXPECT_EQ(only().guest.name, "Anna Berg");
    EXPECT_EQ(only().row, before);
    EXPECT_EQ(find(u"berg"_qs).size(), 1U);
    EXPECT_TRUE(find(u"brg"_qs).empty());
}

TEST_F(Persons, AChangedNameLeavesOtherSessionsTheirPerson) {
    const SessionRow row = insert(first_day, {anna()});
    insert(second_day, {anna()});
    save(row, first_day, {guest_born("guest-1", "Ben", birth)});
    ASSERT_EQ(must(guests_.count()), 2);
    EXPECT_EQ(find(u"anna"_qs).front().sessions, 1);
    EXPECT_EQ(find(u"ben"_qs).front().sessions, 1);
}

TEST_F(Persons, ABirthDateTypedLaterFindsThePersonOnRecord) {
    Guest known = anna();
    known.measured_rmv = LitersPerMinute(18.0);
    insert(first_day, {known});
    const SessionRow row = insert(second_day, {guest_named("guest-1", "Anna Berg")});
    EXPECT_EQ(must(guests_.count()), 2);
    save(row, second_day, {anna()});
    EXPECT_EQ(only().sessions, 2);
    EXPECT_EQ(only().guest.measured_rmv->value(), 18.0);
}

TEST_F(Persons, TwoGuestsMayBeCorrectedToOnePerson) {
    const SessionRow row = insert(
        first_day, {guest_born("guest-1", "A", birth), guest_born("guest-2", "B", birth)});
    Guest second = anna();
    second.id = GuestId("guest-2");
    const std::vector<Guest> both{anna(), second};
    save(row, first_day, both);
    EXPECT_EQ(must(sessions_.load(row)).session.guests, both);
    EXPECT_EQ(find(u"anna"_qs).front().sessions, 1);
}

TEST_F(Persons, NamesMayMoveAroundTheRoster) {
    const Date other = day(1985, 1, 2);
    const SessionRow row = insert(
        first_day, {guest_born("guest-1", "Anna", birth), guest_born("guest-2", "Ben", other)});
    const std::vector<Guest> moved{guest_born("guest-1", "Ben", other),
                                   guest_born("guest-2", "Cara", other)};
    save(row, first_day, moved);
    EXPECT_EQ(must(sessions_.load(row)).session.guests, moved);
    EXPECT_EQ(find(u"ben"_qs).front().guest.birth_date, other);
    EXPECT_EQ(find(u"anna"_qs).front().guest.birth_date, birth);
    EXPECT_EQ(find(u"cara"_qs).front().sessions, 1);
    EXPECT_EQ(must(guests_.count()), 3);
}

}  // namespace
}  // namespace leadline
