// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <numeric>

#include "ui/sheet/card_parts.h"

namespace leadline {
namespace {

constexpr double label_points = 8.0;
constexpr double value_points = 9.5;
constexpr double unit_points = 10.0;
constexpr double label_gap = 1.1;
constexpr double unit_gap = 0.8;

/// How much lower small type must hang to stand on the baseline of larger type beside it.
double baseline_drop(double larger, double smaller) {
    return baseline_below_top({}, larger) - baseline_below_top({}, smaller);
}

double natural_width(const CardCanvas& canvas, const CardFact& fact, double points) {
    const double value =
        fact.value.isEmpty() ? card_blank : canvas.width(fact.value, points, true);
    return canvas.width(fact.label, label_points, false) + label_gap + value;
}

/// A label and its value on one row; the label on the value's baseline.
void set_fact(CardCanvas& canvas, const CardFact& fact, const QPointF& at, double width,
              double points) {
    const double label = canvas.width(fact.label, label_points, false);
    canvas.text({fact.label, 0},
                QRectF(at.x(), at.y() + baseline_drop(value_points, label_points), label,
                       canvas.line_height(label_points)),
                canvas.style(label_points));
    const double left = at.x() + label + label_gap;
    const double room = std::max(1.0, width - label - label_gap);
    if (fact.value.isEmpty()) {
        const double foot = at.y() + baseline_below_top({}, value_points) + 0.4;
        canvas.line(left, foot, left + room, foot, card_hairline);
        return;
    }
    canvas.typed(fact.value, QRectF(left, at.y(), room, canvas.line_height(value_points)),
                 canvas.style(points, true));
}

}  // namespace

double set_card_name(CardCanvas& canvas, const CardContent& card, double y) {
    constexpr double tag_points = 10.0;
    constexpr double tag_padding = 2.0;
    constexpr double widest_tag = 34.0;
    const QRectF& inner = canvas.inner();
    const double height = canvas.line_height(canvas.room().name_points);
    double name_width = inner.width();
    if (!card.group.isEmpty()) {
        const double natural = canvas.width(card.group, tag_points, true) + 2.0 * tag_padding;
        const double width = std::min(natural, widest_tag);
        const QRectF tag(inner.right() - width, y + (height - 6.2) / 2.0, width, 6.2);
        canvas.box(tag, 0.35);
        TextStyle style = canvas.style(tag_points, true);
        style.align = Align::centre;
        style.middle = true;
        canvas.typed(card.group, tag.adjusted(tag_padding, 0.2, -tag_padding, -0.2), style);
        name_width -= width + card_column_gap;
    }
    TextStyle style = canvas.style(canvas.room().name_points, true);
    style.most_lines = 1;
    if (card.name.isEmpty()) {
        // To write on, as long as most names.
        const double foot = y + height - 1.0;
        canvas.line(inner.left(), foot, inner.left() + std::min(name_width, 60.0), foot,
                    card_hairline);
        return y + height;
    }
    if (canvas.width(card.name, 12.0, true) <= name_width) {
        style.middle = true;
        canvas.typed(card.name, QRectF(inner.left(), y, name_width, height), style);
        return y + height;
    }
    // A long name takes several lines, in smaller type.
    style.points = std::min(style.points, 12.0);
    style.most_lines = canvas.room().name_lines;
    style.pitch = 1.12;
    style.middle = true;
    const double needed = canvas.height({card.name, 0}, name_width, style);
    const double most = canvas.line_height(card_least_points, style.most_lines, style.pitch);
    const double taken = std::max(height, std::min(needed, std::max(most, height)));
    canvas.typed(card.name, QRectF(inner.left(), y, name_width, taken), style);
    return y + taken;
}

double set_card_meeting(CardCanvas& canvas, const CardContent& card, double y) {
    const QRectF& inner = canvas.inner();
    const double row = canvas.line_height(value_points);
    // Day and instructor share a row, in smaller type where they must.
    double points = value_points;
    const auto needed = [&] {
        return natural_width(canvas, card.when, points) + card_column_gap + 0.4 +
               natural_width(canvas, card.instructor, points);
    };
    while (points > card_least_points && needed() > inner.width()) points -= 0.5;
    const double day =
        std::min(natural_width(canvas, card.when, points) + 0.2, inner.width() * 0.66);
    set_fact(canvas, card.when, QPointF(inner.left(), y), day, points);
    const double room = inner.width() - day - card_column_gap;
    // The instructor stands at the right edge, or takes the room there is.
    const double width =
        std::min(natural_width(canvas, card.instructor, points) + 0.2, room);
    set_fact(canvas, card.instructor, QPointF(inner.right() - width, y), width, points);
    y += row;
    TextStyle style = canvas.style(value_points, true);
    int lines = 1;
    if (canvas.lines(card.where, inner.width(), style) > 1) {
        // In the least type as many lines as it needs, before the signals grow.
        TextStyle least = canvas.style(card_least_points, true);
        lines = std::clamp(canvas.lines(card.where, inner.width(), least), 1,
                           canvas.room().where_lines);
    }
    style.most_lines = lines;
    style.pitch = 1.14;
    const double height = lines == 1 ? row : canvas.line_height(card_least_points, lines, 1.14);
    if (card.where.isEmpty()) {
        canvas.line(inner.left(), y + row - 0.8, inner.right(), y + row - 0.8, card_hairline);
    } else {
        canvas.typed(card.where, QRectF(inner.left(), y, inner.width(), height), style);
    }
    const double foot = y + height + 0.8;
    canvas.line(inner.left(), foot, inner.right(), foot, 0.5);
    return foot + 0.3;
}

double set_card_kit(CardCanvas& canvas, const CardContent& card, double y) {
    if (card.kit.empty()) return y;
    constexpr double gap = 1.4;
    constexpr double most_width = 26.0;
    const QRectF& inner = canvas.inner();
    const double side = canvas.room().kit_side;
    TextStyle style = canvas.style(card_least_points, true);
    style.align = Align::centre;
    style.pitch = 1.1;
    std::vector<double> widths;
    for (const CardKit& item : card.kit) {
        const double value = canvas.width(item.value, style.points, true);
        widths.push_back(std::clamp(value, side, most_width));
    }
    const double room = inner.width() - gap * static_cast<double>(widths.size() - 1);
    widths = fair_widths(widths, room);
    int most = 1;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        most = std::max(most, canvas.lines(card.kit[i].value, widths[i], style));
    }
    style.most_lines = std::min(most, canvas.room().kit_lines);
    const double total = std::accumulate(widths.begin(), widths.end(), 0.0);
    const double spare = std::max(0.0, room - total) / static_cast<double>(widths.size() - 1);
    const double foot = y + side + 0.3 + canvas.line_height(style.points, style.most_lines, style.pitch);
    double x = inner.left();
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const CardKit& item = card.kit[i];
        canvas.picture(QRectF(x + (widths[i] - side) / 2.0, y, side, side), item.picture);
        const QRectF below(x, y + side + 0.3, widths[i], foot - y - side - 0.3);
        if (item.value.isEmpty()) {
            const double base = below.top() + baseline_below_top({}, style.points) + 0.3;
            canvas.line(below.left(), base, below.right(), base, card_hairline);
        } else {
            canvas.typed(item.value, below, style);
        }
        x += widths[i] + gap + spare;
    }
    return foot;
}

namespace {

/// What a figure is set into, and how wide it wants to be.
struct FigureCell {
    const CardFigure* figure;
    bool strong;
    double width = 0.0;
};

constexpr double figure_padding = 2.0;  // inside the frame of the strong figure
constexpr double figure_picture = 12.0;
constexpr double caption_points = 8.5;

double number_width(const CardCanvas& canvas, const CardFigure& figure, double points) {
    return figure.number.isEmpty() ? card_blank : canvas.width(figure.number, points, true);
}

double natural_width(const CardCanvas& canvas, const FigureCell& cell, double points) {
    const CardFigure& figure = *cell.figure;
    double values = number_width(canvas, figure, points) + unit_gap +
                    canvas.width(figure.unit, unit_points, cell.strong);
    if (!figure.as_read.isEmpty()) {
        values += 2.0 * unit_gap +
                  canvas.width(QStringLiteral("= ") + figure.as_read, unit_points, false);
    }
    double width = std::max({canvas.width(figure.label, caption_points, cell.strong), values,
                             canvas.width(figure.action, caption_points, cell.strong)});
    if (!figure.picture.isEmpty()) width += figure_picture + 1.6;
    return width + (cell.strong ? 2.0 * figure_padding : 0.0);
}

void set_figure(CardCanvas& canvas, const FigureCell& cell, QRectF area, double points,
                double caption_height, double action_height) {
    const CardFigure& figure = *cell.figure;
    if (cell.strong) {
        canvas.box(area, 0.7);
        area.adjust(figure_padding, 1.0, -figure_padding, -1.4);
    } else {
        area.adjust(0.0, 1.0, 0.0, -1.4);
    }
    if (!figure.picture.isEmpty()) {
        canvas.picture(QRectF(area.left() - 0.4, area.center().y() - figure_picture / 2.0,
                              figure_picture, figure_picture),
                       figure.picture);
        area.setLeft(area.left() + figure_picture + 1.2);
    }
    TextStyle caption = canvas.style(caption_points, cell.strong);
    caption.most_lines = 3;
    caption.pitch = 1.1;
    canvas.text({figure.label, 0},
                QRectF(area.left(), area.top(), area.width(), caption_height), caption);

    const QString as_read =
        figure.as_read.isEmpty() ? QString() : QStringLiteral("= ") + figure.as_read;
    const double unit = canvas.width(figure.unit, unit_points, cell.strong);
    const double read = canvas.width(as_read, unit_points, false);
    const double beside = unit_gap + unit + (as_read.isEmpty() ? 0.0 : 2.0 * unit_gap + read);
    TextStyle digits = canvas.style(points, true);
    digits.digits = true;
    const double top = area.top() + caption_height + 0.2;
    const QRectF number(area.left(), top,
                        std::min(number_width(canvas, figure, points), area.width() - beside),
                        points * mm_per_point * 0.95);
    const double baseline = top + baseline_below_top(digits, points);
    if (figure.number.isEmpty()) {
        canvas.line(number.left(), baseline, number.right(), baseline, card_hairline);
    } else {
        canvas.text({figure.number, 0}, number, digits);
    }
    const double unit_top = baseline - baseline_below_top({}, unit_points);
    canvas.text({figure.unit, 0},
                QRectF(number.right() + unit_gap, unit_top, unit, canvas.line_height(unit_points)),
                canvas.style(unit_points, cell.strong));
    canvas.text({as_read, 0},
                QRectF(number.right() + unit_gap + unit + 2.0 * unit_gap, unit_top, read,
                       canvas.line_height(unit_points)),
                canvas.style(unit_points));
    canvas.text({figure.action, 0},
                QRectF(area.left(), number.bottom() + 0.4, area.width(), action_height), caption);
}

}  // namespace

double set_card_figures(CardCanvas& canvas, const CardContent& card, double y) {
    const QRectF& inner = canvas.inner();
    const double points = canvas.room().figure_points;
    std::array<FigureCell, 3> cells{
        {{&card.low_on_air, true}, {&card.deepest, false}, {&card.time, false}}};
    constexpr double least_gap = 3.4;
    const double room = inner.width() - 2.0 * least_gap;
    std::vector<double> widths;
    for (const FigureCell& cell : cells) widths.push_back(natural_width(canvas, cell, points) + 0.3);
    widths = fair_widths(widths, room);
    TextStyle plain = canvas.style(caption_points, false);
    TextStyle strong = canvas.style(caption_points, true);
    int label_lines = 1;
    int action_lines = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double frame = cells[i].strong ? 2.0 * figure_padding + figure_picture + 1.2 : 0.0;
        const TextStyle& style = cells[i].strong ? strong : plain;
        label_lines = std::max(label_lines,
                               canvas.lines(cells[i].figure->label, widths[i] - frame, style));
        action_lines = std::max(action_lines,
                                canvas.lines(cells[i].figure->action, widths[i] - frame, style));
    }
    label_lines = std::min(label_lines, 3);
    action_lines = std::min(action_lines, 3);
    const double captions = canvas.line_height(caption_points, label_lines, 1.1);
    const double actions = canvas.line_height(caption_points, action_lines, 1.1);
    const double height = std::max(
        figure_picture + 1.0, captions + actions + points * mm_per_point * 0.95 + 3.0);
    double used = 0.0;
    for (const double width : widths) used += width;
    // Spare room goes around the figures that stand on their own.
    const double gap = (inner.width() - used) / 2.0;
    const double cap = std::min(gap, 11.0);
    double x = inner.left();
    if (gap > cap) widths.front() += (gap - cap) * 2.0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        set_figure(canvas, cells[i], QRectF(x, y, widths[i], height), points, captions, actions);
        x += widths[i] + cap;
        if (i == 1) {
            canvas.line(x - cap / 2.0, y + 1.5, x - cap / 2.0, y + height - 1.5, card_hairline,
                        Ink::grey);
        }
    }
    return y + height;
}

namespace {

constexpr double rule_padding = 2.4;

double rule_width(const CardCanvas& canvas) {
    return canvas.inner().width() - 2.0 * rule_padding;
}

/// A long rule goes on two lines rather than be small.
bool rule_on_one_line(const CardCanvas& canvas, const CardContent& card) {
    const double points = canvas.room().rule_least_points;
    return canvas.width(card.breath_rule, points, true) <= rule_width(canvas);
}

/// The least width on which a text takes no more lines: lines about as long as one another, no last
/// word on its own.
double even_width(const CardCanvas& canvas, const QString& text, double most,
                  const TextStyle& style) {
    constexpr double step = 1.0;
    const int lines = canvas.lines(text, most, style);
    if (lines < 2) return most;
    double width = most;
    while (width - step > most / 2.0 && canvas.lines(text, width - step, style) == lines) {
        width -= step;
    }
    return width;
}

}  // namespace

double card_rule_points(const CardCanvas& canvas, const CardContent& card) {
    const CardRoom& room = canvas.room();
    TextStyle style = canvas.style(room.rule_points, true);
    const double width = rule_width(canvas);
    if (rule_on_one_line(canvas, card)) {
        const double natural = canvas.width(card.breath_rule, style.points, true);
        return std::min(style.points, 0.99 * style.points * width / natural);
    }
    style.points = room.rule_least_points + 1.0;
    while (style.points > card_least_points &&
           canvas.lines(card.breath_rule, width, style) > 2) {
        style.points -= 0.5;
    }
    return style.points;
}

double set_card_rule(CardCanvas& canvas, const CardContent& card, double y) {
    constexpr double padding = rule_padding;
    constexpr double reason_points = 9.0;
    const QRectF& inner = canvas.inner();
    const double width = rule_width(canvas);
    const double points = card_rule_points(canvas, card);
    const double growth_points = std::min(15.0, points);
    TextStyle rule = canvas.style(points, true);
    rule.ink = Ink::white;
    rule.pitch = 1.1;
    rule.most_lines = rule_on_one_line(canvas, card) ? 1 : 2;
    rule.least_points = points - 0.5;
    const double rule_height = canvas.line_height(points, rule.most_lines, rule.pitch);

    TextStyle reason = canvas.style(reason_points);
    reason.ink = Ink::white;
    reason.pitch = 1.14;
    const double growth = canvas.width(card.breath_growth, growth_points, true) + 0.2;
    const double reason_width = width - growth - card_column_gap;
    reason.most_lines = std::min(3, std::max(1, canvas.lines(card.breath_reason, reason_width, reason)));
    const double reason_height =
        std::max(canvas.line_height(reason_points, reason.most_lines, reason.pitch),
                 growth_points * mm_per_point * 0.92 + 0.4);
    const QRectF band(inner.left(), y, inner.width(), rule_height + reason_height + 1.2);
    canvas.box(band, 0.0);
    rule.middle = true;
    canvas.text({card.breath_rule, 0}, QRectF(band.left() + padding, band.top() + 0.2, width, rule_height),
                rule);
    reason.middle = true;
    const double second = band.top() + 0.2 + rule_height;
    const double even = even_width(canvas, card.breath_reason, reason_width, reason);
    canvas.text({card.breath_reason, 0},
                QRectF(band.left() + padding, second, even, reason_height), reason);
    TextStyle number = canvas.style(growth_points, true);
    number.ink = Ink::white;
    number.middle = true;
    number.digits = true;
    number.align = Align::right;
    canvas.text({card.breath_growth, 0},
                QRectF(band.right() - padding - growth, second, growth, reason_height), number);
    return band.bottom();
}

}  // namespace leadline
