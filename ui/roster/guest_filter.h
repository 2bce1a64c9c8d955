// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSortFilterProxyModel>
#include <QStringList>

#include "core/planning/ids.h"

namespace leadline {

/// Guests in whose name or group every typed word is found, ignoring case and accents; sorted by
/// the model's sort role, equal ones in roster order.
class GuestFilter : public QSortFilterProxyModel {
    Q_OBJECT
public:
    explicit GuestFilter(QObject* parent = nullptr);

    void set_search(const QString& text);
    /// Keeps a guest in sight whatever the search says, so that the one being edited does not
    /// vanish under the hands; an empty id keeps none.
    void keep(const GuestId& guest);

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    [[nodiscard]] bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    QStringList words_;
    GuestId kept_;
};

}  // namespace leadline
