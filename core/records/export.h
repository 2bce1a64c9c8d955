// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/physics/go_on.h"
#include "core/physics/result.h"

namespace leadline {

/// Name of the file with everything in it, inside an export's folder.
inline constexpr const char* export_file_name = "leadline-records.json";

/// Writes everything in the records into a new folder that only its owner may enter, at one state
/// of the database: leadline-records.json, from which import_records() makes the same records again,
/// and csv/TABLE.csv, one file a table, for spreadsheets. Knows no table by name. Sealed content is
/// written as it is, still sealed.
/// @param folder  must not be there yet; it gets its name when all is written
/// @returns file_unwritable when the folder is there or cannot be made, disk_full, cancelled, or what
///          reading the records fails with
Result<Done> export_records(const QString& database_path, const QString& folder,
                            const GoOn& go_on = {});

/// Makes records from the JSON of an export: a new database of the export's schema, filled and
/// checked as a whole, then brought to the newest schema.
/// @param database_path  must not be there yet
/// @returns Done with every row as it was; or, with no file made: file_unwritable when there are
///          records already, file_unreadable, not_json, wrong_type, missing_field, unknown_field,
///          unsupported_version, database_damaged when the rows contradict each other
Result<Done> import_records(const QString& json_path, const QString& database_path,
                            const GoOn& go_on = {});

/// A cell of a CSV file that a spreadsheet takes as text and never as a formula: a text that starts
/// with = + - @ tab or CR gets an apostrophe in front, unless it is a number. Quoted where needed
/// (RFC 4180, section 2).
/// Source of the characters: OWASP, "CSV Injection" (from memory).
QString csv_cell(const QString& text);

}  // namespace leadline
