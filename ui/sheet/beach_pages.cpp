// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <deque>

#include "ui/sheet/beach_page.h"
#include "ui/sheet/beach_rest.h"
#include "ui/sheet/sheet_words.h"

namespace leadline {
namespace {

constexpr double foot_least = 8.2;
constexpr double foot_line = 3.5;
constexpr double record_least = 6.0;
constexpr double record_most = 11.0;
constexpr double middle_most = 46.0;
constexpr double row_spare_most = 8.0;
constexpr int most_flag_lines = 4;
constexpr int roomy_kit_lines = 6;
constexpr int close_kit_lines = 2;
constexpr double others_growth = 1.7;
constexpr double shared_out = 0.85;  ///< of what is spare
constexpr double growths[] = {1.35, 1.25, 1.15, 1.07, 1.0};

/// Whether what is told of the translations takes two lines.
bool has_long_review(SheetPen& pen, const BeachSheet& sheet) {
    return pen.width(sheet.review, least_sheet_points) > pen.frame().width();
}

}  // namespace

double beach_foot_height(SheetPen& pen, const BeachSheet& sheet) {
    return foot_least + (has_long_review(pen, sheet) ? foot_line : 0.0);
}

void set_beach_foot(SheetPen& pen, const BeachSheet& sheet) {
    const QRectF& frame = pen.frame();
    const double y = frame.bottom() - beach_foot_height(pen, sheet);
    pen.rule(y + 0.4, beach_hair);
    pen.text(sheet.standing, QRectF(frame.left(), y + 0.9, frame.width(), 3.6), {.points = 8.0});
    const int lines = has_long_review(pen, sheet) ? 2 : 1;
    pen.text(sheet.review, QRectF(frame.left(), y + 4.4, frame.width(), 0.2 + foot_line * lines),
             {.points = 8.0, .most_lines = lines});
}

std::vector<Phrase> beach_notes(const QStringList& open, const QStringList& decided,
                                const QStringList& kit, bool running) {
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
    add(BeachLabels::tr("Kit."), kit);
    return all;
}

QStringList BeachPage::open() const {
    // Stops of all kinds first.
    QStringList all = sheet_.open.mid(0, sheet_.open_stops);
    for (const BeachRow& row : rows_) all += row.moved.mid(0, row.moved_stops);
    all += sheet_.open.mid(sheet_.open_stops);
    for (const BeachRow& row : rows_) all += row.moved.mid(row.moved_stops);
    return all;
}

QStringList BeachPage::moved_kit() const {
    QStringList all;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const BeachGuest& guest = guests_[i];
        if (rows_[i].kit > 0 || guest.kit.isEmpty()) continue;
        all << BeachLabels::tr("%1: %2", "guest, kit").arg(set_apart(guest.name), guest.kit);
    }
    return all;
}

double BeachPage::notes_height(bool running) {
    double height = 0.0;
    for (const Phrase& one : beach_notes(open(), sheet_.decided, moved_kit(), running)) {
        height += pen_.height(one, pen_.frame().width(), least_sheet_points) + beach_note_gap;
    }
    return std::max(height, beach_note_line);
}

double BeachPage::gravest_note() {
    const std::vector<Phrase> all = beach_notes(open(), sheet_.decided, {}, false);
    if (all.empty()) return 0.0;
    return pen_.height(all.front(), pen_.frame().width(), least_sheet_points) + beach_note_gap;
}

void BeachPage::bring_back_flags(bool stops) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        for (int lines = rows_[i].flags + 1; lines <= most_flag_lines; ++lines) {
            if (stops ? rows_[i].moved_stops == 0 : rows_[i].moved.isEmpty()) break;
            BeachRow before = rows_[i];
            rows_[i] = row_of(guests_[i], 1.0, lines);
            if (spare(beach_note_line + gravest_note()) >= 0.0) continue;
            rows_[i] = std::move(before);
            break;
        }
    }
}

bool BeachPage::fits_here() {
    most_kit_lines_ = roomy_kit_lines;
    for (const double grow : growths) {
        plan_rows(grow, most_flag_lines);
        // The room to write in and the profile grow before the words do.
        const double others = others_least_ * (grow - 1.0) * others_growth;
        if (spare(notes_height(false)) >= others) return true;
    }
    running_ = true;
    photos_ = false;
    most_kit_lines_ = close_kit_lines;
    for (int lines = most_flag_lines; lines > 0; --lines) {
        plan_rows(1.0, lines);
        if (spare(notes_height(true)) >= 0.0) return true;
    }
    running_ = false;
    return false;
}

bool BeachPage::fits_with_rest() {
    struct Attempt {
        bool kit;
        int lines;
    };
    // All heads stay together: the kit, which another sheet tells too, gives way for them, and
    // before a flag does.
    for (const Attempt& attempt :
         {Attempt{true, most_flag_lines}, Attempt{true, 3}, Attempt{true, 2}, Attempt{false, 2},
          Attempt{true, 1}, Attempt{false, 1}}) {
        most_kit_lines_ = attempt.kit ? close_kit_lines : 0;
        plan_rows(1.0, attempt.lines);
        if (spare(beach_note_line + gravest_note()) < 0.0) continue;
        // What is left brings flags back to their guests.
        for (const bool stops : {true, false}) bring_back_flags(stops);
        return true;
    }
    return false;
}

bool BeachPage::plan() {
    const QRectF& frame = pen_.frame();
    foot_height_ = beach_foot_height(pen_, sheet_);
    emergency_height_ = emergency_height();
    const double count = static_cast<double>(std::max<std::size_t>(guests_.size(), 1));
    const double least = middle_least();
    others_least_ = count * record_least + least;
    room_ = frame.height() - beach_title_height - emergency_height_ - foot_height_ -
            beach_guests_head - beach_record_head - beach_count_height - 4.0 * beach_part_gap -
            1.0 - others_least_;
    const bool here = fits_here();
    const bool fits = here || fits_with_rest();
    const double notes = here ? notes_height(running_) : beach_note_line + gravest_note();
    // What is spare goes first to the records and the profile, then to the guests' rows.
    const double left = fits ? std::max(0.0, spare(notes)) * shared_out : 0.0;
    const double share = left / others_least_;
    record_row_ = std::min(record_least * (1.0 + share), record_most);
    middle_height_ = std::min(least * (1.0 + share), std::max(middle_most, least));
    const double used = count * (record_row_ - record_least) + middle_height_ - least;
    for (BeachRow& row : rows_) row.height += std::min((left - used) / count, row_spare_most);
    return fits;
}

BeachRest BeachPage::set(double number_width) {
    BeachRest rest;
    double y = set_beach_title(pen_, sheet_, number_width);
    y = set_emergency(y);
    y = set_guests(y);
    y = set_middle(y);
    y = set_records(y);
    set_notes(y, pen_.frame().bottom() - foot_height_, rest);
    set_beach_foot(pen_, sheet_);
    rest.call = call_cut_;
    rest.plan = plan_cut_;
    return rest;
}

void BeachPage::set_notes(double y, double bottom, BeachRest& rest) {
    const QRectF& frame = pen_.frame();
    const QStringList standing = open();
    const QStringList kit = moved_kit();
    const std::vector<Phrase> all = beach_notes(standing, sheet_.decided, kit, running_);
    if (all.empty()) {
        const bool flagged =
            std::any_of(sheet_.guests.begin(), sheet_.guests.end(),
                        [](const BeachGuest& one) { return !one.flags.isEmpty(); });
        if (flagged) return;
        pen_.text(BeachLabels::tr("No stop and no caution of the group is open."),
                  QRectF(frame.left(), y, frame.width(), beach_note_line), {.points = 8.0});
        return;
    }
    std::vector<double> heights;
    double total = 0.0;
    for (const Phrase& one : all) {
        heights.push_back(pen_.height(one, frame.width(), least_sheet_points));
        total += heights.back() + beach_note_gap;
    }
    const bool whole = total <= bottom - y + beach_note_gap + 0.01;
    const double end = whole ? bottom + 0.01 : bottom - beach_note_line;
    std::size_t set = 0;
    // Stops stand first, so that they are the last to go to another page.
    for (; set < all.size() && y + heights[set] <= end; ++set) {
        pen_.text(all[set], QRectF(frame.left(), y, frame.width(), heights[set]),
                  {.points = least_sheet_points, .most_lines = 99});
        y += heights[set] + beach_note_gap;
    }
    if (set == all.size()) return;
    const int shown = static_cast<int>(set);
    const int opened = std::min(shown, static_cast<int>(standing.size()));
    rest.open = standing.mid(opened);
    const int decided = std::min(shown - opened, static_cast<int>(sheet_.decided.size()));
    rest.decided = sheet_.decided.mid(decided);
    rest.kit = kit.mid(shown - opened - decided);
    pen_.text(BeachLabels::tr("%n more on page %1.", "findings, flags of guests and decisions",
                              static_cast<int>(all.size() - set))
                  .arg(goes_on_),
              QRectF(frame.left(), bottom - beach_note_line, frame.width(), beach_note_line),
              {.points = 9.0, .bold = true});
}

namespace {

/// Guests a page such that on every page all find room.
std::size_t guests_on_page(const BeachSheet& sheet, Paper paper, TypeSetter& setter) {
    const std::span<const BeachGuest> all(sheet.guests);
    for (std::size_t most = std::min(beach_guests_on_page, all.size()); most > 1; --most) {
        bool fits = true;
        const std::size_t pages = (all.size() + most - 1) / most;
        const std::size_t each = (all.size() + pages - 1) / pages;
        for (std::size_t from = 0; fits && from < all.size(); from += each) {
            Page page;
            page.paper = paper;
            fits = BeachPage(sheet, all.subspan(from, std::min(each, all.size() - from)), 1, setter,
                             page)
                       .plan();
        }
        if (fits) return most;
    }
    return 1;
}

/// Takes over what one page left for the next.
/// @param on_all  what each page tells anew, and is wanted once. All else is of one guest: where
///                two guests share a name and a fault, both are told of.
void take_over(const QStringList& from, const QStringList& on_all, QStringList& to) {
    const QStringList before = to;
    for (const QString& text : from) {
        if (!on_all.contains(text) || !before.contains(text)) to << text;
    }
}

}  // namespace

std::vector<Page> beach_pages(const BeachSheet& sheet, Paper paper, TypeSetter& setter) {
    const std::span<const BeachGuest> all(sheet.guests);
    const std::size_t most = guests_on_page(sheet, paper, setter);
    const std::size_t count = std::max<std::size_t>(1, (all.size() + most - 1) / most);
    const std::size_t each = (all.size() + count - 1) / count;
    const QString units = sheet.units + QStringLiteral(" · ");
    std::deque<Page> pages;  // pens hold on to them
    std::vector<SheetPen> pens;
    BeachRest rest;
    double number_width = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        pages.emplace_back().paper = paper;
        const std::size_t from = std::min(i * each, all.size());
        BeachPage one(sheet, all.subspan(from, std::min(each, all.size() - from)), count + 1,
                      setter, pages.back());
        number_width = one.pen().width(units + page_line(10, 10), least_sheet_points) + 1.0;
        one.plan();
        const BeachRest left = one.set(number_width);
        take_over(left.open, sheet.open, rest.open);
        take_over(left.decided, sheet.decided, rest.decided);
        take_over(left.kit, {}, rest.kit);
        rest.call = rest.call || left.call;
        rest.plan = rest.plan || left.plan;
        pens.push_back(one.pen());
    }
    if (!rest.empty()) {
        BeachRestPages more(sheet, paper, number_width, setter, pages, pens);
        more.set(rest);
    }
    for (std::size_t i = 0; i < pens.size(); ++i) {
        set_beach_number(pens[i], units + page_line(i + 1, pens.size()));
    }
    return {std::make_move_iterator(pages.begin()), std::make_move_iterator(pages.end())};
}

}  // namespace leadline
