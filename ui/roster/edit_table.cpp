// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/edit_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <functional>
#include <set>
#include <vector>

namespace leadline {

EditTable::EditTable(const QString& object_name, const QString& accessible_name, QWidget* parent)
    : QTableView(parent) {
    setObjectName(object_name);
    setAccessibleName(accessible_name);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 14);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::DoubleClicked | QAbstractItemView::SelectedClicked);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
}

void EditTable::edit_cell(const QModelIndex& index) {
    if (!index.isValid()) return;
    setFocus();
    scrollTo(index);
    setCurrentIndex(index);
    edit(index);
}

std::vector<int> EditTable::chosen_rows() const {
    std::set<int, std::greater<>> rows;
    for (const QModelIndex& index : selectionModel()->selectedIndexes()) rows.insert(index.row());
    if (rows.empty() && currentIndex().isValid()) rows.insert(currentIndex().row());
    return {rows.begin(), rows.end()};
}

void EditTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const QModelIndex at = currentIndex();
    const bool last = at.row() + 1 == model()->rowCount() &&
                      at.column() + 1 == model()->columnCount();
    const bool first = at.row() == 0 && at.column() == 0;
    // Not from the last cell round to the first, which would never let the keyboard out.
    if ((last && hint == QAbstractItemDelegate::EditNextItem) ||
        (first && hint == QAbstractItemDelegate::EditPreviousItem)) {
        hint = QAbstractItemDelegate::NoHint;
    }
    QTableView::closeEditor(editor, hint);
}

void EditTable::keyPressEvent(QKeyEvent* event) {
    // What a cell's box leaves alone comes here while the box is still open.
    if (state() == EditingState) return QTableView::keyPressEvent(event);
    switch (event->key()) {
        case Qt::Key_Insert: return Q_EMIT row_wanted();
        case Qt::Key_Delete: return Q_EMIT removal_wanted();
        case Qt::Key_Return:
        case Qt::Key_Enter:
            // Return on a cell edits it; the dialog around must not take it for its button.
            if (currentIndex().isValid() && event->modifiers() == Qt::NoModifier) {
                return edit_cell(currentIndex());
            }
            break;
        case Qt::Key_Tab:
        case Qt::Key_Backtab: {
            // Past the last cell and before the first the key leaves the table.
            const bool back = event->key() == Qt::Key_Backtab;
            const QModelIndex at = currentIndex();
            const bool ends = !at.isValid() ||
                              (back ? at.row() == 0 && at.column() == 0
                                    : at.row() + 1 == model()->rowCount() &&
                                          at.column() + 1 == model()->columnCount());
            // Not taken, the key goes where it goes in any window.
            if (ends) return event->ignore();
            break;
        }
        default: break;
    }
    QTableView::keyPressEvent(event);
}

}  // namespace leadline
