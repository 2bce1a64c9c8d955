// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/water.h"
#include "core/planning/ids.h"
#include "core/planning/session.h"

namespace leadline {

/// What is missing for an estimate of lead.
enum class LeadGap { none, body_mass, body_height, suit, cylinder, outside_range };

/// Most lead that a guest carries; a range does not go above it. As Kit::lead.
inline constexpr Kilograms most_lead{25.0};

/// Lift assumed for a BCD by its size label: XS and anything smaller or unreadable 7, S 10, M 13,
/// L 16, XL and bigger 19 kg. From memory of jackets as sold (XS 7 to 9, S 10 to 12, M 13 to 16, L
/// 16 to 19, XL 19 to 22 kg): the lower ends, as the safe side is to lift too little. An empty
/// label: none.
std::optional<Kilograms> bcd_lift_of(const std::string& label);

/// Sums of lead pieces from 0 to most_lead, each size as often as wanted, in order; an empty list
/// of pieces: whole kilograms. To the gram.
/// @param pieces  0.1 to 10 kg each
/// @returns the sums; out_of_range ("lead piece") otherwise
Result<std::vector<Kilograms>> sums_of_pieces(const std::vector<Kilograms>& pieces);

/// Lead for a guest by Archimedes, and what it does over the dive. Buoyancies in kilograms of lift
/// in this water (positive: floats), BCD empty, lungs half full, with `carried` lead. Checked at
/// the surface before the dive: common practice.
struct GuestLead {
    GuestId guest;
    LeadGap gap = LeadGap::none;  ///< the rest holds only for none
    Kilograms low{};              ///< lean, old suit; in whole pieces from stock
    Kilograms middle{};
    Kilograms high{};             ///< fat, new suit; in whole pieces from stock
    Kilograms carried{};          ///< the kit's lead where given, else `middle`
    Kilograms at_surface_start{};
    Kilograms at_surface_reserve{};  ///< with the cylinder at the reserve
    Kilograms at_depth_start{};      ///< at the deepest planned point, suit squeezed
    Kilograms at_depth_reserve{};
    Kilograms bcd_lift{};            ///< see bcd_lift_of(); 0: no BCD entered
    bool bcd_cannot_hold_up = false;   ///< in the low case heavier at depth than the BCD can lift
    bool cannot_stay_down = false;     ///< floats at 3 m with the reserve even in the low case
};

/// The guest's lead, for being neutral at the surface at the END of the dive: cylinder at the
/// reserve, lungs half full, BCD empty. Too heavy is the greater danger, and too light a nuisance
/// that the check at the surface finds; so no lead is added for comfort.
///
///     lead (1 - rho/11340) = lift of body + suit + cylinder + other kit, in water of density rho
///
/// Body: tissue_density() of fat_fraction(), half_full_lungs_liters() (age as in warmth_plan.h).
/// Suit: suit_bulk(), foam of 200 kg/m3; at the low end foam of 250 kg/m3 a fifth thinner (old),
/// at the high end 150. Other kit (regulator, BCD, fins, mask, boots): -1.0 kg, from -1.5 to -0.5;
/// common practice, no source. Each spread is taken on its own, and their squares are added (JCGM
/// 100:2008, 5.1.2, for independent inputs): `low` is `middle` less all that makes lighter
/// demands, `high` the other way. Then whole pieces: `low` down, `middle` to the nearest, `high`
/// up; never under none or above most_lead (where the pieces end before `high`, the most they
/// give).
///
/// @param session  passes check(session); `guest` is one of its guests, `water` its column
/// @param reserve  gauge pressure, at water temperature; more than the fill: the fill
/// @returns the lead, or its gap: outside_range where a value leaves its range, `middle` would be
///          above most_lead, or a piece of lead is none (0.1 to 10 kg)
/// @source  Archimedes; lead 11 340 kg/m3 (handbook)
/// @tests   tests/reference/lead.csv
GuestLead plan_guest_lead(const Session& session, const Guest& guest, const WaterColumn& water,
                          Bars reserve);

}  // namespace leadline
