// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <optional>

#include "core/records/session_store.h"
#include "ui/shell/paged_rows.h"

namespace leadline {

class RecordKeeper;

/// The sessions on record, newest first, read as they come into view.
class SessionsModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { date_column, time_column, title_column, site_column, guests_column, columns };

    explicit SessionsModel(RecordKeeper& keeper, QObject* parent = nullptr);
    void reload();
    [[nodiscard]] std::optional<SessionSummary> session(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    RecordKeeper& keeper_;
    int count_ = 0;
    mutable PagedRows<SessionSummary> rows_;
};

}  // namespace leadline
