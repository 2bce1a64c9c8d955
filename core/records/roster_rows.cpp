// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/roster_rows.h"

#include <string>
#include <utility>

#include "core/records/check_rows.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// The three columns of a cylinder, all NULL for none.
struct CylinderColumns {
    CylinderTypeId type;
    std::optional<Bars> fill_pressure;
    std::optional<Kelvins> fill_temperature;
};

CylinderColumns columns_of(const std::optional<Cylinder>& cylinder) {
    if (!cylinder) return {};
    return {cylinder->type, cylinder->fill_pressure, cylinder->fill_temperature};
}

std::optional<Cylinder> read_cylinder(Row& row) {
    const CylinderTypeId type(row.text());
    const auto fill_pressure = row.optional_quantity<Bars>();
    const auto fill_temperature = row.optional_quantity<Kelvins>();
    if (type.empty() || !fill_pressure || !fill_temperature) return std::nullopt;
    return Cylinder{type, *fill_pressure, *fill_temperature};
}

Result<Done> write_languages(Statement& insert, SessionRow row, const StaffMember& member) {
    int position = 0;
    for (const std::string& language : member.languages) {
        const Result<Done> done = insert.run(row.value, member.id, position++, language);
        if (!done) return done;
    }
    return Done{};
}

Result<Done> write_dives(Statement& insert, SessionRow row, const StaffMember& member) {
    int position = 0;
    for (const EarlierDive& dive : member.earlier_dives) {
        const Result<Done> done =
            insert.run(row.value, member.id, position++, dive.date, dive.start,
                       dive.deepest.meters(), dive.duration, dive.ascents);
        if (!done) return done;
    }
    return Done{};
}

EarlierDive read_dive(Row& row) {
    EarlierDive dive;
    dive.date = row.date();
    dive.start = row.time_of_day();
    dive.deepest = Depth(row.quantity<Meters>());
    dive.duration = row.quantity<Minutes>();
    dive.ascents = row.small_number();
    return dive;
}

StaffMember read_member(Row& row) {
    StaffMember member;
    member.id = StaffId(row.text());
    member.name = row.text();
    member.role = row.choice<StaffRole>();
    member.cylinder = read_cylinder(row);
    member.extra_ascents = row.small_number();
    return member;
}

Guest read_guest(Row& row) {
    const GuestId id(row.text());
    Guest guest = read_lasting(row);
    guest.id = id;
    guest.group = GroupId(row.text());
    guest.screening = read_check(row);
    guest.guardian_consent = row.yes();
    guest.certified = row.yes();
    guest.breathing = row.choice<BreathingClass>();
    guest.kit.suit = row.text();
    guest.kit.bcd = row.text();
    guest.kit.fins = row.text();
    guest.kit.mask = row.text();
    guest.kit.regulator = row.text();
    guest.kit.lead = row.optional_quantity<Kilograms>();
    guest.kit.cylinder = read_cylinder(row);
    guest.note = row.text();
    guest.second_language = row.text();
    guest.units = row.choice<UnitHabit>();
    for (const HandSignal known : row.choices<HandSignal>()) {
        set_understood(guest.briefing, known, true);
    }
    guest.briefing.checked_on = row.optional_date();
    guest.briefing.language = row.text();
    return guest;
}

}  // namespace

Result<Done> write_staff(const QSqlDatabase& database, SessionRow row, const Session& session) {
    Statement insert(database, u"INSERT INTO staff (session_id, staff_id, position, name, role, "
                               "leads, cylinder_type, fill_pressure_bar, fill_temperature_k, "
                               "extra_ascents) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_qs);
    Statement insert_language(database, u"INSERT INTO staff_languages (session_id, staff_id, "
                                        "position, language) VALUES (?, ?, ?, ?)"_qs);
    Statement insert_dive(database, u"INSERT INTO staff_earlier_dives (session_id, staff_id, "
                                    "position, date, start_min, deepest_m, duration_min, ascents) "
                                    "VALUES (?, ?, ?, ?, ?, ?, ?, ?)"_qs);
    int position = 0;
    for (const StaffMember& member : session.staff) {
        const CylinderColumns cylinder = columns_of(member.cylinder);
        const Result<Done> done = in_turn(
            [&] {
                return insert.run(row.value, member.id, position++, member.name, member.role,
                                  member.id == session.leader, cylinder.type,
                                  cylinder.fill_pressure, cylinder.fill_temperature,
                                  member.extra_ascents);
            },
            [&] { return write_languages(insert_language, row, member); },
            [&] { return write_dives(insert_dive, row, member); });
        if (!done) return done;
    }
    return Done{};
}

Result<StoredStaff> read_staff(const QSqlDatabase& database, SessionRow row) {
    auto members =
        Statement(database, u"SELECT staff_id, name, role, cylinder_type, fill_pressure_bar, "
                            "fill_temperature_k, extra_ascents FROM staff WHERE session_id = ? "
                            "ORDER BY position"_qs)
            .all(read_member, row.value);
    if (!members) return members.error();
    Statement languages(database, u"SELECT language FROM staff_languages WHERE session_id = ? "
                                  "AND staff_id = ? ORDER BY position"_qs);
    Statement dives(database, u"SELECT date, start_min, deepest_m, duration_min, ascents "
                              "FROM staff_earlier_dives WHERE session_id = ? AND staff_id = ? "
                              "ORDER BY position"_qs);
    for (StaffMember& member : *members) {
        auto spoken = languages.all([](Row& found) { return found.text(); }, row.value, member.id);
        if (!spoken) return spoken.error();
        member.languages = std::move(*spoken);
        auto made = dives.all(read_dive, row.value, member.id);
        if (!made) return made.error();
        member.earlier_dives = std::move(*made);
    }
    const auto leader =
        Statement(database, u"SELECT staff_id FROM staff WHERE session_id = ? AND leads = 1"_qs)
            .first([](Row& found) { return StaffId(found.text()); }, row.value);
    if (!leader) return leader.error();
    return StoredStaff{std::move(*members), leader->value_or(StaffId())};
}

Result<Done> write_groups(const QSqlDatabase& database, SessionRow row,
                          const std::vector<Group>& groups) {
    Statement insert(database, u"INSERT INTO session_groups (session_id, group_id, position, "
                               "name, instructor, assistant) VALUES (?, ?, ?, ?, ?, ?)"_qs);
    int position = 0;
    for (const Group& group : groups) {
        const Result<Done> done = insert.run(row.value, group.id, position++, group.name,
                                             group.instructor, group.assistant);
        if (!done) return done;
    }
    return Done{};
}

Result<std::vector<Group>> read_groups(const QSqlDatabase& database, SessionRow row) {
    return Statement(database, u"SELECT group_id, name, instructor, assistant "
                               "FROM session_groups WHERE session_id = ? ORDER BY position"_qs)
        .all(
            [](Row& found) {
                return Group{GroupId(found.text()), found.text(), StaffId(found.text()),
                             StaffId(found.text())};
            },
            row.value);
}

Result<Done> write_guests(const QSqlDatabase& database, SessionRow row,
                          const std::vector<Guest>& guests, const PersonOf& persons) {
    Statement insert(database,
                     u"INSERT INTO session_guests (session_id, guest_id, position, person_id, "
                     "group_id, name, birth_date, language, body_mass_kg, body_height_m, "
                     "shoe_size_eu, measured_rmv_l_per_min, dives_before, phone, email, "
                     "screening_outcome, screening_checked_on, screening_edition, "
                     "screening_checked_by, physician_approval_seen, physician_approval_on, "
                     "screening_today, screening_signature, "
                     "guardian_consent, certified, breathing, suit, bcd, fins, mask, regulator, "
                     "lead_kg, cylinder_type, fill_pressure_bar, fill_temperature_k, note, "
                     "second_language, units, signals_understood, signals_checked_on, "
                     "signals_language) VALUES "
                     "(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
                     "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_qs);
    int position = 0;
    for (const Guest& guest : guests) {
        const Kit& kit = guest.kit;
        const HealthCheck& health = guest.screening;
        const CylinderColumns cylinder = columns_of(kit.cylinder);
        const Result<Done> done = insert.run(
            row.value, guest.id, position++, persons.at(guest.id), guest.group, guest.name,
            guest.birth_date, guest.language, guest.body_mass, guest.body_height,
            guest.shoe_size_eu, guest.measured_rmv, guest.dives_before, guest.phone, guest.email,
            health.outcome, health.checked_on, health.edition, health.checked_by,
            health.physician_approval_seen, health.approval_on, health.today, health.signature,
            guest.guardian_consent, guest.certified, guest.breathing, kit.suit, kit.bcd, kit.fins,
            kit.mask, kit.regulator, kit.lead, cylinder.type, cylinder.fill_pressure,
            cylinder.fill_temperature, guest.note, guest.second_language, guest.units,
            names_text(guest.briefing.understood), guest.briefing.checked_on,
            guest.briefing.language);
        if (!done) return done;
    }
    return Done{};
}

Result<std::vector<Guest>> read_guests(const QSqlDatabase& database, SessionRow row) {
    return Statement(database,
                     u"SELECT guest_id, name, birth_date, language, body_mass_kg, body_height_m, "
                     "shoe_size_eu, measured_rmv_l_per_min, dives_before, phone, email, group_id, "
                     "screening_outcome, screening_checked_on, screening_edition, "
                     "screening_checked_by, physician_approval_seen, physician_approval_on, "
                     "screening_today, screening_signature, "
                     "guardian_consent, certified, breathing, suit, bcd, fins, mask, regulator, "
                     "lead_kg, cylinder_type, fill_pressure_bar, fill_temperature_k, note, "
                     "second_language, units, signals_understood, signals_checked_on, "
                     "signals_language FROM session_guests WHERE session_id = ? ORDER BY position"_qs)
        .all(read_guest, row.value);
}

}  // namespace leadline
