// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <vector>

#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"

namespace leadline {

// All of a card is measured at the size of A6 in millimetres, type in points; larger cards are this
// one made larger.
inline constexpr double card_least_points = 8.0;
inline constexpr double card_column_gap = 2.6;
inline constexpr double card_hairline = 0.15;
inline constexpr double card_blank = 12.0;  ///< length of a line to write on

/// How much room the parts of a card take: what gives way when a card is full.
struct CardRoom {
    double name_points;
    int name_lines;
    double figure_points;
    double rule_points;        ///< of the one rule, wanted
    double rule_least_points;  ///< on one line; smaller, it takes two
    double body_points;        ///< wanted for what to do
    double foot_points;
    double picture_side;       ///< least side of a hand signal
    double kit_side;
    int kit_lines;
    int where_lines;
    double gap;                ///< between the parts
};

/// Where one card is set: puts text, lines and boxes on it, and notes whether words that stand on every
/// card have found their room.
class CardCanvas {
public:
    CardCanvas(const QRectF& frame, const CardRoom& room, const Typeface& face, TypeSetter& setter,
               std::vector<SheetItem>& items);

    [[nodiscard]] const QRectF& inner() const { return inner_; }
    [[nodiscard]] const CardRoom& room() const { return room_; }
    /// A style in the card's own typeface.
    [[nodiscard]] TextStyle style(double points, bool bold = false) const;

    /// Fixed words: one that is cut, or broken inside a word, makes the card not fit().
    void text(const Phrase& phrase, const QRectF& frame, const TextStyle& style);
    /// What people typed, which may be of any length: cut where it must be.
    void typed(const QString& text, const QRectF& frame, const TextStyle& style);
    void line(double x1, double y1, double x2, double y2, double width, Ink ink = Ink::black);
    void box(const QRectF& rect, double width, Ink ink = Ink::black);
    void picture(const QRectF& rect, const QString& name);
    void add(SheetItem item) { items_.push_back(std::move(item)); }

    [[nodiscard]] double width(const QString& text, double points, bool bold) const;
    [[nodiscard]] double height(const Phrase& phrase, double width, const TextStyle& style) const;
    /// Lines that a text takes; a word too long for a line counts as too many.
    [[nodiscard]] int lines(const QString& text, double width, const TextStyle& style) const;
    [[nodiscard]] double line_height(double points, int lines = 1, double pitch = 1.22) const;

    void does_not_fit() { fits_ = false; }
    [[nodiscard]] bool fits() const { return fits_; }

private:
    QRectF inner_;
    const CardRoom& room_;
    Typeface face_;
    TypeSetter& setter_;
    std::vector<SheetItem>& items_;
    bool fits_ = true;
};

/// Widths that together take no more than `room`: the widest give way first.
std::vector<double> fair_widths(std::vector<double> natural, double room);

/// A text whose first sentence (or half sentence before a colon) is bold.
Phrase with_bold_start(const QString& text);

}  // namespace leadline
