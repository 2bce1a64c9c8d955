// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/id_row_model.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>
#include <algorithm>
#include <cstddef>

#include "ui/widgets/theme.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Text for a tooltip, taken as it is written, whatever signs are in it.
QString written_tip(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

QVariant aligned(bool is_number, Qt::AlignmentFlag vertical) {
    return is_number ? QVariant(Qt::AlignRight | vertical) : QVariant(Qt::AlignLeft | vertical);
}

}  // namespace

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

QVariant IdRowModel::data(const QModelIndex& index, int role) const {
    const std::string* id = id_at(index);
    if (id == nullptr) return {};
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
            return part(*id, column, Part::shown);
        case Qt::ToolTipRole:
            return written_tip(part(*id, column, Part::told).toString());
        case Qt::AccessibleTextRole:
            return with_colon(heading(column).text.simplified(),
                              part(*id, column, Part::told).toString());
        case Qt::TextAlignmentRole:
            return aligned(heading(column).is_number, Qt::AlignVCenter);
        case Qt::DecorationRole: {
            const QVariant mark = part(*id, column, Part::mark);
            if (!mark.isValid()) return {};
            return severity_icon(static_cast<Severity>(mark.toInt()), QGuiApplication::palette());
        }
        case Qt::FontRole: {
            QFont font;
            font.setBold(part(*id, column, Part::strong).toBool());
            return font;
        }
        case sort_role:
            return part(*id, column, Part::sorted);
        case id_role:
            return QString::fromStdString(*id);
        default:
            return {};
    }
}

QVariant IdRowModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    switch (role) {
        case Qt::DisplayRole:
            return heading(section).text;
        case Qt::ToolTipRole:
            return written_tip(heading(section).help);
        case Qt::TextAlignmentRole:
            return aligned(heading(section).is_number, Qt::AlignBottom);
        default:
            return {};
    }
}

}  // namespace leadline
