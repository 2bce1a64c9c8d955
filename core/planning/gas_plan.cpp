// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/gas_plan.h"

#include <algorithm>
#include <cmath>

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

Moles minimum_gas(const GasContext& context) {
    const Depth bottom = deepest(context.profile);
    const Bars below = context.water.absolute_pressure(bottom);
    const Bars above = context.water.surface_pressure();
    const double up_minutes = bottom.meters().value() / context.ascent_rate.value();
    const BarMinutes load(sorting_out_minutes * below.value() +
                          up_minutes * (below + above).value() / 2.0);
    return moles_breathed(context, stressed_guest_rmv + stressed_staff_rmv, load);
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

LitersPerMinute guest_rmv(const Guest& guest) {
    return guest.measured_rmv.value_or(planning_rmv(guest.breathing));
}

GuestGas plan_guest_gas(const GasContext& context, const Guest& guest) {
    GuestGas gas;
    gas.guest = guest.id;
    gas.group = guest.group;
    gas.rmv = guest_rmv(guest);
    gas.rmv_source = guest.measured_rmv ? RmvSource::measured : RmvSource::breathing_class;
    gas.used = moles_breathed(context, gas.rmv, context.dive.total());
    gas.used_volume = free_air_volume(gas.used);
    if (!guest.kit.cylinder) return gas;
    const CylinderType* type = find_cylinder_type(guest.kit.cylinder->type);
    const Result<Moles> content =
        cylinder_content(*guest.kit.cylinder, context.water.surface_pressure());
    if (type == nullptr || !content) return gas;  // the session's check has refused these before

    const Gauge gauge{context, *type};
    gas.has_cylinder = true;
    gas.content = *content;
    gas.content_volume = free_air_volume(gas.content);
    gas.left = gas.content - gas.used;
    gas.start_pressure = gauge.reading(gas.content);
    gas.end_pressure = gauge.reading(gas.left);
    gas.minimum_gas = minimum_gas_pressure(context, *type);
    gas.signal_pressure = rounded_up_to_ten(std::max(context.reserve, gas.minimum_gas));

    const Moles reserve = gauge.content(context.reserve);
    const std::size_t corner = final_ascent_start(context.profile);
    const BarMinutes ascent_load =
        context.dive.total() - context.dive.load_at(context.profile.points[corner].time);
    const Moles leave = std::max(reserve + moles_breathed(context, gas.rmv, ascent_load),
                                 minimum_gas_content(context, gauge));
    gas.leave_pressure = gauge.reading(leave);
    const Moles at_tour =
        gas.content - moles_breathed(context, gas.rmv,
                                     context.dive.load_at(tour_start(context.profile)));
    const Moles turn = at_tour > leave ? leave + (at_tour - leave) / 2.0 : leave;
    gas.turn_pressure = gauge.reading(turn);

    const Moles usable(std::max(0.0, (gas.content - reserve).value()));
    gas.minutes_to_reserve = context.stay.time_of(load_for(context, gas.rmv, usable));
    if (gas.minutes_to_reserve && *gas.minutes_to_reserve > longest_profile) {
        gas.minutes_to_reserve.reset();
    }
    gas.curve = pressure_curve(context, gauge, gas.content, gas.rmv);
    return gas;
}

namespace {

/// Load after which a guest's reserve is reached: the smaller, the sooner. The order of guests by it
/// is the same whatever the depth.
double reserve_load(const GasContext& context, const GuestGas& gas, const CylinderType& type) {
    const Gauge gauge{context, type};
    return load_for(context, gas.rmv, gas.content - gauge.content(context.reserve)).value();
}

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
    result.instructor_minimum_gas = minimum_gas_pressure(context, *type);
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
        const Guest* guest = find_guest(session, gas.guest);
        if (gas.group != group.id || !gas.has_cylinder || guest == nullptr) continue;
        const CylinderType* type = find_cylinder_type(guest->kit.cylinder->type);
        const double load = reserve_load(context, gas, *type);
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
