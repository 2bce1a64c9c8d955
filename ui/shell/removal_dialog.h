// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "core/planning/retention.h"
#include "core/records/person_removal.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QRadioButton;
class QScrollArea;

namespace leadline {

/// What removing a guest would do, before it is done. The button is only open once it was ticked that
/// there is no way back.
class RemovalDialog : public QDialog {
    Q_OBJECT
public:
    /// @param keeps_longer  a period that asks to keep the guest's data longer; nullptr: none
    RemovalDialog(const RemovalPreview& preview, const RetentionRule* keeps_longer,
                  QWidget* parent);

    [[nodiscard]] KeptKind kind() const;
    [[nodiscard]] bool copies_too() const;

private:
    void update_text();
    /// As high as what it tells, if the screen is.
    void size_for(QScrollArea& told);

    RemovalPreview preview_;
    QRadioButton* all_;
    QRadioButton* contacts_;
    QRadioButton* health_;
    QLabel* goes_;
    QLabel* stays_;
    QCheckBox* copies_;
    QCheckBox* sure_;
    QPushButton* remove_;
};

}  // namespace leadline
