// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace leadline {

class SessionDocument;

/// Edits the pressures and times of the log in a QuantityBox, in the units shown.
class NumberDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit NumberDelegate(SessionDocument& document, QObject* parent = nullptr);
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;

private:
    SessionDocument& document_;
};

}  // namespace leadline
