// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/backup.h"

#include <QSqlDatabase>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStringList>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <utility>

#include "core/records/check.h"
#include "core/records/file_care.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

const QString time_format = u"yyyy-MM-dd'T'HH-mm-ss-zzz'Z'"_qs;
const QString extension = u".sqlite"_qs;
const QString unfinished = u".part"_qs;

constexpr std::array<std::pair<CopyKind, const char*>, 4> kind_suffixes{{
    {CopyKind::by_schedule, ""},
    {CopyKind::by_hand, ".by-hand"},
    {CopyKind::before_restore, ".before-restore"},
    {CopyKind::damaged, ".damaged"},
}};

QString suffix_of(CopyKind kind) {
    for (const auto& [known, suffix] : kind_suffixes) {
        if (known == kind) return QString::fromLatin1(suffix);
    }
    return {};
}

QString base_of(const QString& database_path) {
    return QFileInfo(database_path).completeBaseName() + u'-';
}

QDateTime as_date_time(CopyTime time) {
    return QDateTime::fromMSecsSinceEpoch(time.time_since_epoch().count(), Qt::UTC);
}

/// The copy a file name stands for; none for any other name.
std::optional<RecordCopy> read_name(const QString& database_path, const QFileInfo& file) {
    const QString base = base_of(database_path);
    if (!file.fileName().startsWith(base)) return std::nullopt;
    const QString rest = file.fileName().mid(base.size());
    const qsizetype time_length = rest.indexOf(u'Z') + 1;
    QDateTime time = QDateTime::fromString(rest.left(time_length), time_format);
    if (!time.isValid()) return std::nullopt;
    time.setTimeSpec(Qt::UTC);
    const QString ending = rest.mid(time_length);
    for (const auto& [kind, suffix] : kind_suffixes) {
        if (ending != QString::fromLatin1(suffix) + extension) continue;
        return RecordCopy{file.filePath(),
                          CopyTime(std::chrono::milliseconds(time.toMSecsSinceEpoch())), kind,
                          file.size()};
    }
    return std::nullopt;
}

/// One state of the source, held from here on: what others write meanwhile neither shows in the
/// copy nor makes it start anew.
Result<Transaction> hold_state(const QSqlDatabase& database) {
    Result<Transaction> reading = Transaction::begin_reading(database);
    if (!reading) return reading;
    const Result<Done> looked = execute(database, u"SELECT count(*) FROM sqlite_master"_qs);
    if (!looked) return looked.error();
    return reading;
}

Error error_of(sqlite3* handle, int code, const QString& path) {
    const QSqlError error(QString(), QString::fromUtf8(sqlite3_errmsg(handle)),
                          QSqlError::UnknownError, QString::number(code));
    QSqlDatabase nameless;
    Error made = database_error(nameless, error);
    made.place = path.toStdString();
    return made;
}

Result<Done> run_backup(sqlite3* source, sqlite3* target, const QString& to, const GoOn& go_on,
                        double share) {
    constexpr int pages_a_step = 32;
    if (go_on && !go_on(0.0)) return Error{ErrorCode::cancelled, to.toStdString(), {}, {}};
    sqlite3_backup* backup = sqlite3_backup_init(target, "main", source, "main");
    if (backup == nullptr) return error_of(target, sqlite3_extended_errcode(target), to);
    int code = SQLITE_OK;
    bool stopped = false;
    while (code == SQLITE_OK && !stopped) {
        code = sqlite3_backup_step(backup, pages_a_step);
        const double all = std::max(1, sqlite3_backup_pagecount(backup));
        const double done = all - sqlite3_backup_remaining(backup);
        stopped = code == SQLITE_OK && go_on && !go_on(share * done / all);
    }
    const int finished = sqlite3_backup_finish(backup);
    if (stopped) return Error{ErrorCode::cancelled, to.toStdString(), {}, {}};
    if (code != SQLITE_DONE) return error_of(target, code, to);
    if (finished != SQLITE_OK) return error_of(target, finished, to);
    return Done{};
}

constexpr double share_of_copying = 0.6;

Result<Done> write_checked(const QString& database_path, const QString& part, const GoOn& go_on) {
    const GoOn while_checking =
        go_on ? GoOn([go_on](double) { return go_on(share_of_copying); }) : GoOn();
    return in_turn(
        [&] { return copy_pages(database_path, part, go_on, share_of_copying); },
        [&]() -> Result<Done> {
            if (go_on && !go_on(share_of_copying)) {
                return Error{ErrorCode::cancelled, database_path.toStdString(), {}, {}};
            }
            const Result<int> whole =
                check_records_file(part, CheckDepth::thorough, while_checking);
            if (whole) return Done{};
            // What is wrong with a copy just made was wrong with the records.
            Error error = whole.error();
            error.place = database_path.toStdString();
            return error;
        });
}

Result<RecordCopy> finish(const UnfinishedFile& part, RecordCopy copy) {
    const Result<Done> placed = put_in_place(part.path(), copy.path);
    if (!placed) return placed.error();
    copy.bytes = QFileInfo(copy.path).size();
    return copy;
}

/// Whether the newest copy holds just what a fresh one does.
bool is_unchanged(const QString& part, const std::vector<RecordCopy>& copies) {
    const auto newest = std::find_if(copies.begin(), copies.end(), [](const RecordCopy& copy) {
        return copy.kind != CopyKind::damaged;
    });
    return newest != copies.end() && same_pages(part, newest->path).value_or(false);
}

std::vector<CopyTime> times_of(const std::vector<RecordCopy>& copies, bool scheduled_only) {
    std::vector<CopyTime> times;
    for (const RecordCopy& copy : copies) {
        if (copy.kind == CopyKind::damaged) continue;
        if (scheduled_only && copy.kind != CopyKind::by_schedule) continue;
        times.push_back(copy.made);
    }
    return times;
}

int remove_old_copies(const QString& database_path, CopyTime now) {
    const std::vector<RecordCopy> copies = list_copies(database_path);
    const std::vector<CopyTime> gone = copies_to_remove(times_of(copies, true), now);
    int removed = 0;
    for (const RecordCopy& copy : copies) {
        if (copy.kind != CopyKind::by_schedule) continue;
        if (std::find(gone.begin(), gone.end(), copy.made) == gone.end()) continue;
        // One that cannot be removed now is found again next time.
        if (remove_copy(copy)) ++removed;
    }
    return removed;
}

}  // namespace

QString copies_folder(const QString& database_path) {
    return QFileInfo(database_path).absolutePath() + u"/backups"_qs;
}

QString copy_name(const QString& database_path, CopyTime made, CopyKind kind) {
    return base_of(database_path) + as_date_time(made).toString(time_format) + suffix_of(kind) +
           extension;
}

std::vector<RecordCopy> list_copies(const QString& database_path) {
    std::vector<RecordCopy> copies;
    const QDir folder(copies_folder(database_path));
    for (const QFileInfo& file : folder.entryInfoList(QDir::Files | QDir::NoSymLinks)) {
        std::optional<RecordCopy> copy = read_name(database_path, file);
        if (copy) copies.push_back(std::move(*copy));
    }
    std::sort(copies.begin(), copies.end(), [](const RecordCopy& a, const RecordCopy& b) {
        return std::pair(b.made, a.path) < std::pair(a.made, b.path);
    });
    return copies;
}

Result<Done> copy_pages(const QString& from, const QString& to, const GoOn& go_on, double share) {
    const auto source = SideConnection::open(from, SideConnection::Access::read_only);
    if (!source) return source.error();
    const Result<Transaction> state = hold_state((*source)->database());
    if (!state) return state.error();
    const Result<Done> made = make_private_file(to);
    if (!made) return made;
    const auto target = SideConnection::open(to, SideConnection::Access::read_write);
    if (!target) return target.error();
    const QSqlDatabase copy = (*target)->database();
    return in_turn(
        // We wait for the disk ourselves, once, before the copy gets its name.
        [&] { return execute(copy, u"PRAGMA synchronous = OFF"_qs); },
        [&] {
            return run_backup(sqlite_handle((*source)->database()), sqlite_handle(copy), to, go_on,
                              share);
        },
        // One file that stands for itself, whatever journal the source uses.
        [&] { return execute(copy, u"PRAGMA journal_mode = DELETE"_qs); });
}

RecordCopy free_copy_place(const QString& database_path, CopyKind kind, CopyTime now) {
    const QDir folder(copies_folder(database_path));
    RecordCopy copy{{}, now, kind, 0};
    while (true) {
        copy.path = folder.filePath(copy_name(database_path, copy.made, kind));
        if (!QFileInfo::exists(copy.path)) return copy;
        copy.made += std::chrono::milliseconds(1);
    }
}

Result<RecordCopy> make_copy(const QString& database_path, CopyKind kind, CopyTime now,
                             const GoOn& go_on) {
    const Result<Done> folder = make_private_folder(copies_folder(database_path));
    if (!folder) return folder.error();
    const RecordCopy copy = free_copy_place(database_path, kind, now);
    const UnfinishedFile part(copy.path + unfinished);
    const Result<Done> written = write_checked(database_path, part.path(), go_on);
    if (!written) return written.error();
    return finish(part, copy);
}

Result<ScheduledCopy> keep_scheduled_copy(const QString& database_path, CopyTime now,
                                          const GoOn& go_on) {
    const std::vector<RecordCopy> before = list_copies(database_path);
    if (!copy_is_due(times_of(before, false), now)) return ScheduledCopy{};
    const Result<Done> folder = make_private_folder(copies_folder(database_path));
    if (!folder) return folder.error();
    const RecordCopy copy = free_copy_place(database_path, CopyKind::by_schedule, now);
    const UnfinishedFile part(copy.path + unfinished);
    const Result<Done> written = write_checked(database_path, part.path(), go_on);
    if (!written) return written.error();
    if (is_unchanged(part.path(), before)) return ScheduledCopy{std::nullopt, true, 0};
    Result<RecordCopy> made = finish(part, copy);
    if (!made) return made.error();
    return ScheduledCopy{std::move(*made), true, remove_old_copies(database_path, now)};
}

Result<Done> remove_copy(const RecordCopy& copy) {
    QFile file(copy.path);
    if (file.exists() && !file.remove()) {
        return Error{ErrorCode::file_unwritable, copy.path.toStdString(),
                     file.errorString().toStdString(), {}};
    }
    remove_with_side_files(copy.path);
    return Done{};
}

void remove_leftovers(const QString& database_path, CopyTime now) {
    const QDateTime before = as_date_time(now - std::chrono::hours(1));
    const QString base = base_of(database_path);
    const auto clean = [&](const QString& place, const QStringList& names) {
        for (const QFileInfo& file : QDir(place).entryInfoList(names, QDir::Files)) {
            if (file.lastModified() < before) QFile::remove(file.filePath());
        }
    };
    clean(copies_folder(database_path), {base + u"*.part*"_qs});
    // Other files of the user's may lie beside the database.
    clean(QFileInfo(database_path).absolutePath(),
          {base + u"scratch-*.part*"_qs, base + u"import-*.part*"_qs,
           QFileInfo(database_path).fileName() + u".before-schema-*.part*"_qs});
}

CopyTime current_time() {
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

}  // namespace leadline
