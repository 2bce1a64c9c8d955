// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/body/balloon.h"
#include "core/body/breathing_spread.h"
#include "core/body/ears.h"
#include "core/physics/water.h"
#include "core/planning/ear_lung_plan.h"
#include "core/planning/exposure.h"
#include "core/planning/finding.h"
#include "core/planning/forecast.h"
#include "core/planning/lead.h"
#include "core/planning/rules.h"
#include "core/planning/session.h"
#include "core/planning/warmth_plan.h"

namespace leadline {

/// By how much a pressure gauge may read wrong: 2.5 % of a 360 bar scale. A reading too high is the
/// dangerous side.
/// @source  EN 837-1:1996, accuracy class 2.5 (from memory); that diving gauges are of this class and
///          end at 360 bar: common practice, no source. The maker's data prevail
inline constexpr Bars gauge_error{9.0};

/// Where a guest's planning RMV comes from.
enum class RmvSource { breathing_class, measured };

/// Pressure in a cylinder at a time of the dive.
struct PressurePoint {
    Minutes time{};
    Depth depth{};
    Bars gauge{};
};

/// One guest's air. Empty optionals: no cylinder issued.
struct GuestGas {
    GuestId guest;
    GroupId group;
    LitersPerMinute rmv{};        ///< what the plan reckons with: the median of `breathing`
    RmvSource rmv_source = RmvSource::breathing_class;
    BreathingSpread breathing;
    bool has_cylinder = false;
    Bars start_pressure{};        ///< gauge, with the gas at water temperature
    Bars lost_by_cooling{};       ///< fill reading less start_pressure; negative: the water is warmer
    Moles content{};              ///< at the start
    Moles used{};                 ///< over the whole planned dive
    Moles left{};                 ///< content - used; negative: the air does not last
    Liters content_volume{};      ///< free air, see free_air_volume()
    Liters used_volume{};
    Bars end_pressure{};          ///< gauge at the end of the planned dive; 0 when it ran out
    // Readings to act by; where the minimum gas decides, they allow for gauge_error.
    Bars turn_pressure{};         ///< half of what the tour may use is gone: go back
    Bars leave_pressure{};        ///< start the ascent now to surface with the reserve
    Bars minimum_gas{};           ///< enough in this cylinder for two, stressed, from the deepest point
    /// What the card says: the reserve, or the minimum gas and what a gauge may read too high, the
    /// greater, rounded up to 10 bar.
    Bars signal_pressure{};
    BarMinutes load_to_reserve{}; ///< on the breathing curve, at `rmv`; 0 or less: there already
    BarMinutes load_to_turn{};
    /// Time at which the reserve is reached, were the group to stay at the depth from which the
    /// final ascent starts. No value: later than 240 min.
    std::optional<Minutes> minutes_to_reserve;
    std::vector<PressurePoint> curve;  ///< every half minute and at each corner
};

/// One group's dive.
struct GroupGas {
    GroupId group;
    std::optional<GuestId> limiting_guest;  ///< first to reach the reserve; none: no cylinders
    std::optional<Minutes> reserve_reached; ///< by the limiting guest
    Minutes ends_at{};                      ///< planned end, or earlier: limiting guest must go up
    bool cut_short = false;                 ///< ends_at lies before the planned end
    /// Reading below which the instructor's cylinder may not bring one guest up, gauge_error allowed
    /// for; none: no cylinder known.
    std::optional<Bars> instructor_minimum_gas;
    /// What is planned to be left in it when the final ascent starts.
    std::optional<Bars> instructor_at_ascent;
};

/// Runs of the dive for each group unless another number is asked for, and where their random
/// numbers start.
inline constexpr int forecast_runs = 20'000;
inline constexpr std::uint64_t forecast_seed = 20'260'704;

/// One guest in a group's forecast.
struct GuestForecast {
    GuestId guest;
    TimeBand turn;           ///< at the turn pressure, were the group to stay at depth
    TimeBand reserve;        ///< at the reserve
    double ends_dive = 0.0;  ///< chance to be the first of the group at the reserve
};

/// How a group's dive is likely to go. Times and chances are in closed form; `runs` is their witness.
struct GroupForecast {
    GroupId group;
    std::vector<GuestForecast> guests;  ///< those with a cylinder, roster order
    GuestId likely_first;               ///< with the greatest chance to end the dive
    TimeBand first_at_reserve;
    double completes = 0.0;             ///< chance that all last the planned dive above the reserve
    /// The same when the likely first starts with 20 bar less.
    double completes_after_loss = 0.0;
    /// The same when a regulator of one of them, any, blows off air for 10 to 60 s. From the runs.
    double completes_after_free_flow = 0.0;
    /// Chance that guest and instructor reach the surface on the instructor's cylinder when a guest's
    /// air fails at any moment at depth. None: the instructor has no cylinder.
    std::optional<double> sharing_lasts;
    RunSummary runs;
};

enum class LeverKind {
    shallower,        ///< the whole dive up to 1 m less deep
    shorter_skills,   ///< up to 3 min less for the skills
    bigger_cylinder,  ///< for the guest who is likely to be first
    warmer_suit,      ///< for that guest, when the suit is thin for the water
    swap_guests,      ///< that guest with one of another group
    one_guest_fewer,  ///< that guest leaves the group
};

/// One change to the plan, and what it does for a group's air.
struct Lever {
    LeverKind kind{};
    GroupId group;
    GuestId guest;                   ///< whom it concerns; empty: the whole dive
    GuestId other_guest;             ///< swap: who comes in return
    Depth deepest;                   ///< shallower: the new deepest point
    Minutes minutes_off{};           ///< shorter_skills: by how much
    CylinderTypeId cylinder;         ///< bigger_cylinder: the new kind
    std::string suit;                ///< warmer_suit: the new label
    bool stock_known = false;        ///< cylinder, suit: one is free by the stock on record
    /// Gain in the median time at which the group's first is at the reserve, staying at depth; none:
    /// that time is later than 240 min already.
    std::optional<Minutes> gain;
    bool gain_is_least = false;      ///< the new time is later than 240 min: the gain is at least this
    double gain_completes = 0.0;     ///< in the chance that all last the planned dive
    double completes = 0.0;          ///< that chance afterwards
    double other_group_change = 0.0; ///< swap: change of the other group's chance
};

/// What a kind of cylinder does in this water; negative: it sinks.
struct CylinderLift {
    CylinderTypeId type;
    Kilograms empty{};  ///< at the surface pressure
    Kilograms full{};   ///< at the working pressure and 15 C
};

/// Numbers of the place, shown on the Site tab.
struct Environment {
    Pascals surface_pressure{};
    bool from_barometer = false;
    MetersPerSecondSquared gravity{};
    KilogramsPerCubicMeter density{};
    Depth deepest{};
    Pascals bottom_pressure{};  ///< absolute, at the deepest planned point
    double breath_expansion_from_deepest = 1.0;
    Meters breath_danger_ascent{};
    std::vector<BalloonAt> balloons;  ///< at the surface, 5 m, 10 m and the deepest point
    ClearingLadder ladder;
    MetersPerMinute fastest_descent{};
    MetersPerMinute fastest_ascent{};
};

/// What the chosen rules allow, for display and for the cards.
struct Limits {
    Bars reserve{50.0};
    Hours no_fly{24.0};
    std::optional<Limit> max_depth;
    std::optional<Limit> max_ascent_rate;
    std::optional<Limit> reserve_rule;
    std::optional<Limit> no_fly_rule;
};

/// Everything that follows from a session: numbers and findings.
struct Plan {
    Environment environment;
    Limits limits;
    std::vector<GuestGas> guests;  ///< roster order
    std::vector<GroupGas> groups;  ///< session order
    std::vector<GroupForecast> forecasts;  ///< of the groups with a cylinder, session order
    std::vector<Lever> levers;     ///< by group in session order, best first
    std::vector<GuestWarmth> warmth;       ///< roster order
    std::vector<GuestLead> lead;           ///< roster order
    std::vector<StaffExposure> exposures;  ///< in the order of the session's staff
    EarLungCharts ears_and_lungs;
    std::vector<CylinderLift> cylinders;   ///< every kind known, smallest first
    std::vector<Finding> findings; ///< stops first, then cautions, then notes
    Readiness readiness;
};

/// The plan for a session. Pure: the same session and rules always give the same plan.
/// @param runs  of each group's forecast, 1 to 1 000 000
/// @returns the plan, or the error of check(session): a session that cannot be calculated has no plan;
///          unknown_reference for a chosen rule set that the book does not hold
Result<Plan> plan(const Session& session, const RuleBook& rules, int runs = forecast_runs);

const GuestGas* find_gas(const Plan& plan, const GuestId& id);
const GroupGas* find_gas(const Plan& plan, const GroupId& id);

}  // namespace leadline
