// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/audit_trail.h"

#include <gmock/gmock.h>

#include <QFile>

#include "core/records/statement.h"
#include "tests/records/vault_fixture.h"

namespace leadline {
namespace {

using test::code_of;
using test::must;
using test::passphrase;
using test::secret_text;
using testing::ElementsAre;

/// A trail of six entries made by an open vault.
class Trail : public test::VaultTest {
protected:
    void SetUp() override {
        set_up();
        HealthStore health(*database_, *vault_);
        const SessionRow row =
            must(SessionStore(*database_)
                     .insert(test::session_with(test::day(2026, 7, 4),
                                                {test::guest_named("guest-1", "Anna Berg")})));
        person_ = must(health.person_of(row, GuestId("guest-1")));
        must(health.put(person_, row, HealthKind::screening, "{}"));
        must(health.open(person_, HealthKind::screening));
        must(health.note_export(person_, HealthKind::screening));
        vault_->lock();
        unlock("Jo");
    }
    std::vector<std::string> events() {
        std::vector<std::string> found;
        for (const AuditEntry& entry : must(vault_->trail().entries(100))) {
            found.insert(found.begin(), entry.event);
        }
        return found;
    }
    void expect_fault(AuditFault fault, qint64 number) {
        const AuditVerdict verdict = verify();
        EXPECT_EQ(verdict.fault, fault) << int(verdict.fault.value_or(fault));
        EXPECT_EQ(verdict.first_broken, number);
    }
    /// An attacker with the file: makes all hashes fit again.
    void forge_chain() {
        must(execute(database_->connection(),
                     u"CREATE TEMP TABLE old AS SELECT * FROM "
                     "health_openings ORDER BY number"_qs));
        run_sql(u"DELETE FROM health_openings"_qs);
        const auto rows =
            must(Statement(database_->connection(), u"SELECT who, event, detail FROM old"_qs)
                     .all([](Row& row) {
                         return std::vector<std::string>{row.text(), row.text(), row.text()};
                     }));
        AuditTrail trail(*database_, [this] { return now_; });
        for (const auto& row : rows) {
            must(trail.append({from_stored_name<AuditEvent>(row[1]).value(), row[0], 0, 0, row[2]},
                              nullptr));
        }
        run_sql(u"DROP TABLE old"_qs);
    }
    qint64 person_ = 0;
};

TEST_F(Trail, SaysWhoDidWhatInOrder) {
    EXPECT_THAT(events(), ElementsAre("vault_set_up", "record_written", "record_opened",
                                      "record_exported", "locked", "unlocked"));
    const std::vector<AuditEntry> newest = must(vault_->trail().entries(1));
    ASSERT_EQ(newest.size(), 1U);
    EXPECT_EQ(newest.front(),
              (AuditEntry{6, "2026-07-04T08:15:00Z", "Jo", "unlocked", 0, 0, "passphrase"}));
    const AuditEntry written = must(vault_->trail().entries(5)).back();
    EXPECT_EQ(written, (AuditEntry{2, "2026-07-04T08:15:00Z", "Mara", "record_written", person_, 1,
                                   "screening"}));
    EXPECT_EQ(verify(), (AuditVerdict{6, true, std::nullopt, 0}));
}

TEST_F(Trail, AnEditedFieldIsFoundEachOfThem) {
    for (const char* change : {"at = '2026-07-04T08:15:01Z'", "who = 'Jo'", "event = 'unlocked'",
                               "person_id = person_id + 1", "record_id = 9", "detail = ''"}) {
        run_sql(u"SAVEPOINT edit"_qs);
        run_sql(
            u"UPDATE health_openings SET %1 WHERE number = 2"_qs.arg(QString::fromLatin1(change)));
        expect_fault(AuditFault::entry_changed, 2);
        run_sql(u"ROLLBACK TO edit"_qs);
        run_sql(u"RELEASE edit"_qs);
    }
    EXPECT_FALSE(verify().fault.has_value());
}

TEST_F(Trail, AnEntryTakenOutIsFound) {
    run_sql(u"DELETE FROM health_openings WHERE number = 3"_qs);
    expect_fault(AuditFault::entry_missing, 3);
}

TEST_F(Trail, AnEndCutOffIsFound) {
    run_sql(u"DELETE FROM health_openings WHERE number > 4"_qs);
    expect_fault(AuditFault::end_cut, 5);
}

TEST_F(Trail, ACutEndWithAPatchedSealIsFoundOnlyWithTheKey) {
    vault_->lock();
    run_sql(u"DELETE FROM health_openings WHERE number > 4"_qs);
    run_sql(
        u"UPDATE health_openings_seal SET entries = 4, head = (SELECT hash FROM "
        "health_openings WHERE number = 4)"_qs);
    EXPECT_EQ(verify(), (AuditVerdict{4, false, std::nullopt, 0}));
    unlock();
    expect_fault(AuditFault::found_earlier, 5);
    EXPECT_EQ(must(vault_->trail().entries(2)).back().detail, "seal_wrong 4");
}

TEST_F(Trail, AChainForgedThroughoutIsFoundByTheSeal) {
    run_sql(u"UPDATE health_openings SET who = 'Nobody' WHERE number = 2"_qs);
    forge_chain();
    expect_fault(AuditFault::head_replaced, 6);
    EXPECT_FALSE(must(vault_->trail().verify(nullptr)).fault.has_value());
}

TEST_F(Trail, ARemovedSealIsFound) {
    run_sql(u"DELETE FROM health_openings_seal"_qs);
    expect_fault(AuditFault::seal_wrong, 1);
}

TEST_F(Trail, ATamperedTrailStaysBrokenAfterTheNextEntries) {
    vault_->lock();
    run_sql(u"DELETE FROM health_openings WHERE number > 3"_qs);
    unlock("Jo");
    EXPECT_THAT(events(), ElementsAre("vault_set_up", "record_written", "record_opened",
                                      "trail_broken", "unlocked"));
    expect_fault(AuditFault::found_earlier, 4);
    vault_->lock();
    unlock("Jo");
    expect_fault(AuditFault::found_earlier, 4);
    EXPECT_EQ(must(vault_->trail().entries(100)).size(), 7U) << "noted once";
}

TEST_F(Trail, AnEditedEntryIsNotedOnceAndStaysTheFirstFault) {
    vault_->lock();
    run_sql(u"UPDATE health_openings SET who = 'Nobody' WHERE number = 2"_qs);
    unlock();
    vault_->lock();
    unlock();
    expect_fault(AuditFault::entry_changed, 2);
    const auto noted = test::number(
        *database_, u"SELECT count(*) FROM health_openings WHERE event = 'trail_broken'"_qs);
    EXPECT_EQ(noted, 1);
}

TEST_F(Trail, TamperingWhileOpenIsNotedBeforeTheNextSeal) {
    run_sql(u"DELETE FROM health_openings WHERE number > 5"_qs);
    must(HealthStore(*database_, *vault_).open(person_, HealthKind::screening));
    EXPECT_THAT(events(),
                ElementsAre("vault_set_up", "record_written", "record_opened", "record_exported",
                            "locked", "trail_broken", "record_opened"));
    expect_fault(AuditFault::found_earlier, 6);
}

TEST_F(Trail, FailedUnlocksStandInItWithoutASeal) {
    vault_->lock();
    EXPECT_EQ(code_of(vault_->open_with_passphrase(secret_text("a wrong passphrase"), "Jo")),
              ErrorCode::vault_wrong_key);
    now_ += 1;
    EXPECT_EQ(verify(), (AuditVerdict{8, false, std::nullopt, 0}));
    unlock();
    EXPECT_EQ(verify(), (AuditVerdict{9, true, std::nullopt, 0}));
    EXPECT_EQ(must(vault_->trail().entries(2)).back().event, "unlock_failed");
}

TEST_F(Trail, AnInventedEntryBehindTheSealIsFound) {
    vault_->lock();
    must(AuditTrail(*database_).append({AuditEvent::record_erased, "Jo", 1, 1, {}}, nullptr));
    EXPECT_FALSE(verify().fault.has_value()) << "the chain fits: it takes the key to tell";
    unlock();
    expect_fault(AuditFault::found_earlier, 9);
    EXPECT_EQ(must(vault_->trail().entries(2)).back().detail, "written_without_key 8");
}

TEST_F(Trail, WithoutALineInTheTrailNothingIsGivenOut) {
    run_sql(
        u"CREATE TRIGGER no_more BEFORE INSERT ON health_openings BEGIN "
        "SELECT raise(ABORT, 'full'); END"_qs);
    HealthStore health(*database_, *vault_);
    EXPECT_EQ(code_of(health.open(person_, HealthKind::screening)), ErrorCode::database_failed);
    EXPECT_EQ(code_of(health.put(person_, std::nullopt, HealthKind::screening, "x")),
              ErrorCode::database_failed);
    EXPECT_EQ(must(health.count(person_, HealthKind::screening)), 1);
    vault_->lock();
    EXPECT_FALSE(vault_->is_open()) << "locks all the same";
}

}  // namespace
}  // namespace leadline
