// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <system_error>
#include <utility>

#include "core/physics/result.h"

namespace leadline {

/// A failure of the system at a file as a value: disk_full where there is no room, otherwise
/// database_failed with the system's reason.
Error file_failure(const QString& path, const std::error_code& reason);

/// An empty file that only its owner may read: the records hold answers about health. What stood
/// there is gone.
Result<Done> make_private_file(const QString& path);

/// A folder that only its owner may enter, made with the folders above it where it is missing.
Result<Done> make_private_folder(const QString& path);

/// Waits until a file's content, or the names in a folder, stand on the disk.
Result<Done> flush_to_disk(const QString& path);

/// Gives a finished file its name, in place of an older one: content on the disk first, then the
/// name, then the folder, so that a cut of power leaves the old or the new one and no half.
Result<Done> put_in_place(const QString& unfinished, const QString& kept);

/// Removes a database file with the side files SQLite may have made for it. Missing ones are fine.
void remove_with_side_files(const QString& path);

/// A file in the making, removed with its side files unless it was put in its place meanwhile.
class UnfinishedFile {
public:
    explicit UnfinishedFile(QString path) : path_(std::move(path)) {}
    ~UnfinishedFile() { remove_with_side_files(path_); }
    UnfinishedFile(const UnfinishedFile&) = delete;
    UnfinishedFile& operator=(const UnfinishedFile&) = delete;
    [[nodiscard]] const QString& path() const { return path_; }

private:
    QString path_;
};

/// Whether two SQLite files hold the same pages. The counter of changes in the header is left out:
/// it also counts the switching of the journal's kind.
Result<bool> same_pages(const QString& one, const QString& other);

}  // namespace leadline
