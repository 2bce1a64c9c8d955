// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/schema.h"

#include <algorithm>
#include <utility>

#include "core/records/statement.h"

namespace leadline {

Result<QStringList> table_names(const QSqlDatabase& database) {
    const auto names =
        Statement(database, u"SELECT name FROM pragma_table_list WHERE schema = 'main' "
                            "AND type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' "
                            "ORDER BY name"_qs)
            .all([](Row& row) { return row.qtext(); });
    if (!names) return names.error();
    return QStringList(names->begin(), names->end());
}

Result<Done> rebuild_indexes(const QSqlDatabase& database) {
    const auto names = Statement(database, u"SELECT name FROM pragma_table_list "
                                           "WHERE schema = 'main' AND type = 'virtual'"_qs)
                           .all([](Row& row) { return row.qtext(); });
    if (!names) return names.error();
    for (const QString& name : *names) {
        const Result<Done> rebuilt = execute(
            database, u"INSERT INTO %1 (%1) VALUES ('rebuild')"_qs.arg(quoted(name)));
        if (!rebuilt) return rebuilt;
    }
    return Done{};
}

Result<std::vector<TableColumn>> columns_of(const QSqlDatabase& database, const QString& table) {
    return Statement(database, u"SELECT name, type, pk FROM pragma_table_info(?) ORDER BY cid"_qs)
        .all(
            [](Row& row) {
                TableColumn column;
                column.name = row.qtext();
                column.type = row.qtext();
                column.key = row.small_number();
                return column;
            },
            table);
}

QString quoted(QString name) { return u'"' + name.replace(u'"', u"\"\""_qs) + u'"'; }

QString name_list(const std::vector<TableColumn>& columns) {
    QStringList names;
    for (const TableColumn& column : columns) names += quoted(column.name);
    return names.join(u", "_qs);
}

std::vector<TableColumn> key_of(const std::vector<TableColumn>& columns) {
    std::vector<TableColumn> key;
    for (const TableColumn& column : columns) {
        if (column.key > 0) key.push_back(column);
    }
    if (key.empty()) return columns;
    std::sort(key.begin(), key.end(),
              [](const TableColumn& a, const TableColumn& b) { return a.key < b.key; });
    return key;
}

}  // namespace leadline
