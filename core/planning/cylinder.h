// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/planning/ids.h"

namespace leadline {

enum class CylinderMetal { steel, aluminium };

/// A kind of cylinder as the trade sells it. Makers differ by a few percent: the values stamped on
/// the cylinder prevail.
/// @source  sizes common practice, no source; 11.1 L aluminium at 207 bar from memory of the
///          common manufacturer data sheet; masses of the usual models from memory, within 1.5 kg
struct CylinderType {
    CylinderTypeId id;
    CylinderMetal metal{};
    Liters water_capacity{};
    Bars working_pressure{};  ///< gauge, at 15 C
    Kilograms empty_mass = Kilograms(0.0);  ///< with valve, without air; 0: not known
};

/// The kinds known, smallest first.
std::span<const CylinderType> cylinder_types();
/// The kind with this id, or nullptr.
const CylinderType* find_cylinder_type(const CylinderTypeId& id);

/// A filled cylinder as handed out.
struct Cylinder {
    CylinderTypeId type;
    Bars fill_pressure{0.0};           ///< gauge reading, 0 to the working pressure
    Kelvins fill_temperature{288.15};  ///< of the gas when the gauge was read
    friend bool operator==(const Cylinder& a, const Cylinder& b) {
        return a.type == b.type && a.fill_pressure.value() == b.fill_pressure.value() &&
               a.fill_temperature.value() == b.fill_temperature.value();
    }
};

/// Amount of air in the cylinder, from the gauge reading and the gas temperature then. A gauge
/// reads above the pressure around it, so the surface pressure is added.
///
/// @param surface_pressure  absolute
/// @returns moles of air as a real gas; ErrorCode::out_of_range or overfilled_cylinder or
///          unknown_reference otherwise (the working pressure is for 15 C: a reading above it at
///          any temperature is refused, which is the safe side)
Result<Moles> cylinder_content(const Cylinder& cylinder, Pascals surface_pressure);

/// Gauge reading of a cylinder holding an amount of air at a gas temperature; never below zero.
Bars gauge_pressure(const CylinderType& type, Moles content, Kelvins gas_temperature,
                    Pascals surface_pressure);

/// Volume of water a cylinder pushes aside: its water capacity, its metal (steel 7850, aluminium
/// 2700 kg/m3) and a brass valve of 0.8 kg (8400 kg/m3). Boots, nets and handles are left out.
/// @returns volume; out_of_range ("cylinder empty mass") where the mass is not known: 1 to 60 kg
/// @source  Archimedes; densities: handbook values, valve: common practice, both from memory
/// @tests   tests/reference/cylinder_buoyancy.csv
Result<Liters> cylinder_outer_volume(const CylinderType& type);

/// Lift of a cylinder with an amount of air, in kilograms; negative: it sinks.
///
/// @param content  0 to 1000 mol
/// @param water    900 to 1100 kg/m3
/// @returns lift; out_of_range naming the input otherwise
/// @source  Archimedes; the air weighs mass_of_air()
/// @tests   tests/reference/cylinder_buoyancy.csv
Result<Kilograms> cylinder_lift(const CylinderType& type, Moles content,
                                KilogramsPerCubicMeter water);

/// Amount of air at a gauge reading.
Moles content_at_gauge(const CylinderType& type, Bars gauge, Kelvins gas_temperature,
                       Pascals surface_pressure);

}  // namespace leadline
