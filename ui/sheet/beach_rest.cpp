// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/beach_rest.h"

namespace leadline {
namespace {

constexpr double rest_points = 9.5;
constexpr double rest_call_points = 16.0;
constexpr double paragraph_gap = 1.6;
constexpr double head_height = 6.4;

}  // namespace

void BeachRestPages::begin() {
    pages_.emplace_back().paper = paper_;
    pens_.emplace_back(setter_, pages_.back());
    y_ = set_beach_title(pen(), sheet_, number_width_) + 2.0;
    set_beach_foot(pen(), sheet_);
    bottom_ = pen().frame().bottom() - beach_foot_height(pen(), sheet_);
}

void BeachRestPages::head(const QString& words) {
    constexpr double with_a_line = 8.0;
    if (y_ + head_height + with_a_line > bottom_) begin();
    const QRectF& frame = pen().frame();
    pen().text(words, QRectF(frame.left(), y_, frame.width(), head_height - 0.6),
               {.points = 12.0, .bold = true});
    pen().rule(y_ + head_height - 0.4, 0.4);
    y_ += head_height + 0.8;
}

void BeachRestPages::paragraph(const Phrase& words, double points) {
    const double width = pen().frame().width();
    const double height = pen().height(words, width, points);
    if (y_ + height > bottom_) begin();
    pen().text(words, QRectF(pen().frame().left(), y_, width, height),
               {.points = points, .most_lines = 99, .least = points});
    y_ += height + paragraph_gap;
}

void BeachRestPages::set(const BeachRest& rest) {
    begin();
    if (rest.call || rest.plan) {
        head(BeachLabels::tr("In an emergency call"));
        if (!sheet_.emergency_line.isEmpty())
            paragraph({sheet_.emergency_line, 0}, rest_call_points);
        for (const QString& line : sheet_.emergency_plan) paragraph({line, 0}, rest_points);
        y_ += 2.0;
    }
    if (rest.open.isEmpty() && rest.decided.isEmpty() && rest.kit.isEmpty()) return;
    head(BeachLabels::tr("Continued: what to know"));
    for (const Phrase& one : beach_notes(rest.open, rest.decided, rest.kit, false)) {
        paragraph(one, rest_points);
    }
}

}  // namespace leadline
