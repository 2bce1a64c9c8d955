// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/guest_store.h"

#include <QStringList>
#include <algorithm>
#include <utility>

#include "core/records/fold.h"
#include "core/records/persons.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// More different words than a name of 200 characters has room for: nobody can have them all.
constexpr qsizetype most_words = 100;

/// The search for persons with a number of words in their name. instr() and not LIKE: it knows no
/// wildcards, so that '%' and '_' mean themselves. The words are bound; only their count is in it.
QString find_sql(qsizetype words) {
    QStringList conditions(words, u"instr(p.folded_name, ?) > 0"_qs);
    conditions.prepend(u"1"_qs);
    return u"SELECT p.id, (SELECT count(DISTINCT g.session_id) FROM session_guests g "
           "               WHERE g.person_id = p.id), "
           "p.name, p.birth_date, p.language, p.body_mass_kg, p.body_height_m, p.shoe_size_eu, "
           "p.measured_rmv_l_per_min, p.dives_before, p.phone, p.email FROM persons p "
           "WHERE %1 ORDER BY p.folded_name, p.id LIMIT ?"_qs.arg(conditions.join(u" AND "_qs));
}

KnownGuest read_known(Row& row) {
    const qint64 id = row.number();
    const int sessions = row.small_number();
    return KnownGuest{id, read_lasting(row), sessions};
}

}  // namespace

Result<std::vector<KnownGuest>> GuestStore::find(const QString& text, int limit) {
    QStringList words = folded(text).split(u' ', Qt::SkipEmptyParts);
    words.removeDuplicates();
    if (words.size() > most_words) return std::vector<KnownGuest>();
    // SQLite takes a negative limit for none.
    return Statement(database_.connection(), find_sql(words.size()))
        .all(read_known, words, std::max(limit, 0));
}

Result<int> GuestStore::count() {
    const auto found = Statement(database_.connection(), u"SELECT count(*) FROM persons"_qs)
                           .first([](Row& row) { return row.small_number(); });
    if (!found) return found.error();
    return found->value_or(0);
}

}  // namespace leadline
