// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/lung_chart.h"

#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/body/lungs.h"
#include "ui/document/session_document.h"
#include "ui/site/ear_lung_words.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr double gap = 6.0;

}  // namespace

LungChart::LungChart(SessionDocument& document, QWidget* parent) : MarkerChart(document, parent) {
    setObjectName(QStringLiteral("lung_chart"));
    setAccessibleName(tr("Held breath on the way up"));
    refresh();
}

const std::vector<HeldBreathLimit>& LungChart::limits() const {
    return document_.plan().ears_and_lungs.lungs;
}

const HeldBreathLimit* LungChart::limit_at(Depth depth) const {
    const auto& all = limits();
    const auto found = std::find_if(all.begin(), all.end(), [&](const HeldBreathLimit& limit) {
        return limit.from == depth;
    });
    return found == all.end() ? nullptr : &*found;
}

/// Areas are as the volumes: eyes compare discs by their area.
double LungChart::radius(double expansion) const {
    return fontMetrics().height() * 0.45 * std::sqrt(expansion);
}

double LungChart::x_of(Depth depth) const {
    const double pad = radius(limits().empty() ? 1.0 : limits().back().expansion) + gap;
    return plot_.left() + pad +
           depth.meters().value() / deepest_ * (plot_.width() - 2.0 * pad);
}

double LungChart::y_of(Depth depth) const {
    return plot_.top() +
           depth.meters().value() / deepest_ * (plot_.height() - radius(1.0) - gap);
}

void LungChart::lay_out() {
    labels_.clear();
    columns_.clear();
    if (limits().empty()) return;
    constexpr double least_meters = 0.1;
    deepest_ = std::max(least_meters, limits().back().from.meters().value());
    const QFontMetricsF metrics(font());
    const double line = metrics.height();
    double left = 0.0;
    for (const ChartMark& mark : chart_marks(deepest_, 1.0, document_.units(), 0.0)) {
        left = std::max(left, metrics.horizontalAdvance(mark.text));
    }
    const double above = 2.0 * line + 2.0 * radius(limits().back().expansion) + 3.0 * gap;
    plot_ = QRectF(QPointF(left + 12.0, above),
                   QPointF(std::max(left + 60.0, width() - 8.0),
                           std::max(above + 60.0, height() - 8.0)));
    choose_columns();
    place_names();
}

void LungChart::choose_columns() {
    const auto& all = limits();
    const double spacing = lung_chart_spacing.value();
    const double words = QFontMetricsF(font()).horizontalAdvance(growth_text(1.1));
    // More columns than eight say nothing more.
    const double wanted = std::max(
        {words + 10.0, 2.0 * radius(all.back().expansion) + 10.0, plot_.width() / 9.0});
    const double pitch = x_of(Depth(Meters(spacing))) - x_of(Depth());
    static constexpr std::array every{1, 2, 4, 10, 20, 40};  // 0.5, 1, 2, 5, 10, 20 m
    const int stride = *std::find_if(every.begin(), every.end() - 1,
                                     [&](int steps) { return steps * pitch >= wanted; });
    for (std::size_t i = static_cast<std::size_t>(stride); i + 1 < all.size();
         i += static_cast<std::size_t>(stride)) {
        if (x_of(all.back().from) - x_of(all[i].from) >= wanted) columns_.push_back(all[i]);
    }
    columns_.push_back(all.back());
}

bool LungChart::put_free(const ChartLabel& label, const std::vector<QPointF>& places) {
    const QSizeF size = size_of(label);
    for (const QPointF& place : places) {
        const QRectF box(place, size);
        if (!plot_.contains(box) || covers_a_label(box)) continue;
        const bool on_a_bar =
            std::any_of(columns_.begin(), columns_.end(), [&](const HeldBreathLimit& limit) {
                const double half = radius(1.0) + 3.0;
                const double x = x_of(limit.from);
                const Meters up = limit.ascent.value_or(Meters(0.0));
                const QPointF from(x - half, y_of(Depth(limit.from.meters() - up)));
                const QPointF to(x + half, y_of(limit.from) + half);
                return QRectF(from, to).intersects(box);
            });
        if (on_a_bar) continue;
        put(label, place);
        return true;
    }
    return false;
}

void LungChart::place_names() {
    ChartLabel caption;
    caption.text = tr("The same breath at the surface");
    caption.ink = ChartLabel::Ink::faint;
    put(caption, QPointF(4.0, 2.0));
    const QFontMetricsF metrics(font());
    for (const HeldBreathLimit& limit : columns_) {
        ChartLabel growth;
        growth.text = growth_text(limit.expansion);
        growth.strong = limit.from == limits().back().from;
        growth.align = Qt::AlignCenter;
        const QSizeF size = size_of(growth);
        put(growth, QPointF(x_of(limit.from) - size.width() / 2.0, metrics.height() + gap));
    }
    const HeldBreathLimit& last = columns_.back();
    ChartLabel start;
    start.text = tr("A full breath held here");
    start.strong = true;
    const QSizeF size = size_of(start);
    std::vector<QPointF> places;
    for (auto limit = columns_.rbegin(); limit != columns_.rend(); ++limit) {
        places.emplace_back(x_of(limit->from) - radius(1.0) - size.width() - 8.0,
                            y_of(limit->from) - size.height() / 2.0);
    }
    places.emplace_back(plot_.left() + 4.0, plot_.bottom() - size.height() - 2.0);
    put_free(start, places);

    if (!last.ascent) return;
    const QString up = length_below(document_.plan().environment.breath_danger_ascent,
                                    document_.units());
    // On two lines where one finds no room.
    for (const QString& words : {tr("%1 up: a lung can tear"), tr("%1 up:\na lung can tear")}) {
        ChartLabel torn;
        torn.veiled = true;
        torn.strong = true;
        torn.ink = ChartLabel::Ink::stop;
        torn.text = words.arg(up);
        if (put_free(torn, beside_ends(size_of(torn)))) return;
    }
}

std::vector<QPointF> LungChart::beside_ends(const QSizeF& size) const {
    std::vector<QPointF> places;
    for (const HeldBreathLimit& limit : columns_) {
        if (!limit.ascent) continue;
        const QPointF end(x_of(limit.from), y_of(Depth(limit.from.meters() - *limit.ascent)));
        places.emplace_back(end.x() + 12.0, end.y() - size.height() / 2.0 - 4.0);
        places.emplace_back(end.x() + 12.0, end.y() - size.height() - 4.0);
    }
    places.emplace_back(plot_.right() - size.width() - 4.0, plot_.top() + 4.0);
    for (const HeldBreathLimit& limit : columns_) {
        if (!limit.ascent) continue;
        const QPointF end(x_of(limit.from), y_of(Depth(limit.from.meters() - *limit.ascent)));
        places.emplace_back(end.x() - size.width() - 12.0, end.y() + 4.0);
    }
    return places;
}

std::vector<Depth> LungChart::stops() const {
    std::vector<Depth> depths;
    depths.reserve(limits().size());
    for (const HeldBreathLimit& limit : limits()) depths.push_back(limit.from);
    return depths;
}

QString LungChart::reading_at(Depth depth) const {
    const HeldBreathLimit* limit = limit_at(depth);
    if (limit == nullptr) return {};
    const UnitSystem units = document_.units();
    const QString from = text(limit->from.meters(), units);
    const QString start = tr("From %1, full lungs:").arg(from) + u'\n';
    const QString grown = u'\n' + tr("at the surface %1").arg(growth_text(limit->expansion));
    if (!limit->ascent) return start + tr("surface before the limit") + grown;
    return start + tr("can tear after %1").arg(length_below(*limit->ascent, units)) + grown;
}

// Left of and below the bars the water is empty.
QRectF LungChart::reading_box(const QSizeF& size, Depth) const {
    const double line = fontMetrics().height();
    return {QPointF(plot_.left() + 4.0, plot_.bottom() - size.height() - line - 8.0), size};
}

std::vector<QPointF> LungChart::dots_at(Depth depth) const {
    std::vector<QPointF> dots{{x_of(depth), y_of(depth)}};
    const HeldBreathLimit* limit = limit_at(depth);
    if (limit != nullptr && limit->ascent) {
        dots.emplace_back(x_of(depth), y_of(Depth(depth.meters() - *limit->ascent)));
    }
    return dots;
}

QString LungChart::summary() const { return lung_sentence(document_.plan(), document_.units()); }

QString LungChart::literature(const std::optional<Depth>&) const {
    return tr("In the literature: lungs tore from %1 to 80 mmHg across them (Schaefer and others, "
              "1958; Malhotra and Wright, 1961; from memory; the lower end is the safe side). "
              "Divers were hurt coming up from 1 m (Benton and others, 1996) and from 1 to 2 m "
              "(Harvey and others, 2024).")
        .arg(mmhg_text(lung_tearing_lowest));
}

void LungChart::draw_water(QPainter& painter) const {
    const Inks colours = inks(palette());
    const bool light = shade_of(palette()) == Shade::light;
    QLinearGradient depth(plot_.topLeft(), plot_.bottomLeft());
    depth.setColorAt(0.0, colours.water);
    depth.setColorAt(1.0, light ? colours.water.darker(112) : colours.water.darker(140));
    painter.fillRect(plot_, depth);
    const QFontMetricsF metrics(font());
    const double line = metrics.height();
    const double pixels = y_of(Depth(Meters(deepest_))) - plot_.top();
    for (const ChartMark& mark :
         chart_marks(deepest_, pixels, document_.units(), line * 1.6)) {
        const double y = y_of(Depth(Meters(mark.meters)));
        painter.setPen(QPen(colours.rule, 1.0, Qt::DotLine));
        painter.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right(), y));
        painter.setPen(colours.faint);
        painter.drawText(QRectF(0.0, y - line / 2.0, plot_.left() - 8.0, line),
                         Qt::AlignRight | Qt::AlignVCenter, mark.text);
    }
    // Past the limit, hatched: from the ends of the bars to the surface.
    QPainterPath past;
    past.moveTo(x_of(limits().back().from), plot_.top());
    for (auto limit = limits().rbegin(); limit != limits().rend() && limit->ascent; ++limit) {
        past.lineTo(x_of(limit->from), y_of(Depth(limit->from.meters() - *limit->ascent)));
    }
    QColor torn = colours.stop;
    torn.setAlphaF(0.16F);
    painter.fillPath(past, QBrush(torn, Qt::BDiagPattern));
    painter.setPen(QPen(colours.note, 1.5));
    painter.drawLine(plot_.topLeft(), plot_.topRight());
}

void LungChart::draw_column(QPainter& painter, const HeldBreathLimit& limit) const {
    const Inks colours = inks(palette());
    const double x = x_of(limit.from);
    const double start = y_of(limit.from);
    const double end =
        limit.ascent ? y_of(Depth(limit.from.meters() - *limit.ascent)) : start;
    painter.setPen(QPen(colours.faint, 1.0, Qt::DotLine));
    painter.drawLine(QPointF(x, plot_.top()), QPointF(x, end));
    painter.setPen(QPen(colours.accent, 1.8));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawEllipse(QPointF(x, start), radius(1.0), radius(1.0));
    // Over the ring: on a very deep dive the bar is shorter than that.
    if (limit.ascent) {
        QPen bar(colours.stop, 4.0);
        bar.setCapStyle(Qt::FlatCap);
        painter.setPen(bar);
        painter.drawLine(QPointF(x, start), QPointF(x, end));
        painter.setPen(QPen(colours.stop, 2.4));
        painter.drawLine(QPointF(x - 7.0, end), QPointF(x + 7.0, end));
    }
    painter.setPen(QPen(colours.accent, 1.8));
    // Above the water: as large as it would be, and in it as large as it was.
    const double grown = radius(limit.expansion);
    const QPointF middle(x, plot_.top() - gap / 2.0 - grown);
    QColor air = colours.accent;
    air.setAlphaF(0.22F);
    painter.setBrush(air);
    painter.drawEllipse(middle, grown, grown);
    painter.setPen(QPen(colours.accent, 1.0, Qt::DotLine));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawEllipse(middle, radius(1.0), radius(1.0));
}

void LungChart::draw(QPainter& painter) const {
    if (limits().empty()) return;
    painter.setFont(font());
    draw_water(painter);
    for (const HeldBreathLimit& limit : columns_) draw_column(painter, limit);
}

}  // namespace leadline
