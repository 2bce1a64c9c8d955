// SPDX-License-Identifier: GPL-3.0-or-later
// Copies and exports with random damage: each is refused with a reason, or is whole records. The
// number of damaged files of each kind is LEADLINE_MUTATIONS, or a few where that is not set.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <random>

#include "core/records/backup.h"
#include "core/records/check.h"
#include "core/records/export.h"
#include "core/records/restore.h"
#include "core/records/session_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::must;

int mutations(int without_setting) {
    bool is_set = false;
    const int wanted = qEnvironmentVariableIntValue("LEADLINE_MUTATIONS", &is_set);
    return is_set ? wanted : without_setting;
}

/// One to eight places changed: a byte, a run of one byte, a piece taken out or doubled, the end cut.
QByteArray damaged(QByteArray bytes, std::mt19937& random) {
    const auto below = [&](qsizetype end) {
        return end > 0 ? std::uniform_int_distribution<qsizetype>(0, end - 1)(random) : 0;
    };
    const qsizetype times = 1 + below(8);
    for (qsizetype i = 0; i < times && !bytes.isEmpty(); ++i) {
        const qsizetype at = below(bytes.size());
        const qsizetype length = std::min<qsizetype>(1 + below(64), bytes.size() - at);
        const char value = static_cast<char>(below(256));
        switch (below(5)) {
            case 0: bytes[at] = value; break;
            case 1: bytes.replace(at, length, QByteArray(length, value)); break;
            case 2: bytes.remove(at, length); break;
            case 3: bytes.insert(at, bytes.mid(at, length)); break;
            default: bytes.truncate(below(16) == 0 ? at : bytes.size()); break;
        }
    }
    return bytes;
}

class MutatedCopies : public testing::Test {
protected:
    MutatedCopies() {
        const auto database = test::open(folder_.records());
        must(SessionStore(*database).insert(test::full_session()));
        must(SessionStore(*database).insert(test::plain_session()));
        must(export_records(folder_.records(), folder_.path(u"out"_qs)));
        const auto copied = must(make_copy(folder_.records(), CopyKind::by_hand,
                                           std::chrono::sys_days(std::chrono::year(2026) / 8 / 5)));
        copy_ = copied.path;
    }
    [[nodiscard]] QString json() const {
        return folder_.path(u"out"_qs) + u'/' + QString::fromLatin1(export_file_name);
    }

    test::Folder folder_;
    QString copy_;
    std::mt19937 random_{20260705};
};

TEST_F(MutatedCopies, AnExportIsRefusedOrWhole) {
    const QByteArray whole = test::bytes_of(json());
    const QString changed = folder_.path(u"changed.json"_qs);
    const QString made = folder_.path(u"made.sqlite"_qs);
    int refused = 0;
    const int all = mutations(60);
    for (int i = 0; i < all; ++i) {
        test::write_bytes(changed, damaged(whole, random_));
        const Result<Done> done = import_records(changed, made);
        if (done) {
            EXPECT_TRUE(check_records_file(made, CheckDepth::thorough).has_value()) << i;
        } else {
            ++refused;
            EXPECT_FALSE(QFileInfo::exists(made)) << i;
        }
        QFile::remove(made);
    }
    EXPECT_GT(refused, all / 2) << "hardly any damage was done";
}

TEST_F(MutatedCopies, ACopyIsRefusedOrCanBePreviewed) {
    const QByteArray whole = test::bytes_of(copy_);
    const QByteArray before = test::bytes_of(folder_.records());
    const QString changed = folder_.path(u"changed.sqlite"_qs);
    const int all = mutations(60);
    int refused = 0;
    for (int i = 0; i < all; ++i) {
        test::write_bytes(changed, damaged(whole, random_));
        if (!preview_restore(folder_.records(), changed)) ++refused;
    }
    EXPECT_GT(refused, all / 4) << "hardly any damage was done";
    EXPECT_EQ(test::bytes_of(folder_.records()), before) << "the records were touched";
}

}  // namespace
}  // namespace leadline
