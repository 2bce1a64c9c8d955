// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/red_list_model.h"

#include <QStringList>

#include "core/planning/check_screening.h"
#include "ui/widgets/plain_tip.h"
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

constexpr std::size_t at(RedListColumn column) { return static_cast<std::size_t>(column); }

}  // namespace

RedListModel::RedListModel(const std::vector<SessionToCome>& sessions, const RuleBook& rules,
                           QObject* parent)
    : QAbstractTableModel(parent) {
    for (const SessionToCome& found : sessions) {
        const Session& session = found.session;
        for (const Guest& guest : session.guests) {
            const std::vector<Finding> waiting = still_waiting(session, rules, guest);
            if (waiting.empty()) continue;
            QStringList needs;
            QStringList remedies;
            for (const Finding& finding : waiting) {
                needs << needed(finding.code);
                const FindingText said = words(finding, session, UnitSystem::metric);
                remedies << said.what + u' ' + said.remedy;
            }
            Row row;
            row.session = found.row;
            row.guest = guest.id;
            row.cells[at(RedListColumn::day)] =
                text(session.date) + QStringLiteral(", ") + text(session.meeting_time);
            row.cells[at(RedListColumn::guest)] = guest_name(guest.name);
            row.cells[at(RedListColumn::phone)] =
                !guest.phone.empty()   ? QString::fromStdString(guest.phone)
                : !guest.email.empty() ? QString::fromStdString(guest.email)
                                       : tr("None on record");
            row.cells[at(RedListColumn::needs)] = needs.join(tr(", "));
            row.cells[at(RedListColumn::session)] = QString::fromStdString(session.title);
            row.tip = remedies.join(u'\n');
            rows_.push_back(std::move(row));
        }
    }
}

SessionRow RedListModel::session_at(int row) const {
    return rows_.at(static_cast<std::size_t>(row)).session;
}

GuestId RedListModel::guest_at(int row) const {
    return rows_.at(static_cast<std::size_t>(row)).guest;
}

QString RedListModel::html() const {
    QString page = QStringLiteral("<h2>%1</h2><table border='1' cellspacing='0' cellpadding='4' "
                                  "width='100%'><tr>")
                       .arg(tr("Still waited for").toHtmlEscaped());
    for (int column = 0; column < red_list_column_count; ++column) {
        page += QStringLiteral("<th align='left'>%1</th>")
                    .arg(headerData(column, Qt::Horizontal, Qt::DisplayRole)
                             .toString()
                             .toHtmlEscaped());
    }
    page += QStringLiteral("</tr>");
    for (const Row& row : rows_) {
        page += QStringLiteral("<tr>");
        for (const QString& cell : row.cells) {
            page += QStringLiteral("<td>%1</td>").arg(cell.toHtmlEscaped());
        }
        page += QStringLiteral("</tr>");
    }
    return page + QStringLiteral("</table>");
}

int RedListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RedListModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : red_list_column_count;
}

QVariant RedListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const QString& cell = row.cells[static_cast<std::size_t>(index.column())];
    switch (role) {
        case Qt::DisplayRole: return cell;
        case Qt::ToolTipRole:
            return plain_tip(static_cast<RedListColumn>(index.column()) == RedListColumn::needs
                                 ? row.tip
                                 : cell);
        case Qt::AccessibleTextRole:
            return with_colon(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                              cell);
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
        default: return {};
    }
}

QVariant RedListModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical || section < 0 || section >= red_list_column_count) return {};
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
    }
    if (role != Qt::DisplayRole) return {};
    switch (static_cast<RedListColumn>(section)) {
        case RedListColumn::day: return tr("Meets");
        case RedListColumn::guest: return tr("Guest");
        case RedListColumn::phone: return tr("Phone");
        case RedListColumn::needs: return tr("Still needed");
        case RedListColumn::session: return tr("Session");
    }
    return {};
}

}  // namespace leadline
