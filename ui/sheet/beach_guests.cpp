// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "ui/sheet/beach_page.h"
#include "ui/sheet/sheet_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr double beach_name_points = 10.5;
constexpr double long_name_points = 8.5;
constexpr double name_gap = 2.5;
constexpr double name_line = 4.7;
constexpr double row_margin = 0.5;   ///< above and below the words
constexpr double most_small = 10.0;  ///< points of the small type
constexpr int most_who_lines = 3;
constexpr double beach_row_least = 9.2;  ///< as high as the figures
constexpr double line_pitch = 3.45;      ///< [mm] of a line at least_sheet_points

double small_points(double grow) {
    return std::min(least_sheet_points * grow, most_small);
}
/// Height of a line of the small type [mm].
double small_line(double grow) {
    return line_pitch * small_points(grow) / least_sheet_points + 0.03;
}

}  // namespace

double BeachPage::name_width(const BeachGuest& guest, double room, double points) {
    return std::min(pen_.width(guest.name, points, true) + 0.3, room);
}

BeachRow BeachPage::row_of(const BeachGuest& guest, double grow, int most_lines) {
    const double width = guest_cells(pen_.frame())[1].width();
    const double points = small_points(grow);
    const auto lines = [&](const QString& text) {
        const double one = pen_.height({QStringLiteral("x"), 0}, width, points);
        return std::max(1,
                        static_cast<int>(std::lround(pen_.height({text, 0}, width, points) / one)));
    };
    BeachRow row;
    const double natural = pen_.width(guest.name, beach_name_points * grow, true) + 0.3;
    row.name = natural <= width ? 1 : 2;
    // The age and what the health check came to are never cut for a long name.
    const bool beside = natural + name_gap + pen_.width(guest.who, points) <= width;
    row.who = beside ? 0 : std::min(lines(guest.who), most_who_lines);
    // Whole or not at all: what is cut off is what stands last, the lead and the cylinder.
    row.kit = guest.kit.isEmpty() ? 0 : lines(guest.kit);
    if (row.kit > most_kit_lines_) row.kit = 0;
    put_flags(guest, width, points, most_lines, row);
    row.content = (row.name == 1 ? name_line * grow : 2.0 * 3.8) +
                  small_line(grow) * (row.who + row.kit + row.flags);
    row.height = std::max(row.content + 2.0 * row_margin, beach_row_least * grow);
    return row;
}

void BeachPage::put_flags(const BeachGuest& guest, double width, double points, int most_lines,
                          BeachRow& row) {
    const double one = pen_.height({QStringLiteral("x"), 0}, width, points, true);
    const auto lines_of_flags = [&](const QString& text) {
        return static_cast<int>(std::lround(pen_.height({text, 0}, width, points, true) / one));
    };
    // Whole ones only, the gravest first; how grave the others are is told.
    const int count = static_cast<int>(guest.flags.size());
    for (int kept = count; kept >= 0; --kept) {
        QStringList shown = guest.flags.mid(0, kept);
        if (kept < count) {
            const Severity gravest = kept < guest.stops ? Severity::stop : Severity::caution;
            shown << BeachLabels::tr("%1: %n more under “Open”.", "severity, flags of a guest",
                                     count - kept)
                         .arg(label(gravest));
        }
        const QString text = shown.join(u' ');
        const int lines = text.isEmpty() ? 0 : lines_of_flags(text);
        if (lines > most_lines && kept > 0) continue;
        row.flag_text = text;
        row.flags = lines;
        row.moved_stops = std::max(0, guest.stops - kept);
        row.moved = guest.moved_flags.mid(kept);
        return;
    }
}

std::vector<QRectF> BeachPage::guest_cells(const QRectF& row) const {
    const std::vector<double> figures{10.5, 16.0, 12.5, 11.5, 17.0, 12.5};
    const double photo = photos_ ? 10.0 : 0.0;
    std::vector<double> widths{photo, 104.5 - photo};
    widths.insert(widths.end(), figures.begin(), figures.end());
    std::vector<QRectF> cells = columns(row, widths, 1.0);
    if (!photos_) cells[1].setLeft(row.left());
    return cells;
}

void BeachPage::plan_rows(double grow, int most_lines) {
    grow_ = grow;
    rows_.clear();
    for (const BeachGuest& guest : guests_) rows_.push_back(row_of(guest, grow, most_lines));
}

double BeachPage::rows_height() const {
    double sum = rows_.empty() ? beach_row_least : 0.0;
    for (const BeachRow& row : rows_) sum += row.height;
    return sum;
}

void BeachPage::set_guests_head(double y) {
    const auto cells = guest_cells(pen_.frame());
    const auto over = [&](std::size_t column, const QString& first, const QString& second,
                          Align align = Align::right) {
        pen_.text(first, QRectF(cells[column].left(), y, cells[column].width(), 3.5),
                  {.points = 8.0, .bold = true, .align = align});
        pen_.text(second, QRectF(cells[column].left(), y + 3.4, cells[column].width(), 3.5),
                  {.points = 8.0, .align = align});
    };
    if (photos_) {
        over(0, {}, BeachLabels::tr("Photo", "room for one, in the table of guests"),
             Align::centre);
    }
    over(1, BeachLabels::tr("Guest"), BeachLabels::tr("what to know, kit"), Align::left);
    over(2, BeachLabels::tr("Order"), BeachLabels::tr("of low"));
    over(3, BeachLabels::tr("Signal at"), sheet_.pressure_unit);
    over(4, BeachLabels::tr("Turn at"), sheet_.pressure_unit);
    over(5, BeachLabels::tr("Least"), sheet_.pressure_unit);
    if (sheet_.is_forecast) {
        over(6, BeachLabels::tr("Low after"), BeachLabels::tr("min (early)", "column of a table"));
    } else {
        over(6, BeachLabels::tr("Lasts"), BeachLabels::tr("min, plan", "column of a table"));
    }
    over(7, BeachLabels::tr("RMV"), sheet_.flow_unit);
}

double BeachPage::set_guests(double y) {
    const QRectF& frame = pen_.frame();
    set_guests_head(y);
    double top = y + beach_guests_head;
    pen_.rule(top, 0.4);
    for (std::size_t i = 0; i < guests_.size(); ++i) {
        set_guest(guests_[i], QRectF(frame.left(), top, frame.width(), rows_[i].height), rows_[i]);
        top += rows_[i].height;
        pen_.rule(top, beach_hair);
    }
    if (guests_.empty()) {
        pen_.text(BeachLabels::tr("Nobody is in this group yet."),
                  QRectF(frame.left(), top + 2.0, frame.width(), 5.0), {.points = 10.0});
        top += beach_row_least;
    }
    return top + beach_part_gap;
}

void BeachPage::set_guest(const BeachGuest& guest, const QRectF& row, const BeachRow& lines) {
    const auto cells = guest_cells(row);
    if (photos_) pen_.box(cells[0].adjusted(0.0, 0.5, 0.0, -0.5), beach_hair);
    const double spare = std::max(0.0, row.height() - lines.content) / 2.0;
    const QRectF who = cells[1].adjusted(0.0, spare, 0.0, 0.0);
    const double points = small_points(grow_);
    const double line = small_line(grow_);
    const double name = lines.name == 1 ? name_line * grow_ : 2.0 * 3.8;
    const double wide = lines.who > 0 || lines.name > 1
                            ? who.width()
                            : name_width(guest, who.width(), beach_name_points * grow_);
    pen_.text(guest.name, QRectF(who.left(), who.top() - 0.4, wide, name),
              {.points = lines.name == 1 ? beach_name_points * grow_ : long_name_points,
               .bold = true,
               .most_lines = lines.name});
    double y = who.top() + name;
    if (lines.who == 0) {
        const QRectF beside(who.left() + wide + name_gap, who.top() + 0.5 * grow_,
                            who.width() - wide - name_gap, line + 0.1);
        pen_.text(guest.who, beside, {.points = points});
    }
    const auto stack = [&](const QString& words, int count, bool bold) {
        if (count == 0) return;
        pen_.text(words, QRectF(who.left(), y - 0.2, who.width(), line * count + 0.2),
                  {.points = points, .bold = bold, .most_lines = count});
        y += line * count;
    };
    stack(guest.who, lines.who, false);
    stack(guest.kit, lines.kit, false);
    stack(lines.flag_text, lines.flags, true);
    const auto figure = [&](std::size_t column, const QString& number, double size, bool bold) {
        const QRectF cell(cells[column].left(), cells[column].center().y() - 5.0,
                          cells[column].width(), 10.0);
        if (number.isEmpty()) {
            pen_.blank(cell.adjusted(1.0, 0.0, 0.0, -0.8));
            return;
        }
        pen_.text(number, cell,
                  {.points = size, .bold = bold, .align = Align::right, .middle = true});
    };
    figure(2, guest.order, 11.0, false);
    figure(3, guest.low, 19.0 * grow_, true);
    figure(4, guest.turn, 12.0, false);
    figure(5, guest.least, 12.0, false);
    figure(
        6,
        guest.early.isEmpty()
            ? guest.minutes
            : BeachLabels::tr("%1 (%2)", "minutes, early minutes").arg(guest.minutes, guest.early),
        11.0, false);
    figure(7, guest.rmv, 9.0, false);
}

}  // namespace leadline
