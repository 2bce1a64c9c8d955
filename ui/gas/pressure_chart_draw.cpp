// SPDX-License-Identifier: GPL-3.0-or-later
// What the chart draws over its lines: reserve, planned end, where the reserve is met, labels.
#include <QPainter>
#include <algorithm>

#include "ui/gas/pressure_chart.h"
#include "ui/widgets/theme.h"

namespace leadline {

QString PressureChart::reserve_text() const {
    return tr("Reserve %1").arg(text(content_.reserve, content_.units));
}

void PressureChart::draw_reserve(QPainter& painter) const {
    const double y = place_of(Minutes(0.0), content_.reserve).y();
    painter.setPen(QPen(palette().color(QPalette::Text), 1.4, Qt::DashLine));
    painter.drawLine(QPointF(plot_.left(), y), QPointF(planned_end_x(), y));
    const QString words = reserve_text();
    const QFontMetricsF metrics(font());
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QRectF(plot_.left() + 8.0, y + 2.0, metrics.horizontalAdvance(words) + 2.0,
                            metrics.height()),
                     Qt::AlignLeft | Qt::AlignVCenter, words);
}

void PressureChart::draw_end(QPainter& painter) const {
    const Inks colours = inks(palette());
    painter.setPen(QPen(colours.faint, 1.2, Qt::DotLine));
    const double x = planned_end_x();
    painter.drawLine(QPointF(x, plot_.top()), QPointF(x, plot_.bottom()));
    const QString words = tr("Planned end %1").arg(text(content_.planned_end));
    const QFontMetricsF metrics(font());
    const double width = metrics.horizontalAdvance(words) + 2.0;
    painter.setPen(colours.faint);
    painter.drawText(QRectF(x - width, 2.0, width, metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, words);
}

void PressureChart::draw_meeting_points(QPainter& painter) const {
    // When it is stands in the band below, which knows more than this one line.
    painter.setPen(QPen(inks(palette()).stop, 2.0));
    painter.setBrush(palette().color(QPalette::Base));
    for (const Line& line : content_.lines) {
        if (!line.reserve_met) continue;
        const QPointF at = place_of(*line.reserve_met, content_.reserve);
        painter.drawRect(QRectF(at.x() - 5.0, at.y() - 5.0, 10.0, 10.0));
    }
    painter.setBrush(Qt::NoBrush);
}

void PressureChart::draw_labels(QPainter& painter) const {
    const Inks colours = inks(palette());
    QFont strong = font();
    strong.setBold(true);
    for (const Label& label : labels_) {
        const bool limiting =
            std::any_of(content_.lines.begin(), content_.lines.end(), [&](const Line& line) {
                return line.guest == label.guest && line.limiting;
            });
        const QColor ink = limiting       ? colours.accent
                           : label.strong ? palette().color(QPalette::Text)
                                          : colours.faint;
        if (!label.guest.empty()) {
            painter.setPen(QPen(ink, label.strong ? 1.4 : 0.8));
            const QPointF to(label.box.left() - 3.0, label.box.center().y());
            painter.drawLine(label.anchor + QPointF(2.0, 0.0), to);
        }
        painter.setPen(ink);
        painter.setFont(label.strong ? strong : font());
        painter.drawText(label.box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                         label.text);
    }
    painter.setFont(font());
}

void PressureChart::drawForeground(QPainter* painter, const QRectF&) {
    painter->setFont(font());
    draw_reserve(*painter);
    draw_end(*painter);
    draw_meeting_points(*painter);
    draw_labels(*painter);
    draw_bands(*painter);
    if (hasFocus()) {
        painter->setPen(QPen(palette().color(QPalette::Highlight), 2.0));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(QRectF(1.0, 1.0, width() - 2.0, height() - 2.0));
    }
}

}  // namespace leadline
