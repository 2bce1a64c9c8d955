// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/waiting_answers.h"

#include <gtest/gtest.h>

#include "core/files/questionnaire_file.h"
#include "core/records/audit_trail.h"
#include "core/records/check_store.h"
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
    EXPECT_EQ(last.event, "record_erased");
    EXPECT_EQ(last.who, "Kai");
    EXPECT_EQ(last.person, person_);
    EXPECT_EQ(last.detail, "emergency_contact");
    EXPECT_FALSE(must(AuditTrail(*database_).verify(nullptr)).fault);
}

}  // namespace
}  // namespace leadline
