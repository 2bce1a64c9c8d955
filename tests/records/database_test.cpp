// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>
#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <stdexcept>

#include "core/records/database.h"
#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::Folder;
using test::must;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

/// While it lives, files are opened as a user who is not the superuser, for whom a folder's
/// permissions would mean nothing.
class PlainUser {
public:
    PlainUser() : superuser_(::geteuid() == 0) {
        if (superuser_ && ::seteuid(65534) != 0) throw std::runtime_error("seteuid");
    }
    ~PlainUser() {
        if (superuser_ && ::seteuid(0) != 0) std::abort();
    }
    PlainUser(const PlainUser&) = delete;
    PlainUser& operator=(const PlainUser&) = delete;

private:
    bool superuser_;
};

/// Gives a file or folder other permissions while it lives.
class Mode {
public:
    Mode(const QString& path, mode_t mode) : path_(QFile::encodeName(path)) {
        struct stat status {};
        if (::stat(path_.constData(), &status) != 0 || ::chmod(path_.constData(), mode) != 0) {
            throw std::runtime_error("chmod");
        }
        before_ = status.st_mode & 07777U;
    }
    ~Mode() {
        if (::chmod(path_.constData(), before_) != 0) std::abort();
    }
    Mode(const Mode&) = delete;
    Mode& operator=(const Mode&) = delete;

private:
    QByteArray path_;
    mode_t before_ = 0;
};

TEST(Database, MakesTheFolderAndTheFile) {
    const Folder folder;
    const QString path = folder.path(u"new/deeper/records.sqlite"_qs);
    const auto database = test::open(path);
    EXPECT_EQ(database->path(), path);
    EXPECT_EQ(database->schema_version(), newest_schema_version);
    EXPECT_TRUE(QFileInfo::exists(path));
}

TEST(Database, IsReadableByItsOwnerAlone) {
    const Folder folder;
    const auto database = test::open(folder.records());
    must(SettingStore(*database).put(u"units"_qs, u"metric"_qs));
    const auto others = QFileDevice::ReadGroup | QFileDevice::WriteGroup | QFileDevice::ReadOther |
                        QFileDevice::WriteOther;
    EXPECT_FALSE(QFile::permissions(folder.records()) & others);
    EXPECT_FALSE(QFile::permissions(folder.records() + u"-wal"_qs) & others);
}

TEST(Database, KeepsItsContentWhenOpenedAgain) {
    const Folder folder;
    SessionRow row;
    {
        const auto database = test::open(folder.records());
        row = must(SessionStore(*database).insert(test::full_session()));
    }
    const auto database = test::open(folder.records());
    EXPECT_EQ(database->schema_version(), newest_schema_version);
    EXPECT_EQ(must(SessionStore(*database).load(row)), test::full_session());
}

TEST(Database, InMemoryLeavesNoFile) {
    const auto database = test::open(u":memory:"_qs);
    EXPECT_EQ(database->schema_version(), newest_schema_version);
    must(SettingStore(*database).put(u"units"_qs, u"metric"_qs));
    EXPECT_FALSE(QFileInfo::exists(u":memory:"_qs));
}

TEST(Database, InMemoryOnesAreApart) {
    const auto one = test::open(u":memory:"_qs);
    const auto other = test::open(u":memory:"_qs);
    must(SettingStore(*one).put(u"units"_qs, u"metric"_qs));
    EXPECT_EQ(must(SettingStore(*other).get(u"units"_qs)), std::nullopt);
}

TEST(Database, ClosesItsConnection) {
    const qsizetype before = QSqlDatabase::connectionNames().size();
    {
        const auto database = test::open(u":memory:"_qs);
        EXPECT_EQ(QSqlDatabase::connectionNames().size(), before + 1);
    }
    EXPECT_EQ(QSqlDatabase::connectionNames().size(), before);
    EXPECT_FALSE(Database::open(u"/dev/null/records.sqlite"_qs).has_value());
    EXPECT_EQ(QSqlDatabase::connectionNames().size(), before);
}

TEST(Database, EnforcesForeignKeys) {
    const auto database = test::open(u":memory:"_qs);
    EXPECT_EQ(test::number(*database, u"PRAGMA foreign_keys"_qs), 1);
    const Result<Done> orphan = execute(
        database->connection(),
        u"INSERT INTO profile_points VALUES (77, 0, 0.0, 0.0, 'surface')"_qs);
    ASSERT_FALSE(orphan.has_value());
    EXPECT_EQ(orphan.error().code, ErrorCode::database_failed);
    EXPECT_THAT(orphan.error().given, HasSubstr("FOREIGN KEY"));
}

TEST(Database, WaitsForTheDiskAtEveryCommit) {
    const Folder folder;
    const auto database = test::open(folder.records());
    const auto mode = must(Statement(database->connection(), u"PRAGMA journal_mode"_qs)
                               .first([](Row& row) { return row.text(); }));
    EXPECT_EQ(mode, "wal");
    constexpr qint64 full = 2;
    EXPECT_EQ(test::number(*database, u"PRAGMA synchronous"_qs), full);
    EXPECT_EQ(test::number(*database, u"PRAGMA secure_delete"_qs), 1);
    EXPECT_EQ(test::number(*database, u"PRAGMA busy_timeout"_qs), 2000);
}

TEST(Database, WipesWhatIsRemoved) {
    const Folder folder;
    {
        const auto database = test::open(folder.records());
        SessionFile file = test::full_session();
        file.session.guests.front().note = "told in confidence";
        const SessionRow row = must(SessionStore(*database).insert(file));
        test::run(*database, u"PRAGMA wal_checkpoint(TRUNCATE)"_qs);
        ASSERT_TRUE(test::bytes_of(folder.records()).contains("told in confidence"));
        must(SessionStore(*database).remove(row));
    }
    EXPECT_FALSE(test::bytes_of(folder.records()).contains("told in confidence"));
}

TEST(Database, RefusesAFileThatIsNoDatabase) {
    const Folder folder;
    const QByteArray letter = QByteArray("Dear guests, ").repeated(500);
    test::write_bytes(folder.records(), letter);
    const auto opened = Database::open(folder.records());
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, ErrorCode::database_damaged);
    EXPECT_EQ(opened.error().place, folder.records().toStdString());
    EXPECT_THAT(opened.error().given, Not(IsEmpty()));
    EXPECT_EQ(test::bytes_of(folder.records()), letter);
}

TEST(Database, NamesAFileWhosePagesAreDamaged) {
    const Folder folder;
    SessionRow row;
    {
        const auto database = test::open(folder.records());
        row = must(SessionStore(*database).insert(test::full_session()));
    }
    QByteArray bytes = test::bytes_of(folder.records());
    constexpr qsizetype page = 4096;
    ASSERT_GT(bytes.size(), 4 * page);
    bytes.replace(page, bytes.size() - page, QByteArray(bytes.size() - page, '\x5a'));
    test::write_bytes(folder.records(), bytes);
    const auto opened = Database::open(folder.records());
    const Error error =
        opened ? SessionStore(**opened).load(row).error() : opened.error();
    EXPECT_EQ(error.code, ErrorCode::database_damaged);
    EXPECT_EQ(error.place, folder.records().toStdString());
}

TEST(Database, RefusesTheDatabaseOfAnotherProgram) {
    const Folder folder;
    {
        QSqlDatabase foreign = QSqlDatabase::addDatabase(u"QSQLITE"_qs, u"foreign"_qs);
        foreign.setDatabaseName(folder.records());
        ASSERT_TRUE(foreign.open());
        must(execute(foreign, u"CREATE TABLE invoices (number INTEGER)"_qs));
        foreign.close();
    }
    QSqlDatabase::removeDatabase(u"foreign"_qs);
    const QByteArray before = test::bytes_of(folder.records());
    const auto opened = Database::open(folder.records());
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, ErrorCode::not_our_records);
    EXPECT_EQ(test::bytes_of(folder.records()), before);
}

TEST(Database, LeavesANewerOneAlone) {
    const Folder folder;
    {
        const auto database = test::open(folder.records());
        test::run(*database, u"PRAGMA user_version = 41"_qs);
    }
    const QByteArray before = test::bytes_of(folder.records());
    const auto opened = Database::open(folder.records());
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error(), (Error{ErrorCode::database_newer, folder.records().toStdString(),
                                     "41", std::to_string(newest_schema_version)}));
    EXPECT_EQ(test::bytes_of(folder.records()), before);
}

TEST(Database, RefusesAFolderInPlaceOfTheFile) {
    const Folder folder;
    const auto opened = Database::open(folder.path(u"."_qs));
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, ErrorCode::database_failed);
}

TEST(Database, RefusesAFolderThatCannotBeMade) {
    const Folder folder;
    test::write_bytes(folder.path(u"file"_qs), "no folder");
    const QString path = folder.path(u"file/records.sqlite"_qs);
    const auto opened = Database::open(path);
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, ErrorCode::database_failed);
    EXPECT_EQ(opened.error().place, path.toStdString());
    EXPECT_THAT(opened.error().given, Not(IsEmpty()));
}

TEST(Database, RefusesAReadOnlyFolder) {
    const Folder folder;
    const Mode folder_mode(folder.path(u"."_qs), 0555);
    const PlainUser user;
    const auto opened = Database::open(folder.records());
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, ErrorCode::database_failed);
    EXPECT_EQ(opened.error().place, folder.records().toStdString());
    EXPECT_THAT(opened.error().given, Not(IsEmpty()));
}

TEST(Database, RefusesAFileThatMayNotBeWritten) {
    const Folder folder;
    test::open(folder.records()).reset();
    const Mode file_mode(folder.records(), 0444);
    const Mode folder_mode(folder.path(u"."_qs), 0555);
    const PlainUser user;
    const auto opened = Database::open(folder.records());
    const Result<Done> put =
        opened ? SettingStore(**opened).put(u"units"_qs, u"metric"_qs) : opened.error();
    ASSERT_FALSE(put.has_value());
    EXPECT_EQ(put.error().code, ErrorCode::database_read_only);
    EXPECT_EQ(put.error().place, folder.records().toStdString());
}

TEST(Database, DefaultPathLiesInTheDataFolder) {
    const Folder folder;
    const QByteArray before = qgetenv("XDG_DATA_HOME");
    qputenv("XDG_DATA_HOME", QFile::encodeName(folder.path(u"data"_qs)));
    EXPECT_EQ(default_database_path(), folder.path(u"data/leadline/records.sqlite"_qs));
    qputenv("XDG_DATA_HOME", before);
}

}  // namespace
}  // namespace leadline
