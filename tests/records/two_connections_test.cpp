// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QSqlDatabase>
#include <chrono>
#include <future>
#include <thread>

#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::Folder;
using test::must;

TEST(TwoConnections, SeeWhatTheOtherSaved) {
    const Folder folder;
    const auto one = test::open(folder.records());
    const auto other = test::open(folder.records());
    SessionFile file = test::full_session();
    const SessionRow row = must(SessionStore(*one).insert(file));
    EXPECT_EQ(must(SessionStore(*other).load(row)), file);
    file.session.title = "Changed";
    must(SessionStore(*other).save(row, file));
    EXPECT_EQ(must(SessionStore(*one).load(row)), file);
}

TEST(TwoConnections, ASecondWriterIsToldThatTheFileIsTaken) {
    const Folder folder;
    const auto one = test::open(folder.records());
    const auto other = test::open(folder.records());
    const SessionRow row = must(SessionStore(*one).insert(test::full_session()));
    Result<Transaction> writing = Transaction::begin_writing(one->connection());
    ASSERT_TRUE(writing.has_value());

    QElapsedTimer waited;
    waited.start();
    const Result<Done> saved = SessionStore(*other).save(row, test::plain_session());
    EXPECT_GE(waited.elapsed(), 1500) << "the second writer did not wait";
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().code, ErrorCode::database_locked);
    EXPECT_EQ(saved.error().place, folder.records().toStdString());
    // Reading goes on meanwhile.
    EXPECT_EQ(must(SessionStore(*other).load(row)), test::full_session());

    must(writing->commit());
    must(SessionStore(*other).save(row, test::plain_session()));
}

TEST(TwoConnections, AShortWaitIsShortAndThenOverAndNeverLonger) {
    const Folder folder;
    const auto one = test::open(folder.records());
    const auto other = test::open(folder.records());
    const auto refused_after = [&] {
        QElapsedTimer waited;
        waited.start();
        const Result<Done> put = SettingStore(*other).put(u"units"_qs, u"metric"_qs);
        EXPECT_FALSE(put.has_value());
        return waited.elapsed();
    };
    Result<Transaction> writing = Transaction::begin_writing(one->connection());
    ASSERT_TRUE(writing.has_value());
    {
        const ShortWait wait(*other, std::chrono::milliseconds(20));
        EXPECT_LT(refused_after(), 1900);
        const ShortWait longer(*other, std::chrono::milliseconds(10000));
        EXPECT_LT(refused_after(), 1900);
    }
    EXPECT_GE(refused_after(), 1900);
}

TEST(TwoConnections, ASecondWriterGetsItsTurn) {
    const Folder folder;
    const auto one = test::open(folder.records());
    Result<Transaction> writing = Transaction::begin_writing(one->connection());
    ASSERT_TRUE(writing.has_value());

    std::promise<void> about_to_write;
    std::future<Result<Done>> put = std::async(std::launch::async, [&]() -> Result<Done> {
        const auto other = Database::open(folder.records());
        about_to_write.set_value();
        if (!other) return other.error();
        return SettingStore(**other).put(u"units"_qs, u"metric"_qs);
    });
    about_to_write.get_future().wait();
    must(writing->commit());
    must(put.get());
    EXPECT_EQ(must(SettingStore(*one).get(u"units"_qs)), u"metric"_qs);
}

TEST(TwoConnections, MayMakeTheFileAtTheSameTime) {
    const Folder folder;
    const auto make = [&]() -> Result<int> {
        const auto opened = Database::open(folder.records());
        if (!opened) return opened.error();
        return (*opened)->schema_version();
    };
    std::vector<std::future<Result<int>>> made;
    for (int i = 0; i < 4; ++i) made.push_back(std::async(std::launch::async, make));
    for (auto& version : made) EXPECT_EQ(must(version.get()), newest_schema_version);
}

TEST(TwoConnections, OpeningWaitsForAWriterOfAFileNotYetWrittenAhead) {
    const Folder folder;
    test::open(folder.records());
    const QString holder_name = u"writer"_qs;
    {
        QSqlDatabase holder = QSqlDatabase::addDatabase(u"QSQLITE"_qs, holder_name);
        holder.setDatabaseName(folder.records());
        ASSERT_TRUE(holder.open());
        // As a backup lies there. SQLite does not wait for a writer where this is changed back.
        must(execute(holder, u"PRAGMA journal_mode = DELETE"_qs));
        must(execute(holder, u"BEGIN IMMEDIATE"_qs));
        std::future<Result<int>> opened = std::async(std::launch::async, [&]() -> Result<int> {
            const auto other = Database::open(folder.records());
            if (!other) return other.error();
            return (*other)->schema_version();
        });
        EXPECT_EQ(opened.wait_for(std::chrono::milliseconds(300)), std::future_status::timeout)
            << "opened, or gave up, while the writer held the file";
        must(execute(holder, u"COMMIT"_qs));
        EXPECT_EQ(must(opened.get()), newest_schema_version);
        holder.close();
    }
    QSqlDatabase::removeDatabase(holder_name);
}

TEST(TwoConnections, AFileHeldByAnotherProgramIsLocked) {
    const Folder folder;
    {
        QSqlDatabase holder = QSqlDatabase::addDatabase(u"QSQLITE"_qs, u"holder"_qs);
        holder.setDatabaseName(folder.records());
        ASSERT_TRUE(holder.open());
        must(execute(holder, u"BEGIN EXCLUSIVE"_qs));
        const auto opened = Database::open(folder.records());
        ASSERT_FALSE(opened.has_value());
        EXPECT_EQ(opened.error().code, ErrorCode::database_locked);
        EXPECT_EQ(opened.error().place, folder.records().toStdString());
        holder.close();
    }
    QSqlDatabase::removeDatabase(u"holder"_qs);
}

}  // namespace
}  // namespace leadline
