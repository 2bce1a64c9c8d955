// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/records/sample_values.h"

#include <chrono>

namespace leadline::test {

namespace {

Site full_site() {
    Site site;
    site.name = "Grotta \"Ó'Brien\"";
    site.altitude = Altitude(Meters(-1.0 / 3.0));
    site.latitude = Degrees(-35.123456789012345);
    site.salinity = PracticalSalinity{37.6};
    site.bottom_depth = Depth(Meters(12.1));
    site.entry = Entry::boat;
    site.meeting_place = "At the third post\nbehind the kiosk";
    site.emergency_line = "+00 123 456";
    site.emergency_plan = "Oxygen in the van; 100 % by mask.";
    return site;
}

Conditions full_conditions() {
    Conditions conditions;
    conditions.water_temperature = Kelvins(289.1 + 0.2);
    conditions.air_temperature = Kelvins(301.7);
    conditions.barometer = Pascals(100730.5);
    conditions.visibility = Meters(0.1 + 0.2);
    conditions.current = Current::moderate;
    conditions.wave_height = Meters(0.7);
    return conditions;
}

Profile full_profile() {
    return Profile{{{Minutes(0.0), Depth(Meters(0.0)), Phase::surface},
                    {Minutes(3.3), Depth(Meters(0.0)), Phase::surface},
                    {Minutes(4.7), Depth(Meters(2.9)), Phase::descent},
                    {Minutes(12.1), Depth(Meters(2.9)), Phase::skills},
                    {Minutes(25.0 / 3.0 + 20.0), Depth(Meters(5.1)), Phase::tour},
                    {Minutes(32.0), Depth(Meters(0.0)), Phase::ascent}}};
}

std::vector<StaffMember> full_staff() {
    StaffMember second{StaffId("staff-9"), "Zoë Ångström", StaffRole::instructor,
                       {"sv", "en", "de"},
                       Cylinder{CylinderTypeId("steel-12"), Bars(201.3), Kelvins(294.4)}};
    StaffMember first{StaffId("staff-1"), "Ahmet Işık", StaffRole::assistant, {}, {}};
    second.extra_ascents = 3;
    second.earlier_dives = {
        {day(2026, 7, 4), TimeOfDay{481}, Depth(Meters(7.1)), Minutes(100.0 / 3.0), 4},
        {day(2025, 7, 3), TimeOfDay{1439}, Depth(Meters(0.1 + 0.2)), Minutes(1.1), 30},
        {day(2026, 7, 3), TimeOfDay{0}, Depth(Meters(59.9)), Minutes(61.7), 1}};
    first.earlier_dives = {
        {day(2026, 7, 1), TimeOfDay{611}, Depth(Meters(11.3)), Minutes(47.0), 2}};
    StaffMember third{StaffId("staff-4"), "", StaffRole::instructor, {"tr", "tr"}, {}};
    return {second, first, third};
}

Guest full_guest() {
    Guest guest;
    guest.id = GuestId("guest-12");
    guest.name = "Žofie Ølgård";
    guest.birth_date = day(2012, 2, 29);
    guest.language = "da";
    guest.second_language = "pt-BR";
    guest.units = UnitHabit::imperial;
    guest.briefing = {{HandSignal::ears, HandSignal::help_at_surface}, day(2026, 7, 3), "da"};
    guest.body_mass = Kilograms(41.3);
    guest.body_height = Meters(1.53);
    guest.shoe_size_eu = 36.5;
    guest.screening = {ScreeningOutcome::physician_required,
                       day(2026, 7, 1),
                       "Leadline 1",
                       "Zoë Ångström",
                       true,
                       day(2026, 7, 2),
                       TodayOutcome::with_care,
                       SignatureKind::on_screen};
    guest.guardian_consent = true;
    guest.certified = true;
    guest.breathing = BreathingClass::child;
    guest.measured_rmv = LitersPerMinute(17.1);
    guest.dives_before = 7;
    guest.phone = "+00 555 0134";
    guest.email = "zofie@example.org";
    guest.kit = Kit{"3 mm XS", "XXS", "36-37", "small", "R4", Kilograms(2.2),
                    Cylinder{CylinderTypeId("aluminium-9"), Bars(198.7), Kelvins(300.1)}};
    guest.group = GroupId("group-2");
    guest.note = "Afraid of fish.";
    return guest;
}

DiveLog full_log() {
    DiveLog log;
    log.time_in = TimeOfDay{611};
    log.time_out = TimeOfDay{648};
    log.heads_in = 4;
    log.heads_out = 3;
    LogEntry second{GuestId("guest-3"), Bars(199.9), Bars(71.1), Minutes(31.7), {}, false, ""};
    LogEntry first{GuestId("guest-12"),
                   Bars(193.1),
                   Bars(88.8),
                   Minutes(29.9),
                   {{Minutes(0.0), Depth(Meters(0.0))},
                    {Minutes(1.0 / 3.0), Depth(Meters(0.7))},
                    {Minutes(29.9), Depth(Meters(0.1 + 0.2))}},
                   true,
                   "Cleared slowly."};
    log.divers = {second, first};
    log.note = "One came up with the boat.";
    return log;
}

}  // namespace

Date day(int year, unsigned month, unsigned day_of_month) {
    return Date{std::chrono::year(year), std::chrono::month(month),
                std::chrono::day(day_of_month)};
}

SessionFile full_session() {
    Session session;
    session.title = "Saturday, first boat";
    session.date = day(2026, 7, 4);
    session.meeting_time = TimeOfDay{525};
    session.dive_time = TimeOfDay{600};
    session.leader = StaffId("staff-9");
    session.site = full_site();
    session.conditions = full_conditions();
    session.profile = full_profile();
    session.staff = full_staff();
    session.groups = {{GroupId("group-2"), "Yellow", StaffId("staff-9"), StaffId("staff-1")},
                      {GroupId("group-1"), "Blue", StaffId("staff-4"), StaffId()},
                      {GroupId("group-7"), "", StaffId(), StaffId()}};
    session.guests = {guest_named("guest-3", "Walter"), full_guest(),
                      guest_born("guest-1", "Anna", day(1999, 12, 31))};
    session.stock = {{{CylinderTypeId("steel-12"), 14}, {CylinderTypeId("aluminium-9"), 0}},
                     {{"7 mm \"L\"", 3}, {"3 mm XS", 11}},
                     {Kilograms(2.0), Kilograms(0.1 + 0.2), Kilograms(1.0)}};
    session.guests.front().dives_before = 0;
    session.guests.front().group = GroupId("group-1");
    session.guests.front().breathing = BreathingClass::nervous;
    session.skills = {Skill::clear_ears, Skill::clear_mask};
    session.rule_sets = {RuleSetId("house"), RuleSetId("general")};
    session.overrules = {{"ratio_exceeded:group-1", "A second boat stays close.", "Zoë"},
                         {"birth_date_missing:guest-3", "Known to the house.", ""}};
    return SessionFile{session, full_log()};
}

SessionFile full_session_of_schema_1() {
    SessionFile file = full_session();
    file.session.stock = {};
    file.session.skills = standard_skills();
    for (Guest& guest : file.session.guests) {
        guest.dives_before.reset();
        guest.phone.clear();
        guest.email.clear();
        guest.second_language.clear();
        guest.units = UnitHabit::house;
        guest.briefing = {};
        if (guest.screening == HealthCheck()) continue;
        // Of the answers, what they come to; they were given for the session.
        guest.screening = HealthCheck();
        guest.screening.outcome = ScreeningOutcome::does_not_dive;
        guest.screening.checked_on = file.session.date;
        guest.screening.physician_approval_seen = true;
        guest.screening.today = TodayOutcome::not_today;
    }
    for (StaffMember& member : file.session.staff) {
        member.earlier_dives.clear();
        member.extra_ascents = 0;
    }
    return file;
}

SessionFile plain_session() {
    Session session;
    session.profile = standard_profile(Depth(Meters(5.0)), Depth(Meters(3.0)), Minutes(8.0),
                                       Minutes(12.0));
    return SessionFile{session, std::nullopt};
}

Guest guest_named(const std::string& id, const std::string& name) {
    Guest guest;
    guest.id = GuestId(id);
    guest.name = name;
    return guest;
}

Guest guest_born(const std::string& id, const std::string& name, const Date& birth_date) {
    Guest guest = guest_named(id, name);
    guest.birth_date = birth_date;
    return guest;
}

SessionFile session_with(const Date& date, const std::vector<Guest>& guests) {
    SessionFile file = plain_session();
    file.session.date = date;
    file.session.guests = guests;
    return file;
}

}  // namespace leadline::test
