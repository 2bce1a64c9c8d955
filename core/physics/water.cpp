// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/water.h"

#include <cmath>
#include <optional>

#include "core/physics/range.h"

namespace leadline {
namespace {

std::optional<Error> refused(PracticalSalinity salinity, Kelvins temperature) {
    if (auto error = outside_range("salinity", salinity.value, 0.0, 42.0, "")) {
        return error;
    }
    return outside_range("temperature", temperature.value(), 271.15, 313.15, "K");
}

/// Density at one atmosphere [kg/m3]. UNESCO 44 (1983), p. 17, eq. 13 and 14 (equation numbers
/// from memory). s: practical salinity; t: degrees Celsius.
double one_atmosphere_density(double s, double t) {
    const double pure =
        999.842594 +
        t * (6.793952e-2 +
             t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    const double linear =
        0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    const double three_halves = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
    const double quadratic = 4.8314e-4;
    return pure + s * (linear + std::sqrt(s) * three_halves + s * quadratic);
}

/// Secant bulk modulus [bar] at a sea pressure p [bar]. UNESCO 44 (1983), p. 18, eq. 15 to 19
/// (equation numbers from memory).
double secant_bulk_modulus(double s, double t, double p) {
    const double root = std::sqrt(s);
    const double pure_k =
        19652.21 + t * (148.4206 + t * (-2.327105 + t * (1.360477e-2 - t * 5.155288e-5)));
    const double pure_a = 3.239908 + t * (1.43713e-3 + t * (1.16092e-4 - t * 5.77905e-7));
    const double pure_b = 8.50935e-5 + t * (-6.12293e-6 + t * 5.2787e-8);

    const double k = pure_k + s * (54.6746 + t * (-0.603459 + t * (1.09987e-2 - t * 6.1670e-5))) +
                     s * root * (7.944e-2 + t * (1.6483e-2 - t * 5.3009e-4));
    const double a =
        pure_a + s * (2.2838e-3 + t * (-1.0981e-5 - t * 1.6078e-6)) + s * root * 1.91075e-4;
    const double b = pure_b + s * (-9.9348e-7 + t * (2.0816e-8 + t * 9.1697e-10));
    return k + p * (a + p * b);
}

/// EOS-80 density [kg/m3] of inputs already checked; sea pressure in pascals.
double eos80_density(double s, double t, double sea_pressure) {
    const double bar = sea_pressure / 1e5;
    return one_atmosphere_density(s, t) / (1.0 - bar / secant_bulk_modulus(s, t, bar));
}

}  // namespace

Result<KilogramsPerCubicMeter> water_density(PracticalSalinity salinity, Kelvins temperature,
                                             Pascals sea_pressure) {
    if (const auto error = refused(salinity, temperature)) {
        return *error;
    }
    if (const auto error = outside_range("sea_pressure", sea_pressure.value(), 0.0, 100e6, "Pa")) {
        return *error;
    }
    return KilogramsPerCubicMeter(
        eos80_density(salinity.value, temperature.value() - 273.15, sea_pressure.value()));
}

Result<WaterColumn> WaterColumn::make(Pascals surface_pressure, MetersPerSecondSquared gravity,
                                      PracticalSalinity salinity, Kelvins temperature) {
    if (const auto error =
            outside_range("surface_pressure", surface_pressure.value(), 50e3, 110e3, "Pa")) {
        return *error;
    }
    if (const auto error = outside_range("gravity", gravity.value(), 9.7, 9.9, "m/s2")) {
        return *error;
    }
    if (const auto error = refused(salinity, temperature)) {
        return *error;
    }
    // The compression is taken at about half the pressure of the deepest profile, 60 m. Over so
    // small a range it is constant to 0.1 %, which is 3e-7 of the pressure at 60 m.
    constexpr double middle = 300e3;
    const double celsius = temperature.value() - 273.15;
    const double at_surface = eos80_density(salinity.value, celsius, 0.0);
    const double at_middle = eos80_density(salinity.value, celsius, middle);

    WaterColumn column;
    column.surface_pressure_ = surface_pressure;
    column.gravity_ = gravity;
    column.salinity_ = salinity;
    column.temperature_ = temperature;
    column.surface_density_ = KilogramsPerCubicMeter(at_surface);
    column.compression_ = (at_middle - at_surface) / middle;
    return column;
}

Pascals WaterColumn::absolute_pressure(Depth depth) const {
    return surface_pressure_ + gauge_pressure(depth);
}

Pascals WaterColumn::gauge_pressure(Depth depth) const {
    // The pressure at half the depth, which only sets the density there, needs no compression.
    const double weight = gravity_.value() * depth.meters().value();
    const double density = surface_density_.value();
    const double halfway_density = density + compression_ * density * weight / 2.0;
    return Pascals(halfway_density * weight);
}

Depth WaterColumn::depth_at(Pascals absolute) const {
    const double gauge = absolute.value() - surface_pressure_.value();
    if (!(gauge > 0.0)) {
        return Depth(Meters(0.0));
    }
    // The positive root of gauge_pressure(depth) = gauge, a quadratic in the depth, in the form
    // that loses no digits when the compression is small.
    const double density = surface_density_.value();
    const double root = std::sqrt(1.0 + 2.0 * compression_ * gauge / density);
    return Depth(Meters(2.0 * gauge / (density * gravity_.value() * (1.0 + root))));
}

Meters WaterColumn::water_height(Pascals difference) const {
    return Meters(difference.value() / (surface_density_.value() * gravity_.value()));
}

}  // namespace leadline
