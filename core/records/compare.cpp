// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/compare.h"

#include <QByteArray>
#include <QCryptographicHash>
#include <QDataStream>
#include <QIODevice>
#include <QSqlDatabase>
#include <QStringList>
#include <QVariant>

#include <algorithm>
#include <map>
#include <utility>

#include "core/records/schema.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

QByteArray packed(Row& row, std::size_t columns) {
    QByteArray bytes;
    QDataStream stream(&bytes, QIODevice::WriteOnly);
    for (std::size_t i = 0; i < columns; ++i) stream << row.value();
    return bytes;
}

QByteArray digest(const QByteArray& bytes) {
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
}

/// Digest of every row by its key.
using RowDigests = std::map<QByteArray, QByteArray>;

Result<RowDigests> row_digests(const QSqlDatabase& database, const QString& table,
                               const std::vector<TableColumn>& columns) {
    const std::vector<TableColumn> key = key_of(columns);
    const QString sql =
        u"SELECT %1, %2 FROM %3"_qs.arg(name_list(key), name_list(columns), quoted(table));
    const auto rows = Statement(database, sql).all([&](Row& row) {
        QByteArray name = packed(row, key.size());
        return std::pair(std::move(name), digest(packed(row, columns.size())));
    });
    if (!rows) return rows.error();
    return RowDigests(rows->begin(), rows->end());
}

Result<TableChange> compare_table(const QSqlDatabase& now, const QSqlDatabase& copy,
                                  const QString& table) {
    const Result<std::vector<TableColumn>> columns = columns_of(now, table);
    if (!columns) return columns.error();
    const Result<RowDigests> here = row_digests(now, table, *columns);
    if (!here) return here.error();
    const Result<RowDigests> there = row_digests(copy, table, *columns);
    if (!there) return there.error();
    TableChange change;
    change.table = table;
    change.rows_now = qint64(here->size());
    change.rows_in_copy = qint64(there->size());
    for (const auto& [key, content] : *here) {
        const auto other = there->find(key);
        if (other == there->end()) ++change.only_now;
        if (other != there->end() && other->second != content) ++change.different;
    }
    change.only_in_copy = change.rows_in_copy - (change.rows_now - change.only_now);
    return change;
}

/// Digest of all rows that belong to a session, by its number.
using SessionDigests = std::map<qint64, QByteArray>;

Result<Done> add_rows(const QSqlDatabase& database, const QString& table, const QString& owner,
                      const std::vector<TableColumn>& columns, SessionDigests& digests) {
    const QString sql = u"SELECT %1, %2 FROM %3 ORDER BY %4"_qs.arg(
        quoted(owner), name_list(columns), quoted(table), name_list(key_of(columns)));
    const auto rows = Statement(database, sql).all([&](Row& row) {
        const qint64 session = row.number();
        return std::pair(session, packed(row, columns.size()));
    });
    if (!rows) return rows.error();
    for (const auto& [session, content] : *rows) {
        QByteArray& so_far = digests[session];
        so_far = digest(so_far + table.toUtf8() + content);
    }
    return Done{};
}

/// Asks before the work on a table.
Result<Done> ask_before(const GoOn& go_on, qsizetype done, qsizetype all, const QString& table) {
    if (!go_on || go_on(double(done) / double(all))) return Done{};
    return Error{ErrorCode::cancelled, table.toStdString(), {}, {}};
}

Result<SessionDigests> session_digests(const QSqlDatabase& database, const GoOn& go_on) {
    SessionDigests digests;
    const Result<QStringList> tables = table_names(database);
    if (!tables) return tables.error();
    qsizetype done = 0;
    for (const QString& table : *tables) {
        const Result<Done> wanted = ask_before(go_on, done++, tables->size(), table);
        if (!wanted) return wanted.error();
        const QString owner = table == u"sessions"_qs ? u"id"_qs : u"session_id"_qs;
        const Result<std::vector<TableColumn>> columns = columns_of(database, table);
        if (!columns) return columns.error();
        const bool of_a_session =
            std::any_of(columns->begin(), columns->end(),
                        [&](const TableColumn& column) { return column.name == owner; });
        if (!of_a_session) continue;
        const Result<Done> added = add_rows(database, table, owner, *columns, digests);
        if (!added) return added.error();
    }
    return digests;
}

}  // namespace

Result<std::vector<TableChange>> compare_tables(const QSqlDatabase& now,
                                                const QSqlDatabase& copy, const GoOn& go_on) {
    const Result<QStringList> tables = table_names(now);
    if (!tables) return tables.error();
    std::vector<TableChange> changes;
    for (const QString& table : *tables) {
        const Result<Done> wanted =
            ask_before(go_on, qsizetype(changes.size()), tables->size(), table);
        if (!wanted) return wanted.error();
        Result<TableChange> change = compare_table(now, copy, table);
        if (!change) return change.error();
        changes.push_back(std::move(*change));
    }
    return changes;
}

Result<SessionChanges> compare_sessions(Database& now, Database& copy, const GoOn& go_on) {
    const auto here = SessionStore(now).list();
    if (!here) return here.error();
    const auto there = SessionStore(copy).list();
    if (!there) return there.error();
    Result<SessionDigests> digests_here =
        session_digests(now.connection(), part_of(go_on, 0.0, 0.5));
    if (!digests_here) return digests_here.error();
    Result<SessionDigests> digests_there =
        session_digests(copy.connection(), part_of(go_on, 0.5, 1.0));
    if (!digests_there) return digests_there.error();

    SessionChanges changes;
    std::map<qint64, const SessionSummary*> unmatched;
    for (const SessionSummary& session : *there) unmatched[session.row.value] = &session;
    for (const SessionSummary& session : *here) {
        const qint64 number = session.row.value;
        const auto other = unmatched.find(number);
        const bool same_session =
            other != unmatched.end() && (other->second->title == session.title ||
                                         other->second->date == session.date);
        if (!same_session) {
            changes.changed.push_back({SessionPresence::only_now, session.title, session.date});
            continue;
        }
        unmatched.erase(other);
        if ((*digests_here)[number] == (*digests_there)[number]) {
            ++changes.same;
        } else {
            changes.changed.push_back({SessionPresence::different, session.title, session.date});
        }
    }
    for (const auto& [number, session] : unmatched) {
        changes.changed.push_back({SessionPresence::only_in_copy, session->title, session->date});
    }
    std::stable_sort(changes.changed.begin(), changes.changed.end(),
                     [](const SessionChange& a, const SessionChange& b) { return b.date < a.date; });
    return changes;
}

}  // namespace leadline
