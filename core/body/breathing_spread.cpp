// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/breathing_spread.h"

#include <algorithm>
#include <array>
#include <boost/math/distributions/normal.hpp>
#include <cmath>

#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double adult_reference_kg = 75.0;
constexpr double child_reference_kg = 40.0;
constexpr double metabolic_exponent = 0.75;  // Kleiber 1947
constexpr double factor_per_step = 1.1;
constexpr int most_steps = 3;
constexpr int practised = 20;  // dives
constexpr std::array<double, 4> current_factors{1.0, 1.05, 1.15, 1.3};
constexpr std::array<double, 4> suit_steps{3.0, 5.0, 7.0, 8.0};

double total_sigma(const BreathingFacts& facts) {
    if (facts.measured) return 0.15;
    if (facts.breathing == BreathingClass::nervous) return 0.30;
    if (facts.breathing == BreathingClass::calm) return 0.22;
    return facts.dives_before.value_or(0) >= practised ? 0.22 : 0.27;
}

double mass_factor(const BreathingFacts& facts) {
    if (!facts.body_mass) return 1.0;
    const double reference = facts.breathing == BreathingClass::child ? child_reference_kg
                                                                      : adult_reference_kg;
    return std::pow(std::max(1.0, facts.body_mass->value() / reference), metabolic_exponent);
}

double cold_factor(const BreathingFacts& facts) {
    const double wanted = usual_suit_millimeters(facts.water);
    const double worn = facts.suit_millimeters.value_or(wanted);
    int missing = 0;
    for (const double step : suit_steps) {
        if (step > worn && step <= wanted) ++missing;
    }
    if (wanted > suit_steps[2]) missing = std::max(missing, 1);
    return std::pow(factor_per_step, std::min(missing, most_steps));
}

std::optional<Error> refusal(const BreathingFacts& facts) {
    if (facts.measured) {
        if (auto error = outside_range("rmv", facts.measured->value(), 5.0, 100.0, "L/min")) {
            return error;
        }
    }
    if (facts.body_mass) {
        if (auto error = outside_range("body_mass", facts.body_mass->value(), 15.0, 250.0, "kg")) {
            return error;
        }
    }
    if (facts.suit_millimeters) {
        if (auto error = outside_range("suit", *facts.suit_millimeters, 0.0,
                                       thickest_suit_millimeters, "mm")) {
            return error;
        }
    }
    if (auto error = outside_range("dives_before", facts.dives_before.value_or(0), 0, 20000, "")) {
        return error;
    }
    if (auto error = outside_range("current", facts.current, 0, 3, "")) return error;
    return outside_range("water", Celsius(facts.water).value(), -2.0, 36.0, "C");
}

}  // namespace

double BreathingSpread::sigma() const { return std::hypot(shared_sigma, own_sigma); }

double usual_suit_millimeters(Kelvins water) {
    const double celsius = Celsius(water).value();
    if (celsius >= 24.0) return suit_steps[0];
    if (celsius >= 21.0) return suit_steps[1];
    if (celsius >= 16.0) return suit_steps[2];
    return suit_steps[3];
}

Result<BreathingSpread> breathing_spread(const BreathingFacts& facts) {
    if (const auto error = refusal(facts)) return *error;
    BreathingSpread spread;
    const double sigma = total_sigma(facts);
    spread.shared_sigma = shared_breathing_sigma;
    spread.own_sigma = std::sqrt(sigma * sigma - shared_breathing_sigma * shared_breathing_sigma);
    spread.mass_factor = facts.measured ? 1.0 : mass_factor(facts);
    spread.cold_factor = cold_factor(facts);
    spread.current_factor = current_factors[static_cast<std::size_t>(facts.current)];
    spread.median = facts.measured.value_or(planning_rmv(facts.breathing)) *
                    (spread.mass_factor * spread.cold_factor * spread.current_factor);
    return spread;
}

Result<LitersPerMinute> rmv_quantile(const BreathingSpread& spread, double share) {
    if (const auto error = outside_range("share", share, 1e-6, 1.0 - 1e-6, "")) return *error;
    const double deviations = boost::math::quantile(boost::math::normal(), share);
    return spread.median * std::exp(spread.sigma() * deviations);
}

}  // namespace leadline
