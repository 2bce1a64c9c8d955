// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/plan.h"

#include <algorithm>
#include <iterator>
#include <string>

#include "core/body/lungs.h"
#include "core/physics/atmosphere.h"
#include "core/physics/range.h"
#include "core/planning/checks.h"
#include "core/planning/forecast_plan.h"
#include "core/planning/gas_plan.h"
#include "core/planning/levers.h"
#include "core/planning/overrule_key.h"

namespace leadline {
namespace {

// Used only where the chosen rule sets say nothing; each is the house value of resources/rules.
constexpr double default_reserve_bar = 50.0;        // common practice, no source
constexpr double default_ascent_rate = 9.0;         // U.S. Navy Diving Manual: 30 ft/min
constexpr double default_clearing_step = 0.5;       // common practice, no source
constexpr double default_no_fly_hours = 24.0;       // common practice, no source
constexpr double longest_ladder_step = 1.0;         // see clearing_ladder()
constexpr MetersPerMinute slowest_ladder_rate{1.0};
constexpr MetersPerMinute fastest_ladder_rate{30.0};

Result<WaterColumn> water_column(const Session& session) {
    Result<Pascals> surface = session.conditions.barometer
                                  ? Result<Pascals>(*session.conditions.barometer)
                                  : standard_atmosphere_pressure(session.site.altitude);
    if (!surface) return surface.error();
    const Result<MetersPerSecondSquared> gravity =
        normal_gravity(session.site.latitude, session.site.altitude);
    if (!gravity) return gravity.error();
    return WaterColumn::make(*surface, *gravity, session.site.salinity,
                             session.conditions.water_temperature);
}

double value_or(const std::optional<Limit>& limit, double otherwise) {
    return limit ? limit->value : otherwise;
}

Limits limits_of(const Session& session, const RuleBook& rules) {
    Limits limits;
    const auto look_up = [&](RuleKind kind) {
        return strictest_for_age(rules, session.rule_sets, kind, std::nullopt);
    };
    limits.max_depth = look_up(RuleKind::max_depth_m);
    limits.max_ascent_rate = look_up(RuleKind::max_ascent_rate_m_per_min);
    limits.reserve_rule = look_up(RuleKind::reserve_pressure_bar);
    limits.no_fly_rule = look_up(RuleKind::no_fly_hours);
    limits.reserve = Bars(value_or(limits.reserve_rule, default_reserve_bar));
    limits.no_fly = Hours(value_or(limits.no_fly_rule, default_no_fly_hours));
    return limits;
}

Result<Environment> environment_of(const Session& session, const WaterColumn& water,
                                   const RuleBook& rules) {
    Environment result;
    result.surface_pressure = water.surface_pressure();
    result.from_barometer = session.conditions.barometer.has_value();
    result.gravity = water.gravity();
    result.density = water.surface_density();
    result.deepest = deepest(session.profile);
    result.bottom_pressure = water.absolute_pressure(result.deepest);
    result.breath_expansion_from_deepest = held_breath_expansion(water, result.deepest);
    result.breath_danger_ascent = held_breath_danger_ascent(water, result.deepest);
    Result<std::vector<BalloonAt>> balloons = balloon_at_depths(water, result.deepest);
    if (!balloons) return balloons.error();
    result.balloons = *balloons;
    result.fastest_descent = fastest_descent(session.profile);
    result.fastest_ascent = fastest_ascent(session.profile);
    // A rule with a longer step has its own finding; it must not leave the session without a plan.
    const double step =
        std::min(value_or(strictest(rules, session.rule_sets, RuleKind::clearing_step_m),
                          default_clearing_step),
                 longest_ladder_step);
    // The ladder needs a speed: a plan that drops faster than any diver still gets one, beside the
    // finding that says so.
    const MetersPerMinute rate =
        std::clamp(result.fastest_descent, slowest_ladder_rate, fastest_ladder_rate);
    Result<ClearingLadder> ladder = clearing_ladder(water, Meters(step), result.deepest, rate);
    if (!ladder) return ladder.error();
    result.ladder = *ladder;
    return result;
}

/// The longer of what guidance asks for after such dives and what the chosen rules ask for anyhow.
StaffExposure exposure_of(const Session& session, const StaffMember& member,
                          const WaterColumn& water, const Limits& limits) {
    StaffExposure exposure = plan_staff_exposure(session, member, water);
    const bool has_dived = exposure.no_fly.value() > 0.0;
    if (has_dived && exposure.no_fly < limits.no_fly) {
        exposure.no_fly = limits.no_fly;
        exposure.no_fly_source = limits.no_fly_rule ? limits.no_fly_rule->source : std::string();
    }
    return exposure;
}

std::vector<CylinderLift> cylinder_lifts(const Environment& place) {
    constexpr Kelvins stamped{288.15};  // the temperature of a working pressure
    std::vector<CylinderLift> lifts;
    for (const CylinderType& type : cylinder_types()) {
        const auto lift = [&](Bars gauge) {
            const Moles content =
                content_at_gauge(type, gauge, stamped, place.surface_pressure);
            return cylinder_lift(type, content, place.density);
        };
        const Result<Kilograms> empty = lift(Bars(0.0));
        const Result<Kilograms> full = lift(type.working_pressure);
        if (empty && full) lifts.push_back({type.id, *empty, *full});
    }
    return lifts;
}

/// What the planned dive does to a rested body, whoever leads it: a guest's.
StaffExposure rested_exposure(const Session& session, const WaterColumn& water) {
    Session alone;
    alone.date = session.date;
    alone.dive_time = session.dive_time;
    alone.site = session.site;
    alone.conditions = session.conditions;
    alone.profile = session.profile;
    StaffMember body;
    body.id = StaffId("rested");
    alone.staff.push_back(body);
    alone.groups.push_back(Group{GroupId("rested"), {}, body.id, {}});
    Guest guest;
    guest.id = GuestId("rested");
    guest.group = GroupId("rested");
    alone.guests.push_back(guest);
    return plan_staff_exposure(alone, body, water);
}

/// A dive after which nobody could go straight up is none for guests, whether staff is named or not.
void check_rested(const StaffExposure& rested, std::vector<Finding>& findings) {
    if (!rested.needs_stop) return;
    Finding finding;
    finding.code = FindingCode::staff_needs_stop;
    finding.severity = Severity::stop;
    finding.values = {rested.planned_time, rested.no_stop_left.value_or(longest_profile)};
    findings.push_back(finding);
}

/// A chosen set that is not in the book would silently lift all its limits.
Result<Done> check_rule_sets(const Session& session, const RuleBook& rules) {
    for (std::size_t i = 0; i < session.rule_sets.size(); ++i) {
        const RuleSetId& wanted = session.rule_sets[i];
        if (std::none_of(rules.sets.begin(), rules.sets.end(),
                         [&](const RuleSet& set) { return set.id == wanted; })) {
            return Error{ErrorCode::unknown_reference, "/rule_sets/" + std::to_string(i),
                         wanted.text, ""};
        }
    }
    return Done{};
}

void apply_overrules(const Session& session, std::vector<Finding>& findings) {
    for (Finding& finding : findings) {
        for (const Overrule& overrule : session.overrules) {
            if (covers(overrule, finding)) finding.overruled_because = overrule.reason;
        }
    }
}

void append(std::vector<Finding>& all, std::vector<Finding> more) {
    all.insert(all.end(), more.begin(), more.end());
}

}  // namespace

std::optional<Limit> broken_limit(const RuleBook& rules, const std::vector<RuleSetId>& chosen,
                                  RuleKind kind, std::optional<int> age,
                                  const std::function<bool(const Rule&)>& breaks) {
    for (const Severity severity : {Severity::stop, Severity::caution, Severity::note}) {
        const auto applies = [&](const Rule& rule) {
            const bool banded = rule.from_age || rule.to_age;
            const bool in_band = !banded || (age && *age >= rule.from_age.value_or(0) &&
                                             *age <= rule.to_age.value_or(200));
            return rule.severity == severity && in_band && breaks(rule);
        };
        if (auto limit = strictest(rules, chosen, kind, applies)) return limit;
    }
    return std::nullopt;
}

std::optional<Limit> broken_limit(const CheckContext& context, RuleKind kind,
                                  std::optional<int> age,
                                  const std::function<bool(const Rule&)>& breaks) {
    return broken_limit(context.rules, context.session.rule_sets, kind, age, breaks);
}

Finding finding_of(FindingCode code, Subject subject, const Limit& limit,
                   std::vector<FindingValue> values) {
    Finding finding;
    finding.code = code;
    finding.severity = limit.severity;
    finding.subject = std::move(subject);
    finding.values = std::move(values);
    finding.rule_set = limit.rule_set;
    finding.source = limit.source;
    return finding;
}

Result<Plan> plan(const Session& session, const RuleBook& rules, int runs) {
    if (const auto error = outside_range("runs", runs, 1, 1'000'000, "")) return *error;
    if (const Result<Done> checked = check(session); !checked) return checked.error();
    if (const Result<Done> known = check_rule_sets(session, rules); !known) return known.error();
    const Result<WaterColumn> water = water_column(session);
    if (!water) return water.error();

    Plan result;
    result.limits = limits_of(session, rules);
    Result<Environment> environment = environment_of(session, *water, rules);
    if (!environment) return environment.error();
    result.environment = *environment;
    Result<EarLungCharts> charts =
        plan_ears_and_lungs(*water, session.profile, result.environment.ladder.step);
    if (!charts) return charts.error();
    result.ears_and_lungs = std::move(*charts);
    result.cylinders = cylinder_lifts(result.environment);

    // A guest waits for as long as the rules ask for, and longer after a dive that asks for more.
    const StaffExposure rested = rested_exposure(session, *water);
    result.limits.no_fly = std::max(result.limits.no_fly, rested.no_fly);

    const GasContext gas{*water,
                         session.profile,
                         session.conditions,
                         BreathingCurve::along(session.profile, *water),
                         BreathingCurve::held_at_depth(session.profile, *water),
                         result.limits.reserve,
                         MetersPerMinute(value_or(result.limits.max_ascent_rate,
                                                  default_ascent_rate))};
    for (const Guest& guest : session.guests) {
        result.guests.push_back(plan_guest_gas(gas, guest));
        result.warmth.push_back(plan_guest_warmth(session, guest, *water));
        result.lead.push_back(plan_guest_lead(session, guest, *water, result.limits.reserve));
    }
    for (const Group& group : session.groups) {
        result.groups.push_back(plan_group_gas(gas, session, group, result.guests));
        if (auto forecast = forecast_group(gas, session, group, result.guests, runs)) {
            std::vector<Lever> levers = find_levers(session, gas, result.guests, *forecast);
            std::move(levers.begin(), levers.end(), std::back_inserter(result.levers));
            result.forecasts.push_back(std::move(*forecast));
        }
    }

    for (const StaffMember& member : session.staff) {
        result.exposures.push_back(exposure_of(session, member, *water, result.limits));
    }
    const CheckContext context{session, rules, result.environment, result.limits};
    append(result.findings, check_place(context));
    append(result.findings, check_people(context));
    append(result.findings, check_gas(context, result.guests, result.groups));
    append(result.findings, check_forecast(context, result.forecasts));
    append(result.findings, check_body(context, result.warmth, result.lead));
    append(result.findings, check_staff(context, result.exposures));
    check_rested(rested, result.findings);
    apply_overrules(session, result.findings);
    std::stable_sort(result.findings.begin(), result.findings.end(),
                     [](const Finding& a, const Finding& b) {
                         if (a.overruled_because.has_value() != b.overruled_because.has_value()) {
                             return b.overruled_because.has_value();
                         }
                         return a.severity < b.severity;
                     });
    result.readiness = readiness(result.findings);
    return result;
}

const GuestGas* find_gas(const Plan& plan, const GuestId& id) {
    const auto found = std::find_if(plan.guests.begin(), plan.guests.end(),
                                    [&](const GuestGas& gas) { return gas.guest == id; });
    return found == plan.guests.end() ? nullptr : &*found;
}

const GroupGas* find_gas(const Plan& plan, const GroupId& id) {
    const auto found = std::find_if(plan.groups.begin(), plan.groups.end(),
                                    [&](const GroupGas& gas) { return gas.group == id; });
    return found == plan.groups.end() ? nullptr : &*found;
}

}  // namespace leadline
