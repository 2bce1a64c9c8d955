// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/person_merge.h"

#include <QStringList>
#include <array>
#include <string>

#include "core/records/health_store.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// A column whose gap is filled from the merged person, and what a gap is.
struct FilledColumn {
    const char16_t* name;
    const char16_t* gap;
};

constexpr std::array<FilledColumn, 7> filled_columns{{{u"body_mass_kg", u"NULL"},
                                                      {u"body_height_m", u"NULL"},
                                                      {u"shoe_size_eu", u"NULL"},
                                                      {u"measured_rmv_l_per_min", u"NULL"},
                                                      {u"dives_before", u"NULL"},
                                                      {u"phone", u"''"},
                                                      {u"email", u"''"}}};

QString text_of(const char16_t* text) { return QString::fromUtf16(text); }

Error no_such(const char* what, qint64 id) {
    return Error{ErrorCode::not_found, what, std::to_string(id), {}};
}

/// Fills the gaps, and says which columns those were.
Result<QStringList> fill_gaps(const QSqlDatabase& database, qint64 kept, qint64 merged) {
    QStringList filled;
    for (const FilledColumn& column : filled_columns) {
        // Names of columns are our own, never typed.
        Statement fill(database,
                       u"UPDATE persons SET %1 = (SELECT m.%1 FROM persons m WHERE m.id = ?) "
                       "WHERE id = ? AND %1 IS %2 AND "
                       "(SELECT m.%1 FROM persons m WHERE m.id = ?) IS NOT %2"_qs.arg(
                           text_of(column.name), text_of(column.gap)));
        const Result<Done> done = fill.run(merged, kept, merged);
        if (!done) return done.error();
        if (fill.rows_changed() > 0) filled += text_of(column.name);
    }
    return filled;
}

Result<Done> empty_gaps(const QSqlDatabase& database, qint64 kept, qint64 merged,
                        const QString& filled) {
    for (const FilledColumn& column : filled_columns) {
        if (!filled.contains(u'"' + text_of(column.name) + u'"')) continue;
        const Result<Done> done =
            Statement(database, u"UPDATE persons SET %1 = %2 WHERE id = ? AND %1 IS "
                                "(SELECT m.%1 FROM persons m WHERE m.id = ?)"_qs.arg(
                                    text_of(column.name), text_of(column.gap)))
                .run(kept, merged);
        if (!done) return done;
    }
    return Done{};
}

QString as_json(const QStringList& names) {
    return names.isEmpty() ? u"[]"_qs : QString(u"[\""_qs + names.join(u"\",\""_qs) + u"\"]"_qs);
}

struct StoredMerge {
    qint64 kept = 0;
    qint64 merged = 0;
    QString filled;
};

StoredMerge read_stored_merge(Row& row) {
    StoredMerge stored;
    stored.kept = row.number();
    stored.merged = row.number();
    stored.filled = row.qtext();
    return stored;
}

/// Sessions of guests whom a merge gave to the kept person, in which something was sealed for that
/// person since; without those in which the kept person is for another reason too.
Result<std::vector<SessionRow>> sessions_sealed_since(const QSqlDatabase& database, qint64 merge,
                                                      qint64 kept) {
    return Statement(database,
                     u"WITH given (session_id, guest_id) AS (SELECT session_id, guest_id "
                     "FROM person_merge_guests WHERE merge_id = ?) "
                     "SELECT DISTINCT r.session_id FROM health_records r "
                     "JOIN session_guests g ON g.session_id = r.session_id "
                     "WHERE r.person_id = ? AND g.person_id = r.person_id "
                     "AND (g.session_id, g.guest_id) IN (SELECT session_id, guest_id FROM given) "
                     "AND NOT EXISTS (SELECT 1 FROM session_guests o "
                     "WHERE o.session_id = r.session_id AND o.person_id = r.person_id "
                     "AND (o.session_id, o.guest_id) NOT IN "
                     "(SELECT session_id, guest_id FROM given))"_qs)
        .all([](Row& row) { return SessionRow{row.number()}; }, merge, kept);
}

}  // namespace

Result<bool> PersonMerges::is_shown(qint64 person) {
    const auto found = Statement(database_.connection(),
                                 u"SELECT count(*) FROM persons WHERE id = ? "
                                 "AND merged_into IS NULL AND erased = 0"_qs)
                           .first([](Row& row) { return row.number(); }, person);
    if (!found) return found.error();
    return found->value_or(0) == 1;
}

Result<qint64> PersonMerges::merge(qint64 kept, qint64 merged, const QString& at) {
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    for (const qint64 person : {kept, merged}) {
        const Result<bool> shown = is_shown(person);
        if (!shown) return shown.error();
        if (!*shown || kept == merged) return no_such("person", person);
    }
    const Result<QStringList> filled = fill_gaps(database, kept, merged);
    if (!filled) return filled.error();
    Statement add(database, u"INSERT INTO person_merges (kept_id, merged_id, merged_at, filled) "
                            "VALUES (?, ?, ?, ?)"_qs);
    const Result<Done> added = add.run(kept, merged, at, as_json(*filled));
    if (!added) return added.error();
    const qint64 id = add.new_row();
    const Result<Done> done = in_turn(
        [&] {
            return Statement(database,
                             u"INSERT INTO person_merge_guests (merge_id, session_id, guest_id) "
                             "SELECT ?, session_id, guest_id FROM session_guests "
                             "WHERE person_id = ?"_qs)
                .run(id, merged);
        },
        [&] {
            return Statement(database, u"UPDATE session_guests SET person_id = ? "
                                       "WHERE person_id = ?"_qs)
                .run(kept, merged);
        },
        [&] {
            return Statement(database, u"UPDATE persons SET merged_into = ? WHERE id = ?"_qs)
                .run(kept, merged);
        },
        [&] { return transaction->commit(); });
    if (!done) return done.error();
    return id;
}

Result<Done> PersonMerges::undo(qint64 merge) {
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const auto found =
        Statement(database,
                  u"SELECT m.kept_id, m.merged_id, m.filled FROM person_merges m "
                  "JOIN persons k ON k.id = m.kept_id JOIN persons p ON p.id = m.merged_id "
                  "WHERE m.id = ? AND k.merged_into IS NULL AND p.merged_into = k.id "
                  "AND k.erased = 0 AND p.erased = 0"_qs)
            .all(read_stored_merge, merge);
    if (!found) return found.error();
    if (found->empty()) return no_such("merge", merge);
    const StoredMerge& stored = found->front();
    const auto sealed_since = sessions_sealed_since(database, merge, stored.kept);
    if (!sealed_since) return sealed_since.error();
    if (!sealed_since->empty() && (health_ == nullptr || !health_->can_move())) {
        return Error{ErrorCode::vault_locked, {}, {}, {}};
    }
    for (const SessionRow session : *sealed_since) {
        const Result<Done> moved = health_->move(stored.kept, stored.merged, session);
        if (!moved) return moved;
    }
    return in_turn(
        [&] { return empty_gaps(database, stored.kept, stored.merged, stored.filled); },
        [&] {
            return Statement(database,
                             u"UPDATE session_guests SET person_id = ? WHERE person_id = ? "
                             "AND (session_id, guest_id) IN (SELECT session_id, guest_id "
                             "FROM person_merge_guests WHERE merge_id = ?)"_qs)
                .run(stored.merged, stored.kept, merge);
        },
        [&] {
            return Statement(database, u"UPDATE persons SET merged_into = NULL WHERE id = ?"_qs)
                .run(stored.merged);
        },
        [&] {
            return Statement(database, u"DELETE FROM person_merges WHERE id = ?"_qs).run(merge);
        },
        [&] { return transaction->commit(); });
}

Result<std::vector<PersonMerge>> PersonMerges::into(qint64 kept) {
    return Statement(database_.connection(),
                     u"SELECT m.id, m.kept_id, m.merged_id, p.name, m.merged_at "
                     "FROM person_merges m JOIN persons p ON p.id = m.merged_id "
                     "WHERE m.kept_id = ? ORDER BY m.id DESC"_qs)
        .all(
            [](Row& row) {
                PersonMerge merge;
                merge.id = row.number();
                merge.kept = row.number();
                merge.merged = row.number();
                merge.merged_name = row.qtext();
                merge.merged_at = row.qtext();
                return merge;
            },
            kept);
}

}  // namespace leadline
