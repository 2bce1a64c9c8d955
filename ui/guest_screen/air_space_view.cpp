// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/air_space_view.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>
#include <algorithm>
#include <cmath>

namespace leadline {
namespace {

// Drawings live in a square of 100, as the pictures do.
constexpr double field = 100.0;
constexpr double pen_width = 3.5;

QPen solid() {
    return {Qt::black, pen_width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}
QPen dashed() {
    return {Qt::black, pen_width * 0.6, Qt::DashLine, Qt::RoundCap, Qt::RoundJoin};
}

/// An arrow to the right that ends at a point.
void arrow_to(QPainter& painter, QPointF tip, double length) {
    if (length < 6.0) return;
    painter.save();
    painter.setPen(QPen(Qt::black, pen_width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(tip - QPointF(length, 0), tip - QPointF(6.0, 0));
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    painter.drawPolygon(QPolygonF({tip, tip + QPointF(-8.0, -5.0), tip + QPointF(-8.0, 5.0)}));
    painter.restore();
}

}  // namespace

AirSpaceView::AirSpaceView(AirSpace space, double ems, QWidget* parent)
    : QWidget(parent), space_(space), ems_(ems), lungs_(std::make_unique<QSvgRenderer>()) {
    if (space == AirSpace::lungs) {
        lungs_->load(QStringLiteral(":/leadline/body/lungs.svg"));
        lungs_->setAspectRatioMode(Qt::KeepAspectRatio);
    }
    if (space == AirSpace::ear) share_ = 0.0;
}

AirSpaceView::~AirSpaceView() = default;

void AirSpaceView::set_share(double share) {
    share_ = share;
    update();
}

void AirSpaceView::set_scale(const TypeScale& scale) {
    scale_ = scale;
    const int side = std::max(1, qRound(scale.em * ems_));
    setFixedSize(side, side);
}

void AirSpaceView::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double radius = scale_.em * 0.25;
    painter.setPen(Qt::NoPen);
    painter.setBrush(scale_.palette.picture);
    painter.drawRoundedRect(QRectF(rect()), radius, radius);
    painter.scale(width() / field, height() / field);
    painter.setPen(solid());
    painter.setBrush(Qt::white);
    switch (space_) {
        case AirSpace::balloon:
            paint_balloon(painter);
            break;
        case AirSpace::lungs:
            paint_lungs(painter);
            break;
        case AirSpace::ear:
            paint_ear(painter);
            break;
        case AirSpace::mask:
            paint_mask(painter);
            break;
    }
}

void AirSpaceView::paint_balloon(QPainter& painter) const {
    const QPointF centre(50, 46);
    constexpr double full = 36.0;
    painter.setPen(dashed());
    painter.drawEllipse(centre, full, full);
    const double radius = full * share_;
    painter.setPen(solid());
    painter.drawEllipse(centre, radius, radius);
    const QPointF knot = centre + QPointF(0, radius);
    painter.drawPolygon(QPolygonF({knot, knot + QPointF(6, 8), knot + QPointF(-6, 8)}));
}

void AirSpaceView::paint_lungs(QPainter& painter) const {
    // The solid lungs stay; the dashed outline is what a held breath would need at the surface.
    constexpr double full = 30.0;
    lungs_->render(&painter, QRectF(50 - full, 50 - full, 2 * full, 2 * full));
    if (share_ <= 1.0) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(dashed());
    const double side = std::min(48.0, full * share_);
    painter.drawRoundedRect(QRectF(50 - side, 50 - side * 0.95, 2 * side, 1.9 * side), 16, 16);
}

void AirSpaceView::paint_ear(QPainter& painter) const {
    // From the left: water in the ear canal, the drum, the middle ear with its tube down.
    painter.setBrush(QColor(0xD3, 0xE7, 0xEC));
    painter.drawRect(QRectF(4, 34, 44, 26));
    painter.setBrush(Qt::white);
    painter.drawRoundedRect(QRectF(48, 24, 36, 46), 8, 8);
    painter.drawPolyline(QPolygonF({QPointF(70, 70), QPointF(78, 96)}));
    painter.drawPolyline(QPolygonF({QPointF(78, 68), QPointF(86, 94)}));
    const double bend = std::clamp(share_, 0.0, 1.0) * 24.0;
    QPainterPath drum(QPointF(48, 32));
    drum.quadTo(QPointF(48 + 2.0 * bend, 47), QPointF(48, 62));
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0xD3, 0xE7, 0xEC));
    painter.drawPath(drum);
    painter.setPen(QPen(Qt::black, pen_width * 1.7, Qt::SolidLine, Qt::RoundCap));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(drum);
    arrow_to(painter, QPointF(42 + bend, 47), 10.0 + bend);
}

void AirSpaceView::paint_mask(QPainter& painter) const {
    // A face from the side; the mask's air is what shrinks.
    const double depth = 8.0 + 22.0 * std::clamp(share_, 0.0, 1.0);
    QPainterPath face(QPointF(64, 4));
    face.cubicTo(QPointF(58, 18), QPointF(62, 26), QPointF(60, 34));
    face.lineTo(QPointF(50, 56));
    face.lineTo(QPointF(59, 60));
    face.cubicTo(QPointF(54, 68), QPointF(62, 72), QPointF(58, 80));
    face.cubicTo(QPointF(60, 92), QPointF(72, 94), QPointF(82, 96));
    face.lineTo(QPointF(96, 96));
    face.lineTo(QPointF(96, 4));
    face.closeSubpath();
    painter.drawPath(face);
    QPainterPath mask(QPointF(60, 24));
    mask.lineTo(QPointF(60 - depth, 28));
    mask.lineTo(QPointF(56 - depth, 58));
    mask.lineTo(QPointF(56, 61));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::black, pen_width * 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(mask);
    painter.drawLine(QPointF(60, 24), QPointF(96, 30));
    const double push = (1.0 - std::clamp(share_, 0.0, 1.0)) * 60.0;
    for (const double y : {34.0, 44.0, 54.0}) {
        arrow_to(painter, QPointF(52 - depth, y), std::min(push, 48.0 - depth));
    }
}

EarStateTile::EarStateTile(QWidget* parent)
    : ScreenTile(parent),
      room_(new QWidget(this)),
      words_(new GuestLabel(TextRole::title, TextInk::ink, this)) {
    auto* row = new QHBoxLayout(this);
    row->addWidget(room_, 0, Qt::AlignVCenter);
    row->addWidget(words_, 1);
    words_->setObjectName(QStringLiteral("ear_state"));
}

void EarStateTile::set_state(EarFeeling feeling, const QString& words) {
    feeling_ = feeling;
    words_->setText(words);
    const bool dark = feeling == EarFeeling::pain || feeling == EarFeeling::locked;
    words_->set_ink(dark ? TextInk::on_warn : TextInk::ink);
    setAccessibleName(words);
    update();
}

void EarStateTile::set_scale(const TypeScale& scale) {
    ScreenTile::set_scale(scale);
    scale_ = scale;
    constexpr double shape_ems = 2.4;
    const int side = std::max(1, qRound(scale.em * shape_ems));
    room_->setFixedSize(side, side);
}

void EarStateTile::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const ScreenPalette& colours = scale_.palette;
    const bool dark = feeling_ == EarFeeling::pain || feeling_ == EarFeeling::locked;
    const double line = std::max(1.0, scale_.em * 0.05);
    painter.setPen(QPen(dark ? colours.warn : colours.rule, line));
    painter.setBrush(dark ? colours.warn : colours.panel);
    painter.drawRoundedRect(QRectF(rect()).adjusted(line, line, -line, -line), scale_.em * 0.4,
                            scale_.em * 0.4);
    painter.translate(room_->pos());
    painter.scale(room_->width() / field, room_->height() / field);
    const QColor shape = dark ? colours.on_warn : colours.ink;
    const QColor inside = dark ? colours.warn : colours.panel;
    painter.setPen(QPen(shape, 9, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    switch (feeling_) {
        case EarFeeling::fine:
            painter.drawEllipse(QRectF(8, 8, 84, 84));
            painter.drawPolyline(QPolygonF({QPointF(30, 52), QPointF(45, 67), QPointF(70, 34)}));
            break;
        case EarFeeling::discomfort:
            painter.drawPolygon(QPolygonF({QPointF(50, 10), QPointF(92, 88), QPointF(8, 88)}));
            painter.drawLine(QPointF(50, 38), QPointF(50, 60));
            painter.drawPoint(QPointF(50, 75));
            break;
        case EarFeeling::pain:
        case EarFeeling::locked: {
            painter.setPen(Qt::NoPen);
            painter.setBrush(shape);
            QPolygonF octagon;
            for (int corner = 0; corner < 8; ++corner) {
                const double angle = (corner + 0.5) * std::acos(-1.0) / 4.0;
                octagon << QPointF(50 + 46 * std::cos(angle), 50 + 46 * std::sin(angle));
            }
            painter.drawPolygon(octagon);
            painter.setBrush(inside);
            if (feeling_ == EarFeeling::pain) {
                painter.drawRect(QRectF(26, 42, 48, 16));
                break;
            }
            painter.drawRoundedRect(QRectF(30, 46, 40, 30), 4, 4);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(inside, 7));
            painter.drawArc(QRectF(37, 27, 26, 34), 0, 180 * 16);
            break;
        }
    }
}

}  // namespace leadline
