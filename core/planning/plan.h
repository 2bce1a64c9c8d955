// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/body/ears.h"
#include "core/physics/water.h"
#include "core/planning/finding.h"
#include "core/planning/rules.h"
#include "core/planning/session.h"

namespace leadline {

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
    LitersPerMinute rmv{};
    RmvSource rmv_source = RmvSource::breathing_class;
    bool has_cylinder = false;
    Bars start_pressure{};        ///< gauge, with the gas at water temperature
    Moles content{};              ///< at the start
    Moles used{};                 ///< over the whole planned dive
    Moles left{};                 ///< content - used; negative: the air does not last
    Liters content_volume{};      ///< free air, see free_air_volume()
    Liters used_volume{};
    Bars end_pressure{};          ///< gauge at the end of the planned dive; 0 when it ran out
    Bars turn_pressure{};         ///< half of what the tour may use is gone: go back
    Bars leave_pressure{};        ///< start the ascent now to surface with the reserve
    Bars minimum_gas{};           ///< enough in this cylinder for two, stressed, from the deepest point
    Bars signal_pressure{};       ///< what the card says: reserve or minimum gas, the greater, rounded
                                  ///< up to 10 bar
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
    /// What must stay in the instructor's cylinder to bring one guest up; none: no cylinder known.
    std::optional<Bars> instructor_minimum_gas;
    /// What is planned to be left in it when the final ascent starts.
    std::optional<Bars> instructor_at_ascent;
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
    std::vector<Finding> findings; ///< stops first, then cautions, then notes
    Readiness readiness;
};

/// The plan for a session. Pure: the same session and rules always give the same plan.
/// @returns the plan, or the error of check(session): a session that cannot be calculated has no plan;
///          unknown_reference for a chosen rule set that the book does not hold
Result<Plan> plan(const Session& session, const RuleBook& rules);

const GuestGas* find_gas(const Plan& plan, const GuestId& id);
const GroupGas* find_gas(const Plan& plan, const GroupId& id);

}  // namespace leadline
