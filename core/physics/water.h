// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// Practical salinity (PSS-78), a number without unit: 0 fresh, about 35 open ocean, 38-40 the
/// saltiest seas. Valid: 0 to 42.
struct PracticalSalinity {
    double value = 0.0;
    friend constexpr bool operator==(PracticalSalinity, PracticalSalinity) = default;
};

/// Density of water by the 1980 international equation of state of sea water (EOS-80): the
/// one-atmosphere equation and the secant bulk modulus.
///
/// @param salinity      0 to 42
/// @param temperature   -2 to 40 degrees Celsius (on IPTS-68; the difference to ITS-90 is below
///                      0.01 K and without effect here)
/// @param sea_pressure  pressure above one atmosphere, 0 to 100 MPa
/// @returns density; ErrorCode::out_of_range naming the input otherwise
/// @validity  air-free water; within 0.01 kg/m3 of TEOS-10 for reference-composition sea water.
///            Lakes carry other salts: up to about 0.5 kg/m3 more than fresh water of salinity 0
/// @source    Fofonoff & Millard, Algorithms for computation of fundamental properties of seawater,
///            UNESCO Technical Papers in Marine Science 44, 1983, pp. 15-19
/// @tests     tests/reference/water_density.csv
Result<KilogramsPerCubicMeter> water_density(PracticalSalinity salinity, Kelvins temperature,
                                             Pascals sea_pressure);

/// What the pressure at a depth follows from: surface pressure, gravity and water.
class WaterColumn {
public:
    /// @param surface_pressure  absolute, 50 to 110 kPa (5000 m of altitude to the strongest high)
    /// @param gravity           9.7 to 9.9 m/s^2
    /// @param salinity, temperature  see water_density(); one value for the whole column: the
    ///        coldest the guest will meet is the safe choice, being the densest (fresh water is
    ///        densest at 4 C, but only 0.013 % denser than at 0 C)
    /// @returns the column; ErrorCode::out_of_range naming the input otherwise
    static Result<WaterColumn> make(Pascals surface_pressure, MetersPerSecondSquared gravity,
                                    PracticalSalinity salinity, Kelvins temperature);

    /// Absolute pressure at a depth: p(d) = p_0 + rho g d, with the density taken at half the depth
    /// so that the water's own compression is in it.
    ///
    /// @param depth  0 to 60 m (not checked here: every profile is checked when it is made)
    /// @validity  within 0.01 % of the integral down to 60 m
    /// @source    hydrostatics; U.S. Navy Diving Manual, chapter 12, uses the same with rounded
    ///            constants
    /// @tests     tests/reference/pressure_at_depth.csv
    [[nodiscard]] Pascals absolute_pressure(Depth depth) const;

    /// Pressure above that at the surface.
    [[nodiscard]] Pascals gauge_pressure(Depth depth) const;

    /// Depth at which the absolute pressure is reached; 0 m for the surface pressure and below.
    [[nodiscard]] Depth depth_at(Pascals absolute) const;

    /// Height of water that weighs a pressure difference, at the column's surface density.
    [[nodiscard]] Meters water_height(Pascals difference) const;

    [[nodiscard]] Pascals surface_pressure() const { return surface_pressure_; }
    [[nodiscard]] MetersPerSecondSquared gravity() const { return gravity_; }
    [[nodiscard]] KilogramsPerCubicMeter surface_density() const { return surface_density_; }
    [[nodiscard]] Kelvins temperature() const { return temperature_; }
    [[nodiscard]] PracticalSalinity salinity() const { return salinity_; }

private:
    WaterColumn() = default;
    Pascals surface_pressure_{};
    MetersPerSecondSquared gravity_{};
    PracticalSalinity salinity_{};
    Kelvins temperature_{};
    KilogramsPerCubicMeter surface_density_{};
    /// Density gained per pascal of sea pressure near the surface [kg/m3/Pa].
    double compression_ = 0.0;
};

}  // namespace leadline
