// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSpinBox>
#include <optional>

namespace leadline {

/// A whole number from 0 up, or from 1; may be empty ("not known") when made so. Reported when the
/// box is left, Return pressed or a step taken. The wheel changes it only while it has the focus.
class CountBox : public QSpinBox {
    Q_OBJECT
public:
    CountBox(const QString& object_name, int least, int most, QWidget* parent = nullptr);

    /// Allows no value, shown as "–": an emptied box means it.
    void allow_empty();
    /// Shows a value without emitting edited(). No value needs allow_empty().
    void show_count(std::optional<int> count);
    [[nodiscard]] std::optional<int> count() const;

Q_SIGNALS:
    void edited(std::optional<int> count);

protected:
    QValidator::State validate(QString& text, int& position) const override;
    [[nodiscard]] int valueFromText(const QString& text) const override;
    void stepBy(int steps) override;

private:
    [[nodiscard]] bool is_empty(const QString& text) const;
    int least_;
    bool may_be_empty_ = false;
};

}  // namespace leadline
