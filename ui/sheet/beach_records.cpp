// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/beach_page.h"

namespace leadline {

std::vector<QRectF> BeachPage::record_cells(const QRectF& row) const {
    std::vector<double> widths{46.0, 7.0, 7.0, 13.0};
    for (int i = 0; i < sheet_.air_checks.size(); ++i) widths.push_back(10.5);
    widths.insert(widths.end(), {13.0, 14.0, 7.0, 7.0});
    return columns(row, widths, 0.0);
}

void BeachPage::set_records_head(double y) {
    const auto cells = record_cells(pen_.frame());
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
}

double BeachPage::set_records(double y) {
    const QRectF& frame = pen_.frame();
    const auto checks = static_cast<std::size_t>(sheet_.air_checks.size());
    set_records_head(y);
    double top = y + beach_record_head;
    pen_.rule(top, 0.4);
    const std::size_t ticks[] = {1, 2, 6 + checks, 7 + checks};
    for (const BeachGuest& guest : guests_) {
        const QRectF row(frame.left(), top, frame.width(), record_row_);
        const auto places = record_cells(row);
        pen_.text(guest.name, places[0].adjusted(0.0, 0.0, -1.0, 0.0),
                  {.points = 9.0, .bold = true, .most_lines = 2, .middle = true});
        for (const std::size_t tick : ticks) pen_.tick(places[tick], 4.8);
        for (std::size_t i = 3; i < 6 + checks; ++i) {
            pen_.line(places[i].left(), row.top(), places[i].left(), row.bottom(), beach_hair);
        }
        pen_.line(places[5 + checks].right(), row.top(), places[5 + checks].right(), row.bottom(),
                  beach_hair);
        top += record_row_;
        pen_.rule(top, beach_hair);
    }
    return set_count(top);
}

double BeachPage::set_count(double y) {
    const QRectF& frame = pen_.frame();
    const QRectF row(frame.left(), y + 0.6, frame.width(), beach_count_height - 1.6);
    const auto halves = columns(row, {1.0, 1.0}, 5.0);
    const QString labels[] = {BeachLabels::tr("Heads in"), BeachLabels::tr("Heads out")};
    // Heads of a group on several pages are counted as one.
    const bool several = guests_.size() < sheet_.guests.size();
    const double whole = several ? 12.0 : 0.0;
    const double name = 17.0 - whole / 2.0;
    for (std::size_t i = 0; i < 2; ++i) {
        const auto parts =
            columns(halves[i], {17.0, 9.0, whole, 6.0, 17.0, 9.0, name, name}, 1.0);
        const auto word = [&](std::size_t part, const QString& words, bool bold = false) {
            pen_.text(words, parts[part],
                      {.points = bold ? 9.0 : 8.0, .bold = bold, .middle = true});
        };
        word(0, labels[i], true);
        const auto write = [&](std::size_t part) {
            pen_.blank(parts[part].adjusted(0.0, 0.0, 0.0, -1.6));
        };
        write(1);
        if (several) {
            word(2, BeachLabels::tr("of %1", "heads of the whole group").arg(sheet_.guests.size()),
                 true);
        }
        word(3, BeachLabels::tr("at", "a time of day"));
        write(4);
        word(5, BeachLabels::tr("by", "who counted"));
        write(6);
        write(7);
    }
    return y + beach_count_height + beach_part_gap;
}

}  // namespace leadline
