// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/count_box.h"

#include <QSignalBlocker>

#include "ui/widgets/wheel_guard.h"

namespace leadline {

CountBox::CountBox(const QString& object_name, int least, int most, QWidget* parent)
    : QSpinBox(parent), least_(least) {
    setObjectName(object_name);
    setRange(least, most);
    setAlignment(Qt::AlignRight);
    setKeyboardTracking(false);
    setCorrectionMode(QAbstractSpinBox::CorrectToPreviousValue);
    guard_wheel(this);
    connect(this, &QSpinBox::valueChanged, this, [this] { Q_EMIT edited(count()); });
}

void CountBox::allow_empty() {
    const QSignalBlocker quiet(this);
    may_be_empty_ = true;
    // One below the range stands for "no value": a spin box has no other empty state.
    setMinimum(least_ - 1);
    setSpecialValueText(tr("–"));
    setValue(minimum());
}

void CountBox::show_count(std::optional<int> count) {
    const QSignalBlocker quiet(this);
    const int wanted = count.value_or(minimum());
    if (wanted != value()) setValue(wanted);
}

std::optional<int> CountBox::count() const {
    if (may_be_empty_ && value() < least_) return std::nullopt;
    return value();
}

bool CountBox::is_empty(const QString& text) const {
    const QString bare = text.trimmed();
    return may_be_empty_ && (bare.isEmpty() || bare == specialValueText());
}

QValidator::State CountBox::validate(QString& text, int& position) const {
    if (is_empty(text)) return QValidator::Acceptable;
    // The number below the range is a sign for emptiness and cannot be typed.
    if (text.trimmed().startsWith(u'-')) return QValidator::Invalid;
    return QSpinBox::validate(text, position);
}

int CountBox::valueFromText(const QString& text) const {
    return is_empty(text) ? minimum() : QSpinBox::valueFromText(text);
}

void CountBox::stepBy(int steps) {
    QSpinBox::stepBy(steps);
    selectAll();
}

}  // namespace leadline
