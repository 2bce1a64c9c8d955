// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

class QComboBox;

namespace leadline {

class QuantityBox;
class SessionDocument;
struct Conditions;

/// What water, air and sea are like today.
class ConditionsForm : public QWidget {
    Q_OBJECT
public:
    explicit ConditionsForm(SessionDocument& document, QWidget* parent = nullptr);

private:
    void refresh();
    void edit(const QString& what, const std::function<void(Conditions&)>& change);

    SessionDocument& document_;
    QuantityBox* water_;
    QuantityBox* air_;
    QuantityBox* barometer_;
    QuantityBox* visibility_;
    QComboBox* current_;
    QuantityBox* waves_;
};

}  // namespace leadline
