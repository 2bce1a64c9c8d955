// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>
#include <vector>

namespace leadline {

/// A table to be filled in by keyboard: typing, F2 or Return edits the cell, Tab goes on to the
/// next one, Insert asks for a row, Delete for the chosen rows to go.
class EditTable : public QTableView {
    Q_OBJECT
public:
    EditTable(const QString& object_name, const QString& accessible_name,
              QWidget* parent = nullptr);
    /// Puts the focus into a cell and starts to edit it.
    void edit_cell(const QModelIndex& index);
    /// The rows chosen or with a chosen cell, last first.
    [[nodiscard]] std::vector<int> chosen_rows() const;

Q_SIGNALS:
    void row_wanted();
    void removal_wanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
};

}  // namespace leadline
