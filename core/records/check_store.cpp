// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/check_store.h"

#include <utility>

#include "core/records/check_rows.h"
#include "core/records/plan_rows.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

SessionToCome read_head(Row& row) {
    SessionToCome found;
    found.row = SessionRow{row.number()};
    found.session.title = row.text();
    found.session.date = row.date();
    found.session.meeting_time = row.time_of_day();
    found.session.dive_time = row.time_of_day();
    return found;
}

Guest read_guest_to_come(Row& row) {
    Guest guest;
    guest.id = GuestId(row.text());
    guest.name = row.text();
    guest.birth_date = row.optional_date();
    guest.phone = row.text();
    guest.email = row.text();
    guest.guardian_consent = row.yes();
    guest.certified = row.yes();
    guest.screening = read_check(row);
    return guest;
}

AnswerToSeal read_to_seal(Row& row) {
    AnswerToSeal found;
    found.id = row.number();
    found.person = row.number();
    found.name = row.text();
    found.session = SessionRow{row.number()};
    found.date = row.date();
    found.question = row.text();
    return found;
}

}  // namespace

Result<std::optional<HealthCheck>> CheckStore::last_check(const std::string& name,
                                                          const std::optional<Date>& birth_date,
                                                          std::optional<SessionRow> except) {
    if (!birth_date) return std::optional<HealthCheck>();
    return Statement(database_.connection(),
                     u"WITH RECURSIVE chain (id, merged_into) AS ("
                     "SELECT id, merged_into FROM persons WHERE name = ? AND birth_date = ? "
                     "UNION SELECT p.id, p.merged_into FROM persons p "
                     "JOIN chain c ON p.id = c.merged_into) "
                     "SELECT g.screening_outcome, g.screening_checked_on, g.screening_edition, "
                     "g.screening_checked_by, g.physician_approval_seen, g.physician_approval_on, "
                     "g.screening_today, g.screening_signature "
                     "FROM session_guests g JOIN sessions s ON s.id = g.session_id "
                     "WHERE g.person_id IN (SELECT id FROM chain) AND g.session_id <> ? "
                     "AND g.screening_outcome <> 'unanswered' "
                     "AND g.screening_checked_on IS NOT NULL "
                     // Of two on one day the later session's, then the graver.
                     "ORDER BY g.screening_checked_on DESC, s.date DESC, s.dive_time_min DESC, "
                     "g.screening_outcome <> 'does_not_dive', "
                     "g.screening_outcome <> 'physician_required' LIMIT 1"_qs)
        .first(read_check, name, *birth_date, except ? except->value : qint64{-1});
}

Result<std::vector<SessionToCome>> CheckStore::to_come(Date from) {
    const QSqlDatabase database = database_.connection();
    const Result<Transaction> transaction = Transaction::begin_reading(database);
    if (!transaction) return transaction.error();
    auto sessions = Statement(database, u"SELECT id, title, date, meeting_time_min, dive_time_min "
                                        "FROM sessions WHERE date >= ? "
                                        "ORDER BY date, dive_time_min, id"_qs)
                        .all(read_head, from);
    if (!sessions) return sessions;
    Statement guests(database,
                     u"SELECT guest_id, name, birth_date, phone, email, guardian_consent, "
                     "certified, screening_outcome, screening_checked_on, screening_edition, "
                     "screening_checked_by, physician_approval_seen, physician_approval_on, "
                     "screening_today, screening_signature "
                     "FROM session_guests WHERE session_id = ? ORDER BY position"_qs);
    for (SessionToCome& found : *sessions) {
        auto known = guests.all(read_guest_to_come, found.row.value);
        if (!known) return known.error();
        found.session.guests = std::move(*known);
        auto sets = read_rule_sets(database, found.row);
        if (!sets) return sets.error();
        found.session.rule_sets = std::move(*sets);
        auto overrules = read_overrules(database, found.row);
        if (!overrules) return overrules.error();
        found.session.overrules = std::move(*overrules);
    }
    return sessions;
}

Result<std::vector<AnswerToSeal>> answers_to_seal(Database& database) {
    return Statement(database.connection(),
                     u"SELECT a.id, a.person_id, p.name, a.session_id, s.date, a.question "
                     "FROM answers_to_seal a JOIN persons p ON p.id = a.person_id "
                     "JOIN sessions s ON s.id = a.session_id ORDER BY a.person_id, s.date, a.id"_qs)
        .all(read_to_seal);
}

Result<Done> forget_answers_to_seal(Database& database, const std::vector<qint64>& ids) {
    const QSqlDatabase connection = database.connection();
    Result<Transaction> transaction = Transaction::begin_writing(connection);
    if (!transaction) return transaction.error();
    Statement remove(connection, u"DELETE FROM answers_to_seal WHERE id = ?"_qs);
    for (const qint64 id : ids) {
        const Result<Done> removed = remove.run(id);
        if (!removed) return removed;
    }
    return transaction->commit();
}

}  // namespace leadline
