// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_labels.h"

#include <algorithm>

namespace leadline {

bool crosses(const QRectF& box, const QLineF& line) {
    if (box.contains(line.p1()) || box.contains(line.p2())) return true;
    const QLineF edges[] = {{box.topLeft(), box.topRight()},
                            {box.topRight(), box.bottomRight()},
                            {box.bottomRight(), box.bottomLeft()},
                            {box.bottomLeft(), box.topLeft()}};
    return std::any_of(std::begin(edges), std::end(edges), [&](const QLineF& edge) {
        return line.intersects(edge, nullptr) == QLineF::BoundedIntersection;
    });
}

namespace {

constexpr double clear_of_line = 8.0;

class Placer {
public:
    Placer(const ProfileScene& scene, const QRectF& area, const QFontMetricsF& metrics)
        : scene_(scene), area_(area), metrics_(metrics) {}

    std::vector<ProfileLabel> run(const QString& clearing) {
        for (const ProfileLeg& leg : scene_.legs) {
            if (leg.warning) place_leg(leg, true);
        }
        for (const DepthLine& line : scene_.lines) place_level(line);
        for (const ProfileLeg& leg : scene_.legs) {
            if (!leg.warning && !leg.steep) place_leg(leg, false);
        }
        for (const ProfileLeg& leg : scene_.legs) {
            if (!leg.warning && leg.steep) place_leg(leg, false);
        }
        place_clearing(clearing);
        return std::move(placed_);
    }

private:
    [[nodiscard]] QSizeF size_of(const ProfileLabel& label) const {
        const double shape = label.severity ? label_shape + label_gap : 0.0;
        const QSizeF words = metrics_.size(0, label.text);  // of as many lines as it has
        return {words.width() + shape + 2.0, words.height()};
    }
    [[nodiscard]] bool is_free(const QRectF& box) const {
        if (!area_.contains(box)) return false;
        const auto taken = [&](const ProfileLabel& label) { return label.box.intersects(box); };
        const auto covered = [&](const ProfileLeg& leg) { return crosses(box, leg.line); };
        return std::none_of(placed_.begin(), placed_.end(), taken) &&
               std::none_of(scene_.legs.begin(), scene_.legs.end(), covered);
    }
    /// The first free place. Without one, a label that must be seen goes down line by line from its
    /// first place until it covers no other label; over the dive's line if need be.
    void put(ProfileLabel label, const std::vector<QPointF>& places, bool must) {
        const QSizeF size = size_of(label);
        for (const QPointF& place : places) {
            const QRectF box(place, size);
            if (!is_free(box)) continue;
            label.box = box;
            placed_.push_back(label);
            return;
        }
        if (!must || places.empty()) return;
        QRectF box(places.front(), size);
        box.moveLeft(std::max(area_.left(),
                              std::min(box.left(), area_.right() - box.width())));
        const auto taken = [&] {
            return std::any_of(placed_.begin(), placed_.end(), [&](const ProfileLabel& other) {
                return other.box.intersects(box);
            });
        };
        box.moveTop(std::max(area_.top(), std::min(box.top(), area_.bottom() - box.height())));
        const double first = box.top();
        while (taken() && box.bottom() + size.height() <= area_.bottom()) {
            box.translate(0.0, size.height());
        }
        if (taken()) box.moveTop(first);
        while (taken() && box.top() - size.height() >= area_.top()) {
            box.translate(0.0, -size.height());
        }
        if (taken()) return;
        label.box = box;
        placed_.push_back(label);
    }

    void place_leg(const ProfileLeg& leg, bool must) {
        ProfileLabel label{{}, leg.text, false, leg.warning};
        const QSizeF size = size_of(label);
        std::vector<QPointF> places;
        if (leg.steep) {
            // The water between the way down and the way up is empty: labels lean into it.
            for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8}) {
                const QPointF on = leg.line.pointAt(share);
                // Descents carry the marks of ear clearing on that side.
                const double inner = leg.downward ? on.x() + clear_of_line + 8.0
                                                  : on.x() - size.width() - clear_of_line - 2.0;
                places.emplace_back(inner, on.y() - size.height() / 2.0);
            }
            for (const double share : {0.5, 0.3, 0.7}) {
                const QPointF on = leg.line.pointAt(share);
                const double outer = leg.downward ? on.x() - size.width() - clear_of_line
                                                  : on.x() + clear_of_line;
                places.emplace_back(outer, on.y() - size.height() / 2.0);
            }
        } else {
            const QPointF middle = leg.line.pointAt(0.5);
            const double left = middle.x() - size.width() / 2.0;
            const double top = std::min(leg.line.y1(), leg.line.y2());
            const double bottom = std::max(leg.line.y1(), leg.line.y2());
            places = {{left, top - size.height() - clear_of_line},
                      {left, bottom + clear_of_line},
                      {leg.line.x1() + 2.0, top - size.height() - clear_of_line},
                      {leg.line.x1() + 2.0, bottom + clear_of_line}};
        }
        put(label, places, must);
    }

    void place_level(const DepthLine& line) {
        ProfileLabel label;
        label.faint = line.kind != DepthLine::Kind::limit && !line.broken;
        const double width = scene_.scale.plot.width();
        label.text = metrics_.elidedText(line.text, Qt::ElideRight, width * 0.7);
        if (line.broken && line.kind == DepthLine::Kind::limit) label.severity = Severity::stop;
        const QSizeF size = size_of(label);
        const double right = scene_.scale.plot.right() - size.width() - 8.0;
        const double left = scene_.scale.plot.left() + 8.0;
        const double y = line.in_view ? scene_.scale.y(line.depth)
                                      : scene_.scale.plot.bottom() - 2.0;
        const double above = y - size.height() - 2.0;
        put(label, {{right, above}, {left, above}, {right, y + 2.0}, {left, y + 2.0}}, true);
    }

    void place_clearing(const QString& text) {
        if (text.isEmpty() || scene_.clearing_marks.empty()) return;
        ProfileLabel label{{}, text, true, std::nullopt};
        const QSizeF size = size_of(label);
        std::vector<QPointF> places;
        for (const double share : {0.25, 0.4, 0.1, 0.6, 0.8}) {
            const auto last = static_cast<double>(scene_.clearing_marks.size() - 1);
            const QPointF on = scene_.clearing_marks[static_cast<std::size_t>(share * last)];
            places.emplace_back(on.x() + clear_of_line + 8.0, on.y() - size.height() / 2.0);
        }
        put(label, places, false);
    }

    const ProfileScene& scene_;
    QRectF area_;
    QFontMetricsF metrics_;
    std::vector<ProfileLabel> placed_;
};

}  // namespace

std::vector<ProfileLabel> place_labels(const ProfileScene& scene, const QRectF& area,
                                       const QFontMetricsF& metrics, const QString& clearing) {
    return Placer(scene, area, metrics).run(clearing);
}

}  // namespace leadline
