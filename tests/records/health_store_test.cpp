// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/health_store.h"

#include <gmock/gmock.h>

#include "core/records/guest_store.h"
#include "core/records/person_merge.h"
#include "tests/records/vault_fixture.h"

namespace leadline {
namespace {

using test::code_of;
using test::birth;
using test::day;
using test::first_day;
using test::guest_born;
using test::guest_named;
using test::must;
using test::session_with;
using testing::ElementsAre;

const GuestId guest_one("guest-1");

class Health : public test::VaultTest {
protected:
    void SetUp() override { set_up(); }

    SessionRow insert(const std::vector<Guest>& guests, Date date = first_day) {
        return must(SessionStore(*database_, health()).insert(session_with(date, guests)));
    }
    void save(SessionRow row, const std::vector<Guest>& guests) {
        must(SessionStore(*database_, health()).save(row, session_with(first_day, guests)));
    }
    HealthStore* health() {
        if (!health_) health_ = std::make_unique<HealthStore>(*database_, *vault_);
        return health_.get();
    }
    qint64 person(SessionRow row, const GuestId& guest = guest_one) {
        return must(health()->person_of(row, guest));
    }
    std::vector<std::string> contents(qint64 of, HealthKind kind = HealthKind::screening) {
        std::vector<std::string> found;
        for (const HealthEntry& entry : must(health()->open(of, kind))) {
            found.push_back(entry.content);
        }
        return found;
    }
    qint64 put(qint64 of, const std::string& content, HealthKind kind = HealthKind::screening) {
        return must(health()->put(of, std::nullopt, kind, content));
    }
    std::unique_ptr<HealthStore> health_;
};

TEST_F(Health, ARecordComesBackWithNameAndTimeAndKeepsItsHistory) {
    const SessionRow row = insert({guest_born("guest-1", "Anna Berg", birth)});
    const qint64 anna = person(row);
    must(health()->put(anna, row, HealthKind::screening, "first\n\"quoted\" ünicode"));
    now_ += 60;
    must(health()->put(anna, row, HealthKind::screening, "second"));
    must(health()->put(anna, row, HealthKind::signature, std::string("M0 0\0L1 1", 9)));
    const auto entries = must(health()->open(anna, HealthKind::screening));
    ASSERT_EQ(entries.size(), 2U);
    EXPECT_EQ(entries[0].content, "second");
    EXPECT_EQ(entries[0].made_at, "2026-07-04T08:16:00Z");
    EXPECT_EQ(entries[1].content, "first\n\"quoted\" ünicode");
    EXPECT_EQ(entries[1].given_by, "Anna Berg");
    EXPECT_EQ(entries[1].kind, HealthKind::screening);
    EXPECT_EQ(contents(anna, HealthKind::signature).front(), std::string("M0 0\0L1 1", 9));
    EXPECT_EQ(must(health()->count(anna, HealthKind::screening)), 2);
    EXPECT_EQ(must(health()->count(anna, HealthKind::physician_note)), 0);
    EXPECT_TRUE(contents(anna, HealthKind::physician_note).empty());
}

TEST_F(Health, LockedNothingIsReadWrittenOrErasedButCounted) {
    const qint64 anna = person(insert({guest_named("guest-1", "Anna")}));
    put(anna, "content");
    vault_->lock();
    EXPECT_EQ(code_of(health()->open(anna, HealthKind::screening)), ErrorCode::vault_locked);
    EXPECT_EQ(code_of(health()->put(anna, std::nullopt, HealthKind::screening, "x")),
              ErrorCode::vault_locked);
    EXPECT_EQ(code_of(health()->erase(anna)), ErrorCode::vault_locked);
    EXPECT_EQ(code_of(health()->note_export(anna, HealthKind::screening)), ErrorCode::vault_locked);
    EXPECT_EQ(code_of(health()->move(anna, anna)), ErrorCode::vault_locked);
    EXPECT_EQ(must(health()->count(anna, HealthKind::screening)), 1);
    unlock();
    EXPECT_THAT(contents(anna), ElementsAre("content"));
}

TEST_F(Health, RefusesWhatItCannotKeep) {
    const qint64 anna = person(insert({guest_named("guest-1", "Anna")}));
    EXPECT_EQ(code_of(health()->put(anna, std::nullopt, HealthKind::screening, "\xff")),
              ErrorCode::bad_text);
    EXPECT_EQ(code_of(health()->put(anna, std::nullopt, HealthKind::screening,
                                    std::string(1024 * 1024 + 1, 'x'))),
              ErrorCode::out_of_range);
    EXPECT_EQ(code_of(health()->put(99, std::nullopt, HealthKind::screening, "x")),
              ErrorCode::not_found);
    EXPECT_EQ(code_of(health()->person_of(SessionRow{1}, GuestId("nobody"))), ErrorCode::not_found);
    EXPECT_EQ(must(health()->count(anna, HealthKind::screening)), 0);
}

TEST_F(Health, ARecordMovedInTheFileIsNotTakenForSomebodyElses) {
    const SessionRow row = insert({guest_named("guest-1", "Anna"), guest_named("guest-2", "Bo")});
    const qint64 anna = person(row);
    const qint64 bo = person(row, GuestId("guest-2"));
    put(anna, "asthma");
    put(bo, "none");
    for (const QString& change :
         {u"person_id = %1"_qs.arg(bo), u"kind = 'signature'"_qs, u"version = 2"_qs,
          u"made_at = '2026-07-05T08:15:00Z'"_qs, u"id = 77"_qs,
          u"sealed = (SELECT sealed FROM health_records WHERE id = 2), "
          "nonce = (SELECT nonce FROM health_records WHERE id = 2)"_qs}) {
        run_sql(u"UPDATE health_records SET %1 WHERE id = 1"_qs.arg(change));
        const bool for_bo = change.startsWith(u"person"_qs);
        const bool signature = change.startsWith(u"kind"_qs);
        const auto opened = health()->open(
            for_bo ? bo : anna, signature ? HealthKind::signature : HealthKind::screening);
        EXPECT_EQ(code_of(opened), ErrorCode::sealed_unreadable) << change.toStdString();
        EXPECT_EQ(opened.error().given, change.startsWith(u"id"_qs) ? "77" : "1");
        // Nothing was lost by looking: put back, it opens again.
        if (change.startsWith(u"sealed"_qs)) break;
        run_sql(
            u"UPDATE health_records SET id = 1, person_id = %1, kind = 'screening', version = 1, "
            "made_at = '2026-07-04T08:15:00Z' WHERE id IN (1, 77)"_qs.arg(anna));
        EXPECT_THAT(contents(anna), ElementsAre("asthma"));
    }
}

TEST_F(Health, ErasedRecordsAreGoneFromTheFileAndTheTrailSaysSo) {
    const SessionRow row = insert({guest_named("guest-1", "Anna"), guest_named("guest-2", "Bo")});
    const qint64 anna = person(row);
    put(anna, "one");
    put(anna, "two", HealthKind::emergency_contact);
    put(person(row, GuestId("guest-2")), "three");
    EXPECT_EQ(must(health()->erase(anna)), 2);
    EXPECT_EQ(must(health()->count(anna, HealthKind::screening)), 0);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM health_records"_qs), 1);
    const auto newest = must(vault_->trail().entries(2));
    EXPECT_EQ(newest[0].event, "record_erased");
    EXPECT_EQ(newest[0].detail, "emergency_contact");
    EXPECT_EQ(newest[1].record, 1);
    // A number is never used again.
    EXPECT_EQ(put(anna, "four"), 4);
}

TEST_F(Health, ARecordTakenOutOfTheFileIsMissed) {
    const qint64 anna = person(insert({guest_named("guest-1", "Anna")}));
    put(anna, "one");
    put(anna, "two", HealthKind::signature);
    put(anna, "three");
    EXPECT_THAT(must(health()->taken_out()), ElementsAre());
    run_sql(u"DELETE FROM health_records WHERE id = 2"_qs);
    EXPECT_THAT(must(health()->taken_out()), ElementsAre(2));
    must(health()->erase(anna));
    EXPECT_THAT(must(health()->taken_out()), ElementsAre(2)) << "erased ones are not missed";
}

TEST_F(Health, ASessionThatGoesLeavesTheRecord) {
    const SessionRow row = insert({guest_born("guest-1", "Anna", birth)});
    const qint64 anna = person(row);
    must(health()->put(anna, row, HealthKind::screening, "kept"));
    must(SessionStore(*database_, health()).remove(row));
    EXPECT_THAT(contents(anna), ElementsAre("kept"));
}

TEST_F(Health, OpenTheVaultMovesRecordsToThePersonTheGuestTurnsOutToBe) {
    insert({guest_born("guest-9", "Anna Berg", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Anna Berg")});
    const qint64 undated = person(row);
    put(undated, "asthma");
    save(row, {guest_born("guest-1", "Anna Berg", birth)});
    const qint64 anna = person(row);
    EXPECT_NE(anna, undated);
    EXPECT_THAT(contents(anna), ElementsAre("asthma"));
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM persons"_qs), 1);
    EXPECT_FALSE(verify().fault.has_value());
}

TEST_F(Health, WithALockedVaultTheOldPersonIsKeptAndFound) {
    insert({guest_born("guest-9", "Anna Berg", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Anna Berg")});
    const qint64 undated = person(row);
    put(undated, "asthma");
    vault_->lock();
    save(row, {guest_born("guest-1", "Anna Berg", birth)});
    const qint64 anna = person(row);
    EXPECT_NE(anna, undated);
    EXPECT_EQ(must(health()->count(anna, HealthKind::screening)), 1);
    EXPECT_EQ(must(GuestStore(*database_).count()), 1) << "who was merged is not a guest twice";
    EXPECT_EQ(must(GuestStore(*database_).find(u"anna"_qs)).size(), 1U);
    unlock();
    EXPECT_THAT(contents(anna), ElementsAre("asthma"));
    EXPECT_EQ(must(health()->erase(anna)), 1);
}

TEST_F(Health, APointerFollowsWhenItsPersonMovesOnToo) {
    // Undated -> undated successor -> dated person, all while locked and then open.
    insert({guest_born("guest-9", "Anna Berg", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Anna Berg")});
    const qint64 first = person(row);
    put(first, "one");
    run_sql(
        u"INSERT INTO persons (id, name, folded_name, language, merged_into) "
        "VALUES (500, 'Ana', 'ana', '', %1)"_qs.arg(first));
    put(500, "older");
    vault_->lock();
    save(row, {guest_born("guest-1", "Anna Berg", birth)});
    const qint64 anna = person(row);
    EXPECT_EQ(must(health()->count(anna, HealthKind::screening)), 2);
    unlock();
    EXPECT_THAT(contents(anna), ElementsAre("older", "one"));
}

TEST_F(Health, APersonWithoutRecordsIsTakenOutAsBefore) {
    insert({guest_born("guest-9", "Anna Berg", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Anna Berg")});
    vault_->lock();
    save(row, {guest_born("guest-1", "Anna Berg", birth)});
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM persons"_qs), 1);
}

TEST_F(Health, ADamagedRecordDoesNotHoldUpASaveNorIsLost) {
    insert({guest_born("guest-9", "Anna Berg", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Anna Berg")});
    put(person(row), "asthma");
    run_sql(u"UPDATE health_records SET sealed = zeroblob(64)"_qs);
    save(row, {guest_born("guest-1", "Anna Berg", birth)});
    EXPECT_EQ(must(health()->count(person(row), HealthKind::screening)), 1);
    EXPECT_EQ(code_of(health()->open(person(row), HealthKind::screening)),
              ErrorCode::sealed_unreadable);
}

TEST_F(Health, ACircleOfMergedPersonsEnds) {
    const SessionRow row = insert({guest_named("guest-1", "Anna"), guest_named("guest-2", "Bo")});
    const qint64 anna = person(row);
    const qint64 bo = person(row, GuestId("guest-2"));
    put(anna, "one");
    run_sql(
        u"UPDATE persons SET merged_into = CASE id WHEN %1 THEN %2 ELSE %1 END"_qs.arg(anna).arg(
            bo));
    EXPECT_THAT(contents(bo), ElementsAre("one"));
}

TEST_F(Health, AWrongPickTakenBackTakesTheSealedRecordsAlong) {
    insert({guest_born("guest-9", "Stella Moor", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Lena Ost")});
    must(health()->put(person(row), row, HealthKind::physician_note, "ears"));
    save(row, {guest_born("guest-1", "Stella Moor", birth)});
    const qint64 stella = person(row);
    put(stella, "her own", HealthKind::physician_note);
    EXPECT_THAT(contents(stella, HealthKind::physician_note), ElementsAre("her own", "ears"));
    save(row, {guest_named("guest-1", "Lena Ost")});
    EXPECT_THAT(contents(person(row), HealthKind::physician_note), ElementsAre("ears"));
    EXPECT_THAT(contents(stella, HealthKind::physician_note), ElementsAre("her own"));
    EXPECT_FALSE(verify().fault.has_value());
}

TEST_F(Health, AWrongPickIsTakenBackWithTheVaultLockedToo) {
    insert({guest_born("guest-9", "Stella Moor", birth)}, day(2026, 7, 1));
    const SessionRow row = insert({guest_named("guest-1", "Lena Ost")});
    const qint64 lena = person(row);
    must(health()->put(lena, row, HealthKind::physician_note, "ears"));
    vault_->lock();
    save(row, {guest_born("guest-1", "Stella Moor", birth)});
    const qint64 stella = person(row);
    EXPECT_EQ(must(health()->count(stella, HealthKind::physician_note)), 1);
    save(row, {guest_named("guest-1", "Lena Ost")});
    EXPECT_EQ(person(row), lena);
    EXPECT_EQ(must(health()->count(stella, HealthKind::physician_note)), 0);
    unlock();
    EXPECT_THAT(contents(lena, HealthKind::physician_note), ElementsAre("ears"));
}

TEST_F(Health, RecordsStayWithAPersonWhoIsStillInTheSession) {
    const SessionRow row = insert({guest_born("guest-1", "Stella Moor", birth),
                                   guest_born("guest-2", "Vera Onnig", birth)});
    const qint64 stella = person(row);
    must(health()->put(stella, row, HealthKind::physician_note, "ears"));
    save(row, {guest_born("guest-1", "Vera Onnig", birth),
               guest_born("guest-2", "Stella Moor", birth)});
    EXPECT_EQ(person(row, GuestId("guest-2")), stella);
    EXPECT_THAT(contents(stella, HealthKind::physician_note), ElementsAre("ears"));
    EXPECT_EQ(must(health()->count(person(row), HealthKind::physician_note)), 0);
}

TEST_F(Health, AnUndatedGuestTakenOutAndPutBackIsTheSamePerson) {
    const std::vector<Guest> both{guest_named("guest-1", "Lena"), guest_named("guest-2", "Lena")};
    const SessionRow row = insert(both);
    const qint64 lena = person(row);
    must(health()->put(lena, row, HealthKind::physician_note, "ears"));
    save(row, {});
    const SessionRow other = insert({guest_named("guest-1", "Lena")}, day(2026, 7, 9));
    EXPECT_NE(person(other), lena) << "a name alone makes nobody the same in another session";
    vault_->lock();
    save(row, both);
    EXPECT_EQ(person(row), lena);
    EXPECT_NE(person(row, GuestId("guest-2")), lena) << "one person is taken back once";
    EXPECT_EQ(must(health()->count(lena, HealthKind::physician_note)), 1);
}

TEST_F(Health, AMergeTakenBackGivesBackWhatWasSealedSince) {
    const SessionRow first = insert({guest_born("guest-1", "Vera Onnig", birth)});
    const SessionRow second = insert({guest_born("guest-1", "Wera Onnig", birth)}, day(2026, 7, 9));
    const qint64 vera = person(first);
    const qint64 wera = person(second);
    const QString noon = u"2026-07-10T12:00:00Z"_qs;
    const qint64 merge = must(PersonMerges(*database_).merge(vera, wera, noon));
    must(health()->put(vera, first, HealthKind::physician_note, "of Vera"));
    must(health()->put(vera, second, HealthKind::physician_note, "of Wera"));
    EXPECT_EQ(code_of(PersonMerges(*database_).undo(merge)), ErrorCode::vault_locked);
    vault_->lock();
    EXPECT_EQ(code_of(PersonMerges(*database_, health()).undo(merge)), ErrorCode::vault_locked);
    EXPECT_EQ(person(second), vera) << "nothing is changed";
    unlock();
    must(PersonMerges(*database_, health()).undo(merge));
    EXPECT_EQ(person(second), wera);
    EXPECT_THAT(contents(vera, HealthKind::physician_note), ElementsAre("of Vera"));
    EXPECT_THAT(contents(wera, HealthKind::physician_note), ElementsAre("of Wera"));
    EXPECT_FALSE(verify().fault.has_value());
}

TEST_F(Health, AMergeIsTakenBackWithALockedVaultWhereNothingWasSealedSince) {
    const SessionRow first = insert({guest_born("guest-1", "Vera Onnig", birth)});
    const SessionRow second = insert({guest_born("guest-1", "Wera Onnig", birth)}, day(2026, 7, 9));
    const qint64 wera = person(second);
    must(health()->put(wera, second, HealthKind::physician_note, "of Wera"));
    const qint64 merge = must(
        PersonMerges(*database_).merge(person(first), wera, u"2026-07-10T12:00:00Z"_qs));
    vault_->lock();
    must(PersonMerges(*database_).undo(merge));
    EXPECT_EQ(must(health()->count(wera, HealthKind::physician_note)), 1);
}

}  // namespace
}  // namespace leadline
