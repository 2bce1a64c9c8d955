// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/physics/result.h"

namespace leadline {

struct TableColumn {
    QString name;
    QString type;  ///< as declared: INTEGER, REAL, TEXT, BLOB
    int key = 0;   ///< place in the primary key, from 1; 0: not part of it
    friend bool operator==(const TableColumn&, const TableColumn&) = default;
};

/// Names of the tables of our schema, in alphabetical order; not those SQLite makes for itself, nor
/// the indexes for searching, which follow from tables.
Result<QStringList> table_names(const QSqlDatabase& database);

/// Puts the indexes for searching together anew from the tables they are about.
Result<Done> rebuild_indexes(const QSqlDatabase& database);

/// A table's columns in the order of its rows.
Result<std::vector<TableColumn>> columns_of(const QSqlDatabase& database, const QString& table);

/// A name as SQL takes it. Names come from the schema, not from people, and are quoted all the same.
QString quoted(QString name);

/// The quoted names of columns, with commas.
QString name_list(const std::vector<TableColumn>& columns);

/// The columns by which the rows of a table are told apart, in the order of the key; all of them in
/// a table without a key.
std::vector<TableColumn> key_of(const std::vector<TableColumn>& columns);

}  // namespace leadline
