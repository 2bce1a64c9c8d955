// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_delegate.h"

#include <QComboBox>

#include "core/planning/profile.h"
#include "ui/document/session_document.h"
#include "ui/site/profile_model.h"
#include "ui/widgets/quantity_box.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

QWidget* phase_editor(QWidget* parent) {
    auto* box = new QComboBox(parent);
    for (const Phase phase : {Phase::surface, Phase::descent, Phase::skills, Phase::tour,
                              Phase::ascent}) {
        box->addItem(label(phase), static_cast<int>(phase));
    }
    box->setObjectName(QStringLiteral("corner_phase_editor"));
    box->setAccessibleName(ProfileDelegate::tr("What is done on the way to the corner"));
    return box;
}

}  // namespace

ProfileDelegate::ProfileDelegate(SessionDocument& document, QObject* parent)
    : QStyledItemDelegate(parent), document_(document) {}

QWidget* ProfileDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                       const QModelIndex& index) const {
    if (index.column() == ProfileModel::phase_column) return phase_editor(parent);
    const bool time = index.column() == ProfileModel::time_column;
    auto* box = new QuantityBox(time ? QuantityKind::minutes : QuantityKind::depth, parent);
    box->set_units(document_.units());
    box->setFrame(false);
    box->setObjectName(time ? QStringLiteral("corner_time_editor")
                            : QStringLiteral("corner_depth_editor"));
    box->setAccessibleName(time ? tr("Time of the corner") : tr("Depth of the corner"));
    return box;
}

void ProfileDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->show_value(index.data(Qt::EditRole).toDouble());
    } else if (auto* list = qobject_cast<QComboBox*>(editor)) {
        list->setCurrentIndex(list->findData(index.data(Qt::EditRole)));
    }
}

void ProfileDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                   const QModelIndex& index) const {
    if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->interpretText();
        if (const auto value = box->metric_value()) model->setData(index, *value, Qt::EditRole);
    } else if (auto* list = qobject_cast<QComboBox*>(editor)) {
        model->setData(index, list->currentData(), Qt::EditRole);
    }
}

QSize ProfileDelegate::sizeHint(const QStyleOptionViewItem& option,
                                const QModelIndex& index) const {
    const QSize size = QStyledItemDelegate::sizeHint(option, index);
    return {size.width() + 16, std::max(size.height(), option.fontMetrics.height() + 12)};
}

}  // namespace leadline
