// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/air.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>

#include "core/physics/range.h"

namespace leadline {
namespace {

// Lemmon et al. 2000: reducing values of the pseudo-pure fluid (its maxcondentherm).
constexpr double reducing_temperature = 132.6312;  // K
constexpr double reducing_density = 10447.7;       // mol/m3

/// N delta^i tau^j exp(-delta^l), without the exponential where l is 0.
struct Term {
    double n;
    int i;
    double j;
    int l;
};

// Lemmon et al. 2000, table 12 (coefficients and table number from memory, see the header).
// clang-format off
constexpr std::array<Term, 19> residual_terms{{
    {0.118160747229, 1, 0.0, 0},
    {0.713116392079, 1, 0.33, 0},
    {-1.61824192067, 1, 1.01, 0},
    {0.0714140178971, 2, 0.0, 0},
    {-0.0865421396646, 3, 0.0, 0},
    {0.134211176704, 3, 0.15, 0},
    {0.0112626704218, 4, 0.0, 0},
    {-0.0420533228842, 4, 0.2, 0},
    {0.0349008431982, 4, 0.35, 0},
    {0.000164957183186, 6, 1.35, 0},
    {-0.101365037912, 1, 1.6, 1},
    {-0.173813690970, 3, 0.8, 1},
    {-0.0472103183731, 5, 0.95, 1},
    {-0.0122523554253, 6, 1.25, 1},
    {-0.146629609713, 1, 3.6, 2},
    {-0.0316055879821, 3, 6.0, 2},
    {0.000233594806142, 11, 3.25, 2},
    {0.0148287891978, 1, 3.5, 3},
    {-0.00938782884667, 3, 15.0, 3},
}};
// clang-format on

constexpr int highest_delta_power = 11;
constexpr double highest_density = 40000.0;  // mol/m3; 500 MPa at 200 K has 37 041

/// Pressure and its slope against density.
struct Isotherm {
    double pressure;  // Pa
    double slope;     // Pa m3/mol
};

/// The equation of state at one temperature, so that a search over densities raises the temperature
/// to its powers only once.
class EquationOfState {
public:
    explicit EquationOfState(double kelvin) : rt_(molar_gas_constant * kelvin) {
        const double tau = reducing_temperature / kelvin;
        for (std::size_t k = 0; k < residual_terms.size(); ++k) {
            weights_[k] = residual_terms[k].n * std::pow(tau, residual_terms[k].j);
        }
    }

    [[nodiscard]] double ideal_gas_density(double pressure) const { return pressure / rt_; }

    [[nodiscard]] Isotherm at(double density) const {
        const double delta = density / reducing_density;
        std::array<double, highest_delta_power + 1> power{1.0};
        for (std::size_t k = 1; k < power.size(); ++k) {
            power[k] = power[k - 1] * delta;
        }
        const std::array<double, 4> damping{1.0, std::exp(-power[1]), std::exp(-power[2]),
                                            std::exp(-power[3])};
        double first = 0.0;   // delta d(alpha_r)/d(delta)
        double second = 0.0;  // delta^2 d2(alpha_r)/d(delta)2
        for (std::size_t k = 0; k < residual_terms.size(); ++k) {
            const auto i = static_cast<std::size_t>(residual_terms[k].i);
            const auto l = static_cast<std::size_t>(residual_terms[k].l);
            const double alpha = weights_[k] * power[i] * damping[l];
            const auto exponent = static_cast<double>(l);
            const double inner = l == 0 ? 0.0 : exponent * power[l];
            const double degree = static_cast<double>(i) - inner;
            first += alpha * degree;
            second += alpha * (degree * (degree - 1.0) - exponent * inner);
        }
        return {density * rt_ * (1.0 + first), rt_ * (1.0 + 2.0 * first + second)};
    }

private:
    double rt_;
    std::array<double, residual_terms.size()> weights_{};
};

/// Density of a pressure, by Newton's method inside a bracket that always holds the
/// root: above the critical temperature the pressure grows with density, so there is just one.
double find_density(const EquationOfState& air, double pressure) {
    double low = 0.0;
    double high = highest_density;
    double density = std::min(air.ideal_gas_density(pressure), high);
    constexpr int most_steps = 100;  // bisection alone needs about 60
    for (int step = 0; step < most_steps; ++step) {
        const Isotherm here = air.at(density);
        const double excess = here.pressure - pressure;
        if (excess == 0.0) {
            break;
        }
        (excess > 0.0 ? high : low) = density;
        double next = density - excess / here.slope;
        if (!(next > low && next < high)) {
            next = low + (high - low) / 2.0;
        }
        const double change = std::abs(next - density);
        density = next;
        if (change <= 1e-15 * density) {
            break;
        }
    }
    return density;
}

std::optional<Error> refused_temperature(Kelvins temperature, double lowest) {
    return outside_range("temperature", temperature.value(), lowest, 2000.0, "K");
}

std::optional<Error> refused_state(Pascals absolute, Kelvins temperature) {
    if (auto error = refused_temperature(temperature, 200.0)) {
        return error;
    }
    const double highest = temperature.value() < 350.0 ? 60e6 : 500e6;
    return outside_range("pressure", absolute.value(), 0.0, highest, "Pa");
}

std::optional<Error> refused_volume(CubicMeters volume) {
    return outside_range("volume", volume.value(), 0.0, 1.0, "m3");
}

}  // namespace

Result<Pascals> air_pressure(double moles_per_cubic_meter, Kelvins temperature) {
    if (const auto error = refused_temperature(temperature, 100.0)) {
        return *error;
    }
    if (const auto error =
            outside_range("density", moles_per_cubic_meter, 0.0, highest_density, "mol/m3")) {
        return *error;
    }
    return Pascals(EquationOfState(temperature.value()).at(moles_per_cubic_meter).pressure);
}

Result<double> air_molar_density(Pascals absolute, Kelvins temperature) {
    if (const auto error = refused_state(absolute, temperature)) {
        return *error;
    }
    return find_density(EquationOfState(temperature.value()), absolute.value());
}

Result<double> air_compressibility(Pascals absolute, Kelvins temperature) {
    const Result<double> density = air_molar_density(absolute, temperature);
    if (!density) {
        return density.error();
    }
    const double ideal = absolute.value() / (molar_gas_constant * temperature.value());
    // Zero, and pressures so small that the quotient is not a number.
    if (*density <= 0.0 || !std::isnormal(ideal)) {
        return 1.0;
    }
    return ideal / *density;
}

Result<Moles> air_content(CubicMeters volume, Pascals absolute, Kelvins temperature) {
    if (const auto error = refused_volume(volume)) {
        return *error;
    }
    const Result<double> density = air_molar_density(absolute, temperature);
    if (!density) {
        return density.error();
    }
    return Moles(volume.value() * *density);
}

Result<Pascals> air_vessel_pressure(CubicMeters volume, Moles content, Kelvins temperature) {
    if (const auto error = refused_volume(volume)) {
        return *error;
    }
    if (const auto error = refused_temperature(temperature, 200.0)) {
        return *error;
    }
    const double most = volume.value() * highest_density;
    if (const auto error = outside_range("content", content.value(), 0.0, most, "mol")) {
        return *error;
    }
    if (content.value() == 0.0) {
        return Pascals(0.0);
    }
    const double density = std::min(content.value() / volume.value(), highest_density);
    return Pascals(EquationOfState(temperature.value()).at(density).pressure);
}

Liters free_air_volume(Moles amount) {
    constexpr double reference_temperature = 288.15;  // K
    constexpr double reference_pressure = 101325.0;   // Pa
    return CubicMeters(amount.value() * molar_gas_constant * reference_temperature /
                       reference_pressure);
}

}  // namespace leadline
