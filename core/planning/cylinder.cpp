// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/cylinder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "core/physics/air.h"
#include "core/physics/number_text.h"
#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double steel_density = 7850.0;      // kg/m3
constexpr double aluminium_density = 2700.0;  // kg/m3
constexpr double brass_density = 8400.0;      // kg/m3
constexpr double valve_mass = 0.8;            // kg

const std::array<CylinderType, 9>& table() {
    static const std::array<CylinderType, 9> types{{
        {CylinderTypeId("steel-6"), CylinderMetal::steel, Liters(6.0), Bars(232.0),
         Kilograms(8.6)},
        {CylinderTypeId("steel-8"), CylinderMetal::steel, Liters(8.0), Bars(232.0),
         Kilograms(10.8)},
        {CylinderTypeId("aluminium-9"), CylinderMetal::aluminium, Liters(9.0), Bars(207.0),
         Kilograms(12.8)},
        {CylinderTypeId("steel-10"), CylinderMetal::steel, Liters(10.0), Bars(232.0),
         Kilograms(12.8)},
        {CylinderTypeId("aluminium-11"), CylinderMetal::aluminium, Liters(11.1), Bars(207.0),
         Kilograms(15.0)},
        {CylinderTypeId("steel-12"), CylinderMetal::steel, Liters(12.0), Bars(232.0),
         Kilograms(15.0)},
        {CylinderTypeId("steel-12-300"), CylinderMetal::steel, Liters(12.0), Bars(300.0),
         Kilograms(19.3)},
        {CylinderTypeId("steel-15"), CylinderMetal::steel, Liters(15.0), Bars(232.0),
         Kilograms(18.6)},
        {CylinderTypeId("steel-18"), CylinderMetal::steel, Liters(18.0), Bars(232.0),
         Kilograms(22.3)},
    }};
    return types;
}

}  // namespace

std::span<const CylinderType> cylinder_types() { return table(); }

const CylinderType* find_cylinder_type(const CylinderTypeId& id) {
    const auto& types = table();
    const auto found = std::find_if(types.begin(), types.end(),
                                    [&](const CylinderType& type) { return type.id == id; });
    return found == types.end() ? nullptr : &*found;
}

Result<Moles> cylinder_content(const Cylinder& cylinder, Pascals surface_pressure) {
    const CylinderType* type = find_cylinder_type(cylinder.type);
    if (type == nullptr) {
        return Error{ErrorCode::unknown_reference, "cylinder/type", cylinder.type.text, ""};
    }
    const double fill = cylinder.fill_pressure.value();
    if (!(fill >= 0.0)) {
        return Error{ErrorCode::out_of_range, "cylinder/fill_pressure_bar", number_text(fill),
                     "0 to " + number_text(type->working_pressure.value())};
    }
    if (fill > type->working_pressure.value()) {
        return Error{ErrorCode::overfilled_cylinder, "cylinder/fill_pressure_bar", number_text(fill),
                     number_text(type->working_pressure.value())};
    }
    return air_content(type->water_capacity, cylinder.fill_pressure + surface_pressure,
                       cylinder.fill_temperature);
}

Bars gauge_pressure(const CylinderType& type, Moles content, Kelvins gas_temperature,
                    Pascals surface_pressure) {
    // More than the air equation can tell is no cylinder at all; read as its highest density, so that
    // an absurd demand (a minimum gas) stays far above any reading instead of falling to zero.
    constexpr double highest_density = 40000.0;  // mol/m3, see air_vessel_pressure()
    const double most = highest_density * CubicMeters(type.water_capacity).value();
    const Moles held(std::clamp(content.value(), 0.0, most * (1.0 - 1e-9)));
    const Result<Pascals> absolute =
        air_vessel_pressure(type.water_capacity, held, gas_temperature);
    if (!absolute) return Bars(0.0);  // a temperature that no session check lets in
    const Bars gauge = *absolute - surface_pressure;
    return Bars(std::max(0.0, gauge.value()));
}

Moles content_at_gauge(const CylinderType& type, Bars gauge, Kelvins gas_temperature,
                       Pascals surface_pressure) {
    return air_content(type.water_capacity, gauge + surface_pressure, gas_temperature)
        .value_or(Moles(0.0));
}

Result<Liters> cylinder_outer_volume(const CylinderType& type) {
    const double mass = type.empty_mass.value();
    if (auto error = outside_range("cylinder empty mass", mass, 1.0, 60.0, "kg")) return *error;
    const double density =
        type.metal == CylinderMetal::steel ? steel_density : aluminium_density;
    const double metal = (mass - valve_mass) / density + valve_mass / brass_density;  // m3
    return type.water_capacity + Liters(metal * 1e3);
}

Result<Kilograms> cylinder_lift(const CylinderType& type, Moles content,
                                KilogramsPerCubicMeter water) {
    if (auto error = outside_range("air content", content.value(), 0.0, 1000.0, "mol")) {
        return *error;
    }
    if (auto error = outside_range("water density", water.value(), 900.0, 1100.0, "kg/m3")) {
        return *error;
    }
    const Result<Liters> volume = cylinder_outer_volume(type);
    if (!volume) return volume.error();
    return Kilograms(volume->value() / 1e3 * water.value()) - type.empty_mass -
           mass_of_air(content);
}

}  // namespace leadline
