// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_painter.h"

#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/site/profile_labels.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

class ProfilePainter {
public:
    ProfilePainter(QPainter& painter, const ProfileScene& scene, UnitSystem units,
                   const QPalette& palette)
        : painter_(painter),
          scene_(scene),
          plot_(scene.scale.plot),
          units_(units),
          palette_(palette),
          inks_(inks(palette)) {}

    void run(const ProfilePointer& pointer) {
        painter_.setRenderHint(QPainter::Antialiasing);
        water();
        scales();
        for (const DepthLine& line : scene_.lines) level(line);
        clearing();
        dive();
        corners(pointer);
        for (const ProfileLabel& label : scene_.labels) written(label);
        reading(pointer);
    }

private:
    void water() {
        QLinearGradient depth(plot_.topLeft(), plot_.bottomLeft());
        depth.setColorAt(0.0, inks_.water);
        const bool light = shade_of(palette_) == Shade::light;
        depth.setColorAt(1.0, light ? inks_.water.darker(112) : inks_.water.darker(140));
        painter_.fillRect(plot_, depth);
        painter_.setPen(QPen(inks_.note, 1.5));
        painter_.drawLine(plot_.topLeft(), plot_.topRight());
    }

    void scales() {
        const QFontMetricsF metrics(painter_.font());
        for (const Depth depth : scene_.depth_marks) {
            const double y = scene_.scale.y(depth);
            painter_.setPen(QPen(inks_.rule, 1.0, Qt::DotLine));
            if (y > plot_.top() + 1.0) painter_.drawLine(QPointF(plot_.left(), y),
                                                         QPointF(plot_.right(), y));
            painter_.setPen(inks_.faint);
            painter_.drawText(QRectF(0.0, y - metrics.height() / 2.0, plot_.left() - 8.0,
                                     metrics.height()),
                              Qt::AlignRight | Qt::AlignVCenter, text(depth, units_));
        }
        for (const Minutes time : scene_.time_marks) {
            const double x = scene_.scale.x(time);
            painter_.setPen(QPen(inks_.faint, 1.0));
            painter_.drawLine(QPointF(x, plot_.bottom()), QPointF(x, plot_.bottom() + 4.0));
            const double width = metrics.horizontalAdvance(text(time)) + 4.0;
            const double left = std::min(x - width / 2.0, plot_.right() + 16.0 - width);
            painter_.drawText(QRectF(left, plot_.bottom() + 6.0, width, metrics.height()),
                              Qt::AlignCenter, text(time));
        }
    }

    void level(const DepthLine& line) {
        if (!line.in_view) return;
        const double y = scene_.scale.y(line.depth);
        QPen pen(line.broken && line.kind != DepthLine::Kind::usual ? inks_.stop : inks_.faint,
                 line.kind == DepthLine::Kind::limit ? 1.6 : 1.0);
        pen.setStyle(line.kind == DepthLine::Kind::limit ? Qt::DashLine : Qt::DotLine);
        if (line.kind == DepthLine::Kind::bottom) {
            pen.setStyle(Qt::SolidLine);
            const QRectF ground(QPointF(plot_.left(), y), plot_.bottomRight());
            QColor earth = inks_.faint;
            earth.setAlphaF(0.35F);
            painter_.fillRect(ground, QBrush(earth, Qt::BDiagPattern));
        }
        painter_.setPen(pen);
        painter_.drawLine(QPointF(plot_.left(), y), QPointF(plot_.right(), y));
    }

    void clearing() {
        painter_.setPen(QPen(inks_.note, 1.4));
        for (const QPointF& mark : scene_.clearing_marks) {
            painter_.drawLine(mark + QPointF(3.0, 0.0), mark + QPointF(10.0, 0.0));
        }
    }

    void dive() {
        for (const ProfileLeg& leg : scene_.legs) {
            const bool stop = leg.warning == Severity::stop;
            QPen pen(!leg.warning ? inks_.accent : stop ? inks_.stop : inks_.caution, 2.6);
            pen.setCapStyle(Qt::RoundCap);
            if (leg.warning) pen.setDashPattern({3.0, 2.0});
            painter_.setPen(pen);
            painter_.drawLine(leg.line);
        }
    }

    void corners(const ProfilePointer& pointer) {
        for (std::size_t i = 0; i < scene_.profile.points.size(); ++i) {
            const int index = static_cast<int>(i);
            const QPointF at = scene_.scale.at(scene_.profile.points[i]);
            const bool selected = index == pointer.selected;
            if (selected && pointer.focused) {
                painter_.setPen(QPen(palette_.color(QPalette::Text), 1.6));
                painter_.setBrush(Qt::NoBrush);
                painter_.drawEllipse(at, 11.0, 11.0);
            }
            painter_.setPen(QPen(inks_.accent, 2.0));
            painter_.setBrush(selected ? inks_.accent : palette_.color(QPalette::Base));
            const double radius = i == 0 ? 3.0 : index == pointer.hovered || selected ? 7.0 : 5.0;
            painter_.drawEllipse(at, radius, radius);
        }
    }

    void written(const ProfileLabel& label) {
        // A veil of water behind the letters keeps them clear of the lines of the scale.
        QColor veil = label.box.bottom() > plot_.top() + 2.0 ? inks_.water
                                                             : palette_.color(QPalette::Window);
        veil.setAlphaF(0.8F);
        painter_.fillRect(label.box, veil);
        QRectF box = label.box;
        if (label.severity) {
            const QRectF shape(box.left(), box.top() + 3.0, label_shape, label_shape);
            severity_icon(*label.severity, palette_).paint(&painter_, shape.toRect());
            box.setLeft(box.left() + label_shape + label_gap);
        }
        const QColor ink = !label.severity ? (label.faint ? inks_.faint
                                                          : palette_.color(QPalette::Text))
                           : *label.severity == Severity::stop ? inks_.stop
                                                               : inks_.caution;
        painter_.setPen(ink);
        painter_.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, label.text);
    }

    void reading(const ProfilePointer& pointer) {
        if (!pointer.reading_at || pointer.reading.isEmpty()) return;
        const QPointF at = *pointer.reading_at;
        painter_.setPen(QPen(inks_.faint, 1.0, Qt::DotLine));
        painter_.drawLine(QPointF(at.x(), plot_.top()), QPointF(at.x(), plot_.bottom()));
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(inks_.accent);
        painter_.drawEllipse(at, 3.5, 3.5);
        const QFontMetricsF metrics(painter_.font());
        const QSizeF size(metrics.horizontalAdvance(pointer.reading) + 16.0,
                          metrics.height() + 8.0);
        QRectF box(QPointF(at.x() - size.width() / 2.0, at.y() + 16.0), size);
        if (box.bottom() > plot_.bottom()) box.moveBottom(at.y() - 16.0);
        box.moveLeft(std::clamp(box.left(), plot_.left(),
                                std::max(plot_.left(), plot_.right() - box.width())));
        painter_.setPen(QPen(inks_.rule, 1.0));
        painter_.setBrush(palette_.color(QPalette::Base));
        painter_.drawRoundedRect(box, 4.0, 4.0);
        painter_.setPen(palette_.color(QPalette::Text));
        painter_.drawText(box, Qt::AlignCenter, pointer.reading);
    }

    QPainter& painter_;
    const ProfileScene& scene_;
    QRectF plot_;
    UnitSystem units_;
    QPalette palette_;
    Inks inks_;
};

}  // namespace

void paint_profile(QPainter& painter, const ProfileScene& scene, const ProfilePointer& pointer,
                   UnitSystem units, const QPalette& palette) {
    ProfilePainter(painter, scene, units, palette).run(pointer);
}

}  // namespace leadline
