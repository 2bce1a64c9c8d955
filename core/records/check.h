// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/physics/go_on.h"
#include "core/physics/result.h"

class QSqlDatabase;

namespace leadline {

enum class CheckDepth {
    quick,     ///< every page and row; not that indexes agree with their tables
    thorough,  ///< indexes too
};

/// Whether a database is whole records of ours: its pages, its references, its mark in the header,
/// and its tables, which must be those that the migrations make.
/// @returns its schema version; database_damaged (an empty file too), not_our_records, database_newer, or what reading fails with
Result<int> check_records(const QSqlDatabase& database, CheckDepth depth);

/// The same for a file, through a connection of its own that changes nothing in it.
Result<int> check_records_file(const QString& path, CheckDepth depth, const GoOn& go_on = {});

}  // namespace leadline
