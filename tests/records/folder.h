// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QTemporaryDir>
#include <memory>
#include <stdexcept>
#include <string>
#include <utility>

#include "core/physics/result.h"
#include "core/records/database.h"

namespace leadline::test {

/// An error in words of a test's report.
std::string in_words(const Error& error);

/// The value of a result that a test takes for granted; the test fails with the error otherwise.
template <typename T>
T must(Result<T> result) {
    if (!result) throw std::runtime_error(in_words(result.error()));
    return std::move(*result);
}

/// A temporary folder with a database file.
class Folder {
public:
    Folder();
    [[nodiscard]] QString path(const QString& name) const { return folder_.filePath(name); }
    [[nodiscard]] QString records() const { return path(QStringLiteral("records.sqlite")); }

private:
    QTemporaryDir folder_;
};

std::unique_ptr<Database> open(const QString& path);

/// A file's bytes; writing replaces them.
QByteArray bytes_of(const QString& path);
void write_bytes(const QString& path, const QByteArray& bytes);

/// The number that a statement such as "SELECT count(*) FROM t" gives.
qint64 number(const Database& database, const QString& sql);
/// Runs a statement that a test takes for granted.
void run(const Database& database, const QString& sql);

}  // namespace leadline::test
