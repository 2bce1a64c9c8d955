// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QComboBox;
class QDateEdit;
class QLineEdit;
class QPushButton;
class QTimeEdit;

namespace leadline {

class ElidedLabel;
class SessionDocument;

/// The line above the tabs: what session this is, when, who leads, and whether it is ready.
class SessionLine : public QWidget {
    Q_OBJECT
public:
    explicit SessionLine(SessionDocument& document, QWidget* parent = nullptr);

Q_SIGNALS:
    /// The readiness was clicked: show the findings.
    void findings_requested();

private:
    void refresh();
    void show_readiness();

    SessionDocument& document_;
    QLineEdit* title_;
    QDateEdit* date_;
    QTimeEdit* meeting_;
    QTimeEdit* dive_;
    QComboBox* leader_;
    ElidedLabel* site_;
    QPushButton* ready_;
};

}  // namespace leadline
