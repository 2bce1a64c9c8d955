// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/composition.h"

#include <algorithm>
#include <cmath>

#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double least_fat = 0.03;
constexpr double most_fat = 0.60;
constexpr double standard_error = 0.04;  // of body mass, Deurenberg et al. 1991

std::optional<Error> outside_build(Kilograms mass, Meters height) {
    if (auto error = outside_range("body mass", mass.value(), 15.0, 250.0, "kg")) return error;
    return outside_range("body height", height.value(), 0.8, 2.5, "m");
}

std::optional<Error> outside_age(int age) {
    return outside_range("age", age, 5.0, 90.0, "years");
}

/// Deurenberg et al. 1991, as a fraction.
double predicted_fat(double bmi, int age, double sex) {
    const double years = age;
    const double percent = age <= last_child_years ? 1.51 * bmi - 0.70 * years - 3.6 * sex + 1.4
                                                   : 1.20 * bmi + 0.23 * years - 10.8 * sex - 5.4;
    return percent / 100.0;
}

Band child_lungs(double height) {
    const double vital_capacity = 2.35 * std::pow(height / 1.40, 3.1);
    const double gas = (0.3 + 0.5) * vital_capacity;
    return {0.85 * gas, gas, 1.15 * gas};
}

Band adult_lungs(double height, double age) {
    const double male = (7.99 * height - 7.08 + 1.31 * height + 0.022 * age - 1.23) / 2.0;
    const double female = (6.60 * height - 5.79 + 1.81 * height + 0.016 * age - 2.00) / 2.0;
    return {std::min(male, female), (male + female) / 2.0, std::max(male, female)};
}

}  // namespace

Result<SquareMeters> body_surface(Kilograms mass, Meters height) {
    if (auto error = outside_build(mass, height)) return *error;
    return SquareMeters(0.007184 * std::pow(mass.value(), 0.425) *
                        std::pow(height.value() * 100.0, 0.725));
}

Result<double> body_mass_index(Kilograms mass, Meters height) {
    if (auto error = outside_build(mass, height)) return *error;
    return mass.value() / (height.value() * height.value());
}

Result<Band> fat_fraction(Kilograms mass, Meters height, int age) {
    const Result<double> bmi = body_mass_index(mass, height);
    if (!bmi) return bmi.error();
    if (auto error = outside_age(age)) return *error;
    if (auto error = outside_range("body mass index", *bmi, 12.0, 45.0, "kg/m2")) return *error;
    const double male = predicted_fat(*bmi, age, 1.0);
    const double female = predicted_fat(*bmi, age, 0.0);
    const double middle = (male + female) / 2.0;
    if (auto error = outside_range("body fat", middle, least_fat, most_fat, "")) return *error;
    return Band{std::max(least_fat, male - standard_error), middle,
                std::min(most_fat, female + standard_error)};
}

Result<KilogramsPerCubicMeter> tissue_density(double fat) {
    if (auto error = outside_range("body fat", fat, 0.0, 0.7, "")) return *error;
    return KilogramsPerCubicMeter(495.0e3 / (fat * 100.0 + 450.0));
}

Result<Band> half_full_lungs_liters(Meters height, int age) {
    if (auto error = outside_age(age)) return *error;
    const bool child = age <= last_child_years;
    if (auto error =
            outside_range("body height", height.value(), child ? 0.8 : 1.3, 2.5, "m")) {
        return *error;
    }
    return child ? child_lungs(height.value()) : adult_lungs(height.value(), age);
}

}  // namespace leadline
