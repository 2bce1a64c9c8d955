// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/forecast_plan.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/air.h"

namespace leadline {
namespace {

constexpr double there_already = -60.0;  // ln of a load below any second's breathing
constexpr double early = 0.1;
constexpr double middle = 0.5;
constexpr double late = 0.9;
/// Deviations of the 10 % and the 90 % quantile of a normal variable.
constexpr double tenth = 1.2815515655446004;  // qnorm(0.9), R 4.2 (from memory)

constexpr Bars lost_pressure{20.0};
// A free flow of 1000 L/min of free air, stopped after 10 to 60 s. Common practice, no source; the
// high side of what a first stage delivers into an open mouthpiece.
constexpr FreeFlow free_flow{10.0 / 60.0, 1.0, 1000.0};
// Spread of ln RMV of an instructor at work and of two people sharing. Common practice, no source.
constexpr double instructor_sigma = 0.2;
constexpr double stressed_sigma = 0.3;
constexpr int sharing_moments = 32;

/// Time of the end of the first way down.
Minutes first_bottom(const Profile& profile) {
    for (const ProfilePoint& point : profile.points) {
        if (point.depth.meters().value() > 0.0) return point.time;
    }
    return Minutes(0.0);
}

TimeBand first_band(const GasContext& context, const LogGroup& log) {
    const auto time = [&](double share) -> std::optional<Minutes> {
        const Result<double> load = first_load_quantile(log, share);
        if (!load) return std::nullopt;
        return time_at_depth(context, BarMinutes(*load));
    };
    return {time(early), time(middle), time(late)};
}

/// Loads that a litre of free air stands for, at each guest's median RMV.
std::vector<double> loads_per_liter(const GasContext& context,
                                    const std::vector<const GuestGas*>& guests) {
    constexpr double moles_per_liter = 1e-3 * 101325.0 / (molar_gas_constant * 288.15);
    std::vector<double> loads;
    for (const GuestGas* gas : guests) {
        loads.push_back(load_for(context, gas->rmv, Moles(moles_per_liter)).value());
    }
    return loads;
}

double completes_after_loss(const GasContext& context, const Session& session, const LogGroup& log,
                            const std::vector<const GuestGas*>& guests, std::size_t loser) {
    const GuestGas& gas = *guests[loser];
    const Guest* guest = find_guest(session, gas.guest);
    const CylinderType* type = find_cylinder_type(guest->kit.cylinder->type);
    const Bars lower(std::max(0.0, (gas.start_pressure - lost_pressure).value()));
    const Moles left = content_at_gauge(*type, lower, context.water.temperature(),
                                        context.water.surface_pressure());
    const BarMinutes lost = load_for(context, gas.rmv, gas.content - left);
    LogGroup poorer = log;
    poorer.breathers[loser] = breather(gas.breathing, gas.load_to_reserve - lost);
    return chance_all_last(poorer, context.dive.total().value()).value_or(0.0);
}

std::optional<double> sharing_lasts(const GasContext& context, const Session& session,
                                    const Group& group) {
    const StaffMember* instructor = find_staff(session, group.instructor);
    if (instructor == nullptr || !instructor->cylinder) return std::nullopt;
    const CylinderType* type = find_cylinder_type(instructor->cylinder->type);
    const Result<Moles> content =
        cylinder_content(*instructor->cylinder, context.water.surface_pressure());
    if (type == nullptr || !content) return std::nullopt;

    SharedAscent setup;
    setup.shared_sigma = shared_breathing_sigma;
    setup.instructor_sigma = instructor_sigma;
    setup.stressed_sigma = stressed_sigma;
    setup.instructor_rmv = planning_staff_rmv.value();
    setup.stressed_rmv = (stressed_guest_rmv + stressed_staff_rmv).value();
    const Moles usable = *content - first_stage_content(context, *type);
    setup.usable_liter_bars =
        std::max(0.0, load_for(context, LitersPerMinute(1.0), usable).value());
    const Minutes from = first_bottom(context.profile);
    const Minutes to = context.profile.points[final_ascent_start(context.profile)].time;
    for (int i = 0; i < sharing_moments; ++i) {
        const Minutes moment = from + (to - from) * ((i + 0.5) / sharing_moments);
        setup.load_before.push_back(context.dive.load_at(moment).value());
        setup.load_up.push_back(load_up_from(context, depth_at(context.profile, moment)).value());
    }
    const Result<double> chance = chance_shared_ascent(setup);
    return chance ? std::optional(*chance) : std::nullopt;
}

}  // namespace

LogBreather breather(const BreathingSpread& breathing, BarMinutes load) {
    const double ln_load = load.value() > 0.0 ? std::log(load.value()) : there_already;
    return {std::max(there_already, ln_load), breathing.own_sigma};
}

TimeBand guest_band(const GasContext& context, const BreathingSpread& breathing, BarMinutes load) {
    const double factor = std::exp(breathing.sigma() * tenth);
    return {time_at_depth(context, load / factor), time_at_depth(context, load),
            time_at_depth(context, load * factor)};
}

GroupOutlook outlook(const GasContext& context, const LogGroup& log) {
    GroupOutlook result;
    if (const Result<double> load = first_load_quantile(log, middle)) {
        result.first_at_reserve = time_at_depth(context, BarMinutes(*load));
    }
    result.completes = chance_all_last(log, context.dive.total().value()).value_or(0.0);
    return result;
}

std::optional<GroupForecast> forecast_group(const GasContext& context, const Session& session,
                                            const Group& group,
                                            const std::vector<GuestGas>& guests, int runs) {
    GroupForecast forecast;
    forecast.group = group.id;
    LogGroup log;
    log.shared_sigma = shared_breathing_sigma;
    std::vector<const GuestGas*> breathing;
    for (const GuestGas& gas : guests) {
        if (gas.group != group.id || !gas.has_cylinder) continue;
        breathing.push_back(&gas);
        log.breathers.push_back(breather(gas.breathing, gas.load_to_reserve));
    }
    const Result<std::vector<double>> first = chances_to_be_first(log);
    if (!first) return std::nullopt;  // nobody has a cylinder, or over 100 guests
    const auto likely =
        static_cast<std::size_t>(std::max_element(first->begin(), first->end()) - first->begin());
    for (std::size_t i = 0; i < breathing.size(); ++i) {
        const GuestGas& gas = *breathing[i];
        forecast.guests.push_back({gas.guest,
                                   guest_band(context, gas.breathing, gas.load_to_turn),
                                   guest_band(context, gas.breathing, gas.load_to_reserve),
                                   (*first)[i]});
    }
    forecast.likely_first = breathing[likely]->guest;
    forecast.first_at_reserve = first_band(context, log);
    forecast.completes = chance_all_last(log, context.dive.total().value()).value_or(0.0);
    forecast.completes_after_loss =
        completes_after_loss(context, session, log, breathing, likely);
    const RunSetup setup{context.dive.total().value(), runs, forecast_seed,
                         loads_per_liter(context, breathing), free_flow};
    if (const Result<RunSummary> summary = run_dives(log, setup)) forecast.runs = *summary;
    // Judged by the error that the closed form expects of so many runs, and where nearly all or none
    // last, by what a single run makes: runs that all go one way would otherwise have no error at all.
    forecast.runs.completes_error =
        std::sqrt(forecast.completes * (1.0 - forecast.completes) / runs) + 1.0 / runs;
    forecast.completes_after_free_flow = forecast.runs.completes_after_free_flow;
    forecast.sharing_lasts = sharing_lasts(context, session, group);
    return forecast;
}

}  // namespace leadline
