// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/fields.h"

#include <QEvent>
#include <QFocusEvent>
#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QStringList>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QTimer>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "ui/widgets/decimal_sign.h"
#include "ui/widgets/plain_tip.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

/// Selects everything once the click that gave the focus has been worked off, so that a number can
/// be typed over and the sign for "not known" never stands in the way.
void select_all_soon(QAbstractSpinBox* box) {
    QTimer::singleShot(0, box, &QAbstractSpinBox::selectAll);
}

}  // namespace

// ---- Field -------------------------------------------------------------------------------------

Field::Field(QWidget* control, QWidget* parent)
    : QWidget(parent), control_(control), message_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(control);
    column->addWidget(message_);
    message_->setObjectName(control->objectName() + QStringLiteral("_message"));
    message_->setTextFormat(Qt::PlainText);
    message_->setWordWrap(true);
    message_->hide();
    recolour();
}

void Field::complain(const QString& message) {
    message_->setText(message);
    message_->setVisible(!message.isEmpty());
    control_->setAccessibleDescription(message);
}

QString Field::complaint() const { return message_->text(); }

void Field::recolour() {
    QPalette own = palette();
    own.setColor(QPalette::WindowText, inks(own).stop);
    message_->setPalette(own);
}

void Field::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) recolour();
}

// ---- FieldForm ---------------------------------------------------------------------------------

FieldForm::FieldForm(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(16);
    grid_->setVerticalSpacing(8);
    grid_->setColumnStretch(1, 1);
    constexpr int letters = 13;
    grid_->setColumnMinimumWidth(0, letters * fontMetrics().averageCharWidth());
}

Field* FieldForm::add(const QString& label, QWidget* control) {
    auto* name = new QLabel(label, this);
    name->setBuddy(control);
    name->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    name->setContentsMargins(0, 5, 0, 0);  // level with the text inside the control
    if (control->accessibleName().isEmpty()) {
        QString plain = label;
        control->setAccessibleName(plain.remove(u'&'));
    }
    if (qobject_cast<QAbstractSpinBox*>(control) != nullptr) {
        // A number stays near its label.
        constexpr int digits = 17;
        control->setMaximumWidth(digits * fontMetrics().averageCharWidth());
    }
    auto* field = new Field(control, this);
    grid_->addWidget(name, row_, 0, Qt::AlignTop);
    grid_->addWidget(field, row_, 1);
    ++row_;
    return field;
}

QLabel* FieldForm::add_remark(const QString& object_name) {
    auto* remark = new QLabel(this);
    remark->setObjectName(object_name);
    remark->setTextFormat(Qt::PlainText);
    remark->setWordWrap(true);
    remark->setForegroundRole(QPalette::PlaceholderText);
    grid_->addWidget(remark, row_++, 1);
    return remark;
}

void FieldForm::add_heading(const QString& text) {
    auto* heading = new QLabel(text, this);
    QFont font = heading->font();
    font.setBold(true);
    heading->setFont(font);
    constexpr int above = 8;
    heading->setContentsMargins(0, row_ == 0 ? 0 : above, 0, 0);
    grid_->addWidget(heading, row_++, 0, 1, 2);
}

void FieldForm::set_shown(Field* field, bool shown) {
    field->setVisible(shown);
    const int place = grid_->indexOf(field);
    int row = 0;
    int column = 0;
    int rows = 0;
    int columns = 0;
    grid_->getItemPosition(place, &row, &column, &rows, &columns);
    if (QLayoutItem* label = grid_->itemAtPosition(row, 0)) label->widget()->setVisible(shown);
}

QString FieldForm::complaints() const {
    QStringList lines;
    for (const auto* field : findChildren<Field*>()) {
        if (!field->complaint().isEmpty()) lines << field->complaint();
    }
    return lines.join(u' ');
}

void FieldForm::clear_complaints() {
    for (auto* field : findChildren<Field*>()) field->complain({});
}

// ---- TypedLine ----------------------------------------------------------------------------------

TypedLine::TypedLine(const QString& object_name, int longest, QWidget* parent) : QLineEdit(parent) {
    setObjectName(object_name);
    setMaxLength(longest);
}

void TypedLine::show_text(const std::string& text) {
    const QString wanted = QString::fromStdString(text);
    setToolTip(plain_tip(wanted));
    if (this->text().trimmed() == wanted.trimmed()) return;
    setText(wanted);
    if (!hasFocus()) setCursorPosition(0);
}

// ---- ChoiceBox ---------------------------------------------------------------------------------

ChoiceBox::ChoiceBox(const QString& object_name, QWidget* parent) : QComboBox(parent) {
    setObjectName(object_name);
    setFocusPolicy(Qt::StrongFocus);
    // A long name in the list must not widen the window.
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int least_letters = 8;
    setMinimumContentsLength(least_letters);
}

void ChoiceBox::offer(const std::vector<Choice>& choices) {
    if (choices == choices_) return;
    choices_ = choices;
    const QString shown = choice();
    const QSignalBlocker quiet(this);
    clear();
    for (const Choice& choice : choices) addItem(choice.label, choice.value);
    setCurrentIndex(findData(shown));
}

void ChoiceBox::show_choice(const QString& value) {
    if (currentIndex() >= 0 && choice() == value) return;
    const QSignalBlocker quiet(this);
    if (findData(value) < 0) addItem(value, value);
    setCurrentIndex(findData(value));
}

void ChoiceBox::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    const QRect room = style()->subControlRect(QStyle::CC_ComboBox, &option,
                                               QStyle::SC_ComboBoxEditField, this);
    constexpr int beside = 8;
    option.currentText =
        fontMetrics().elidedText(option.currentText, Qt::ElideRight, room.width() - beside);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

bool ChoiceBox::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) setToolTip(plain_tip(currentText()));
    return QComboBox::event(event);
}

void ChoiceBox::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QComboBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

// ---- ClearableBox ------------------------------------------------------------------------------

ClearableBox::ClearableBox(QuantityKind kind, const QString& object_name, QWidget* parent)
    : QuantityBox(kind, parent) {
    setObjectName(object_name);
    allow_empty(tr("–"));
}

QValidator::State ClearableBox::validate(QString& text, int& position) const {
    if (text.trimmed().isEmpty() || text == specialValueText()) return QValidator::Acceptable;
    return QuantityBox::validate(text, position);
}

double ClearableBox::valueFromText(const QString& text) const {
    if (text.trimmed().isEmpty() || text == specialValueText()) return minimum();
    return QuantityBox::valueFromText(text);
}

void ClearableBox::focusInEvent(QFocusEvent* event) {
    QuantityBox::focusInEvent(event);
    if (event->reason() == Qt::MouseFocusReason) select_all_soon(this);
}

// ---- ShoeBox -----------------------------------------------------------------------------------

namespace {
constexpr double smallest_shoe = 20.0;
constexpr double largest_shoe = 55.0;
constexpr double no_shoe = 19.5;  // one step below: shown as "not known"
constexpr double common_shoe = 40.0;
}  // namespace

ShoeBox::ShoeBox(const QString& object_name, QWidget* parent) : QDoubleSpinBox(parent) {
    setObjectName(object_name);
    setDecimals(1);
    setSingleStep(0.5);
    setRange(no_shoe, largest_shoe);
    setPrefix(tr("EU "));
    setSpecialValueText(tr("–"));
    setAlignment(Qt::AlignRight);
    setKeyboardTracking(false);
    setFocusPolicy(Qt::StrongFocus);
    setCorrectionMode(QAbstractSpinBox::CorrectToPreviousValue);
    connect(this, &QDoubleSpinBox::valueChanged, this, [this](double size) {
        Q_EMIT edited(size < smallest_shoe ? std::nullopt : std::optional(size));
    });
}

void ShoeBox::show_size(std::optional<double> size) {
    const QSignalBlocker quiet(this);
    const double wanted = size.value_or(no_shoe);
    if (wanted != value()) setValue(wanted);
}

QValidator::State ShoeBox::validate(QString& text, int& position) const {
    const QString bare = text.trimmed();
    if (bare.isEmpty() || bare == prefix().trimmed() || text == specialValueText()) {
        return QValidator::Acceptable;
    }
    static_cast<void>(settle_decimal_sign(text, suffix(), locale(), decimals()));
    return QDoubleSpinBox::validate(text, position);
}

double ShoeBox::valueFromText(const QString& text) const {
    const QString bare = text.trimmed();
    if (bare.isEmpty() || bare == prefix().trimmed() || text == specialValueText()) return no_shoe;
    return QDoubleSpinBox::valueFromText(text);
}

void ShoeBox::stepBy(int steps) {
    // The first step from "not known" goes to where most sizes are near.
    if (value() < smallest_shoe && steps > 0) {
        setValue(common_shoe);
    } else {
        QDoubleSpinBox::stepBy(steps);
    }
}

void ShoeBox::focusInEvent(QFocusEvent* event) {
    QDoubleSpinBox::focusInEvent(event);
    if (event->reason() == Qt::MouseFocusReason) select_all_soon(this);
}

void ShoeBox::wheelEvent(QWheelEvent* event) {
    if (hasFocus()) {
        QDoubleSpinBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

}  // namespace leadline
