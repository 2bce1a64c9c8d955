// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_gas_proxy.h"

#include "ui/gas/guest_gas_model.h"

namespace leadline {

GuestGasProxy::GuestGasProxy(QObject* parent) : QSortFilterProxyModel(parent) {
    setSortRole(GuestGasModel::sort_role);
    setFilterRole(GuestGasModel::group_role);
    setSortLocaleAware(true);
    setSortCaseSensitivity(Qt::CaseInsensitive);
    setDynamicSortFilter(true);
}

void GuestGasProxy::show_group(const GroupId& group) {
    if (group == group_) return;
    group_ = group;
    invalidateFilter();
}

bool GuestGasProxy::filterAcceptsRow(int row, const QModelIndex& parent) const {
    if (group_.empty()) return true;
    const QModelIndex index = sourceModel()->index(row, 0, parent);
    return index.data(GuestGasModel::group_role).toString().toStdString() == group_.text;
}

}  // namespace leadline
