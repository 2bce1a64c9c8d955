// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/plan_json.h"

#include <optional>
#include <utility>

#include "core/files/enum_names.h"
#include "core/files/finding_json.h"
#include "core/files/plan_parts_json.h"

namespace leadline {
namespace {

using nlohmann::ordered_json;

constexpr int plan_json_version = 1;

ordered_json ladder_json(const ClearingLadder& ladder) {
    ordered_json to = ordered_json::object();
    put_result(to, "step_m", ladder.step.value());
    ordered_json depths = ordered_json::array();
    for (const Depth depth : ladder.clear_at) {
        depths.push_back(std::round(depth.meters().value() * 1e6) / 1e6);
    }
    to["clear_at_m"] = std::move(depths);
    put_result(to, "interval_s", ladder.interval.value());
    put_result(to, "largest_difference_bar", Bars(ladder.largest_difference).value());
    put_result(to, "locking_difference_bar", Bars(ladder.locking).value());
    put_result(to, "locks_at_m", ladder.locks_at.meters().value());
    put_result(to, "uncleared_at_bottom_bar", Bars(ladder.uncleared_at_bottom).value());
    return to;
}

ordered_json environment_json(const Environment& environment) {
    ordered_json to = ordered_json::object();
    put_result(to, "surface_pressure_bar", Bars(environment.surface_pressure).value());
    to["surface_pressure_from_barometer"] = environment.from_barometer;
    put_result(to, "gravity_m_per_s2", environment.gravity.value());
    put_result(to, "water_density_kg_per_m3", environment.density.value());
    put_result(to, "deepest_m", environment.deepest.meters().value());
    put_result(to, "bottom_pressure_bar", Bars(environment.bottom_pressure).value());
    put_result(to, "breath_expansion_ratio", environment.breath_expansion_from_deepest);
    put_result(to, "breath_danger_ascent_m", environment.breath_danger_ascent.value());
    put_result(to, "fastest_descent_m_per_min", environment.fastest_descent.value());
    put_result(to, "fastest_ascent_m_per_min", environment.fastest_ascent.value());
    to["ear_clearing"] = ladder_json(environment.ladder);
    return to;
}

void put_limit(ordered_json& to, const char* key, const char* unit,
               const std::optional<Limit>& limit) {
    if (!limit) return;
    ordered_json entry = ordered_json::object();
    put_result(entry, std::string("value_") + unit, limit->value);
    entry["severity"] = name(limit->severity);
    entry["rule_set"] = limit->rule_set;
    entry["source"] = limit->source;
    entry["standing"] = name(limit->standing);
    to[key] = std::move(entry);
}

ordered_json limits_json(const Limits& limits) {
    ordered_json to = ordered_json::object();
    put_result(to, "reserve_bar", limits.reserve.value());
    put_result(to, "no_fly_h", limits.no_fly.value());
    put_limit(to, "max_depth", "m", limits.max_depth);
    put_limit(to, "max_ascent_rate", "m_per_min", limits.max_ascent_rate);
    put_limit(to, "reserve", "bar", limits.reserve_rule);
    put_limit(to, "no_fly", "h", limits.no_fly_rule);
    return to;
}

ordered_json curve_json(const std::vector<PressurePoint>& curve) {
    ordered_json list = ordered_json::array();
    for (const PressurePoint& point : curve) {
        ordered_json to = ordered_json::object();
        put_result(to, "time_min", point.time.value());
        put_result(to, "depth_m", point.depth.meters().value());
        put_result(to, "gauge_bar", point.gauge.value());
        list.push_back(std::move(to));
    }
    return list;
}

ordered_json guest_json(const Session& session, const GuestGas& gas) {
    const Guest* guest = find_guest(session, gas.guest);
    ordered_json to = ordered_json::object();
    to["id"] = gas.guest.text;
    to["name"] = guest != nullptr ? guest->name : "";
    to["group"] = gas.group.text;
    put_result(to, "rmv_l_per_min", gas.rmv.value());
    put_result(to, "rmv_sigma", gas.breathing.sigma());
    put_result(to, "rmv_shared_sigma", gas.breathing.shared_sigma);
    put_result(to, "rmv_mass_factor", gas.breathing.mass_factor);
    put_result(to, "rmv_cold_factor", gas.breathing.cold_factor);
    put_result(to, "rmv_current_factor", gas.breathing.current_factor);
    to["rmv_source"] = gas.rmv_source == RmvSource::measured ? "measured" : "breathing_class";
    to["has_cylinder"] = gas.has_cylinder;
    // Without a cylinder the numbers below are no numbers.
    if (!gas.has_cylinder) return to;
    put_result(to, "start_pressure_bar", gas.start_pressure.value());
    put_result(to, "lost_by_cooling_bar", gas.lost_by_cooling.value());
    put_result(to, "content_mol", gas.content.value());
    put_result(to, "used_mol", gas.used.value());
    put_result(to, "left_mol", gas.left.value());
    put_result(to, "content_free_air_l", gas.content_volume.value());
    put_result(to, "used_free_air_l", gas.used_volume.value());
    put_result(to, "end_pressure_bar", gas.end_pressure.value());
    put_result(to, "turn_pressure_bar", gas.turn_pressure.value());
    put_result(to, "leave_pressure_bar", gas.leave_pressure.value());
    put_result(to, "minimum_gas_bar", gas.minimum_gas.value());
    put_result(to, "gauge_error_bar", gauge_error.value());
    put_result(to, "signal_pressure_bar", gas.signal_pressure.value());
    put_result(to, "time_to_reserve_min", gas.minutes_to_reserve);
    to["pressure_curve"] = curve_json(gas.curve);
    return to;
}

ordered_json group_json(const Session& session, const GroupGas& gas) {
    const Group* group = find_group(session, gas.group);
    ordered_json to = ordered_json::object();
    to["id"] = gas.group.text;
    to["name"] = group != nullptr ? group->name : "";
    if (gas.limiting_guest) to["limiting_guest"] = gas.limiting_guest->text;
    put_result(to, "reserve_reached_min", gas.reserve_reached);
    put_result(to, "ends_at_min", gas.ends_at.value());
    to["cut_short"] = gas.cut_short;
    put_result(to, "instructor_minimum_gas_bar", gas.instructor_minimum_gas);
    put_result(to, "instructor_at_ascent_bar", gas.instructor_at_ascent);
    return to;
}

ordered_json readiness_json(const Readiness& readiness) {
    return {{"may_dive", readiness.may_dive()},
            {"stops", readiness.stops},
            {"cautions", readiness.cautions},
            {"notes", readiness.notes},
            {"overruled", readiness.overruled}};
}

}  // namespace

std::string plan_to_json(const Session& session, const Plan& plan, const FindingSpeaker& speak) {
    ordered_json document = ordered_json::object();
    document["leadline_plan"] = plan_json_version;
    document["session"] = session_head_json(session);
    document["readiness"] = readiness_json(plan.readiness);
    document["environment"] = environment_json(plan.environment);
    document["limits"] = limits_json(plan.limits);
    ordered_json groups = ordered_json::array();
    for (const GroupGas& gas : plan.groups) groups.push_back(group_json(session, gas));
    document["groups"] = std::move(groups);
    ordered_json guests = ordered_json::array();
    for (const GuestGas& gas : plan.guests) guests.push_back(guest_json(session, gas));
    document["guests"] = std::move(guests);
    document["forecasts"] = forecasts_json(plan);
    document["levers"] = levers_json(plan);
    document["warmth"] = warmth_json(plan);
    document["lead"] = lead_json(plan);
    document["staff"] = exposures_json(session, plan);
    document["cylinders"] = cylinders_json(plan);
    document["ears_and_lungs"] = ears_and_lungs_json(plan.ears_and_lungs);
    document["findings"] = findings_json(plan.findings, speak);
    return document.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace leadline
