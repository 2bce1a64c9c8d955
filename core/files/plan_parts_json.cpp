// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/plan_parts_json.h"

#include <utility>

#include "core/files/enum_names.h"
#include "core/files/finding_json.h"

namespace leadline {
namespace {

using nlohmann::ordered_json;

ordered_json band_json(const TimeBand& band) {
    ordered_json to = ordered_json::object();
    put_result(to, "early_10_percent_min", band.early);
    put_result(to, "median_min", band.middle);
    put_result(to, "late_90_percent_min", band.late);
    return to;
}

ordered_json runs_json(const RunSummary& runs) {
    ordered_json to = ordered_json::object();
    to["count"] = runs.runs;
    put_result(to, "chance_to_complete", runs.completes);
    put_result(to, "standard_error", runs.completes_error);
    return to;
}

ordered_json forecast_json(const GroupForecast& forecast) {
    ordered_json to = ordered_json::object();
    to["group"] = forecast.group.text;
    to["likely_first"] = forecast.likely_first.text;
    to["first_at_reserve"] = band_json(forecast.first_at_reserve);
    put_result(to, "chance_to_complete", forecast.completes);
    put_result(to, "chance_after_losing_20_bar", forecast.completes_after_loss);
    put_result(to, "chance_after_free_flow", forecast.completes_after_free_flow);
    if (forecast.sharing_lasts) put_result(to, "chance_sharing_lasts", *forecast.sharing_lasts);
    to["runs"] = runs_json(forecast.runs);
    ordered_json guests = ordered_json::array();
    for (const GuestForecast& guest : forecast.guests) {
        ordered_json entry = ordered_json::object();
        entry["id"] = guest.guest.text;
        entry["turn"] = band_json(guest.turn);
        entry["reserve"] = band_json(guest.reserve);
        put_result(entry, "chance_to_end_the_dive", guest.ends_dive);
        guests.push_back(std::move(entry));
    }
    to["guests"] = std::move(guests);
    return to;
}

/// What a lever changes, as far as its kind has any.
void put_change(ordered_json& to, const Lever& lever) {
    if (!lever.guest.empty()) to["guest"] = lever.guest.text;
    if (!lever.other_guest.empty()) to["other_guest"] = lever.other_guest.text;
    if (lever.kind == LeverKind::shallower) {
        put_result(to, "deepest_m", lever.deepest.meters().value());
    }
    if (lever.kind == LeverKind::shorter_skills) {
        put_result(to, "minutes_off_min", lever.minutes_off.value());
    }
    if (!lever.cylinder.empty()) to["cylinder"] = lever.cylinder.text;
    if (!lever.suit.empty()) to["suit"] = lever.suit;
    if (!lever.cylinder.empty() || !lever.suit.empty()) to["free_in_stock"] = lever.stock_known;
    if (lever.kind == LeverKind::swap_guests) {
        put_result(to, "other_group_chance_change", lever.other_group_change);
    }
}

ordered_json lever_json(const Lever& lever) {
    ordered_json to = ordered_json::object();
    to["kind"] = enum_name(lever.kind);
    to["group"] = lever.group.text;
    put_change(to, lever);
    put_result(to, "gain_min", lever.gain);
    if (lever.gain_is_least) to["gain_is_least"] = true;
    put_result(to, "chance_to_complete", lever.completes);
    put_result(to, "gain_in_chance", lever.gain_completes);
    return to;
}

ordered_json guest_warmth_json(const GuestWarmth& warmth) {
    ordered_json to = ordered_json::object();
    to["id"] = warmth.guest.text;
    if (warmth.gap != WarmthGap::none) {
        to["missing"] = enum_name(warmth.gap);
        return to;
    }
    put_result(to, "warm_low_min", warmth.low);
    put_result(to, "warm_middle_min", warmth.middle);
    put_result(to, "warm_high_min", warmth.high);
    put_result(to, "chilled_middle_min", warmth.chilled);
    put_result(to, "suit_mm", warmth.suit_millimeters);
    put_result(to, "suit_at_surface_clo", warmth.suit_clo_at_surface);
    put_result(to, "suit_at_depth_clo", warmth.suit_clo_at_depth);
    put_result(to, "heat_loss_w", warmth.heat_loss_watts);
    put_result(to, "core_fall_k", warmth.core_fall_kelvin);
    return to;
}

ordered_json guest_lead_json(const GuestLead& lead) {
    ordered_json to = ordered_json::object();
    to["id"] = lead.guest.text;
    if (lead.gap != LeadGap::none) {
        to["missing"] = enum_name(lead.gap);
        return to;
    }
    put_result(to, "low_kg", lead.low.value());
    put_result(to, "middle_kg", lead.middle.value());
    put_result(to, "high_kg", lead.high.value());
    put_result(to, "carried_kg", lead.carried.value());
    put_result(to, "buoyancy_surface_start_kg", lead.at_surface_start.value());
    put_result(to, "buoyancy_surface_reserve_kg", lead.at_surface_reserve.value());
    put_result(to, "buoyancy_depth_start_kg", lead.at_depth_start.value());
    put_result(to, "buoyancy_depth_reserve_kg", lead.at_depth_reserve.value());
    put_result(to, "bcd_lift_kg", lead.bcd_lift.value());
    to["bcd_cannot_hold_up"] = lead.bcd_cannot_hold_up;
    to["cannot_stay_down"] = lead.cannot_stay_down;
    return to;
}

ordered_json trace_json(const std::vector<EarPoint>& trace) {
    ordered_json list = ordered_json::array();
    for (const EarPoint& point : trace) {
        ordered_json to = ordered_json::object();
        put_result(to, "time_min", point.time.value());
        put_result(to, "depth_m", point.depth.meters().value());
        put_result(to, "difference_bar", Bars(point.difference).value());
        list.push_back(std::move(to));
    }
    return list;
}

}  // namespace

ordered_json forecasts_json(const Plan& plan) {
    ordered_json list = ordered_json::array();
    for (const GroupForecast& forecast : plan.forecasts) list.push_back(forecast_json(forecast));
    return list;
}

ordered_json levers_json(const Plan& plan) {
    ordered_json list = ordered_json::array();
    for (const Lever& lever : plan.levers) list.push_back(lever_json(lever));
    return list;
}

ordered_json warmth_json(const Plan& plan) {
    ordered_json list = ordered_json::array();
    for (const GuestWarmth& warmth : plan.warmth) list.push_back(guest_warmth_json(warmth));
    return list;
}

ordered_json lead_json(const Plan& plan) {
    ordered_json list = ordered_json::array();
    for (const GuestLead& lead : plan.lead) list.push_back(guest_lead_json(lead));
    return list;
}

ordered_json exposures_json(const Session& session, const Plan& plan) {
    ordered_json list = ordered_json::array();
    for (const StaffExposure& exposure : plan.exposures) {
        const StaffMember* member = find_staff(session, exposure.staff);
        ordered_json to = ordered_json::object();
        to["id"] = exposure.staff.text;
        to["name"] = member != nullptr ? member->name : "";
        to["dives_now"] = exposure.dives_now;
        to["dives_today"] = exposure.dives_today;
        to["ascents_today"] = exposure.ascents_today;
        to["days_in_a_row"] = exposure.days_in_a_row;
        put_result(to, "surface_interval_min", exposure.surface_interval);
        put_result(to, "no_stop_left_min", exposure.no_stop_left);
        put_result(to, "planned_time_min", exposure.planned_time.value());
        to["needs_stop"] = exposure.needs_stop;
        put_result(to, "highest_saturation", exposure.highest_saturation);
        to["leading_compartment"] = exposure.leading_compartment;
        put_result(to, "no_fly_h", exposure.no_fly.value());
        to["no_fly_source"] = exposure.no_fly_source;
        list.push_back(std::move(to));
    }
    return list;
}

ordered_json cylinders_json(const Plan& plan) {
    ordered_json list = ordered_json::array();
    for (const CylinderLift& lift : plan.cylinders) {
        const CylinderType* type = find_cylinder_type(lift.type);
        if (type == nullptr) continue;
        ordered_json to = ordered_json::object();
        to["type"] = lift.type.text;
        to["metal"] = type->metal == CylinderMetal::steel ? "steel" : "aluminium";
        put_result(to, "water_capacity_l", type->water_capacity.value());
        put_result(to, "working_pressure_bar", type->working_pressure.value());
        put_result(to, "empty_mass_kg", type->empty_mass.value());
        put_result(to, "lift_empty_kg", lift.empty.value());
        put_result(to, "lift_full_kg", lift.full.value());
        list.push_back(std::move(to));
    }
    return list;
}

ordered_json ears_and_lungs_json(const EarLungCharts& charts) {
    ordered_json to = ordered_json::object();
    put_result(to, "clearing_step_m", charts.step.value());
    put_result(to, "largest_step_m", charts.largest_step.value());
    put_result(to, "opening_least_bar", Bars(charts.opening_least).value());
    put_result(to, "opening_most_bar", Bars(charts.opening_most).value());
    put_result(to, "locking_bar", Bars(charts.locking).value());
    put_result(to, "scarred_drum_tears_bar", Bars(charts.scarred_drum_tears).value());
    put_result(to, "drum_tears_bar", Bars(charts.drum_tears).value());
    put_result(to, "largest_difference_bar", Bars(charts.ears.largest).value());
    if (charts.ears.locked_at) put_result(to, "locked_at_m", charts.ears.locked_at->meters().value());
    to["cleared"] = trace_json(charts.ears.cleared);
    to["never_cleared"] = trace_json(charts.ears.never_cleared);
    put_result(to, "lung_tears_bar", Bars(charts.lung_tears).value());
    ordered_json lungs = ordered_json::array();
    for (const HeldBreathLimit& limit : charts.lungs) {
        ordered_json entry = ordered_json::object();
        put_result(entry, "from_m", limit.from.meters().value());
        put_result(entry, "ascent_m", limit.ascent);
        put_result(entry, "expansion_ratio", limit.expansion);
        lungs.push_back(std::move(entry));
    }
    to["held_breath"] = std::move(lungs);
    return to;
}

}  // namespace leadline
