// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/breathing_curve.h"

#include <algorithm>
#include <cmath>

namespace leadline {
namespace {

/// Integral of a pressure that starts at p0 and changes by `slope`, over `minutes`.
double integral(double p0, double slope, double minutes) {
    return minutes * (p0 + 0.5 * slope * minutes);
}

}  // namespace

BreathingCurve::BreathingCurve(const std::vector<ProfilePoint>& points, const WaterColumn& water) {
    const auto bar = [&](Depth depth) { return Bars(water.absolute_pressure(depth)).value(); };
    double load = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double minutes = (points[i].time - points[i - 1].time).value();
        const double from = bar(points[i - 1].depth);
        const double slope = (bar(points[i].depth) - from) / minutes;
        const double factor = rmv_factor(points[i].phase);
        knots_.push_back({points[i - 1].time.value(), from, slope, factor, load});
        load += factor * integral(from, slope, minutes);
    }
    knots_.push_back({points.back().time.value(), bar(points.back().depth), 0.0, 0.0, load});
}

BreathingCurve BreathingCurve::along(const Profile& profile, const WaterColumn& water) {
    return {profile.points, water};
}

BreathingCurve BreathingCurve::held_at_depth(const Profile& profile, const WaterColumn& water) {
    const auto corner = static_cast<std::ptrdiff_t>(final_ascent_start(profile));
    std::vector<ProfilePoint> points(profile.points.begin(),
                                     profile.points.begin() + corner + 1);
    const ProfilePoint& last = points.back();
    // A profile may use the whole of the longest time, so the stay ends well after that.
    points.push_back({last.time + longest_profile, last.depth, Phase::tour});
    return {points, water};
}

BarMinutes BreathingCurve::load_at(Minutes time) const {
    const double wanted = std::clamp(time.value(), knots_.front().time, knots_.back().time);
    const auto after = std::upper_bound(
        knots_.begin(), knots_.end(), wanted,
        [](double value, const Knot& knot) { return value < knot.time; });
    const Knot& leg = *(after - 1);
    return BarMinutes(leg.load +
                      leg.factor * integral(leg.pressure, leg.slope, wanted - leg.time));
}

std::optional<Minutes> BreathingCurve::time_of(BarMinutes load) const {
    const double wanted = load.value();
    if (wanted <= 0.0) return Minutes(knots_.front().time);
    if (wanted > knots_.back().load) return std::nullopt;
    const auto after = std::lower_bound(
        knots_.begin(), knots_.end(), wanted,
        [](const Knot& knot, double value) { return knot.load < value; });
    const Knot& leg = *(after - 1);
    // Solve p0 t + slope t^2 / 2 = q for t, in the form that does not cancel for small slopes.
    const double q = (wanted - leg.load) / leg.factor;
    const double root =
        std::sqrt(std::max(0.0, leg.pressure * leg.pressure + 2.0 * leg.slope * q));
    return Minutes(leg.time + 2.0 * q / (leg.pressure + root));
}

BarMinutes BreathingCurve::total() const { return BarMinutes(knots_.back().load); }

}  // namespace leadline
