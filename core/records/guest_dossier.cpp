// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/guest_dossier.h"

#include <algorithm>
#include <string>
#include <utility>

#include "core/records/guest_store.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

bool is_one_of(const std::vector<GuestId>& guests, const GuestId& id) {
    return std::find(guests.begin(), guests.end(), id) != guests.end();
}

/// Whether a finding's key ends with ":ID" of one of the guests.
bool speaks_of(const std::string& finding, const std::vector<GuestId>& guests) {
    return std::any_of(guests.begin(), guests.end(), [&](const GuestId& guest) {
        return finding.ends_with(":" + guest.text);
    });
}

/// Sealed records, and answers that an older schema kept open and that wait to be sealed.
Result<int> count_sealed(const QSqlDatabase& database, qint64 person) {
    const auto found =
        Statement(database, u"WITH RECURSIVE everybody (id) AS (SELECT ? UNION SELECT p.id "
                            "FROM persons p JOIN everybody e ON p.merged_into = e.id) "
                            "SELECT (SELECT count(*) FROM health_records "
                            "WHERE person_id IN (SELECT id FROM everybody)) + "
                            "(SELECT count(*) FROM answers_to_seal "
                            "WHERE person_id IN (SELECT id FROM everybody))"_qs)
            .first([](Row& row) { return row.small_number(); }, person);
    if (!found) return found.error();
    return found->value_or(0);
}

struct GuestPlace {
    SessionRow session;
    GuestId guest;
};

GuestPlace read_place(Row& row) {
    GuestPlace place;
    place.session = SessionRow{row.number()};
    place.guest = GuestId(row.text());
    return place;
}

Result<std::vector<DossierSession>> read_sessions(Database& database, qint64 person) {
    const auto places =
        Statement(database.connection(),
                  u"SELECT g.session_id, g.guest_id FROM session_guests g "
                  "JOIN sessions s ON s.id = g.session_id WHERE g.person_id = ? "
                  "ORDER BY s.date DESC, s.dive_time_min DESC, s.id DESC, g.position"_qs)
            .all(read_place, person);
    if (!places) return places.error();
    std::vector<DossierSession> sessions;
    for (std::size_t i = 0; i < places->size();) {
        const SessionRow row = (*places)[i].session;
        std::vector<GuestId> guests;
        for (; i < places->size() && (*places)[i].session == row; ++i) {
            guests.push_back((*places)[i].guest);
        }
        Result<SessionFile> file = SessionStore(database).load(row);
        if (!file) return file.error();
        sessions.push_back({row, only_about(std::move(file).value(), guests)});
    }
    return sessions;
}

}  // namespace

SessionFile only_about(SessionFile file, const std::vector<GuestId>& guests) {
    Session& session = file.session;
    std::erase_if(session.guests,
                  [&](const Guest& guest) { return !is_one_of(guests, guest.id); });
    std::erase_if(session.groups, [&](const Group& group) {
        return std::none_of(session.guests.begin(), session.guests.end(),
                            [&](const Guest& guest) { return guest.group == group.id; });
    });
    for (Group& group : session.groups) {
        group.instructor = StaffId();
        group.assistant = StaffId();
    }
    session.leader = StaffId();
    session.staff.clear();
    session.stock = Stock{};
    std::erase_if(session.overrules, [&](const Overrule& overrule) {
        return !speaks_of(overrule.finding, guests);
    });
    if (!file.log) return file;
    file.log->note.clear();
    std::erase_if(file.log->divers,
                  [&](const LogEntry& entry) { return !is_one_of(guests, entry.guest); });
    return file;
}

Result<GuestDossier> read_dossier(Database& database, qint64 person) {
    const auto shown = Statement(database.connection(),
                                 u"SELECT count(*) FROM persons WHERE id = ? "
                                 "AND merged_into IS NULL AND erased = 0"_qs)
                           .first([](Row& row) { return row.number(); }, person);
    if (!shown) return shown.error();
    auto known = GuestStore(database).read({person});
    if (!known) return known.error();
    if (shown->value_or(0) != 1 || known->empty()) {
        return Error{ErrorCode::not_found, "person", std::to_string(person), {}};
    }
    GuestDossier dossier;
    dossier.person = std::move(known->front().guest);
    const auto merged =
        Statement(database.connection(),
                  u"SELECT name FROM persons WHERE merged_into = ? ORDER BY folded_name"_qs)
            .all([](Row& row) { return row.qtext(); }, person);
    if (!merged) return merged.error();
    dossier.merged_names = QStringList(merged->begin(), merged->end());
    auto sessions = read_sessions(database, person);
    if (!sessions) return sessions.error();
    dossier.sessions = std::move(*sessions);
    const Result<int> sealed = count_sealed(database.connection(), person);
    if (!sealed) return sealed.error();
    dossier.sealed_records = *sealed;
    return dossier;
}

}  // namespace leadline
