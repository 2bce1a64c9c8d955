// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/restore.h"

#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <memory>
#include <utility>

#include "core/records/check.h"
#include "core/records/database.h"
#include "core/records/export.h"
#include "core/records/file_care.h"
#include "core/records/migrations.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

constexpr double share_of_staging = 0.4;
constexpr double share_before_comparing = 0.5;

/// Beside the database, so that it can be put in its place by a rename; remove_leftovers() knows
/// the form of the name.
QString scratch_path(const QString& database_path) {
    const QFileInfo info(database_path);
    return info.absolutePath() + u'/' + info.completeBaseName() + u"-scratch-"_qs +
           QUuid::createUuid().toString(QUuid::WithoutBraces) + u".part"_qs;
}

/// What is wrong with a scratch file is wrong with the copy it came from. A full disk stays one.
Error about(Error error, const QString& copy_path) {
    if (error.code != ErrorCode::disk_full) error.place = copy_path.toStdString();
    return error;
}

Result<Done> asked(const GoOn& go_on, double share, const QString& what) {
    if (!go_on || go_on(share)) return Done{};
    return Error{ErrorCode::cancelled, what.toStdString(), {}, {}};
}

Result<Done> bring_to_newest(const QString& scratch) {
    const Result<std::vector<MigrationStep>> steps = built_in_steps();
    if (!steps) return steps.error();
    const auto connection = SideConnection::open(scratch, SideConnection::Access::read_write);
    if (!connection) return connection.error();
    const QSqlDatabase database = (*connection)->database();
    return in_turn([&] { return execute(database, u"PRAGMA secure_delete = ON"_qs); },
                   [&] { return migrate(database, *steps, KeepOld::no); });
}

/// Makes a copy ready in a scratch file: whole, ours, and of the newest schema.
/// @returns the schema the copy had
Result<int> stage(const QString& copy_path, const QString& scratch, const GoOn& go_on) {
    if (!QFileInfo(copy_path).isFile()) {
        return Error{ErrorCode::file_unreadable, copy_path.toStdString(),
                     std::make_error_code(std::errc::no_such_file_or_directory).message(), {}};
    }
    const bool is_export = copy_path.endsWith(u".json"_qs, Qt::CaseInsensitive);
    const Result<Done> copied = is_export
                                    ? import_records(copy_path, scratch, go_on)
                                    : copy_pages(copy_path, scratch, go_on, share_of_staging);
    // The errors of an export name the place in it.
    if (!copied && is_export) return copied.error();
    if (!copied) return about(copied.error(), copy_path);
    const GoOn checking =
        go_on ? GoOn([go_on](double) { return go_on(share_of_staging); }) : GoOn();
    const Result<int> version = check_records_file(scratch, CheckDepth::thorough, checking);
    if (!version) return about(version.error(), copy_path);
    const Result<Done> newest = bring_to_newest(scratch);
    if (!newest) return about(newest.error(), copy_path);
    const Result<int> whole = check_records_file(scratch, CheckDepth::thorough, checking);
    if (!whole) return about(whole.error(), copy_path);
    return version;
}

/// The rows of a copy alone, as if nothing stood there now.
Result<Done> describe_copy(Database& copy, const GoOn& go_on, RestorePreview& preview) {
    const auto nothing = Database::open(u":memory:"_qs);
    if (!nothing) return nothing.error();
    Result<SessionChanges> sessions = compare_sessions(**nothing, copy, part_of(go_on, 0.0, 0.5));
    if (!sessions) return sessions.error();
    Result<std::vector<TableChange>> tables =
        compare_tables((*nothing)->connection(), copy.connection(), part_of(go_on, 0.5, 1.0));
    if (!tables) return tables.error();
    preview.sessions = std::move(sessions->changed);
    preview.tables = std::move(*tables);
    return Done{};
}

Result<Done> describe_changes(Database& now, Database& copy, const GoOn& go_on,
                              RestorePreview& preview) {
    const Result<Transaction> state = Transaction::begin_reading(now.connection());
    if (!state) return state.error();
    Result<SessionChanges> sessions = compare_sessions(now, copy, part_of(go_on, 0.0, 0.5));
    if (!sessions) return sessions.error();
    Result<std::vector<TableChange>> tables =
        compare_tables(now.connection(), copy.connection(), part_of(go_on, 0.5, 1.0));
    if (!tables) return tables.error();
    preview.sessions = std::move(sessions->changed);
    preview.sessions_same = sessions->same;
    preview.tables = std::move(*tables);
    return Done{};
}

/// Opens the records of now, and never makes them.
Result<std::unique_ptr<Database>> open_existing(const QString& path) {
    if (!QFileInfo::exists(path)) {
        return Error{ErrorCode::database_gone, path.toStdString(), {}, {}};
    }
    return Database::open(path);
}

/// Keeps records that cannot be copied by SQLite as the bytes they are, with the side file that
/// may hold their last changes.
Result<RecordCopy> keep_bytes(const QString& database_path, CopyTime now) {
    const Result<Done> folder = make_private_folder(copies_folder(database_path));
    if (!folder) return folder.error();
    RecordCopy copy = free_copy_place(database_path, CopyKind::damaged, now);
    for (const char* side : {"-wal", ""}) {
        const QString from = database_path + QLatin1String(side);
        const QString to = copy.path + QLatin1String(side);
        if (!QFileInfo::exists(from)) continue;
        const UnfinishedFile part(to + u".part"_qs);
        QFile source(from);
        if (!source.copy(part.path())) {
            return Error{ErrorCode::database_failed, to.toStdString(),
                         source.errorString().toStdString(), {}};
        }
        QFile::setPermissions(part.path(), QFileDevice::ReadOwner | QFileDevice::WriteOwner);
        const Result<Done> placed = put_in_place(part.path(), to);
        if (!placed) return placed.error();
    }
    copy.bytes = QFileInfo(copy.path).size();
    return copy;
}

/// A database of another program is no damage: it is never replaced.
bool is_damage(const Error& error) {
    return error.code == ErrorCode::database_damaged;
}

/// Nobody else has the file open when this succeeds, and its side files are gone: SQLite leaves WAL
/// mode only for the last connection. Left to itself an old side file would be played into the new
/// records.
Result<Done> become_the_only_one(const QSqlDatabase& database) {
    const auto mode = Statement(database, u"PRAGMA journal_mode = DELETE"_qs)
                          .first([](Row& row) { return row.text(); });
    if (!mode) return mode.error();
    if (mode->value_or("") != "delete") {
        return Error{ErrorCode::database_locked, database.databaseName().toStdString(), {}, {}};
    }
    return execute(database, u"BEGIN EXCLUSIVE"_qs);
}

/// Changes when another connection has committed something; none when it cannot be read.
std::optional<qint64> state_number(const QSqlDatabase& database) {
    const auto number = Statement(database, u"PRAGMA data_version"_qs)
                            .first([](Row& row) { return row.number(); });
    return number ? *number : std::nullopt;
}

/// Keeps the records as they are by SQLite, then replaces them, unless somebody was in between.
Result<RecordCopy> keep_and_replace(const QString& database_path, const QString& scratch,
                                    CopyTime now, const GoOn& go_on) {
    const auto connection =
        SideConnection::open(database_path, SideConnection::Access::read_write);
    if (!connection) return connection.error();
    const QSqlDatabase database = (*connection)->database();
    const std::optional<qint64> before = state_number(database);
    const Result<RecordCopy> kept =
        make_copy(database_path, CopyKind::before_restore, now, go_on);
    if (!kept) return kept;
    const Result<Done> replaced = in_turn(
        [&] { return asked(go_on, 1.0, database_path); },
        [&] { return become_the_only_one(database); },
        [&]() -> Result<Done> {
            // Another program may have saved something between the copy and our lock.
            if (state_number(database) == before) return Done{};
            return Error{ErrorCode::database_locked, database_path.toStdString(), {}, {}};
        },
        [&] { return put_in_place(scratch, database_path); });
    if (replaced) return kept;
    // While the new records are not in their place the old ones stand as they did, and a copy of
    // them has no use. After the rename it is all that is left of them.
    if (QFileInfo::exists(scratch)) static_cast<void>(remove_copy(*kept));
    return replaced.error();
}

/// The same for records that SQLite cannot read, and so cannot lock either.
Result<RecordCopy> replace_damaged(const QString& database_path, const QString& scratch,
                                   CopyTime now) {
    Result<RecordCopy> kept = keep_bytes(database_path, now);
    if (!kept) return kept;
    // The bytes of the side file are kept; played into the new records they would ruin them.
    for (const char* side : {"-wal", "-shm", "-journal"}) {
        QFile::remove(database_path + QLatin1String(side));
    }
    const Result<Done> replaced = put_in_place(scratch, database_path);
    if (!replaced) return replaced.error();
    return kept;
}

}  // namespace

Result<RestorePreview> preview_restore(const QString& database_path, const QString& copy_path,
                                       const GoOn& go_on) {
    const UnfinishedFile scratch(scratch_path(database_path));
    const Result<int> version = stage(copy_path, scratch.path(), go_on);
    if (!version) return version.error();
    const Result<Done> wanted = asked(go_on, share_before_comparing, copy_path);
    if (!wanted) return wanted.error();
    const auto copy = Database::open(scratch.path());
    if (!copy) return about(copy.error(), copy_path);

    const GoOn comparing = part_of(go_on, share_before_comparing, 1.0);
    RestorePreview preview;
    preview.schema_of_copy = *version;
    const auto now = open_existing(database_path);
    const Result<Done> described =
        now ? describe_changes(**now, **copy, comparing, preview) : Result<Done>(now.error());
    if (described) return preview;
    if (described.error().code == ErrorCode::cancelled) return described.error();
    preview.unreadable_now = described.error();
    const Result<Done> alone = describe_copy(**copy, comparing, preview);
    if (!alone) return alone.error();
    return preview;
}

Result<std::optional<RecordCopy>> restore_copy(const QString& database_path,
                                               const QString& copy_path, CopyTime now,
                                               const GoOn& go_on) {
    const UnfinishedFile scratch(scratch_path(database_path));
    const Result<int> staged = stage(copy_path, scratch.path(), go_on);
    if (!staged) return staged.error();
    const GoOn second_half = part_of(go_on, share_before_comparing, 1.0);
    if (!QFileInfo::exists(database_path)) {
        const Result<Done> placed = put_in_place(scratch.path(), database_path);
        if (!placed) return placed.error();
        return std::optional<RecordCopy>();
    }
    Result<RecordCopy> kept =
        keep_and_replace(database_path, scratch.path(), now, second_half);
    if (!kept && is_damage(kept.error())) {
        kept = replace_damaged(database_path, scratch.path(), now);
    }
    if (!kept) return kept.error();
    return std::optional<RecordCopy>(std::move(*kept));
}

}  // namespace leadline
