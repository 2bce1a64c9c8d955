// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_setter.h"

#include <algorithm>
#include <numeric>
#include <vector>

namespace leadline {
namespace {

// All in millimetres; type in points.
constexpr double side_margin = 5.5;
constexpr double top_margin = 5.0;
constexpr double bottom_margin = 4.0;
constexpr double hairline = 0.15;
constexpr double heavy_line = 0.6;
constexpr double label_points = 7.0;
constexpr double value_points = 8.5;
constexpr double least_points = 7.0;
constexpr double row_height = 4.1;
constexpr double small_row = 3.1;  // of a value in its least type, on several lines
constexpr double label_gap = 1.2;   // between a label and its value
constexpr double column_gap = 3.0;
constexpr double blank_length = 14.0;  // of a line to write on
constexpr double unit_points = 9.0;
constexpr double caption_points = 7.5;
constexpr double unit_gap = 0.9;

/// What gives way when a card is full.
struct Room {
    double name_height;
    double name_points;
    double figure_points;
    double figures_height;
    double foot_points;
    double body_pitch;
    int where_lines;
};
constexpr Room ample{9.4, 23.0, 22.0, 15.8, 7.75, 1.18, 2};
constexpr Room tight{7.4, 17.0, 16.0, 13.8, 7.0, 1.12, 1};

class CardSetter {
public:
    CardSetter(const CardContent& card, const QRectF& frame, const Room& room, TypeSetter& setter,
               std::vector<SheetItem>& items)
        : card_(card), room_(room), setter_(setter), items_(items) {
        inner_ = frame.adjusted(side_margin, top_margin, -side_margin, -bottom_margin);
    }
    /// Whether all advice found room at its least size.
    bool set() {
        double y = set_name(inner_.top());
        y = set_meeting(y);
        y = set_kit(y);
        y = set_figures(y);
        y = set_breath(y);
        const double foot = set_foot();
        return set_middle(y, foot);
    }

private:
    double set_name(double y);
    double set_meeting(double y);
    double set_kit(double y);
    double set_figures(double y);
    double set_breath(double y);
    /// Sets the foot of the card upwards from its lower edge; returns where it begins.
    double set_foot();
    double set_call();
    bool set_middle(double top, double bottom);
    bool set_advice(const QRectF& area);
    void set_signals(const QRectF& area);
    [[nodiscard]] double figure_width(const CardFigure& figure) const;
    void set_figure(const CardFigure& figure, const QRectF& cell);

    void text(const Phrase& phrase, const QRectF& frame, const TextStyle& style) {
        if (!phrase.text.isEmpty()) items_.emplace_back(setter_.set(phrase, frame, style));
    }
    void line(double x1, double y1, double x2, double y2, double width, Ink ink = Ink::black) {
        items_.emplace_back(LineItem{QLineF(x1, y1, x2, y2), width, ink});
    }
    void rule(double y, double width) {
        line(inner_.left(), y, inner_.right(), y, width, width < 0.3 ? Ink::grey : Ink::black);
    }
    /// A label and its value on one row; the label on the value's baseline.
    void fact(const CardFact& fact, const QPointF& at, double width, int most_lines = 1);
    [[nodiscard]] double natural_width(const CardFact& fact) const;

    const CardContent& card_;
    const Room& room_;
    TypeSetter& setter_;
    std::vector<SheetItem>& items_;
    QRectF inner_;
};

/// How much lower small type must hang to stand on the baseline of larger type beside it.
double baseline_drop(double larger, double smaller) {
    return baseline_below_top({}, larger) - baseline_below_top({}, smaller);
}

double CardSetter::natural_width(const CardFact& fact) const {
    const double value = fact.value.isEmpty()
                             ? blank_length
                             : setter_.width({fact.value, 0}, value_points, true);
    return setter_.width({fact.label, 0}, label_points, false) + label_gap + value;
}

void CardSetter::fact(const CardFact& fact, const QPointF& at, double width, int most_lines) {
    const double label = setter_.width({fact.label, 0}, label_points, false) + 0.1;
    const double drop = baseline_drop(value_points, label_points);
    text({fact.label, 0}, QRectF(at.x(), at.y() + drop, label, 3.2), {.points = label_points});
    const double left = at.x() + label + label_gap;
    const double room = std::max(1.0, width - label - label_gap);
    if (fact.value.isEmpty()) {
        const double foot = at.y() + baseline_below_top({}, value_points) + 0.4;
        line(left, foot, left + std::min(room, blank_length * 1.6), foot, hairline);
        return;
    }
    const double height = most_lines == 1 ? row_height : small_row * most_lines;
    text({fact.value, 0}, QRectF(left, at.y(), room, height),
         {.points = value_points, .bold = true, .most_lines = most_lines, .pitch = 1.14});
}

double CardSetter::set_name(double y) {
    constexpr double tag_points = 10.0;
    constexpr double tag_padding = 2.0;
    constexpr double tag_height = 6.8;
    constexpr double widest_tag = 36.0;
    double name_width = inner_.width();
    if (!card_.group.isEmpty()) {
        const double natural =
            setter_.width({card_.group, 0}, tag_points, true) + 2.0 * tag_padding + 0.1;
        const double width = std::min(natural, widest_tag);
        const QRectF tag(inner_.right() - width, y + 0.7, width, tag_height);
        items_.emplace_back(RectItem{tag, 1.2, 0.35, Ink::black});
        text({card_.group, 0}, tag.adjusted(tag_padding, 0.2, -tag_padding, -0.2),
             {.points = tag_points, .bold = true, .align = Align::centre, .most_lines = 2,
              .pitch = 1.08, .middle = true});
        name_width -= width + column_gap;
    }
    text({card_.name, 0}, QRectF(inner_.left(), y - 0.8, name_width, room_.name_height + 0.8),
         {.points = room_.name_points, .bold = true, .most_lines = 3, .pitch = 1.12,
          .middle = true});
    return y + room_.name_height;
}

double CardSetter::set_meeting(double y) {
    const double half = std::min(natural_width(card_.when) + 0.5, inner_.width() * 0.6);
    fact(card_.when, QPointF(inner_.left(), y), half);
    fact(card_.instructor, QPointF(inner_.left() + half + column_gap, y),
         inner_.width() - half - column_gap);
    // A long place gets a second line.
    const bool is_long = natural_width(card_.where) > inner_.width();
    const int lines = is_long ? room_.where_lines : 1;
    fact(card_.where, QPointF(inner_.left(), y + row_height), inner_.width(), lines);
    const double foot =
        y + row_height + (lines == 1 ? row_height : small_row * lines) + 0.9;
    rule(foot, heavy_line);
    return foot + 1.3;
}

/// Widths that together take no more than `room`: the widest give way first.
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

double CardSetter::set_kit(double y) {
    // Four columns, two rows; the cylinder takes the last two columns of the second.
    constexpr std::size_t columns = 4;
    std::vector<CardFact> facts = card_.kit;
    facts.push_back(card_.lead);
    facts.push_back(card_.cylinder);
    std::vector<double> widths(columns, 0.0);
    for (std::size_t i = 0; i + 1 < facts.size(); ++i) {
        widths[i % columns] = std::max(widths[i % columns], natural_width(facts[i]) + 0.2);
    }
    const double room = inner_.width() - column_gap * (columns - 1);
    widths = fair_widths(widths, room);
    const double total = std::accumulate(widths.begin(), widths.end(), 0.0);
    const double spare = std::max(0.0, room - total) / (columns - 1);
    double x = inner_.left();
    for (std::size_t i = 0; i < columns; ++i) {
        fact(facts[i], QPointF(x, y), widths[i]);
        const std::size_t below = i + columns;
        const double width = below + 1 == facts.size() ? inner_.right() - x : widths[i];
        if (below < facts.size()) fact(facts[below], QPointF(x, y + row_height), width);
        x += widths[i] + column_gap + spare;
    }
    return y + 2.0 * row_height + 1.2;
}

double CardSetter::figure_width(const CardFigure& figure) const {
    const auto width = [&](const QString& words, double points, bool bold) {
        return words.isEmpty() ? 0.0 : setter_.width({words, 0}, points, bold);
    };
    const double number =
        figure.number.isEmpty() ? blank_length : width(figure.number, room_.figure_points, true);
    return 0.3 + std::max({width(figure.label, caption_points, figure.strong),
                           number + unit_gap + width(figure.unit, unit_points, false),
                           width(figure.action, caption_points, figure.strong)});
}

void CardSetter::set_figure(const CardFigure& figure, const QRectF& cell) {
    const TextStyle caption{.points = caption_points, .bold = figure.strong};
    text({figure.label, 0}, QRectF(cell.left(), cell.top() + 1.0, cell.width(), 3.3), caption);
    const double unit = setter_.width({figure.unit, 0}, unit_points, false) + 0.1;
    const double natural =
        figure.number.isEmpty()
            ? blank_length
            : setter_.width({figure.number, 0}, room_.figure_points, true) + 0.1;
    const QRectF frame(cell.left(), cell.top() + 4.5,
                       std::min(natural, cell.width() - unit - unit_gap), cell.height() - 8.6);
    const TextStyle style{.points = room_.figure_points, .least_points = 10.0, .bold = true,
                          .digits = true};
    const double baseline = frame.top() + baseline_below_top(style, style.points);
    if (figure.number.isEmpty()) {
        line(frame.left(), baseline, frame.right(), baseline, hairline);
    } else {
        text({figure.number, 0}, frame, style);
    }
    text({figure.unit, 0},
         QRectF(frame.right() + unit_gap, baseline - baseline_below_top({}, unit_points), unit, 4.0),
         {.points = unit_points});
    text({figure.action, 0}, QRectF(cell.left(), cell.bottom() - 4.2, cell.width(), 3.3), caption);
}

double CardSetter::set_figures(double y) {
    const double height = room_.figures_height;
    constexpr double padding = 2.0;  // inside the frame of the strong figure
    double total = 0.0;
    for (const CardFigure& figure : card_.figures) {
        total += figure_width(figure) + (figure.strong ? 2.0 * padding : 0.0);
    }
    const std::size_t count = card_.figures.size();
    if (count == 0) return y;
    // Spare room goes between the figures; a lack is taken from all alike.
    const double gaps = static_cast<double>(count - 1);
    const double room = inner_.width() - gaps * column_gap;
    const double scale = std::min(1.0, room / total);
    const double gap = column_gap + (gaps > 0.0 ? std::max(0.0, room - total) / gaps : 0.0);
    double x = inner_.left();
    for (std::size_t i = 0; i < count; ++i) {
        const CardFigure& figure = card_.figures[i];
        const double inset = figure.strong ? padding : 0.0;
        const double width = (figure_width(figure) + 2.0 * inset) * scale;
        const QRectF cell(x, y, width, height);
        if (figure.strong) items_.emplace_back(RectItem{cell, 1.2, 0.7, Ink::black});
        set_figure(figure, cell.adjusted(inset, 0.0, -inset, 0.0));
        x += width + gap;
        const bool between_weak = i + 1 < count && !figure.strong && !card_.figures[i + 1].strong;
        if (between_weak) {
            line(x - gap / 2.0, y + 1.5, x - gap / 2.0, y + height - 1.5, hairline, Ink::grey);
        }
    }
    return y + height + 1.7;
}

double CardSetter::set_breath(double y) {
    constexpr double height = 13.0;
    constexpr double padding = 2.6;
    constexpr double growth_points = 20.0;
    const QRectF band(inner_.left(), y, inner_.width(), height);
    items_.emplace_back(RectItem{band, 1.2, 0.0, Ink::black});
    const double growth = setter_.width({card_.breath_growth, 0}, growth_points, true) + 0.2;
    const double width = band.width() - growth - 3.0 * padding;
    text({card_.breath_rule, 0}, QRectF(band.left() + padding, band.top() + 0.3, width, 6.3),
         {.points = 14.5, .least_points = 10.0, .bold = true, .ink = Ink::white});
    text({card_.breath_reason, 0}, QRectF(band.left() + padding, band.top() + 6.5, width, 6.2),
         {.points = 7.5, .ink = Ink::white, .most_lines = 2, .pitch = 1.1});
    text({card_.breath_growth, 0},
         QRectF(band.right() - growth - padding, band.top(), growth, height),
         {.points = growth_points, .least_points = 12.0, .bold = true, .ink = Ink::white,
          .middle = true, .digits = true});
    return y + height + 1.8;
}

double CardSetter::set_call() {
    constexpr double padding = 2.0;
    constexpr double call_points = 8.0;
    constexpr double number_points = 13.0;
    constexpr double standing_width = 33.0;
    TextStyle number_style{.points = number_points, .bold = true, .pitch = 1.12, .middle = true};
    const Phrase number{card_.emergency_line, 0};
    const double label = setter_.width({card_.call, 0}, call_points, false) + 0.1;
    const double around = 2.0 * padding + label + 1.6;
    // A number that needs more than a line takes the whole width, and what the card is not moves
    // below it.
    double width = inner_.width() - standing_width - column_gap;
    double height = setter_.height({QStringLiteral("0"), 0}, width, number_points, number_style);
    QRectF standing(inner_.right() - standing_width, inner_.bottom() - 6.2, standing_width, 6.2);
    if (setter_.width(number, 9.5, true) > width - around) {
        width = inner_.width();
        number_style.points = 9.5;
        number_style.most_lines = 6;
        height = setter_.height(number, width - around, number_style.least_points, number_style);
        standing = QRectF(inner_.left(), inner_.bottom() - 3.1, inner_.width(), 3.1);
    }
    const double foot = standing.left() > inner_.left() ? inner_.bottom() : standing.top() - 0.4;
    const QRectF box(inner_.left(), foot - height - 1.2, width, height + 1.2);
    items_.emplace_back(RectItem{box, 1.2, 0.5, Ink::black});
    text({card_.call, 0}, QRectF(box.left() + padding, box.top(), label, box.height()),
         {.points = call_points, .middle = true});
    const QRectF frame(box.left() + padding + label + 1.6, box.top() + 0.5, width - around,
                       height + 0.2);
    if (number.text.isEmpty()) {
        line(frame.left(), frame.bottom() - 1.2, frame.right(), frame.bottom() - 1.2, hairline);
    } else {
        text(number, frame, number_style);
    }
    const Align align = standing.left() > inner_.left() ? Align::right : Align::left;
    text({card_.standing, 0}, standing,
         {.points = 7.0, .align = align, .most_lines = 2, .pitch = 1.15, .middle = true});
    return box.top();
}

double CardSetter::set_foot() {
    constexpr double gap = 0.9;
    const double call = set_call();
    const TextStyle body{
        .points = room_.foot_points, .most_lines = 3, .pitch = room_.body_pitch};
    const auto stack = [&](const CardAdvice& advice, double bottom) {
        const Phrase words = phrase(advice.head, advice.text);
        const double height = setter_.height(words, inner_.width(), body.points, body) + 0.05;
        text(words, QRectF(inner_.left(), bottom - height, inner_.width(), height), body);
        return bottom - height;
    };
    double y = stack(card_.watch, call - gap);
    y = stack(card_.after, y) - gap;
    rule(y, hairline);
    return y - 1.3;
}

bool CardSetter::set_advice(const QRectF& area) {
    constexpr double least_gap = 0.6;
    constexpr double most_gap = 2.2;
    TextStyle style{.points = 8.5, .most_lines = 20, .pitch = room_.body_pitch};
    std::vector<Phrase> phrases;
    for (const CardAdvice& advice : card_.advice) {
        phrases.push_back(phrase(advice.head, advice.text));
    }
    const double gaps = phrases.size() > 1 ? static_cast<double>(phrases.size() - 1) : 1.0;
    const auto spare = [&] {
        double left = area.height();
        for (const Phrase& one : phrases) {
            left -= setter_.height(one, area.width(), style.points, style);
        }
        return left;
    };
    while (style.points > style.least_points && spare() < gaps * least_gap) style.points -= 0.25;
    const double gap = std::clamp(spare() / gaps, 0.0, most_gap);
    const bool fits = spare() >= gaps * 0.3;
    double y = area.top();
    for (const Phrase& one : phrases) {
        const double wanted = setter_.height(one, area.width(), style.points, style) + 0.01;
        const double height = std::min(wanted, area.bottom() - y);
        if (height > 0.0) text(one, QRectF(area.left(), y, area.width(), height), style);
        y += height + gap;
    }
    return fits;
}

void CardSetter::set_signals(const QRectF& area) {
    constexpr std::size_t columns = 2;
    constexpr double caption_height = 3.2;
    constexpr double largest_picture = 13.0;
    const std::size_t rows = (card_.hand_signals.size() + columns - 1) / columns;
    if (rows == 0) return;
    const double cell_height = area.height() / static_cast<double>(rows);
    const double cell_width = area.width() / columns;
    const double side = std::min({cell_height - caption_height - 0.8, cell_width - 2.0,
                                  largest_picture});
    for (std::size_t i = 0; i < card_.hand_signals.size(); ++i) {
        const CardSignal& hand = card_.hand_signals[i];
        const double x = area.left() + static_cast<double>(i % columns) * cell_width;
        const double y = area.top() + static_cast<double>(i / columns) * cell_height;
        items_.emplace_back(
            PictureItem{QRectF(x + (cell_width - side) / 2.0, y, side, side), hand.picture});
        text({hand.caption, 0}, QRectF(x, y + side + 0.3, cell_width, caption_height),
             {.points = caption_points, .align = Align::centre});
    }
}

bool CardSetter::set_middle(double top, double bottom) {
    constexpr double signals_width = 36.0;
    constexpr double gutter = 1.7;
    const double height = std::max(0.0, bottom - top);
    const double split = inner_.right() - signals_width - gutter;
    line(split, top + 0.5, split, bottom - 0.5, hairline, Ink::grey);
    set_signals(QRectF(split + gutter, top, signals_width, height));
    return set_advice(QRectF(inner_.left(), top, split - gutter - inner_.left(), height));
}

}  // namespace

void set_card(const CardContent& card, const QRectF& frame, TypeSetter& setter, Page& page) {
    std::vector<SheetItem> items;
    if (!CardSetter(card, frame, ample, setter, items).set()) {
        items.clear();
        static_cast<void>(CardSetter(card, frame, tight, setter, items).set());
    }
    page.items.insert(page.items.end(), items.begin(), items.end());
}

}  // namespace leadline
