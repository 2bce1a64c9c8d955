// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The quantities of the project. Each carries its unit in its type, so that a depth in feet or a
// pressure in psi cannot slip into a formula in metres or pascals. All of them convert to one
// another within a dimension; `.value()` gives the number in the unit named by the type.
//
// Temperatures are absolute (Kelvins); a temperature difference is a plain double in kelvin where
// one is needed, named `..._kelvin`, because the library converts degrees Celsius with an offset.

#ifndef DISABLE_PREDEFINED_UNITS
#define DISABLE_PREDEFINED_UNITS
#endif
#define ENABLE_PREDEFINED_LENGTH_UNITS
#define ENABLE_PREDEFINED_MASS_UNITS
#define ENABLE_PREDEFINED_TIME_UNITS
#define ENABLE_PREDEFINED_ANGLE_UNITS
#define ENABLE_PREDEFINED_TEMPERATURE_UNITS
#define ENABLE_PREDEFINED_SUBSTANCE_UNITS
#define ENABLE_PREDEFINED_VELOCITY_UNITS
#define ENABLE_PREDEFINED_ACCELERATION_UNITS
#define ENABLE_PREDEFINED_FORCE_UNITS
#define ENABLE_PREDEFINED_PRESSURE_UNITS
#define ENABLE_PREDEFINED_AREA_UNITS
#define ENABLE_PREDEFINED_VOLUME_UNITS
#define ENABLE_PREDEFINED_DENSITY_UNITS
#define UNIT_LIB_DISABLE_IOSTREAM
#include <units.h>

#include <compare>

namespace leadline {

using Meters = units::length::meter_t;
using Feet = units::length::foot_t;
using Kilograms = units::mass::kilogram_t;
using Pounds = units::mass::pound_t;
using Seconds = units::time::second_t;
using Minutes = units::time::minute_t;
using Hours = units::time::hour_t;
using Degrees = units::angle::degree_t;
using Radians = units::angle::radian_t;
using Kelvins = units::temperature::kelvin_t;
using Celsius = units::temperature::celsius_t;
using Moles = units::substance::mole_t;
using Pascals = units::pressure::pascal_t;
using Bars = units::pressure::bar_t;
using Psi = units::pressure::pounds_per_square_inch_t;
using SquareMeters = units::area::square_meter_t;
using Liters = units::volume::liter_t;
using CubicMeters = units::volume::cubic_meter_t;
using KilogramsPerCubicMeter = units::density::kilograms_per_cubic_meter_t;
using MetersPerSecondSquared = units::acceleration::meters_per_second_squared_t;

/// Volume flow, as used for the respiratory minute volume (RMV): litres a minute at ambient
/// pressure.
using LitersPerMinute =
    units::unit_t<units::compound_unit<units::volume::liters, units::inverse<units::time::minutes>>>;

/// Vertical speed of a diver.
using MetersPerMinute =
    units::unit_t<units::compound_unit<units::length::meters, units::inverse<units::time::minutes>>>;

/// Pressure integrated over time; what a breathing diver's gas use is proportional to.
using BarMinutes =
    units::unit_t<units::compound_unit<units::pressure::bars, units::time::minutes>>;

/// Millimetres of mercury (conventional): 133.322387415 Pa (ISO 80000-4:2019 gives the value
/// 133.322 for information), the unit in which the literature states ear and lung pressures.
inline constexpr Pascals millimeters_of_mercury(double value) {
    return Pascals(value * 133.322387415);
}

/// Depth below the water surface. A type of its own, so that it cannot be mistaken for an altitude
/// or a body height. Valid range where it enters a calculation: 0 to 60 m.
class Depth {
public:
    constexpr Depth() = default;
    constexpr explicit Depth(Meters below_surface) : below_surface_(below_surface) {}
    [[nodiscard]] constexpr Meters meters() const { return below_surface_; }
    friend constexpr bool operator==(Depth a, Depth b) {
        return a.meters().value() == b.meters().value();
    }
    friend constexpr std::partial_ordering operator<=>(Depth a, Depth b) {
        return a.meters().value() <=> b.meters().value();
    }
    friend constexpr Meters operator-(Depth a, Depth b) { return a.meters() - b.meters(); }
    friend constexpr Depth operator+(Depth a, Meters b) { return Depth(a.meters() + b); }

private:
    Meters below_surface_{0.0};
};

/// Altitude of the water surface above mean sea level (geometric). Valid: -430 to 5000 m, from the
/// shore of the lowest lake on land to the highest waters dived.
class Altitude {
public:
    constexpr Altitude() = default;
    constexpr explicit Altitude(Meters above_sea_level) : above_sea_level_(above_sea_level) {}
    [[nodiscard]] constexpr Meters meters() const { return above_sea_level_; }
    friend constexpr bool operator==(Altitude a, Altitude b) {
        return a.meters().value() == b.meters().value();
    }

private:
    Meters above_sea_level_{0.0};
};

}  // namespace leadline
