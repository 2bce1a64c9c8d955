// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_canvas.h"

#include <algorithm>

namespace leadline {
namespace {

constexpr double side_margin = 5.0;
constexpr double top_margin = 4.6;
constexpr double bottom_margin = 4.6;
constexpr double corner = 1.2;
constexpr int too_many_lines = 100;

}  // namespace

CardCanvas::CardCanvas(const QRectF& frame, const CardRoom& room, const Typeface& face,
                       TypeSetter& setter, std::vector<SheetItem>& items)
    : inner_(frame.adjusted(side_margin, top_margin, -side_margin, -bottom_margin)),
      room_(room),
      face_(face),
      setter_(setter),
      items_(items) {}

TextStyle CardCanvas::style(double points, bool bold) const {
    TextStyle made;
    made.points = points;
    made.least_points = std::min(points, card_least_points);
    made.bold = bold;
    made.face = face_;
    return made;
}

void CardCanvas::text(const Phrase& phrase, const QRectF& frame, const TextStyle& style) {
    if (phrase.text.isEmpty()) return;
    TextItem item = setter_.set(phrase, frame, style);
    if (item.elided || setter_.lines(phrase, frame.width(), item.points, style).inside_word) {
        does_not_fit();
    }
    items_.emplace_back(std::move(item));
}

void CardCanvas::typed(const QString& text, const QRectF& frame, const TextStyle& style) {
    if (text.isEmpty()) return;
    items_.emplace_back(setter_.set({text, 0}, frame, style));
}

void CardCanvas::line(double x1, double y1, double x2, double y2, double width, Ink ink) {
    items_.emplace_back(LineItem{QLineF(x1, y1, x2, y2), width, ink});
}

void CardCanvas::box(const QRectF& rect, double width, Ink ink) {
    items_.emplace_back(RectItem{rect, corner, width, ink});
}

void CardCanvas::picture(const QRectF& rect, const QString& name) {
    items_.emplace_back(PictureItem{rect, name});
}

double CardCanvas::width(const QString& text, double points, bool bold) const {
    return text.isEmpty() ? 0.0 : setter_.width({text, 0}, points, bold, face_) + 0.1;
}

double CardCanvas::height(const Phrase& phrase, double width, const TextStyle& style) const {
    return setter_.height(phrase, width, style.points, style);
}

int CardCanvas::lines(const QString& text, double width, const TextStyle& style) const {
    if (text.isEmpty()) return 0;
    const auto count = setter_.lines({text, 0}, width, style.points, style);
    return count.inside_word ? too_many_lines : count.lines;
}

double CardCanvas::line_height(double points, int lines, double pitch) const {
    const double size = points * mm_per_point;
    return baseline_below_top({}, points) + 0.27 * size + (lines - 1) * pitch * size;
}

std::vector<double> fair_widths(std::vector<double> natural, double room) {
    std::vector<double> sorted = natural;
    std::sort(sorted.begin(), sorted.end());
    double left = room;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const double share = left / static_cast<double>(sorted.size() - i);
        if (sorted[i] > share) {
            for (double& width : natural) width = std::min(width, share);
            break;
        }
        left -= sorted[i];
    }
    return natural;
}

Phrase with_bold_start(const QString& text) {
    const QString enders = QStringLiteral(".?:!؟。？！：");
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (!enders.contains(text[i])) continue;
        // A point inside a number ends nothing.
        const bool inside = i + 1 < text.size() && text[i].unicode() < 0x80 && !text[i + 1].isSpace();
        if (!inside) return {text, static_cast<int>(i + 1)};
    }
    return {text, 0};
}

}  // namespace leadline
