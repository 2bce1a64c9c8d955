// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/physics/go_on.h"
#include "core/physics/result.h"
#include "core/records/backup.h"
#include "core/records/compare.h"

namespace leadline {

/// What putting a copy back would change.
struct RestorePreview {
    int schema_of_copy = 0;
    /// What keeps the records of now from being compared (they are damaged, or not there); then the
    /// lists below tell only of the copy.
    std::optional<Error> unreadable_now;
    std::vector<SessionChange> sessions;  ///< those that are not the same, newest first
    qint64 sessions_same = 0;
    std::vector<TableChange> tables;      ///< every table
};

// A copy is a SQLite file, or the leadline-records.json of an export.

/// Compares a copy with the records of now, and changes neither. An older copy is brought to the
/// newest schema in a scratch file first.
/// @returns the preview; file_unreadable, database_damaged, not_our_records or database_newer when
///          the copy cannot be put back; cancelled
Result<RestorePreview> preview_restore(const QString& database_path, const QString& copy_path,
                                       const GoOn& go_on = {});

/// Puts a copy in place of the records. Nobody may have them open. First the copy is made ready and
/// checked in a scratch file, and what stands there now is kept as a copy of its own; then the file
/// is replaced in one step: a crash at any moment leaves the old or the new records whole.
/// @returns the copy of what stood there before, none when there was nothing; on any error the old
///          records stand: database_locked when another program has them open, disk_full, and the
///          errors of preview_restore()
Result<std::optional<RecordCopy>> restore_copy(const QString& database_path,
                                               const QString& copy_path, CopyTime now,
                                               const GoOn& go_on = {});

}  // namespace leadline
