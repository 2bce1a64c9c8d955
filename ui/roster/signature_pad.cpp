// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/signature_pad.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr double grid_height = 100.0;
/// Far more than a name takes; keeps a scribble from filling the memory.
constexpr qsizetype most_points = 20000;

}  // namespace

SignaturePad::SignaturePad(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("signature_pad"));
    setAccessibleName(tr("Strip to sign on"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::CrossCursor);
    setAttribute(Qt::WA_OpaquePaintEvent);
}

QSize SignaturePad::sizeHint() const { return {240, 6 * fontMetrics().height()}; }

void SignaturePad::clear() {
    strokes_.clear();
    points_ = 0;
    drawing_ = false;
    update();
}

QString SignaturePad::svg_path() const {
    QString path;
    for (const QPolygonF& stroke : strokes_) {
        const QPointF first = stroke.first();
        // A dot is a stroke to where it started.
        for (qsizetype i = 0; i < std::max<qsizetype>(stroke.size(), 2); ++i) {
            const QPointF point = i < stroke.size() ? stroke[i] : first;
            path += QStringLiteral("%1%2 %3 %4")
                        .arg(path.isEmpty() ? QString() : QStringLiteral(" "),
                             i == 0 ? QStringLiteral("M") : QStringLiteral("L"),
                             QString::number(point.x(), 'f', 1),
                             QString::number(point.y(), 'f', 1));
        }
    }
    return path;
}

QPointF SignaturePad::on_grid(QPointF position) const {
    const double scale = grid_height / std::max(1, height());
    return {std::clamp(position.x(), 0.0, double(width())) * scale,
            std::clamp(position.y(), 0.0, double(height())) * scale};
}

void SignaturePad::add(QPointF position) {
    if (points_ >= most_points) return;
    const QPointF point = on_grid(position);
    QPolygonF& stroke = strokes_.last();
    if (!stroke.isEmpty() && stroke.last() == point) return;
    stroke << point;
    ++points_;
    update();
}

// Finger and pen arrive here too: what a widget does not take as touch or tablet event, Qt sends
// again as the mouse's.

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || points_ >= most_points) return;
    drawing_ = true;
    strokes_ << QPolygonF();
    add(event->position());
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    if (drawing_) add(event->position());
}

void SignaturePad::mouseReleaseEvent(QMouseEvent* event) {
    if (!drawing_ || event->button() != Qt::LeftButton) return;
    add(event->position());
    drawing_ = false;
    Q_EMIT signed_on();
}

void SignaturePad::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Inks colours = inks(palette());
    painter.fillRect(rect(), palette().color(isEnabled() ? QPalette::Base : QPalette::Window));
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    painter.setRenderHint(QPainter::Antialiasing);
    constexpr double line_at = 0.75;
    const int line = static_cast<int>(height() * line_at);
    constexpr int margin = 16;
    painter.setPen(colours.rule);
    painter.drawLine(margin, line, width() - margin, line);
    if (is_empty()) {
        painter.setPen(colours.faint);
        painter.drawText(QRect(margin, line, width() - 2 * margin, height() - line),
                         Qt::AlignLeft | Qt::AlignVCenter, tr("Sign here"));
    }
    const double scale = height() / grid_height;
    painter.scale(scale, scale);
    constexpr double pen_width = 2.2;
    painter.setPen(QPen(palette().color(QPalette::Text), pen_width, Qt::SolidLine, Qt::RoundCap,
                        Qt::RoundJoin));
    for (const QPolygonF& stroke : strokes_) {
        if (stroke.size() == 1) {
            painter.drawPoint(stroke.first());
        } else {
            painter.drawPolyline(stroke);
        }
    }
}

}  // namespace leadline
