// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/id_row_model.h"

#include <algorithm>
#include <cstddef>

namespace leadline {

int IdRowModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ids_.size());
}

int IdRowModel::row_of(const std::string& id) const {
    const auto found = std::find(ids_.begin(), ids_.end(), id);
    return found == ids_.end() ? -1 : static_cast<int>(found - ids_.begin());
}

const std::string* IdRowModel::id_at(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rowCount()) return nullptr;
    return &ids_[static_cast<std::size_t>(index.row())];
}

void IdRowModel::follow(const std::vector<std::string>& now) {
    for (int row = rowCount() - 1; row >= 0; --row) {
        const auto at = ids_.begin() + row;
        if (std::find(now.begin(), now.end(), *at) != now.end()) continue;
        beginRemoveRows({}, row, row);
        ids_.erase(at);
        endRemoveRows();
    }
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (std::find(ids_.begin(), ids_.end(), now[i]) != ids_.end()) continue;
        const auto row = static_cast<int>(std::min(i, ids_.size()));
        beginInsertRows({}, row, row);
        ids_.insert(ids_.begin() + row, now[i]);
        endInsertRows();
    }
    if (ids_ != now) {  // another order is another list
        beginResetModel();
        ids_ = now;
        endResetModel();
    }
    if (!ids_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

QString written_tip(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

}  // namespace leadline
