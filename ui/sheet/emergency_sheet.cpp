// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/emergency_sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/guest_words/typed_text.h"
#include "ui/sheet/sheet_pen.h"
#include "ui/sheet/sheet_words.h"

namespace leadline {
namespace {

class EmergencyWords {
    Q_DECLARE_TR_FUNCTIONS(EmergencySheet)
};

constexpr double number_height = 46.0;
constexpr double blank_height = 12.0;
constexpr double widest_blank = 23.0;
constexpr double step_gap = 2.2;
constexpr double badge = 9.0;
// From this altitude on it is said: the one from which the pressure is under about 96 % of that at
// sea level. Common practice, no source.
constexpr double said_from_m = 300.0;
constexpr double altitude_meters_per_foot = 0.3048;

QString altitude_text(const Session& session, UnitSystem units) {
    const double meters = session.site.altitude.meters().value();
    if (std::abs(meters) < said_from_m) return {};
    const QString shown = text(Meters(std::abs(meters)), units);
    const double whole = units == UnitSystem::metric ? std::abs(meters)
                                                     : std::abs(meters) / altitude_meters_per_foot;
    return QString::number(std::lround(whole)) + QChar(0x00A0) + shown.section(QChar(0x00A0), 1);
}

class EmergencyPages {
public:
    EmergencyPages(const EmergencySheet& sheet, Paper paper, TypeSetter& setter)
        : sheet_(sheet), paper_(paper), setter_(setter) {}

    std::vector<Page> taken() {
        begin(true);
        points_ = fitting_points();
        set_steps();
        set_blanks();
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            SheetPen foot(setter_, pages_[i]);
            set_sheet_foot(foot, sheet_.standing,
                           pages_.size() > 1 ? page_line(i + 1, pages_.size()) : QString());
        }
        return std::move(pages_);
    }

private:
    SheetPen& pen() { return *pen_; }

    void begin(bool first) {
        pages_.emplace_back();
        pages_.back().paper = paper_;
        pen_.emplace(setter_, pages_.back());
        const QRectF& frame = pen().frame();
        y_ = frame.top();
        bottom_ = frame.bottom() - sheet_foot_height;
        if (first) {
            set_number();
            set_place();
        } else {
            pen().text(EmergencyWords::tr("In an emergency: the plan goes on"),
                       QRectF(frame.left(), y_, frame.width(), 8.0),
                       {.points = 16.0, .bold = true});
            y_ += 11.0;
        }
    }

    void set_number() {
        const QRectF& frame = pen().frame();
        const QRectF box(frame.left(), y_, frame.width(), number_height);
        pen().filled(box, 2.0);
        pen().text(EmergencyWords::tr("In an emergency call"),
                   QRectF(box.left() + 6.0, box.top() + 3.0, box.width() - 12.0, 10.0),
                   {.points = 21.0, .bold = true, .ink = Ink::white});
        const QRectF number(box.left() + 6.0, box.top() + 14.0, box.width() - 12.0,
                            box.height() - 17.0);
        if (!sheet_.number.isEmpty()) {
            pen().text(
                sheet_.number, number,
                {.points = 62.0, .bold = true, .most_lines = 4, .middle = true, .ink = Ink::white});
        } else {
            // White on the black: room to write the number.
            pages_.back().items.emplace_back(RectItem{number, 1.5, 0.0, Ink::white});
            pen().text(EmergencyWords::tr("not entered: write it here"),
                       QRectF(number.left() + 3.0, number.top() + 2.0, number.width() - 6.0, 6.0),
                       {.points = 12.0});
        }
        y_ = box.bottom() + 4.0;
    }

    void set_place() {
        const QRectF& frame = pen().frame();
        pen().text(sheet_.site, QRectF(frame.left(), y_, frame.width(), 12.0),
                   {.points = 24.0, .bold = true, .most_lines = 2});
        y_ += 12.5;
        const QRectF row(frame.left(), y_, frame.width(), 8.0);
        if (sheet_.meeting_place.isEmpty()) {
            set_blank(EmergencyWords::tr("Where to come to"), 10.0);
        } else {
            pen().text(phrase(EmergencyWords::tr("Where to come to:"), sheet_.meeting_place), row,
                       {.points = 16.0, .most_lines = 2});
            y_ += 8.5;
        }
        for (const QString& line : {sheet_.altitude, sheet_.depth}) {
            if (line.isEmpty()) continue;
            pen().text(line, QRectF(frame.left(), y_, frame.width(), 6.0), {.points = 13.0});
            y_ += 6.2;
        }
        y_ += 2.0;
        pen().rule(y_, 0.6);
        y_ += 3.5;
    }

    [[nodiscard]] double step_height(const QString& step, double points) {
        const double width = pen().frame().width() - badge - 4.0;
        return std::max(pen().height({step, 0}, width, points), badge) + step_gap;
    }

    /// The largest type in which the whole plan and the blanks fit on this page.
    double fitting_points() {
        double blanks = 0.0;
        for (int i = 0; i < sheet_.blanks.size(); ++i) blanks += blank_height;
        for (const double points : {32.0, 28.0, 24.0, 21.0, 18.0, 16.0, 14.0, 12.0}) {
            double total = blanks;
            for (const QString& step : sheet_.steps) total += step_height(step, points);
            if (y_ + total <= bottom_) return points;
        }
        return 11.0;
    }

    void set_steps() {
        int number = 0;
        for (const QString& step : sheet_.steps) {
            const double height = step_height(step, points_);
            if (y_ + height - step_gap > bottom_ && number > 0) begin(false);
            const QRectF& frame = pen().frame();
            const QRectF mark(frame.left(), y_, badge, badge);
            pen().filled(mark, badge / 2.0);
            pen().text(QString::number(++number), mark,
                       {.points = 15.0,
                        .bold = true,
                        .align = Align::centre,
                        .middle = true,
                        .ink = Ink::white});
            const double room = std::min(height - step_gap, bottom_ - y_);
            pen().text(step,
                       QRectF(frame.left() + badge + 4.0, y_, frame.width() - badge - 4.0, room),
                       {.points = points_, .most_lines = 99, .middle = room <= badge + 0.1});
            y_ += height;
        }
    }

    void set_blank(const QString& label, double height) {
        const QRectF& frame = pen().frame();
        const double width = std::min(pen().width(label, 13.0, true) + 2.0, frame.width() * 0.6);
        pen().text(label, QRectF(frame.left(), y_ + height - 7.0, width, 6.6),
                   {.points = 13.0, .bold = true});
        pen().blank(
            QRectF(frame.left() + width + 2.0, y_, frame.width() - width - 2.0, height - 1.0));
        y_ += height;
    }

    void set_blanks() {
        // As much room to write as there is.
        const auto count = static_cast<double>(std::max<qsizetype>(sheet_.blanks.size(), 1));
        const double height = std::clamp((bottom_ - y_) / count, blank_height, widest_blank);
        for (const QString& label : sheet_.blanks) {
            if (y_ + height > bottom_ + 0.01) begin(false);
            set_blank(label, height);
        }
    }

    const EmergencySheet& sheet_;
    Paper paper_;
    TypeSetter& setter_;
    std::vector<Page> pages_;
    std::optional<SheetPen> pen_;
    double y_ = 0.0;
    double bottom_ = 0.0;
    double points_ = 24.0;
};

}  // namespace

EmergencySheet emergency_sheet(const Session& session, const Plan& plan, UnitSystem units) {
    EmergencySheet sheet;
    sheet.site = one_line(session.site.name);
    if (sheet.site.isEmpty()) sheet.site = EmergencyWords::tr("Site without a name");
    sheet.meeting_place = with_whole_numbers(one_line(session.site.meeting_place));
    sheet.number = with_whole_numbers(one_line(session.site.emergency_line));
    for (const QString& step : lines_of(session.site.emergency_plan)) {
        sheet.steps << with_whole_numbers(step);
    }
    const QString height = altitude_text(session, units);
    if (!height.isEmpty()) {
        sheet.altitude = session.site.altitude.meters().value() > 0.0
                             ? EmergencyWords::tr(
                                   "The water lies %1 above sea level: tell the "
                                   "physician.")
                                   .arg(height)
                             : EmergencyWords::tr(
                                   "The water lies %1 below sea level: tell the "
                                   "physician.")
                                   .arg(height);
    }
    const QString deepest = text(plan.environment.deepest, units, Rounding::up);
    sheet.depth = session.site.bottom_depth
                      ? EmergencyWords::tr("Guests are taken to %1; the bottom lies at %2.")
                            .arg(deepest, text(*session.site.bottom_depth, units, Rounding::up))
                      : EmergencyWords::tr("Guests are taken to %1.").arg(deepest);
    if (sheet.steps.isEmpty()) {
        sheet.blanks = {EmergencyWords::tr("Oxygen is at"),
                        EmergencyWords::tr("First aid kit is at"),
                        EmergencyWords::tr("Phone or radio"),
                        EmergencyWords::tr("Nearest chamber, how far"),
                        EmergencyWords::tr("Way out for the ambulance"),
                        EmergencyWords::tr("Who gives first aid")};
    } else {
        sheet.blanks = {EmergencyWords::tr("Position for rescuers"),
                        EmergencyWords::tr("Who gives first aid today")};
    }
    sheet.standing = EmergencyWords::tr(
        "Local rules, the centre's own plan and the rescue service come first. Put right by hand "
        "what has changed.");
    return sheet;
}

std::vector<Page> emergency_pages(const EmergencySheet& sheet, Paper paper, TypeSetter& setter) {
    return EmergencyPages(sheet, paper, setter).taken();
}

}  // namespace leadline
