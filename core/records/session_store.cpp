// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/session_store.h"

#include <optional>
#include <string>
#include <utility>

#include "core/records/log_rows.h"
#include "core/records/persons.h"
#include "core/records/plan_rows.h"
#include "core/records/roster_rows.h"
#include "core/records/site_rows.h"
#include "core/records/statement.h"
#include "core/records/stock_rows.h"

namespace leadline {

namespace {

Error no_such_session(SessionRow row) {
    return Error{ErrorCode::not_found, "session", std::to_string(row.value), {}};
}

/// Nothing enters the records that could not be read from a session file.
Result<Done> check_file(const SessionFile& file) {
    const Result<Done> session = check(file.session);
    if (!session || !file.log) return session;
    return check(*file.log, file.session);
}

/// Takes out all that belongs to a session except its log. Guests go before the groups, and groups
/// before the staff, that they refer to.
Result<Done> remove_content(const QSqlDatabase& database, SessionRow row) {
    for (const QString& sql : {u"DELETE FROM session_guests WHERE session_id = ?"_qs,
                               u"DELETE FROM session_groups WHERE session_id = ?"_qs,
                               u"DELETE FROM staff WHERE session_id = ?"_qs,
                               u"DELETE FROM stock_cylinders WHERE session_id = ?"_qs,
                               u"DELETE FROM stock_suits WHERE session_id = ?"_qs,
                               u"DELETE FROM stock_lead_pieces WHERE session_id = ?"_qs,
                               u"DELETE FROM overrules WHERE session_id = ?"_qs,
                               u"DELETE FROM session_rule_sets WHERE session_id = ?"_qs,
                               u"DELETE FROM profile_points WHERE session_id = ?"_qs,
                               u"DELETE FROM conditions WHERE session_id = ?"_qs,
                               u"DELETE FROM session_sites WHERE session_id = ?"_qs}) {
        const Result<Done> removed = Statement(database, sql).run(row.value);
        if (!removed) return removed;
    }
    return Done{};
}

/// Puts a session's content in place of what is there. The row in `sessions` stands already.
Result<Done> replace_content(const QSqlDatabase& database, SessionRow row,
                             const SessionFile& file, HealthStore* health) {
    const Session& session = file.session;
    const Result<StoredGuests> before = stored_guests(database, row);
    if (!before) return before.error();
    const Result<PersonOf> persons = identify_persons(database, row, session, *before);
    if (!persons) return persons.error();
    return in_turn(
        [&] { return remove_content(database, row); },
        [&] { return write_session_site(database, row, session.site); },
        [&] { return write_conditions(database, row, session.conditions); },
        [&] { return write_profile(database, row, session.profile); },
        [&] { return write_rule_sets(database, row, session.rule_sets); },
        [&] { return write_overrules(database, row, session.overrules); },
        [&] { return write_staff(database, row, session); },
        [&] { return write_groups(database, row, session.groups); },
        [&] { return write_guests(database, row, session.guests, *persons); },
        [&] { return write_stock(database, row, session.stock); },
        [&] { return write_log(database, row, file.log); },
        [&] { return update_persons(database, row, session, *before, *persons, health); },
        [&] { return keep_site_of(database, session); });
}

Result<SessionRow> add_row(const QSqlDatabase& database, const Session& session) {
    Statement insert(database, u"INSERT INTO sessions (title, date, meeting_time_min, "
                               "dive_time_min, skills) VALUES (?, ?, ?, ?, ?)"_qs);
    const Result<Done> added = insert.run(session.title, session.date, session.meeting_time,
                                          session.dive_time, names_text(session.skills));
    if (!added) return added.error();
    return SessionRow{insert.new_row()};
}

Result<Done> change_row(const QSqlDatabase& database, SessionRow row, const Session& session) {
    Statement update(database, u"UPDATE sessions SET title = ?, date = ?, meeting_time_min = ?, "
                               "dive_time_min = ?, skills = ? WHERE id = ?"_qs);
    const Result<Done> changed = update.run(session.title, session.date, session.meeting_time,
                                            session.dive_time, names_text(session.skills), row.value);
    if (changed && update.rows_changed() == 0) return no_such_session(row);
    return changed;
}

Result<std::optional<Session>> read_row(const QSqlDatabase& database, SessionRow row) {
    const auto read = [](Row& found) {
        Session session;
        session.title = found.text();
        session.date = found.date();
        session.meeting_time = found.time_of_day();
        session.dive_time = found.time_of_day();
        session.skills = found.choices<Skill>();
        return session;
    };
    return Statement(database, u"SELECT title, date, meeting_time_min, dive_time_min, skills "
                               "FROM sessions WHERE id = ?"_qs)
        .first(read, row.value);
}

/// Moves a value that was read into its place.
template <typename Value>
Result<Done> take(Result<Value> read, Value& place) {
    if (!read) return read.error();
    place = std::move(*read);
    return Done{};
}

Result<Done> read_content(const QSqlDatabase& database, SessionRow row, SessionFile& file) {
    Session& session = file.session;
    StoredStaff staff;
    const Result<Done> done = in_turn(
        [&] { return take(read_session_site(database, row), session.site); },
        [&] { return take(read_conditions(database, row), session.conditions); },
        [&] { return take(read_profile(database, row), session.profile); },
        [&] { return take(read_rule_sets(database, row), session.rule_sets); },
        [&] { return take(read_overrules(database, row), session.overrules); },
        [&] { return take(read_staff(database, row), staff); },
        [&] { return take(read_groups(database, row), session.groups); },
        [&] { return take(read_guests(database, row), session.guests); },
        [&] { return take(read_stock(database, row), session.stock); },
        [&] { return take(read_log(database, row), file.log); });
    session.staff = std::move(staff.members);
    session.leader = std::move(staff.leader);
    return done;
}

SessionSummary read_summary(Row& row) {
    SessionSummary summary;
    summary.row = SessionRow{row.number()};
    summary.title = row.text();
    summary.date = row.date();
    summary.dive_time = row.time_of_day();
    summary.site = row.text();
    summary.guests = row.small_number();
    summary.has_log = row.yes();
    return summary;
}

}  // namespace

Result<SessionRow> SessionStore::insert(const SessionFile& file) {
    const Result<Done> checked = check_file(file);
    if (!checked) return checked.error();
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const Result<SessionRow> row = add_row(database, file.session);
    if (!row) return row;
    const Result<Done> written = in_turn([&] { return replace_content(database, *row, file, health_); },
                                         [&] { return transaction->commit(); });
    if (!written) return written.error();
    return row;
}

Result<Done> SessionStore::save(SessionRow row, const SessionFile& file) {
    const Result<Done> checked = check_file(file);
    if (!checked) return checked;
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    return in_turn([&] { return change_row(database, row, file.session); },
                   [&] { return replace_content(database, row, file, health_); },
                   [&] { return transaction->commit(); });
}

Result<SessionFile> SessionStore::load(SessionRow row) {
    const QSqlDatabase database = database_.connection();
    const Result<Transaction> transaction = Transaction::begin_reading(database);
    if (!transaction) return transaction.error();
    auto session = read_row(database, row);
    if (!session) return session.error();
    if (!*session) return no_such_session(row);
    SessionFile file{std::move(**session), std::nullopt};
    const Result<Done> done = read_content(database, row, file);
    if (!done) return done.error();
    return file;
}

Result<std::vector<SessionSummary>> SessionStore::list() {
    // SQLite takes a negative limit for none.
    return page(0, -1);
}

Result<std::vector<SessionSummary>> SessionStore::page(int first, int count) {
    // The page is cut from the index alone, before anything is read of its sessions.
    return Statement(database_.connection(),
                     u"SELECT s.id, s.title, s.date, s.dive_time_min, t.name, "
                     "(SELECT count(*) FROM session_guests g WHERE g.session_id = s.id), "
                     "EXISTS (SELECT 1 FROM logs l WHERE l.session_id = s.id) "
                     "FROM (SELECT id FROM sessions ORDER BY date DESC, dive_time_min DESC, "
                     "id DESC LIMIT ? OFFSET ?) listed JOIN sessions s ON s.id = listed.id "
                     "LEFT JOIN session_sites t ON t.session_id = s.id "
                     "ORDER BY s.date DESC, s.dive_time_min DESC, s.id DESC"_qs)
        .all(read_summary, count, first);
}

Result<std::optional<SessionRow>> SessionStore::newest() {
    return Statement(database_.connection(), u"SELECT id FROM sessions ORDER BY date DESC, "
                                             "dive_time_min DESC, id DESC LIMIT 1"_qs)
        .first([](Row& row) { return SessionRow{row.number()}; });
}

Result<int> SessionStore::count() {
    const auto found = Statement(database_.connection(), u"SELECT count(*) FROM sessions"_qs)
                           .first([](Row& row) { return row.small_number(); });
    if (!found) return found.error();
    return found->value_or(0);
}

Result<Done> SessionStore::remove(SessionRow row) {
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    Statement remove(database, u"DELETE FROM sessions WHERE id = ?"_qs);
    const Result<Done> removed = remove.run(row.value);
    if (!removed) return removed;
    if (remove.rows_changed() == 0) return no_such_session(row);
    return transaction->commit();
}

Result<SessionRow> SessionStore::newest_row() {
    const auto newest =
        Statement(database_.connection(),
                  u"SELECT coalesce(max(seq), 0) FROM sqlite_sequence WHERE name = 'sessions'"_qs)
            .first([](Row& row) { return SessionRow{row.number()}; });
    if (!newest) return newest.error();
    return newest->value_or(SessionRow{});
}

Result<std::optional<SessionRow>> SessionStore::find_after(SessionRow after,
                                                           const SessionFile& file) {
    const auto rows = Statement(database_.connection(),
                                u"SELECT id FROM sessions WHERE id > ? ORDER BY id"_qs)
                          .all([](Row& row) { return SessionRow{row.number()}; }, after.value);
    if (!rows) return rows.error();
    for (const SessionRow row : *rows) {
        const Result<SessionFile> stored = load(row);
        if (!stored) return stored.error();
        if (*stored == file) return std::optional<SessionRow>(row);
    }
    return std::optional<SessionRow>();
}

}  // namespace leadline
