// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <chrono>
#include <memory>
#include <optional>

#include "core/physics/result.h"

class QSqlDatabase;

namespace leadline {

/// Version of the schema this program writes: the number of the last file in
/// core/records/migrations.
inline constexpr int newest_schema_version = 7;

/// One SQLite file, opened, brought to the newest schema, foreign keys on. Every write through a
/// store is one transaction: it stands whole or not at all. Not to be shared between threads.
class Database {
public:
    /// Opens or creates the file (with its folder). ":memory:" gives a database that vanishes.
    /// Waits up to two seconds for another process that holds the file.
    /// Before a migration step a copy of the file is kept beside it ("NAME.before-schema-N").
    /// @returns the database; ErrorCode::database_failed, database_locked, database_newer,
    ///          database_damaged, database_read_only, disk_full or not_our_records
    static Result<std::unique_ptr<Database>> open(const QString& path);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    [[nodiscard]] QString path() const;
    [[nodiscard]] int schema_version() const;
    /// For the stores of this room only.
    [[nodiscard]] QSqlDatabase connection() const;

private:
    explicit Database(QString connection_name, QString path);
    QString connection_name_;
    QString path_;
};

/// While it lives, no write through a database waits longer than this for another process, so that a
/// window that writes does not stand still: what cannot be written then is refused as
/// ErrorCode::database_locked. A wait that is shorter already stays. The database must live longer.
class ShortWait {
public:
    /// @param longest  0 ms or more
    ShortWait(const Database& database, std::chrono::milliseconds longest);
    ~ShortWait();
    ShortWait(const ShortWait&) = delete;
    ShortWait& operator=(const ShortWait&) = delete;

private:
    const Database& database_;
    std::optional<int> before_;
};

/// Where the user's records lie when nothing else is said: leadline/records.sqlite in the XDG data
/// folder.
QString default_database_path();

}  // namespace leadline
