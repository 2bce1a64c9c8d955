// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/audit_model.h"

#include <QDateTime>
#include <QLocale>
#include <utility>

#include "ui/words/vault_words.h"

namespace leadline {
namespace {

/// Local time, to the second: what happened within a minute must keep its order.
QString shown_time(const std::string& utc) {
    const QDateTime time = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate);
    if (!time.isValid()) return QString::fromStdString(utc);
    return time.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm:ss"));
}

}  // namespace

void AuditModel::set_entries(std::vector<AuditEntry> entries, std::map<qint64, QString> names) {
    beginResetModel();
    entries_ = std::move(entries);
    names_ = std::move(names);
    endResetModel();
}

int AuditModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(entries_.size());
}

int AuditModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QString AuditModel::text(const AuditEntry& entry, int column) const {
    switch (column) {
        case number:
            return QString::number(entry.number);
        case when:
            return shown_time(entry.at);
        case who:
            return QString::fromStdString(entry.who);
        case what:
            return audit_event_words(entry.event);
        case guest: {
            if (entry.person == 0) return {};
            const auto name = names_.find(entry.person);
            return name != names_.end() && !name->second.isEmpty()
                       ? name->second
                       : tr("no longer on record (%1)").arg(entry.person);
        }
        case detail:
            return audit_detail_words(entry.detail);
        default:
            return {};
    }
}

QVariant AuditModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const AuditEntry& entry = entries_[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return text(entry, index.column());
    if (role == Qt::TextAlignmentRole && index.column() == number) {
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    }
    return {};
}

QVariant AuditModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case number:
            return tr("No.");
        case when:
            return tr("When");
        case who:
            return tr("Who");
        case what:
            return tr("What");
        case guest:
            return tr("Guest");
        case detail:
            return tr("Of what");
        default:
            return {};
    }
}

}  // namespace leadline
