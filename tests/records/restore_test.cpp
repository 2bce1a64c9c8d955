// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/restore.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>

#include "core/records/check.h"
#include "core/records/migrations.h"
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
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const CopyTime that_morning = std::chrono::sys_days(std::chrono::year(2026) / 8 / 5) + 7h;

SessionFile titled(const std::string& title, unsigned day_of_month) {
    SessionFile file = test::session_with(test::day(2026, 7, day_of_month),
                                          {test::guest_born("g", "Ada " + title,
                                                            test::day(1990, 1, day_of_month))});
    file.session.title = title;
    return file;
}

/// Records of which a copy was made, and which were changed after it.
class Restore : public testing::Test {
protected:
    Restore() {
        const auto database = test::open(folder_.records());
        SessionStore store(*database);
        same_ = must(store.insert(titled("Same", 1)));
        changed_ = must(store.insert(titled("Changed", 2)));
        lost_ = must(store.insert(titled("Removed since", 3)));
        copy_ = must(make_copy(folder_.records(), CopyKind::by_hand, that_morning));
        SessionFile other = titled("Changed", 2);
        other.session.conditions.water_temperature = celsius_to_kelvin();
        must(store.save(changed_, other));
        must(store.remove(lost_));
        new_ = must(store.insert(titled("New", 4)));
    }
    static decltype(Conditions{}.water_temperature) celsius_to_kelvin() {
        auto value = Conditions{}.water_temperature;
        return decltype(value)(value.value() + 3.0);
    }
    /// Nothing of the records has changed, and nothing is left lying about.
    void expect_untouched() const {
        const auto database = test::open(folder_.records());
        SessionStore store(*database);
        EXPECT_EQ(must(store.load(new_)).session.title, "New");
        EXPECT_FALSE(store.load(lost_).has_value());
        EXPECT_THAT(QDir(folder_.path(u"."_qs)).entryList({u"*.part*"_qs}, QDir::Files), IsEmpty());
    }
    [[nodiscard]] ErrorCode refusal_of(const QString& path) const {
        const auto preview = preview_restore(folder_.records(), path);
        const auto restored = restore_copy(folder_.records(), path, that_morning + 1h);
        EXPECT_FALSE(preview.has_value());
        EXPECT_FALSE(restored.has_value());
        if (preview || restored) return ErrorCode{};
        EXPECT_EQ(preview.error().code, restored.error().code);
        EXPECT_EQ(preview.error().place, path.toStdString());
        expect_untouched();
        return restored.error().code;
    }
    [[nodiscard]] QString changed_copy(const QString& sql) const {
        QString path = folder_.path(u"foreign.sqlite"_qs);
        QFile::remove(path);
        EXPECT_TRUE(QFile::copy(copy_.path, path));
        const auto side = must(SideConnection::open(path, SideConnection::Access::read_write));
        must(execute(side->database(), sql));
        return path;
    }

    Folder folder_;
    SessionRow same_;
    SessionRow changed_;
    SessionRow lost_;
    SessionRow new_;
    RecordCopy copy_;
};

TEST_F(Restore, PreviewTellsWhatWouldChange) {
    const RestorePreview preview = must(preview_restore(folder_.records(), copy_.path));
    EXPECT_EQ(preview.schema_of_copy, newest_schema_version);
    EXPECT_FALSE(preview.unreadable_now.has_value());
    EXPECT_EQ(preview.sessions_same, 1);
    EXPECT_THAT(preview.sessions,
                ElementsAre(SessionChange{SessionPresence::only_now, "New", test::day(2026, 7, 4)},
                            SessionChange{SessionPresence::only_in_copy, "Removed since",
                                          test::day(2026, 7, 3)},
                            SessionChange{SessionPresence::different, "Changed",
                                          test::day(2026, 7, 2)}));
    const auto table = [&](const char* name) {
        const auto found =
            std::find_if(preview.tables.begin(), preview.tables.end(), [&](const TableChange& t) {
                return t.table == QString::fromLatin1(name);
            });
        EXPECT_NE(found, preview.tables.end()) << name;
        return *found;
    };
    EXPECT_EQ(table("sessions"), (TableChange{u"sessions"_qs, 3, 3, 1, 1, 0}));
    EXPECT_EQ(table("conditions"), (TableChange{u"conditions"_qs, 3, 3, 1, 1, 1}));
    // The register keeps guests of removed sessions.
    EXPECT_EQ(table("persons"), (TableChange{u"persons"_qs, 4, 3, 1, 0, 0}));
    EXPECT_EQ(table("logs"), (TableChange{u"logs"_qs, 0, 0, 0, 0, 0}));
    expect_untouched();
}

TEST_F(Restore, PreviewOfTheRecordsThemselvesFindsNoChange) {
    const RecordCopy fresh = must(make_copy(folder_.records(), CopyKind::by_hand, that_morning));
    const RestorePreview preview = must(preview_restore(folder_.records(), fresh.path));
    EXPECT_THAT(preview.sessions, IsEmpty());
    EXPECT_EQ(preview.sessions_same, 3);
    for (const TableChange& table : preview.tables) {
        EXPECT_EQ(table, (TableChange{table.table, table.rows_now, table.rows_now, 0, 0, 0}));
    }
}

TEST_F(Restore, PutsBackTheCopyAndKeepsWhatStoodThere) {
    const QByteArray copied = test::bytes_of(copy_.path);
    const auto before = must(restore_copy(folder_.records(), copy_.path, that_morning + 1h));
    EXPECT_EQ(test::bytes_of(copy_.path), copied) << "the copy itself stays as it is";
    {
        const auto database = test::open(folder_.records());
        SessionStore store(*database);
        EXPECT_EQ(must(store.load(same_)), titled("Same", 1));
        EXPECT_EQ(must(store.load(changed_)), titled("Changed", 2));
        EXPECT_EQ(must(store.load(lost_)), titled("Removed since", 3));
        EXPECT_THAT(must(store.list()), SizeIs(3));
    }
    const auto others = QFileDevice::ReadGroup | QFileDevice::ReadOther;
    EXPECT_FALSE(QFile::permissions(folder_.records()) & others);

    ASSERT_TRUE(before.has_value());
    EXPECT_EQ(before->kind, CopyKind::before_restore);
    EXPECT_THAT(list_copies(folder_.records()), ElementsAre(*before, copy_));
    // And back again.
    must(restore_copy(folder_.records(), before->path, that_morning + 2h));
    expect_untouched();
}

TEST_F(Restore, BringsAnOlderCopyToTheNewestSchema) {
    const QString old_path = folder_.path(u"old.sqlite"_qs);
    test::write_bytes(old_path, {});
    {
        const auto side =
            must(SideConnection::open(old_path, SideConnection::Access::read_write));
        std::vector<MigrationStep> first = must(built_in_steps());
        first.resize(1);
        must(migrate(side->database(), first));
        must(execute(side->database(),
                     u"INSERT INTO sessions VALUES (9, 'Old one', '2025-05-05', 0, 0)"_qs));
    }
    const QByteArray as_it_was = test::bytes_of(old_path);
    const RestorePreview preview = must(preview_restore(folder_.records(), old_path));
    EXPECT_EQ(preview.schema_of_copy, 1);
    EXPECT_THAT(preview.sessions, SizeIs(4));
    must(restore_copy(folder_.records(), old_path, that_morning + 1h));
    EXPECT_EQ(test::bytes_of(old_path), as_it_was);
    const auto database = test::open(folder_.records());
    EXPECT_EQ(database->schema_version(), newest_schema_version);
    EXPECT_EQ(must(SessionStore(*database).list()).front().title, "Old one");
    EXPECT_THAT(QDir(folder_.path(u"."_qs)).entryList({u"*.before-schema-*"_qs}), IsEmpty());
}

TEST_F(Restore, RefusesWhatIsNoCopyOfRecords) {
    EXPECT_EQ(refusal_of(folder_.path(u"nowhere.sqlite"_qs)), ErrorCode::file_unreadable);
    EXPECT_EQ(refusal_of(folder_.path(u"."_qs)), ErrorCode::file_unreadable);
    const QString letter = folder_.path(u"letter.sqlite"_qs);
    test::write_bytes(letter, QByteArray("Dear guests, ").repeated(500));
    EXPECT_EQ(refusal_of(letter), ErrorCode::database_damaged);
    test::write_bytes(letter, {});
    EXPECT_EQ(refusal_of(letter), ErrorCode::database_damaged);
    EXPECT_EQ(refusal_of(changed_copy(u"PRAGMA application_id = 1"_qs)),
              ErrorCode::not_our_records);
    EXPECT_EQ(refusal_of(changed_copy(u"PRAGMA user_version = 400"_qs)),
              ErrorCode::database_newer);
    EXPECT_EQ(refusal_of(changed_copy(u"DROP TABLE logs"_qs)), ErrorCode::database_damaged);
}

TEST_F(Restore, RefusesADamagedCopyWhereverItIsCut) {
    const QByteArray whole = test::bytes_of(copy_.path);
    const QString path = folder_.path(u"cut.sqlite"_qs);
    for (const qsizetype kept : {whole.size() - 4096, whole.size() / 2, qsizetype(4096),
                                 qsizetype(100), qsizetype(1)}) {
        test::write_bytes(path, whole.left(kept));
        const auto preview = preview_restore(folder_.records(), path);
        ASSERT_FALSE(preview.has_value()) << kept;
        EXPECT_EQ(preview.error().code, ErrorCode::database_damaged) << kept;
    }
    expect_untouched();
}

TEST_F(Restore, WaitsForNobodyWhoHasTheRecordsOpen) {
    const auto other = test::open(folder_.records());
    must(SettingStore(*other).put(u"units"_qs, u"metric"_qs));
    const auto restored = restore_copy(folder_.records(), copy_.path, that_morning + 1h);
    ASSERT_FALSE(restored.has_value());
    EXPECT_EQ(restored.error().code, ErrorCode::database_locked);
    // The other goes on as if nothing had been tried.
    must(SettingStore(*other).put(u"units"_qs, u"imperial"_qs));
    expect_untouched();
}

TEST_F(Restore, CanBeStoppedAtEveryPointAndChangesNothing) {
    int calls = 0;
    const auto count = [&](double) { return ++calls > 0; };
    must(preview_restore(folder_.records(), copy_.path, count));
    ASSERT_GT(calls, 0);
    for (int stop_at = 1; stop_at <= calls; ++stop_at) {
        int n = 0;
        const auto stopped = preview_restore(folder_.records(), copy_.path,
                                             [&](double) { return ++n < stop_at; });
        // How often a statement asks differs a little from time to time.
        if (n < stop_at) continue;
        ASSERT_FALSE(stopped.has_value()) << stop_at;
        EXPECT_EQ(stopped.error().code, ErrorCode::cancelled);
    }
    bool stopped_before_the_end = true;
    for (int stop_at = 1; stopped_before_the_end; ++stop_at) {
        int n = 0;
        double last = 0.0;
        const auto restored = restore_copy(folder_.records(), copy_.path, that_morning + 1h,
                                           [&](double share) {
                                               EXPECT_GE(share, last);
                                               last = share;
                                               return ++n < stop_at;
                                           });
        stopped_before_the_end = n >= stop_at;
        if (stopped_before_the_end) {
            ASSERT_FALSE(restored.has_value()) << stop_at;
            EXPECT_EQ(restored.error().code, ErrorCode::cancelled);
            expect_untouched();
        }
    }
}

TEST_F(Restore, ReplacesDamagedRecordsAndKeepsTheirBytes) {
    const QByteArray damaged = QByteArray("scribble ").repeated(2000);
    test::write_bytes(folder_.records(), damaged);
    const RestorePreview preview = must(preview_restore(folder_.records(), copy_.path));
    ASSERT_TRUE(preview.unreadable_now.has_value());
    EXPECT_EQ(preview.unreadable_now->code, ErrorCode::database_damaged);
    EXPECT_THAT(preview.sessions, SizeIs(3));

    const auto before = must(restore_copy(folder_.records(), copy_.path, that_morning + 1h));
    ASSERT_TRUE(before.has_value());
    EXPECT_EQ(before->kind, CopyKind::damaged);
    EXPECT_EQ(test::bytes_of(before->path), damaged);
    const auto database = test::open(folder_.records());
    EXPECT_EQ(must(SessionStore(*database).load(lost_)), titled("Removed since", 3));
}

TEST_F(Restore, NeverReplacesTheDatabaseOfAnotherProgram) {
    const QString foreign = changed_copy(u"PRAGMA application_id = 1"_qs);
    const QByteArray bytes = test::bytes_of(foreign);
    const auto restored = restore_copy(foreign, copy_.path, that_morning + 1h);
    ASSERT_FALSE(restored.has_value());
    EXPECT_EQ(restored.error().code, ErrorCode::not_our_records);
    EXPECT_EQ(test::bytes_of(foreign), bytes);
}

TEST_F(Restore, OldSideFilesOfDamagedRecordsAreNotPlayedIntoTheNew) {
    // A crash has left a side file full of changes, and the main file is damaged.
    QByteArray wal;
    {
        const auto database = test::open(folder_.records());
        must(SessionStore(*database).save(same_, titled("Played in", 1)));
        wal = test::bytes_of(folder_.records() + u"-wal"_qs);
    }
    ASSERT_GT(wal.size(), 4096);
    QByteArray bytes = test::bytes_of(folder_.records());
    bytes.replace(0, 16, QByteArray(16, '\0'));
    test::write_bytes(folder_.records(), bytes);
    test::write_bytes(folder_.records() + u"-wal"_qs, wal);
    const auto before = must(restore_copy(folder_.records(), copy_.path, that_morning + 1h));
    const auto database = test::open(folder_.records());
    EXPECT_EQ(must(SessionStore(*database).load(same_)), titled("Same", 1));
    ASSERT_TRUE(before.has_value());
}

TEST_F(Restore, MakesRecordsWhereThereAreNone) {
    const QString path = folder_.path(u"empty.sqlite"_qs);
    EXPECT_TRUE(must(preview_restore(path, copy_.path)).unreadable_now.has_value());
    EXPECT_FALSE(QFileInfo::exists(path)) << "a preview makes no records";
    EXPECT_FALSE(must(restore_copy(path, copy_.path, that_morning)).has_value());
    const auto database = test::open(path);
    EXPECT_THAT(must(SessionStore(*database).list()), SizeIs(3));
}

TEST_F(Restore, ANumberGivenAnewIsAnotherSession) {
    // Back to the copy, then another session takes the number that "New" had.
    const RecordCopy with_new = must(make_copy(folder_.records(), CopyKind::by_hand, that_morning));
    must(restore_copy(folder_.records(), copy_.path, that_morning + 1h));
    {
        const auto database = test::open(folder_.records());
        ASSERT_EQ(must(SessionStore(*database).insert(titled("Afternoon", 9))), new_);
    }
    const RestorePreview preview = must(preview_restore(folder_.records(), with_new.path));
    EXPECT_THAT(preview.sessions,
                testing::IsSupersetOf(
                    {SessionChange{SessionPresence::only_now, "Afternoon", test::day(2026, 7, 9)},
                     SessionChange{SessionPresence::only_in_copy, "New", test::day(2026, 7, 4)}}));
}

}  // namespace
}  // namespace leadline
