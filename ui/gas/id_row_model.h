// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <string>
#include <vector>

namespace leadline {

/// A table of figures that cannot be edited, one row for each id.
class IdRowModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role {
        sort_role = Qt::UserRole,  ///< number or text to sort by
        id_role,                   ///< the row's id
    };

    using QAbstractTableModel::QAbstractTableModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    /// Row of an id, or -1.
    [[nodiscard]] int row_of(const std::string& id) const;

protected:
    /// Takes over a new list and says that every figure may have changed. While those that stay
    /// keep their order, rows move in or out one by one, so that selection and scroll of a view
    /// stay.
    void follow(const std::vector<std::string>& now);
    /// Id of a row; nullptr for an index that is not (or no longer) a row.
    [[nodiscard]] const std::string* id_at(const QModelIndex& index) const;

private:
    std::vector<std::string> ids_;
};

/// Text for a tooltip, taken as it is written, whatever signs are in it.
QString written_tip(const QString& text);

}  // namespace leadline
