// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/database.h"

#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>
#include <QStandardPaths>
#include <QUuid>
#include <algorithm>
#include <chrono>
#include <filesystem>
#include <system_error>
#include <thread>
#include <utility>

#include "core/records/migrations.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// How long an opening or a write waits for another process that holds the file.
constexpr std::chrono::milliseconds longest_wait{2000};

Error file_error(const QString& path, std::string reason) {
    return Error{ErrorCode::database_failed, path.toStdString(), std::move(reason), {}};
}

/// Makes the folder where it is missing, and the file, readable by its owner alone: it will hold
/// answers about health. SQLite gives its side files the same permissions.
Result<Done> make_file(const QString& path) {
    const QFileInfo info(path);
    if (info.isDir()) {
        return file_error(path, std::make_error_code(std::errc::is_a_directory).message());
    }
    if (info.exists()) return Done{};
    std::error_code failure;
    std::filesystem::create_directories(QFile::encodeName(info.absolutePath()).toStdString(),
                                        failure);
    if (failure) return file_error(path, failure.message());
    QFile file(path);
    const QFileDevice::Permissions owner_only = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
    // NewOnly: another process may have made it in the meantime, which is as good.
    const bool made = file.open(QIODevice::WriteOnly | QIODevice::NewOnly, owner_only);
    if (!made && !file.exists()) return file_error(path, file.errorString().toStdString());
    return Done{};
}

Result<Done> prepare(const QSqlDatabase& database) {
    const Result<std::vector<MigrationStep>> steps = built_in_steps();
    if (!steps) return steps.error();
    // First of all a look at whose file it is and how new, which changes nothing in it.
    const Result<int> version = stored_schema_version(database);
    if (!version) return version.error();
    if (*version > steps->back().version) return migrate(database, *steps);
    return in_turn(
        // Readers never wait for a writer; a commit stands on the disk when it returns.
        [&] { return execute(database, u"PRAGMA journal_mode = WAL"_qs); },
        [&] { return execute(database, u"PRAGMA synchronous = FULL"_qs); },
        // What is removed (answers about health) is overwritten, not only forgotten.
        [&] { return execute(database, u"PRAGMA secure_delete = ON"_qs); },
        [&] { return migrate(database, *steps); });
}

/// [ms]; none where it cannot be read.
std::optional<int> wait_of(const QSqlDatabase& database) {
    const auto wait = Statement(database, u"PRAGMA busy_timeout"_qs).first([](Row& row) {
        return row.small_number();
    });
    return wait ? *wait : std::nullopt;
}

/// Nothing to tell where it fails: the connection then waits as before.
void set_wait(const QSqlDatabase& database, int milliseconds) {
    // A PRAGMA takes no bound values; the value is a number of our own.
    static_cast<void>(execute(database, u"PRAGMA busy_timeout = %1"_qs.arg(milliseconds)));
}

/// SQLite's own waiting does not cover everything: where two processes change the journal's mode at
/// once, one of them hears "locked" without a wait, so that they cannot wait for each other. Whatever
/// prepare() has done by then it finds done when it is asked again.
Result<Done> prepare_in_turn(const QSqlDatabase& database) {
    constexpr std::chrono::milliseconds pause{10};
    using Clock = std::chrono::steady_clock;
    const auto until = Clock::now() + longest_wait;
    for (;;) {
        Result<Done> prepared = prepare(database);
        const bool locked = !prepared && prepared.error().code == ErrorCode::database_locked;
        const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(until - Clock::now());
        if (!locked || left <= pause) {
            set_wait(database, int(longest_wait.count()));
            return prepared;
        }
        std::this_thread::sleep_for(pause);
        set_wait(database, int((left - pause).count()));
    }
}

}  // namespace

Result<std::unique_ptr<Database>> Database::open(const QString& path) {
    if (path != u":memory:"_qs) {
        const Result<Done> made = make_file(path);
        if (!made) return made.error();
    }
    const QString name = u"leadline-"_qs + QUuid::createUuid().toString(QUuid::WithoutBraces);
    // Closes the connection however this function ends.
    std::unique_ptr<Database> opened(new Database(name, path));
    QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_qs, name);
    database.setConnectOptions(u"QSQLITE_BUSY_TIMEOUT=%1"_qs.arg(longest_wait.count()));
    database.setDatabaseName(path);
    if (!database.open()) return database_error(database, database.lastError());
    const Result<Done> prepared = prepare_in_turn(database);
    if (!prepared) return prepared.error();
    return opened;
}

Database::Database(QString connection_name, QString path)
    : connection_name_(std::move(connection_name)), path_(std::move(path)) {}

Database::~Database() {
    connection().close();
    QSqlDatabase::removeDatabase(connection_name_);
}

QString Database::path() const { return path_; }

int Database::schema_version() const { return stored_schema_version(connection()).value_or(0); }

QSqlDatabase Database::connection() const {
    return QSqlDatabase::database(connection_name_, false);
}

ShortWait::ShortWait(const Database& database, std::chrono::milliseconds longest)
    : database_(database), before_(wait_of(database.connection())) {
    if (before_) set_wait(database_.connection(), std::min(*before_, int(longest.count())));
}

ShortWait::~ShortWait() {
    if (before_) set_wait(database_.connection(), *before_);
}

QString default_database_path() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           u"/leadline/records.sqlite"_qs;
}

}  // namespace leadline
