// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/file_care.h"

#include <QFile>
#include <QFileInfo>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <string>

namespace leadline {

namespace {

std::string native(const QString& path) { return QFile::encodeName(path).toStdString(); }

/// Places in the header of a SQLite file (SQLite documentation, "Database File Format", section
/// 1.3; from memory): the file change counter at 24 and the version-valid-for number at 92, four bytes each.
constexpr std::array<qsizetype, 2> counters{24, 92};
constexpr qsizetype counter_bytes = 4;

void blank_counters(QByteArray& first_block) {
    for (const qsizetype place : counters) {
        if (first_block.size() < place + counter_bytes) continue;
        std::fill_n(first_block.begin() + place, counter_bytes, '\0');
    }
}

}  // namespace

Error file_failure(const QString& path, const std::error_code& reason) {
    const bool full = reason == std::errc::no_space_on_device || reason.value() == EDQUOT;
    return Error{full ? ErrorCode::disk_full : ErrorCode::database_failed, path.toStdString(),
                 reason.message(), {}};
}

Result<Done> make_private_file(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate,
                   QFileDevice::ReadOwner | QFileDevice::WriteOwner)) {
        return Error{ErrorCode::database_failed, path.toStdString(),
                     file.errorString().toStdString(), {}};
    }
    return Done{};
}

Result<Done> make_private_folder(const QString& path) {
    if (QFileInfo(path).isDir()) return Done{};
    std::error_code failure;
    std::filesystem::create_directories(native(QFileInfo(path).absolutePath()), failure);
    if (failure) return file_failure(path, failure);
    // Another process may have made it in the meantime, which is as good.
    if (::mkdir(native(path).c_str(), S_IRWXU) != 0 && errno != EEXIST) {
        return file_failure(path, {errno, std::generic_category()});
    }
    return flush_to_disk(QFileInfo(path).absolutePath());
}

Result<Done> flush_to_disk(const QString& path) {
    const int descriptor = ::open(native(path).c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return file_failure(path, {errno, std::generic_category()});
    std::error_code failure;
    if (::fsync(descriptor) != 0) failure.assign(errno, std::generic_category());
    ::close(descriptor);
    if (failure) return file_failure(path, failure);
    return Done{};
}

Result<Done> put_in_place(const QString& unfinished, const QString& kept) {
    const Result<Done> flushed = flush_to_disk(unfinished);
    if (!flushed) return flushed;
    std::error_code failure;
    std::filesystem::rename(native(unfinished), native(kept), failure);
    if (failure) return file_failure(kept, failure);
    return flush_to_disk(QFileInfo(kept).absolutePath());
}

void remove_with_side_files(const QString& path) {
    for (const char* side : {"", "-wal", "-shm", "-journal"}) {
        QFile::remove(path + QLatin1String(side));
    }
}

Result<bool> same_pages(const QString& one, const QString& other) {
    constexpr qint64 block = qint64(1) << 20U;
    QFile first(one);
    QFile second(other);
    for (QFile* file : {&first, &second}) {
        if (file->open(QIODevice::ReadOnly)) continue;
        return Error{ErrorCode::database_failed, file->fileName().toStdString(),
                     file->errorString().toStdString(), {}};
    }
    if (first.size() != second.size()) return false;
    for (bool at_start = true; !first.atEnd(); at_start = false) {
        QByteArray left = first.read(block);
        QByteArray right = second.read(block);
        if (at_start) {
            blank_counters(left);
            blank_counters(right);
        }
        if (left != right) return false;
        if (left.isEmpty()) break;
    }
    return true;
}

}  // namespace leadline
