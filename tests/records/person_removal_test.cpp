// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/person_removal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFileInfo>

#include "core/records/backup.h"
#include "core/records/guest_store.h"
#include "core/records/person_merge.h"
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

/// Texts planted for one guest; none of them stands anywhere else.
const std::vector<QByteArray> planted{"Quendelin", "Zwirbelhoff", "66412340987", "664 1234-0987",
                                      "qz@vergissmein.example", "vergissmein",
                                      "Knieschoner mitgeben", "Ohr links zwickt", "Quendalin",
                                      "quendelin", "quendalin", "zwirbelhoff", "Quietschmaske"};

class RemovalTest : public testing::Test {
protected:
    void SetUp() override {
        database_ = test::open(folder_.records());
        fill();
    }

    Guest quendelin(const std::string& id, const std::string& name) {
        Guest guest = test::guest_born(id, name, day(1987, 3, 14));
        guest.phone = "664 1234-0987";
        guest.email = "qz@vergissmein.example";
        guest.note = "Knieschoner mitgeben";
        guest.body_mass = Kilograms(73.25);
        guest.body_height = Meters(1.71);
        guest.shoe_size_eu = 41.5;
        guest.language = "de";
        guest.dives_before = 3;
        guest.measured_rmv = LitersPerMinute(21.5);
        guest.kit.mask = "Quietschmaske";
        guest.kit.suit = "5 mm M";
        guest.kit.regulator = "R4";
        guest.kit.lead = Kilograms(6);
        guest.kit.cylinder = Cylinder{CylinderTypeId("steel-12"), Bars(200), Kelvins(293.15)};
        guest.screening.outcome = ScreeningOutcome::physician_required;
        guest.screening.checked_on = day(2026, 7, 1);
        guest.screening.checked_by = "Ilja";
        guest.screening.today = TodayOutcome::clear;
        guest.screening.physician_approval_seen = true;
        guest.guardian_consent = true;
        return guest;
    }

    void fill() {
        SessionFile file = test::session_with(
            day(2026, 7, 4), {quendelin("guest-1", "Quendelin Zwirbelhoff"),
                              test::guest_born("guest-2", "Vera Onnig", day(1990, 2, 3))});
        file.session.title = "Farewell of Quendelin Zwirbelhoff";
        file.session.guests[1].note = "friend of Quendelin Zwirbelhoff";
        file.session.overrules = {
            {"screening_physician guest guest-1", "Quendelin Zwirbelhoff only snorkels", "Ilja"},
            {"kit_missing guest guest-2", "brings an own mask", "Ilja"}};
        DiveLog log;
        log.time_in = TimeOfDay{600};
        log.time_out = TimeOfDay{630};
        log.heads_in = log.heads_out = 2;
        log.note = "calm; Quendelin Zwirbelhoff first out";
        LogEntry entry;
        entry.guest = GuestId("guest-1");
        entry.start_pressure = Bars(190);
        entry.end_pressure = Bars(80);
        entry.duration = Minutes(22);
        entry.note = "Ohr links zwickt";
        entry.ears_troubled = true;
        entry.samples = {{Minutes(0), Depth(Meters(0))}, {Minutes(5), Depth(Meters(6))}};
        log.divers = {entry};
        file.log = log;
        first_ = must(sessions().insert(file));
        second_ = must(sessions().insert(test::session_with(
            day(2025, 7, 4), {quendelin("guest-1", "Quendalin Zwirbelhoff")})));
        kept_ = must(guests().find(u"quendelin"_qs)).at(0).row;
        merged_ = must(guests().find(u"quendalin"_qs)).at(0).row;
        must(PersonMerges(*database_).merge(kept_, merged_, u"2026-07-05T12:00:00Z"_qs));
        // As often in use: many saves, so that old pages are about.
        for (int i = 0; i < 5; ++i) must(sessions().save(first_, must(sessions().load(first_))));
    }
    SessionStore sessions() { return SessionStore(*database_); }
    GuestStore guests() { return GuestStore(*database_); }
    PersonRemoval removal() { return PersonRemoval(*database_); }

    /// Planted texts that stand in the file or its write-ahead file.
    std::vector<QByteArray> left() {
        QByteArray bytes = test::bytes_of(folder_.records());
        const QString log = folder_.records() + u"-wal"_qs;
        if (QFileInfo::exists(log)) bytes += test::bytes_of(log);
        std::vector<QByteArray> found;
        for (const QByteArray& text : planted) {
            if (bytes.contains(text)) found.push_back(text);
        }
        return found;
    }

    test::Folder folder_;
    std::unique_ptr<Database> database_;
    SessionRow first_;
    SessionRow second_;
    qint64 kept_ = 0;
    qint64 merged_ = 0;
};

TEST_F(RemovalTest, PreviewCountsWhatGoesAndWhatStays) {
    const RemovalPreview preview = must(removal().preview(kept_));
    EXPECT_EQ(preview.name, "Quendelin Zwirbelhoff");
    EXPECT_EQ(preview.merged_names, QStringList{u"Quendalin Zwirbelhoff"_qs});
    EXPECT_EQ(preview.last_session, day(2026, 7, 4));
    EXPECT_EQ(preview.sessions, 2);
    EXPECT_EQ(preview.logged_dives, 1);
    EXPECT_EQ(preview.health_answers, 2);
    EXPECT_EQ(preview.contacts, 2);
    EXPECT_EQ(preview.notes, 3);
    EXPECT_EQ(preview.mentions, 4);
    EXPECT_THAT(preview.copies, IsEmpty());
    EXPECT_EQ(removal().preview(merged_).error().code, ErrorCode::not_found);
    EXPECT_EQ(removal().preview(999).error().code, ErrorCode::not_found);
}

TEST_F(RemovalTest, NothingOfTheGuestIsLeftInTheFile) {
    EXPECT_THAT(left(), testing::ElementsAreArray(planted)) << "what is not there cannot vanish";
    const RemovalOutcome outcome = must(removal().remove(kept_, KeptKind::identity));
    EXPECT_TRUE(outcome.swept);
    EXPECT_THAT(left(), IsEmpty());
    EXPECT_THAT(must(guests().find({})), SizeIs(1));
    database_.reset();
    EXPECT_THAT(left(), IsEmpty());
    database_ = test::open(folder_.records());
    EXPECT_THAT(must(guests().find(u"quendelin"_qs)), IsEmpty());
}

TEST_F(RemovalTest, SessionAndLogStayWithoutTheGuest) {
    const SessionFile before = must(sessions().load(first_));
    must(removal().remove(kept_, KeptKind::identity));
    const SessionFile after = must(sessions().load(first_));
    const Guest& guest = after.session.guests[0];
    EXPECT_EQ(guest.name, removed_name);
    EXPECT_FALSE(guest.birth_date || guest.body_mass || guest.body_height || guest.shoe_size_eu ||
                 guest.measured_rmv || guest.dives_before);
    EXPECT_EQ(guest.phone + guest.email + guest.note + guest.kit.mask + guest.kit.suit, "");
    EXPECT_EQ(guest.language, "en");
    EXPECT_EQ(guest.screening, HealthCheck{});
    EXPECT_FALSE(guest.guardian_consent);
    EXPECT_EQ(guest.kit.cylinder, before.session.guests[0].kit.cylinder);
    EXPECT_EQ(guest.kit.lead, before.session.guests[0].kit.lead);
    EXPECT_EQ(guest.kit.regulator, "R4");
    ASSERT_TRUE(after.log);
    LogEntry entry = before.log->divers[0];
    entry.note.clear();
    EXPECT_THAT(after.log->divers, ElementsAre(entry));
    EXPECT_EQ(after.log->note, "calm; Guest removed first out");
    EXPECT_EQ(after.session.title, "Farewell of Guest removed");
    Guest other = before.session.guests[1];
    other.note = "friend of Guest removed";
    EXPECT_EQ(after.session.guests[1], other);
    ASSERT_THAT(after.session.overrules, SizeIs(2));
    EXPECT_EQ(after.session.overrules[0].finding, "screening_physician guest guest-1");
    EXPECT_EQ(after.session.overrules[0].reason, "Guest removed only snorkels");
    EXPECT_EQ(after.session.overrules[1], before.session.overrules[1]);
    EXPECT_EQ(must(sessions().load(second_)).session.guests[0].name, removed_name);
}

TEST_F(RemovalTest, ASessionWithARemovedGuestCanBeSavedAndTheGuestNamedAnew) {
    must(removal().remove(kept_, KeptKind::identity));
    SessionFile file = must(sessions().load(first_));
    file.session.guests[0].body_mass = Kilograms(70);
    must(sessions().save(first_, file));
    EXPECT_EQ(must(sessions().load(first_)), file);
    EXPECT_EQ(must(guests().count()), 1);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM persons WHERE erased = 1 "
                                       "AND body_mass_kg IS NOT NULL"_qs), 0);
    file.session.guests[0].name = "Berta Sol";
    must(sessions().save(first_, file));
    EXPECT_THAT(must(guests().find(u"berta"_qs)), SizeIs(1));
    EXPECT_EQ(must(guests().count()), 2);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM persons WHERE erased = 1"_qs), 2);
}

TEST_F(RemovalTest, OnlyHealthOrOnlyContactsGoWhereThatIsAsked) {
    must(removal().remove(kept_, KeptKind::health));
    Guest guest = must(sessions().load(first_)).session.guests[0];
    EXPECT_EQ(guest.screening, HealthCheck{});
    EXPECT_EQ(guest.phone, "664 1234-0987");
    EXPECT_EQ(must(removal().preview(kept_)).health_answers, 0);
    must(removal().remove(kept_, KeptKind::contacts));
    guest = must(sessions().load(first_)).session.guests[0];
    EXPECT_EQ(guest.phone + guest.email, "");
    EXPECT_EQ(guest.name, "Quendelin Zwirbelhoff");
    for (const QByteArray& text : left()) {
        EXPECT_FALSE(text.contains("664") || text.contains("vergissmein")) << text.toStdString();
    }
    EXPECT_THAT(must(guests().find(u"quendelin"_qs)), SizeIs(1));
    EXPECT_THAT(must(guests().find(u"vergissmein"_qs)), IsEmpty());
}

TEST_F(RemovalTest, WhatALaterSchemaAddsGoesToo) {
    test::run(*database_, u"ALTER TABLE session_guests ADD COLUMN checked_by TEXT NOT NULL "
                          "DEFAULT ''"_qs);
    test::run(*database_, u"ALTER TABLE persons ADD COLUMN nickname TEXT"_qs);
    test::run(*database_, u"UPDATE session_guests SET checked_by = 'Sprotte'"_qs);
    test::run(*database_, u"UPDATE persons SET nickname = 'Quendi'"_qs);
    test::run(*database_, u"CREATE TABLE later_answers (session_id INTEGER, guest_id TEXT, "
                          "answer TEXT)"_qs);
    test::run(*database_, u"INSERT INTO health_records (person_id, kind, version, made_at, nonce, "
                          "sealed) SELECT id, 'signature', 1, '2026-07-04T08:00:00Z', x'00', x'00' "
                          "FROM persons"_qs);
    test::run(*database_, u"INSERT INTO later_answers SELECT session_id, guest_id, 'yes' "
                          "FROM session_guests"_qs);
    EXPECT_EQ(must(removal().preview(kept_)).health_answers, 2 + 2 + 2);
    must(removal().remove(kept_, KeptKind::identity));
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM session_guests "
                                       "WHERE checked_by = 'Sprotte'"_qs), 1);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM persons "
                                       "WHERE nickname = 'Quendi'"_qs), 1);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM health_records"_qs), 1);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM later_answers"_qs), 1);
}

TEST_F(RemovalTest, AFailureLeavesEverything) {
    test::run(*database_, u"CREATE TRIGGER no_more BEFORE UPDATE OF erased ON persons BEGIN "
                          "SELECT raise(ABORT, 'no'); END"_qs);
    const SessionFile before = must(sessions().load(first_));
    EXPECT_FALSE(removal().remove(kept_, KeptKind::identity).has_value());
    EXPECT_EQ(must(sessions().load(first_)), before);
    EXPECT_THAT(must(guests().find(u"quendelin"_qs)), SizeIs(1));
}

TEST_F(RemovalTest, SaysWhenAnotherReaderKeepsOldPages) {
    const auto other = test::open(folder_.records());
    test::run(*database_, u"PRAGMA busy_timeout = 20"_qs);
    must(execute(other->connection(), u"BEGIN"_qs));
    test::number(*other, u"SELECT count(*) FROM persons"_qs);
    EXPECT_FALSE(must(removal().remove(kept_, KeptKind::identity)).swept);
    must(execute(other->connection(), u"COMMIT"_qs));
}

TEST_F(RemovalTest, OlderCopiesAreNamedAndRemovedWhenAsked) {
    test::write_bytes(folder_.records() + u".before-schema-4"_qs, "Quendelin");
    ASSERT_THAT(must(removal().preview(kept_)).copies, SizeIs(1));
    EXPECT_EQ(must(removal().remove_copies()), 1);
    EXPECT_THAT(must(removal().preview(kept_)).copies, IsEmpty());
}

TEST_F(RemovalTest, FactsSayWhatIsKeptOfWhom) {
    const auto facts = must(kept_facts(*database_, day(2027, 1, 1)));
    ASSERT_THAT(facts, SizeIs(2));
    for (const KeptFacts& person : facts) {
        EXPECT_EQ(person.last_session, day(2026, 7, 4));
        EXPECT_EQ(person.has_health, person.person == kept_);
        EXPECT_EQ(person.has_contacts, person.person == kept_);
    }
    EXPECT_THAT(must(kept_facts(*database_, day(2026, 7, 4))), IsEmpty());
    must(sessions().remove(first_));
    must(sessions().remove(second_));
    const auto without = must(kept_facts(*database_, day(2020, 1, 1)));
    ASSERT_THAT(without, SizeIs(2));
    EXPECT_FALSE(without[0].last_session || without[1].last_session);
}

TEST_F(RemovalTest, CopiesOfTheRecordsAreCounted) {
    EXPECT_EQ(must(removal().preview(kept_)).backups, 0);
    must(make_copy(folder_.records(), CopyKind::by_hand, current_time()));
    EXPECT_EQ(must(removal().preview(kept_)).backups, 1);
}

TEST_F(RemovalTest, TheNameGoesFromGroupsAndHoweverItIsCased) {
    SessionFile file = test::session_with(
        day(2026, 7, 9), {test::guest_born("guest-1", "\u00c9mile Z\u00f6lk", day(1991, 4, 5)),
                          test::guest_born("guest-2", "Vera Onnig", day(1990, 2, 3))});
    Group group;
    group.id = GroupId("group-1");
    group.name = "With \u00e9mile z\u00f6lk";
    file.session.groups = {group};
    file.session.guests[1].note = "friend of \u00c9MILE Z\u00d6LK, and of Emil";
    const SessionRow row = must(sessions().insert(file));
    const qint64 emile = must(guests().find(u"zolk"_qs)).at(0).row;
    EXPECT_EQ(must(removal().preview(emile)).mentions, 2);
    must(removal().remove(emile, KeptKind::identity));
    const SessionFile after = must(sessions().load(row));
    EXPECT_EQ(after.session.groups.at(0).name, "With Guest removed");
    EXPECT_EQ(after.session.guests.at(1).note, "friend of Guest removed, and of Emil");
}

TEST_F(RemovalTest, FactsCountWhatMergedPersonsAndSessionsHold) {
    const auto facts_of_kept = [&] {
        for (const KeptFacts& facts : must(kept_facts(*database_, day(2027, 1, 1)))) {
            if (facts.person == kept_) return facts;
        }
        return KeptFacts{};
    };
    test::run(*database_, u"UPDATE persons SET phone = '', email = ''"_qs);
    EXPECT_TRUE(facts_of_kept().has_contacts) << "the sessions still hold them";
    test::run(*database_, u"UPDATE session_guests SET phone = '', email = ''"_qs);
    EXPECT_FALSE(facts_of_kept().has_contacts);
    test::run(*database_, u"UPDATE persons SET phone = '1' WHERE id = %1"_qs.arg(merged_));
    EXPECT_TRUE(facts_of_kept().has_contacts);
    test::run(*database_, u"UPDATE session_guests SET screening_outcome = 'unanswered', "
                          "screening_today = 'unanswered', physician_approval_seen = 0"_qs);
    EXPECT_FALSE(facts_of_kept().has_health);
    test::run(*database_, u"INSERT INTO health_records (person_id, kind, version, made_at, nonce, "
                          "sealed) VALUES (%1, 'signature', 1, '2026-07-04T08:00:00Z', x'00', "
                          "x'00')"_qs.arg(merged_));
    EXPECT_TRUE(facts_of_kept().has_health);
}

}  // namespace
}  // namespace leadline
