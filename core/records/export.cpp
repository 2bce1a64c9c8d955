// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/export.h"

#include <QByteArray>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QMetaType>
#include <QRegularExpression>
#include <QUuid>
#include <QVariant>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <vector>

#include "core/records/export_value.h"
#include "core/records/file_care.h"
#include "core/records/migrations.h"
#include "core/records/schema.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

using Json = nlohmann::ordered_json;

/// A text file that only its owner may read, written bit by bit.
class PrivateTextFile {
public:
    Result<Done> open(const QString& path) {
        file_.setFileName(path);
        const bool opened = file_.open(QIODevice::WriteOnly | QIODevice::NewOnly,
                                       QFileDevice::ReadOwner | QFileDevice::WriteOwner);
        return opened ? Result<Done>(Done{}) : Result<Done>(failure());
    }
    Result<Done> write(const QByteArray& bytes) {
        if (file_.write(bytes) != bytes.size()) return failure();
        return Done{};
    }
    Result<Done> write(const std::string& text) { return write(QByteArray::fromStdString(text)); }
    Result<Done> close() {
        if (!file_.flush()) return failure();
        file_.close();
        return flush_to_disk(file_.fileName());
    }

private:
    [[nodiscard]] Error failure() const {
        const bool full = file_.error() == QFileDevice::ResourceError;
        return Error{full ? ErrorCode::disk_full : ErrorCode::file_unwritable,
                     file_.fileName().toStdString(), file_.errorString().toStdString(), {}};
    }
    QFile file_;
};

QString cell_of(const QVariant& value) {
    if (value.isNull()) return {};
    switch (value.typeId()) {
        case QMetaType::LongLong: return QString::number(value.toLongLong());
        case QMetaType::Double:
            return QString::number(value.toDouble(), 'g', QLocale::FloatingPointShortest);
        case QMetaType::QByteArray:
            return csv_cell(QString::fromLatin1(value.toByteArray().toBase64()));
        default: return csv_cell(value.toString());
    }
}

/// What is written of one table, and how far the whole has come.
struct TableJob {
    QString name;
    std::vector<TableColumn> columns;
    double share = 0.0;
};

Result<Done> asked(const GoOn& go_on, const TableJob& table) {
    if (!go_on || go_on(table.share)) return Done{};
    return Error{ErrorCode::cancelled, table.name.toStdString(), {}, {}};
}

Json head_of(const TableJob& table) {
    Json columns = Json::array();
    for (const TableColumn& column : table.columns) {
        columns.push_back(
            {{"name", column.name.toStdString()}, {"type", column.type.toStdString()}});
    }
    return columns;
}

QString header_line(const TableJob& table) {
    QStringList cells;
    for (const TableColumn& column : table.columns) cells += csv_cell(column.name);
    return cells.join(u',') + u"\r\n"_qs;
}

Result<Done> write_rows(const QSqlDatabase& database, const TableJob& table,
                        PrivateTextFile& json, PrivateTextFile& csv, const GoOn& go_on) {
    const QString sql = u"SELECT %1 FROM %2 ORDER BY %3"_qs.arg(
        name_list(table.columns), quoted(table.name), name_list(key_of(table.columns)));
    bool first = true;
    return Statement(database, sql).each([&](Row& row) -> Result<Done> {
        Json values = Json::array();
        QStringList cells;
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            const QVariant value = row.value();
            values.push_back(json_of(value));
            cells += cell_of(value);
        }
        const std::string before = std::exchange(first, false) ? "\n    " : ",\n    ";
        return in_turn(
            [&] { return asked(go_on, table); },
            [&] { return json.write(before + values.dump()); },
            [&] { return csv.write(QString(cells.join(u',') + u"\r\n"_qs).toUtf8()); });
    });
}

Result<Done> write_table(const QSqlDatabase& database, const TableJob& table,
                         PrivateTextFile& json, const QString& csv_path, const GoOn& go_on) {
    const std::string head = "  {\"name\": " + Json(table.name.toStdString()).dump() +
                             ", \"columns\": " + head_of(table).dump() + ", \"rows\": [";
    PrivateTextFile csv;
    return in_turn([&] { return csv.open(csv_path); },
                   // The mark by which spreadsheets know UTF-8.
                   [&] { return csv.write(QByteArray("\xef\xbb\xbf")); },
                   [&] { return csv.write(header_line(table).toUtf8()); },
                   [&] { return json.write(head); },
                   [&] { return write_rows(database, table, json, csv, go_on); },
                   [&] { return json.write(std::string("]}")); }, [&] { return csv.close(); });
}

/// The numbers that were given last, so that none is given a second time.
Result<Json> sequences_of(const QSqlDatabase& database) {
    Json sequences = Json::object();
    const Result<Done> read =
        Statement(database, u"SELECT name, seq FROM sqlite_sequence ORDER BY name"_qs)
            .each([&](Row& row) -> Result<Done> {
                const std::string name = row.text();
                sequences[name] = row.number();
                return Done{};
            });
    if (!read) return read.error();
    return sequences;
}

Result<Done> write_all(const QSqlDatabase& database, const QDir& folder, const GoOn& go_on) {
    const Result<int> version = stored_schema_version(database);
    if (!version) return version.error();
    const Result<QStringList> names = table_names(database);
    if (!names) return names.error();
    const Result<Json> sequences = sequences_of(database);
    if (!sequences) return sequences.error();
    PrivateTextFile json;
    Result<Done> written = in_turn(
        [&] { return json.open(folder.filePath(QString::fromLatin1(export_file_name))); },
        [&] {
            return json.write("{\"format\": \"leadline records\", \"version\": 1, \"schema\": " +
                              std::to_string(*version) + ",\n \"sequences\": " +
                              sequences->dump() + ",\n \"tables\": [\n");
        });
    qsizetype done = 0;
    for (const QString& name : *names) {
        if (!written) return written;
        const Result<std::vector<TableColumn>> columns = columns_of(database, name);
        if (!columns) return columns.error();
        const TableJob table{name, *columns, double(done) / double(names->size())};
        written = in_turn(
            [&] { return json.write(std::string(done == 0 ? "" : ",\n")); },
            [&] {
                return write_table(database, table, json,
                                   folder.filePath(u"csv/"_qs + name + u".csv"_qs), go_on);
            });
        ++done;
    }
    return in_turn([&] { return written; }, [&] { return json.write(std::string("\n]}\n")); },
                   [&] { return json.close(); });
}

}  // namespace

Result<Done> export_records(const QString& database_path, const QString& folder,
                            const GoOn& go_on) {
    if (QFileInfo::exists(folder)) {
        return Error{ErrorCode::file_unwritable, folder.toStdString(),
                     std::make_error_code(std::errc::file_exists).message(), {}};
    }
    const auto connection =
        SideConnection::open(database_path, SideConnection::Access::read_only);
    if (!connection) return connection.error();
    const QSqlDatabase database = (*connection)->database();
    const Result<Transaction> state = Transaction::begin_reading(database);
    if (!state) return state.error();
    const QString part = folder + u'.' + QUuid::createUuid().toString(QUuid::WithoutBraces) +
                         u".part"_qs;
    const Result<Done> written =
        in_turn([&] { return make_private_folder(part); },
                [&] { return make_private_folder(part + u"/csv"_qs); },
                [&] { return write_all(database, QDir(part), go_on); },
                [&] { return flush_to_disk(part + u"/csv"_qs); },
                [&] { return put_in_place(part, folder); });
    if (!written) QDir(part).removeRecursively();
    return written;
}

QString csv_cell(const QString& text) {
    static const QRegularExpression number(
        QRegularExpression::anchoredPattern(u"[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?"_qs));
    // The wide forms of the signs start a formula too in some spreadsheets.
    static const QString starters = u"=+-@\t\r\n\uff1d\uff0b\uff0d\uff20"_qs;
    QString cell = text;
    qsizetype first = 0;
    while (first < text.size() && text[first] == u' ') ++first;
    const bool formula = first < text.size() && starters.contains(text[first]);
    if (formula && !number.match(text).hasMatch()) cell.prepend(u'\'');
    static const QRegularExpression needs_quotes(u"[\",\r\n\t;]|^ | $"_qs);
    if (!cell.contains(needs_quotes)) return cell;
    return u'"' + cell.replace(u'"', u"\"\""_qs) + u'"';
}

}  // namespace leadline
