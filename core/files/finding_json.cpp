// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/finding_json.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <utility>

#include "core/files/enum_names.h"

namespace leadline {
namespace {

using nlohmann::ordered_json;

/// Names of the numbers a finding carries, in order; the unit is added from the number's type.
std::vector<const char*> value_names(FindingCode code) {
    switch (code) {
        case FindingCode::depth_over_limit: return {"planned_depth", "allowed_depth"};
        case FindingCode::depth_over_usual: return {"planned_depth", "usual_depth"};
        case FindingCode::bottom_below_limit: return {"bottom_depth", "allowed_depth"};
        case FindingCode::guest_too_young: return {"age_years", "least_age_years"};
        case FindingCode::consent_missing: return {"age_years", "consent_below_age_years"};
        case FindingCode::screening_out_of_date:
        case FindingCode::approval_older_than_check: return {"valid_months"};
        case FindingCode::ratio_exceeded: return {"places_used", "places_allowed"};
        case FindingCode::water_too_cold: return {"water_temperature", "least_temperature"};
        case FindingCode::minutes_over_limit:
            return {"planned_duration", "allowed_duration", "below_temperature"};
        case FindingCode::visibility_low: return {"visibility", "least_visibility"};
        case FindingCode::current_strong: return {"current_step", "allowed_current_step"};
        case FindingCode::waves_high: return {"wave_height", "allowed_wave_height"};
        case FindingCode::ends_below_reserve:
            return {"end_pressure", "reserve", "time_to_reserve"};
        case FindingCode::minimum_gas_above_reserve: return {"minimum_gas", "reserve"};
        case FindingCode::staff_gas_below_minimum: return {"pressure_at_ascent", "minimum_gas"};
        case FindingCode::staff_in_two_groups: return {"groups"};
        case FindingCode::group_unlikely_to_finish:
        case FindingCode::sharing_may_not_last: return {"chance_percent"};
        case FindingCode::staff_dives_over_limit: return {"dives", "allowed_dives"};
        case FindingCode::staff_ascents_over_limit: return {"ascents", "allowed_ascents"};
        case FindingCode::staff_days_over_limit: return {"days", "allowed_days"};
        case FindingCode::staff_needs_stop: return {"planned_duration", "no_stop_left"};
        case FindingCode::ascent_too_fast: return {"ascent_rate", "allowed_ascent_rate"};
        case FindingCode::descent_too_fast: return {"descent_rate", "allowed_descent_rate"};
        case FindingCode::ear_step_over_locking: return {"clearing_step", "locking_depth"};
        case FindingCode::cold_before_end: return {"warm_time", "planned_duration"};
        case FindingCode::bcd_cannot_hold: return {"lead", "bcd_lift"};
        case FindingCode::cannot_stay_down:
        case FindingCode::lead_outside_range: return {"lead", "low_lead", "high_lead"};
        case FindingCode::logged_too_deep: return {"logged_depth", "planned_depth"};
        case FindingCode::logged_depth_over_limit: return {"logged_depth", "allowed_depth"};
        case FindingCode::logged_below_reserve: return {"end_pressure", "reserve"};
        case FindingCode::logged_longer: return {"logged_duration", "planned_duration"};
        case FindingCode::head_count_open: return {"heads_in", "heads_out"};
        default: return {};
    }
}

struct UnitNumber {
    const char* unit;  ///< as the end of a key
    double number;
};

UnitNumber unit_number(const FindingValue& value) {
    struct Visitor {
        UnitNumber operator()(int count) const { return {"", static_cast<double>(count)}; }
        UnitNumber operator()(Depth depth) const { return {"_m", depth.meters().value()}; }
        UnitNumber operator()(Meters length) const { return {"_m", length.value()}; }
        UnitNumber operator()(Kelvins t) const { return {"_c", Celsius(t).value()}; }
        UnitNumber operator()(Bars pressure) const { return {"_bar", pressure.value()}; }
        UnitNumber operator()(Minutes time) const { return {"_min", time.value()}; }
        UnitNumber operator()(MetersPerMinute rate) const { return {"_m_per_min", rate.value()}; }
        UnitNumber operator()(LitersPerMinute flow) const { return {"_l_per_min", flow.value()}; }
        UnitNumber operator()(Kilograms mass) const { return {"_kg", mass.value()}; }
    };
    return std::visit(Visitor{}, value);
}

ordered_json values_json(const Finding& finding) {
    const std::vector<const char*> names = value_names(finding.code);
    ordered_json to = ordered_json::object();
    for (std::size_t i = 0; i < finding.values.size(); ++i) {
        const std::string name = i < names.size() ? names[i] : "value_" + std::to_string(i + 1);
        const UnitNumber value = unit_number(finding.values[i]);
        if (std::holds_alternative<int>(finding.values[i])) {
            to[name] = std::get<int>(finding.values[i]);
        } else {
            put_result(to, name + value.unit, value.number);
        }
    }
    return to;
}

ordered_json subject_json(const Subject& subject) {
    struct Visitor {
        ordered_json operator()(std::monostate) const { return of("session", ""); }
        ordered_json operator()(const GuestId& id) const { return of("guest", id.text); }
        ordered_json operator()(const GroupId& id) const { return of("group", id.text); }
        ordered_json operator()(const StaffId& id) const { return of("staff", id.text); }
        static ordered_json of(const char* kind, const std::string& id) {
            return {{"kind", kind}, {"id", id}};
        }
    };
    return std::visit(Visitor{}, subject);
}

/// "suit,fins" as a list.
ordered_json split(std::string_view text) {
    ordered_json list = ordered_json::array();
    while (!text.empty()) {
        const std::size_t comma = std::min(text.find(','), text.size());
        std::string_view item = text.substr(0, comma);
        item.remove_prefix(std::min(item.find_first_not_of(' '), item.size()));
        list.push_back(std::string(item));
        text.remove_prefix(std::min(comma + 1, text.size()));
    }
    return list;
}

ordered_json finding_json(const Finding& finding, const FindingSpeaker& speak) {
    ordered_json to = ordered_json::object();
    to["key"] = key(finding);
    to["code"] = name(finding.code);
    to["severity"] = name(finding.severity);
    to["subject"] = subject_json(finding.subject);
    to["values"] = values_json(finding);
    if (finding.code == FindingCode::ratio_exceeded) {
        to["ratio_reason"] = enum_name(finding.reason);
    }
    if (finding.code == FindingCode::kit_missing) {
        to["items"] = split(finding.text);
    } else if (!finding.text.empty()) {
        to["text"] = finding.text;
    }
    if (speak) {
        FindingWords words = speak(finding);
        to["what"] = std::move(words.what);
        to["remedy"] = std::move(words.remedy);
    }
    to["rule_set"] = finding.rule_set;
    to["source"] = finding.source;
    if (finding.overruled_because) to["overruled_because"] = *finding.overruled_because;
    return to;
}

}  // namespace

ordered_json findings_json(const std::vector<Finding>& findings, const FindingSpeaker& speak) {
    ordered_json list = ordered_json::array();
    for (const Finding& finding : findings) list.push_back(finding_json(finding, speak));
    return list;
}

ordered_json session_head_json(const Session& session) {
    return {{"title", session.title},
            {"date", to_text(session.date)},
            {"dive_time", to_text(session.dive_time)},
            {"site", session.site.name}};
}

}  // namespace leadline
