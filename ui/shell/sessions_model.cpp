// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/sessions_model.h"

#include "ui/shell/record_keeper.h"
#include "ui/words/quantity_text.h"

namespace leadline {

SessionsModel::SessionsModel(RecordKeeper& keeper, QObject* parent)
    : QAbstractTableModel(parent), keeper_(keeper) {
    rows_.set_fetch([this](int first, int count) {
        return keeper_.sessions(first, count).value_or({});
    });
    count_ = keeper_.session_count();
}

void SessionsModel::reload() {
    beginResetModel();
    rows_.clear();
    count_ = keeper_.session_count();
    endResetModel();
}

std::optional<SessionSummary> SessionsModel::session(int row) const {
    const SessionSummary* found = row < count_ ? rows_.at(row) : nullptr;
    return found != nullptr ? std::optional(*found) : std::nullopt;
}

int SessionsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count_;
}

int SessionsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant SessionsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) return {};
    const SessionSummary* session = rows_.at(index.row());
    if (session == nullptr) return {};
    const QString title =
        session->title.empty() ? tr("(no name)") : QString::fromStdString(session->title);
    switch (index.column()) {
        case date_column: return text(session->date);
        case time_column: return text(session->dive_time);
        case title_column: return session->has_log ? tr("%1 (logged)").arg(title) : title;
        case site_column: return QString::fromStdString(session->site);
        case guests_column: return QString::number(session->guests);
        default: return {};
    }
}

QVariant SessionsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case date_column: return tr("Date");
        case time_column: return tr("Dive");
        case title_column: return tr("Session");
        case site_column: return tr("Site");
        case guests_column: return tr("Guests");
        default: return {};
    }
}

}  // namespace leadline
