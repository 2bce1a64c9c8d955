// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/guest_store.h"

#include <QStringList>
#include <optional>

#include "core/records/person_search.h"
#include "core/records/persons.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

KnownGuest read_known(Row& row) {
    const qint64 id = row.number();
    const int sessions = row.small_number();
    const std::optional<Date> last = row.optional_date();
    return KnownGuest{id, read_lasting(row), sessions, last};
}

/// Row numbers as one bound value: a JSON array.
QString as_json(const std::vector<qint64>& ids) {
    QStringList texts;
    for (const qint64 id : ids) texts += QString::number(id);
    return u"["_qs + texts.join(u',') + u"]"_qs;
}

}  // namespace

Result<std::vector<KnownGuest>> GuestStore::find(const QString& text, int limit) {
    const Result<std::vector<qint64>> ids = find_persons(database_.connection(), text, limit);
    if (!ids) return ids.error();
    return read(*ids);
}

Result<std::vector<qint64>> GuestStore::find_rows(const QString& text, int limit) {
    return find_persons(database_.connection(), text, limit);
}

Result<std::vector<KnownGuest>> GuestStore::read(const std::vector<qint64>& rows) {
    return Statement(database_.connection(),
                     u"SELECT p.id, (SELECT count(DISTINCT g.session_id) FROM session_guests g "
                     "WHERE g.person_id = p.id), "
                     "(SELECT max(s.date) FROM session_guests g JOIN sessions s "
                     "ON s.id = g.session_id WHERE g.person_id = p.id), "
                     "p.name, p.birth_date, p.language, p.body_mass_kg, p.body_height_m, "
                     "p.shoe_size_eu, p.measured_rmv_l_per_min, p.dives_before, p.phone, p.email "
                     "FROM json_each(?) listed JOIN persons p ON p.id = listed.value "
                     "ORDER BY listed.key"_qs)
        .all(read_known, as_json(rows));
}

Result<std::vector<KnownGuest>> GuestStore::page(int first, int count) {
    const Result<std::vector<qint64>> ids = persons_from(database_.connection(), first, count);
    if (!ids) return ids.error();
    return read(*ids);
}

Result<int> GuestStore::count() { return count_persons(database_.connection()); }

}  // namespace leadline
