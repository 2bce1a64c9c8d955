// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets_support.h"

#include "ui/sheet/type_setting.h"

namespace leadline::testing {
namespace {

constexpr double hair = 0.3;  // [mm], of overlap that no eye sees

/// Where the letters stand: from the height of a capital down to a descender.
std::vector<QRectF> letter_boxes(const TextItem& text) {
    constexpr double capital = 0.72;  // of the size, Noto Sans
    constexpr double descender = 0.22;
    const double size = text.points * mm_per_point;
    std::vector<QRectF> boxes;
    for (const TextLine& line : text.lines) {
        boxes.emplace_back(line.left, line.baseline - capital * size, line.width,
                           (capital + descender) * size);
    }
    return boxes;
}

}  // namespace

QStringList faults_of(const Page& page, double least_points) {
    QStringList found;
    const QRectF paper(QPointF(0.0, 0.0), page_size(page));
    std::vector<std::pair<QRectF, QString>> placed;
    for (const SheetItem& item : page.items) {
        if (!paper.contains(rect_of(item))) found << QStringLiteral("an item lies off the page");
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || text->lines.empty()) continue;
        const QString first = text->lines.front().text;
        if (text->points < least_points - 1e-9) found << QStringLiteral("small: ") + first;
        const std::vector<QRectF> own = letter_boxes(*text);
        for (const QRectF& box : own) {
            const QRectF& frame = page.frames.front();
            if (!frame.adjusted(-hair, -hair, hair, hair).contains(box)) {
                found << QStringLiteral("outside: ") + first;
            }
            for (const auto& [other, words] : placed) {
                const QRectF overlap = box.intersected(other);
                if (overlap.width() > hair && overlap.height() > hair) {
                    found << QStringLiteral("overlap: ") + first + QStringLiteral(" / ") + words;
                }
            }
        }
        for (const QRectF& box : own) placed.emplace_back(box, first);
    }
    return found;
}

QString all_words_on(const std::vector<Page>& pages) {
    QStringList words;
    for (const Page& page : pages) words << words_on(page);
    return words.join(u' ').replace(QChar(0x00A0), QChar(u' ')).simplified();
}

Session crowded(Session session, int guests) {
    const Guest pattern = session.guests.front();
    session.guests.clear();
    for (int i = 0; i < guests; ++i) {
        Guest guest = pattern;
        guest.id = GuestId("guest-" + std::to_string(i + 1));
        guest.group = session.groups.front().id;
        guest.name = std::to_string(i + 1) + " Maria-Magdalena Åström " + std::string(95, 'w');
        guest.kit.mask = std::string(90, 'm');
        guest.kit.suit = std::string(40, 's') + " " + std::string(50, 's');
        guest.kit.fins = "";
        guest.screening.outcome = ScreeningOutcome::physician_required;
        guest.briefing.checked_on = session.date;
        session.guests.push_back(guest);
    }
    for (StaffMember& member : session.staff) member.name = std::string(200, 'n');
    for (Group& group : session.groups) group.name = "The early " + std::string(100, 'g');
    session.site.name = std::string(150, 'n');
    session.site.meeting_place = std::string(300, 'p');
    std::string line = "+00 555 0100";
    while (line.size() + 9 <= 200) line += " ask duty";
    session.site.emergency_line = line;
    std::string plan_text;
    for (int i = 0; plan_text.size() < 1900; ++i) {
        plan_text += "Step " + std::to_string(i + 1) + ": fetch the oxygen from the boathouse.\n";
    }
    session.site.emergency_plan = plan_text;
    return session;
}

Session bare_session(Session session) {
    session.guests.clear();
    session.skills.clear();
    session.site.name.clear();
    session.site.meeting_place.clear();
    session.site.emergency_line.clear();
    session.site.emergency_plan.clear();
    for (Group& group : session.groups) group.name.clear();
    return session;
}

}  // namespace leadline::testing
