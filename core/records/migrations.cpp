// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/migrations.h"

#include <QDir>
#include <QFile>
#include <QUuid>

#include <algorithm>
#include <string>

#include "core/records/file_care.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// Marks the file as ours in SQLite's header ("LdLn"), so that a database of another program is
/// not taken for an old one of ours.
constexpr int application_id = 0x4c644c6e;

Result<int> number_of(const QSqlDatabase& database, const QString& sql) {
    const auto found = Statement(database, sql).first([](Row& row) { return row.small_number(); });
    if (!found) return found.error();
    return found->value_or(0);
}

Result<Done> set_number(const QSqlDatabase& database, const QString& pragma, int value) {
    // A PRAGMA takes no bound values; the value is a number of our own.
    return execute(database, u"PRAGMA %1 = %2"_qs.arg(pragma).arg(value));
}

bool is_comment(QStringView line) {
    const QStringView text = line.trimmed();
    return text.isEmpty() || text.startsWith(u"--");
}

/// Number in front of a migration file's name: 1 for "001_first.sql"; 0 if there is none.
int step_number(const QString& file_name) { return file_name.section(u'_', 0, 0).toInt(); }

Result<Done> keep_copy(const QSqlDatabase& database, int version) {
    const QString kept = copy_before(database.databaseName(), version);
    // A name of its own: another process may be keeping its copy at the same time.
    const QString unfinished =
        kept + u'.' + QUuid::createUuid().toString(QUuid::WithoutBraces) + u".part"_qs;
    Result<Done> copied = in_turn(
        [&] { return make_private_file(unfinished); },
        [&] { return Statement(database, u"VACUUM INTO ?"_qs).run(unfinished); },
        [&] { return put_in_place(unfinished, kept); });
    if (!copied) QFile::remove(unfinished);
    return copied;
}

Result<Done> check_references(const QSqlDatabase& database) {
    const auto broken = Statement(database, u"PRAGMA foreign_key_check"_qs).all([](Row& row) {
        return row.text();
    });
    if (!broken) return broken.error();
    if (!broken->empty()) {
        return database_error(database, "FOREIGN KEY constraint failed: " + broken->front());
    }
    return Done{};
}

Result<Done> run_statements(const QSqlDatabase& database, const QStringList& statements) {
    for (const QString& statement : statements) {
        const Result<Done> ran = execute(database, statement);
        if (!ran) return ran;
    }
    return Done{};
}

Result<Done> take_step(const QSqlDatabase& database, const MigrationStep& step) {
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    // Another process may have taken the step between our first look and the transaction.
    const Result<int> version = stored_schema_version(database);
    if (!version) return version.error();
    if (*version >= step.version) return Done{};
    return in_turn(
        [&] { return run_statements(database, step.statements); },
        [&] { return set_number(database, u"application_id"_qs, application_id); },
        [&] { return set_number(database, u"user_version"_qs, step.version); },
        [&] { return check_references(database); }, [&] { return transaction->commit(); });
}

Result<Done> take_steps(const QSqlDatabase& database, const std::vector<MigrationStep>& steps,
                        int version, KeepOld keep_old) {
    const auto first = std::find_if(steps.begin(), steps.end(), [version](const auto& step) {
        return step.version > version;
    });
    if (first == steps.end()) return Done{};
    const bool on_disk = database.databaseName() != u":memory:"_qs;
    if (version > 0 && on_disk && keep_old == KeepOld::yes) {
        const Result<Done> kept = keep_copy(database, first->version);
        if (!kept) return kept;
    }
    for (auto step = first; step != steps.end(); ++step) {
        const Result<Done> taken = take_step(database, *step);
        if (!taken) return taken;
    }
    return Done{};
}

Result<Done> enforce_foreign_keys(const QSqlDatabase& database) {
    const Result<Done> set = execute(database, u"PRAGMA foreign_keys = ON"_qs);
    if (!set) return set;
    const Result<int> enforced = number_of(database, u"PRAGMA foreign_keys"_qs);
    if (!enforced) return enforced.error();
    if (*enforced != 1) return database_error(database, "foreign_keys=0");
    return Done{};
}

}  // namespace

QStringList statements_in(const QString& sql) {
    QStringList statements;
    QStringList piece;
    const auto close_piece = [&] {
        if (!std::all_of(piece.begin(), piece.end(), is_comment)) {
            statements += piece.join(u'\n').trimmed();
        }
        piece.clear();
    };
    for (const QString& line : sql.split(u'\n')) {
        if (line.trimmed() == u"-- statement"_qs) {
            close_piece();
        } else {
            piece += line;
        }
    }
    close_piece();
    return statements;
}

Result<std::vector<MigrationStep>> built_in_steps() {
    const QDir folder(u":/leadline/records/migrations"_qs);
    std::vector<MigrationStep> steps;
    for (const QString& name : folder.entryList({u"*.sql"_qs}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        const int version = step_number(name);
        if (version != int(steps.size()) + 1 || !file.open(QIODevice::ReadOnly)) {
            return Error{ErrorCode::database_failed, file.fileName().toStdString(), {}, {}};
        }
        steps.push_back({version, statements_in(QString::fromUtf8(file.readAll()))});
    }
    if (steps.empty()) {
        return Error{ErrorCode::database_failed, folder.path().toStdString(), {}, {}};
    }
    return steps;
}

Result<int> stored_schema_version(const QSqlDatabase& database) {
    struct Header {
        int version = 0;
        int owner = 0;
        int objects = 0;
    };
    // One statement sees one state, also while another process makes the tables.
    const auto header =
        Statement(database, u"SELECT (SELECT user_version FROM pragma_user_version), "
                            "(SELECT application_id FROM pragma_application_id), "
                            "(SELECT count(*) FROM sqlite_master)"_qs)
            .first([](Row& row) {
                return Header{row.small_number(), row.small_number(), row.small_number()};
            });
    if (!header) return header.error();
    const Header found = header->value_or(Header{});
    const bool empty = found.version == 0 && found.owner == 0 && found.objects == 0;
    if (!empty && found.owner != application_id) {
        return Error{ErrorCode::not_our_records, database.databaseName().toStdString(),
                     "application_id=" + std::to_string(found.owner), {}};
    }
    return found.version;
}

QString copy_before(const QString& database_path, int version) {
    return u"%1.before-schema-%2"_qs.arg(database_path).arg(version);
}

Result<Done> migrate(const QSqlDatabase& database, const std::vector<MigrationStep>& steps,
                     KeepOld keep_old) {
    const Result<int> version = stored_schema_version(database);
    if (!version) return version.error();
    const int newest = steps.empty() ? 0 : steps.back().version;
    if (*version > newest) {
        return Error{ErrorCode::database_newer, database.databaseName().toStdString(),
                     std::to_string(*version), std::to_string(newest)};
    }
    // A step that makes a table anew needs the references to it unenforced for a while; this can
    // only be switched outside a transaction. take_step() checks them all before it commits.
    const Result<Done> taken = in_turn(
        [&] { return execute(database, u"PRAGMA foreign_keys = OFF"_qs); },
        [&] { return take_steps(database, steps, *version, keep_old); });
    const Result<Done> enforced = enforce_foreign_keys(database);
    return taken ? enforced : taken;
}

}  // namespace leadline
