// SPDX-License-Identifier: GPL-3.0-or-later
// What the chart draws over its lines: reserve, planned end, where the reserve is met, labels.
#include <QPainter>
#include <algorithm>

#include "ui/gas/gas_words.h"
#include "ui/gas/pressure_chart.h"
#include "ui/widgets/theme.h"

namespace leadline {

QString PressureChart::reserve_text() const {
    return tr("Reserve %1").arg(text(content_.reserve, content_.units));
}

void PressureChart::draw_reserve(QPainter& painter) const {
    const double y = place_of(Minutes(0.0), content_.reserve).y();
    painter.setPen(QPen(palette().color(QPalette::Text), 1.4, Qt::DashLine));
    painter.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right(), y));
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
    painter.drawLine(plot_.topRight(), plot_.bottomRight());
    const QString words = tr("Planned end %1").arg(text(content_.planned_end));
    const QFontMetricsF metrics(font());
    const double width = metrics.horizontalAdvance(words) + 2.0;
    painter.setPen(colours.faint);
    painter.drawText(QRectF(plot_.right() - width, 2.0, width, metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, words);
}

std::vector<PressureChart::Note> PressureChart::notes_for(const Line& line) const {
    QFont strong = font();
    strong.setBold(true);
    const QFontMetricsF metrics(strong);
    const QPointF at = place_of(*line.reserve_met, content_.reserve);
    const QString tail = tr(": %1 after %2").arg(text(content_.reserve, content_.units),
                                                 whole_minutes(*line.reserve_met));
    const double named = QFontMetricsF(font()).horizontalAdvance(reserve_text()) + 24.0;
    const double above = at.y() - metrics.height() - 4.0;
    const double below = at.y() + 4.0;
    const double right = plot_.right() - 4.0;
    // Where curves have fallen away, above the reserve; then below it, beside its own name; then
    // over the curve.
    struct Stretch {
        double from, to, top;
        bool to_right;
    };
    const Stretch stretches[] = {{at.x() + 12.0, right, above, true},
                                 {plot_.left() + named, at.x() - 12.0, below, false},
                                 {at.x() + 12.0, right, below, true},
                                 {plot_.left() + 4.0, at.x() - 12.0, above, false}};
    constexpr double shortest_name = 48.0;
    std::vector<Note> notes;
    for (const Stretch& stretch : stretches) {
        const double room =
            stretch.to - stretch.from - metrics.horizontalAdvance(tail) - 8.0;
        if (room < std::min(shortest_name, metrics.horizontalAdvance(line.name))) continue;
        Note note;
        note.text = metrics.elidedText(line.name, Qt::ElideRight, room) + tail;
        const QSizeF size(metrics.horizontalAdvance(note.text) + 8.0, metrics.height());
        const double left = stretch.to_right ? stretch.from : stretch.to - size.width();
        note.box = QRectF(QPointF(left, stretch.top), size);
        notes.push_back(note);
    }
    return notes;
}

bool PressureChart::covers_a_line(const QRectF& box) const {
    for (const Line& line : content_.lines) {
        for (const PressurePoint& point : line.curve) {
            if (box.contains(place_of(point.time, point.gauge))) return true;
        }
    }
    return false;
}

void PressureChart::draw_meeting_points(QPainter& painter) const {
    const Inks colours = inks(palette());
    QFont strong = font();
    strong.setBold(true);
    std::vector<QRectF> taken;
    for (const Line& line : content_.lines) {
        if (!line.reserve_met) continue;
        const QPointF at = place_of(*line.reserve_met, content_.reserve);
        painter.setPen(QPen(colours.stop, 2.0));
        painter.setBrush(palette().color(QPalette::Base));
        painter.drawRect(QRectF(at.x() - 5.0, at.y() - 5.0, 10.0, 10.0));
        const std::vector<Note> notes = notes_for(line);
        const auto free = [&](const Note& note) {
            return note.box.bottom() <= plot_.bottom() && !covers_a_line(note.box) &&
                   std::none_of(taken.begin(), taken.end(), [&](const QRectF& other) {
                       return other.intersects(note.box);
                   });
        };
        if (notes.empty()) continue;  // the sentence above the chart says it
        const auto found = std::find_if(notes.begin(), notes.end(), free);
        const Note& note = found == notes.end() ? notes.back() : *found;
        const QRectF& box = note.box;
        taken.push_back(box);
        QColor veil = palette().color(QPalette::Window);
        veil.setAlphaF(0.8F);
        painter.fillRect(box, veil);
        painter.setFont(strong);
        painter.setPen(colours.stop);
        painter.drawText(box, Qt::AlignCenter, note.text);
        painter.setFont(font());
    }
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
    if (hasFocus()) {
        painter->setPen(QPen(palette().color(QPalette::Highlight), 2.0));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(QRectF(1.0, 1.0, width() - 2.0, height() - 2.0));
    }
}

}  // namespace leadline
