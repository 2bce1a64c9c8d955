// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/waiting_answers.h"

#include <gtest/gtest.h>

#include <QFileInfo>

#include "core/files/questionnaire_file.h"
#include "core/records/audit_trail.h"
#include "core/records/check_store.h"
#include "core/records/guest_dossier.h"
#include "core/records/person_removal.h"
#include "tests/records/vault_fixture.h"

namespace leadline {
namespace {

using test::must;

/// A session with one guest, and two answers of an older schema that wait to be sealed.
class WaitingAnswers : public test::VaultTest {
protected:
    void SetUp() override {
        set_up();
        row_ = must(SessionStore(*database_).insert(test::session_with(
            test::day(2026, 7, 4),
            {test::guest_born("guest-1", "Anna Berg", test::day(1990, 5, 17))})));
        person_ = must(health_.person_of(row_, GuestId("guest-1")));
        for (const QString& question : {u"lungs"_qs, u"cold_or_blocked_ears"_qs}) {
            test::run(*database_, u"INSERT INTO answers_to_seal (person_id, session_id, question) "
                                  "VALUES (%1, %2, '%3')"_qs.arg(person_)
                                      .arg(row_.value)
                                      .arg(question));
        }
    }
    HealthStore& health() { return health_; }
    void put_aside(qint64 person, SessionRow session) {
        test::run(*database_, u"INSERT INTO answers_to_seal (person_id, session_id, question) "
                              "VALUES (%1, %2, 'lungs')"_qs.arg(person).arg(session.value));
    }
    qint64 waiting_for(qint64 person) {
        return test::number(*database_, u"SELECT count(*) FROM answers_to_seal "
                                        "WHERE person_id = %1"_qs.arg(person));
    }

    HealthStore health_{*database_, *vault_};
    SessionRow row_;
    qint64 person_ = 0;
};

TEST_F(WaitingAnswers, AreSealedTogetherAndStandOpenNoMore) {
    EXPECT_EQ(must(seal_waiting_answers(*database_, health())), 2);
    EXPECT_TRUE(must(answers_to_seal(*database_)).empty());
    const std::vector<HealthEntry> entries =
        must(health().open(person_, HealthKind::screening));
    ASSERT_EQ(entries.size(), 1U);
    const HealthAnswers answers = must(read_answers(entries[0].content));
    EXPECT_EQ(answer_to(answers, "lungs"), Answer::yes);
    EXPECT_EQ(answers.today[0], Answer::yes);
    EXPECT_EQ(answers.today[1], Answer::unanswered);
    EXPECT_EQ(answers.edition, earlier_edition);
    EXPECT_EQ(must(seal_waiting_answers(*database_, health())), 0) << "once is enough";
}

TEST_F(WaitingAnswers, StayWhileTheVaultIsLocked) {
    vault_->lock();
    const Result<int> sealed = seal_waiting_answers(*database_, health());
    ASSERT_FALSE(sealed.has_value());
    EXPECT_EQ(sealed.error().code, ErrorCode::vault_locked);
    EXPECT_EQ(must(answers_to_seal(*database_)).size(), 2U);
}

TEST_F(WaitingAnswers, GoWithTheGuestAndTheTrailNamesTheSealedOnes) {
    must(health().put(person_, row_, HealthKind::emergency_contact, "Bo, 555 0100"));
    vault_->lock();
    must(PersonRemoval(*database_).remove(person_, KeptKind::health, "Kai"));
    EXPECT_TRUE(must(answers_to_seal(*database_)).empty());
    EXPECT_EQ(must(health().count(person_, HealthKind::emergency_contact)), 0);
    const AuditEntry last = must(AuditTrail(*database_).entries(1)).at(0);
    EXPECT_EQ(last.event, "record_erased_locked");
    EXPECT_EQ(last.who, "Kai");
    EXPECT_EQ(last.person, person_);
    EXPECT_EQ(last.detail, "emergency_contact");
    EXPECT_FALSE(must(AuditTrail(*database_).verify(nullptr)).fault);
}

TEST_F(WaitingAnswers, RemovingAGuestLeavesTheTrailWholeWithTheVaultOpenAndLocked) {
    for (const bool locked : {false, true}) {
        const SessionRow row = must(SessionStore(*database_).insert(test::session_with(
            test::day(2026, 7, 5),
            {test::guest_born("guest-1", locked ? "Bo Lind" : "Cara Sund", test::day(1991, 2, 3))})));
        const qint64 person = must(health().person_of(row, GuestId("guest-1")));
        must(health().put(person, row, HealthKind::physician_note, "may dive"));
        if (locked) vault_->lock();
        must(PersonRemoval(*database_).remove(person, KeptKind::identity, "Kai"));
        if (locked) unlock();
        EXPECT_FALSE(verify().fault) << locked;
        EXPECT_TRUE(must(health().taken_out()).empty()) << locked;
        must(health().put(person_, row_, HealthKind::physician_note, "the trail goes on"));
        EXPECT_FALSE(verify().fault) << locked;
    }
}

TEST_F(WaitingAnswers, FollowAGuestWhoTurnsOutToBeSomebodyAndBack) {
    SessionStore sessions(*database_);
    const Guest lena = test::guest_named("guest-1", "Lena Ost");
    const Date date = test::day(2026, 7, 6);
    const SessionRow row = must(sessions.insert(test::session_with(date, {lena})));
    put_aside(must(health().person_of(row, lena.id)), row);
    must(sessions.save(row, test::session_with(date, {test::guest_born(
                                                         "guest-1", "Anna Berg",
                                                         test::day(1990, 5, 17))})));
    EXPECT_EQ(must(health().person_of(row, lena.id)), person_);
    EXPECT_EQ(waiting_for(person_), 3);
    must(sessions.save(row, test::session_with(date, {lena})));
    EXPECT_EQ(waiting_for(person_), 2);
    EXPECT_EQ(waiting_for(must(health().person_of(row, lena.id))), 1);
}

TEST_F(WaitingAnswers, AreFoundAgainByAGuestTakenOutAndPutBack) {
    SessionStore sessions(*database_);
    const Guest lena = test::guest_named("guest-1", "Lena Ost");
    const Date date = test::day(2026, 7, 6);
    const SessionRow row = must(sessions.insert(test::session_with(date, {lena})));
    const qint64 person = must(health().person_of(row, lena.id));
    put_aside(person, row);
    must(sessions.save(row, test::session_with(date, {})));
    must(sessions.save(row, test::session_with(date, {lena})));
    EXPECT_EQ(must(health().person_of(row, lena.id)), person);
    EXPECT_EQ(waiting_for(person), 1);
}

TEST_F(WaitingAnswers, AreCountedInTheGuestsFileAndLeaveTheWriteAheadFile) {
    EXPECT_EQ(must(read_dossier(*database_, person_)).sealed_records, 2);
    const QString log = folder_.records() + u"-wal"_qs;
    EXPECT_GT(QFileInfo(log).size(), 0);
    must(seal_waiting_answers(*database_, health()));
    EXPECT_EQ(QFileInfo(log).size(), 0);
    EXPECT_EQ(must(read_dossier(*database_, person_)).sealed_records, 1) << "sealed as one record";
}

}  // namespace
}  // namespace leadline
