// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/gas_plan.h"

#include <algorithm>
#include <cmath>

#include "core/body/suit.h"
#include "core/physics/air.h"

namespace leadline {
namespace {

constexpr double sorting_out_minutes = 1.0;  // common practice, no source
constexpr Bars first_stage_margin{10.0};
constexpr double curve_step_minutes = 0.5;

/// Z R T of breathed air [J/mol], at the deepest ambient pressure.
double molar_energy(const GasContext& context) {
    const Pascals ambient = context.water.absolute_pressure(deepest(context.profile));
    const double z = air_compressibility(ambient, context.water.temperature()).value_or(1.0);
    return z * molar_gas_constant * context.water.temperature().value();
}

Bars rounded_up_to_ten(Bars pressure) {
    // A whisker below the ten itself, so that 50 bar stays 50 after a round trip of rounding.
    return Bars(std::ceil(pressure.value() / 10.0 - 1e-9) * 10.0);
}

/// Gauge readings of one cylinder at this site, with the gas at water temperature.
struct Gauge {
    const GasContext& context;
    const CylinderType& type;
    [[nodiscard]] Bars reading(Moles content) const {
        return gauge_pressure(type, content, context.water.temperature(),
                              context.water.surface_pressure());
    }
    [[nodiscard]] Moles content(Bars reading) const {
        return content_at_gauge(type, reading, context.water.temperature(),
                                context.water.surface_pressure());
    }
};

Minutes tour_start(const Profile& profile) {
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        if (profile.points[i].phase == Phase::tour) return profile.points[i - 1].time;
    }
    // Without a tour the half is counted from where the first descent ends.
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        if (profile.points[i].depth.meters().value() > 0.0) return profile.points[i].time;
    }
    return Minutes(0.0);
}

std::vector<PressurePoint> pressure_curve(const GasContext& context, const Gauge& gauge,
                                          Moles content, LitersPerMinute rmv) {
    std::vector<double> times;
    const double end = duration(context.profile).value();
    for (int i = 0; i * curve_step_minutes < end; ++i) times.push_back(i * curve_step_minutes);
    for (const ProfilePoint& point : context.profile.points) times.push_back(point.time.value());
    std::sort(times.begin(), times.end());
    times.erase(std::unique(times.begin(), times.end(),
                            [](double a, double b) { return std::abs(a - b) < 1e-9; }),
                times.end());
    std::vector<PressurePoint> curve;
    curve.reserve(times.size());
    for (const double time : times) {
        const Moles left =
            content - moles_breathed(context, rmv, context.dive.load_at(Minutes(time)));
        curve.push_back(
            {Minutes(time), depth_at(context.profile, Minutes(time)), gauge.reading(left)});
    }
    return curve;
}

}  // namespace

Moles moles_breathed(const GasContext& context, LitersPerMinute rmv, BarMinutes load) {
    const double pascal_cubic_meters = rmv.value() * 1e-3 * load.value() * 1e5;
    return Moles(pascal_cubic_meters / molar_energy(context));
}

BarMinutes load_for(const GasContext& context, LitersPerMinute rmv, Moles amount) {
    return BarMinutes(amount.value() * molar_energy(context) / (rmv.value() * 1e-3 * 1e5));
}

BarMinutes load_up_from(const GasContext& context, Depth depth) {
    const Bars below = context.water.absolute_pressure(depth);
    const Bars above = context.water.surface_pressure();
    const double up_minutes = depth.meters().value() / context.ascent_rate.value();
    return BarMinutes(sorting_out_minutes * below.value() +
                      up_minutes * (below + above).value() / 2.0);
}

Moles minimum_gas(const GasContext& context) {
    return moles_breathed(context, stressed_guest_rmv + stressed_staff_rmv,
                          load_up_from(context, deepest(context.profile)));
}

namespace {

Moles minimum_gas_content(const GasContext& context, const Gauge& gauge) {
    return minimum_gas(context) + gauge.content(first_stage_margin);
}

}  // namespace

Bars minimum_gas_pressure(const GasContext& context, const CylinderType& type) {
    const Gauge gauge{context, type};
    return gauge.reading(minimum_gas_content(context, gauge));
}

Moles first_stage_content(const GasContext& context, const CylinderType& type) {
    return Gauge{context, type}.content(first_stage_margin);
}

BreathingSpread guest_breathing(const Guest& guest, const Conditions& conditions) {
    BreathingFacts facts;
    facts.breathing = guest.breathing;
    facts.measured = guest.measured_rmv;
    facts.body_mass = guest.body_mass;
    facts.dives_before = guest.dives_before;
    facts.water = conditions.water_temperature;
    facts.current = static_cast<int>(conditions.current);
    const std::optional<Suit> suit = read_suit_label(guest.kit.suit);
    // A label is free text: what no suit can have tells nothing.
    if (suit && suit->thickness_mm <= thickest_suit_millimeters) {
        facts.suit_millimeters = suit->thickness_mm;
    }
    const Result<BreathingSpread> spread = breathing_spread(facts);
    if (spread) return *spread;
    // The session's check has refused everything out of range before; a class alone never is.
    BreathingFacts least;
    least.breathing = guest.breathing;
    return *breathing_spread(least);
}

GuestLoads guest_loads(const GasContext& context, const Guest& guest) {
    GuestLoads loads;
    loads.breathing = guest_breathing(guest, context.conditions);
    if (!guest.kit.cylinder) return loads;
    const CylinderType* type = find_cylinder_type(guest.kit.cylinder->type);
    const Result<Moles> content =
        cylinder_content(*guest.kit.cylinder, context.water.surface_pressure());
    if (type == nullptr || !content) return loads;  // the session's check has refused these before
    loads.type = type;
    loads.content = *content;
    loads.to_reserve = load_for(context, loads.breathing.median,
                                *content - Gauge{context, *type}.content(context.reserve));
    return loads;
}

std::optional<Minutes> time_at_depth(const GasContext& context, BarMinutes load) {
    const std::optional<Minutes> time = context.stay.time_of(load);
    return time && *time <= longest_profile ? time : std::nullopt;
}

GuestGas plan_guest_gas(const GasContext& context, const Guest& guest) {
    const GuestLoads loads = guest_loads(context, guest);
    GuestGas gas;
    gas.guest = guest.id;
    gas.group = guest.group;
    gas.breathing = loads.breathing;
    gas.rmv = loads.breathing.median;
    gas.rmv_source = guest.measured_rmv ? RmvSource::measured : RmvSource::breathing_class;
    gas.used = moles_breathed(context, gas.rmv, context.dive.total());
    gas.used_volume = free_air_volume(gas.used);
    if (loads.type == nullptr) return gas;

    const Gauge gauge{context, *loads.type};
    gas.has_cylinder = true;
    gas.content = loads.content;
    gas.content_volume = free_air_volume(gas.content);
    gas.left = gas.content - gas.used;
    gas.start_pressure = gauge.reading(gas.content);
    gas.lost_by_cooling = guest.kit.cylinder->fill_pressure - gas.start_pressure;
    gas.end_pressure = gauge.reading(gas.left);
    gas.minimum_gas = minimum_gas_pressure(context, *loads.type);
    gas.signal_pressure =
        rounded_up_to_ten(std::max(context.reserve, gas.minimum_gas + gauge_error));

    const Moles reserve = gauge.content(context.reserve);
    const std::size_t corner = final_ascent_start(context.profile);
    const BarMinutes ascent_load =
        context.dive.total() - context.dive.load_at(context.profile.points[corner].time);
    // A gauge that reads too high shows the minimum gas while there is less.
    const Moles allowance = gauge.content(gauge_error) - gauge.content(Bars(0.0));
    const Moles leave = std::max(reserve + moles_breathed(context, gas.rmv, ascent_load),
                                 minimum_gas_content(context, gauge) + allowance);
    // The allowance is an amount, which at this pressure makes hardly less than the error itself.
    gas.leave_pressure = std::max(gauge.reading(leave), gas.minimum_gas + gauge_error);
    const Moles at_tour =
        gas.content - moles_breathed(context, gas.rmv,
                                     context.dive.load_at(tour_start(context.profile)));
    const Moles turn = at_tour > leave ? leave + (at_tour - leave) / 2.0 : leave;
    gas.turn_pressure = std::max(gauge.reading(turn), gas.leave_pressure);

    gas.load_to_reserve = loads.to_reserve;
    gas.load_to_turn = load_for(context, gas.rmv, gas.content - turn);
    gas.minutes_to_reserve = time_at_depth(context, gas.load_to_reserve);
    gas.curve = pressure_curve(context, gauge, gas.content, gas.rmv);
    return gas;
}

namespace {

void plan_staff(const GasContext& context, const Session& session, const Group& group,
                GroupGas& result) {
    const StaffMember* instructor = find_staff(session, group.instructor);
    if (instructor == nullptr || !instructor->cylinder) return;
    const CylinderType* type = find_cylinder_type(instructor->cylinder->type);
    const Result<Moles> content =
        cylinder_content(*instructor->cylinder, context.water.surface_pressure());
    if (type == nullptr || !content) return;
    const std::size_t corner = final_ascent_start(context.profile);
    const BarMinutes load = context.dive.load_at(context.profile.points[corner].time);
    const Moles left = *content - moles_breathed(context, planning_staff_rmv, load);
    result.instructor_minimum_gas = minimum_gas_pressure(context, *type) + gauge_error;
    result.instructor_at_ascent = Gauge{context, *type}.reading(left);
}

}  // namespace

GroupGas plan_group_gas(const GasContext& context, const Session& session, const Group& group,
                        const std::vector<GuestGas>& guests) {
    GroupGas result;
    result.group = group.id;
    result.ends_at = duration(context.profile);
    const GuestGas* limiting = nullptr;
    double least = 0.0;
    for (const GuestGas& gas : guests) {
        if (gas.group != group.id || !gas.has_cylinder) continue;
        // The order of guests by this load is the same whatever the depth.
        const double load = gas.load_to_reserve.value();
        if (limiting == nullptr || load < least) {
            limiting = &gas;
            least = load;
        }
    }
    if (limiting != nullptr) {
        result.limiting_guest = limiting->guest;
        result.reserve_reached = limiting->minutes_to_reserve;
        // On the planned dive itself: the moment at which the first guest meets the reserve.
        const std::optional<Minutes> met = context.dive.time_of(BarMinutes(std::max(0.0, least)));
        if (met && *met < result.ends_at) {
            result.ends_at = *met;
            result.cut_short = true;
        }
    }
    plan_staff(context, session, group, result);
    return result;
}

}  // namespace leadline
