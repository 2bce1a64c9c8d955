// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "core/planning/session.h"
#include "ui/words/finding_words.h"

class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace leadline {

class SessionDocument;

/// Asks why a finding is set aside, and by whom. Cannot be closed with OK while either is empty.
class OverruleDialog : public QDialog {
    Q_OBJECT
public:
    OverruleDialog(const FindingText& finding, const QString& default_name, QWidget* parent);
    [[nodiscard]] QString reason() const;
    [[nodiscard]] QString decided_by() const;

private:
    void update_button();
    QPlainTextEdit* reason_;
    QLineEdit* decided_by_;
    QPushButton* accept_;
};

/// Sets the finding with this key aside, for the dialog's reason: one undoable step.
void set_aside(SessionDocument& document, const std::string& finding_key,
               const OverruleDialog& dialog);
/// Takes such a decision back.
void withdraw_decision(SessionDocument& document, const Finding& finding);

}  // namespace leadline
