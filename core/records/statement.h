// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QString>
#include <QStringList>
#include <QVariant>
#include <QtGlobal>
#include <concepts>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/dates.h"
#include "core/planning/ids.h"
#include "core/records/names.h"

namespace leadline {

/// A driver's error as a value: database_locked when another process holds the file,
/// database_damaged, database_read_only, disk_full, database_gone or cancelled where SQLite says so,
/// otherwise database_failed with the driver's message. The place is the database's file.
Error database_error(const QSqlDatabase& database, const QSqlError& error);

/// database_failed with a message of our own, for content that the schema should have kept out.
Error database_error(const QSqlDatabase& database, std::string message);

/// Runs one statement without values: a PRAGMA, a piece of a migration.
Result<Done> execute(const QSqlDatabase& database, const QString& sql);

/// Runs steps until the first that fails, and gives back its error. Each returns Result<Done>.
template <typename... Steps>
Result<Done> in_turn(Steps&&... steps) {
    Result<Done> result = Done{};
    static_cast<void>(((result = steps()).has_value() && ...));
    return result;
}

/// A quantity with its unit in its type: stored as its number in that unit.
template <typename Q>
concept Quantity = std::constructible_from<Q, double> && requires(const Q& quantity) {
    { quantity.value() } -> std::convertible_to<double>;
};

/// The current row of a result. Every call reads the next column, so that values are read in the
/// order of the SELECT; braces keep that order, function arguments do not. What cannot be read
/// (which the schema keeps out) is remembered in `fault()`.
class Row {
public:
    explicit Row(const QSqlQuery& query) : query_(query) {}

    qint64 number() { return next().toLongLong(); }
    int small_number() { return next().toInt(); }
    bool yes() { return next().toLongLong() != 0; }
    /// NULL is the empty text.
    QString qtext() { return next().toString(); }
    std::string text() { return qtext().toStdString(); }
    /// NULL is no bytes.
    QByteArray bytes() { return next().toByteArray(); }
    double real() { return next().toDouble(); }
    std::optional<double> optional_real();
    std::optional<int> optional_small_number();
    TimeOfDay time_of_day() { return TimeOfDay{small_number()}; }
    Date date() { return optional_date().value_or(Date{}); }
    std::optional<Date> optional_date();

    template <Quantity Q>
    Q quantity() {
        return Q(real());
    }
    template <Quantity Q>
    std::optional<Q> optional_quantity() {
        const std::optional<double> value = optional_real();
        return value ? std::optional<Q>(Q(*value)) : std::nullopt;
    }
    /// The value as the driver gives it, whatever its type.
    QVariant value() { return next(); }
    template <Stored Enum>
    Enum choice() {
        const std::string word = text();
        const std::optional<Enum> value = from_stored_name<Enum>(word);
        if (!value) fault_ = word;
        return value.value_or(Enum{});
    }

    /// What names_text() made.
    template <Stored Enum>
    std::vector<Enum> choices() {
        std::vector<Enum> values;
        for (const QString& word : qtext().split(u' ', Qt::SkipEmptyParts)) {
            const std::string name = word.toStdString();
            const std::optional<Enum> value = from_stored_name<Enum>(name);
            if (value) values.push_back(*value);
            else fault_ = name;
        }
        return values;
    }

    /// The text of a value that could not be understood.
    [[nodiscard]] const std::optional<std::string>& fault() const { return fault_; }

private:
    QVariant next() { return query_.value(column_++); }

    const QSqlQuery& query_;
    int column_ = 0;
    std::optional<std::string> fault_;
};

/// A prepared statement. Values reach the database only as bound values, never as part of the SQL.
class Statement {
public:
    Statement(const QSqlDatabase& database, const QString& sql);

    /// Runs with one value for every '?'. May be called again with other values.
    template <typename... Values>
    Result<Done> run(const Values&... values) {
        bound_ = 0;
        unstorable_.reset();
        (bind(values), ...);
        return execute_bound();
    }

    /// Runs, and makes a value of every row with `make(Row&)`.
    template <typename Make, typename... Values>
    auto all(Make make, const Values&... values)
        -> Result<std::vector<decltype(make(std::declval<Row&>()))>> {
        std::vector<decltype(make(std::declval<Row&>()))> found;
        const Result<Done> ran = run(values...);
        if (!ran) return ran.error();
        while (query_.next()) {
            Row row(query_);
            found.push_back(make(row));
            if (row.fault()) return database_error(database_, *row.fault());
        }
        const Result<Done> finished = finish();
        if (!finished) return finished.error();
        return found;
    }

    /// Runs, and shows every row to `visit(Row&)`, which gives back Result<Done>; the first error ends
    /// it. For tables too long to hold.
    template <typename Visit, typename... Values>
    Result<Done> each(Visit visit, const Values&... values) {
        const Result<Done> ran = run(values...);
        if (!ran) return ran;
        while (query_.next()) {
            Row row(query_);
            const Result<Done> visited = visit(row);
            if (!visited) return visited;
        }
        return finish();
    }

    /// Runs, and makes a value of the first row, if there is one.
    template <typename Make, typename... Values>
    auto first(Make make, const Values&... values)
        -> Result<std::optional<decltype(make(std::declval<Row&>()))>> {
        std::optional<decltype(make(std::declval<Row&>()))> found;
        auto rows = all(std::move(make), values...);
        if (!rows) return rows.error();
        if (!rows->empty()) found = std::move(rows->front());
        return found;
    }

    /// Row number that the last INSERT gave.
    [[nodiscard]] qint64 new_row() const { return query_.lastInsertId().toLongLong(); }
    /// Rows that the last INSERT, UPDATE or DELETE touched.
    [[nodiscard]] int rows_changed() const { return query_.numRowsAffected(); }

private:
    void bind(int value) { put(value); }
    void bind(qint64 value) { put(value); }
    void bind(bool value) { put(value ? 1 : 0); }
    void bind(double value) { put(value); }
    void bind(const QString& value);
    void bind(const std::string& value);
    void bind(const QByteArray& value);
    /// One value for each text of the list.
    void bind(const QStringList& values) {
        for (const QString& value : values) bind(value);
    }
    void bind(const QVariant& value) { put(value); }
    /// One value for each of the list.
    void bind(const QVariantList& values) {
        for (const QVariant& value : values) put(value);
    }
    void bind(std::string_view value) { bind(std::string(value)); }
    void bind(const Date& value) { bind(to_text(value)); }
    void bind(const TimeOfDay& value) { put(value.minutes_after_midnight); }
    /// An empty id refers to nothing: NULL.
    template <typename Tag>
    void bind(const Id<Tag>& value) {
        if (value.empty()) {
            put(QVariant());
        } else {
            bind(value.text);
        }
    }
    template <Quantity Q>
    void bind(const Q& value) {
        put(double(value.value()));
    }
    template <Stored Enum>
    void bind(const Enum& value) {
        bind(stored_name(value));
    }
    template <typename Value>
    void bind(const std::optional<Value>& value) {
        if (value) {
            bind(*value);
        } else {
            put(QVariant());
        }
    }

    void put(const QVariant& value) { query_.bindValue(bound_++, value); }
    Result<Done> execute_bound();
    Result<Done> finish();

    QSqlDatabase database_;
    QSqlQuery query_;
    int bound_ = 0;
    std::optional<Error> unprepared_;
    std::optional<Error> unstorable_;
};

/// A transaction, rolled back unless committed.
class Transaction {
public:
    /// For reading several tables at one state of the database.
    static Result<Transaction> begin_reading(const QSqlDatabase& database);
    /// Takes the right to write at once (waiting for it as long as the busy timeout), so that no
    /// later statement can find the file taken by another writer. Refuses a file that is no longer
    /// at its place (database_gone), into which SQLite would write without a word.
    static Result<Transaction> begin_writing(const QSqlDatabase& database);
    Transaction(Transaction&& other) noexcept
        : database_(std::move(other.database_)),
          open_(std::exchange(other.open_, false)),
          writing_(other.writing_) {}
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();

    /// @returns database_gone when the file is no longer there: a write into it would be lost
    Result<Done> commit();

private:
    explicit Transaction(QSqlDatabase database) : database_(std::move(database)), open_(true) {}
    static Result<Transaction> begin(const QSqlDatabase& database, const QString& sql);
    [[nodiscard]] Result<Done> check_still_there() const;

    QSqlDatabase database_;
    bool open_ = false;
    bool writing_ = false;
};

}  // namespace leadline
