// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/records/folder.h"

#include <QFile>

#include "core/records/statement.h"

namespace leadline::test {

std::string in_words(const Error& error) {
    return "error " + std::to_string(static_cast<int>(error.code)) + " at '" + error.place +
           "': given '" + error.given + "', allowed '" + error.allowed + "'";
}

Folder::Folder() {
    if (!folder_.isValid()) throw std::runtime_error("no temporary folder");
}

std::unique_ptr<Database> open(const QString& path) { return must(Database::open(path)); }

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error(file.errorString().toStdString());
    return file.readAll();
}

void write_bytes(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) {
        throw std::runtime_error(file.errorString().toStdString());
    }
}

qint64 number(const Database& database, const QString& sql) {
    const auto found =
        must(Statement(database.connection(), sql).first([](Row& row) { return row.number(); }));
    return found.value();
}

void run(const Database& database, const QString& sql) {
    must(execute(database.connection(), sql));
}

}  // namespace leadline::test
