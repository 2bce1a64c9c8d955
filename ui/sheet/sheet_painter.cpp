// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <QPen>
#include <QSvgRenderer>
#include <QTextLayout>

#include "ui/sheet/type_setting.h"

namespace leadline {
namespace {

constexpr double endless_line = 1e7;

QRectF in_units(const QRectF& rect) {
    return {rect.topLeft() * units_per_mm, rect.size() * units_per_mm};
}

}  // namespace

QColor ink_colour(Ink ink) {
    switch (ink) {
        case Ink::black: return Qt::black;
        case Ink::white: return Qt::white;
        case Ink::grey: return QColor(0x80, 0x80, 0x80);
    }
    return Qt::black;
}

SheetPainter::SheetPainter() = default;
SheetPainter::~SheetPainter() = default;

void SheetPainter::paint(QPainter& painter, const Page& page, double pixels_per_mm,
                         bool pictures) {
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(pixels_per_mm / units_per_mm, pixels_per_mm / units_per_mm);
    for (const SheetItem& item : page.items) {
        const bool picture =
            std::holds_alternative<PictureItem>(item) || std::holds_alternative<QrItem>(item);
        if (picture && !pictures) continue;
        std::visit([&](const auto& one) { draw(painter, one); }, item);
    }
    painter.restore();
}

const QTextLayout& SheetPainter::shaped(const TextItem& item, const TextLine& line) {
    constexpr std::size_t most_kept = 5000;
    if (lines_.size() > most_kept) lines_.clear();
    auto& layout = lines_[{line.text, item.points, item.bold, line.bold_letters, item.face.family,
                          item.face.right_to_left}];
    if (layout != nullptr) return *layout;
    layout = std::make_unique<QTextLayout>(line.text);
    layout->setCacheEnabled(true);
    apply_fonts(*layout, item.points, item.bold, line.bold_letters, item.face);
    layout->beginLayout();
    layout->createLine().setLineWidth(endless_line);
    layout->endLayout();
    return *layout;
}

void SheetPainter::draw(QPainter& painter, const TextItem& item) {
    painter.setPen(ink_colour(item.ink));
    for (const TextLine& line : item.lines) {
        const QTextLayout& layout = shaped(item, line);
        const QPointF baseline(line.left * units_per_mm, line.baseline * units_per_mm);
        layout.draw(&painter, baseline - QPointF(0.0, layout.lineAt(0).ascent()));
    }
}

void SheetPainter::draw(QPainter& painter, const LineItem& item) {
    painter.setPen(QPen(ink_colour(item.ink), item.width * units_per_mm, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QLineF(item.line.p1() * units_per_mm, item.line.p2() * units_per_mm));
}

void SheetPainter::draw(QPainter& painter, const RectItem& item) {
    const double radius = item.corner * units_per_mm;
    if (item.width == 0.0) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink_colour(item.ink));
        painter.drawRoundedRect(in_units(item.rect), radius, radius);
        return;
    }
    const double half = item.width / 2.0;
    painter.setPen(QPen(ink_colour(item.ink), item.width * units_per_mm));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(in_units(item.rect.adjusted(half, half, -half, -half)), radius, radius);
}

void SheetPainter::draw(QPainter& painter, const PictureItem& item) {
    auto& renderer = pictures_[item.name];
    if (renderer == nullptr) renderer = std::make_unique<QSvgRenderer>(item.name);
    if (renderer->isValid()) renderer->render(&painter, in_units(item.rect));
}

void SheetPainter::draw(QPainter& painter, const QrItem& item) {
    // One path of runs: fields that touch must not show a seam between them.
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const QRectF rect = in_units(item.rect);
    const double field = rect.width() / item.side;
    for (int row = 0; row < item.side; ++row) {
        int column = 0;
        while (column < item.side) {
            const auto dark = [&](int at) { return item.fields[row * item.side + at] != 0; };
            int end = column + 1;
            while (end < item.side && dark(end) == dark(column)) ++end;
            if (dark(column)) {
                path.addRect(rect.left() + column * field, rect.top() + row * field,
                             (end - column) * field, field);
            }
            column = end;
        }
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillPath(path, Qt::black);
    painter.setRenderHint(QPainter::Antialiasing, true);
}

}  // namespace leadline
