// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <exception>

#include "core/files/json_gate.h"
#include "core/files/json_values.h"
#include "core/files/schema_check.h"
#include "core/files/session_file.h"

namespace leadline {
namespace {

using nlohmann::json;

Depth depth_of(double meters) { return Depth(Meters(meters)); }
Kelvins kelvins_of(double celsius) { return Kelvins(Celsius(celsius)); }

Date read_date(const FieldReader& from, const char* key) {
    return from.parsed(key, [](const std::string& text, const std::string& place) {
        return parse_date(text, place);
    });
}

TimeOfDay read_time(const FieldReader& from, const char* key) {
    return from.parsed(key, [](const std::string& text, const std::string& place) {
        return parse_time_of_day(text, place);
    });
}

std::optional<Cylinder> read_cylinder(const FieldReader& from) {
    if (!from.has("cylinder")) return std::nullopt;
    const FieldReader cylinder = from.object("cylinder");
    return Cylinder{cylinder.id<CylinderTypeId>("type"), Bars(cylinder.number("fill_pressure_bar")),
                    kelvins_of(cylinder.number("fill_temperature_c"))};
}

Site read_site(const FieldReader& from) {
    Site site;
    site.name = from.line("name");
    site.altitude = Altitude(Meters(from.number("altitude_m")));
    site.latitude = Degrees(from.number("latitude_deg"));
    site.salinity = PracticalSalinity{from.number("salinity")};
    site.bottom_depth = from.optional_number("bottom_depth_m", depth_of);
    site.entry = from.choice<Entry>("entry");
    site.meeting_place = from.line("meeting_place");
    site.emergency_line = from.line("emergency_line");
    site.emergency_plan = from.lines("emergency_plan");
    return site;
}

Conditions read_conditions(const FieldReader& from) {
    const auto meters = [](double value) { return Meters(value); };
    Conditions today;
    today.water_temperature = kelvins_of(from.number("water_temperature_c"));
    today.air_temperature = kelvins_of(from.number("air_temperature_c"));
    today.barometer = from.optional_number("barometer_hpa", [](double hectopascals) {
        return Pascals(hectopascals * 100.0);
    });
    today.visibility = from.optional_number("visibility_m", meters);
    today.current = from.choice<Current>("current");
    today.wave_height = from.optional_number("wave_height_m", meters);
    return today;
}

Profile read_profile(const FieldReader& from) {
    Profile profile;
    from.each("points", [&](const json& item, const std::string& place) {
        const FieldReader point(item, place, from.error_slot());
        profile.points.push_back({Minutes(point.number("time_min")),
                                  depth_of(point.number("depth_m")),
                                  point.choice<Phase>("phase")});
    });
    return profile;
}

std::vector<EarlierDive> read_earlier_dives(const FieldReader& from) {
    std::vector<EarlierDive> dives;
    from.each("earlier_dives", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        EarlierDive dive;
        dive.date = read_date(fields, "date");
        dive.start = read_time(fields, "start");
        dive.deepest = depth_of(fields.number("deepest_m"));
        dive.duration = Minutes(fields.number("duration_min"));
        if (fields.has("ascents")) dive.ascents = fields.whole("ascents");
        dives.push_back(dive);
    });
    return dives;
}

std::vector<StaffMember> read_staff(const FieldReader& from) {
    std::vector<StaffMember> staff;
    from.each("staff", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        StaffMember member;
        member.id = fields.id<StaffId>("id");
        member.name = fields.line("name");
        member.role = fields.choice<StaffRole>("role");
        fields.each("languages", [&](const json& language, const std::string&) {
            member.languages.push_back(language.get<std::string>());
        });
        member.cylinder = read_cylinder(fields);
        if (fields.has("extra_ascents")) member.extra_ascents = fields.whole("extra_ascents");
        member.earlier_dives = read_earlier_dives(fields);
        staff.push_back(std::move(member));
    });
    return staff;
}

std::vector<Group> read_groups(const FieldReader& from) {
    std::vector<Group> groups;
    from.each("groups", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        groups.push_back({fields.id<GroupId>("id"), fields.line("name"),
                          fields.id<StaffId>("instructor"), fields.id<StaffId>("assistant")});
    });
    return groups;
}

/// Answers by the questions' names; a question that is not there is unanswered.
// Files of earlier programs hold the answers themselves. What they come to is kept, by the rules of
// the time: every yes to a theme asked for a physician, and there were these themes.

constexpr std::array earlier_themes{"lungs",
                                    "heart_and_blood",
                                    "over_45_with_risks",
                                    "exercise",
                                    "eyes_ears_sinuses",
                                    "surgery_last_year",
                                    "nerves_and_blackouts",
                                    "mind",
                                    "back_hernia_diabetes",
                                    "stomach_and_gut",
                                    "prescription_medicine",
                                    "pregnancy"};

ScreeningOutcome earlier_outcome(const FieldReader& health, bool released) {
    if (health.line("pregnancy") == "yes") return ScreeningOutcome::does_not_dive;
    const auto any = [&](const char* answer) {
        return std::any_of(earlier_themes.begin(), earlier_themes.end(),
                           [&](const char* theme) { return health.line(theme) == answer; });
    };
    const bool gap = any("");
    // A release does not answer what nobody asked.
    if (any("yes") && !(gap && released)) return ScreeningOutcome::physician_required;
    return gap ? ScreeningOutcome::unanswered : ScreeningOutcome::clear;
}

TodayOutcome earlier_today(const FieldReader& today) {
    HealthAnswers answers;
    for (std::size_t i = 0; i < answers.today.size(); ++i) {
        const std::string name = enum_name(static_cast<TodayQuestion>(i));
        if (!today.has(name.c_str())) continue;
        answers.today[i] = today.line(name.c_str()) == "yes" ? Answer::yes : Answer::no;
    }
    return today_outcome_of(answers);
}

HealthCheck read_screening(const FieldReader& from, Date session_date) {
    HealthCheck check;
    const auto day = [&](const char* key) {
        return from.has(key) ? std::optional(read_date(from, key)) : std::nullopt;
    };
    check.outcome = from.choice<ScreeningOutcome>("outcome");
    check.checked_on = day("checked_on");
    check.edition = from.line("edition");
    check.checked_by = from.line("checked_by");
    check.physician_approval_seen = from.truth("physician_approval_seen");
    check.approval_on = day("physician_approval_on");
    check.signature = from.choice<SignatureKind>("signature");
    if (from.has("health")) {
        const ScreeningOutcome earlier =
            earlier_outcome(from.object("health"), check.physician_approval_seen);
        check.outcome = std::max(check.outcome, earlier);
        // The earlier form was answered for the session it stands in.
        if (check.outcome != ScreeningOutcome::unanswered && !check.checked_on) {
            check.checked_on = session_date;
        }
    }
    if (from.has("today")) {
        check.today = from.holds_object("today") ? earlier_today(from.object("today"))
                                                 : from.choice<TodayOutcome>("today");
    }
    return check;
}

Kit read_kit(const FieldReader& from) {
    return {from.line("suit"),
            from.line("bcd"),
            from.line("fins"),
            from.line("mask"),
            from.line("regulator"),
            from.optional_number("lead_kg", [](double value) { return Kilograms(value); }),
            read_cylinder(from)};
}

/// Enumerators by their names, each once; a name that is none is an error of the file.
template <typename Enum>
std::vector<Enum> read_choices(const FieldReader& from, const char* key) {
    std::vector<Enum> choices;
    from.each(key, [&](const json& item, const std::string& place) {
        const std::string name = item.get<std::string>();
        const std::optional<Enum> value = enum_value<Enum>(name);
        if (!value) return from.fail({ErrorCode::not_a_choice, place, name, ""});
        choices.push_back(*value);
    });
    return choices;
}

BriefingCheck read_briefing(const FieldReader& from) {
    BriefingCheck briefing;
    for (const HandSignal hand_signal : read_choices<HandSignal>(from, "understood")) {
        set_understood(briefing, hand_signal, true);
    }
    if (from.has("checked_on")) briefing.checked_on = read_date(from, "checked_on");
    briefing.language = from.line("language");
    return briefing;
}

Guest read_guest(const FieldReader& from, Date session_date) {
    Guest guest;
    guest.id = from.id<GuestId>("id");
    guest.name = from.line("name");
    if (from.has("birth_date")) guest.birth_date = read_date(from, "birth_date");
    guest.language = from.line("language");
    guest.second_language = from.line("second_language");
    guest.units = from.choice("units", UnitHabit::house);
    guest.phone = from.line("phone");
    guest.email = from.line("email");
    guest.body_mass =
        from.optional_number("mass_kg", [](double value) { return Kilograms(value); });
    guest.body_height = from.optional_number(
        "height_cm", [](double centimeters) { return Meters(centimeters / 100.0); });
    guest.shoe_size_eu = from.optional_number("shoe_size_eu", [](double size) { return size; });
    guest.screening = read_screening(from.object("screening"), session_date);
    guest.guardian_consent = from.truth("guardian_consent");
    guest.certified = from.truth("certified");
    guest.breathing = from.choice("breathing", BreathingClass::average);
    guest.measured_rmv = from.optional_number(
        "rmv_l_per_min", [](double value) { return LitersPerMinute(value); });
    if (from.has("dives_before")) guest.dives_before = from.whole("dives_before");
    guest.kit = read_kit(from.object("kit"));
    guest.briefing = read_briefing(from.object("briefing"));
    guest.group = from.id<GroupId>("group");
    guest.note = from.lines("note");
    return guest;
}

Stock read_stock(const FieldReader& from) {
    Stock stock;
    from.each("cylinders", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        stock.cylinders.push_back({fields.id<CylinderTypeId>("type"), fields.whole("count")});
    });
    from.each("suits", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        stock.suits.push_back({fields.line("suit"), fields.whole("count")});
    });
    from.each("lead_pieces_kg", [&](const json& item, const std::string&) {
        stock.lead_pieces.emplace_back(item.get<double>());
    });
    return stock;
}

Session read_session_fields(const FieldReader& from) {
    Session session;
    session.title = from.line("title");
    session.date = read_date(from, "date");
    session.meeting_time = read_time(from, "meeting_time");
    session.dive_time = read_time(from, "dive_time");
    session.leader = from.id<StaffId>("leader");
    session.site = read_site(from.object("site"));
    session.conditions = read_conditions(from.object("conditions"));
    session.profile = read_profile(from.object("profile"));
    session.staff = read_staff(from);
    session.groups = read_groups(from);
    from.each("guests", [&](const json& item, const std::string& place) {
        session.guests.push_back(read_guest({item, place, from.error_slot()}, session.date));
    });
    if (from.has("stock")) session.stock = read_stock(from.object("stock"));
    if (from.has("skills")) session.skills = read_choices<Skill>(from, "skills");
    from.each("rule_sets", [&](const json& item, const std::string&) {
        session.rule_sets.emplace_back(item.get<std::string>());
    });
    from.each("overrules", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        session.overrules.push_back(
            {fields.line("finding"), fields.line("reason"), fields.line("by")});
    });
    return session;
}

LogEntry read_diver(const FieldReader& from) {
    LogEntry diver;
    diver.guest = from.id<GuestId>("guest");
    diver.start_pressure = Bars(from.number("start_pressure_bar"));
    diver.end_pressure = Bars(from.number("end_pressure_bar"));
    diver.duration = Minutes(from.number("duration_min"));
    from.each("samples", [&](const json& sample, const std::string&) {
        diver.samples.push_back(
            {Minutes(sample.at(0).get<double>()), depth_of(sample.at(1).get<double>())});
    });
    diver.ears_troubled = from.truth("ears_troubled");
    diver.note = from.lines("note");
    return diver;
}

DiveLog read_log(const FieldReader& from) {
    DiveLog log;
    log.time_in = read_time(from, "time_in");
    log.time_out = read_time(from, "time_out");
    log.heads_in = from.whole("heads_in");
    log.heads_out = from.whole("heads_out");
    from.each("divers", [&](const json& item, const std::string& place) {
        log.divers.push_back(read_diver({item, place, from.error_slot()}));
    });
    log.note = from.lines("note");
    return log;
}

Result<SessionFile> session_from_document(const json& document) {
    std::optional<Error> error;
    const FieldReader root(document, "", error);
    SessionFile file;
    file.session = read_session_fields(root);
    if (root.has("log")) file.log = read_log(root.object("log"));
    if (error) return *error;
    if (const Result<Done> checked = check(file.session); !checked) return checked.error();
    if (file.log) {
        if (const Result<Done> checked = check(*file.log, file.session); !checked) {
            return checked.error();
        }
    }
    return file;
}

}  // namespace

Result<SessionFile> read_session(std::string_view text, std::string_view schema_json) {
    const Result<json> document = parse_json(text);
    if (!document) return document.error();
    // The version comes before the schema: what a newer program has added is no mistake of the file.
    const Result<Done> version =
        check_file_version(*document, "leadline_session", session_file_version);
    if (!version) return version.error();
    if (const Result<Done> checked = check_schema(*document, schema_json); !checked) {
        return checked.error();
    }
    // Only a schema that is not this format's lets a value of the wrong type through to here.
    try {
        return session_from_document(*document);
    } catch (const std::exception& problem) {
        return Error{ErrorCode::wrong_type, "/", problem.what(), ""};
    }
}

}  // namespace leadline
