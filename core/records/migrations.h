// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/physics/result.h"

namespace leadline {

/// One step of the schema: what brings a database of version - 1 to `version`.
struct MigrationStep {
    int version = 0;
    QStringList statements;
};

/// Whether a copy of the file is kept before its schema changes.
enum class KeepOld { no, yes };

/// Cuts a migration file into its statements: at lines that say "-- statement", never at ';', which
/// may stand inside a text or a trigger. Pieces of nothing but comments are left out.
QStringList statements_in(const QString& sql);

/// The steps in core/records/migrations, built into the program, first to newest.
/// @returns ErrorCode::database_failed naming the file when their numbers are not 1, 2, 3 ...
Result<std::vector<MigrationStep>> built_in_steps();

/// Version of a database's schema; 0 for an empty one.
/// @returns database_damaged when the file is no database, not_our_records when it is one of another
///          program
Result<int> stored_schema_version(const QSqlDatabase& database);

/// Name of the copy kept of a file before its schema becomes `version`.
QString copy_before(const QString& database_path, int version);

/// Brings a database to the newest of the steps. Each step is one transaction together with its
/// version number and a check of all foreign keys: it stands whole or not at all. Before the first
/// step a copy of a database that has content is kept beside it (copy_before()), replacing an older
/// copy of that name. Foreign keys are enforced afterwards, and found to be.
/// @param keep_old  no copy is kept of a scratch file, which is itself one
/// @returns Done; database_newer with nothing touched when the database is past the newest step;
///          database_failed or database_locked
Result<Done> migrate(const QSqlDatabase& database, const std::vector<MigrationStep>& steps,
                     KeepOld keep_old = KeepOld::yes);

}  // namespace leadline
