// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/debrief/number_delegate.h"

#include "ui/debrief/debrief_model.h"
#include "ui/document/session_document.h"
#include "ui/widgets/quantity_box.h"

namespace leadline {

NumberDelegate::NumberDelegate(SessionDocument& document, QObject* parent)
    : QStyledItemDelegate(parent), document_(document) {}

QSize NumberDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    constexpr int air_between_columns = 10;
    return QStyledItemDelegate::sizeHint(option, index) + QSize(air_between_columns, 0);
}

QWidget* NumberDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex& index) const {
    const QuantityKind kind = index.column() == DebriefModel::duration_column
                                  ? QuantityKind::minutes
                                  : QuantityKind::cylinder_pressure;
    auto* box = new QuantityBox(kind, parent);
    box->setObjectName(QStringLiteral("debrief_editor"));
    box->setAccessibleName(
        index.model()->headerData(index.column(), Qt::Horizontal).toString());
    box->set_units(document_.units());
    return box;
}

void NumberDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->show_value(index.data(Qt::EditRole).toDouble());
        box->selectAll();
    }
}

void NumberDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
    if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->interpretText();
        if (box->metric_value()) model->setData(index, *box->metric_value(), Qt::EditRole);
    }
}

}  // namespace leadline
