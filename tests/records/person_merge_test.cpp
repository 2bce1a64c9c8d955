// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/person_merge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/records/duplicates.h"
#include "core/records/guest_store.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::day;
using test::must;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const QString noon = QStringLiteral("2026-07-05T12:00:00Z");

class PeopleTest : public testing::Test {
protected:
    SessionRow add_session(int year, const std::vector<Guest>& guests) {
        return must(sessions_.insert(test::session_with(day(year, 7, 4), guests)));
    }
    qint64 person(const std::string& name) {
        return must(Statement(database_->connection(),
                              u"SELECT id FROM persons WHERE name = ? ORDER BY id"_qs)
                        .first([](Row& row) { return row.number(); }, name))
            .value();
    }
    /// Everything in a table, one text.
    std::string dump(const QString& table) {
        const auto columns = must(
            Statement(database_->connection(), u"SELECT 'quote(\"' || name || '\")' "
                                               "FROM pragma_table_info(?)"_qs)
                .all([](Row& row) { return row.qtext(); }, table));
        const auto rows = must(
            Statement(database_->connection(),
                      u"SELECT %1 FROM %2 ORDER BY 1"_qs.arg(
                          QStringList(columns.begin(), columns.end()).join(u" || ',' || "_qs),
                          table))
                .all([](Row& row) { return row.text(); }));
        std::string all;
        for (const std::string& row : rows) all += row + "\n";
        return all;
    }
    std::string dump_all() {
        std::string all;
        for (const QString& table : {u"persons"_qs, u"session_guests"_qs, u"person_search"_qs,
                                     u"name_words"_qs, u"person_merges"_qs,
                                     u"person_merge_guests"_qs}) {
            all += dump(table);
        }
        return all;
    }
    std::vector<std::string> find(const QString& text) {
        std::vector<std::string> names;
        for (const KnownGuest& known : must(guests_.find(text))) names.push_back(known.guest.name);
        return names;
    }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    SessionStore sessions_{*database_};
    GuestStore guests_{*database_};
    PersonMerges merges_{*database_};
    Duplicates duplicates_{*database_};
};

class MergeTest : public PeopleTest {
protected:
    void SetUp() override {
        Guest vera = test::guest_born("guest-1", "Vera Onnig", day(1990, 2, 3));
        vera.phone = "+43 664 1234567";
        vera.body_mass = Kilograms(61.3);
        first_ = add_session(2024, {vera, test::guest_named("guest-2", "Ilja Torsk")});
        Guest wera = test::guest_born("guest-1", "Wera Onnig", day(1990, 2, 3));
        wera.email = "wera@post.example";
        wera.body_height = Meters(1.0 / 3.0 + 1.4);
        second_ = add_session(2025, {wera});
        third_ = add_session(2026, {wera});
    }

    SessionRow first_;
    SessionRow second_;
    SessionRow third_;
};

TEST_F(MergeTest, ShowsOnlyTheKeptOneWithAllTheirSessions) {
    const qint64 kept = person("Vera Onnig");
    must(merges_.merge(kept, person("Wera Onnig"), noon));
    EXPECT_EQ(must(guests_.count()), 2);
    EXPECT_THAT(find({}), ElementsAre("Ilja Torsk", "Vera Onnig"));
    EXPECT_THAT(find(u"onnig"_qs), ElementsAre("Vera Onnig"));
    const KnownGuest vera = must(guests_.read({kept})).at(0);
    EXPECT_EQ(vera.sessions, 3);
    EXPECT_EQ(vera.last_session, day(2026, 7, 4));
    EXPECT_EQ(vera.guest.email, "wera@post.example") << "a gap is filled";
    EXPECT_EQ(vera.guest.phone, "+43 664 1234567");
    EXPECT_THAT(find(u"wera@post"_qs), ElementsAre("Vera Onnig"));
}

TEST_F(MergeTest, UndoGivesBackTheSameRowsByteForByte) {
    const std::string before = dump_all();
    const qint64 merge = must(merges_.merge(person("Vera Onnig"), person("Wera Onnig"), noon));
    EXPECT_NE(dump_all(), before);
    must(merges_.undo(merge));
    EXPECT_EQ(dump_all(), before);
}

TEST_F(MergeTest, UndoLeavesWhatWasTypedSince) {
    const qint64 vera = person("Vera Onnig");
    const qint64 merge = must(merges_.merge(vera, person("Wera Onnig"), noon));
    SessionFile file = must(sessions_.load(third_));
    file.session.guests[0].email = "new@post.example";
    must(sessions_.save(third_, file));
    must(merges_.undo(merge));
    EXPECT_EQ(must(guests_.read({vera})).at(0).guest.email, "new@post.example");
    EXPECT_EQ(must(guests_.read({vera})).at(0).sessions, 1);
    EXPECT_EQ(must(guests_.read({person("Wera Onnig")})).at(0).sessions, 2);
}

TEST_F(MergeTest, ASaveKeepsToWhomAPersonWasMerged) {
    const qint64 vera = person("Vera Onnig");
    must(merges_.merge(vera, person("Wera Onnig"), noon));
    for (const SessionRow row : {first_, second_, third_}) {
        must(sessions_.save(row, must(sessions_.load(row))));
    }
    add_session(2027, {test::guest_born("guest-9", "Wera Onnig", day(1990, 2, 3))});
    EXPECT_EQ(must(guests_.read({vera})).at(0).sessions, 4);
    EXPECT_EQ(must(guests_.count()), 2);
}

TEST_F(MergeTest, ASaveKeepsPersonsWithoutBirthDateMerged) {
    const SessionRow row = add_session(2026, {test::guest_named("guest-1", "Ilja Torsk")});
    const auto found = must(guests_.find(u"ilja"_qs));
    ASSERT_THAT(found, SizeIs(2));
    must(merges_.merge(found[0].row, found[1].row, noon));
    must(sessions_.save(row, must(sessions_.load(row))));
    must(sessions_.save(first_, must(sessions_.load(first_))));
    ASSERT_THAT(find(u"ilja"_qs), ElementsAre("Ilja Torsk"));
    EXPECT_EQ(must(guests_.find(u"ilja"_qs)).at(0).sessions, 2);
    must(sessions_.remove(row));
    must(sessions_.save(first_, test::session_with(day(2024, 7, 4), {})));
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM pragma_foreign_key_check"_qs), 0);
}

TEST_F(MergeTest, GoesOnFromMergeToMergeAndBackInTurn) {
    const qint64 vera = person("Vera Onnig");
    const qint64 wera = person("Wera Onnig");
    const qint64 ilja = person("Ilja Torsk");
    const std::string before = dump_all();
    const qint64 inner = must(merges_.merge(wera, ilja, noon));
    const qint64 outer = must(merges_.merge(vera, wera, noon));
    EXPECT_EQ(must(guests_.count()), 1);
    must(sessions_.save(second_, must(sessions_.load(second_))));
    EXPECT_EQ(must(guests_.read({vera})).at(0).sessions, 3);
    EXPECT_EQ(merges_.undo(inner).error().code, ErrorCode::not_found) << "the outer one first";
    must(merges_.undo(outer));
    must(merges_.undo(inner));
    EXPECT_EQ(dump_all(), before);
    EXPECT_EQ(merges_.undo(inner).error().code, ErrorCode::not_found);
}

TEST_F(MergeTest, RefusesWhoIsNotShown) {
    const qint64 vera = person("Vera Onnig");
    const qint64 wera = person("Wera Onnig");
    EXPECT_EQ(merges_.merge(vera, vera, noon).error().code, ErrorCode::not_found);
    EXPECT_EQ(merges_.merge(vera, 999, noon).error().code, ErrorCode::not_found);
    must(merges_.merge(vera, wera, noon));
    const std::string before = dump_all();
    EXPECT_EQ(merges_.merge(wera, person("Ilja Torsk"), noon).error().code,
              ErrorCode::not_found);
    EXPECT_EQ(dump_all(), before);
    ASSERT_THAT(must(merges_.into(vera)), SizeIs(1));
    EXPECT_EQ(must(merges_.into(vera))[0].merged_name, u"Wera Onnig"_qs);
}

TEST_F(MergeTest, ARemovedSessionTakesNothingElseAlong) {
    const qint64 merge = must(merges_.merge(person("Vera Onnig"), person("Wera Onnig"), noon));
    must(sessions_.remove(second_));
    must(merges_.undo(merge));
    EXPECT_EQ(must(guests_.read({person("Wera Onnig")})).at(0).sessions, 1);
}

TEST(Likeness, ForgivesOneSlipAndTurnedNames) {
    EXPECT_EQ(likeness(u"vera onnig"_qs, u"vera onnig"_qs), NameLikeness::same);
    EXPECT_EQ(likeness(u"vera onnig"_qs, u"onnig vera"_qs), NameLikeness::reordered);
    EXPECT_EQ(likeness(u"anna maria berg"_qs, u"berg anna maria"_qs), NameLikeness::reordered);
    for (const QString& other : {u"wera onnig"_qs, u"vera onig"_qs, u"vera onnigg"_qs,
                                 u"vera onngi"_qs, u"evra onnig"_qs, u"onnig wera"_qs,
                                 u"veraonnig"_qs}) {
        EXPECT_EQ(likeness(u"vera onnig"_qs, other), NameLikeness::one_slip)
            << other.toStdString();
        EXPECT_EQ(likeness(other, u"vera onnig"_qs), NameLikeness::one_slip)
            << other.toStdString();
    }
    for (const QString& other : {u"wera onigg"_qs, u"vera"_qs, u""_qs, u"vera onn"_qs,
                                 u"vara annig"_qs, u"ilja torsk"_qs}) {
        EXPECT_EQ(likeness(u"vera onnig"_qs, other), NameLikeness::different)
            << other.toStdString();
    }
    EXPECT_EQ(likeness(u"al"_qs, u"el"_qs), NameLikeness::different);
    EXPECT_EQ(likeness(u"李明"_qs, u"李明"_qs), NameLikeness::same);
}

class DuplicateTest : public PeopleTest {
protected:
    void add(const std::string& name, std::optional<Date> born, const std::string& phone = {},
             const std::string& email = {}) {
        Guest guest = test::guest_named("guest-1", name);
        guest.birth_date = born;
        guest.phone = phone;
        guest.email = email;
        add_session(2026, {guest});
    }
    std::vector<std::pair<std::string, std::string>> pairs() {
        std::vector<std::pair<std::string, std::string>> names;
        for (const DuplicatePair& pair : must(duplicates_.find())) {
            const auto both = must(guests_.read({pair.first, pair.second}));
            names.emplace_back(both.at(0).guest.name, both.at(1).guest.name);
        }
        return names;
    }
};

using Pair = std::pair<std::string, std::string>;

TEST_F(DuplicateTest, TellsHowFarTheSearchIsAndStopsWhenToldTo) {
    std::vector<Guest> guests;
    for (int i = 0; i < 700; ++i) {
        const Date born(std::chrono::sys_days(day(1990, 1, 1)) + std::chrono::days(i));
        const std::string number = std::to_string(i);
        guests.push_back(test::guest_born("guest-" + number, "Guest " + number, born));
        guests.back().email = "guest" + number + "@post.example";
    }
    add_session(2026, guests);
    std::vector<double> shares;
    const auto note = [&shares](double share) {
        shares.push_back(share);
        return true;
    };
    must(duplicates_.find(note));
    ASSERT_GE(shares.size(), 5U);
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_GT(shares.front(), 0.0);
    EXPECT_LE(shares.back(), 1.0);

    int asked = 0;
    const auto stopped = duplicates_.find([&asked](double) { return ++asked < 3; });
    ASSERT_FALSE(stopped.has_value());
    EXPECT_EQ(stopped.error().code, ErrorCode::cancelled);
    EXPECT_EQ(asked, 3);
}

TEST_F(DuplicateTest, NeedALikeNameAndOneMoreSign) {
    add("Vera Onnig", day(1990, 2, 3));
    add("Onnig Véra", day(1990, 2, 3));
    add("Vera Onnig", day(1991, 2, 3));
    add("Berta Sol", day(1990, 2, 3));
    EXPECT_THAT(pairs(), ElementsAre(Pair("Vera Onnig", "Onnig Véra")));
}

TEST_F(DuplicateTest, APhoneOrAddressIsASign) {
    add("Vera Onnig", std::nullopt, "+43 664 123 45 67");
    add("Vera Onig", day(1990, 2, 3), "0664/1234567");
    add("Berta Sol", std::nullopt, "+43 664 123 45 67");
    add("Ilja Torsk", day(1980, 1, 1), "", "Torsk@post.example");
    add("Ilja Torsk", day(1990, 1, 1), "", "torsk@post.example");
    EXPECT_THAT(pairs(), ElementsAre(Pair("Vera Onnig", "Vera Onig"),
                                     Pair("Ilja Torsk", "Ilja Torsk")));
    EXPECT_TRUE(must(duplicates_.find())[1].birth_dates_differ);
    EXPECT_FALSE(must(duplicates_.find())[0].birth_dates_differ);
}

TEST_F(DuplicateTest, ANumberThatManyShareIsNoSign) {
    for (int i = 0; i < 21; ++i) {
        add("Vera Onnig", day(1990, 2, unsigned(i + 1)), "0664 1234567");
    }
    EXPECT_THAT(pairs(), IsEmpty());
}

TEST_F(DuplicateTest, KeptApartOrMergedAreNotOfferedAgain) {
    add("Vera Onnig", day(1990, 2, 3));
    add("Wera Onnig", day(1990, 2, 3));
    const qint64 vera = person("Vera Onnig");
    const qint64 wera = person("Wera Onnig");
    const qint64 merge = must(merges_.merge(vera, wera, noon));
    EXPECT_THAT(pairs(), IsEmpty());
    must(merges_.undo(merge));
    EXPECT_THAT(pairs(), SizeIs(1));
    must(duplicates_.keep_apart(wera, vera));
    must(duplicates_.keep_apart(vera, wera));
    EXPECT_THAT(pairs(), IsEmpty());
}

}  // namespace
}  // namespace leadline
