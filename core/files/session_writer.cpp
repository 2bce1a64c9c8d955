// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <nlohmann/json.hpp>
#include <string_view>

#include "core/files/json_values.h"
#include "core/files/session_file.h"

namespace leadline {
namespace {

using nlohmann::ordered_json;

ordered_json celsius_of(Kelvins temperature) {
    return number_json(Celsius(temperature).value());
}
ordered_json meters_of(Depth depth) { return number_json(depth.meters().value()); }

// What is empty or unknown is left out; the reader gives it back as empty or unknown.

void put_line(ordered_json& to, const char* key, const std::string& text) {
    if (!text.empty()) to[key] = without_controls(text, TextForm::line);
}
void put_lines(ordered_json& to, const char* key, const std::string& text) {
    if (!text.empty()) to[key] = without_controls(text, TextForm::lines);
}
template <typename Quantity>
void put_number(ordered_json& to, const char* key, const std::optional<Quantity>& quantity) {
    if (quantity) to[key] = number_json(quantity->value());
}
void put_flag(ordered_json& to, const char* key, bool flag) {
    if (flag) to[key] = true;
}

template <typename Items, typename ToJson>
ordered_json list_json(const Items& items, ToJson to_json) {
    ordered_json list = ordered_json::array();
    for (const auto& item : items) list.push_back(to_json(item));
    return list;
}

void put_cylinder(ordered_json& to, const std::optional<Cylinder>& cylinder) {
    if (!cylinder) return;
    to["cylinder"] = {{"type", cylinder->type.text},
                      {"fill_pressure_bar", number_json(cylinder->fill_pressure.value())},
                      {"fill_temperature_c", celsius_of(cylinder->fill_temperature)}};
}

ordered_json site_json(const Site& site) {
    ordered_json to = ordered_json::object();
    to["name"] = without_controls(site.name, TextForm::line);
    to["altitude_m"] = number_json(site.altitude.meters().value());
    to["latitude_deg"] = number_json(site.latitude.value());
    to["salinity"] = number_json(site.salinity.value);
    if (site.bottom_depth) to["bottom_depth_m"] = meters_of(*site.bottom_depth);
    to["entry"] = enum_name(site.entry);
    put_line(to, "meeting_place", site.meeting_place);
    put_line(to, "emergency_line", site.emergency_line);
    put_lines(to, "emergency_plan", site.emergency_plan);
    return to;
}

ordered_json conditions_json(const Conditions& today) {
    ordered_json to = ordered_json::object();
    to["water_temperature_c"] = celsius_of(today.water_temperature);
    to["air_temperature_c"] = celsius_of(today.air_temperature);
    if (today.barometer) to["barometer_hpa"] = number_json(today.barometer->value() / 100.0);
    put_number(to, "visibility_m", today.visibility);
    to["current"] = enum_name(today.current);
    put_number(to, "wave_height_m", today.wave_height);
    return to;
}

ordered_json profile_json(const Profile& profile) {
    ordered_json points = ordered_json::array();
    for (const ProfilePoint& point : profile.points) {
        points.push_back({{"time_min", number_json(point.time.value())},
                          {"depth_m", meters_of(point.depth)},
                          {"phase", enum_name(point.phase)}});
    }
    return {{"points", std::move(points)}};
}

ordered_json earlier_dive_json(const EarlierDive& dive) {
    ordered_json to = ordered_json::object();
    to["date"] = to_text(dive.date);
    to["start"] = to_text(dive.start);
    to["deepest_m"] = meters_of(dive.deepest);
    to["duration_min"] = number_json(dive.duration.value());
    if (dive.ascents != 1) to["ascents"] = dive.ascents;
    return to;
}

ordered_json staff_json(const StaffMember& member) {
    ordered_json to = ordered_json::object();
    to["id"] = member.id.text;
    to["name"] = without_controls(member.name, TextForm::line);
    to["role"] = enum_name(member.role);
    to["languages"] = member.languages;
    put_cylinder(to, member.cylinder);
    if (member.extra_ascents != 0) to["extra_ascents"] = member.extra_ascents;
    if (!member.earlier_dives.empty()) {
        to["earlier_dives"] = list_json(member.earlier_dives, earlier_dive_json);
    }
    return to;
}

ordered_json group_json(const Group& group) {
    ordered_json to = ordered_json::object();
    to["id"] = group.id.text;
    to["name"] = without_controls(group.name, TextForm::line);
    put_line(to, "instructor", group.instructor.text);
    put_line(to, "assistant", group.assistant.text);
    return to;
}

ordered_json screening_json(const HealthCheck& check) {
    ordered_json to = ordered_json::object();
    to["outcome"] = enum_name(check.outcome);
    if (check.checked_on) to["checked_on"] = to_text(*check.checked_on);
    put_line(to, "edition", check.edition);
    put_line(to, "checked_by", check.checked_by);
    put_flag(to, "physician_approval_seen", check.physician_approval_seen);
    if (check.approval_on) to["physician_approval_on"] = to_text(*check.approval_on);
    to["today"] = enum_name(check.today);
    if (check.signature != SignatureKind::none) to["signature"] = enum_name(check.signature);
    return to;
}

ordered_json kit_json(const Kit& kit) {
    ordered_json to = ordered_json::object();
    put_line(to, "suit", kit.suit);
    put_line(to, "bcd", kit.bcd);
    put_line(to, "fins", kit.fins);
    put_line(to, "mask", kit.mask);
    put_line(to, "regulator", kit.regulator);
    put_number(to, "lead_kg", kit.lead);
    put_cylinder(to, kit.cylinder);
    return to;
}

template <typename Enum>
ordered_json names_json(const std::vector<Enum>& values) {
    ordered_json to = ordered_json::array();
    for (const Enum value : values) to.push_back(enum_name(value));
    return to;
}

ordered_json briefing_json(const BriefingCheck& briefing) {
    ordered_json to = ordered_json::object();
    to["understood"] = names_json(briefing.understood);
    if (briefing.checked_on) to["checked_on"] = to_text(*briefing.checked_on);
    put_line(to, "language", briefing.language);
    return to;
}

ordered_json guest_json(const Guest& guest) {
    ordered_json to = ordered_json::object();
    to["id"] = guest.id.text;
    to["name"] = without_controls(guest.name, TextForm::line);
    if (guest.birth_date) to["birth_date"] = to_text(*guest.birth_date);
    to["language"] = guest.language;
    put_line(to, "second_language", guest.second_language);
    if (guest.units != UnitHabit::house) to["units"] = enum_name(guest.units);
    put_line(to, "phone", guest.phone);
    put_line(to, "email", guest.email);
    put_number(to, "mass_kg", guest.body_mass);
    if (guest.body_height) to["height_cm"] = number_json(guest.body_height->value() * 100.0);
    if (guest.shoe_size_eu) to["shoe_size_eu"] = number_json(*guest.shoe_size_eu);
    to["screening"] = screening_json(guest.screening);
    put_flag(to, "guardian_consent", guest.guardian_consent);
    put_flag(to, "certified", guest.certified);
    to["breathing"] = enum_name(guest.breathing);
    put_number(to, "rmv_l_per_min", guest.measured_rmv);
    if (guest.dives_before) to["dives_before"] = *guest.dives_before;
    to["kit"] = kit_json(guest.kit);
    if (guest.briefing != BriefingCheck{}) to["briefing"] = briefing_json(guest.briefing);
    put_line(to, "group", guest.group.text);
    put_lines(to, "note", guest.note);
    return to;
}

ordered_json diver_json(const LogEntry& diver) {
    ordered_json to = ordered_json::object();
    to["guest"] = diver.guest.text;
    to["start_pressure_bar"] = number_json(diver.start_pressure.value());
    to["end_pressure_bar"] = number_json(diver.end_pressure.value());
    to["duration_min"] = number_json(diver.duration.value());
    ordered_json samples = ordered_json::array();
    for (const DepthSample& sample : diver.samples) {
        samples.push_back(
            ordered_json::array({number_json(sample.time.value()), meters_of(sample.depth)}));
    }
    to["samples"] = std::move(samples);
    put_flag(to, "ears_troubled", diver.ears_troubled);
    put_lines(to, "note", diver.note);
    return to;
}

ordered_json log_json(const DiveLog& log) {
    ordered_json to = ordered_json::object();
    to["time_in"] = to_text(log.time_in);
    to["time_out"] = to_text(log.time_out);
    to["heads_in"] = log.heads_in;
    to["heads_out"] = log.heads_out;
    to["divers"] = list_json(log.divers, diver_json);
    put_lines(to, "note", log.note);
    return to;
}

ordered_json stock_json(const Stock& stock) {
    ordered_json to = ordered_json::object();
    if (!stock.cylinders.empty()) {
        to["cylinders"] = list_json(stock.cylinders, [](const CylinderStock& held) {
            return ordered_json{{"type", held.type.text}, {"count", held.count}};
        });
    }
    if (!stock.suits.empty()) {
        to["suits"] = list_json(stock.suits, [](const SuitStock& held) {
            return ordered_json{{"suit", without_controls(held.suit, TextForm::line)},
                                {"count", held.count}};
        });
    }
    if (!stock.lead_pieces.empty()) {
        to["lead_pieces_kg"] = list_json(
            stock.lead_pieces, [](Kilograms piece) { return number_json(piece.value()); });
    }
    return to;
}

ordered_json session_json(const Session& session) {
    ordered_json to = ordered_json::object();
    to["leadline_session"] = session_file_version;
    to["title"] = without_controls(session.title, TextForm::line);
    to["date"] = to_text(session.date);
    to["meeting_time"] = to_text(session.meeting_time);
    to["dive_time"] = to_text(session.dive_time);
    put_line(to, "leader", session.leader.text);
    to["site"] = site_json(session.site);
    to["conditions"] = conditions_json(session.conditions);
    to["profile"] = profile_json(session.profile);
    to["staff"] = list_json(session.staff, staff_json);
    to["groups"] = list_json(session.groups, group_json);
    to["guests"] = list_json(session.guests, guest_json);
    if (session.stock != Stock{}) to["stock"] = stock_json(session.stock);
    if (session.skills != standard_skills()) to["skills"] = names_json(session.skills);
    to["rule_sets"] = list_json(session.rule_sets, [](const RuleSetId& id) { return id.text; });
    to["overrules"] = list_json(session.overrules, [](const Overrule& overrule) {
        return ordered_json{{"finding", without_controls(overrule.finding, TextForm::line)},
                            {"reason", without_controls(overrule.reason, TextForm::line)},
                            {"by", without_controls(overrule.by, TextForm::line)}};
    });
    return to;
}

/// Puts each depth sample on one line. The only arrays without a key are samples, and texts hold
/// their line breaks escaped, so a line of nothing but "[" is the start of one.
std::string with_samples_in_lines(std::string_view pretty) {
    std::string text;
    text.reserve(pretty.size());
    bool in_sample = false;
    while (!pretty.empty()) {
        const std::size_t end = std::min(pretty.find('\n'), pretty.size());
        const std::string_view line = pretty.substr(0, end);
        const std::string_view content = line.substr(std::min(line.find_first_not_of(' '), end));
        pretty.remove_prefix(std::min(end + 1, pretty.size()));
        if (in_sample) {
            in_sample = content.front() != ']';
            text += content;
            if (in_sample && content.back() == ',') text += ' ';
        } else {
            in_sample = content == "[";
            text += line;
        }
        if (!in_sample) text += '\n';
    }
    return text;
}

}  // namespace

std::string write_session(const SessionFile& file) {
    ordered_json document = session_json(file.session);
    if (file.log) document["log"] = log_json(*file.log);
    // Text that is not UTF-8 gets replacement characters; it must not keep a session from being
    // saved.
    return with_samples_in_lines(
        document.dump(2, ' ', false, ordered_json::error_handler_t::replace));
}

}  // namespace leadline
