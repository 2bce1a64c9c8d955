// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/ear_lung_plan.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace leadline {
namespace {

/// Corners from leaving the surface to the first at the deepest depth. The profile has been
/// checked: it starts at the surface and goes below it.
std::vector<WayPoint> first_way_down(const Profile& profile) {
    const auto& points = profile.points;
    const auto below = std::find_if(points.begin(), points.end(), [](const ProfilePoint& point) {
        return point.depth.meters().value() > 0.0;
    });
    const Depth bottom = deepest(profile);
    const auto end = std::find_if(below, points.end(), [&](const ProfilePoint& point) {
        return point.depth == bottom;
    });
    std::vector<WayPoint> way;
    for (auto point = std::prev(below); point != std::next(end); ++point) {
        way.push_back({point->time, point->depth});
    }
    return way;
}

}  // namespace

Result<EarLungCharts> plan_ears_and_lungs(const WaterColumn& water, const Profile& profile,
                                          Meters step) {
    if (const Result<Done> checked = check(profile); !checked) return checked.error();
    Result<EarTrace> ears = ear_trace_by_step(water, first_way_down(profile), step);
    if (!ears) return ears.error();
    const Result<Meters> largest = largest_clearing_step(water, clearing_margin);
    if (!largest) return largest.error();
    Result<std::vector<HeldBreathLimit>> lungs =
        held_breath_limits(water, deepest(profile), lung_chart_spacing);
    if (!lungs) return lungs.error();

    EarLungCharts charts;
    charts.step = step;
    charts.largest_step = *largest;
    charts.ears = std::move(*ears);
    charts.lungs = std::move(*lungs);
    return charts;
}

}  // namespace leadline
