// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "ui/sheet/card_parts.h"
#include "ui/sheet/qr_code.h"

namespace leadline {
namespace {

constexpr std::size_t advice_columns = 2;
constexpr std::size_t signals_in_row = 5;
constexpr double advice_gutter = 3.6;
constexpr double advice_row_gap = 0.9;
constexpr double signal_row_gap = 0.7;
constexpr double largest_signal = 13.5;

/// What to do, in two columns: its height at a size of the type.
double advice_height(const CardCanvas& canvas, const std::vector<Phrase>& advice, double column,
                     const TextStyle& style) {
    double height = 0.0;
    for (std::size_t i = 0; i < advice.size(); i += advice_columns) {
        double row = 0.0;
        for (std::size_t j = i; j < std::min(i + advice_columns, advice.size()); ++j) {
            row = std::max(row, canvas.height(advice[j], column, style));
        }
        height += row + (i > 0 ? advice_row_gap : 0.0);
    }
    return height + 0.05;
}

void set_advice(CardCanvas& canvas, const std::vector<Phrase>& advice, double y, double column,
                const TextStyle& style) {
    for (std::size_t i = 0; i < advice.size(); i += advice_columns) {
        double row = 0.0;
        double x = canvas.inner().left();
        for (std::size_t j = i; j < std::min(i + advice_columns, advice.size()); ++j) {
            const double height = canvas.height(advice[j], column, style) + 0.02;
            canvas.text(advice[j], QRectF(x, y, column, height), style);
            row = std::max(row, height);
            x += column + advice_gutter;
        }
        y += row + advice_row_gap;
    }
}

TextStyle caption_style(const CardCanvas& canvas, bool bold) {
    TextStyle style = canvas.style(card_least_points, bold);
    style.align = Align::centre;
    style.most_lines = 3;
    style.pitch = 1.08;
    return style;
}

double caption_height(const CardCanvas& canvas, const CardSignal& hand, double width) {
    const TextStyle plain = caption_style(canvas, false);
    const TextStyle bold = caption_style(canvas, true);
    return canvas.height({hand.caption, 0}, width, plain) +
           canvas.height({hand.warning, 0}, width, bold) - (hand.warning.isEmpty() ? 0.0 : 0.4);
}

/// The tallest caption of each row.
std::vector<double> caption_heights(const CardCanvas& canvas,
                                    const std::vector<CardSignal>& signs, double width) {
    std::vector<double> heights;
    for (std::size_t i = 0; i < signs.size(); ++i) {
        if (i % signals_in_row == 0) heights.push_back(0.0);
        heights.back() = std::max(heights.back(), caption_height(canvas, signs[i], width));
    }
    return heights;
}

void set_signal(CardCanvas& canvas, const CardSignal& hand, const QRectF& cell, double side) {
    canvas.picture(QRectF(cell.center().x() - side / 2.0, cell.top(), side, side), hand.picture);
    const TextStyle plain = caption_style(canvas, false);
    const double height = canvas.height({hand.caption, 0}, cell.width(), plain) + 0.02;
    const double top = cell.top() + side + 0.3;
    canvas.text({hand.caption, 0}, QRectF(cell.left(), top, cell.width(), height), plain);
    if (hand.warning.isEmpty()) return;
    const TextStyle bold = caption_style(canvas, true);
    const double more = canvas.height({hand.warning, 0}, cell.width(), bold) + 0.02;
    canvas.text({hand.warning, 0}, QRectF(cell.left(), top + height - 0.4, cell.width(), more), bold);
}

}  // namespace

void set_card_middle(CardCanvas& canvas, const CardContent& card, double top, double bottom) {
    const QRectF& inner = canvas.inner();
    std::vector<Phrase> advice;
    for (const QString& text : card.advice) advice.push_back(with_bold_start(text));
    const double column = (inner.width() - advice_gutter) / advice_columns;
    const std::size_t rows = (card.hand_signals.size() + signals_in_row - 1) / signals_in_row;
    const double cell = inner.width() / static_cast<double>(signals_in_row);
    const std::vector<double> captions = caption_heights(canvas, card.hand_signals, cell - 0.6);
    double words = 0.0;
    for (const double height : captions) words += height + 0.3 + signal_row_gap;
    words -= signal_row_gap;

    TextStyle style = canvas.style(canvas.room().body_points);
    style.most_lines = 20;
    style.pitch = 1.16;
    const double gap = canvas.room().gap;
    const auto side_left = [&] {
        const double left =
            bottom - top - advice_height(canvas, advice, column, style) - gap - words;
        return rows > 0 ? left / static_cast<double>(rows) : 0.0;
    };
    while (style.points > style.least_points && side_left() < canvas.room().picture_side) {
        style.points -= 0.25;
    }
    const double room = side_left();
    if (room < canvas.room().picture_side) canvas.does_not_fit();
    const double side = std::clamp(room, 1.0, std::min(largest_signal, cell - 2.0));
    // What is left over goes above and below the signals.
    const double spare = std::max(0.0, (room - side) * static_cast<double>(rows)) / 3.0;

    double y = top + spare;
    set_advice(canvas, advice, y, column, style);
    y += advice_height(canvas, advice, column, style) + gap + spare;
    for (std::size_t i = 0; i < card.hand_signals.size(); ++i) {
        const std::size_t row = i / signals_in_row;
        if (i > 0 && i % signals_in_row == 0) y += side + 0.3 + captions[row - 1] + signal_row_gap;
        const QRectF area(inner.left() + static_cast<double>(i % signals_in_row) * cell + 0.3, y,
                          cell - 0.6, side);
        set_signal(canvas, card.hand_signals[i], area, side);
    }
}

namespace {

constexpr double call_points = 9.0;
constexpr double number_points = 13.0;
constexpr double most_number_points = 16.0;
constexpr double box_padding = 1.8;
constexpr double wanted_spare = 3.2;  ///< above, below and between what stands beside the code

/// The number to call in its frame, above `bottom`; returns where the frame begins.
/// @param points  of the number where it has one line
double set_call(CardCanvas& canvas, const CardContent& card, double left, double width, double bottom,
                double points) {
    const double label = canvas.width(card.call, call_points, false);
    const double room = width - 2.0 * box_padding - label - 1.6;
    TextStyle style = canvas.style(points, true);
    style.middle = true;
    style.pitch = 1.12;
    double height = canvas.line_height(points);
    if (canvas.width(card.emergency_line, 10.0, true) > room) {
        // Never cut: as many lines as it needs.
        style.points = 8.5;
        style.most_lines = 8;
        const Phrase number{card.emergency_line, 0};
        height = std::max(height, canvas.height(number, room, style));
    }
    const QRectF box(left, bottom - height - 0.8, width, height + 0.8);
    canvas.box(box, 0.5);
    TextStyle plain = canvas.style(call_points);
    plain.middle = true;
    canvas.text({card.call, 0}, QRectF(box.left() + box_padding, box.top(), label, box.height()),
                plain);
    const QRectF frame(box.left() + box_padding + label + 1.6, box.top() + 0.4, room, height);
    if (card.emergency_line.isEmpty()) {
        canvas.line(frame.left(), frame.bottom() - 1.2, frame.right(), frame.bottom() - 1.2,
                    card_hairline);
    } else {
        canvas.typed(card.emergency_line, frame, style);
    }
    return box.top();
}

constexpr double tick_side = 3.4;
constexpr double tick_gap = 1.2;
constexpr double widest_tick_row = 46.0;

TextStyle tick_style(const CardCanvas& canvas) {
    TextStyle style = canvas.style(9.0, true);
    style.most_lines = 2;
    style.pitch = 1.08;
    style.middle = true;
    return style;
}

/// The box to tick and its word, in the lower corner.
QRectF tick_row(const CardCanvas& canvas, const CardContent& card) {
    const QRectF& inner = canvas.inner();
    const TextStyle style = tick_style(canvas);
    const double before = tick_side + tick_gap;
    const double width =
        std::min(before + canvas.width(card.understood, style.points, true) + 0.1, widest_tick_row);
    const int lines = std::clamp(canvas.lines(card.understood, width - before, style), 1, 2);
    const double height =
        std::max(tick_side + 0.6, canvas.line_height(style.points, lines, style.pitch));
    return {inner.right() - width, inner.bottom() - height, width, height};
}

void set_tick(CardCanvas& canvas, const CardContent& card, const QRectF& row) {
    canvas.add(RectItem{QRectF(row.left(), row.center().y() - tick_side / 2.0, tick_side, tick_side),
                        0.4, 0.4, Ink::black});
    canvas.text({card.understood, 0}, row.adjusted(tick_side + tick_gap, 0.0, 0.0, 0.0),
                tick_style(canvas));
}

/// The code above the box to tick, at the edge of the card, whose margin is white as well. Returns
/// where its own white edge begins.
double set_code(CardCanvas& canvas, const std::optional<QrItem>& code, double bottom) {
    constexpr double quiet = 4.0 * least_code_field;
    if (!code) return bottom;
    const double side = code->side * least_code_field;
    QrItem placed = *code;
    placed.rect = QRectF(canvas.inner().right() - side, bottom - quiet - side, side, side);
    canvas.add(placed);
    return placed.rect.top() - quiet;
}

}  // namespace

double set_card_foot(CardCanvas& canvas, const CardContent& card,
                     const std::optional<QrItem>& code) {
    const QRectF& inner = canvas.inner();
    const QRectF tick = tick_row(canvas, card);
    set_tick(canvas, card, tick);
    const double corner_top = set_code(canvas, code, tick.top());
    // The white edge of the code is part of the gap.
    const double corner = code ? code->side * least_code_field : 0.0;
    const double width = inner.width() - corner - card_column_gap;
    const double beside_tick = tick.left() - inner.left() - card_column_gap;
    TextStyle body = canvas.style(canvas.room().foot_points);
    body.most_lines = 8;
    body.pitch = 1.14;
    TextStyle small = canvas.style(card_least_points);
    small.most_lines = 4;
    small.pitch = 1.1;
    const auto stack = [&](const Phrase& words, double bottom, double room, const TextStyle& style) {
        const double height = canvas.height(words, room, style) + 0.02;
        canvas.text(words, QRectF(inner.left(), bottom - height, room, height), style);
        return bottom - height;
    };
    double y = stack({card.standing, 0}, inner.bottom(), beside_tick, small);
    y = std::min(y, tick.top());
    // The frame of the number stands between what to watch for and what the card is.
    const double watch = canvas.height(with_bold_start(card.watch), width, body);
    const double flying = canvas.height(with_bold_start(card.no_flying), width, body);
    const double call_height = canvas.line_height(number_points) + 0.8;
    double left = y - call_height - watch - flying - corner_top;
    // Room beside the code goes to the number first, which is never larger than the one rule.
    double points = number_points;
    const double most = std::min(most_number_points, canvas.room().rule_least_points);
    while (points + 0.5 <= most &&
           left - (canvas.line_height(points + 0.5) - canvas.line_height(points)) >= wanted_spare) {
        left -= canvas.line_height(points + 0.5) - canvas.line_height(points);
        points += 0.5;
    }
    const double spare = std::clamp(left / 4.0, 0.5, 2.2);
    y = set_call(canvas, card, inner.left(), width, y - spare, points);
    y = stack(with_bold_start(card.watch), y - spare, width, body);
    y = stack(with_bold_start(card.no_flying), y - spare * 0.6, width, body);
    const double top = std::min(y, corner_top) - 0.8;
    canvas.line(inner.left(), top, inner.right(), top, card_hairline, Ink::grey);
    return top;
}

}  // namespace leadline
