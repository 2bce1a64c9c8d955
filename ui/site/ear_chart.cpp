// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/ear_chart.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/document/session_document.h"
#include "ui/site/ear_lung_words.h"
#include "ui/document/place_water.h"
#include "ui/site/profile_labels.h"

namespace leadline {
namespace {

// A clearing's depth, reckoned in another way, may lie a rounding error beside its point.
constexpr double same_depth = 1e-6;

/// The most at a depth on one trace.
Pascals most_at(const std::vector<EarPoint>& points, Depth depth) {
    const double wanted = depth.meters().value();
    Pascals most(0.0);
    for (std::size_t i = 1; i < points.size(); ++i) {
        const EarPoint& from = points[i - 1];
        const EarPoint& to = points[i];
        const double a = from.depth.meters().value();
        const double b = to.depth.meters().value();
        if (wanted < std::min(a, b) - same_depth || wanted > std::max(a, b) + same_depth) continue;
        if (std::abs(a - b) <= same_depth) {
            most = std::max({most, from.difference, to.difference});
            continue;
        }
        const double share = std::clamp((wanted - a) / (b - a), 0.0, 1.0);
        most = std::max(most, from.difference + (to.difference - from.difference) * share);
    }
    return most;
}

}  // namespace

EarReading ear_reading(const EarTrace& trace, Depth depth) {
    return {most_at(trace.cleared, depth), most_at(trace.never_cleared, depth)};
}

EarChart::EarChart(SessionDocument& document, QWidget* parent) : MarkerChart(document, parent) {
    setObjectName(QStringLiteral("ear_chart"));
    setAccessibleName(tr("Pressure on the eardrum on the way down"));
    refresh();
}

const EarLungCharts& EarChart::charts() const { return document_.plan().ears_and_lungs; }

Meters EarChart::water_of(Pascals difference) const {
    return water_ ? water_->water_height(difference) : Meters(0.0);
}

QString EarChart::water_text(Pascals difference) const {
    return length_below(water_of(difference), document_.units());
}

double EarChart::x_of(Depth depth) const {
    return plot_.left() + depth.meters().value() / deepest_ * plot_.width();
}

double EarChart::y_of(Pascals difference) const {
    return plot_.bottom() - difference.value() / top_.value() * plot_.height();
}

std::vector<QPointF> EarChart::line_of(const std::vector<EarPoint>& points) const {
    std::vector<QPointF> line;
    line.reserve(points.size());
    for (const EarPoint& point : points) {
        line.emplace_back(x_of(point.depth), y_of(point.difference));
    }
    return line;
}

std::vector<EarChart::Threshold> EarChart::thresholds() const {
    const EarLungCharts& ears = charts();
    const auto named = [](const QString& words, ChartLabel::Ink ink, bool strong) {
        ChartLabel label;
        label.text = words;
        label.ink = ink;
        label.strong = strong;
        return label;
    };
    // From the bottom up.
    return {{ears.opening_most,
             named(tr("Needs opening\n%1 to %2")
                       .arg(text(water_of(ears.opening_least), document_.units()),
                            text(water_of(ears.opening_most), document_.units())),
                   ChartLabel::Ink::plain, false),
             Qt::NoPen},
            {ears.locking,
             named(tr("Tube locks\nfrom %1").arg(water_text(ears.locking)),
                   ChartLabel::Ink::stop, true),
             Qt::SolidLine},
            {ears.scarred_drum_tears,
             named(tr("A scarred drum\ntore at %1").arg(water_text(ears.scarred_drum_tears)),
                   ChartLabel::Ink::stop, false),
             Qt::DashDotLine},
            {ears.drum_tears,
             named(tr("A healthy drum\ntore at %1").arg(water_text(ears.drum_tears)),
                   ChartLabel::Ink::stop, false),
             Qt::DashLine}};
}

void EarChart::lay_out() {
    labels_.clear();
    const Result<WaterColumn> water = place_water(document_);
    water_ = water ? std::optional<WaterColumn>(*water) : std::nullopt;
    constexpr double room_above = 1.1;
    top_ = charts().drum_tears * room_above;
    constexpr double least_meters = 0.1;
    deepest_ = std::max(least_meters, document_.plan().environment.deepest.meters().value());

    const QFontMetricsF metrics(font());
    double left = 0.0;
    for (const ChartMark& mark : chart_marks(water_of(top_).value(), 1.0, document_.units(), 0.0)) {
        left = std::max(left, metrics.horizontalAdvance(mark.text));
    }
    double right = 0.0;
    for (const Threshold& threshold : thresholds()) {
        right = std::max(right, size_of(threshold.label).width());
    }
    const double line = metrics.height();
    plot_ = QRectF(QPointF(left + 12.0, line + 8.0),
                   QPointF(std::max(left + 60.0, width() - right - 16.0),
                           std::max(line + 60.0, height() - line - 12.0)));
    cleared_ = line_of(charts().ears.cleared);
    never_ = line_of(charts().ears.never_cleared);

    ChartLabel axis;
    axis.text = document_.units() == UnitSystem::imperial ? tr("Feet of water on the eardrum")
                                                          : tr("Metres of water on the eardrum");
    axis.ink = ChartLabel::Ink::faint;
    put(axis, QPointF(4.0, 2.0));
    place_thresholds();
    name_never_cleared();
    name_cleared();
}

void EarChart::place_thresholds() {
    const std::vector<Threshold> lines = thresholds();
    double free_below = height();
    for (const Threshold& threshold : lines) {
        const QSizeF size = size_of(threshold.label);
        double top = y_of(threshold.at) - size.height() / 2.0;
        if (threshold.style == Qt::NoPen) {  // a band is named at its middle
            const Pascals middle = (charts().opening_least + charts().opening_most) / 2.0;
            top = y_of(middle) - size.height() / 2.0;
        }
        top = std::min(top, free_below - size.height());
        free_below = top - 2.0;
        put(threshold.label, QPointF(plot_.right() + 12.0, top));
    }
}

bool EarChart::put_free(const ChartLabel& label, const std::vector<QPointF>& places) {
    const QSizeF size = size_of(label);
    const auto runs_through = [&](const std::vector<QPointF>& line, const QRectF& box) {
        for (std::size_t i = 1; i < line.size(); ++i) {
            if (crosses(box, QLineF(line[i - 1], line[i]))) return true;
        }
        return false;
    };
    for (const QPointF& place : places) {
        const QRectF box(place, size);
        if (!plot_.contains(box) || covers_a_label(box)) continue;
        if (runs_through(cleared_, box) || runs_through(never_, box)) continue;
        put(label, place);
        return true;
    }
    return false;
}

double EarChart::slope() const {
    return plot_.height() / std::max(0.01, water_of(top_).value()) / (plot_.width() / deepest_);
}

std::vector<QPointF> EarChart::beside_locking(const QSizeF& size) const {
    const QPointF lock(x_of(document_.plan().environment.ladder.locks_at), y_of(charts().locking));
    const double above = lock.y() - size.height() - 4.0;
    // Right of the rising line, from where it has risen above the words; or left of it.
    const double clear = (size.height() + 6.0) / slope() + 12.0;
    return {{lock.x() + clear, above}, {lock.x() - size.width() - 10.0, above}};
}

void EarChart::name_never_cleared() {
    const Environment& place = document_.plan().environment;
    const bool locks = place.deepest >= place.ladder.locks_at;
    const QString depth = length_below(place.ladder.locks_at.meters(), document_.units());
    ChartLabel wide;
    wide.veiled = true;
    wide.strong = locks;
    wide.ink = locks ? ChartLabel::Ink::stop : ChartLabel::Ink::plain;
    wide.text = locks ? tr("Never cleared: locks at %1").arg(depth) : tr("Never cleared");
    ChartLabel narrow = wide;
    narrow.text.replace(QStringLiteral(": "), QStringLiteral(":\n"));
    for (const ChartLabel& label : {wide, narrow}) {
        if (put_free(label, beside_locking(size_of(label)))) return;
    }
    // Over the rising line: over its end, or as low as it lets the words stand.
    const QSizeF size = size_of(wide);
    double highest = y_of(charts().locking);
    for (const QPointF& point : never_) highest = std::min(highest, point.y());
    const double low = plot_.bottom() - (size.width() + 6.0) * slope();
    put_free(wide, {{plot_.right() - size.width() - 4.0, highest - size.height() - 6.0},
                    {plot_.left() + 6.0, low - size.height() - 6.0},
                    {plot_.left() + 6.0, plot_.top() + 4.0}});
}

void EarChart::name_cleared() {
    const EarLungCharts& ears = charts();
    ChartLabel cleared;
    cleared.veiled = true;
    cleared.strong = true;
    cleared.ink = ChartLabel::Ink::accent;
    cleared.text = tr("Cleared every %1").arg(length_below(ears.step, document_.units()));
    const QSizeF size = size_of(cleared);
    const double lock = y_of(ears.locking);
    const double between = (y_of(ears.ears.largest) + lock) / 2.0 - size.height() / 2.0;
    const double over_lock = lock - size.height() - 4.0;
    const double last = plot_.right() - size.width() - 4.0;
    put_free(cleared, {{last, between},
                       {plot_.left() + 6.0, lock + 3.0},
                       {last, over_lock},
                       {plot_.left() + 6.0, over_lock},
                       {last, over_lock - size.height()},
                       {last, plot_.top() + 4.0}});
}

std::vector<Depth> EarChart::stops() const {
    const double unit = document_.units() == UnitSystem::imperial ? 0.5 * 0.3048 : 0.1;
    const double deepest = document_.plan().environment.deepest.meters().value();
    std::vector<Depth> depths;
    constexpr double slack = 1e-9;
    for (int i = 0; i * unit < deepest - slack; ++i) depths.emplace_back(Meters(i * unit));
    depths.push_back(document_.plan().environment.deepest);
    return depths;
}

QString EarChart::state_at(Pascals difference) const {
    const EarLungCharts& ears = charts();
    const auto reaches = [&](Pascals threshold) {
        return tenths_below(water_of(difference), document_.units()) >=
               tenths_below(water_of(threshold), document_.units());
    };
    if (reaches(ears.drum_tears)) return tr("any drum can tear");
    if (reaches(ears.scarred_drum_tears)) return tr("a scarred drum can tear");
    if (reaches(ears.locking)) return tr("tube locked");
    if (reaches(ears.opening_least)) return tr("needs opening");
    return tr("nothing felt yet");
}

QString EarChart::reading_at(Depth depth) const {
    const EarReading ear = ear_reading(charts().ears, depth);
    const auto line = [&](const QString& who, Pascals difference) {
        // What weighs on the ear is rounded to the nearest: it is no limit.
        return tr("%1: %2, %3")
            .arg(who, text(water_of(difference), document_.units()), state_at(difference));
    };
    return tr("%1 deep, water on the eardrum:").arg(text(depth.meters(), document_.units())) +
           u'\n' + line(tr("Cleared"), ear.cleared) + u'\n' +
           line(tr("Never cleared"), ear.never_cleared);
}

std::vector<QPointF> EarChart::dots_at(Depth depth) const {
    const EarReading ear = ear_reading(charts().ears, depth);
    std::vector<QPointF> dots{{x_of(depth), y_of(ear.cleared)}};
    if (ear.never_cleared <= top_) dots.emplace_back(x_of(depth), y_of(ear.never_cleared));
    return dots;
}

QRectF EarChart::reading_box(const QSizeF& size, Depth depth) const {
    const double x = x_of(depth);
    QRectF box(QPointF(x + 12.0, plot_.top() + 6.0), size);
    if (box.right() <= plot_.right()) return box;
    box.moveRight(x - 12.0);
    if (box.left() >= plot_.left()) return box;
    // Neither side has the room: over or under the higher dot.
    box.moveLeft(std::max(plot_.left(), std::min(x - size.width() / 2.0,
                                                 plot_.right() - size.width())));
    const double dot = dots_at(depth).back().y();
    if (dot < box.bottom() + 8.0) box.moveTop(dot + 10.0);
    return box;
}

QString EarChart::summary() const {
    return ear_sentence(document_.plan(), document_.units()) + u' ' +
           ear_step_sentence(document_.plan(), document_.units());
}

QString EarChart::literature(const std::optional<Depth>& at) const {
    const EarLungCharts& ears = charts();
    QString words;
    if (at) {
        const EarReading ear = ear_reading(ears.ears, *at);
        words = tr("At %1: cleared %2, never cleared %3.\n")
                    .arg(text(at->meters(), document_.units()), mmhg_text(ear.cleared),
                         mmhg_text(ear.never_cleared));
    }
    return words + tr("In the literature: the tube needs opening at %1 to %2 and locks at %3 (80 "
                      "to 90; the lower end is the safe side). In the laboratory, scarred drums "
                      "tore from %4, healthy ones from %5 (Jensen and Bonding, 1993). Pain comes "
                      "far earlier.")
                       .arg(mmhg_text(ears.opening_least), mmhg_text(ears.opening_most),
                            mmhg_text(ears.locking), mmhg_text(ears.scarred_drum_tears),
                            mmhg_text(ears.drum_tears));
}

}  // namespace leadline
