// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_pen.h"

#include <QStringList>
#include <algorithm>
#include <numeric>

namespace leadline {

SheetPen::SheetPen(TypeSetter& setter, Page& page)
    : setter_(setter),
      page_(page),
      frame_(QRectF(QPointF(0.0, 0.0), paper_size(page.paper))
                 .adjusted(sheet_margin, sheet_margin, -sheet_margin, -sheet_margin)) {
    page_.frames = {frame_};
}

bool SheetPen::text(const QString& words, const QRectF& frame, const SheetStyle& style) {
    return text(Phrase{words, 0}, frame, style);
}

bool SheetPen::text(const Phrase& phrase, const QRectF& frame, const SheetStyle& style) {
    if (phrase.text.isEmpty()) return false;
    TextStyle set;
    set.points = style.points;
    set.least_points = std::min(style.least, style.points);
    set.bold = style.bold;
    set.align = style.align;
    set.ink = style.ink;
    set.most_lines = style.most_lines;
    set.middle = style.middle;
    set.face = style.face;
    TextItem item = setter_.set(phrase, frame, set);
    item.broken_word = setter_.lines(phrase, frame.width(), item.points, set).inside_word;
    const bool elided = item.elided;
    page_.items.emplace_back(std::move(item));
    return elided;
}

double SheetPen::height(const Phrase& phrase, double width, double points, bool bold,
                        const Typeface& face) {
    TextStyle style;
    style.bold = bold;
    style.face = face;
    return setter_.height(phrase, width, points, style);
}

double SheetPen::width(const QString& words, double points, bool bold, const Typeface& face) {
    return setter_.width(Phrase{words, 0}, points, bold, face) + 0.1;
}

double SheetPen::widest_word(const QString& words, double points, bool bold) {
    double widest = 0.0;
    for (const QString& word : words.split(u' ', Qt::SkipEmptyParts)) {
        widest = std::max(widest, width(word, points, bold));
    }
    return widest;
}

void SheetPen::line(double x1, double y1, double x2, double y2, double width, Ink ink) {
    page_.items.emplace_back(LineItem{QLineF(x1, y1, x2, y2), width, ink});
}

void SheetPen::rule(double y, double width, Ink ink) {
    line(frame_.left(), y, frame_.right(), y, width, ink);
}

void SheetPen::box(const QRectF& rect, double width, double corner) {
    page_.items.emplace_back(RectItem{rect, corner, width, Ink::black});
}

void SheetPen::filled(const QRectF& rect, double corner) {
    page_.items.emplace_back(RectItem{rect, corner, 0.0, Ink::black});
}

void SheetPen::picture(const QString& name, const QRectF& rect) {
    page_.items.emplace_back(PictureItem{rect, name});
}

void SheetPen::tick(const QRectF& cell, double side) {
    const double fitting = std::min({side, cell.width(), cell.height()});
    const QPointF half(fitting / 2.0, fitting / 2.0);
    box(QRectF(cell.center() - half, cell.center() + half), 0.3, 0.4);
}

void SheetPen::blank(const QRectF& cell) {
    line(cell.left(), cell.bottom(), cell.right(), cell.bottom(), 0.2);
}

double set_sheet_title(SheetPen& pen, const QString& what, const QString& whose,
                       const QString& session) {
    const QRectF& frame = pen.frame();
    constexpr double points = 24.0;
    constexpr double line = 11.0;
    const double width = std::min(pen.width(what, points, true) + 1.0, frame.width() * 0.6);
    pen.text(what, QRectF(frame.left(), frame.top() - 1.0, width, line),
             {.points = points, .bold = true});
    if (!whose.isEmpty()) {
        const double natural = pen.width(whose, 16.0, true) + 6.0;
        const double room = frame.width() - width - 4.0;
        const QRectF tag(frame.left() + width + 3.0, frame.top(), std::min(natural, room), 8.8);
        pen.filled(tag, 0.8);
        pen.text(whose, tag.adjusted(2.0, 0.4, -2.0, -0.4),
                 {.points = 16.0,
                  .bold = true,
                  .most_lines = 2,
                  .align = Align::centre,
                  .middle = true,
                  .ink = Ink::white});
    }
    pen.text(session, QRectF(frame.left(), frame.top() + 10.6, frame.width(), 4.6),
             {.points = 10.0});
    pen.rule(frame.top() + 16.2, 0.6);
    return frame.top() + 18.5;
}

double set_sheet_foot(SheetPen& pen, const QString& standing, const QString& number) {
    const QRectF& frame = pen.frame();
    const double top = frame.bottom() - sheet_foot_height;
    const double right = number.isEmpty() ? 0.0 : pen.width(number, 8.0) + 1.0;
    pen.rule(top + 1.4, 0.15);
    pen.text(standing, QRectF(frame.left(), top + 2.0, frame.width() - right - 3.0, 7.2),
             {.points = 8.5, .most_lines = 2});
    pen.text(number, QRectF(frame.right() - right, top + 2.0, right, 3.8),
             {.points = 8.0, .align = Align::right});
    return top;
}

std::vector<QRectF> columns(const QRectF& row, const std::vector<double>& widths, double gap) {
    const double total = std::accumulate(widths.begin(), widths.end(), 0.0);
    const double room = row.width() - gap * static_cast<double>(widths.size() - 1);
    std::vector<QRectF> cells;
    double x = row.left();
    for (const double weight : widths) {
        const double width = room * weight / total;
        cells.emplace_back(x, row.top(), width, row.height());
        x += width + gap;
    }
    return cells;
}

}  // namespace leadline
