// SPDX-License-Identifier: GPL-3.0-or-later
#include <QByteArray>
#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <QVariant>
#include <nlohmann/json.hpp>
#include <sqlite3.h>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/records/check.h"
#include "core/records/export.h"
#include "core/records/export_value.h"
#include "core/records/file_care.h"
#include "core/records/migrations.h"
#include "core/records/schema.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

using nlohmann::json;

/// An export of the largest records that can be thought of has a few hundred MB.
constexpr qint64 largest_export = qint64(1) << 30U;

Error wrong_type(const std::string& place, const json& given, const char* wanted) {
    return Error{ErrorCode::wrong_type, place, given.type_name(), wanted};
}

Result<json> read_json(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return Error{ErrorCode::file_unreadable, path.toStdString(),
                     file.errorString().toStdString(), {}};
    }
    if (file.size() > largest_export) {
        return Error{ErrorCode::file_too_large, path.toStdString(), std::to_string(file.size()),
                     std::to_string(largest_export)};
    }
    const QByteArray bytes = file.readAll();
    try {
        return json::parse(bytes.begin(), bytes.end());
    } catch (const json::parse_error& error) {
        return Error{ErrorCode::not_json, "byte " + std::to_string(error.byte), error.what(), {}};
    } catch (const json::exception& error) {
        // A number that no double holds is no parse_error.
        return Error{ErrorCode::not_json, path.toStdString(), error.what(), {}};
    }
}

/// A member of an object that has to be there.
Result<const json*> member(const json& object, const char* name, const std::string& place) {
    if (!object.is_object()) return wrong_type(place, object, "object");
    const auto found = object.find(name);
    if (found == object.end()) return Error{ErrorCode::missing_field, place, name, {}};
    return &*found;
}

Result<std::vector<TableColumn>> columns_in(const json& table, const std::string& place) {
    const Result<const json*> columns = member(table, "columns", place);
    if (!columns) return columns.error();
    if (!(*columns)->is_array()) return wrong_type(place + "/columns", **columns, "array");
    std::vector<TableColumn> found;
    for (const json& column : **columns) {
        for (const char* field : {"name", "type"}) {
            const Result<const json*> text = member(column, field, place + "/columns");
            if (!text) return text.error();
            if (!(*text)->is_string()) return wrong_type(place + "/columns", **text, "string");
        }
        found.push_back({QString::fromStdString(column["name"].get<std::string>()),
                         QString::fromStdString(column["type"].get<std::string>()), 0});
    }
    return found;
}

/// Whether an export's columns are those of the table; the keys it does not tell.
bool same_columns(std::vector<TableColumn> ours, const std::vector<TableColumn>& theirs) {
    for (TableColumn& column : ours) column.key = 0;
    return ours == theirs;
}

Result<Done> insert_rows(const QSqlDatabase& database, const QString& table,
                         const std::vector<TableColumn>& columns, const json& rows,
                         const std::string& place, const GoOn& go_on) {
    QStringList marks;
    for (std::size_t i = 0; i < columns.size(); ++i) marks += u"?"_qs;
    Statement insert(database, u"INSERT INTO %1 (%2) VALUES (%3)"_qs.arg(
                                   quoted(table), name_list(columns), marks.join(u", "_qs)));
    std::size_t number = 0;
    for (const json& row : rows) {
        const std::string row_place = place + "/rows/" + std::to_string(number++);
        if (go_on && !go_on(0.0)) return Error{ErrorCode::cancelled, row_place, {}, {}};
        if (!row.is_array() || row.size() != columns.size()) {
            return wrong_type(row_place, row, "array with a value for every column");
        }
        QVariantList values;
        for (const json& cell : row) {
            Result<QVariant> value = value_of_json(cell, row_place);
            if (!value) return value.error();
            values += std::move(*value);
        }
        const Result<Done> inserted = insert.run(values);
        if (!inserted) {
            Error error = inserted.error();
            if (error.code != ErrorCode::disk_full) {
                error = Error{ErrorCode::database_damaged, row_place, error.given, {}};
            }
            return error;
        }
    }
    return Done{};
}

Result<Done> fill_table(const QSqlDatabase& database, const json& table, std::set<QString>& seen,
                        const GoOn& go_on) {
    const Result<const json*> name_value = member(table, "name", "/tables");
    if (!name_value) return name_value.error();
    if (!(*name_value)->is_string()) return wrong_type("/tables", **name_value, "string");
    const std::string name = (*name_value)->get<std::string>();
    const std::string place = "/tables/" + name;
    const QString table_name = QString::fromStdString(name);
    if (!seen.insert(table_name).second) return Error{ErrorCode::duplicate_id, place, name, {}};
    const Result<std::vector<TableColumn>> ours = columns_of(database, table_name);
    if (!ours) return ours.error();
    const Result<std::vector<TableColumn>> theirs = columns_in(table, place);
    if (!theirs) return theirs.error();
    if (ours->empty() || !same_columns(*ours, *theirs)) {
        return Error{ErrorCode::unknown_field, place, name_list(*theirs).toStdString(),
                     name_list(*ours).toStdString()};
    }
    const Result<const json*> rows = member(table, "rows", place);
    if (!rows) return rows.error();
    if (!(*rows)->is_array()) return wrong_type(place + "/rows", **rows, "array");
    return insert_rows(database, table_name, *ours, **rows, place, go_on);
}

Result<Done> fill_sequences(const QSqlDatabase& database, const json& file) {
    const Result<const json*> sequences = member(file, "sequences", "/");
    if (!sequences) return sequences.error();
    if (!(*sequences)->is_object()) return wrong_type("/sequences", **sequences, "object");
    const Result<Done> emptied = execute(database, u"DELETE FROM sqlite_sequence"_qs);
    if (!emptied) return emptied;
    Statement insert(database, u"INSERT INTO sqlite_sequence (name, seq) VALUES (?, ?)"_qs);
    for (const auto& [name, number] : (*sequences)->items()) {
        if (!number.is_number_integer()) return wrong_type("/sequences", number, "integer");
        const Result<Done> inserted = insert.run(name, qint64(number.get<std::int64_t>()));
        if (!inserted) return inserted;
    }
    return Done{};
}

Result<Done> empty_tables(const QSqlDatabase& database, const QStringList& names) {
    for (const QString& name : names) {
        const Result<Done> emptied = execute(database, u"DELETE FROM "_qs + quoted(name));
        if (!emptied) return emptied;
    }
    return Done{};
}

Result<Done> fill(const QSqlDatabase& database, const json& file, const GoOn& go_on) {
    const Result<const json*> tables = member(file, "tables", "/");
    if (!tables) return tables.error();
    if (!(*tables)->is_array()) return wrong_type("/tables", **tables, "array");
    const Result<QStringList> names = table_names(database);
    if (!names) return names.error();
    // References are checked when all rows are there. This can only be switched outside.
    const Result<Done> free = execute(database, u"PRAGMA foreign_keys = OFF"_qs);
    if (!free) return free;
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    // Rows that triggers once made are in the file too.
    sqlite3_db_config(sqlite_handle(database), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    // A migration may have put rows of its own.
    const Result<Done> emptied = empty_tables(database, *names);
    if (!emptied) return emptied;
    std::set<QString> seen;
    for (const json& table : **tables) {
        const Result<Done> filled = fill_table(database, table, seen, go_on);
        if (!filled) return filled;
    }
    for (const QString& name : *names) {
        if (!seen.contains(name)) {
            return Error{ErrorCode::missing_field, "/tables", name.toStdString(), {}};
        }
    }
    return in_turn([&] { return fill_sequences(database, file); },
                   [&] { return rebuild_indexes(database); },
                   [&] { return transaction->commit(); });
}

/// The migrations up to the schema of an export.
Result<std::vector<MigrationStep>> steps_for(const json& file) {
    const Result<const json*> format = member(file, "format", "/");
    if (!format) return format.error();
    if (**format != "leadline records") {
        return Error{ErrorCode::not_a_choice, "/format", (*format)->dump(), "leadline records"};
    }
    Result<std::vector<MigrationStep>> steps = built_in_steps();
    if (!steps) return steps;
    const std::pair<const char*, int> newest[] = {{"version", 1}, {"schema", steps->back().version}};
    int schema = 0;
    for (const auto& [name, limit] : newest) {
        const Result<const json*> version = member(file, name, "/");
        if (!version) return version.error();
        if (!(*version)->is_number_integer() || **version < 1) {
            return wrong_type(std::string("/") + name, **version, "integer from 1");
        }
        if (**version > limit) {
            return Error{ErrorCode::unsupported_version, name, (*version)->dump(),
                         std::to_string(limit)};
        }
        schema = (*version)->get<int>();
    }
    std::erase_if(*steps, [schema](const MigrationStep& step) { return step.version > schema; });
    return steps;
}

Result<Done> make_records(const QString& path, const json& file, const QString& json_path,
                          const GoOn& go_on) {
    const Result<std::vector<MigrationStep>> steps = steps_for(file);
    if (!steps) return steps.error();
    const Result<std::vector<MigrationStep>> all_steps = built_in_steps();
    if (!all_steps) return all_steps.error();
    const Result<Done> made = make_private_file(path);
    if (!made) return made;
    const auto connection = SideConnection::open(path, SideConnection::Access::read_write);
    if (!connection) return connection.error();
    const QSqlDatabase database = (*connection)->database();
    // Older schemas hold answers in tables that the newer take out: no page of them may stay.
    return in_turn([&] { return execute(database, u"PRAGMA secure_delete = ON"_qs); },
                   [&] { return execute(database, u"PRAGMA synchronous = OFF"_qs); },
                   [&] { return migrate(database, *steps, KeepOld::no); },
                   [&] { return fill(database, file, go_on); },
                   [&]() -> Result<Done> {
                       const Result<int> whole = check_records(database, CheckDepth::thorough);
                       if (whole) return Done{};
                       Error error = whole.error();
                       error.place = json_path.toStdString();
                       return error;
                   },
                   [&] { return migrate(database, *all_steps, KeepOld::no); });
}

}  // namespace

Result<Done> import_records(const QString& json_path, const QString& database_path,
                            const GoOn& go_on) {
    if (QFileInfo::exists(database_path)) {
        return Error{ErrorCode::file_unwritable, database_path.toStdString(),
                     std::make_error_code(std::errc::file_exists).message(), {}};
    }
    const Result<json> file = read_json(json_path);
    if (!file) return file.error();
    const QFileInfo target(database_path);
    const UnfinishedFile part(target.absolutePath() + u'/' + target.completeBaseName() +
                              u"-import-"_qs +
                              QUuid::createUuid().toString(QUuid::WithoutBraces) + u".part"_qs);
    return in_turn([&] { return make_records(part.path(), *file, json_path, go_on); },
                   [&] { return put_in_place(part.path(), database_path); });
}

}  // namespace leadline
