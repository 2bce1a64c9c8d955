// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateEdit>
#include <QStyledItemDelegate>

#include "ui/words/quantity_text.h"

namespace leadline {

/// A day whose number goes on over the ends of months when it is stepped.
class DayEdit : public QDateEdit {
    Q_OBJECT
public:
    explicit DayEdit(QWidget* parent = nullptr);

protected:
    void stepBy(int steps) override;
    [[nodiscard]] StepEnabled stepEnabled() const override;
};

/// Boxes for the columns of EarlierDivesModel.
class EarlierDivesDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    /// @param latest  the session's day: no dive is later
    EarlierDivesDelegate(UnitSystem units, QDate latest, QObject* parent = nullptr);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

private:
    UnitSystem units_;
    QDate latest_;
};

}  // namespace leadline
