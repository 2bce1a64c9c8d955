// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/backup.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <atomic>
#include <thread>

#include "core/records/check.h"
#include "core/records/file_care.h"
#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using namespace std::chrono_literals;
using test::Folder;
using test::must;
using testing::IsEmpty;
using testing::SizeIs;

const CopyTime morning =
    std::chrono::sys_days(std::chrono::year(2026) / 8 / 5) + 7h + 6min + 5s + 42ms;

/// Records with a session in them, open as in the program.
class Backup : public testing::Test {
protected:
    Backup()
        : database_(test::open(folder_.records())),
          row_(must(SessionStore(*database_).insert(test::full_session()))) {}

    void change_title(const std::string& title) {
        SessionFile file = test::full_session();
        file.session.title = title;
        must(SessionStore(*database_).save(row_, file));
    }
    [[nodiscard]] QStringList names_in_folder() const {
        return QDir(copies_folder(folder_.records())).entryList(QDir::Files | QDir::Hidden);
    }

    Folder folder_;
    std::unique_ptr<Database> database_;
    SessionRow row_;
};

TEST_F(Backup, HoldsWhatIsSavedAndOnlyItsOwnerMayReadIt) {
    const RecordCopy copy =
        must(make_copy(folder_.records(), CopyKind::by_schedule, morning));
    EXPECT_EQ(copy.path, folder_.path(u"backups/records-2026-08-05T07-06-05-042Z.sqlite"_qs));
    EXPECT_EQ(copy.made, morning);
    EXPECT_EQ(copy.bytes, QFileInfo(copy.path).size());
    const auto others = QFileDevice::ReadGroup | QFileDevice::WriteGroup | QFileDevice::ReadOther |
                        QFileDevice::WriteOther | QFileDevice::ExeGroup | QFileDevice::ExeOther;
    EXPECT_FALSE(QFile::permissions(copy.path) & others);
    EXPECT_FALSE(QFile::permissions(copies_folder(folder_.records())) & others);
    EXPECT_THAT(names_in_folder(), SizeIs(1)) << "no side files, nothing unfinished";
    EXPECT_THAT(list_copies(folder_.records()), testing::ElementsAre(copy));

    const QString elsewhere = folder_.path(u"elsewhere.sqlite"_qs);
    ASSERT_TRUE(QFile::copy(copy.path, elsewhere));
    EXPECT_EQ(must(SessionStore(*test::open(elsewhere)).load(row_)), test::full_session());
}

TEST_F(Backup, TellsWhyItWasMadeInItsName) {
    for (const CopyKind kind : {CopyKind::by_hand, CopyKind::before_restore}) {
        must(make_copy(folder_.records(), kind, morning));
    }
    const std::vector<RecordCopy> copies = list_copies(folder_.records());
    ASSERT_THAT(copies, SizeIs(2));
    EXPECT_NE(copies[0].kind, copies[1].kind);
    for (const RecordCopy& copy : copies) EXPECT_NE(copy.kind, CopyKind::by_schedule);
}

TEST_F(Backup, TwoOfTheSameMomentAreTwoFiles) {
    must(make_copy(folder_.records(), CopyKind::by_hand, morning));
    must(make_copy(folder_.records(), CopyKind::by_hand, morning));
    const std::vector<RecordCopy> copies = list_copies(folder_.records());
    ASSERT_THAT(copies, SizeIs(2));
    EXPECT_EQ(copies[0].made, morning + 1ms);
    EXPECT_EQ(copies[1].made, morning);
}

TEST_F(Backup, ListsOnlyFinishedCopiesOfItsOwnRecords) {
    must(make_copy(folder_.records(), CopyKind::by_hand, morning));
    for (const char* name :
         {"records-2026-08-05T07-06-05-042Z.sqlite.part", "other-2026-08-05T07-06-05-042Z.sqlite",
          "records-2026-13-05T07-06-05-042Z.sqlite", "records-.sqlite", "notes.txt",
          "records-2026-08-05T07-06-05-042Z.strange.sqlite"}) {
        test::write_bytes(copies_folder(folder_.records()) + u'/' + QString::fromLatin1(name),
                          "x");
    }
    EXPECT_THAT(list_copies(folder_.records()), SizeIs(1));
}

TEST_F(Backup, IsOneStateWhileEditsGoOn) {
    // Every save writes the same number into the title and a setting.
    std::atomic<bool> stop = false;
    std::atomic<int> saves = 0;
    std::thread writer([&] {
        const auto own = Database::open(folder_.records());
        for (int i = 0; own && !stop; ++i) {
            SessionFile file = test::plain_session();
            file.session.title = std::to_string(i);
            if (SessionStore(**own).save(row_, file)) ++saves;
        }
    });
    for (int i = 0; i < 5; ++i) {
        const int before = saves;
        const RecordCopy copy = must(make_copy(folder_.records(), CopyKind::by_hand,
                                               morning + std::chrono::seconds(i)));
        EXPECT_EQ(must(check_records_file(copy.path, CheckDepth::thorough)),
                  newest_schema_version);
        while (saves == before) std::this_thread::yield();
    }
    stop = true;
    writer.join();
    EXPECT_GT(saves, 0);
    EXPECT_THAT(list_copies(folder_.records()), SizeIs(5));
}

TEST_F(Backup, WhatIsSavedWhileItRunsIsNotInItAndDoesNotStopIt) {
    bool saved = false;
    const RecordCopy copy =
        must(make_copy(folder_.records(), CopyKind::by_hand, morning, [&](double) {
            if (!saved) change_title("later");
            saved = true;
            return true;
        }));
    ASSERT_TRUE(saved);
    const auto opened = test::open(copy.path);
    EXPECT_EQ(must(SessionStore(*opened).load(row_)), test::full_session());
    EXPECT_EQ(must(SessionStore(*database_).load(row_)).session.title, "later");
}

TEST_F(Backup, CanBeStoppedAndLeavesNothing) {
    double furthest = 0.0;
    for (int i = 0; i < 300; ++i) {
        test::run(*database_, u"INSERT INTO settings VALUES ('%1', hex(zeroblob(4000)))"_qs.arg(i));
    }
    const Result<RecordCopy> copy =
        make_copy(folder_.records(), CopyKind::by_hand, morning, [&](double share) {
            furthest = share;
            return share < 0.3;
        });
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::cancelled);
    EXPECT_GE(furthest, 0.3);
    EXPECT_LT(furthest, 0.6);
    EXPECT_THAT(names_in_folder(), IsEmpty());
}

TEST_F(Backup, CanBeStoppedInTheMiddleOfTheCheck) {
    const Result<RecordCopy> copy = make_copy(
        folder_.records(), CopyKind::by_hand, morning,
        [](double share) { return share < 0.6; });
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::cancelled);
    EXPECT_THAT(names_in_folder(), IsEmpty());
}

TEST_F(Backup, OfDamagedRecordsIsNoneAndSaysSo) {
    change_title("x");
    database_.reset();
    QByteArray bytes = test::bytes_of(folder_.records());
    constexpr qsizetype page = 4096;
    bytes.replace(3 * page, page, QByteArray(page, '\x5a'));
    test::write_bytes(folder_.records(), bytes);
    const Result<RecordCopy> copy =
        make_copy(folder_.records(), CopyKind::by_schedule, morning);
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::database_damaged);
    EXPECT_EQ(copy.error().place, folder_.records().toStdString());
    EXPECT_THAT(names_in_folder(), IsEmpty());
}

TEST_F(Backup, OfMissingRecordsSaysSo) {
    const Result<RecordCopy> copy =
        make_copy(folder_.path(u"none.sqlite"_qs), CopyKind::by_hand, morning);
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::database_gone);
}

TEST_F(Backup, WhereTheFolderCannotBeMadeSaysSo) {
    test::write_bytes(copies_folder(folder_.records()), "a file in the way");
    const Result<RecordCopy> copy = make_copy(folder_.records(), CopyKind::by_hand, morning);
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::database_failed);
}

TEST_F(Backup, ByScheduleIsMadeWhenDueAndChanged) {
    const ScheduledCopy first = must(keep_scheduled_copy(folder_.records(), morning));
    ASSERT_TRUE(first.made.has_value());
    EXPECT_EQ(must(keep_scheduled_copy(folder_.records(), morning + 2h)), ScheduledCopy{});

    const ScheduledCopy unchanged = must(keep_scheduled_copy(folder_.records(), morning + 24h));
    EXPECT_TRUE(unchanged.was_due);
    EXPECT_FALSE(unchanged.made.has_value());
    EXPECT_THAT(names_in_folder(), SizeIs(1));

    change_title("one letter");
    const ScheduledCopy changed = must(keep_scheduled_copy(folder_.records(), morning + 24h));
    ASSERT_TRUE(changed.made.has_value());
    EXPECT_THAT(names_in_folder(), SizeIs(2));
}

TEST_F(Backup, ByScheduleIsNotMadeForRecordsOnlyOpenedAgain) {
    must(keep_scheduled_copy(folder_.records(), morning));
    database_.reset();
    database_ = test::open(folder_.records());
    EXPECT_FALSE(must(keep_scheduled_copy(folder_.records(), morning + 24h)).made.has_value());
}

TEST_F(Backup, ByScheduleRemovesOldCopiesButNoneMadeByHand) {
    must(make_copy(folder_.records(), CopyKind::by_hand, morning - 2000 * 24h));
    for (int day = 0; day < 10; ++day) {
        must(make_copy(folder_.records(), CopyKind::by_schedule, morning - (1000 + day) * 24h));
    }
    change_title("new");
    const ScheduledCopy done = must(keep_scheduled_copy(folder_.records(), morning));
    EXPECT_TRUE(done.made.has_value());
    EXPECT_EQ(done.removed, 4) << "seven stay: the new one and six";
    const std::vector<RecordCopy> left = list_copies(folder_.records());
    ASSERT_THAT(left, SizeIs(8));
    EXPECT_EQ(left.front().made, morning);
    EXPECT_EQ(left.back().kind, CopyKind::by_hand);
}

TEST_F(Backup, ThatFailsRemovesNothing) {
    for (int day = 0; day < 10; ++day) {
        must(make_copy(folder_.records(), CopyKind::by_schedule, morning - (1000 + day) * 24h));
    }
    EXPECT_FALSE(
        keep_scheduled_copy(folder_.records(), morning, [](double) { return false; }).has_value());
    EXPECT_THAT(list_copies(folder_.records()), SizeIs(10));
}

TEST_F(Backup, LeftoversOfAnEndedRunAreCleanedAway) {
    must(make_copy(folder_.records(), CopyKind::by_hand, morning));
    const QStringList leftovers{copies_folder(folder_.records()) + u"/records-x.sqlite.part"_qs,
                                folder_.path(u"records-scratch-1.part-wal"_qs),
                                folder_.path(u"records.sqlite.before-schema-2.x.part"_qs)};
    const QString not_ours = folder_.path(u"records-of-mine.part"_qs);
    test::write_bytes(not_ours, "x");
    for (const QString& leftover : leftovers) test::write_bytes(leftover, "x");
    remove_leftovers(folder_.records(), current_time());
    for (const QString& leftover : leftovers) EXPECT_TRUE(QFileInfo::exists(leftover)) << "new";
    remove_leftovers(folder_.records(), current_time() + 2h);
    for (const QString& leftover : leftovers) EXPECT_FALSE(QFileInfo::exists(leftover));
    EXPECT_TRUE(QFileInfo::exists(not_ours));
    EXPECT_THAT(list_copies(folder_.records()), SizeIs(1));
    EXPECT_TRUE(QFileInfo::exists(folder_.records()));
}

TEST_F(Backup, CheckTellsRecordsFromAllElse) {
    EXPECT_EQ(must(check_records_file(folder_.records(), CheckDepth::quick)),
              newest_schema_version);
    const QString other = folder_.path(u"other.sqlite"_qs);
    const auto code_after = [&](const QString& sql) {
        const RecordCopy copy = must(make_copy(folder_.records(), CopyKind::by_hand, morning));
        QFile::remove(other);
        EXPECT_TRUE(QFile::rename(copy.path, other));
        const auto side = must(SideConnection::open(other, SideConnection::Access::read_write));
        must(execute(side->database(), sql));
        const Result<int> checked = check_records(side->database(), CheckDepth::thorough);
        return checked ? ErrorCode{} : checked.error().code;
    };
    EXPECT_EQ(code_after(u"DROP TABLE log_samples"_qs), ErrorCode::database_damaged);
    EXPECT_EQ(code_after(u"CREATE TABLE invoices (number INTEGER)"_qs),
              ErrorCode::database_damaged);
    EXPECT_EQ(code_after(u"DELETE FROM persons"_qs), ErrorCode::database_damaged);
    EXPECT_EQ(code_after(u"PRAGMA application_id = 7"_qs), ErrorCode::not_our_records);
    EXPECT_EQ(code_after(u"PRAGMA user_version = 400"_qs), ErrorCode::database_newer);

    QFile::remove(other);
    test::write_bytes(other, {});
    const Result<int> empty = check_records_file(other, CheckDepth::quick);
    ASSERT_FALSE(empty.has_value());
    EXPECT_EQ(empty.error().code, ErrorCode::database_damaged);
}

TEST(FileCare, PutsAFileInPlaceOfAnOlderOne) {
    const Folder folder;
    test::write_bytes(folder.path(u"kept"_qs), "old");
    must(make_private_file(folder.path(u"kept.part"_qs)));
    test::write_bytes(folder.path(u"kept.part"_qs), "new");
    must(put_in_place(folder.path(u"kept.part"_qs), folder.path(u"kept"_qs)));
    EXPECT_EQ(test::bytes_of(folder.path(u"kept"_qs)), "new");
    EXPECT_FALSE(QFileInfo::exists(folder.path(u"kept.part"_qs)));
    EXPECT_FALSE(put_in_place(folder.path(u"none.part"_qs), folder.path(u"kept"_qs)).has_value());
    EXPECT_EQ(test::bytes_of(folder.path(u"kept"_qs)), "new");
}

}  // namespace
}  // namespace leadline
