// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/statement.h"

#include <QStringDecoder>
#include <sqlite3.h>

#include "core/records/side_connection.h"

namespace leadline {

namespace {

// Primary result codes of SQLite; the higher bits of a native code tell the finer kind.
constexpr int sqlite_primary_code = 0xff;
/// A finer kind of READONLY: the file was moved or deleted while it was open.
constexpr int moved_while_open = SQLITE_READONLY_DBMOVED;

ErrorCode kind_of(int native_code) {
    if (native_code == moved_while_open) return ErrorCode::database_gone;
    switch (native_code & sqlite_primary_code) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED: return ErrorCode::database_locked;
        case SQLITE_CORRUPT:
        case SQLITE_NOTADB: return ErrorCode::database_damaged;
        case SQLITE_READONLY: return ErrorCode::database_read_only;
        case SQLITE_FULL: return ErrorCode::disk_full;
        case SQLITE_INTERRUPT: return ErrorCode::cancelled;
        default: return ErrorCode::database_failed;
    }
}

}  // namespace

Error database_error(const QSqlDatabase& database, const QSqlError& error) {
    return Error{kind_of(error.nativeErrorCode().toInt()), database.databaseName().toStdString(),
                 error.databaseText().toStdString(), {}};
}

Error database_error(const QSqlDatabase& database, std::string message) {
    return Error{ErrorCode::database_failed, database.databaseName().toStdString(),
                 std::move(message), {}};
}

Result<Done> execute(const QSqlDatabase& database, const QString& sql) {
    QSqlQuery query(database);
    query.setForwardOnly(true);
    if (!query.exec(sql)) return database_error(database, query.lastError());
    return Done{};
}

std::optional<int> Row::optional_small_number() {
    const QVariant value = next();
    if (value.isNull()) return std::nullopt;
    return value.toInt();
}

std::optional<double> Row::optional_real() {
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional<double>(value.toDouble());
}

std::optional<Date> Row::optional_date() {
    const QVariant value = next();
    if (value.isNull()) return std::nullopt;
    const std::string written = value.toString().toStdString();
    const Result<Date> date = parse_date(written, {});
    if (!date) {
        fault_ = written;
        return std::nullopt;
    }
    return *date;
}

Statement::Statement(const QSqlDatabase& database, const QString& sql)
    : database_(database), query_(database) {
    query_.setForwardOnly(true);
    if (!query_.prepare(sql)) unprepared_ = database_error(database_, query_.lastError());
}

void Statement::bind(const QString& value) {
    // A null QString would be bound as NULL, which is not the same as an empty text.
    put(value.isNull() ? QString(QLatin1String("")) : value);
}

void Statement::bind(const std::string& value) {
    QStringDecoder utf8(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString text = utf8(QByteArrayView(value.data(), qsizetype(value.size())));
    if (utf8.hasError()) unstorable_ = Error{ErrorCode::bad_text, {}, value, "UTF-8"};
    bind(text);
}

void Statement::bind(const QByteArray& value) {
    // As for texts: a null one would be bound as NULL.
    put(value.isNull() ? QByteArray("", 0) : value);
}

Result<Done> Statement::execute_bound() {
    if (unprepared_) return *unprepared_;
    if (unstorable_) return *unstorable_;
    if (!query_.exec()) return database_error(database_, query_.lastError());
    return Done{};
}

Result<Done> Statement::finish() {
    const QSqlError error = query_.lastError();
    query_.finish();
    if (error.isValid()) return database_error(database_, error);
    return Done{};
}

Result<Transaction> Transaction::begin_reading(const QSqlDatabase& database) {
    return begin(database, QStringLiteral("BEGIN"));
}

Result<Transaction> Transaction::begin_writing(const QSqlDatabase& database) {
    Result<Transaction> begun = begin(database, QStringLiteral("BEGIN IMMEDIATE"));
    if (!begun) return begun;
    begun->writing_ = true;
    const Result<Done> there = begun->check_still_there();
    if (!there) return there.error();
    return begun;
}

Result<Transaction> Transaction::begin(const QSqlDatabase& database, const QString& sql) {
    const Result<Done> begun = execute(database, sql);
    if (!begun) return begun.error();
    return Transaction(database);
}

Result<Done> Transaction::check_still_there() const {
    if (!file_is_gone(database_)) return Done{};
    return Error{ErrorCode::database_gone, database_.databaseName().toStdString(), {}, {}};
}

Transaction::~Transaction() {
    // Fails only where SQLite has rolled back by itself (a full disk): then nothing is left to do.
    if (open_) static_cast<void>(execute(database_, QStringLiteral("ROLLBACK")));
}

Result<Done> Transaction::commit() {
    Result<Done> committed = execute(database_, QStringLiteral("COMMIT"));
    if (committed) open_ = false;
    // Deleted or moved between our first look and the commit: what was written is lost with it.
    return committed && writing_ ? check_still_there() : committed;
}

}  // namespace leadline
