// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/guest_filter.h"

#include <algorithm>

#include "core/records/fold.h"
#include "ui/roster/guest_model.h"

namespace leadline {

GuestFilter::GuestFilter(QObject* parent) : QSortFilterProxyModel(parent) {
    setSortRole(GuestModel::sort_role);
    setSortLocaleAware(true);
    setDynamicSortFilter(true);
}

void GuestFilter::set_search(const QString& text) {
    words_ = folded(text).split(u' ', Qt::SkipEmptyParts);
    kept_ = GuestId();
    invalidateFilter();
}

void GuestFilter::keep(const GuestId& guest) {
    if (kept_ == guest) return;
    kept_ = guest;
    invalidateFilter();
}

bool GuestFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    if (QSortFilterProxyModel::lessThan(left, right)) return true;
    if (QSortFilterProxyModel::lessThan(right, left)) return false;
    return sortOrder() == Qt::AscendingOrder ? left.row() < right.row() : left.row() > right.row();
}

bool GuestFilter::filterAcceptsRow(int row, const QModelIndex& parent) const {
    const auto* guests = qobject_cast<const GuestModel*>(sourceModel());
    if (guests == nullptr) return true;
    if (!kept_.empty() && guests->id_at(row) == kept_) return true;
    const QString name = guests->index(row, 0, parent).data(GuestModel::search_role).toString();
    return std::all_of(words_.begin(), words_.end(),
                       [&](const QString& word) { return name.contains(word); });
}

}  // namespace leadline
