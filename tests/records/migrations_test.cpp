// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/migrations.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>

#include "core/records/check_store.h"
#include "core/records/guest_store.h"
#include "core/records/session_store.h"
#include "core/records/site_store.h"
#include "core/records/statement.h"
#include "core/records/vault.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::Folder;
using test::must;
using testing::HasSubstr;

constexpr int now = newest_schema_version;
constexpr int next = now + 1;

const QString add_column = u"ALTER TABLE sessions ADD COLUMN boat TEXT"_qs;

std::vector<MigrationStep> steps_and(int version, const QStringList& statements) {
    std::vector<MigrationStep> steps = must(built_in_steps());
    steps.push_back({version, statements});
    return steps;
}

bool has_boat(const QSqlDatabase& database) {
    return execute(database, u"SELECT boat FROM sessions"_qs).has_value();
}

/// A file of the present schema with one session in it.
class Migrations : public testing::Test {
protected:
    Migrations()
        : database_(test::open(folder_.records())),
          row_(must(SessionStore(*database_).insert(test::full_session()))) {}

    [[nodiscard]] QString kept(int version) const {
        return copy_before(folder_.records(), version);
    }
    void expect_unchanged() const {
        EXPECT_EQ(database_->schema_version(), now);
        EXPECT_FALSE(has_boat(database_->connection()));
        EXPECT_EQ(must(SessionStore(*database_).load(row_)), test::full_session());
        EXPECT_EQ(test::number(*database_, u"PRAGMA foreign_keys"_qs), 1);
    }

    Folder folder_;
    std::unique_ptr<Database> database_;
    SessionRow row_;
};

TEST(BuiltInSteps, AreReachableAndEndAtTheNewest) {
    const std::vector<MigrationStep> steps = must(built_in_steps());
    ASSERT_FALSE(steps.empty());
    EXPECT_EQ(steps.back().version, newest_schema_version);
    EXPECT_EQ(steps.size(), std::size_t(newest_schema_version));
}

TEST(StatementsIn, CutsAtSeparatorsOnly) {
    const QString sql =
        u"-- a header\n\n-- statement\nCREATE TRIGGER t BEGIN a; b; END;\n"
        "  -- statement  \n-- a remark\nINSERT INTO t VALUES ('-- statement; no')\n"
        "-- statement\n-- nothing but a remark\n"_qs;
    EXPECT_EQ(statements_in(sql),
              (QStringList{u"CREATE TRIGGER t BEGIN a; b; END;"_qs,
                           u"-- a remark\nINSERT INTO t VALUES ('-- statement; no')"_qs}));
}

TEST(StatementsIn, FindsNoneInNothing) { EXPECT_EQ(statements_in(QString()), QStringList()); }

TEST_F(Migrations, AStepKeepsACopyOfTheOldFile) {
    must(migrate(database_->connection(), steps_and(next, {add_column})));
    EXPECT_EQ(database_->schema_version(), next);
    EXPECT_TRUE(has_boat(database_->connection()));
    EXPECT_EQ(must(SessionStore(*database_).load(row_)), test::full_session());

    ASSERT_TRUE(QFileInfo::exists(kept(next)));
    EXPECT_FALSE(QFileInfo::exists(kept(next) + u".part"_qs));
    const auto others = QFileDevice::ReadGroup | QFileDevice::ReadOther;
    EXPECT_FALSE(QFile::permissions(kept(next)) & others);
    const auto copy = test::open(kept(next));
    EXPECT_EQ(copy->schema_version(), now);
    EXPECT_FALSE(has_boat(copy->connection()));
    EXPECT_EQ(must(SessionStore(*copy).load(row_)), test::full_session());
}

TEST_F(Migrations, AFailingStepIsUndoneWhole) {
    const Result<Done> done = migrate(
        database_->connection(),
        steps_and(next, {add_column, u"DELETE FROM sessions"_qs, u"SELECT boat FROM nowhere"_qs}));
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::database_failed);
    EXPECT_EQ(done.error().place, folder_.records().toStdString());
    EXPECT_THAT(done.error().given, HasSubstr("nowhere"));
    expect_unchanged();
    EXPECT_TRUE(QFileInfo::exists(kept(next)));
}

TEST_F(Migrations, AStepThatBreaksReferencesIsUndone) {
    const Result<Done> done = migrate(database_->connection(),
                                      steps_and(next, {add_column, u"DELETE FROM persons"_qs}));
    ASSERT_FALSE(done.has_value());
    EXPECT_THAT(done.error().given, HasSubstr("session_guests"));
    expect_unchanged();
}

TEST_F(Migrations, AStepMayMakeATableAnew) {
    must(migrate(database_->connection(),
                 steps_and(next, {u"CREATE TABLE new_persons AS SELECT * FROM persons"_qs,
                               u"DROP TABLE persons"_qs,
                               u"CREATE TABLE persons (id INTEGER PRIMARY KEY, name TEXT)"_qs,
                               u"INSERT INTO persons SELECT id, name FROM new_persons"_qs,
                               u"DROP TABLE new_persons"_qs})));
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM session_guests g "
                                       "JOIN persons p ON p.id = g.person_id"_qs),
              3);
    EXPECT_EQ(test::number(*database_, u"PRAGMA foreign_keys"_qs), 1);
}

TEST_F(Migrations, OfTwoStepsTheFirstStandsWhenTheSecondFails) {
    std::vector<MigrationStep> steps = steps_and(next, {add_column});
    steps.push_back({next + 1, {u"CREATE TABLE boats (name TEXT)"_qs, u"nonsense"_qs}});
    EXPECT_FALSE(migrate(database_->connection(), steps).has_value());
    EXPECT_EQ(database_->schema_version(), next);
    EXPECT_TRUE(has_boat(database_->connection()));
    EXPECT_EQ(test::number(*database_,
                           u"SELECT count(*) FROM sqlite_master WHERE name = 'boats'"_qs),
              0);
    EXPECT_TRUE(QFileInfo::exists(kept(next)));
    EXPECT_FALSE(QFileInfo::exists(kept(next + 1)));
}

TEST_F(Migrations, WithoutANewStepNothingIsCopied) {
    must(migrate(database_->connection(), must(built_in_steps())));
    EXPECT_FALSE(QFileInfo::exists(kept(now)));
    EXPECT_FALSE(QFileInfo::exists(kept(next)));
}

TEST_F(Migrations, ACopyReplacesAnOlderOne) {
    test::write_bytes(kept(next), "from an earlier try");
    test::write_bytes(kept(next) + u".part"_qs, "from a try that was cut off");
    must(migrate(database_->connection(), steps_and(next, {add_column})));
    EXPECT_EQ(must(SessionStore(*test::open(kept(next))).load(row_)), test::full_session());
    EXPECT_EQ(QDir(folder_.path(u"."_qs)).entryList({u"*.part*"_qs}, QDir::Files).size(), 1)
        << "the one that was there; it is cleaned away when it is old";
}

TEST_F(Migrations, WithoutRoomForACopyNoStepIsTaken) {
    // A folder of the copy's name stands in the way.
    ASSERT_TRUE(QDir().mkpath(kept(next) + u"/full"_qs));
    const Result<Done> done = migrate(database_->connection(), steps_and(next, {add_column}));
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().place, kept(next).toStdString());
    expect_unchanged();
}

TEST_F(Migrations, ADatabasePastTheNewestStepIsRefused) {
    test::run(*database_, u"PRAGMA user_version = %1"_qs.arg(next + 1));
    const Result<Done> done = migrate(database_->connection(), steps_and(next, {add_column}));
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error(), (Error{ErrorCode::database_newer, folder_.records().toStdString(),
                                   std::to_string(next + 1), std::to_string(next)}));
    EXPECT_FALSE(has_boat(database_->connection()));
}

TEST(MigrationOfAnEmptyFile, KeepsNoCopy) {
    const Folder folder;
    const auto database = test::open(folder.records());
    EXPECT_FALSE(QFileInfo::exists(copy_before(folder.records(), now)));
}

TEST(MigrationInMemory, KeepsNoCopy) {
    const auto database = test::open(u":memory:"_qs);
    must(migrate(database->connection(), steps_and(next, {add_column})));
    EXPECT_EQ(database->schema_version(), next);
    EXPECT_FALSE(QFileInfo::exists(copy_before(u":memory:"_qs, next)));
}

/// A file as a program that knew only schema 1 left it: its tables made by the first step, filled
/// with the rows that the session of schema 1 had there.
void write_schema_1(const QString& path) {
    const QString name = u"schema 1"_qs;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_qs, name);
        database.setDatabaseName(path);
        ASSERT_TRUE(database.open());
        must(migrate(database, {must(built_in_steps()).front()}));
        const QByteArray rows =
            test::bytes_of(QStringLiteral(LEADLINE_TEST_DATA_DIR "/records/schema-1.sql"));
        for (const QString& statement : statements_in(QString::fromUtf8(rows))) {
            must(execute(database, statement));
        }
    }
    QSqlDatabase::removeDatabase(name);
}

TEST(MigrationFromSchema1, KeepsEverything) {
    const Folder folder;
    write_schema_1(folder.records());
    const auto database = test::open(folder.records());
    EXPECT_EQ(database->schema_version(), now);
    EXPECT_TRUE(QFileInfo::exists(copy_before(folder.records(), 2)));
    const std::vector<SessionSummary> list = must(SessionStore(*database).list());
    ASSERT_EQ(list.size(), 1U);
    const SessionFile loaded = must(SessionStore(*database).load(list[0].row));
    EXPECT_EQ(loaded, test::full_session_of_schema_1());
    EXPECT_EQ(write_session(loaded), write_session(test::full_session_of_schema_1()));
    const std::vector<KnownGuest> known = must(GuestStore(*database).find({}));
    ASSERT_EQ(known.size(), 3U);
    for (const KnownGuest& guest : known) EXPECT_FALSE(guest.guest.dives_before);
    EXPECT_EQ(must(SiteStore(*database).list()).size(), 1U);
}

TEST(MigrationFromSchema1, TakesWhatIsNew) {
    const Folder folder;
    write_schema_1(folder.records());
    const auto database = test::open(folder.records());
    SessionStore store(*database);
    const SessionRow row = must(store.list()).at(0).row;
    must(store.save(row, test::full_session()));
    EXPECT_EQ(must(store.load(row)), test::full_session());
    EXPECT_EQ(must(GuestStore(*database).find(u"olgard"_qs)).at(0).guest.dives_before, 7);
    EXPECT_EQ(must(GuestStore(*database).count()), 3);
}

TEST(MigrationFromSchema1, PutsAsideWhatIsToBeSealed) {
    const Folder folder;
    write_schema_1(folder.records());
    const auto database = test::open(folder.records());
    const std::vector<AnswerToSeal> waiting = must(answers_to_seal(*database));
    std::vector<std::string> questions;
    for (const AnswerToSeal& answer : waiting) {
        EXPECT_EQ(answer.name, "Žofie Ølgård");
        EXPECT_EQ(answer.person, 2);
        EXPECT_EQ(answer.session.value, 1);
        EXPECT_EQ(answer.date, test::full_session().session.date);
        questions.push_back(answer.question);
    }
    EXPECT_THAT(questions, testing::UnorderedElementsAre(
                               "back_hernia_diabetes", "over_45_with_risks", "pregnancy",
                               "surgery_last_year", "alcohol_or_drugs",
                               "unwilling_or_very_afraid"))
        << "every yes, and no other";
    EXPECT_EQ(test::number(*database, u"SELECT count(*) FROM sqlite_master "
                                      "WHERE name IN ('screening_answers', 'screening_today')"_qs),
              0);
}

/// A guest of schema 3 with answers, in a file that is brought to the present schema.
HealthCheck brought_over(const QString& answers, bool released) {
    const Folder folder;
    const QString name = u"schema 3"_qs;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_qs, name);
        database.setDatabaseName(folder.records());
        EXPECT_TRUE(database.open());
        std::vector<MigrationStep> steps = must(built_in_steps());
        std::erase_if(steps, [](const MigrationStep& step) { return step.version > 3; });
        must(migrate(database, steps));
        for (const QString& statement :
             {u"INSERT INTO persons (id, name, folded_name, birth_date, language) "
              "VALUES (1, 'Ana', 'ana', '1990-01-01', 'en')"_qs,
              u"INSERT INTO sessions VALUES (1, 'One', '2026-07-04', 540, 600)"_qs,
              u"INSERT INTO session_guests (session_id, guest_id, position, person_id, name, "
              "birth_date, language, physician_approval_seen, guardian_consent, certified, "
              "breathing, suit, bcd, fins, mask, regulator, note) VALUES (1, 'g', 0, 1, 'Ana', "
              "'1990-01-01', 'en', %1, 0, 0, 'calm', '', '', '', '', '', '')"_qs.arg(released)}) {
            must(execute(database, statement));
        }
        for (const QString& answer : answers.split(u' ', Qt::SkipEmptyParts)) {
            const QStringList parts = answer.split(u'=');
            const bool today = parts[0].startsWith(u'+');
            must(execute(database, u"INSERT INTO %1 VALUES (1, 'g', '%2', '%3')"_qs.arg(
                                       today ? u"screening_today"_qs : u"screening_answers"_qs,
                                       parts[0].mid(today ? 1 : 0), parts[1])));
        }
    }
    QSqlDatabase::removeDatabase(name);
    const auto database = test::open(folder.records());
    return must(CheckStore(*database).last_check("Ana", test::day(1990, 1, 1), {}))
        .value_or(HealthCheck());
}

const QString eleven_no =
    u"heart_and_blood=no over_45_with_risks=no exercise=no eyes_ears_sinuses=no "
    "surgery_last_year=no nerves_and_blackouts=no mind=no back_hernia_diabetes=no "
    "stomach_and_gut=no prescription_medicine=no pregnancy=no "_qs;

TEST(MigrationFromSchema3, KeepsWhatTheAnswersComeTo) {
    const HealthCheck clear = brought_over(eleven_no + u"lungs=no"_qs, false);
    EXPECT_EQ(clear.outcome, ScreeningOutcome::clear);
    EXPECT_EQ(clear.checked_on, test::day(2026, 7, 4));
    EXPECT_EQ(clear.edition, "");
    EXPECT_EQ(clear.signature, SignatureKind::none);
    EXPECT_EQ(brought_over(eleven_no, false), HealthCheck()) << "a gap";
    EXPECT_EQ(brought_over({}, true), HealthCheck());
    EXPECT_EQ(brought_over(eleven_no + u"lungs=yes"_qs, true).outcome,
              ScreeningOutcome::physician_required);
    EXPECT_EQ(brought_over(u"lungs=yes"_qs, false).outcome, ScreeningOutcome::physician_required)
        << "bad news before a gap";
    EXPECT_EQ(brought_over(u"lungs=yes"_qs, true), HealthCheck())
        << "a release answers nothing that was not asked";
    EXPECT_EQ(brought_over(u"pregnancy=yes"_qs, true).outcome, ScreeningOutcome::does_not_dive);
}

TEST(MigrationFromSchema3, KeepsWhatTheDayCameTo) {
    const auto today = [](const QString& answers) {
        return brought_over(eleven_no + u"lungs=no "_qs + answers, false).today;
    };
    const QString four = u"+cold_or_blocked_ears=no +alcohol_or_drugs=no +new_medicine=no "
                         "+unwilling_or_very_afraid=no "_qs;
    EXPECT_EQ(today({}), TodayOutcome::unanswered);
    EXPECT_EQ(today(four), TodayOutcome::unanswered);
    EXPECT_EQ(today(four + u"+flight_or_mountain_within_24_hours=no +cannot_swim=no"_qs),
              TodayOutcome::clear);
    EXPECT_EQ(today(u"+cannot_swim=yes"_qs), TodayOutcome::with_care);
    EXPECT_EQ(today(u"+cannot_swim=yes +new_medicine=yes"_qs), TodayOutcome::not_today);
}

TEST(MigrationFromSchema1, LeavesTheOldFileInTheCopy) {
    const Folder folder;
    write_schema_1(folder.records());
    test::open(folder.records());
    const QByteArray copy = test::bytes_of(copy_before(folder.records(), 2));
    EXPECT_FALSE(copy.contains("stock_suits"));
    EXPECT_TRUE(copy.contains("Saturday, first boat"));
}

TEST(MigrationFromSchema3, LeavesPersonsAsTheyWereAndNoVault) {
    const Folder folder;
    const QString name = u"schema 3"_qs;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_qs, name);
        database.setDatabaseName(folder.records());
        ASSERT_TRUE(database.open());
        std::vector<MigrationStep> steps = must(built_in_steps());
        steps.resize(3);
        must(migrate(database, steps));
        must(execute(database, u"INSERT INTO persons (name, folded_name, language, phone) "
                               "VALUES ('Anna', 'anna', 'de', '0555 1')"_qs));
    }
    QSqlDatabase::removeDatabase(name);
    const auto database = test::open(folder.records());
    EXPECT_EQ(database->schema_version(), now);
    EXPECT_TRUE(QFileInfo::exists(copy_before(folder.records(), 4)));
    const std::vector<KnownGuest> known = must(GuestStore(*database).find(u"anna"_qs));
    ASSERT_EQ(known.size(), 1U);
    EXPECT_EQ(known.front().guest.phone, "0555 1");
    EXPECT_FALSE(must(Vault(*database).is_set_up()));
    EXPECT_EQ(must(Vault(*database).trail().verify(nullptr)), AuditVerdict{});
}

}  // namespace
}  // namespace leadline
