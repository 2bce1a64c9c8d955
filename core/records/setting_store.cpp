// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/setting_store.h"

#include "core/records/statement.h"

namespace leadline {

Result<std::optional<QString>> SettingStore::get(const QString& name) {
    return Statement(database_.connection(), u"SELECT value FROM settings WHERE name = ?"_qs)
        .first([](Row& row) { return row.qtext(); }, name);
}

Result<Done> SettingStore::put(const QString& name, const QString& value) {
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    return in_turn(
        [&] {
            return Statement(database,
                             u"INSERT INTO settings (name, value) VALUES (?, ?) "
                             "ON CONFLICT (name) DO UPDATE SET value = excluded.value"_qs)
                .run(name, value);
        },
        [&] { return transaction->commit(); });
}

}  // namespace leadline
