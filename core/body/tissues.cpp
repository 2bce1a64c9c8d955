// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/tissues.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>

#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double longest_no_stop = 1440.0;

std::optional<Error> refused_loads(const TissueLoads& loads) {
    for (std::size_t i = 0; i < loads.nitrogen.size(); ++i) {
        const double load = loads.nitrogen[i];
        if (load >= 0.0 && load <= most_load.value()) continue;
        return outside_range("loads/" + std::to_string(i), load, 0.0, most_load.value(), "bar");
    }
    return std::nullopt;
}

std::optional<Error> refused_ambient(const char* name, Pascals pressure) {
    return outside_range(name, pressure.value(), least_ambient.value(), most_ambient.value(), "Pa");
}

std::optional<Error> refused_surface(Pascals pressure) {
    return outside_range("surface", pressure.value(), least_ambient.value(), most_surface.value(),
                         "Pa");
}

std::optional<Error> refused_factor(const char* name, double factor) {
    return outside_range(name, factor, 0.1, 1.0, "");
}

/// Loads, surface and gradient factor, as several functions take them.
std::optional<Error> refused(const TissueLoads& loads, Pascals surface, double high) {
    if (auto error = refused_loads(loads)) return error;
    if (auto error = refused_surface(surface)) return error;
    return refused_factor("high", high);
}

/// Load above ambient that may be carried to the surface [bar]; positive, as b is below 1.
double allowance(const Compartment& tissue, double surface, double factor) {
    return factor * (tissue.a + surface / tissue.b - surface);
}

double unchecked_allowed(const TissueLoads& loads, double factor) {
    double greatest = 0.0;
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        const Compartment& tissue = zh_l16c[i];
        const double lowest = (loads.nitrogen[i] - factor * tissue.a) /
                              (factor / tissue.b - factor + 1.0);
        greatest = std::max(greatest, lowest);
    }
    return greatest;
}

/// Time [min] for one compartment to rise from a load to a limit; infinite when it never does.
double time_to_limit(double half_time, double load, double inspired, double limit) {
    if (load >= limit) return 0.0;
    if (inspired <= limit) return std::numeric_limits<double>::infinity();
    return half_time * std::log2((inspired - load) / (inspired - limit));
}

}  // namespace

Result<TissueLoads> tissues_at_rest(Pascals surface) {
    if (const auto error = refused_surface(surface)) return *error;
    TissueLoads loads;
    loads.nitrogen.fill(inspired_nitrogen(surface).value());
    return loads;
}

Result<TissueLeg> TissueLeg::make(Pascals from, Pascals to, Minutes time) {
    if (const auto error = refused_ambient("from", from)) return *error;
    if (const auto error = refused_ambient("to", to)) return *error;
    const double minutes = time.value();
    if (const auto error =
            outside_range("time", minutes, 0.0, longest_exposure.value(), "min")) {
        return *error;
    }
    const double start = inspired_nitrogen(from).value();
    const double change = inspired_nitrogen(to).value() - start;
    TissueLeg leg;
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        const double turns = std::numbers::ln2 * minutes / zh_l16c[i].half_time;  // k t
        const double lost = -std::expm1(-turns);                                  // 1 - exp(-k t)
        leg.kept_[i] = 1.0 - lost;
        // The equation with R = change / t, ordered so that no digits are lost in a short leg: the
        // share of the change that arrives is 1 - (1 - exp(-k t)) / (k t).
        const double arrived = turns > 0.0 ? 1.0 - lost / turns : 0.0;
        leg.gained_[i] = start * lost + change * arrived;
    }
    return leg;
}

TissueLoads TissueLeg::after(const TissueLoads& before) const {
    TissueLoads loads;
    for (std::size_t i = 0; i < loads.nitrogen.size(); ++i) {
        loads.nitrogen[i] = before.nitrogen[i] * kept_[i] + gained_[i];
    }
    return loads;
}

Result<TissueLoads> after_leg(const TissueLoads& before, Pascals from, Pascals to, Minutes time) {
    if (const auto error = refused_loads(before)) return *error;
    const Result<TissueLeg> leg = TissueLeg::make(from, to, time);
    if (!leg) return leg.error();
    return leg->after(before);
}

Result<Pascals> allowed_pressure(const TissueLoads& loads, double factor) {
    if (const auto error = refused_loads(loads)) return *error;
    if (const auto error = refused_factor("factor", factor)) return *error;
    return Pascals(Bars(unchecked_allowed(loads, factor)));
}

Result<Pascals> ceiling_pressure(const TissueLoads& loads, Pascals surface,
                                 GradientFactors factors) {
    if (const auto error = refused(loads, surface, factors.high)) return *error;
    if (const auto error = outside_range("low", factors.low, 0.1, factors.high, "")) return *error;
    const double at_surface = Bars(surface).value();
    if (unchecked_allowed(loads, factors.high) <= at_surface) return surface;
    return Pascals(Bars(std::max(at_surface, unchecked_allowed(loads, factors.low))));
}

Result<Saturation> surfacing_saturation(const TissueLoads& loads, Pascals surface, double high) {
    if (const auto error = refused(loads, surface, high)) return *error;
    const double ambient = Bars(surface).value();
    double greatest = -std::numeric_limits<double>::infinity();
    Saturation found;
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        const double share =
            (loads.nitrogen[i] - ambient) / allowance(zh_l16c[i], ambient, high);
        if (share > greatest) {
            greatest = share;
            found.leading = zh_l16c[i].number;
        }
    }
    found.share = std::max(0.0, greatest);
    return found;
}

Result<NoStop> no_stop_time(const TissueLoads& loads, Pascals ambient, Pascals surface,
                            double high) {
    if (const auto error = refused(loads, surface, high)) return *error;
    if (const auto error = refused_ambient("ambient", ambient)) return *error;
    const double at_surface = Bars(surface).value();
    const double inspired = inspired_nitrogen(ambient).value();
    double shortest = std::numeric_limits<double>::infinity();
    NoStop found;
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        const Compartment& tissue = zh_l16c[i];
        const double limit = at_surface + allowance(tissue, at_surface, high);
        const double time =
            time_to_limit(tissue.half_time, loads.nitrogen[i], inspired, limit);
        if (time < shortest) {
            shortest = time;
            found.leading = tissue.number;
        }
    }
    if (shortest <= longest_no_stop) found.time = Minutes(shortest);
    return found;
}

}  // namespace leadline
