// SPDX-License-Identifier: GPL-3.0-or-later
// What the disk does to records that are open: full, gone, replaced, damaged.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <sys/mount.h>
#include <sys/resource.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <filesystem>

#include "core/records/backup.h"
#include "core/records/check.h"
#include "core/records/export.h"
#include "core/records/restore.h"
#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::Folder;
using test::must;
using testing::IsEmpty;
using testing::SizeIs;

SessionFile titled(const std::string& title) {
    SessionFile file = test::plain_session();
    file.session.title = title;
    return file;
}

/// A disk of its own in memory with little room.
class SmallDisk {
public:
    explicit SmallDisk(const QString& place) : place_(QFile::encodeName(place)) {
        QDir().mkpath(place);
        mounted_ = ::mount("tmpfs", place_.constData(), "tmpfs", 0, "size=1500k,mode=0700") == 0;
        if (!mounted_) reason_ = std::strerror(errno);
    }
    ~SmallDisk() {
        if (mounted_) ::umount2(place_.constData(), MNT_DETACH);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    [[nodiscard]] bool mounted() const { return mounted_; }
    [[nodiscard]] const std::string& reason() const { return reason_; }

private:
    QByteArray place_;
    bool mounted_ = false;
    std::string reason_;
};

class FullDisk : public testing::Test {
protected:
    FullDisk() : disk_(folder_.path(u"disk"_qs)) {}
    void SetUp() override {
        if (!disk_.mounted()) {
            GTEST_SKIP() << "no small disk can be mounted here: " << disk_.reason();
        }
    }
    [[nodiscard]] QString records() const { return folder_.path(u"disk/records.sqlite"_qs); }
    [[nodiscard]] QString ballast() const { return folder_.path(u"disk/ballast"_qs); }
    void fill_up() const {
        QFile file(ballast());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Unbuffered));
        const QByteArray block(4096, 'x');
        while (file.write(block) == block.size()) {
        }
    }

    Folder folder_;
    SmallDisk disk_;
};

TEST_F(FullDisk, LosesNothingAcknowledgedAndTakesTheNextEditWhenThereIsRoom) {
    const auto database = test::open(records());
    SessionStore store(*database);
    const SessionRow row = must(store.insert(titled("0")));
    fill_up();
    int saved = 0;
    Result<Done> done = Done{};
    // The side file has room for a few more before it must grow.
    for (int n = 1; n < 2000 && done; ++n) {
        done = store.save(row, titled(std::to_string(n)));
        if (done) saved = n;
    }
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::disk_full);
    EXPECT_EQ(done.error().place, records().toStdString());
    EXPECT_EQ(must(store.load(row)).session.title, std::to_string(saved));

    ASSERT_TRUE(QFile::remove(ballast()));
    must(store.save(row, titled("room again")));
    EXPECT_EQ(must(store.load(row)).session.title, "room again");
    EXPECT_EQ(must(check_records_file(records(), CheckDepth::thorough)), newest_schema_version);
}

TEST_F(FullDisk, ACopyThatDoesNotFitIsNone) {
    const auto database = test::open(records());
    must(SessionStore(*database).insert(test::full_session()));
    fill_up();
    const Result<RecordCopy> copy = make_copy(records(), CopyKind::by_hand, current_time());
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::disk_full);
    EXPECT_THAT(QDir(copies_folder(records())).entryList(QDir::Files), IsEmpty());
}

TEST_F(FullDisk, AnExportThatDoesNotFitLeavesNothing) {
    const auto database = test::open(records());
    must(SessionStore(*database).insert(test::full_session()));
    fill_up();
    const Result<Done> done = export_records(records(), folder_.path(u"disk/out"_qs));
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::disk_full);
    EXPECT_THAT(QDir(folder_.path(u"disk"_qs)).entryList({u"out*"_qs}), IsEmpty());
}

TEST_F(FullDisk, ARestoreThatDoesNotFitLeavesTheOldRecords) {
    QString copy_path;
    {
        const auto database = test::open(records());
        must(SessionStore(*database).insert(titled("old")));
        const RecordCopy copy = must(make_copy(records(), CopyKind::by_hand, current_time()));
        copy_path = folder_.path(u"copy.sqlite"_qs);
        ASSERT_TRUE(QFile::copy(copy.path, copy_path));
        must(remove_copy(copy));
        must(SessionStore(*database).insert(titled("new")));
    }
    fill_up();
    const auto restored = restore_copy(records(), copy_path, current_time());
    ASSERT_FALSE(restored.has_value());
    EXPECT_EQ(restored.error().code, ErrorCode::disk_full);
    ASSERT_TRUE(QFile::remove(ballast()));
    EXPECT_THAT(must(SessionStore(*test::open(records())).list()), SizeIs(2));
}

/// While it lives, no file of this process grows over a size, as on a disk with a quota.
class FileSizeLimit {
public:
    explicit FileSizeLimit(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN)) {
        if (::getrlimit(RLIMIT_FSIZE, &before_) != 0) std::abort();
        const rlimit limit{bytes, before_.rlim_max};
        if (::setrlimit(RLIMIT_FSIZE, &limit) != 0) std::abort();
    }
    ~FileSizeLimit() {
        if (::setrlimit(RLIMIT_FSIZE, &before_) != 0) std::abort();
        std::signal(SIGXFSZ, handler_);
    }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;

private:
    rlimit before_{};
    void (*handler_)(int);
};

TEST(LimitedFile, LosesNothingAcknowledgedAndTakesTheNextEditWhenThereIsRoom) {
    const Folder folder;
    const auto database = test::open(folder.records());
    SessionStore store(*database);
    const SessionRow row = must(store.insert(titled("0")));
    int saved = 0;
    Result<Done> done = Done{};
    {
        const FileSizeLimit limit(
            rlim_t(QFileInfo(folder.records() + u"-wal"_qs).size()) + 100000);
        for (int n = 1; n < 2000 && done; ++n) {
            done = store.save(row, titled(std::to_string(n)));
            if (done) saved = n;
        }
    }
    ASSERT_FALSE(done.has_value());
    // SQLite takes this for a fault of the disk, not for a full one.
    EXPECT_EQ(done.error().code, ErrorCode::database_failed);
    EXPECT_GT(saved, 0);
    EXPECT_EQ(must(store.load(row)).session.title, std::to_string(saved));
    must(store.save(row, titled("room again")));
    EXPECT_EQ(must(store.load(row)).session.title, "room again");
    EXPECT_EQ(must(check_records_file(folder.records(), CheckDepth::thorough)),
              newest_schema_version);
}

/// Records that are open while something happens to their file.
class OpenRecords : public testing::Test {
protected:
    OpenRecords() : database_(test::open(path())), row_(must(SessionStore(*database_).insert(titled("0")))) {}
    [[nodiscard]] QString place() const { return folder_.path(u"stick"_qs); }
    [[nodiscard]] QString path() const { return folder_.path(u"stick/records.sqlite"_qs); }
    [[nodiscard]] ErrorCode code_of_save(const std::string& title) {
        const Result<Done> done = SessionStore(*database_).save(row_, titled(title));
        return done ? ErrorCode{} : done.error().code;
    }
    void move(const QString& from, const QString& to) const {
        std::filesystem::rename(from.toStdString(), to.toStdString());
    }

    Folder folder_;
    std::unique_ptr<Database> database_;
    SessionRow row_;
};

TEST_F(OpenRecords, WhoseFolderGoesAwayTakeNoEditAndGoOnWhenItIsBack) {
    move(place(), folder_.path(u"elsewhere"_qs));
    EXPECT_EQ(code_of_save("into the void"), ErrorCode::database_gone);
    EXPECT_FALSE(SessionStore(*database_).insert(titled("x")).has_value());
    EXPECT_FALSE(SessionStore(*database_).remove(row_).has_value());
    EXPECT_FALSE(SettingStore(*database_).put(u"units"_qs, u"metric"_qs).has_value());
    move(folder_.path(u"elsewhere"_qs), place());
    must(SessionStore(*database_).save(row_, titled("back")));
    database_.reset();
    database_ = test::open(path());
    EXPECT_EQ(must(SessionStore(*database_).load(row_)).session.title, "back");
}

TEST_F(OpenRecords, WhoseFileIsDeletedTakeNoEdit) {
    ASSERT_TRUE(QDir(place()).removeRecursively());
    EXPECT_EQ(code_of_save("x"), ErrorCode::database_gone);
    EXPECT_FALSE(QFileInfo::exists(path()));
}

TEST_F(OpenRecords, WhoseFileIsReplacedTakeNoEdit) {
    const QString other = folder_.path(u"other.sqlite"_qs);
    test::open(other).reset();
    move(other, path());
    EXPECT_EQ(code_of_save("x"), ErrorCode::database_gone);
}

TEST_F(OpenRecords, ADamagedPageIsFoundByTheQuickCheckAndACopyHelps) {
    for (int n = 0; n < 30; ++n) must(SessionStore(*database_).insert(test::full_session()));
    const RecordCopy copy = must(make_copy(path(), CopyKind::by_hand, current_time()));
    database_.reset();
    const QByteArray whole = test::bytes_of(path());
    constexpr qsizetype page = 4096;
    int found = 0;
    int tried = 0;
    for (qsizetype number = 1; number < whole.size() / page; number += 9) {
        QByteArray bytes = whole;
        for (qsizetype at = 0; at < 64; ++at) {
            bytes[number * page + at] = char(~bytes[number * page + at]);
        }
        test::write_bytes(path(), bytes);
        const Result<int> checked = check_records_file(path(), CheckDepth::quick);
        ++tried;
        if (!checked) {
            EXPECT_EQ(checked.error().code, ErrorCode::database_damaged);
            EXPECT_EQ(checked.error().place, path().toStdString());
            ++found;
        }
    }
    EXPECT_GE(tried, 5);
    EXPECT_EQ(found, tried) << "a page whose head is overwritten";
    ASSERT_TRUE(must(restore_copy(path(), copy.path, current_time())).has_value());
    EXPECT_EQ(test::bytes_of(path()).size(), whole.size());
    EXPECT_EQ(must(check_records_file(path(), CheckDepth::thorough)), newest_schema_version);
    database_ = test::open(path());
    EXPECT_THAT(must(SessionStore(*database_).list()), SizeIs(31));
}

}  // namespace
}  // namespace leadline
