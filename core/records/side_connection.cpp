// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/side_connection.h"

#include <QFileInfo>
#include <QSqlDriver>
#include <QUuid>
#include <QVariant>
#include <sqlite3.h>

#include <cstring>
#include <utility>

#include "core/records/statement.h"

namespace leadline {

sqlite3* sqlite_handle(const QSqlDatabase& database) {
    if (!database.isOpen() || database.driver() == nullptr) return nullptr;
    const QVariant handle = database.driver()->handle();
    if (!handle.isValid() || std::strcmp(handle.typeName(), "sqlite3*") != 0) return nullptr;
    return *static_cast<sqlite3* const*>(handle.constData());
}

bool file_is_gone(const QSqlDatabase& database) {
    sqlite3* handle = sqlite_handle(database);
    int moved = 0;
    // A database in memory has no file, and says so by an error.
    const bool known = handle != nullptr && sqlite3_file_control(handle, "main",
                                                                 SQLITE_FCNTL_HAS_MOVED,
                                                                 &moved) == SQLITE_OK;
    return known && moved != 0;
}

Result<std::unique_ptr<SideConnection>> SideConnection::open(const QString& path, Access access) {
    const bool in_memory = path == u":memory:"_qs;
    if (!in_memory && !QFileInfo::exists(path)) {
        return Error{ErrorCode::database_gone, path.toStdString(), {}, {}};
    }
    const QString name = u"leadline-side-"_qs + QUuid::createUuid().toString(QUuid::WithoutBraces);
    // Closes the connection however this function ends.
    std::unique_ptr<SideConnection> opened(new SideConnection(name));
    QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_qs, name);
    database.setConnectOptions(access == Access::read_only
                                   ? u"QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=5000"_qs
                                   : u"QSQLITE_BUSY_TIMEOUT=5000"_qs);
    database.setDatabaseName(path);
    if (!database.open()) return database_error(database, database.lastError());
    return opened;
}

SideConnection::SideConnection(QString name) : name_(std::move(name)) {}

SideConnection::~SideConnection() {
    database().close();
    QSqlDatabase::removeDatabase(name_);
}

QSqlDatabase SideConnection::database() const { return QSqlDatabase::database(name_, false); }

void SideConnection::ask_while_working(GoOn go_on, double share_done) {
    // Asked about every millisecond of work.
    constexpr int instructions_between = 20000;
    go_on_ = std::move(go_on);
    share_done_ = share_done;
    sqlite3_progress_handler(sqlite_handle(database()), go_on_ ? instructions_between : 0,
                             go_on_ ? &SideConnection::on_progress : nullptr, this);
}

int SideConnection::on_progress(void* self) {
    const auto* connection = static_cast<SideConnection*>(self);
    return connection->go_on_(connection->share_done_) ? 0 : 1;
}

}  // namespace leadline
