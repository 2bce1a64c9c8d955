// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSortFilterProxyModel>

#include "core/planning/ids.h"

namespace leadline {

/// The rows of one group, or all, sorted by the numbers behind the words.
class GuestGasProxy : public QSortFilterProxyModel {
    Q_OBJECT
public:
    explicit GuestGasProxy(QObject* parent = nullptr);
    /// Empty: all guests.
    void show_group(const GroupId& group);
    [[nodiscard]] const GroupId& group() const { return group_; }

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

private:
    GroupId group_;
};

}  // namespace leadline
