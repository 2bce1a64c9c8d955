// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <map>
#include <vector>

#include "core/records/audit_trail.h"

namespace leadline {

/// The audit trail as a table, newest first.
class AuditModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { number, when, who, what, guest, detail, column_count };
    using QAbstractTableModel::QAbstractTableModel;

    /// @param names  of the persons in the entries; who is missing is shown by number
    void set_entries(std::vector<AuditEntry> entries, std::map<qint64, QString> names);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    [[nodiscard]] QString text(const AuditEntry& entry, int column) const;

    std::vector<AuditEntry> entries_;
    std::map<qint64, QString> names_;
};

}  // namespace leadline
