// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/export.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSqlDatabase>
#include <QFileInfo>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <random>

#include "core/records/compare.h"
#include "core/records/export_value.h"
#include "core/records/restore.h"
#include "core/records/schema.h"
#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::Folder;
using test::must;
using testing::HasSubstr;
using testing::IsEmpty;

/// Records with something in most tables, and awkward texts.
class Export : public testing::Test {
protected:
    Export() : database_(test::open(folder_.records())) {
        SessionStore store(*database_);
        must(store.insert(test::full_session()));
        SessionFile awkward = test::plain_session();
        awkward.session.title = "=1+1\t\"quoted\", ;\nsecond line \xf0\x9f\x90\x9f \x01";
        must(store.insert(awkward));
        must(store.remove(must(store.insert(test::plain_session()))));
        must(SettingStore(*database_).put(u"empty"_qs, u""_qs));
        must(SettingStore(*database_).put(u"minus"_qs, u"-5.25"_qs));
        must(SettingStore(*database_).put(u"formula"_qs, u"@sum(a1)"_qs));
        must(export_records(folder_.records(), out()));
    }
    [[nodiscard]] QString out() const { return folder_.path(u"out"_qs); }
    [[nodiscard]] QString json() const {
        return out() + u'/' + QString::fromLatin1(export_file_name);
    }
    [[nodiscard]] QString imported() const { return folder_.path(u"imported.sqlite"_qs); }
    /// What importing a changed text is refused with; nothing may be left of it.
    [[nodiscard]] Error refusal_of(const QByteArray& text) const {
        const QString path = folder_.path(u"changed.json"_qs);
        test::write_bytes(path, text);
        const Result<Done> done = import_records(path, imported());
        EXPECT_FALSE(done.has_value());
        EXPECT_FALSE(QFileInfo::exists(imported()));
        EXPECT_THAT(QDir(folder_.path(u"."_qs)).entryList({u"*.part*"_qs}, QDir::Files), IsEmpty());
        return done ? Error{} : done.error();
    }
    [[nodiscard]] Error refusal_of(const nlohmann::json& changed) const {
        return refusal_of(QByteArray::fromStdString(changed.dump()));
    }
    [[nodiscard]] nlohmann::json parsed() const {
        return nlohmann::json::parse(test::bytes_of(json()).toStdString());
    }

    Folder folder_;
    std::unique_ptr<Database> database_;
};

TEST_F(Export, ComesBackRowByRowAndByteForByte) {
    must(import_records(json(), imported()));
    const auto again = test::open(imported());
    const std::vector<TableChange> tables =
        must(compare_tables(database_->connection(), again->connection()));
    ASSERT_GT(tables.size(), 10U);
    qint64 rows = 0;
    for (const TableChange& table : tables) {
        EXPECT_EQ(table, (TableChange{table.table, table.rows_now, table.rows_now, 0, 0, 0}));
        rows += table.rows_now;
    }
    EXPECT_GT(rows, 50);
    EXPECT_EQ(must(SessionStore(*again).load(SessionRow{1})), test::full_session());
    EXPECT_EQ(must(SettingStore(*again).get(u"empty"_qs)), u""_qs);
    // The number of a removed session is not given a second time.
    EXPECT_EQ(must(SessionStore(*again).insert(test::plain_session())), SessionRow{4});

    const QString second = folder_.path(u"second"_qs);
    must(export_records(folder_.records(), second));
    for (const QString& name : QDir(out() + u"/csv"_qs).entryList(QDir::Files)) {
        EXPECT_EQ(test::bytes_of(out() + u"/csv/"_qs + name),
                  test::bytes_of(second + u"/csv/"_qs + name));
    }
}

TEST_F(Export, OfTheImportIsTheSameFile) {
    must(import_records(json(), imported()));
    must(export_records(imported(), folder_.path(u"second"_qs)));
    EXPECT_EQ(test::bytes_of(json()), test::bytes_of(folder_.path(u"second/leadline-records.json"_qs)));
}

TEST_F(Export, IsForItsOwnerAlone) {
    const auto others = QFileDevice::ReadGroup | QFileDevice::ReadOther | QFileDevice::ExeGroup |
                        QFileDevice::ExeOther;
    EXPECT_FALSE(QFile::permissions(out()) & others);
    EXPECT_FALSE(QFile::permissions(json()) & others);
    EXPECT_FALSE(QFile::permissions(out() + u"/csv/settings.csv"_qs) & others);
}

TEST_F(Export, HasATableForSpreadsheetsForEveryTable) {
    QStringList names;
    for (const QString& table : must(table_names(database_->connection()))) {
        names += QString(table + u".csv"_qs);
    }
    EXPECT_EQ(QDir(out() + u"/csv"_qs).entryList(QDir::Files, QDir::Name), names);
    EXPECT_EQ(test::bytes_of(out() + u"/csv/settings.csv"_qs),
              "\xef\xbb\xbfname,value\r\nempty,\r\nformula,'@sum(a1)\r\nminus,-5.25\r\n");
    EXPECT_THAT(test::bytes_of(out() + u"/csv/sessions.csv"_qs).toStdString(),
                HasSubstr("\"'=1+1\t\"\"quoted\"\", ;\nsecond line"));
}

TEST_F(Export, NeverWritesOverAFolder) {
    const QByteArray before = test::bytes_of(json());
    const Result<Done> again = export_records(folder_.records(), out());
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, ErrorCode::file_unwritable);
    EXPECT_EQ(test::bytes_of(json()), before);
}

TEST_F(Export, ThatIsStoppedOrFailsLeavesNothing) {
    const QString second = folder_.path(u"second"_qs);
    const Result<Done> stopped =
        export_records(folder_.records(), second, [](double share) { return share < 0.5; });
    ASSERT_FALSE(stopped.has_value());
    EXPECT_EQ(stopped.error().code, ErrorCode::cancelled);
    EXPECT_FALSE(export_records(folder_.records(), u"/dev/null/x"_qs).has_value());
    EXPECT_THAT(QDir(folder_.path(u"."_qs)).entryList({u"second*"_qs}), IsEmpty());
}

TEST_F(Export, IsNotImportedOverRecords) {
    const Result<Done> done = import_records(json(), folder_.records());
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::file_unwritable);
    EXPECT_EQ(must(SessionStore(*database_).list()).size(), 2U);
}

TEST_F(Export, CanBePutBackLikeACopy) {
    const RestorePreview preview = must(preview_restore(folder_.records(), json()));
    EXPECT_THAT(preview.sessions, IsEmpty());
    EXPECT_EQ(preview.sessions_same, 2);
    must(SessionStore(*database_).remove(SessionRow{1}));
    database_.reset();
    must(restore_copy(folder_.records(), json(), current_time()));
    database_ = test::open(folder_.records());
    EXPECT_EQ(must(SessionStore(*database_).load(SessionRow{1})), test::full_session());
}

TEST_F(Export, ACutFileIsRefusedWhole) {
    const QByteArray whole = test::bytes_of(json());
    std::mt19937 random(7);
    for (int i = 0; i < 40; ++i) {
        const auto length =
            std::uniform_int_distribution<qsizetype>(0, whole.size() - 4)(random);
        EXPECT_EQ(refusal_of(whole.left(length)).code, ErrorCode::not_json) << length;
    }
    // A number that no double holds.
    for (const char* number : {"1e400", "0.333e333333333333"}) {
        QByteArray changed = whole;
        const qsizetype at = changed.indexOf("\"version\"");
        ASSERT_GE(at, 0);
        changed.insert(changed.indexOf(':', at) + 1, QByteArray(number) + ",\"x\":");
        EXPECT_EQ(refusal_of(changed).code, ErrorCode::not_json) << number;
    }
}

TEST_F(Export, AFileThatContradictsTheSchemaIsRefusedWhole) {
    const nlohmann::json good = parsed();
    const auto with = [&](const auto& change) {
        nlohmann::json changed = good;
        change(changed);
        return refusal_of(changed).code;
    };
    const auto table = [](nlohmann::json& file, const char* name) -> nlohmann::json& {
        for (nlohmann::json& one : file["tables"]) {
            if (one["name"] == name) return one;
        }
        throw std::runtime_error(name);
    };
    using Json = nlohmann::json;
    EXPECT_EQ(with([](Json& f) { f = 3; }), ErrorCode::wrong_type);
    EXPECT_EQ(with([](Json& f) { f["format"] = "other"; }), ErrorCode::not_a_choice);
    EXPECT_EQ(with([](Json& f) { f["schema"] = 999; }), ErrorCode::unsupported_version);
    EXPECT_EQ(with([](Json& f) { f["schema"] = 0; }), ErrorCode::wrong_type);
    EXPECT_EQ(with([](Json& f) { f["version"] = "1"; }), ErrorCode::wrong_type);
    EXPECT_EQ(with([](Json& f) { f.erase("tables"); }), ErrorCode::missing_field);
    EXPECT_EQ(with([](Json& f) { f["tables"].erase(0); }), ErrorCode::missing_field);
    EXPECT_EQ(with([](Json& f) { f["tables"].push_back(f["tables"][0]); }),
              ErrorCode::duplicate_id);
    EXPECT_EQ(with([](Json& f) { f["tables"][0]["name"] = "sqlite_master"; }),
              ErrorCode::unknown_field);
    EXPECT_EQ(with([&](Json& f) { table(f, "settings")["columns"][0]["name"] = "x"; }),
              ErrorCode::unknown_field);
    EXPECT_EQ(with([&](Json& f) { table(f, "settings")["rows"][0].push_back(1); }),
              ErrorCode::wrong_type);
    EXPECT_EQ(with([&](Json& f) { table(f, "settings")["rows"][0][1] = Json::array(); }),
              ErrorCode::wrong_type);
    EXPECT_EQ(with([&](Json& f) { table(f, "settings")["rows"][0][1] = nullptr; }),
              ErrorCode::database_damaged);
    EXPECT_EQ(with([&](Json& f) { table(f, "persons")["rows"].clear(); }),
              ErrorCode::database_damaged)
        << "guests who refer to nobody";
    EXPECT_EQ(with([](Json& f) { f["sequences"]["sessions"] = "x"; }), ErrorCode::wrong_type);
}

TEST(ExportValue, EveryKindComesBackAsItWas) {
    using Limits = std::numeric_limits<double>;
    for (const QVariant& value :
         {QVariant(), QVariant(qlonglong(0)), QVariant(std::numeric_limits<qlonglong>::min()),
          QVariant(std::numeric_limits<qlonglong>::max()), QVariant(0.0), QVariant(-0.0),
          QVariant(3.0), QVariant(0.1 + 0.2), QVariant(Limits::denorm_min()),
          QVariant(Limits::max()), QVariant(Limits::infinity()), QVariant(-Limits::infinity()),
          QVariant(QString(u"\u00e9\U0001f41f"_qs + QChar(0))), QVariant(QStringLiteral("")),
          QVariant(QByteArray("\x00\xff sealed", 9)), QVariant(QByteArray(""))}) {
        const std::string written = json_of(value).dump();
        const QVariant again = must(value_of_json(nlohmann::json::parse(written), "x"));
        EXPECT_EQ(again, value) << written;
        EXPECT_EQ(again.typeId(), value.typeId()) << written;
        EXPECT_EQ(again.isNull(), value.isNull()) << written;
        if (value.typeId() == QMetaType::Double) {
            EXPECT_EQ(std::signbit(again.toDouble()), std::signbit(value.toDouble()));
        }
    }
}

TEST(ExportValue, NothingElseIsAValue) {
    for (const char* text : {"true", "[]", "{}", "18446744073709551615", "{\"base64\": \"a b\"}",
                             "{\"base64\": 3}", "{\"real\": \"nan\"}",
                             "{\"base64\": \"\", \"real\": \"inf\"}"}) {
        const Result<QVariant> value = value_of_json(nlohmann::json::parse(text), "here");
        ASSERT_FALSE(value.has_value()) << text;
        EXPECT_EQ(value.error().code, ErrorCode::wrong_type);
        EXPECT_EQ(value.error().place, "here");
    }
}

TEST(CsvCell, IsNeverAFormula) {
    const std::vector<std::pair<QString, QString>> cells{
        {u"plain"_qs, u"plain"_qs},
        {u"=1+1"_qs, u"'=1+1"_qs},
        {u"+cmd"_qs, u"'+cmd"_qs},
        {u"-1+1"_qs, u"'-1+1"_qs},
        {u"@x"_qs, u"'@x"_qs},
        {u"\tx"_qs, u"\"'\tx\""_qs},
        {u"\rx"_qs, u"\"'\rx\""_qs},
        {u" =1"_qs, u"' =1"_qs},
        {u"\uff1d1"_qs, u"'\uff1d1"_qs},
        {u"=a,\"b\""_qs, u"\"'=a,\"\"b\"\"\""_qs},
        {u"-5"_qs, u"-5"_qs},
        {u"+5.25e-3"_qs, u"+5.25e-3"_qs},
        {u"-inf"_qs, u"'-inf"_qs},
        {u"a = b"_qs, u"a = b"_qs},
        {u"say \"hi\""_qs, u"\"say \"\"hi\"\"\""_qs},
        {u"two\nlines"_qs, u"\"two\nlines\""_qs},
        {QString(), QString()},
    };
    for (const auto& [text, cell] : cells) {
        EXPECT_EQ(csv_cell(text).toStdString(), cell.toStdString());
    }
}

}  // namespace
}  // namespace leadline
