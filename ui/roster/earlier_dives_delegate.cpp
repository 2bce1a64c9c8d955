// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/earlier_dives_delegate.h"

#include <QTimeEdit>
#include <algorithm>

#include "ui/roster/count_box.h"
#include "ui/roster/earlier_dives_model.h"
#include "ui/widgets/quantity_box.h"
#include "ui/widgets/wheel_guard.h"

namespace leadline {

DayEdit::DayEdit(QWidget* parent) : QDateEdit(parent) {
    setDisplayFormat(tr("d MMM yyyy", "date; d, MMM and yyyy stay"));
    setCalendarPopup(true);
    guard_wheel(this);
}

void DayEdit::stepBy(int steps) {
    if (currentSection() != DaySection) return QDateEdit::stepBy(steps);
    setDate(std::clamp(date().addDays(steps), minimumDate(), maximumDate()));
    setSelectedSection(DaySection);
}

QAbstractSpinBox::StepEnabled DayEdit::stepEnabled() const {
    StepEnabled enabled = StepNone;
    if (date() > minimumDate()) enabled |= StepDownEnabled;
    if (date() < maximumDate()) enabled |= StepUpEnabled;
    return enabled;
}

EarlierDivesDelegate::EarlierDivesDelegate(UnitSystem units, QDate latest, QObject* parent)
    : QStyledItemDelegate(parent), units_(units), latest_(latest) {}

QWidget* EarlierDivesDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                            const QModelIndex& index) const {
    QWidget* editor = nullptr;
    switch (static_cast<DiveColumn>(index.column())) {
        case DiveColumn::date: {
            auto* day = new DayEdit(parent);
            day->setDateRange(latest_.addDays(-earlier_dives_kept_days), latest_);
            editor = day;
            break;
        }
        case DiveColumn::start: {
            auto* time = new QTimeEdit(parent);
            time->setDisplayFormat(QStringLiteral("HH:mm"));
            guard_wheel(time);
            editor = time;
            break;
        }
        case DiveColumn::deepest:
        case DiveColumn::duration: {
            const bool depth = static_cast<DiveColumn>(index.column()) == DiveColumn::deepest;
            auto* box =
                new QuantityBox(depth ? QuantityKind::depth : QuantityKind::minutes, parent);
            box->set_units(units_);
            editor = box;
            break;
        }
        case DiveColumn::ascents: {
            constexpr int most_ascents = 30;
            editor = new CountBox({}, 1, most_ascents, parent);
            break;
        }
    }
    editor->setObjectName(QStringLiteral("earlier_dive_editor"));
    editor->setAccessibleName(
        index.model()->headerData(index.column(), Qt::Horizontal).toString());
    editor->setAutoFillBackground(true);
    return editor;
}

void EarlierDivesDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    const QVariant value = index.data(Qt::EditRole);
    if (auto* day = qobject_cast<DayEdit*>(editor)) {
        day->setDate(value.toDate());
        day->setSelectedSection(QDateTimeEdit::DaySection);
    } else if (auto* time = qobject_cast<QTimeEdit*>(editor)) {
        time->setTime(value.toTime());
        time->setSelectedSection(QDateTimeEdit::HourSection);
    } else if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->show_value(value.toDouble());
        box->selectAll();
    } else if (auto* count = qobject_cast<CountBox*>(editor)) {
        count->show_count(value.toInt());
        count->selectAll();
    }
}

void EarlierDivesDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                        const QModelIndex& index) const {
    if (auto* day = qobject_cast<DayEdit*>(editor)) {
        day->interpretText();
        model->setData(index, day->date());
    } else if (auto* time = qobject_cast<QTimeEdit*>(editor)) {
        time->interpretText();
        model->setData(index, time->time());
    } else if (auto* box = qobject_cast<QuantityBox*>(editor)) {
        box->interpretText();
        if (box->metric_value()) model->setData(index, *box->metric_value());
    } else if (auto* count = qobject_cast<CountBox*>(editor)) {
        count->interpretText();
        if (count->count()) model->setData(index, *count->count());
    }
}

void EarlierDivesDelegate::updateEditorGeometry(QWidget* editor,
                                                const QStyleOptionViewItem& option,
                                                const QModelIndex&) const {
    // A narrow column must not hide what is typed.
    QRect room = option.rect;
    room.setWidth(std::max(room.width(), editor->sizeHint().width()));
    editor->setGeometry(room);
}

}  // namespace leadline
