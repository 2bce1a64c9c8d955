// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/forecast.h"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>

#include "core/physics/range.h"

namespace leadline {
namespace {

// Nodes of the trapezoidal rule over a standard normal variable: +-6 deviations hold all but 2e-9.
constexpr double reach = 6.0;
constexpr double shared_step = 0.75;
constexpr double own_step = 0.25;
constexpr double least_sigma = 0.01;

double density(double z) {
    return std::exp(-0.5 * z * z) * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}

/// Phi(z), the share of a standard normal variable below z.
double below(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

double all_last_given(const LogGroup& group, double s, double ln_load) {
    double product = 1.0;
    for (const LogBreather& one : group.breathers) {
        product *= below((one.ln_load - group.shared_sigma * s - ln_load) / one.own_sigma);
        if (product < 1e-12) return 0.0;
    }
    return product;
}

double least_own_sigma(const LogGroup& group) {
    const auto least = std::min_element(
        group.breathers.begin(), group.breathers.end(),
        [](const LogBreather& a, const LogBreather& b) { return a.own_sigma < b.own_sigma; });
    return least->own_sigma;
}

double all_last(const LogGroup& group, double ln_load) {
    // The integrand is as narrow as the narrowest breather is beside the shared spread, and narrower
    // where several are alike.
    const double narrowest = 0.6 * least_own_sigma(group) / std::max(group.shared_sigma, 1e-9);
    const double step = shared_step * std::min(1.0, narrowest);
    double sum = 0.0;
    double weight = 0.0;
    for (double s = -reach; s <= reach; s += step) {
        const double w = density(s);
        weight += w;
        sum += w * all_last_given(group, s, ln_load);
    }
    return sum / weight;  // the weights' own sum: 1 to the last digits, and never above
}

double first_chance(const LogGroup& group, std::size_t i) {
    const LogBreather& one = group.breathers[i];
    const double step = own_step * std::min(1.0, least_own_sigma(group) / one.own_sigma);
    double sum = 0.0;
    double weight = 0.0;
    for (double e = -reach; e <= reach; e += step) {
        const double ln_load = one.ln_load - one.own_sigma * e;
        double product = density(e);
        weight += product;
        for (std::size_t j = 0; j < group.breathers.size() && product > 1e-14; ++j) {
            if (j == i) continue;
            const LogBreather& other = group.breathers[j];
            product *= below((other.ln_load - ln_load) / other.own_sigma);
        }
        sum += product;
    }
    return sum / weight;
}

std::optional<Error> refusal(const LogGroup& group) {
    if (group.breathers.empty() || group.breathers.size() > 100) {
        return Error{ErrorCode::bad_count, "breathers", std::to_string(group.breathers.size()),
                     "1 to 100"};
    }
    if (auto error = outside_range("shared_sigma", group.shared_sigma, 0.0, 2.0, "")) return error;
    for (const LogBreather& one : group.breathers) {
        if (auto error = outside_range("ln_load", one.ln_load, -60.0, 60.0, "")) return error;
        if (auto error = outside_range("own_sigma", one.own_sigma, least_sigma, 2.0, "")) return error;
    }
    return std::nullopt;
}

std::optional<Error> refusal(const SharedAscent& ascent) {
    if (auto error = outside_range("shared_sigma", ascent.shared_sigma, 0.0, 2.0, "")) return error;
    if (auto error = outside_range("instructor_sigma", ascent.instructor_sigma, 0.0, 2.0, "")) {
        return error;
    }
    if (auto error = outside_range("stressed_sigma", ascent.stressed_sigma, 1e-3, 2.0, "")) {
        return error;
    }
    if (auto error = outside_range("usable", ascent.usable_liter_bars, 0.0, 1e6, "L bar")) {
        return error;
    }
    for (const double rmv : {ascent.instructor_rmv, ascent.stressed_rmv}) {
        if (auto error = outside_range("rmv", rmv, 1e-3, 1e3, "L/min")) return error;
    }
    for (std::size_t i = 0; i < ascent.load_before.size(); ++i) {
        if (auto error = outside_range("load_before", ascent.load_before[i], 0.0, 1e6, "bar min")) {
            return error;
        }
        if (auto error = outside_range("load_up", ascent.load_up[i], 1e-6, 1e6, "bar min")) {
            return error;
        }
    }
    return std::nullopt;
}

}  // namespace

Result<double> chance_all_last(const LogGroup& group, double load_bar_minutes) {
    if (const auto error = refusal(group)) return *error;
    if (const auto error = outside_range("load", load_bar_minutes, 0.0, 1e6, "bar min")) {
        return *error;
    }
    if (load_bar_minutes <= 0.0) return 1.0;
    return all_last(group, std::log(load_bar_minutes));
}

Result<double> first_load_quantile(const LogGroup& group, double share) {
    if (const auto error = refusal(group)) return *error;
    if (const auto error = outside_range("share", share, 0.001, 0.999, "")) return *error;
    double low = group.breathers.front().ln_load;
    double high = low;
    for (const LogBreather& one : group.breathers) {
        const double far = (reach + 2.0) * (one.own_sigma + group.shared_sigma);
        low = std::min(low, one.ln_load - far);
        high = std::max(high, one.ln_load + far);
    }
    // The chance that the first is down by then rises from 0 to 1 between the two.
    const auto excess = [&](double ln_load) { return 1.0 - all_last(group, ln_load) - share; };
    std::uintmax_t steps = 60;
    const auto found = boost::math::tools::toms748_solve(
        excess, low, high, boost::math::tools::eps_tolerance<double>(28), steps);
    return std::exp(0.5 * (found.first + found.second));
}

Result<double> chance_shared_ascent(const SharedAscent& ascent) {
    const std::size_t moments = ascent.load_before.size();
    if (moments == 0 || ascent.load_up.size() != moments) {
        return Error{ErrorCode::bad_count, "load_up", std::to_string(ascent.load_up.size()),
                     std::to_string(std::max<std::size_t>(moments, 1))};
    }
    if (const auto error = refusal(ascent)) return *error;
    const double own_sigma = std::hypot(ascent.shared_sigma, ascent.instructor_sigma);
    double sum = 0.0;
    double weight = 0.0;
    for (double u = -reach; u <= reach; u += own_step) {
        const double w = density(u);
        weight += w;
        const double rmv = ascent.instructor_rmv * std::exp(own_sigma * u);
        double lasting = 0.0;
        for (std::size_t i = 0; i < moments; ++i) {
            const double left = ascent.usable_liter_bars - rmv * ascent.load_before[i];
            if (left <= 0.0) continue;
            const double needed = ascent.stressed_rmv * ascent.load_up[i];
            lasting += below(std::log(left / needed) / ascent.stressed_sigma);
        }
        sum += w * lasting / static_cast<double>(moments);
    }
    return sum / weight;
}

Result<std::vector<double>> chances_to_be_first(const LogGroup& group) {
    if (const auto error = refusal(group)) return *error;
    std::vector<double> chances;
    for (std::size_t i = 0; i < group.breathers.size(); ++i) {
        chances.push_back(first_chance(group, i));
    }
    return chances;
}

}  // namespace leadline
