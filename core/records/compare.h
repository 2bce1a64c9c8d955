// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>
#include <string>
#include <vector>

#include "core/physics/go_on.h"
#include "core/physics/result.h"
#include "core/planning/dates.h"
#include "core/records/database.h"

class QSqlDatabase;

namespace leadline {

/// What a table holds in two databases of one schema. Rows are the same row when their primary keys
/// are; they differ when any other column does.
struct TableChange {
    QString table;
    qint64 rows_now = 0;
    qint64 rows_in_copy = 0;
    qint64 only_now = 0;
    qint64 only_in_copy = 0;
    qint64 different = 0;
    friend bool operator==(const TableChange&, const TableChange&) = default;
};

enum class SessionPresence {
    only_now,      ///< would be lost by putting the copy back
    only_in_copy,  ///< would come back
    different,     ///< would be as in the copy
};

/// A session that is not the same in both. Sessions are the same when they have the number and the
/// title or the date in common: after a copy was put back, numbers may have been given anew.
struct SessionChange {
    SessionPresence presence{};
    std::string title;  ///< as it is now; in the copy where it is only there
    Date date{};
    friend bool operator==(const SessionChange&, const SessionChange&) = default;
};

/// Every table of the schema, in alphabetical order; both databases have the newest schema.
/// @param go_on  asked before every table, with the share of the tables that is done
Result<std::vector<TableChange>> compare_tables(const QSqlDatabase& now, const QSqlDatabase& copy,
                                                const GoOn& go_on = {});

/// The sessions that differ in any row that belongs to them, newest first, and the number of those
/// that are the same.
struct SessionChanges {
    std::vector<SessionChange> changed;
    qint64 same = 0;
};
Result<SessionChanges> compare_sessions(Database& now, Database& copy, const GoOn& go_on = {});

}  // namespace leadline
