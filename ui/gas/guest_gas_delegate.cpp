// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_gas_delegate.h"

#include <QComboBox>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/gas/guest_gas_model.h"
#include "ui/widgets/quantity_box.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

QComboBox* cylinder_list(UnitSystem units, QWidget* parent) {
    auto* list = new QComboBox(parent);
    list->setObjectName(QStringLiteral("gas_cylinder_editor"));
    list->setAccessibleName(GuestGasDelegate::tr("Cylinder of the guest"));
    list->addItem(GuestGasDelegate::tr("None yet"), QString());
    for (const CylinderType& type : cylinder_types()) {
        list->addItem(text(type, units), QString::fromStdString(type.id.text));
    }
    return list;
}

QComboBox* breathing_list(QWidget* parent) {
    auto* list = new QComboBox(parent);
    list->setObjectName(QStringLiteral("gas_breathing_editor"));
    list->setAccessibleName(GuestGasDelegate::tr("How the guest breathes"));
    for (const BreathingClass breathing : {BreathingClass::calm, BreathingClass::average,
                                           BreathingClass::nervous, BreathingClass::child}) {
        list->addItem(label(breathing), static_cast<int>(breathing));
    }
    return list;
}

QuantityBox* number_box(int column, QWidget* parent) {
    switch (column) {
        case GuestGasModel::fill_column: {
            auto* box = new QuantityBox(QuantityKind::cylinder_pressure, parent);
            box->setObjectName(QStringLiteral("gas_fill_editor"));
            box->setAccessibleName(GuestGasDelegate::tr("Pressure as read"));
            return box;
        }
        case GuestGasModel::gas_temperature_column: {
            auto* box = new QuantityBox(QuantityKind::gas_temperature, parent);
            box->setObjectName(QStringLiteral("gas_temperature_editor"));
            box->setAccessibleName(GuestGasDelegate::tr("Temperature of the air when read"));
            return box;
        }
        case GuestGasModel::rmv_column: {
            auto* box = new QuantityBox(QuantityKind::rmv, parent);
            box->setObjectName(QStringLiteral("gas_rmv_editor"));
            box->setAccessibleName(GuestGasDelegate::tr("Measured RMV"));
            box->allow_empty(GuestGasDelegate::tr("By class"));
            return box;
        }
        default: return nullptr;
    }
}

}  // namespace

GuestGasDelegate::GuestGasDelegate(SessionDocument& document, QObject* parent)
    : QStyledItemDelegate(parent), document_(document) {}

void GuestGasDelegate::initStyleOption(QStyleOptionViewItem* option,
                                       const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    // Words after a column of numbers keep off them.
    if (index.column() > 0 && (option->displayAlignment & Qt::AlignLeft) != 0) {
        option->text.prepend(QChar(0x2003));
    }
}

QWidget* GuestGasDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const {
    switch (index.column()) {
        case GuestGasModel::cylinder_column: return cylinder_list(document_.units(), parent);
        case GuestGasModel::breathing_column: return breathing_list(parent);
        default: break;
    }
    if (QuantityBox* box = number_box(index.column(), parent)) {
        box->set_units(document_.units());
        box->setFrame(false);
        return box;
    }
    return QStyledItemDelegate::createEditor(parent, option, index);
}

void GuestGasDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    const QVariant value = index.data(Qt::EditRole);
    if (auto* list = qobject_cast<QComboBox*>(editor)) {
        list->setCurrentIndex(list->findData(value));
    } else if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->show_value(value.isValid() ? std::optional<double>(value.toDouble()) : std::nullopt);
    }
}

void GuestGasDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                    const QModelIndex& index) const {
    if (auto* list = qobject_cast<QComboBox*>(editor)) {
        model->setData(index, list->currentData(), Qt::EditRole);
    } else if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->interpretText();
        const std::optional<double> value = box->metric_value();
        model->setData(index, value ? QVariant(*value) : QVariant(), Qt::EditRole);
    }
}

void GuestGasDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                            const QModelIndex&) const {
    // A narrow cell must not cut the number or the list off.
    QRect place = option.rect;
    place.setWidth(std::max(place.width(), editor->sizeHint().width()));
    editor->setGeometry(place);
}

QSize GuestGasDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    const QSize size = QStyledItemDelegate::sizeHint(option, index);
    return {size.width() + 12, std::max(size.height(), option.fontMetrics.height() + 12)};
}

}  // namespace leadline
