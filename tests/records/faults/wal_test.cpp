// SPDX-License-Identifier: GPL-3.0-or-later
// A cut of power leaves the side file at some length, or with rubbish at its end. Whatever was
// acknowledged by then is there; what comes after may be missing, but only from the end.

#include <gtest/gtest.h>

#include <QFile>
#include <QSqlDatabase>
#include <random>
#include <vector>

#include "core/records/check.h"
#include "core/records/session_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::Folder;
using test::must;

constexpr int edits = 40;

/// The files of records in the midst of work, and the length of the side file after each edit.
class CutPower : public testing::Test {
protected:
    CutPower() {
        const auto database = test::open(folder_.records());
        SessionStore store(*database);
        const SessionRow row = must(store.insert(titled(0)));
        test::run(*database, u"PRAGMA wal_checkpoint(TRUNCATE)"_qs);
        test::run(*database, u"PRAGMA wal_autocheckpoint = 0"_qs);
        for (int n = 1; n <= edits; ++n) {
            must(store.save(row, titled(n)));
            acknowledged_.push_back(QFile(folder_.records() + u"-wal"_qs).size());
        }
        main_ = test::bytes_of(folder_.records());
        wal_ = test::bytes_of(folder_.records() + u"-wal"_qs);
    }
    static SessionFile titled(int n) {
        SessionFile file = test::plain_session();
        file.session.title = std::to_string(n);
        file.session.site.name = "Site of " + file.session.title;
        return file;
    }
    /// The last edit found after opening the files with this side file.
    int found_with(const QByteArray& wal) {
        const Folder folder;
        test::write_bytes(folder.records(), main_);
        test::write_bytes(folder.records() + u"-wal"_qs, wal);
        const auto database = test::open(folder.records());
        EXPECT_EQ(must(check_records(database->connection(), CheckDepth::thorough)),
                  newest_schema_version);
        const SessionFile found = must(SessionStore(*database).load(SessionRow{1}));
        const int n = std::stoi(found.session.title);
        // The whole edit, not half of it.
        EXPECT_EQ(found, titled(n));
        return n;
    }
    [[nodiscard]] int acknowledged_by(qsizetype length) const {
        int n = 0;
        while (n < edits && acknowledged_[std::size_t(n)] <= length) ++n;
        return n;
    }

    Folder folder_;
    std::vector<qint64> acknowledged_;
    QByteArray main_;
    QByteArray wal_;
    std::mt19937 random_{20260805};
};

TEST_F(CutPower, TheWholeSideFileHoldsEveryEdit) {
    ASSERT_EQ(acknowledged_.back(), wal_.size());
    EXPECT_EQ(found_with(wal_), edits);
    EXPECT_EQ(found_with({}), 0);
}

TEST_F(CutPower, AtAnyLengthWhatWasAcknowledgedIsThere) {
    std::uniform_int_distribution<qsizetype> any(0, wal_.size());
    for (int i = 0; i < 60; ++i) {
        const qsizetype length = any(random_);
        EXPECT_EQ(found_with(wal_.left(length)), acknowledged_by(length)) << length;
    }
}

TEST_F(CutPower, JustBeforeAndAtTheEndOfAnEdit) {
    for (const int n : {1, 2, edits / 2, edits}) {
        const qsizetype length = acknowledged_[std::size_t(n - 1)];
        EXPECT_EQ(found_with(wal_.left(length - 1)), n - 1);
        EXPECT_EQ(found_with(wal_.left(length)), n);
    }
}

TEST_F(CutPower, RubbishAfterTheCutIsNotTakenForAnEdit) {
    std::uniform_int_distribution<qsizetype> any(32, wal_.size());
    std::uniform_int_distribution<int> byte(0, 255);
    for (int i = 0; i < 30; ++i) {
        const qsizetype length = any(random_);
        QByteArray torn = wal_;
        for (qsizetype at = length; at < torn.size(); ++at) {
            torn[at] = i % 2 == 0 ? '\0' : char(byte(random_));
        }
        EXPECT_EQ(found_with(torn), acknowledged_by(length)) << length;
    }
}

}  // namespace
}  // namespace leadline
