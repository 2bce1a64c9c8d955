// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/check.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/records/migrations.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// Each object of a schema with the SQL that made it, by kind and name; not what SQLite makes for
/// itself.
using SchemaObjects = std::map<QString, QString>;

Error damaged(const QSqlDatabase& database, std::string found) {
    return Error{ErrorCode::database_damaged, database.databaseName().toStdString(),
                 std::move(found), {}};
}

Result<SchemaObjects> objects_in(const QSqlDatabase& database) {
    const auto rows =
        Statement(database, u"SELECT type || ' ' || name, coalesce(sql, '') FROM sqlite_master "
                            "WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"_qs)
            .all([](Row& row) {
                QString name = row.qtext();
                return std::pair(std::move(name), row.qtext());
            });
    if (!rows) return rows.error();
    return SchemaObjects(rows->begin(), rows->end());
}

/// What the migrations make up to a version.
Result<SchemaObjects> objects_of_version(int version) {
    Result<std::vector<MigrationStep>> steps = built_in_steps();
    if (!steps) return steps.error();
    std::erase_if(*steps, [version](const MigrationStep& step) { return step.version > version; });
    const auto scratch =
        SideConnection::open(u":memory:"_qs, SideConnection::Access::read_write);
    if (!scratch) return scratch.error();
    const QSqlDatabase database = (*scratch)->database();
    const Result<Done> made = migrate(database, *steps);
    if (!made) return made.error();
    return objects_in(database);
}

Result<Done> check_schema(const QSqlDatabase& database, int version) {
    const Result<SchemaObjects> found = objects_in(database);
    if (!found) return found.error();
    const Result<SchemaObjects> wanted = objects_of_version(version);
    if (!wanted) return wanted.error();
    for (const auto& [name, sql] : *wanted) {
        const auto there = found->find(name);
        if (there == found->end()) return damaged(database, "no " + name.toStdString());
        if (there->second != sql) return damaged(database, name.toStdString());
    }
    for (const auto& [name, sql] : *found) {
        if (!wanted->contains(name)) return damaged(database, name.toStdString());
    }
    return Done{};
}

Result<Done> check_pages(const QSqlDatabase& database, CheckDepth depth) {
    const QString sql = depth == CheckDepth::quick ? u"PRAGMA quick_check(1)"_qs
                                                   : u"PRAGMA integrity_check(1)"_qs;
    const auto verdict = Statement(database, sql).first([](Row& row) { return row.text(); });
    if (!verdict) return verdict.error();
    if (verdict->value_or("") != "ok") return damaged(database, verdict->value_or("no verdict"));
    return Done{};
}

Result<Done> check_references(const QSqlDatabase& database) {
    const auto broken =
        Statement(database, u"PRAGMA foreign_key_check"_qs).all([](Row& row) { return row.text(); });
    if (!broken) return broken.error();
    if (!broken->empty()) {
        return damaged(database, "a row of " + broken->front() + " refers to nothing");
    }
    return Done{};
}

}  // namespace

Result<int> check_records(const QSqlDatabase& database, CheckDepth depth) {
    const Result<int> version = stored_schema_version(database);
    if (!version) return version;
    if (*version == 0) return damaged(database, "no tables");
    const Result<std::vector<MigrationStep>> steps = built_in_steps();
    if (!steps) return steps.error();
    const int newest = steps->back().version;
    if (*version > newest) {
        return Error{ErrorCode::database_newer, database.databaseName().toStdString(),
                     std::to_string(*version), std::to_string(newest)};
    }
    const Result<Done> whole = in_turn([&] { return check_pages(database, depth); },
                                       [&] { return check_schema(database, *version); },
                                       [&] { return check_references(database); });
    if (!whole) return whole.error();
    return version;
}

Result<int> check_records_file(const QString& path, CheckDepth depth, const GoOn& go_on) {
    const auto connection = SideConnection::open(path, SideConnection::Access::read_only);
    if (!connection) return connection.error();
    (*connection)->ask_while_working(go_on, 0.0);
    return check_records((*connection)->database(), depth);
}

}  // namespace leadline
