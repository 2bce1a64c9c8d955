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
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    /// Row of an id, or -1.
    [[nodiscard]] int row_of(const std::string& id) const;

protected:
    struct Heading {
        QString text;  ///< two lines at most
        QString help;
        bool is_number = false;
    };
    /// What is asked of a cell.
    enum class Part {
        shown,   ///< text
        told,    ///< all it has to say, for the tooltip and a screen reader: text
        sorted,  ///< number or text
        mark,    ///< a Severity as int; invalid: none
        strong,  ///< bool
    };
    /// Takes over a new list and says that every figure may have changed. While those that stay
    /// keep their order, rows move in or out one by one, so that selection and scroll of a view
    /// stay.
    void follow(const std::vector<std::string>& now);
    /// Id of a row; nullptr for an index that is not (or no longer) a row.
    [[nodiscard]] const std::string* id_at(const QModelIndex& index) const;

private:
    [[nodiscard]] virtual Heading heading(int column) const = 0;
    /// @returns invalid for an id that is not there any more
    [[nodiscard]] virtual QVariant part(const std::string& id, int column, Part part) const = 0;

    std::vector<std::string> ids_;
};

}  // namespace leadline
