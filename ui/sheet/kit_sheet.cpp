// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/kit_sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/sheet/sheet_pen.h"
#include "ui/sheet/sheet_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

class KitSheetWords {
    Q_DECLARE_TR_FUNCTIONS(KitSheet)
};

constexpr double kit_head_height = 5.6;
constexpr double kit_column_gap = 1.6;
constexpr double kit_most_stretch = 1.35;
constexpr double kit_row_height = 9.0;
constexpr double kit_name_line = 3.6;  // one more, in the least type
constexpr double total_gap = 0.8;
constexpr double over_totals = 3.0;
constexpr double under_missing = 1.5;
constexpr double totals_together = 30.0;  ///< at most so much of them is kept on one page
constexpr double kit_tick_side = 4.2;

QString count_text(const KitCount& count, KitItem item, UnitSystem units) {
    const QString label = item == KitItem::cylinder
                              ? cylinder_text(CylinderTypeId(count.label), units)
                              : one_line(count.label);
    return KitSheetWords::tr("%1 × %2", "how many of which kind").arg(count.count).arg(label);
}

QString totals_text(const KitTotals& totals, KitItem item, UnitSystem units) {
    if (item == KitItem::lead) {
        if (totals.guests_with_lead == 0) return {};
        return KitSheetWords::tr("%1 in all, for %n guests", nullptr, totals.guests_with_lead)
            .arg(text(totals.lead, units));
    }
    QStringList parts;
    if (item == KitItem::regulator) {
        // Each set has a number of its own; one that stands twice is said.
        int sets = 0;
        for (const KitCount& count : counts_of(totals, item)) {
            sets += count.count;
            parts << (count.count == 1 ? one_line(count.label) : count_text(count, item, units));
        }
        if (parts.isEmpty()) return {};
        return KitSheetWords::tr("%n sets (%1)", nullptr, sets)
            .arg(parts.join(QStringLiteral(", ")));
    }
    for (const KitCount& count : counts_of(totals, item)) {
        parts << count_text(count, item, units);
    }
    return parts.join(QStringLiteral(" · "));
}

KitRow kit_row_of(const Session& session, const Guest& guest, UnitSystem units) {
    KitRow row;
    row.name = one_line(guest.name);
    const Group* group = find_group(session, guest.group);
    if (group != nullptr) row.group = one_line(group->name);
    for (int i = 0; i < kit_item_count; ++i) {
        row.values[i] = kit_value(guest.kit, static_cast<KitItem>(i), units);
    }
    return row;
}

std::vector<KitRow> kit_rows_of(const Session& session, const GroupId& group, UnitSystem units) {
    std::vector<KitRow> rows;
    const auto add_group = [&](const GroupId& id) {
        for (const Guest* guest : guests_in(session, id)) {
            rows.push_back(kit_row_of(session, *guest, units));
        }
    };
    if (!group.empty()) {
        add_group(group);
    } else {
        for (const Group& one : session.groups) add_group(one.id);
        add_group(GroupId());
    }
    for (const StaffMember& member : session.staff) {
        const bool goes =
            std::any_of(session.groups.begin(), session.groups.end(), [&](const Group& one) {
                return (group.empty() || one.id == group) &&
                       (one.instructor == member.id || one.assistant == member.id);
            });
        if (!goes || !member.cylinder) continue;
        KitRow row;
        row.name = one_line(member.name);
        row.group = label(member.role);
        row.values[static_cast<std::size_t>(KitItem::cylinder)] =
            cylinder_text(member.cylinder->type, units);
        row.staff = true;
        rows.push_back(row);
    }
    return rows;
}

class KitPages {
public:
    KitPages(const KitSheet& sheet, Paper paper, TypeSetter& setter)
        : sheet_(sheet), paper_(paper), setter_(setter) {}

    std::vector<Page> taken() {
        begin();
        stretch_rows();
        if (sheet_.rows.empty()) {
            pen().text(KitSheetWords::tr("No guests yet."),
                       QRectF(pen().frame().left(), y_ + 2.0, pen().frame().width(), 6.0),
                       {.points = 11.0});
            y_ += kit_row_height;
        }
        for (const KitRow& row : sheet_.rows) {
            const double height = row_height(row);
            if (y_ + height > bottom_) begin();
            set_row(row, height);
        }
        set_totals();
        for (std::size_t i = 0; i < pages_.size(); ++i) {
            SheetPen foot(setter_, pages_[i]);
            set_sheet_foot(foot, sheet_.standing, page_line(i + 1, pages_.size()));
        }
        return std::move(pages_);
    }

private:
    SheetPen& pen() { return *pen_; }

    void begin(bool head = true) {
        pages_.emplace_back();
        pages_.back().paper = paper_;
        pen_.emplace(setter_, pages_.back());
        bottom_ = pen().frame().bottom() - sheet_foot_height;
        y_ = set_sheet_title(pen(), KitSheetWords::tr("Kit"), sheet_.title, sheet_.session);
        if (head) set_head();
    }

    [[nodiscard]] std::vector<QRectF> cells(double height) {
        const QRectF& frame = pen().frame();
        return columns(QRectF(frame.left(), y_, frame.width(), height),
                       {41.5, 23.5, 11.5, 16.5, 25.0, 17.0, 17.0, 36.0}, kit_column_gap);
    }

    void set_head() {
        const auto places = cells(kit_head_height);
        pen().text(KitSheetWords::tr("Guest"), places[0], {.points = 9.0, .bold = true});
        for (int i = 0; i < kit_item_count; ++i) {
            pen().text(kit_item_name(static_cast<KitItem>(i)),
                       places[static_cast<std::size_t>(i) + 1], {.points = 9.0, .bold = true});
        }
        y_ += kit_head_height;
        pen().rule(y_, 0.4);
    }

    /// A name that is too long for one line gets a second, and a third.
    [[nodiscard]] int name_lines(const KitRow& row) {
        const double room = cells(kit_row_height)[0].width();
        const double asked = pen().height({row.name, 0}, room, least_sheet_points, true);
        return std::clamp(static_cast<int>(std::lround(asked / kit_name_line)), 1, 3);
    }
    [[nodiscard]] double row_height(const KitRow& row) {
        return kit_row_height * stretch_ + kit_name_line * (name_lines(row) - 1);
    }
    /// Few guests: wider rows, which are easier to tick; never so wide that what follows the rows
    /// needs another page.
    void stretch_rows() {
        double left = bottom_ - y_ - totals_height();
        for (const KitRow& row : sheet_.rows) left -= row_height(row);
        const double rows = kit_row_height * static_cast<double>(sheet_.rows.size());
        if (left > 0.0 && rows > 0.0) stretch_ = std::min(1.0 + left / rows, kit_most_stretch);
    }

    void set_row(const KitRow& row, double height) {
        const auto places = cells(height);
        const QRectF& who = places[0];
        const int lines = name_lines(row);
        const double name_height = 4.6 + kit_name_line * (lines - 1);
        const double spare = kit_row_height * (stretch_ - 1.0) / 2.0;
        pen().text(row.name, QRectF(who.left(), who.top() + 0.4 + spare, who.width(), name_height),
                   {.points = lines > 1 ? 9.0 : 10.0, .bold = true, .most_lines = lines});
        pen().text(row.group,
                   QRectF(who.left(), who.top() + 0.2 + spare + name_height, who.width(), 3.6),
                   {.points = 8.0});
        for (int i = 0; i < kit_item_count; ++i) {
            const QRectF& cell = places[static_cast<std::size_t>(i) + 1];
            const QString& value = row.values[i];
            if (row.staff && value.isEmpty()) continue;
            pen().tick(QRectF(cell.left(), cell.top(), kit_tick_side, cell.height()),
                       kit_tick_side);
            const QRectF beside = cell.adjusted(kit_tick_side + 1.0, 0.4, 0.0, -0.4);
            if (value.isEmpty()) {
                pen().text(QStringLiteral("–"),
                           QRectF(beside.topLeft(), QSizeF(beside.width(), 3.6)),
                           {.points = 8.0, .bold = true});
                pen().blank(beside.adjusted(0.0, 0.0, 0.0, -0.8));
            } else {
                pen().text(value, beside, {.points = 9.0, .most_lines = 2, .middle = true});
            }
        }
        y_ += height;
        pen().rule(y_, 0.15);
    }

    /// A paragraph that goes on to another page where it must.
    void set_paragraph(const Phrase& words, double points, double gap) {
        const double width = pen().frame().width();
        const double height = pen().height(words, width, points);
        if (y_ + height > bottom_) begin(false);
        const double room = std::min(height, bottom_ - y_);
        pen().text(words, QRectF(pen().frame().left(), y_, width, room),
                   {.points = points, .most_lines = 99});
        y_ += room + gap;
    }

    struct Total {
        Phrase words;
        double points;
        double gap;  ///< below
    };
    /// What follows the rows.
    [[nodiscard]] std::vector<Total> totals() const {
        std::vector<Total> all;
        if (!sheet_.missing.isEmpty()) {
            all.push_back({phrase(KitSheetWords::tr("Still missing."),
                                  sheet_.missing.join(QStringLiteral(" · "))),
                           10.0, total_gap + under_missing});
        }
        all.push_back({phrase(KitSheetWords::tr("To pack in all"), {}), 11.0, total_gap});
        for (const auto& [name, text] : sheet_.totals) {
            all.push_back({phrase(with_colon(name, {}).trimmed(), text), 10.0, total_gap});
        }
        return all;
    }
    [[nodiscard]] double totals_height() {
        double height = over_totals;
        for (const Total& one : totals()) {
            height += pen().height(one.words, pen().frame().width(), one.points) + one.gap;
        }
        return height;
    }

    void set_totals() {
        if (y_ + std::min(totals_height(), over_totals + totals_together) > bottom_) begin(false);
        y_ += over_totals;
        for (const Total& one : totals()) set_paragraph(one.words, one.points, one.gap);
    }

    const KitSheet& sheet_;
    Paper paper_;
    TypeSetter& setter_;
    std::vector<Page> pages_;
    std::optional<SheetPen> pen_;
    double y_ = 0.0;
    double bottom_ = 0.0;
    double stretch_ = 1.0;  ///< of the rows
};

}  // namespace

KitSheet kit_sheet(const Session& session, const GroupId& group, UnitSystem units) {
    KitSheet sheet;
    sheet.title =
        group.empty() ? KitSheetWords::tr("All groups") : one_line(subject_name(group, session));
    sheet.session = session_line(session);
    sheet.rows = kit_rows_of(session, group, units);
    const KitTotals totals = kit_totals(session, group);
    for (int i = 0; i < kit_item_count; ++i) {
        const auto item = static_cast<KitItem>(i);
        const QString counted = totals_text(totals, item, units);
        if (!counted.isEmpty()) sheet.totals.emplace_back(kit_item_name(item), counted);
    }
    for (const KitGap& gap : totals.gaps) {
        QStringList items;
        for (const KitItem item : gap.missing) items << kit_item_name(item);
        const Guest* guest = find_guest(session, gap.guest);
        sheet.missing << KitSheetWords::tr("%1: %2", "guest: items of kit")
                             .arg(guest != nullptr ? set_apart(one_line(guest->name)) : QString(),
                                  items.join(QStringLiteral(", ")));
    }
    sheet.standing = KitSheetWords::tr(
        "Staff bring their own kit; their cylinders are counted. Check every set before it "
        "leaves.");
    if (!sheet.missing.isEmpty()) {
        sheet.standing = KitSheetWords::tr("–: still missing, write it in.") + u' ' + sheet.standing;
    }
    return sheet;
}

std::vector<Page> kit_pages(const KitSheet& sheet, Paper paper, TypeSetter& setter) {
    return KitPages(sheet, paper, setter).taken();
}

}  // namespace leadline
