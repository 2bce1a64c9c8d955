// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/persons.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

#include "core/records/fold.h"
#include "core/records/health_store.h"

namespace leadline {

namespace {

QString folded_name(const Guest& guest) { return folded(QString::fromStdString(guest.name)); }

/// The statements by which a guest is told from others, prepared once a save.
class Identifier {
public:
    Identifier(const QSqlDatabase& database, SessionRow row)
        : row_(row),
          find_(database, u"WITH RECURSIVE chain (id, merged_into) AS ("
                          "SELECT id, merged_into FROM persons WHERE name = ? AND birth_date = ? "
                          "UNION ALL SELECT p.id, p.merged_into FROM persons p "
                          "JOIN chain c ON p.id = c.merged_into) "
                          "SELECT id FROM chain WHERE merged_into IS NULL"_qs),
          // A removed person is nobody's alone: what is typed now is somebody else.
          others_(database, u"SELECT (SELECT count(*) FROM session_guests WHERE person_id = p.id "
                            "AND NOT (session_id = ? AND guest_id = ?)) + p.erased "
                            "FROM persons p WHERE p.id = ?"_qs),
          correct_(database, u"UPDATE persons SET name = ?, folded_name = ?, birth_date = ? "
                             "WHERE id = ?"_qs),
          // Merged into the person the guest was until now, and not by anybody's wish: a pick of
          // somebody else while the vault was locked, which is now taken back.
          left_(database, u"SELECT p.id FROM persons p WHERE p.name = ? AND p.birth_date IS ? "
                          "AND p.erased = 0 AND (p.merged_into IS NULL OR (p.merged_into = ? "
                          "AND NOT EXISTS (SELECT 1 FROM person_merges m "
                          "WHERE m.merged_id = p.id))) "
                          "AND NOT EXISTS (SELECT 1 FROM session_guests g "
                          "WHERE g.person_id = p.id) "
                          "AND (EXISTS (SELECT 1 FROM health_records r WHERE r.person_id = p.id "
                          "AND r.session_id = ?) OR EXISTS (SELECT 1 FROM answers_to_seal a "
                          "WHERE a.person_id = p.id AND a.session_id = ?)) ORDER BY p.id DESC"_qs),
          stand_alone_(database, u"UPDATE persons SET merged_into = NULL WHERE id = ?"_qs),
          add_(database, u"INSERT INTO persons (name, folded_name, birth_date, language) "
                         "VALUES (?, ?, ?, ?)"_qs) {}

    Result<std::optional<qint64>> find(const Guest& guest) {
        if (!guest.birth_date) return std::optional<qint64>();
        return find_.first([](Row& row) { return row.number(); }, guest.name, guest.birth_date);
    }

    /// Whether only this guest refers to a person.
    Result<bool> is_sole(const Guest& guest, qint64 person) {
        const auto others = others_.first([](Row& row) { return row.number(); }, row_.value,
                                          guest.id, person);
        if (!others) return others.error();
        return others->value_or(0) == 0;
    }

    Result<qint64> correct(const Guest& guest, qint64 person) {
        const Result<Done> done =
            correct_.run(guest.name, folded_name(guest), guest.birth_date, person);
        if (!done) return done.error();
        return person;
    }

    /// The person whom a guest of this session left behind, with what was sealed or waits to be.
    /// @param until_now  the person the guest referred to; 0: nobody
    Result<std::optional<qint64>> take_back(const Guest& guest, qint64 until_now,
                                            const std::set<qint64>& taken) {
        const auto left = left_.all([](Row& row) { return row.number(); }, guest.name,
                                    guest.birth_date, until_now, row_.value, row_.value);
        if (!left) return left.error();
        const auto free = std::find_if(left->begin(), left->end(), [&taken](qint64 person) {
            return !taken.contains(person);
        });
        if (free == left->end()) return std::optional<qint64>();
        const Result<Done> done = stand_alone_.run(*free);
        if (!done) return done.error();
        return std::optional<qint64>(*free);
    }

    Result<qint64> add(const Guest& guest) {
        const Result<Done> done =
            add_.run(guest.name, folded_name(guest), guest.birth_date, guest.language);
        if (!done) return done.error();
        return add_.new_row();
    }

private:
    SessionRow row_;
    Statement find_;
    Statement others_;
    Statement correct_;
    Statement left_;
    Statement stand_alone_;
    Statement add_;
};

/// The person of a guest of whom no exact match was on record when the save began.
Result<qint64> correct_or_add(Identifier& identifier, const Guest& guest,
                              const StoredGuests& before, const std::set<qint64>& taken) {
    // A guest handled before this one may have become the match.
    const auto match = identifier.find(guest);
    if (!match) return match.error();
    if (*match) return **match;
    const auto stored = before.find(guest.id);
    // Who has been found to be somebody stays so, though others now refer to the same person.
    if (stored != before.end() && stored->second.lasting.name == guest.name &&
        stored->second.lasting.birth_date == guest.birth_date) {
        return stored->second.person;
    }
    if (stored != before.end() && !taken.contains(stored->second.person)) {
        const Result<bool> sole = identifier.is_sole(guest, stored->second.person);
        if (!sole) return sole.error();
        if (*sole) return identifier.correct(guest, stored->second.person);
    }
    const qint64 until_now = stored == before.end() ? 0 : stored->second.person;
    const auto left = identifier.take_back(guest, until_now, taken);
    if (!left) return left.error();
    return *left ? Result<qint64>(**left) : identifier.add(guest);
}

/// What the register keeps of one field: what is known now, else what was known, unless the session
/// itself had said it before and does not any more.
template <typename Value>
std::optional<Value> kept(const std::optional<Value>& now, const std::optional<Value>& before,
                          const std::optional<Value>& known) {
    if (now) return now;
    return before ? std::nullopt : known;
}

/// The same for a text, of which the empty one is not known.
std::string kept(const std::string& now, const std::string& before, const std::string& known) {
    if (!now.empty()) return now;
    return before.empty() ? known : std::string();
}

/// The statements that bring a person up to date, prepared once a save.
class Updater {
public:
    explicit Updater(const QSqlDatabase& database)
        : later_(database, u"SELECT count(*) FROM session_guests g "
                           "JOIN sessions s ON s.id = g.session_id WHERE g.person_id = ? "
                           "AND s.id <> ? AND (s.date, s.dive_time_min) > (?, ?)"_qs),
          read_(database, u"SELECT name, birth_date, language, body_mass_kg, body_height_m, "
                          "shoe_size_eu, measured_rmv_l_per_min, dives_before, phone, email "
                          "FROM persons "
                          "WHERE id = ?"_qs),
          write_(database, u"UPDATE persons SET language = ?, body_mass_kg = ?, body_height_m = ?, "
                           "shoe_size_eu = ?, measured_rmv_l_per_min = ?, dives_before = ?, "
                           "phone = ?, email = ? "
                           "WHERE id = ? AND erased = 0"_qs),
          leftover_(database, u"SELECT count(*) FROM persons WHERE id = ? AND birth_date IS NULL "
                              "AND erased = 0 "
                              "AND NOT EXISTS (SELECT 1 FROM session_guests g "
                              "WHERE g.person_id = persons.id) "
                              "AND NOT EXISTS (SELECT 1 FROM person_merges m "
                              "WHERE m.kept_id = persons.id OR m.merged_id = persons.id)"_qs),
          follow_(database, u"UPDATE persons SET merged_into = nullif(?, id) "
                            "WHERE merged_into = ?"_qs),
          keep_(database, u"UPDATE persons SET merged_into = ? WHERE id = ? AND "
                          "EXISTS (SELECT 1 FROM health_records r WHERE r.person_id = persons.id)"_qs),
          hand_on_(database, u"UPDATE answers_to_seal SET person_id = ? WHERE person_id = ?"_qs),
          hand_on_session_(database, u"UPDATE answers_to_seal SET person_id = ? "
                                     "WHERE person_id = ? AND session_id = ?"_qs),
          remove_(database, u"DELETE FROM persons WHERE id = ?"_qs) {}

    Result<bool> known_later(qint64 person, SessionRow row, const Session& session) {
        const auto later = later_.first([](Row& found) { return found.number(); }, person,
                                        row.value, session.date, session.dive_time);
        if (!later) return later.error();
        return later->value_or(0) > 0;
    }

    Result<Done> update(qint64 person, const Guest& now, const Guest& before) {
        const auto known = read_.first(read_lasting, person);
        if (!known) return known.error();
        const Guest old = known->value_or(Guest{});
        return write_.run(now.language, kept(now.body_mass, before.body_mass, old.body_mass),
                          kept(now.body_height, before.body_height, old.body_height),
                          kept(now.shoe_size_eu, before.shoe_size_eu, old.shoe_size_eu),
                          kept(now.measured_rmv, before.measured_rmv, old.measured_rmv),
                          kept(now.dives_before, before.dives_before, old.dives_before),
                          kept(now.phone, before.phone, old.phone),
                          kept(now.email, before.email, old.email), person);
    }

    /// What was sealed, or waits to be, for a guest of a session follows the guest to another
    /// person. While the vault is locked what is sealed stays.
    Result<Done> follow_guest(qint64 from, qint64 to, SessionRow session, HealthStore* health) {
        return in_turn(
            [&] {
                const bool movable = health != nullptr && health->can_move();
                return movable ? health->move(from, to, session) : Done{};
            },
            [&] { return hand_on_session_.run(to, from, session.value); });
    }

    /// Takes out a person without a birth date to whom nobody refers, or keeps one whose sealed
    /// records cannot be moved as part of the successor.
    Result<Done> remove_leftover(qint64 person, qint64 successor, HealthStore* health) {
        const auto leftover = leftover_.first([](Row& row) { return row.number(); }, person);
        if (!leftover) return leftover.error();
        if (leftover->value_or(0) == 0 || person == successor) return Done{};
        const Result<Done> moved = in_turn(
            [&] {
                const bool movable = health != nullptr && health->can_move();
                return movable ? health->move(person, successor) : Done{};
            },
            // What waits to be sealed would go with the person's row.
            [&] { return hand_on_.run(successor, person); },
            [&] { return follow_.run(successor, person); },
            [&] { return keep_.run(successor, person); });
        if (!moved || keep_.rows_changed() > 0) return moved;
        return remove_.run(person);
    }

private:
    Statement later_;
    Statement read_;
    Statement write_;
    Statement leftover_;
    Statement follow_;
    Statement keep_;
    Statement hand_on_;
    Statement hand_on_session_;
    Statement remove_;
};

}  // namespace

Guest read_lasting(Row& row) {
    Guest guest;
    guest.name = row.text();
    guest.birth_date = row.optional_date();
    guest.language = row.text();
    guest.body_mass = row.optional_quantity<Kilograms>();
    guest.body_height = row.optional_quantity<Meters>();
    guest.shoe_size_eu = row.optional_real();
    guest.measured_rmv = row.optional_quantity<LitersPerMinute>();
    guest.dives_before = row.optional_small_number();
    guest.phone = row.text();
    guest.email = row.text();
    return guest;
}

Result<StoredGuests> stored_guests(const QSqlDatabase& database, SessionRow session) {
    Statement select(database, u"SELECT guest_id, person_id, name, birth_date, language, "
                               "body_mass_kg, body_height_m, shoe_size_eu, "
                               "measured_rmv_l_per_min, dives_before, phone, email "
                               "FROM session_guests WHERE session_id = ?"_qs);
    const auto rows = select.all(
        [](Row& row) {
            GuestId id(row.text());
            const qint64 person = row.number();
            return std::pair(std::move(id), StoredGuest{person, read_lasting(row)});
        },
        session.value);
    if (!rows) return rows.error();
    return StoredGuests(rows->begin(), rows->end());
}

Result<PersonOf> identify_persons(const QSqlDatabase& database, SessionRow row,
                                  const Session& session, const StoredGuests& before) {
    Identifier identifier(database, row);
    PersonOf persons;
    std::set<qint64> taken;
    const auto take = [&](const Guest& guest, qint64 person) {
        persons[guest.id] = person;
        taken.insert(person);
    };
    // Exact matches first, so that no correction takes a person who is somebody else here.
    for (const Guest& guest : session.guests) {
        const auto match = identifier.find(guest);
        if (!match) return match.error();
        if (*match) take(guest, **match);
    }
    for (const Guest& guest : session.guests) {
        if (persons.contains(guest.id)) continue;
        const Result<qint64> person = correct_or_add(identifier, guest, before, taken);
        if (!person) return person.error();
        take(guest, *person);
    }
    return persons;
}

Result<Done> update_persons(const QSqlDatabase& database, SessionRow row, const Session& session,
                            const StoredGuests& before, const PersonOf& persons,
                            HealthStore* health) {
    Updater updater(database);
    for (const Guest& guest : session.guests) {
        const qint64 person = persons.at(guest.id);
        const auto stored = before.find(guest.id);
        const bool same = stored != before.end() && stored->second.person == person;
        const Guest known_before = same ? stored->second.lasting : Guest{};
        const Result<bool> later = updater.known_later(person, row, session);
        if (!later) return later.error();
        const Result<Done> updated =
            *later ? Done{} : updater.update(person, guest, known_before);
        if (!updated) return updated;
        if (stored == before.end() || same) continue;
        const qint64 former = stored->second.person;
        const bool still_here = std::any_of(persons.begin(), persons.end(), [former](const auto& one) {
            return one.second == former;
        });
        const Result<Done> followed = in_turn(
            [&] {
                return still_here ? Done{} : updater.follow_guest(former, person, row, health);
            },
            [&] { return updater.remove_leftover(former, person, health); });
        if (!followed) return followed;
    }
    return Done{};
}

}  // namespace leadline
