// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "ui/sheet/beach_page.h"

namespace leadline {
namespace {

constexpr double number_top = 9.3;
constexpr double emergency_least = 17.0;
constexpr double emergency_most = 21.5;
constexpr double call_most = 31.0;  ///< of the box, for whom to call alone
constexpr double call_head = 4.4;
constexpr double call_points = 9.0;
constexpr int call_lines = 8;
constexpr double emergency_edge = 0.8;
constexpr double emergency_plan_line = 3.45;

}  // namespace

double set_beach_title(SheetPen& pen, const BeachSheet& sheet, double number_width) {
    const QRectF& frame = pen.frame();
    constexpr double tag_height = 12.5;
    const double y = frame.top();
    const double natural = pen.width(sheet.group, 24.0, true) + 8.0;
    const double tag_width = std::clamp(natural, 28.0, frame.width() * 0.42);
    const QRectF tag(frame.left(), y, tag_width, tag_height);
    pen.filled(tag, 1.0);
    pen.text(sheet.group, tag.adjusted(3.0, 0.6, -3.0, -0.6),
             {.points = 24.0,
              .bold = true,
              .most_lines = 2,
              .align = Align::centre,
              .middle = true,
              .ink = Ink::white});
    const double left = tag.right() + 4.0;
    const double width = frame.right() - left;
    pen.text(sheet.site, QRectF(left, y - 0.6, width, 5.2), {.points = 11.0, .bold = true});
    pen.text(sheet.when, QRectF(left, y + 4.4, width, 4.4), {.points = 9.5});
    pen.text(sheet.staff, QRectF(left, y + 8.8, width - number_width - 3.0, 4.4), {.points = 9.5});
    return y + beach_title_height;
}

void set_beach_number(SheetPen& pen, const QString& number) {
    const QRectF& frame = pen.frame();
    const double width = pen.width(number, least_sheet_points) + 1.0;
    pen.text(number, QRectF(frame.right() - width, frame.top() + number_top, width, 3.6),
             {.points = least_sheet_points, .align = Align::right});
}

double BeachPage::plan_width() const {
    return pen_.frame().width() * 0.62 - 9.5;
}

double BeachPage::call_width() const {
    return pen_.frame().width() * 0.38 - 3.0;
}

double BeachPage::emergency_height() {
    double total = 0.0;
    for (const QString& line : sheet_.emergency_plan) {
        total += pen_.height({line, 0}, plan_width(), least_sheet_points);
    }
    const double plan = std::clamp(total + 3.0, emergency_least, emergency_most);
    // Whom to call is not cut as long as any sensible box holds it.
    const double call = pen_.height({sheet_.emergency_line, 0}, call_width(), call_points, true) +
                        call_head + 2.9;
    return std::max(plan, std::min(call, call_most));
}

double BeachPage::set_emergency(double y) {
    const QRectF& frame = pen_.frame();
    const QRectF box(frame.left(), y, frame.width(), emergency_height_);
    pen_.box(box, emergency_edge, 1.2);
    const QRectF call(box.left() + 3.0, box.top() + 1.4, call_width(), box.height() - 2.8);
    pen_.text(BeachLabels::tr("In an emergency call"),
              QRectF(call.left(), call.top(), call.width(), call_head),
              {.points = 9.5, .bold = true});
    const QRectF number = call.adjusted(0.0, call_head, 0.0, 0.0);
    if (sheet_.emergency_line.isEmpty()) {
        pen_.text(BeachLabels::tr("not entered: write it here"),
                  QRectF(call.left(), call.top() + call_head, call.width(), 4.0),
                  {.points = 8.0});
        pen_.blank(number.adjusted(0.0, 0.0, 0.0, -1.0));
    } else {
        set_call(number);
    }
    set_emergency_plan(QRectF(box.right() - 2.5 - plan_width(), box.top() + 1.4, plan_width(),
                              box.height() - 2.6));
    return box.bottom() + beach_part_gap;
}

void BeachPage::set_call(const QRectF& number) {
    const QString& words = sheet_.emergency_line;
    const double asked = pen_.height({words, 0}, number.width(), least_sheet_points, true);
    call_cut_ = asked > number.height();
    const double kept = call_cut_ ? emergency_plan_line : 0.0;
    pen_.text(
        words, number.adjusted(0.0, 0.0, 0.0, -kept),
        {.points = 25.0, .bold = true, .most_lines = call_lines, .middle = !call_cut_});
    if (call_cut_) set_pointer(number);
}

void BeachPage::set_pointer(const QRectF& area) {
    pen_.text(BeachLabels::tr("The whole plan stands on page %1.").arg(goes_on_),
              QRectF(area.left(), area.bottom() - emergency_plan_line, area.width(),
                     emergency_plan_line + 0.3),
              {.points = 8.0, .bold = true});
}

void BeachPage::set_emergency_plan(const QRectF& plan) {
    if (sheet_.emergency_plan.isEmpty()) {
        pen_.text(BeachLabels::tr("No emergency plan is entered: write it here (oxygen, phone, "
                                  "chamber, way out)"),
                  QRectF(plan.left(), plan.top(), plan.width(), 7.4),
                  {.points = 8.0, .most_lines = 2});
        return;
    }
    std::vector<double> heights;
    double total = 0.0;
    for (const QString& line : sheet_.emergency_plan) {
        heights.push_back(pen_.height({line, 0}, plan.width(), least_sheet_points));
        total += heights.back();
    }
    // The plan's own lines as long as they last; where they do not fit, all on running lines.
    if (total <= plan.height() + 0.1) {
        double top = plan.top();
        for (std::size_t i = 0; i < heights.size(); ++i) {
            pen_.text(sheet_.emergency_plan[static_cast<int>(i)],
                      QRectF(plan.left(), top, plan.width(), heights[i]),
                      {.points = 8.0, .most_lines = 99});
            top += heights[i];
        }
        return;
    }
    const QString joined = sheet_.emergency_plan.join(QStringLiteral(" · "));
    if (pen_.height({joined, 0}, plan.width(), least_sheet_points) <= plan.height()) {
        pen_.text(joined, plan, {.points = 8.0, .most_lines = 99});
        return;
    }
    plan_cut_ = true;
    pen_.text(joined, plan.adjusted(0.0, 0.0, 0.0, -emergency_plan_line),
              {.points = 8.0, .most_lines = 99});
    set_pointer(plan);
}

}  // namespace leadline
