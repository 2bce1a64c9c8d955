// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/statement.h"

#include <QStringDecoder>

namespace leadline {

namespace {

// Primary result codes of SQLite; the higher bits of a native code tell the finer kind.
constexpr int sqlite_primary_code = 0xff;
constexpr int sqlite_busy = 5;
constexpr int sqlite_table_locked = 6;

}  // namespace

Error database_error(const QSqlDatabase& database, const QSqlError& error) {
    const int code = error.nativeErrorCode().toInt() & sqlite_primary_code;
    const bool locked = code == sqlite_busy || code == sqlite_table_locked;
    return Error{locked ? ErrorCode::database_locked : ErrorCode::database_failed,
                 database.databaseName().toStdString(), error.databaseText().toStdString(), {}};
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
    return begin(database, QStringLiteral("BEGIN IMMEDIATE"));
}

Result<Transaction> Transaction::begin(const QSqlDatabase& database, const QString& sql) {
    const Result<Done> begun = execute(database, sql);
    if (!begun) return begun.error();
    return Transaction(database);
}

Transaction::~Transaction() {
    // Fails only where SQLite has rolled back by itself (a full disk): then nothing is left to do.
    if (open_) static_cast<void>(execute(database_, QStringLiteral("ROLLBACK")));
}

Result<Done> Transaction::commit() {
    Result<Done> committed = execute(database_, QStringLiteral("COMMIT"));
    if (committed) open_ = false;
    return committed;
}

}  // namespace leadline
