// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "ui/sheet/picture_sheet.h"
#include "ui/sheet/sheet_pen.h"

namespace leadline {
namespace {

constexpr std::size_t signals_across = 5;
constexpr double caption_line = 4.7;
constexpr double numbers_picture = 15.5;
constexpr double two_lines = 7.5;  // in the least type

class PicturePage {
public:
    PicturePage(const PictureSheet& sheet, TypeSetter& setter, Page& page)
        : sheet_(sheet), pen_(setter, page) {}

    void set() {
        const QRectF& frame = pen_.frame();
        const double air = languages() > 1.0 ? 58.0 : 52.0;
        const double numbers = numbers_picture + 5.0 + two_lines * languages() + 1.6;
        const double thumb = 5.6 * languages();
        const double review = sheet_.review.isEmpty() ? 0.0 : 3.7;
        const double standing_top = frame.bottom() - 4.0 - review;
        const double air_top = standing_top - 1.0 - air;
        const double numbers_top = air_top - 2.0 - numbers;
        const double y = set_title(frame.top());
        const double thumb_top = numbers_top - 1.0 - thumb;
        set_signals(QRectF(frame.left(), y, frame.width(), thumb_top - 0.8 - y));
        set_stacked(sheet_.thumb_up, QRectF(frame.left(), thumb_top, frame.width(), thumb), 12.0,
                    true, 1, Align::left);
        pen_.rule(numbers_top, 0.3);
        set_numbers(QRectF(frame.left(), numbers_top + 1.5, frame.width(), numbers - 1.5));
        pen_.rule(air_top, 0.3);
        set_air(QRectF(frame.left(), air_top + 1.5, frame.width(), air - 1.5));
        set_running(sheet_.standing, QRectF(frame.left(), standing_top, frame.width(), 4.0), 8.0,
                    false);
        pen_.text(sheet_.review, QRectF(frame.left(), frame.bottom() - review, frame.width(), review),
                  {.points = least_sheet_points});
    }

private:
    [[nodiscard]] double languages() const { return static_cast<double>(sheet_.title.size()); }

    /// Each language on a part of its own from the top down.
    void set_stacked(const GuestTexts& texts, const QRectF& area, double points, bool bold,
                     int most_lines, Align align) {
        const double height = area.height() / static_cast<double>(texts.size());
        for (std::size_t i = 0; i < texts.size(); ++i) {
            const QRectF part(area.left(), area.top() + height * static_cast<double>(i),
                              area.width(), height);
            pen_.text(texts[i].text, part,
                      {.points = points,
                       .bold = bold && i == 0,
                       .most_lines = most_lines,
                       .align = side(align, texts[i].face),
                       .face = texts[i].face});
        }
    }

    /// Each language on its own share of one line.
    void set_running(const GuestTexts& texts, const QRectF& area, double points, bool bold) {
        const auto parts = in_order(columns(area, std::vector<double>(texts.size(), 1.0), 5.0), area);
        for (std::size_t i = 0; i < texts.size(); ++i) {
            pen_.text(texts[i].text, parts[i],
                      {.points = points,
                       .bold = bold,
                       .align = side(Align::left, texts[i].face),
                       .face = texts[i].face});
        }
    }

    static Align side(Align align, const Typeface& face) {
        if (align == Align::centre || !face.right_to_left) return align;
        return align == Align::left ? Align::right : Align::left;
    }

    [[nodiscard]] const Typeface& first_face() const { return sheet_.title.front().face; }

    /// Where a part of the page stands: in a language that runs from right to left, as in a mirror.
    /// Figures of a number are not mirrored.
    [[nodiscard]] QRectF in_order(const QRectF& part, const QRectF& area) const {
        if (!first_face().right_to_left) return part;
        return {area.left() + area.right() - part.right(), part.top(), part.width(), part.height()};
    }
    [[nodiscard]] std::vector<QRectF> in_order(std::vector<QRectF> parts, const QRectF& area) const {
        for (QRectF& part : parts) part = in_order(part, area);
        return parts;
    }

    double set_title(double y) {
        const QRectF& frame = pen_.frame();
        set_running(sheet_.title, QRectF(frame.left(), y - 1.0, frame.width(), 10.5), 21.0, true);
        return y + 11.0;
    }

    void set_signals(const QRectF& area) {
        const std::size_t rows = (sheet_.hand_signals.size() + signals_across) / signals_across;
        const double row_height = area.height() / static_cast<double>(rows);
        const double captions = caption_line * languages() + 0.8;
        const auto cell_of = [&](std::size_t i) {
            const double width = area.width() / static_cast<double>(signals_across);
            return in_order(
                QRectF(area.left() + width * static_cast<double>(i % signals_across),
                       area.top() + row_height * static_cast<double>(i / signals_across), width,
                       row_height),
                area);
        };
        for (std::size_t i = 0; i < sheet_.hand_signals.size(); ++i) {
            const QRectF cell = cell_of(i);
            const double side = std::min(cell.width() - 3.0, cell.height() - captions - 1.0);
            pen_.picture(sheet_.hand_signals[i].picture,
                         QRectF(cell.center().x() - side / 2.0, cell.top(), side, side));
            set_stacked(
                sheet_.hand_signals[i].captions,
                QRectF(cell.left() + 0.8, cell.top() + side + 0.4, cell.width() - 1.6, captions),
                11.0, true, 1, Align::centre);
        }
        // The last cell is free for the mix-up that matters most: a thumb up is no ring.
        const QRectF last = cell_of(sheet_.hand_signals.size()).adjusted(1.0, 0.5, -0.5, -1.0);
        pen_.box(last, 0.6, 1.5);
        const auto parts = columns(last.adjusted(1.2, 0.0, -1.2, 0.0), {1.0, 0.4, 1.0}, 0.0);
        const HandSignal unlike[] = {HandSignal::up, HandSignal::ok};
        for (std::size_t i = 0; i < 2; ++i) {
            const QRectF& part = parts[2 * i];
            const double side = std::min(part.width(), part.height() - 2.0);
            pen_.picture(
                sheet_.hand_signals[static_cast<std::size_t>(unlike[i])].picture,
                QRectF(part.center().x() - side / 2.0, part.center().y() - side / 2.0, side, side));
        }
        pen_.text(QString(QChar(0x2260)), parts[1],
                  {.points = 20.0, .bold = true, .align = Align::centre, .middle = true});
    }

    void set_numbers(const QRectF& area) {
        const auto cells = columns(QRectF(area.left(), area.top(), area.width(), numbers_picture),
                                   std::vector<double>(sheet_.numbers.size(), 1.0), 2.0);
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double side = std::min(cells[i].width(), numbers_picture);
            pen_.picture(sheet_.numbers[i].picture,
                         QRectF(cells[i].center().x() - side / 2.0, area.top(), side, side));
            pen_.text(sheet_.numbers[i].captions.front().text,
                      QRectF(cells[i].left(), area.top() + side, cells[i].width(), 5.0),
                      {.points = 11.0, .bold = true, .align = Align::centre});
        }
        const QRectF words(area.left(), area.top() + numbers_picture + 5.2, area.width(),
                           area.bottom() - area.top() - numbers_picture - 5.2);
        const auto halves = in_order(columns(words, {1.35, 1.0}, 5.0), words);
        set_stacked(sheet_.numbers_first, halves[0], 9.5, true, 2, Align::left);
        set_stacked(sheet_.numbers_shown, halves[1], 9.5, false, 2, Align::left);
    }

    void set_balloons(const std::vector<PictureBalloon>& balloons, const QRectF& area,
                      bool fixed_start) {
        if (balloons.empty()) return;
        const auto cells =
            in_order(columns(area, std::vector<double>(balloons.size(), 1.0), 1.0), area);
        double largest = 1.0;
        for (const PictureBalloon& balloon : balloons) largest = std::max(largest, balloon.scale);
        constexpr double words = 11.0;
        const double room = std::min(area.height() - words, cells.front().width());
        for (std::size_t i = 0; i < balloons.size(); ++i) {
            const PictureBalloon& balloon = balloons[i];
            const double side = room * balloon.scale / largest;
            const double x = cells[i].center().x();
            pen_.picture(QStringLiteral(":/leadline/body/balloon.svg"),
                         QRectF(x - side / 2.0, area.top() + (room - side) / 2.0, side, side));
            const QString depth =
                fixed_start ? balloon.depth : balloon.depth + QStringLiteral(" ↑");
            pen_.text(depth,
                      QRectF(cells[i].left(), area.bottom() - words + 0.4, cells[i].width(), 5.2),
                      {.points = 11.0, .bold = true, .align = Align::centre, .face = first_face()});
            const QString size = balloon.volume.isEmpty()
                                     ? balloon.factor
                                     : balloon.volume + QStringLiteral("  ") + balloon.factor;
            pen_.text(size,
                      QRectF(cells[i].left(), area.bottom() - words + 5.6, cells[i].width(), 4.8),
                      {.points = 9.0, .align = Align::centre, .face = first_face()});
        }
    }

    void set_air(const QRectF& area) {
        const double words = std::max(two_lines * languages(), 8.6);
        const double rule_height = 9.0;
        const QRectF pictures(area.left(), area.top(), area.width(), area.height() - rule_height);
        const auto parts = in_order(columns(pictures, {1.0, 1.0, 0.42}, 5.0), pictures);
        set_stacked(sheet_.taken_down,
                    QRectF(parts[0].left(), parts[0].top(), parts[0].width(), words), 9.5, true, 2,
                    Align::left);
        set_balloons(sheet_.shrinking, parts[0].adjusted(0.0, words, 0.0, 0.0), true);
        set_stacked(sheet_.taken_up,
                    QRectF(parts[1].left(), parts[1].top(), parts[1].width(), words), 9.5, true, 2,
                    Align::left);
        set_balloons(sheet_.swelling, parts[1].adjusted(0.0, words, 0.0, 0.0), false);
        const double lungs = std::min(parts[2].width(), parts[2].height() * 0.5);
        pen_.picture(QStringLiteral(":/leadline/body/lungs.svg"),
                     QRectF(parts[2].center().x() - lungs / 2.0, parts[2].top(), lungs, lungs));
        set_stacked(sheet_.like_lungs,
                    QRectF(parts[2].left(), parts[2].top() + lungs + 0.5, parts[2].width(),
                           parts[2].height() - lungs - 0.5),
                    9.5, true, 5, Align::centre);
        const QRectF band(area.left(), area.bottom() - rule_height + 0.8, area.width(),
                          rule_height - 1.6);
        pen_.filled(band, 1.0);
        const QRectF room = band.adjusted(3.0, 0.0, -3.0, 0.0);
        const auto halves = in_order(
            columns(room, std::vector<double>(sheet_.never_hold_breath.size(), 1.0), 5.0), room);
        for (std::size_t i = 0; i < halves.size(); ++i) {
            pen_.text(sheet_.never_hold_breath[i].text, halves[i],
                      {.points = 15.0,
                       .bold = true,
                       .align = Align::centre,
                       .middle = true,
                       .ink = Ink::white,
                       .face = sheet_.never_hold_breath[i].face});
        }
    }

    const PictureSheet& sheet_;
    SheetPen pen_;
};

}  // namespace

std::vector<Page> picture_pages(const PictureSheet& sheet, Paper paper, TypeSetter& setter) {
    Page page;
    page.paper = paper;
    PicturePage(sheet, setter, page).set();
    return {std::move(page)};
}

}  // namespace leadline
