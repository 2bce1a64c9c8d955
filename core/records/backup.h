// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>
#include <optional>
#include <vector>

#include "core/physics/go_on.h"
#include "core/physics/result.h"
#include "core/records/backup_schedule.h"

namespace leadline {

/// Why a copy was made; it stands in the name of the file.
enum class CopyKind {
    by_schedule,     ///< removed again by the schedule
    by_hand,         ///< stays until the user deletes it
    before_restore,  ///< what stood there before a copy was put back; stays likewise
    damaged,         ///< the same, of records that could not be read whole: bytes as they were
};

/// A finished copy of the records.
struct RecordCopy {
    QString path;
    CopyTime made{};
    CopyKind kind = CopyKind::by_schedule;
    qint64 bytes = 0;
    friend bool operator==(const RecordCopy&, const RecordCopy&) = default;
};

/// Folder of the copies: "backups" beside the database.
QString copies_folder(const QString& database_path);

/// Name of a copy without its folder: "records-2026-07-31T05-06-07-089Z.sqlite", with the kind
/// before the last dot unless it is made by schedule.
QString copy_name(const QString& database_path, CopyTime made, CopyKind kind);

/// A place for a new copy whose name is free: at the given time, or a few milliseconds later.
RecordCopy free_copy_place(const QString& database_path, CopyKind kind, CopyTime now);

/// The copies of a database, newest first. Files with other names, unfinished ones among them, are
/// no copies.
std::vector<RecordCopy> list_copies(const QString& database_path);

/// Copies the records while they are in use, by SQLite's online backup, in small steps. The copy is
/// one state of the database: what is saved meanwhile is not in it. It gets its name only when it
/// has been checked as a whole (check_records()) and stands on the disk; before that it is a ".part"
/// file, which is removed when anything fails. Only the owner may read it.
/// @param now    names the copy; a millisecond is added where a copy of that name stands already
/// @returns the copy; database_gone, database_damaged, disk_full, database_failed, cancelled
Result<RecordCopy> make_copy(const QString& database_path, CopyKind kind, CopyTime now,
                             const GoOn& go_on = {});

/// What keep_scheduled_copy() did.
struct ScheduledCopy {
    /// None: not due, or nothing has changed since the newest copy.
    std::optional<RecordCopy> made;
    bool was_due = false;
    int removed = 0;
    friend bool operator==(const ScheduledCopy&, const ScheduledCopy&) = default;
};

/// Makes a copy when one is due and the records have changed since the newest; then removes those
/// made by schedule that it no longer keeps. Nothing is removed unless a new copy stands.
Result<ScheduledCopy> keep_scheduled_copy(const QString& database_path, CopyTime now,
                                          const GoOn& go_on = {});

Result<Done> remove_copy(const RecordCopy& copy);

/// Removes unfinished copies and scratch files that a run which ended in the midst has left: those
/// older than an hour, so that another program at work is not disturbed. They hold answers about
/// health.
void remove_leftovers(const QString& database_path, CopyTime now);

/// Copies the pages of a database, seen at one state, into a file that is made anew; no check.
/// @param share  part of the whole work that this is, for go_on
Result<Done> copy_pages(const QString& from, const QString& to, const GoOn& go_on, double share);

/// The time in UTC now.
CopyTime current_time();

}  // namespace leadline
