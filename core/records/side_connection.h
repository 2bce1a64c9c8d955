// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QString>
#include <memory>

#include "core/physics/go_on.h"
#include "core/physics/result.h"

struct sqlite3;

namespace leadline {

/// SQLite's own handle of an open connection, for what Qt has no words for. The program links the
/// very library that Qt's driver uses. nullptr when the connection is not open.
sqlite3* sqlite_handle(const QSqlDatabase& database);

/// Whether the file of a connection is no longer the one at its path: deleted, moved, replaced, or
/// on a disk that went away. SQLite would go on writing into it, and all would be lost.
bool file_is_gone(const QSqlDatabase& database);

/// A connection beside the window's, for long work in another thread. To be used and destroyed in
/// the thread that made it.
class SideConnection {
public:
    enum class Access { read_only, read_write };
    /// The file must be there; ":memory:" is a database that vanishes.
    /// @returns database_gone when there is no file; database_failed, database_locked
    static Result<std::unique_ptr<SideConnection>> open(const QString& path, Access access);
    ~SideConnection();
    SideConnection(const SideConnection&) = delete;
    SideConnection& operator=(const SideConnection&) = delete;

    [[nodiscard]] QSqlDatabase database() const;
    /// From now on a long statement stops when `go_on` says so; it is asked with `share_done`.
    void ask_while_working(GoOn go_on, double share_done);

private:
    explicit SideConnection(QString name);
    static int on_progress(void* self);

    QString name_;
    GoOn go_on_;
    double share_done_ = 0.0;
};

}  // namespace leadline
