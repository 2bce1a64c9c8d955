// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planning/breathing_curve.h"
#include "core/planning/plan.h"

namespace leadline {

/// What all air calculations of a session share. Refers to its parts: they must outlive it.
struct GasContext {
    const WaterColumn& water;
    const Profile& profile;
    const Conditions& conditions;
    BreathingCurve dive;        ///< the planned dive
    BreathingCurve stay;        ///< staying at depth, see BreathingCurve::held_at_depth()
    Bars reserve{};
    MetersPerMinute ascent_rate{};  ///< the fastest allowed, for bringing somebody up
};

/// Moles breathed for a load. The gas is counted at ambient pressure and water temperature: warmed
/// in the lungs it would be fewer moles, so this errs to the high side. Compressibility is taken at
/// the deepest point, where it is least: high side again.
Moles moles_breathed(const GasContext& context, LitersPerMinute rmv, BarMinutes load);
/// The load that uses up an amount: the inverse of moles_breathed().
BarMinutes load_for(const GasContext& context, LitersPerMinute rmv, Moles amount);

/// Air for two, both stressed, from the deepest planned point to the surface: one minute there to
/// sort things out, then up at the allowed rate.
///
/// @source  method: sharing ascent on stressed RMV, common practice, no source; pressure averaged
///          over the ascent as in the U.S. Navy Diving Manual, vol. 2, p. 8-3
Moles minimum_gas(const GasContext& context);

/// Pressure that must stay in a cylinder for minimum_gas(), with the 10 bar that a first stage needs
/// to deliver.
/// @source  first-stage margin: 135 psig in the U.S. Navy Diving Manual, vol. 2, p. 8-3, rounded up
Bars minimum_gas_pressure(const GasContext& context, const CylinderType& type);

/// The spread of a guest's RMV under the day's conditions; its median is what the plan reckons with.
BreathingSpread guest_breathing(const Guest& guest, const Conditions& conditions);

/// A guest's air as loads on the breathing curve.
struct GuestLoads {
    BreathingSpread breathing;
    const CylinderType* type = nullptr;  ///< nullptr: no cylinder issued; the rest is then empty
    Moles content{};
    BarMinutes to_reserve{};             ///< at the median RMV; 0 or less: at or below it from the start
};
GuestLoads guest_loads(const GasContext& context, const Guest& guest);

/// Time until a load is breathed, were the group to stay at the depth from which the final ascent
/// starts. None: later than 240 min.
std::optional<Minutes> time_at_depth(const GasContext& context, BarMinutes load);

/// Load of going up with two on one cylinder: a minute to sort things out, then the allowed rate.
BarMinutes load_up_from(const GasContext& context, Depth depth);

/// Amount that stays behind because a first stage needs 10 bar to deliver; see
/// minimum_gas_pressure().
Moles first_stage_content(const GasContext& context, const CylinderType& type);

GuestGas plan_guest_gas(const GasContext& context, const Guest& guest);
GroupGas plan_group_gas(const GasContext& context, const Session& session, const Group& group,
                        const std::vector<GuestGas>& guests);

}  // namespace leadline
