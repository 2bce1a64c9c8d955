// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_scale.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace leadline {
namespace {

/// The first step whose marks stand at least `room` pixels apart.
double fitting_step(std::span<const double> steps, double pixels_per_unit, double room) {
    const auto found = std::find_if(steps.begin(), steps.end(), [&](double step) {
        return step * pixels_per_unit >= room;
    });
    return found == steps.end() ? steps.back() : *found;
}

}  // namespace

double ProfileScale::x(Minutes time) const {
    return plot.left() + time.value() / minutes * plot.width();
}

double ProfileScale::y(Depth depth) const {
    return plot.top() + depth.meters().value() / meters * plot.height();
}

QPointF ProfileScale::at(const ProfilePoint& point) const {
    return {x(point.time), y(point.depth)};
}

Minutes ProfileScale::time_at(double x_pixel) const {
    return Minutes(std::max(0.0, (x_pixel - plot.left()) / plot.width() * minutes));
}

Depth ProfileScale::depth_at(double y_pixel) const {
    return Depth(Meters(std::max(0.0, (y_pixel - plot.top()) / plot.height() * meters)));
}

ProfileScale fitting_scale(const QRectF& plot, const Profile& profile,
                           const std::vector<Depth>& lines) {
    constexpr double least_meters = 4.0;
    constexpr double least_minutes = 10.0;
    constexpr double room_right = 1.08;
    constexpr double room_below = 1.25;
    ProfileScale scale;
    scale.plot = plot;
    const double deepest_point = deepest(profile).meters().value();
    double bottom = std::max(least_meters, deepest_point * room_below);
    for (const Depth line : lines) {
        const double depth = line.meters().value();
        if (depth <= 2.0 * std::max(deepest_point, least_meters / 2.0)) {
            bottom = std::max(bottom, depth * 1.08);
        }
    }
    scale.meters = std::ceil(bottom);
    scale.minutes = std::ceil(std::max(least_minutes, duration(profile).value() * room_right));
    return scale;
}

std::vector<Depth> depth_marks(const ProfileScale& scale, UnitSystem units, double room) {
    static constexpr std::array metric{1.0, 2.0, 5.0, 10.0, 20.0};
    static constexpr std::array imperial{5.0, 10.0, 20.0, 50.0, 100.0};
    const bool feet = units == UnitSystem::imperial;
    const double unit = feet ? 0.3048 : 1.0;
    const double pixels = scale.plot.height() / scale.meters * unit;
    const double step = fitting_step(feet ? std::span<const double>(imperial)
                                          : std::span<const double>(metric),
                                     pixels, room) * unit;
    std::vector<Depth> marks;
    for (int i = 0; i * step <= scale.meters; ++i) marks.emplace_back(Meters(i * step));
    return marks;
}

std::vector<Minutes> time_marks(const ProfileScale& scale, double room) {
    static constexpr std::array steps{1.0, 2.0, 5.0, 10.0, 20.0, 30.0, 60.0};
    const double step = fitting_step(steps, scale.plot.width() / scale.minutes, room);
    std::vector<Minutes> marks;
    for (int i = 0; i * step <= scale.minutes; ++i) marks.emplace_back(i * step);
    return marks;
}

}  // namespace leadline
