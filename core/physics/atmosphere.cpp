// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/atmosphere.h"

#include <cmath>
#include <optional>

#include "core/physics/range.h"

namespace leadline {
namespace {

// ICAO Doc 7488/3 (1993), section 2: the constants of the standard atmosphere below 11 km.
constexpr double nominal_earth_radius = 6356766.0;  // m
constexpr double sea_level_pressure = 101325.0;     // Pa
constexpr double sea_level_temperature = 288.15;    // K
constexpr double temperature_gradient = -6.5e-3;    // K/m (geopotential)
constexpr double standard_gravity = 9.80665;        // m/s^2
constexpr double molar_mass = 28.964420e-3;         // kg/mol
constexpr double gas_constant = 8.31432;            // J/(mol K), as in the standard

// NIMA TR8350.2 (2000), table 3.4: WGS 84 ellipsoid.
constexpr double equatorial_gravity = 9.7803253359;        // m/s^2
constexpr double somigliana_constant = 0.00193185265241;   // -
constexpr double eccentricity_squared = 0.00669437999013;  // -
constexpr double free_air_gradient = 3.086e-6;             // 1/s^2, from memory

std::optional<Error> refused(Altitude altitude) {
    return outside_range("altitude", altitude.meters().value(), -430.0, 5000.0, "m");
}

}  // namespace

Result<Pascals> standard_atmosphere_pressure(Altitude altitude) {
    if (const auto error = refused(altitude)) {
        return *error;
    }
    const double geometric = altitude.meters().value();
    const double geopotential =
        nominal_earth_radius * geometric / (nominal_earth_radius + geometric);
    const double exponent = -standard_gravity * molar_mass / (gas_constant * temperature_gradient);
    const double temperature_ratio =
        1.0 + temperature_gradient * geopotential / sea_level_temperature;
    return Pascals(sea_level_pressure * std::pow(temperature_ratio, exponent));
}

Result<MetersPerSecondSquared> normal_gravity(Degrees latitude, Altitude altitude) {
    if (const auto error = outside_range("latitude", latitude.value(), -90.0, 90.0, "deg")) {
        return *error;
    }
    if (const auto error = refused(altitude)) {
        return *error;
    }
    const double sine = std::sin(Radians(latitude).value());
    const double on_ellipsoid = equatorial_gravity * (1.0 + somigliana_constant * sine * sine) /
                                std::sqrt(1.0 - eccentricity_squared * sine * sine);
    return MetersPerSecondSquared(on_ellipsoid - free_air_gradient * altitude.meters().value());
}

}  // namespace leadline
