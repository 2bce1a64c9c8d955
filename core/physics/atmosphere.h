// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// Pressure of the standard atmosphere at an altitude.
///
/// Geometric altitude h is first turned into geopotential altitude H = r h / (r + h) with
/// r = 6 356 766 m; then, below 11 km, p = p_b [1 + beta H / T_b]^(-g_0 M / (R* beta)) with
/// p_b = 101 325 Pa, T_b = 288.15 K, beta = -6.5 K/km.
///
/// @param altitude  geometric altitude of the water surface, -430 to 5000 m
/// @returns absolute pressure; ErrorCode::out_of_range outside that
/// @validity  a standard day: weather moves the true value by up to about 5 %
/// @source    ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, 3rd ed. 1993, section 2
///            (the same model as ISO 2533:1975 and the U.S. Standard Atmosphere, 1976)
/// @tests     tests/reference/atmosphere.csv
Result<Pascals> standard_atmosphere_pressure(Altitude altitude);

/// Normal gravity at a latitude on the WGS 84 ellipsoid, with the free-air correction for altitude.
///
///     gamma = gamma_e (1 + k sin^2 phi) / sqrt(1 - e^2 sin^2 phi) - 3.086e-6 s^-2 h
///
/// @param latitude  geodetic latitude, -90 to 90 degrees
/// @param altitude  -430 to 5000 m
/// @returns acceleration of free fall; ErrorCode::out_of_range naming the input otherwise
/// @validity  within 0.002 m/s^2 of the local value (gravity anomalies)
/// @source    NIMA TR8350.2, 3rd ed. 2000, table 3.4 and eq. 4-1 (Somigliana); free-air gradient
///            from memory (Heiskanen & Moritz, Physical Geodesy, 1967)
/// @tests     tests/reference/gravity.csv
Result<MetersPerSecondSquared> normal_gravity(Degrees latitude, Altitude altitude);

}  // namespace leadline
