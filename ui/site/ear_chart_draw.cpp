// SPDX-License-Identifier: GPL-3.0-or-later
// How the ear chart is drawn; where things stand is decided in ear_chart.cpp.
#include <QPainter>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/site/ear_chart.h"
#include "ui/widgets/theme.h"

namespace leadline {

void EarChart::draw_grounds(QPainter& painter) const {
    const Inks colours = inks(palette());
    painter.fillRect(plot_, palette().color(QPalette::Base));
    const QRectF opening(QPointF(plot_.left(), y_of(charts().opening_most)),
                         QPointF(plot_.right(), y_of(charts().opening_least)));
    painter.fillRect(opening, colours.water);
    // Beyond the locking: hatched, so that a black and white copy says so too.
    QColor locked = colours.stop;
    locked.setAlphaF(0.16F);
    painter.fillRect(QRectF(plot_.topLeft(), QPointF(plot_.right(), y_of(charts().locking))),
                     QBrush(locked, Qt::BDiagPattern));
}

void EarChart::draw_scales(QPainter& painter) const {
    const Inks colours = inks(palette());
    const QFontMetricsF metrics(font());
    const double line = metrics.height();
    const double top = water_of(top_).value();
    painter.setPen(colours.faint);
    for (const ChartMark& mark :
         chart_marks(top, plot_.height(), document_.units(), line * 1.6)) {
        const double y = plot_.bottom() - mark.meters / top * plot_.height();
        painter.drawLine(QPointF(plot_.left() - 4.0, y), QPointF(plot_.left(), y));
        if (mark.meters == 0.0) continue;  // the corner belongs to the scale of depth
        painter.drawText(QRectF(0.0, y - line / 2.0, plot_.left() - 8.0, line),
                         Qt::AlignRight | Qt::AlignVCenter, mark.text);
    }
    const double wide = metrics.horizontalAdvance(text(Depth(Meters(60.0)), document_.units()));
    double taken = -1.0;
    for (const ChartMark& mark :
         chart_marks(deepest_, plot_.width(), document_.units(), wide + 16.0)) {
        const double x = x_of(Depth(Meters(mark.meters)));
        painter.drawLine(QPointF(x, plot_.bottom()), QPointF(x, plot_.bottom() + 4.0));
        const QRectF box(x - wide / 2.0 - 4.0, plot_.bottom() + 6.0, wide + 8.0, line);
        painter.drawText(box, Qt::AlignCenter, mark.text);
        taken = box.right();
    }
    const QString words = tr("deep");
    const double room = metrics.horizontalAdvance(words) + 4.0;
    if (taken + room < width()) {
        painter.drawText(QRectF(taken + 2.0, plot_.bottom() + 6.0, room, line), Qt::AlignVCenter,
                         words);
    }
    painter.setPen(QPen(colours.faint, 1.2));
    painter.drawLine(plot_.bottomLeft(), plot_.bottomRight());
}

void EarChart::draw_thresholds(QPainter& painter) const {
    const Inks colours = inks(palette());
    for (const Threshold& threshold : thresholds()) {
        if (threshold.style == Qt::NoPen) continue;
        const double y = y_of(threshold.at);
        painter.setPen(QPen(colours.stop, threshold.label.strong ? 2.0 : 1.3, threshold.style));
        painter.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right() + 6.0, y));
    }
}

void EarChart::draw_traces(QPainter& painter) const {
    const Inks colours = inks(palette());
    painter.save();
    painter.setClipRect(plot_.adjusted(-3.0, 0.0, 3.0, 3.0));
    QPen pen(palette().color(QPalette::Text), 2.2);
    pen.setDashPattern({4.0, 2.5});
    painter.setPen(pen);
    painter.drawPolyline(never_.data(), static_cast<int>(never_.size()));
    QPen saw(colours.accent, 2.2);
    saw.setJoinStyle(Qt::MiterJoin);
    painter.setPen(saw);
    painter.drawPolyline(cleared_.data(), static_cast<int>(cleared_.size()));
    painter.restore();
    const Environment& place = document_.plan().environment;
    if (place.deepest < place.ladder.locks_at) return;
    painter.setPen(QPen(colours.stop, 2.0));
    painter.setBrush(palette().color(QPalette::Base));
    const QPointF at(x_of(place.ladder.locks_at), y_of(charts().locking));
    painter.drawRect(QRectF(at.x() - 5.0, at.y() - 5.0, 10.0, 10.0));
}

void EarChart::draw(QPainter& painter) const {
    painter.setFont(font());
    draw_grounds(painter);
    draw_scales(painter);
    draw_thresholds(painter);
    draw_traces(painter);
}

}  // namespace leadline
