// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "ui/sheet/beach_page.h"

namespace leadline {

namespace {

constexpr double signals_least = 74.0;
constexpr double signals_most = 92.0;
constexpr double signal_gap = 1.2;
constexpr double profile_gap = 4.0;
constexpr double chart_least = 7.5;
constexpr double over_chart = 4.8;
constexpr double under_chart = 1.0;
constexpr double right_of_chart = 14.0;
constexpr double middle_lowest = 28.5;
constexpr double told_points = 8.0;
constexpr int told_lines = 12;

}  // namespace

std::vector<double> BeachPage::signal_widths() {
    // All alike, but for one whose longest word asks for more.
    const auto count = static_cast<double>(std::max<std::size_t>(sheet_.need.size(), 1));
    const double usual = (signals_least - signal_gap * (count - 1.0)) / count;
    std::vector<double> widths;
    for (const BeachSignal& one : sheet_.need) {
        widths.push_back(std::max(usual, pen_.widest_word(one.caption, least_sheet_points) + 0.2));
    }
    return widths;
}

double BeachPage::signals_width(const std::vector<double>& widths) const {
    double asked = signal_gap * (static_cast<double>(widths.size()) - 1.0);
    for (const double width : widths) asked += width;
    return std::clamp(asked, signals_least, signals_most);
}

double BeachPage::told_height(double width) {
    return pen_.height(phrase(sheet_.times, sheet_.air), width, told_points) + 0.1;
}

double BeachPage::middle_least() {
    const double width = pen_.frame().width() - signals_width(signal_widths()) - profile_gap;
    return std::max(middle_lowest,
                    told_height(width) + over_chart + chart_least + under_chart + beach_part_gap);
}

double BeachPage::set_middle(double y) {
    const QRectF& frame = pen_.frame();
    const std::vector<double> widths = signal_widths();
    const double right = signals_width(widths);
    const QRectF area(frame.left(), y, frame.width(), middle_height_ - beach_part_gap);
    set_profile(QRectF(area.left(), area.top(), area.width() - right - profile_gap, area.height()));
    set_signals(QRectF(area.right() - right, area.top(), right, area.height()), widths);
    return y + middle_height_;
}

void BeachPage::set_profile(const QRectF& area) {
    // Never cut: it holds the times and the pressure that the instructor acts by.
    const double height = told_height(area.width());
    pen_.text(phrase(sheet_.times, sheet_.air),
              QRectF(area.left(), area.top(), area.width(), height),
              {.points = told_points, .most_lines = told_lines});
    set_chart(
        QRectF(area.left() + 1.0, area.top() + height + over_chart, area.width() - right_of_chart,
               area.height() - height - over_chart - under_chart),
        area.right());
}

void BeachPage::set_chart(const QRectF& chart, double right) {
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
            std::clamp(at.x() - clock_width / 2.0, chart.left() - 1.0, right - clock_width);
        const double last_left =
            std::clamp(chart.right() - clock_width / 2.0, chart.left() - 1.0, right - clock_width);
        if (left >= clock_free && (last || left + clock_width + 0.6 <= last_left)) {
            pen_.text(corner.clock, QRectF(left, chart.top() - 4.2, clock_width, 3.6),
                      {.points = 8.0});
            pen_.line(at.x(), chart.top() - 0.8, at.x(), chart.top() + 0.8, 0.2);
            clock_free = left + clock_width + 0.6;
        }
    }
    set_depths(chart, deepest);
}

void BeachPage::set_depths(const QRectF& chart, double deepest) {
    // Depths at the right edge: the deepest, and each other that keeps its distance.
    std::vector<const BeachCorner*> by_depth;
    for (const BeachCorner& corner : sheet_.profile) by_depth.push_back(&corner);
    std::stable_sort(by_depth.begin(), by_depth.end(),
                     [](const auto* a, const auto* b) { return a->meters > b->meters; });
    double free_below = 1e9;
    for (const BeachCorner* corner : by_depth) {
        const double y =
            std::min(chart.top() + chart.height() * corner->meters / deepest, chart.bottom());
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

}  // namespace leadline
