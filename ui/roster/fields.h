// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QWidget>
#include <optional>

#include "ui/widgets/quantity_box.h"

class QGridLayout;
class QLabel;

namespace leadline {

/// A control with room below it for what is wrong with its value, in words.
class Field : public QWidget {
    Q_OBJECT
public:
    explicit Field(QWidget* control, QWidget* parent = nullptr);
    /// Shows why a value was refused; an empty text takes the message away.
    void complain(const QString& message);
    [[nodiscard]] QString complaint() const;
    [[nodiscard]] QWidget* control() const { return control_; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void recolour();
    QWidget* control_;
    QLabel* message_;
};

/// Labels in one column, fields in the next.
class FieldForm : public QWidget {
    Q_OBJECT
public:
    explicit FieldForm(QWidget* parent = nullptr);
    /// @param label  with its mnemonic; becomes the control's accessible name
    Field* add(const QString& label, QWidget* control);
    /// A line of text under the field added last, in the field's column.
    QLabel* add_remark(const QString& object_name);
    void add_heading(const QString& text);
    void set_shown(Field* field, bool shown);
    /// Complaints still to be read, one a line.
    [[nodiscard]] QString complaints() const;
    void clear_complaints();

private:
    QGridLayout* grid_;
    int row_ = 0;
};

/// A line of text that reports every keystroke and is not disturbed by its own value coming back.
class TypedLine : public QLineEdit {
    Q_OBJECT
public:
    TypedLine(const QString& object_name, int longest, QWidget* parent = nullptr);
    /// Shows a text, unless the line says the same but for spaces at the ends.
    void show_text(const std::string& text);
    [[nodiscard]] std::string trimmed() const { return text().trimmed().toStdString(); }
};

/// A list of choices that each carry a text of the model (an id, a tag). Long ones are cut, with
/// the whole in the tooltip. The wheel changes it only while it has the focus.
class ChoiceBox : public QComboBox {
    Q_OBJECT
public:
    struct Choice {
        QString label;
        QString value;
        friend bool operator==(const Choice&, const Choice&) = default;
    };
    explicit ChoiceBox(const QString& object_name, QWidget* parent = nullptr);
    /// Offers other choices, keeping the shown one; does nothing when they are the same.
    void offer(const std::vector<Choice>& choices);
    /// Shows a value; one not offered is added as it stands.
    void show_choice(const QString& value);
    [[nodiscard]] QString choice() const { return currentData().toString(); }

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    std::vector<Choice> choices_;
};

/// A quantity that may be cleared: an emptied box means "not known".
class ClearableBox : public QuantityBox {
    Q_OBJECT
public:
    ClearableBox(QuantityKind kind, const QString& object_name, QWidget* parent = nullptr);

protected:
    QValidator::State validate(QString& text, int& position) const override;
    [[nodiscard]] double valueFromText(const QString& text) const override;
    void focusInEvent(QFocusEvent* event) override;
};

/// A shoe size in the EU system, 20 to 55, or none.
class ShoeBox : public QDoubleSpinBox {
    Q_OBJECT
public:
    explicit ShoeBox(const QString& object_name, QWidget* parent = nullptr);
    void show_size(std::optional<double> size);

Q_SIGNALS:
    void edited(std::optional<double> size);

protected:
    QValidator::State validate(QString& text, int& position) const override;
    [[nodiscard]] double valueFromText(const QString& text) const override;
    void stepBy(int steps) override;
    void focusInEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace leadline
