// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <span>

#include "ui/sheet/beach_sheet.h"
#include "ui/sheet/sheet_pen.h"
#include "ui/sheet/sheet_words.h"

namespace leadline {
namespace {

class BeachLabels {
    Q_DECLARE_TR_FUNCTIONS(BeachSheet)
};

// All in millimetres, from the top of the page.
constexpr double title_height = 14.2;
constexpr double emergency_least = 17.0;
constexpr double emergency_most = 21.5;
constexpr double guests_head = 7.4;
constexpr double guest_least = 9.2;  // name and kit
constexpr double flag_line = 3.45;   // and so much for each line of what to know
constexpr int most_flag_lines = 4;
constexpr double widest_stretch = 1.9;
constexpr double most_growth = 1.35;  // of the type
constexpr double tall_from = 1.5;    // stretched so far, rows have room for a line more
constexpr double name_least = 10.5;  // points
constexpr double name_gap = 2.5;
constexpr double middle_least = 28.5;
constexpr double middle_most = 46.0;
constexpr double record_head = 7.4;
constexpr double record_least = 6.6;
constexpr double record_most = 11.0;
constexpr double count_height = 8.5;
constexpr double foot_least = 8.2;
constexpr double foot_line = 3.5;
constexpr double signals_least = 74.0;
constexpr double signals_most = 92.0;
constexpr double signal_gap = 1.2;
constexpr double part_gap = 1.8;
constexpr double note_gap = 0.5;
constexpr double hair = 0.15;
constexpr double strong = 0.8;

/// How a guest's row is divided, in lines of small type.
struct GuestRow {
    int who = 0;  ///< below the name; 0: beside it
    int kit = 1;
    int flags = 0;
    double height = 0.0;  ///< [mm]
    [[nodiscard]] double least() const { return guest_least + flag_line * (who + kit - 1 + flags); }
};

/// One page of a group's sheet.
class BeachPage {
public:
    BeachPage(const BeachSheet& sheet, std::span<const BeachGuest> guests, const QString& number,
              TypeSetter& setter, Page& page)
        : sheet_(sheet), guests_(guests), number_(number), pen_(setter, page) {}

    void set() {
        const QRectF& frame = pen_.frame();
        foot_height_ = foot_least + (has_long_review() ? foot_line : 0.0);
        double y = set_title(frame.top());
        y = set_emergency(y);
        plan_rows(frame.bottom() - y);
        y = set_guests(y);
        y = set_middle(y);
        y = set_records(y);
        set_notes(y, frame.bottom() - foot_height_);
        set_foot(frame.bottom() - foot_height_);
    }

private:
    double set_title(double y);
    double set_emergency(double y);
    /// @param total  height of the plan's own lines
    void set_emergency_plan(const QRectF& plan, double total);
    /// How high the rows are that leave enough for the notes.
    void plan_rows(double room);
    double set_guests(double y);
    void set_guest(const BeachGuest& guest, const QRectF& row, const GuestRow& lines);
    /// The lines that a guest asks for.
    [[nodiscard]] GuestRow wanted_row(const BeachGuest& guest, double width);
    /// Width of a guest's name in the row; the rest is for who it is.
    [[nodiscard]] double name_width(const BeachGuest& guest, double room, double points);
    double set_middle(double y);
    void set_profile(const QRectF& area);
    /// @param widths  of each signal, by weight
    void set_signals(const QRectF& area, const std::vector<double>& widths);
    double set_records(double y);
    double set_count(double y);
    /// What is to be said below the tables: a paragraph each, or running on where room is short.
    [[nodiscard]] std::vector<Phrase> notes(bool running, std::size_t left_out = 0) const;
    [[nodiscard]] double height_of(const std::vector<Phrase>& paragraphs);
    void set_notes(double y, double bottom);
    void set_foot(double y);
    /// Whether what is told of the translations takes two lines.
    [[nodiscard]] bool has_long_review() {
        return pen_.width(sheet_.review, least_sheet_points) > pen_.frame().width();
    }
    /// The columns of the guests' table: photo, what to know, then the figures.
    [[nodiscard]] std::vector<QRectF> guest_cells(const QRectF& row) const {
        return columns(row, {10.0, 102.0, 10.5, 16.0, 12.5, 11.5, 10.0, 13.0}, 1.0);
    }
    [[nodiscard]] std::vector<QRectF> record_cells(const QRectF& row) const;

    const BeachSheet& sheet_;
    std::span<const BeachGuest> guests_;
    QString number_;
    SheetPen pen_;
    std::vector<GuestRow> guest_rows_;
    double foot_height_ = foot_least;
    double grow_ = 1.0;  ///< of the type in the rows
    double record_row_ = record_least;
    double middle_height_ = middle_least;
    QStringList cut_flags_;  ///< what found no room in its guest's row
};

double BeachPage::set_title(double y) {
    const QRectF& frame = pen_.frame();
    constexpr double tag_height = 12.5;
    const double natural = pen_.width(sheet_.group, 24.0, true) + 8.0;
    const double tag_width = std::clamp(natural, 28.0, frame.width() * 0.42);
    const QRectF tag(frame.left(), y, tag_width, tag_height);
    pen_.filled(tag, 1.0);
    pen_.text(sheet_.group, tag.adjusted(3.0, 0.6, -3.0, -0.6),
              {.points = 24.0,
               .bold = true,
               .most_lines = 2,
               .align = Align::centre,
               .middle = true,
               .ink = Ink::white});
    const double left = tag.right() + 4.0;
    const double width = frame.right() - left;
    pen_.text(sheet_.site, QRectF(left, y - 0.6, width, 5.2), {.points = 11.0, .bold = true});
    pen_.text(sheet_.when, QRectF(left, y + 4.4, width, 4.4), {.points = 9.5});
    const QString number = sheet_.units + QStringLiteral(" · ") + number_;
    const double right = pen_.width(number, 8.0) + 1.0;
    pen_.text(sheet_.staff, QRectF(left, y + 8.8, width - right - 3.0, 4.4), {.points = 9.5});
    pen_.text(number, QRectF(frame.right() - right, y + 9.3, right, 3.6),
              {.points = 8.0, .align = Align::right});
    return y + title_height;
}

double BeachPage::set_emergency(double y) {
    const QRectF& frame = pen_.frame();
    const double plan_width = frame.width() * 0.62 - 9.5;
    double total = 0.0;
    for (const QString& line : sheet_.emergency_plan) {
        total += pen_.height({line, 0}, plan_width, least_sheet_points);
    }
    const double height = std::clamp(total + 3.0, emergency_least, emergency_most);
    const QRectF box(frame.left(), y, frame.width(), height);
    pen_.box(box, strong, 1.2);
    const QRectF call(box.left() + 3.0, box.top() + 1.4, box.width() * 0.38 - 3.0, height - 2.8);
    pen_.text(BeachLabels::tr("In an emergency call"),
              QRectF(call.left(), call.top(), call.width(), 4.4), {.points = 9.5, .bold = true});
    const QRectF number = call.adjusted(0.0, 4.4, 0.0, 0.0);
    if (sheet_.emergency_line.isEmpty()) {
        pen_.text(BeachLabels::tr("not entered: write it here"),
                  QRectF(call.left(), call.top() + 4.4, call.width(), 4.0), {.points = 8.0});
        pen_.blank(number.adjusted(0.0, 0.0, 0.0, -1.0));
    } else {
        pen_.text(sheet_.emergency_line, number,
                  {.points = 25.0, .bold = true, .most_lines = 4, .middle = true});
    }
    const QRectF plan(box.right() - 2.5 - plan_width, box.top() + 1.4, plan_width, height - 2.6);
    set_emergency_plan(plan, total);
    return box.bottom() + part_gap;
}

void BeachPage::set_emergency_plan(const QRectF& plan, double total) {
    constexpr double line_height = 3.45;
    if (sheet_.emergency_plan.isEmpty()) {
        pen_.text(BeachLabels::tr("No emergency plan is entered: write it here (oxygen, phone, "
                                  "chamber, way out)"),
                  QRectF(plan.left(), plan.top(), plan.width(), 7.4),
                  {.points = 8.0, .most_lines = 2});
        return;
    }
    // The plan's own lines as long as they last; where they do not fit, all on running lines.
    if (total <= plan.height() + 0.1) {
        double top = plan.top();
        for (const QString& line : sheet_.emergency_plan) {
            const double height = pen_.height({line, 0}, plan.width(), least_sheet_points);
            pen_.text(line, QRectF(plan.left(), top, plan.width(), height),
                      {.points = 8.0, .most_lines = 6});
            top += height;
        }
        return;
    }
    const QString joined = sheet_.emergency_plan.join(QStringLiteral(" · "));
    if (pen_.height({joined, 0}, plan.width(), least_sheet_points) <= plan.height()) {
        pen_.text(joined, plan, {.points = 8.0, .most_lines = 6});
        return;
    }
    pen_.text(joined, plan.adjusted(0.0, 0.0, 0.0, -line_height), {.points = 8.0, .most_lines = 5});
    pen_.text(BeachLabels::tr("The whole plan stands on the emergency page."),
              QRectF(plan.left(), plan.bottom() - line_height, plan.width(), line_height + 0.3),
              {.points = 8.0, .bold = true});
}

void BeachPage::plan_rows(double room) {
    const double fixed =
        guests_head + record_head + count_height + foot_height_ + 3.0 * part_gap + 1.0;
    const double others =
        static_cast<double>(std::max<std::size_t>(guests_.size(), 1)) * record_least + middle_least;
    const double wanted = std::max(height_of(notes(true)), 4.0);
    const double width = guest_cells(pen_.frame())[1].width();
    for (const BeachGuest& guest : guests_) guest_rows_.push_back(wanted_row(guest, width));
    const auto total = [&] {
        double sum = guests_.empty() ? guest_least : 0.0;
        for (const GuestRow& row : guest_rows_) sum += row.least();
        return sum;
    };
    const auto too_high = [&] { return fixed + others + wanted + total() > room; };
    // Where it gets tight, the kit, which another sheet tells too, gives way first; then the longest of
    // what to know, and what is cut of that goes to the notes; last a line of its own for who it is.
    for (GuestRow& row : guest_rows_) {
        if (too_high()) row.kit = 1;
    }
    while (too_high()) {
        const auto longest = std::max_element(
            guest_rows_.begin(), guest_rows_.end(),
            [](const auto& one, const auto& other) { return one.flags < other.flags; });
        if (longest == guest_rows_.end() || longest->flags <= 1) break;
        --longest->flags;
    }
    for (GuestRow& row : guest_rows_) {
        if (too_high()) row.who = 0;
    }
    const double paragraphs = std::max(height_of(notes(false)), 4.0);
    const double stretch =
        std::clamp((room - fixed - paragraphs) / (others + total()), 1.0, widest_stretch);
    grow_ = std::min(stretch, most_growth);
    // As the type grows, so do the rows; what is spare beyond that goes to all alike.
    const double spare = guest_rows_.empty() ? 0.0
                                             : total() * (stretch - grow_) /
                                                   static_cast<double>(guest_rows_.size());
    for (GuestRow& row : guest_rows_) {
        row.height = row.least() * grow_ + spare;
        if (stretch > tall_from) row.who = std::max(row.who, 1);
    }
    record_row_ = std::min(record_least * stretch, record_most);
    middle_height_ = std::min(middle_least * stretch, middle_most);
}

double BeachPage::set_guests(double y) {
    const QRectF& frame = pen_.frame();
    const QRectF head(frame.left(), y, frame.width(), guests_head);
    const auto cells = guest_cells(head);
    const auto over = [&](std::size_t column, const QString& first, const QString& second,
                          Align align = Align::right) {
        pen_.text(first, QRectF(cells[column].left(), y, cells[column].width(), 3.5),
                  {.points = 8.0, .bold = true, .align = align});
        pen_.text(second, QRectF(cells[column].left(), y + 3.4, cells[column].width(), 3.5),
                  {.points = 8.0, .align = align});
    };
    over(1, BeachLabels::tr("Guest"), BeachLabels::tr("what to know, kit"), Align::left);
    over(2, BeachLabels::tr("Order"), BeachLabels::tr("of low"));
    over(3, BeachLabels::tr("Signal at"), sheet_.pressure_unit);
    over(4, BeachLabels::tr("Turn at"), sheet_.pressure_unit);
    over(5, BeachLabels::tr("Least"), sheet_.pressure_unit);
    over(6, BeachLabels::tr("Lasts"), BeachLabels::tr("min"));
    over(7, BeachLabels::tr("RMV"), sheet_.flow_unit);
    double top = head.bottom();
    pen_.rule(top, 0.4);
    for (std::size_t i = 0; i < guests_.size(); ++i) {
        set_guest(guests_[i], QRectF(frame.left(), top, frame.width(), guest_rows_[i].height),
                  guest_rows_[i]);
        top += guest_rows_[i].height;
        pen_.rule(top, hair);
    }
    if (guests_.empty()) {
        pen_.text(BeachLabels::tr("Nobody is in this group yet."),
                  QRectF(frame.left(), top + 2.0, frame.width(), 5.0), {.points = 10.0});
        top += guest_least;
    }
    return top + part_gap;
}

double BeachPage::name_width(const BeachGuest& guest, double room, double points) {
    return std::min(pen_.width(guest.name, points, true) + 0.3, room * 0.45);
}

GuestRow BeachPage::wanted_row(const BeachGuest& guest, double width) {
    const auto lines = [&](const QString& text, bool bold) {
        const double height = pen_.height({text, 0}, width, least_sheet_points, bold);
        return static_cast<int>(std::lround(height / flag_line));
    };
    GuestRow row;
    row.kit = std::clamp(lines(guest.kit, false), 1, 2);
    row.flags = std::min(lines(guest.flags.join(u' '), true), most_flag_lines);
    const double beside = width - name_width(guest, width, name_least) - name_gap;
    const bool fits = pen_.width(guest.who, least_sheet_points) <= beside;
    row.who = fits ? 0 : std::min(lines(guest.who, false), 2);
    return row;
}

void BeachPage::set_guest(const BeachGuest& guest, const QRectF& row, const GuestRow& lines) {
    const auto cells = guest_cells(row.adjusted(0.0, 0.5, 0.0, -0.5));
    pen_.box(cells[0], hair);
    const QRectF& who = cells[1];
    // Few guests: everything larger.
    const double name_points = name_least * grow_;
    const double small_points = std::min(8.0 * grow_, 10.0);
    const double name_line = 4.7 * grow_;
    const double small_line = 3.5 * grow_;
    const bool below = lines.who > 0;
    const double wide = below ? who.width() : name_width(guest, who.width(), name_points);
    pen_.text(guest.name, QRectF(who.left(), who.top() - 0.4, wide, name_line),
              {.points = name_points, .bold = true});
    double y = who.top() - 0.5 + name_line;
    const QRectF told = below ? QRectF(who.left(), y, who.width(), small_line * lines.who)
                              : QRectF(who.left() + wide + name_gap, who.top() + 0.4 * grow_,
                                       who.width() - wide - name_gap, small_line + 0.1);
    pen_.text(guest.who, told, {.points = small_points, .most_lines = std::max(lines.who, 1)});
    y += (small_line - 0.1) * lines.who;
    pen_.text(guest.kit, QRectF(who.left(), y, who.width(), small_line * lines.kit),
              {.points = small_points, .most_lines = lines.kit});
    const double flags_top = y + (small_line - 0.1) * lines.kit;
    const QRectF flags(who.left(), flags_top, who.width(), who.bottom() - flags_top + 0.6);
    if (pen_.text(guest.flags.join(u' '), flags,
                  {.points = small_points, .bold = true, .most_lines = 6})) {
        for (const QString& flag : guest.flags) {
            cut_flags_ << BeachLabels::tr("%1: %2", "guest, flag").arg(guest.name, flag);
        }
    }
    const auto figure = [&](std::size_t column, const QString& number, double points, bool bold) {
        const QRectF cell(cells[column].left(), cells[column].center().y() - 5.0,
                          cells[column].width(), 10.0);
        if (number.isEmpty()) {
            pen_.blank(cell.adjusted(1.0, 0.0, 0.0, -0.8));
            return;
        }
        pen_.text(number, cell,
                  {.points = points, .bold = bold, .align = Align::right, .middle = true});
    };
    figure(2, guest.order, 11.0, false);
    figure(3, guest.low, 19.0 * grow_, true);
    figure(4, guest.turn, 12.0, false);
    figure(5, guest.least, 12.0, false);
    figure(6, guest.minutes, 12.0, false);
    figure(7, guest.rmv, 9.0, false);
}

double BeachPage::set_middle(double y) {
    const QRectF& frame = pen_.frame();
    // All alike, but for one whose longest word asks for more.
    const auto count = static_cast<double>(std::max<std::size_t>(sheet_.need.size(), 1));
    const double gaps = signal_gap * (count - 1.0);
    const double usual = (signals_least - gaps) / count;
    std::vector<double> words;
    double asked = gaps;
    for (const BeachSignal& one : sheet_.need) {
        const double word = pen_.widest_word(one.caption, least_sheet_points) + 0.2;
        words.push_back(std::max(usual, word));
        asked += words.back();
    }
    const double signals_width = std::clamp(asked, signals_least, signals_most);
    const QRectF area(frame.left(), y, frame.width(), middle_height_ - part_gap);
    set_profile(QRectF(area.left(), area.top(), area.width() - signals_width - 4.0, area.height()));
    set_signals(QRectF(area.right() - signals_width, area.top(), signals_width, area.height()),
                words);
    return y + middle_height_;
}

void BeachPage::set_profile(const QRectF& area) {
    const Phrase told = phrase(sheet_.times, sheet_.air);
    const double height =
        std::clamp(pen_.height(told, area.width(), least_sheet_points), 7.4, 17.6);
    pen_.text(told, QRectF(area.left(), area.top(), area.width(), height),
              {.points = 8.5, .most_lines = 5});
    const QRectF chart(area.left() + 1.0, area.top() + height + 4.8, area.width() - 14.0,
                       area.height() - height - 5.8);
    pen_.line(chart.left(), chart.top(), chart.right(), chart.top(), 0.3);
    double longest = 1e-6;
    double deepest = 1e-6;
    for (const BeachCorner& corner : sheet_.profile) {
        longest = std::max(longest, corner.minutes);
        deepest = std::max(deepest, corner.meters);
    }
    const auto place = [&](const BeachCorner& corner) {
        return QPointF(chart.left() + chart.width() * corner.minutes / longest,
                       chart.top() + chart.height() * corner.meters / deepest);
    };
    double clock_free = -1e9;  // where the last clock time ends
    constexpr double clock_width = 9.5;
    for (std::size_t i = 0; i < sheet_.profile.size(); ++i) {
        const BeachCorner& corner = sheet_.profile[i];
        const QPointF at = place(corner);
        if (i > 0) {
            const QPointF from = place(sheet_.profile[i - 1]);
            pen_.line(from.x(), from.y(), at.x(), at.y(), 0.6);
        }
        const bool last = i + 1 == sheet_.profile.size();
        const double left =
            std::clamp(at.x() - clock_width / 2.0, chart.left() - 1.0, area.right() - clock_width);
        const double last_left = std::clamp(chart.right() - clock_width / 2.0, chart.left() - 1.0,
                                            area.right() - clock_width);
        if (left >= clock_free && (last || left + clock_width + 0.6 <= last_left)) {
            pen_.text(corner.clock, QRectF(left, chart.top() - 4.2, clock_width, 3.6),
                      {.points = 8.0});
            pen_.line(at.x(), chart.top() - 0.8, at.x(), chart.top() + 0.8, 0.2);
            clock_free = left + clock_width + 0.6;
        }
    }
    // Depths at the right edge: the deepest, and each other that keeps its distance.
    std::vector<const BeachCorner*> by_depth;
    for (const BeachCorner& corner : sheet_.profile) by_depth.push_back(&corner);
    std::stable_sort(by_depth.begin(), by_depth.end(),
                     [](const auto* a, const auto* b) { return a->meters > b->meters; });
    double free_below = 1e9;
    for (const BeachCorner* corner : by_depth) {
        const double y = std::min(place(*corner).y(), chart.bottom());
        if (corner->meters <= 0.0 || y + 3.6 > free_below) continue;
        pen_.line(chart.left(), y, chart.right(), y, 0.12, Ink::grey);
        pen_.text(corner->depth, QRectF(chart.right() + 1.0, y - 2.6, 12.5, 3.6),
                  {.points = 8.0, .bold = free_below > 1e8});
        free_below = y;
    }
}

void BeachPage::set_signals(const QRectF& area, const std::vector<double>& widths) {
    pen_.text(BeachLabels::tr("Signals of need"),
              QRectF(area.left(), area.top(), area.width(), 3.8), {.points = 8.5, .bold = true});
    if (sheet_.need.empty()) return;
    const auto cells = columns(area.adjusted(0.0, 4.2, 0.0, 0.0), widths, signal_gap);
    double side = cells.front().height() - 10.6;
    for (const QRectF& cell : cells) side = std::min(side, cell.width());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double left = cells[i].center().x() - side / 2.0;
        pen_.picture(sheet_.need[i].picture, QRectF(left, cells[i].top(), side, side));
        pen_.text(sheet_.need[i].caption,
                  QRectF(cells[i].left(), cells[i].top() + side + 0.3, cells[i].width(), 10.6),
                  {.points = 8.0, .most_lines = 3, .align = Align::centre});
    }
}

std::vector<QRectF> BeachPage::record_cells(const QRectF& row) const {
    std::vector<double> widths{46.0, 7.0, 7.0, 13.0};
    for (int i = 0; i < sheet_.air_checks.size(); ++i) widths.push_back(10.5);
    widths.insert(widths.end(), {13.0, 14.0, 7.0, 7.0});
    return columns(row, widths, 0.0);
}

double BeachPage::set_records(double y) {
    const QRectF& frame = pen_.frame();
    const QRectF head(frame.left(), y, frame.width(), record_head);
    const auto cells = record_cells(head);
    const auto checks = static_cast<std::size_t>(sheet_.air_checks.size());
    const auto over = [&](std::size_t column, const QString& first, const QString& second,
                          double width = 0.0) {
        const double w = width > 0.0 ? width : cells[column].width();
        pen_.text(first, QRectF(cells[column].left(), y, w, 3.5),
                  {.points = 8.0, .bold = true, .align = Align::centre});
        pen_.text(second, QRectF(cells[column].left(), y + 3.4, w, 3.5),
                  {.points = 8.0, .align = Align::centre});
    };
    pen_.text(BeachLabels::tr("Heads, air, log"), QRectF(cells[0].left(), y, cells[0].width(), 3.8),
              {.points = 8.5, .bold = true});
    pen_.text(BeachLabels::tr("write %1, %2").arg(sheet_.pressure_unit, sheet_.depth_unit),
              QRectF(cells[0].left(), y + 3.4, cells[0].width(), 3.6), {.points = 8.0});
    const double pair = cells[1].width() * 2.0;
    over(1, BeachLabels::tr("In"), BeachLabels::tr("2 tick"), pair);
    over(3, BeachLabels::tr("Start"), sheet_.pressure_unit);
    for (std::size_t i = 0; i < checks; ++i) {
        over(4 + i, sheet_.air_checks[static_cast<int>(i)], BeachLabels::tr("min"));
    }
    over(4 + checks, BeachLabels::tr("End"), sheet_.pressure_unit);
    over(5 + checks, BeachLabels::tr("Deepest"), sheet_.depth_unit);
    over(6 + checks, BeachLabels::tr("Out"), BeachLabels::tr("2 tick"), pair);
    double top = head.bottom();
    pen_.rule(top, 0.4);
    const std::size_t ticks[] = {1, 2, 6 + checks, 7 + checks};
    for (const BeachGuest& guest : guests_) {
        const QRectF row(frame.left(), top, frame.width(), record_row_);
        const auto places = record_cells(row);
        pen_.text(guest.name, places[0].adjusted(0.0, 0.0, -1.0, 0.0),
                  {.points = 9.0, .bold = true, .most_lines = 2, .middle = true});
        for (const std::size_t tick : ticks) pen_.tick(places[tick], 4.8);
        for (std::size_t i = 3; i < 6 + checks; ++i) {
            pen_.line(places[i].left(), row.top(), places[i].left(), row.bottom(), hair);
        }
        pen_.line(places[5 + checks].right(), row.top(), places[5 + checks].right(), row.bottom(),
                  hair);
        top += record_row_;
        pen_.rule(top, hair);
    }
    return set_count(top);
}

double BeachPage::set_count(double y) {
    const QRectF& frame = pen_.frame();
    const QRectF row(frame.left(), y + 0.6, frame.width(), count_height - 1.6);
    const auto halves = columns(row, {1.0, 1.0}, 5.0);
    const QString labels[] = {BeachLabels::tr("Heads in"), BeachLabels::tr("Heads out")};
    for (std::size_t i = 0; i < 2; ++i) {
        const auto parts = columns(halves[i], {17.0, 9.0, 6.0, 17.0, 9.0, 17.0, 17.0}, 1.0);
        const auto word = [&](std::size_t part, const QString& words, bool bold = false) {
            pen_.text(words, parts[part],
                      {.points = bold ? 9.0 : 8.0, .bold = bold, .middle = true});
        };
        word(0, labels[i], true);
        const auto write = [&](std::size_t part) {
            pen_.blank(parts[part].adjusted(0.0, 0.0, 0.0, -1.6));
        };
        write(1);
        word(2, BeachLabels::tr("at", "a time of day"));
        write(3);
        word(4, BeachLabels::tr("by", "who counted"));
        write(5);
        write(6);
    }
    return y + count_height + part_gap;
}

std::vector<Phrase> BeachPage::notes(bool running, std::size_t left_out) const {
    QStringList open = sheet_.open + cut_flags_;
    QStringList decided = sheet_.decided;
    for (std::size_t i = 0; i < left_out; ++i) {
        QStringList& last = decided.isEmpty() ? open : decided;
        if (!last.isEmpty()) last.removeLast();
    }
    std::vector<Phrase> all;
    const auto add = [&](const QString& head, const QStringList& texts) {
        if (running && !texts.isEmpty()) {
            all.push_back(phrase(head, texts.join(QStringLiteral(" • "))));
            return;
        }
        for (const QString& text : texts) all.push_back(phrase(head, text));
    };
    add(BeachLabels::tr("Open."), open);
    add(BeachLabels::tr("Decided."), decided);
    return all;
}

double BeachPage::height_of(const std::vector<Phrase>& paragraphs) {
    double height = 0.0;
    for (const Phrase& one : paragraphs) {
        height += pen_.height(one, pen_.frame().width(), least_sheet_points) + note_gap;
    }
    return height;
}

void BeachPage::set_notes(double y, double bottom) {
    const QRectF& frame = pen_.frame();
    constexpr double line_height = 3.6;
    std::vector<Phrase> all = notes(false);
    if (all.empty()) {
        pen_.text(BeachLabels::tr("No stop and no caution of the group is open."),
                  QRectF(frame.left(), y, frame.width(), line_height), {.points = 8.0});
        return;
    }
    const auto count =
        static_cast<std::size_t>(sheet_.open.size() + cut_flags_.size() + sheet_.decided.size());
    std::size_t left_out = 0;
    if (height_of(all) > bottom - y) all = notes(true);
    // Stops stand first, so that they are the last to give way.
    while (left_out < count && height_of(all) + (left_out > 0 ? line_height : 0.0) > bottom - y) {
        all = notes(true, ++left_out);
    }
    for (const Phrase& one : all) {
        const double height = pen_.height(one, frame.width(), least_sheet_points);
        pen_.text(one, QRectF(frame.left(), y, frame.width(), height),
                  {.points = least_sheet_points, .most_lines = 99});
        y += height + note_gap;
    }
    if (left_out == 0) return;
    pen_.text(BeachLabels::tr("%n more: see the findings in the window.", nullptr,
                              static_cast<int>(left_out)),
              QRectF(frame.left(), std::min(y, bottom - line_height), frame.width(), line_height),
              {.points = 8.0, .bold = true});
}

void BeachPage::set_foot(double y) {
    const QRectF& frame = pen_.frame();
    pen_.rule(y + 0.4, hair);
    pen_.text(sheet_.standing, QRectF(frame.left(), y + 0.9, frame.width(), 3.6), {.points = 8.0});
    const int lines = has_long_review() ? 2 : 1;
    pen_.text(sheet_.review, QRectF(frame.left(), y + 4.4, frame.width(), 0.2 + foot_line * lines),
              {.points = 8.0, .most_lines = lines});
}

}  // namespace

std::vector<Page> beach_pages(const BeachSheet& sheet, Paper paper, TypeSetter& setter) {
    const std::span<const BeachGuest> all(sheet.guests);
    const std::size_t count =
        std::max<std::size_t>(1, (all.size() + beach_guests_on_page - 1) / beach_guests_on_page);
    std::vector<Page> pages;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t from = i * beach_guests_on_page;
        const std::size_t size = std::min(beach_guests_on_page, all.size() - from);
        Page page;
        page.paper = paper;
        BeachPage(sheet, all.subspan(from, size), page_line(i + 1, count), setter, page).set();
        pages.push_back(std::move(page));
    }
    return pages;
}

}  // namespace leadline
