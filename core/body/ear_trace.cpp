// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>

#include "core/body/ears.h"
#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr std::size_t most_corners = 100;
/// A clearing this near to a corner [m], or by this share of a leg or an interval, is at the
/// corner.
constexpr double together = 1e-9;

std::optional<Error> refused(const std::vector<WayPoint>& way) {
    if (way.size() < 2 || way.size() > most_corners) {
        return Error{ErrorCode::bad_count, "way", std::to_string(way.size()), "2 to 100"};
    }
    for (std::size_t i = 0; i < way.size(); ++i) {
        const std::string place = "way/" + std::to_string(i);
        const double time = way[i].time.value();
        if (auto error = outside_range(place + "/time", time, 0.0, 240.0, "min")) return error;
        if (auto error = outside_range(place + "/depth", way[i].depth.meters().value(), 0.0, 60.0,
                                       "m")) {
            return error;
        }
        if (i > 0 && !(time > way[i - 1].time.value())) {
            return Error{ErrorCode::time_not_increasing, place + "/time", number_text(time),
                         number_text(way[i - 1].time.value())};
        }
    }
    return std::nullopt;
}

WayPoint between(const WayPoint& from, const WayPoint& to, double share) {
    return {from.time + (to.time - from.time) * share,
            Depth(from.depth.meters() + (to.depth - from.depth) * share)};
}

/// The middle ear on its way: a closed cavity that is opened by clearing, and by itself going up.
class MiddleEar {
public:
    MiddleEar(const WaterColumn& water, const WayPoint& start)
        : water_(water), inside_(water.absolute_pressure(start.depth)), at_(start) {
        keep(Pascals(0.0));
    }

    /// To a point by a straight line. Where the way up meets the inside pressure there is a corner.
    void move(const WayPoint& to) {
        const Pascals ambient = water_.absolute_pressure(to.depth);
        const Depth even = water_.depth_at(inside_);
        if (to.depth < even && even < at_.depth) {
            const double share = (at_.depth - even).value() / (at_.depth - to.depth).value();
            at_ = between(at_, to, share);
            keep(Pascals(0.0));
        }
        note_locking(to, ambient);
        at_ = to;
        if (ambient < inside_) inside_ = ambient;
        keep(ambient - inside_);
    }

    /// Opens the tube, unless it is locked.
    void clear() {
        const Pascals outside = water_.absolute_pressure(at_.depth);
        if ((outside - inside_).value() >= eustachian_tube_locking.value()) return;
        inside_ = outside;
        keep(Pascals(0.0));
    }

    /// Depth at which the ear was last even with the water.
    [[nodiscard]] Depth even_depth() const { return water_.depth_at(inside_); }
    [[nodiscard]] const std::vector<EarPoint>& points() const { return points_; }
    [[nodiscard]] std::optional<Depth> locked_at() const { return locked_at_; }

private:
    void keep(Pascals difference) { points_.push_back({at_.time, at_.depth, difference}); }

    void note_locking(const WayPoint& to, Pascals ambient) {
        if (locked_at_ || (ambient - inside_).value() < eustachian_tube_locking.value()) return;
        locked_at_ = std::min(to.depth, water_.depth_at(inside_ + eustachian_tube_locking));
    }

    const WaterColumn& water_;
    Pascals inside_;
    WayPoint at_;
    std::vector<EarPoint> points_;
    std::optional<Depth> locked_at_;
};

/// Share of a leg at which the ear has gone another step down since it was even; none: not on it.
std::optional<double> next_step(const MiddleEar& ear, const WayPoint& from, const WayPoint& to,
                                double step) {
    const double down = (to.depth - from.depth).value();
    const double way = ear.even_depth().meters().value() + step - from.depth.meters().value();
    if (down <= 0.0 || way < -together || way > down + together) return std::nullopt;
    return std::clamp(way / down, 0.0, 1.0);
}

void walk_by_step(MiddleEar& ear, const WayPoint& from, const WayPoint& to, double step) {
    while (const auto share = next_step(ear, from, to, step)) {
        ear.move(between(from, to, *share));
        const Depth even = ear.even_depth();
        ear.clear();
        // A locked ear stays even where it was: trying again there changes nothing.
        if (ear.even_depth() == even || *share >= 1.0) break;
    }
    ear.move(to);
}

void walk_by_interval(MiddleEar& ear, const WayPoint& from, const WayPoint& to, double start,
                      double interval) {
    const double length = (to.time - from.time).value();
    const double first = std::floor((from.time.value() - start) / interval + together) + 1.0;
    for (double n = first;; n += 1.0) {
        const double share = (start + n * interval - from.time.value()) / length;
        if (share > 1.0 + together) break;
        ear.move(between(from, to, std::min(share, 1.0)));
        ear.clear();
    }
    ear.move(to);
}

Pascals largest_of(const std::vector<EarPoint>& points) {
    Pascals largest(0.0);
    for (const EarPoint& point : points) largest = std::max(largest, point.difference);
    return largest;
}

/// The trace of a checked way; `walk` takes the cleared ear along one leg.
template <typename Walk>
EarTrace trace(const WaterColumn& water, const std::vector<WayPoint>& way, const Walk& walk) {
    MiddleEar cleared(water, way.front());
    MiddleEar never(water, way.front());
    for (std::size_t i = 1; i < way.size(); ++i) {
        walk(cleared, way[i - 1], way[i]);
        never.move(way[i]);
    }
    return {cleared.points(), never.points(), largest_of(cleared.points()), cleared.locked_at()};
}

}  // namespace

Result<EarTrace> ear_trace_by_step(const WaterColumn& water, const std::vector<WayPoint>& way,
                                   Meters step) {
    if (const auto error = refused(way)) return *error;
    if (const auto error = outside_range("step", step.value(), 0.1, 20.0, "m")) return *error;
    return trace(water, way, [&](MiddleEar& ear, const WayPoint& from, const WayPoint& to) {
        walk_by_step(ear, from, to, step.value());
    });
}

Result<EarTrace> ear_trace_by_interval(const WaterColumn& water, const std::vector<WayPoint>& way,
                                       Seconds interval) {
    if (const auto error = refused(way)) return *error;
    if (const auto error = outside_range("interval", interval.value(), 1.0, 600.0, "s")) {
        return *error;
    }
    const double start = way.front().time.value();
    return trace(water, way, [&](MiddleEar& ear, const WayPoint& from, const WayPoint& to) {
        walk_by_interval(ear, from, to, start, Minutes(interval).value());
    });
}

Result<std::vector<WayPoint>> straight_descent(Depth deepest, MetersPerMinute rate) {
    const double bottom = deepest.meters().value();
    if (const auto error = outside_range("deepest", bottom, 0.1, 60.0, "m")) return *error;
    if (const auto error = outside_range("rate", rate.value(), 1.0, 30.0, "m/min")) return *error;
    return std::vector<WayPoint>{{Minutes(0.0), Depth()},
                                 {Minutes(bottom / rate.value()), deepest}};
}

Result<Meters> largest_clearing_step(const WaterColumn& water, double margin) {
    if (const auto error = outside_range("margin", margin, 0.1, 1.0, "")) return *error;
    const Depth deep(Meters(60.0));
    const Pascals upper = water.absolute_pressure(deep) - eustachian_tube_locking * margin;
    return deep - water.depth_at(upper);
}

}  // namespace leadline
