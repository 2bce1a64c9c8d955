// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/skills_sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <span>

#include "ui/guest_words/signal_words.h"
#include "ui/sheet/card_language.h"
#include "ui/sheet/sheet_pen.h"
#include "ui/sheet/sheet_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

class SkillsWords {
    Q_DECLARE_TR_FUNCTIONS(SkillsSheet)
};

constexpr double skills_head_height = 30.0;
constexpr double row_least = 8.5;
constexpr double row_most = 14.0;
constexpr double name_share = 46.0;
constexpr double skill_share = 18.0;
constexpr double least_name_width = 32.0;
constexpr double skill_inset = 0.3;
constexpr double purpose_height = 15.0;

class SkillsPage {
public:
    SkillsPage(const SkillsSheet& sheet, std::span<const QString> guests, const QString& number,
               TypeSetter& setter, Page& page)
        : sheet_(sheet), guests_(guests), number_(number), pen_(setter, page) {}

    void set() {
        const QRectF& frame = pen_.frame();
        const double foot = set_sheet_foot(pen_, sheet_.standing, number_);
        double y = set_sheet_title(pen_, SkillsWords::tr("Skills"), sheet_.group, sheet_.session);
        if (sheet_.skills.empty()) {
            pen_.text(SkillsWords::tr("No skills are chosen for this session."),
                      QRectF(frame.left(), y + 3.0, frame.width(), 6.0), {.points = 11.0});
            return;
        }
        const auto rows = static_cast<double>((sheet_.skills.size() + 1) / 2);
        const double purposes = rows * purpose_height + 7.0;
        y = set_table(y, foot - purposes);
        set_purposes(foot - purposes + 2.0);
    }

private:
    /// A skill's column is wide enough for the longest of its words; names take what is left.
    [[nodiscard]] std::vector<QRectF> cells(const QRectF& row) {
        const auto count = static_cast<double>(sheet_.skills.size());
        const double usual = row.width() * skill_share / (name_share + count * skill_share);
        const double most = (row.width() - least_name_width) / count;
        double cell = usual;
        for (const SheetSkill& skill : sheet_.skills) {
            const double word = pen_.widest_word(skill.name, least_sheet_points, true);
            cell = std::max(cell, word + 2.0 * skill_inset + 0.2);
        }
        cell = std::min(cell, std::max(most, usual));
        std::vector<double> widths{row.width() - count * cell};
        widths.insert(widths.end(), sheet_.skills.size(), cell);
        return columns(row, widths, 0.0);
    }

    double set_table(double y, double bottom) {
        const QRectF& frame = pen_.frame();
        const QRectF head(frame.left(), y, frame.width(), skills_head_height);
        const auto heads = cells(head);
        for (std::size_t i = 0; i < sheet_.skills.size(); ++i) {
            const QRectF& cell = heads[i + 1];
            const double side = std::min(13.0, cell.width() - 1.0);
            pen_.picture(sheet_.skills[i].picture,
                         QRectF(cell.center().x() - side / 2.0, cell.top(), side, side));
            pen_.text(sheet_.skills[i].name,
                      QRectF(cell.left() + skill_inset, cell.top() + 13.5,
                             cell.width() - 2.0 * skill_inset, 16.0),
                      {.points = 8.5, .bold = true, .most_lines = 4, .align = Align::centre});
        }
        y = head.bottom();
        pen_.rule(y, 0.4);
        if (guests_.empty()) {
            pen_.text(SkillsWords::tr("Nobody is in this group yet."),
                      QRectF(frame.left(), y + 2.0, frame.width(), 5.0), {.points = 10.0});
            return y + row_least;
        }
        const double row_height =
            std::clamp((bottom - y) / static_cast<double>(guests_.size()), row_least, row_most);
        for (const QString& guest : guests_) {
            const auto places = cells(QRectF(frame.left(), y, frame.width(), row_height));
            pen_.text(guest, places[0].adjusted(0.0, 0.0, -1.5, 0.0),
                      {.points = 11.0, .bold = true, .most_lines = 2, .middle = true});
            for (std::size_t i = 1; i < places.size(); ++i) pen_.tick(places[i], 6.0);
            y += row_height;
            pen_.rule(y, 0.15);
        }
        return y;
    }

    void set_purposes(double y) {
        const QRectF& frame = pen_.frame();
        pen_.text(SkillsWords::tr("What each is for"), QRectF(frame.left(), y, frame.width(), 4.6),
                  {.points = 10.0, .bold = true});
        y += 5.6;
        for (std::size_t i = 0; i < sheet_.skills.size(); ++i) {
            const auto halves =
                columns(QRectF(frame.left(), y + static_cast<double>(i / 2) * purpose_height,
                               frame.width(), purpose_height - 1.0),
                        {1.0, 1.0}, 6.0);
            const QRectF& cell = halves[i % 2];
            pen_.picture(sheet_.skills[i].picture, QRectF(cell.left(), cell.top(), 13.0, 13.0));
            pen_.text(phrase(sheet_.skills[i].name + u'.', sheet_.skills[i].purpose),
                      cell.adjusted(15.0, 0.0, 0.0, 0.0),
                      {.points = 9.0, .most_lines = 4, .middle = true});
        }
    }

    const SkillsSheet& sheet_;
    std::span<const QString> guests_;
    QString number_;
    SheetPen pen_;
};

}  // namespace

SkillsSheet skills_sheet(const Session& session, const Group& group) {
    SkillsSheet sheet;
    sheet.group = one_line(subject_name(group.id, session));
    sheet.session = session_line(session);
    for (const Guest* guest : guests_in(session, group.id)) {
        sheet.guests.push_back(one_line(guest->name));
    }
    for (const Skill skill : session.skills) {
        sheet.skills.push_back({skill_picture(skill), skill_name(skill, window_tongue()),
                                skill_purpose(skill, window_tongue())});
    }
    sheet.standing =
        SkillsWords::tr("A list to work by: the instructor judges whether a skill is mastered.");
    const QString review = translation_review(window_tongue());
    if (!review.isEmpty()) sheet.standing += u' ' + review;
    return sheet;
}

std::vector<Page> skills_pages(const SkillsSheet& sheet, Paper paper, TypeSetter& setter) {
    const std::span<const QString> all(sheet.guests);
    const std::size_t count =
        std::max<std::size_t>(1, (all.size() + skills_guests_on_page - 1) / skills_guests_on_page);
    std::vector<Page> pages;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t from = i * skills_guests_on_page;
        Page page;
        page.paper = paper;
        SkillsPage(sheet, all.subspan(from, std::min(skills_guests_on_page, all.size() - from)),
                   page_line(i + 1, count), setter, page)
            .set();
        pages.push_back(std::move(page));
    }
    return pages;
}

}  // namespace leadline
