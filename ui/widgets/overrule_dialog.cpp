// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/overrule_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/planning/overrule_key.h"
#include "ui/document/session_document.h"
#include "ui/words/name_words.h"

namespace leadline {

OverruleDialog::OverruleDialog(const FindingText& finding, const QString& default_name,
                               QWidget* parent)
    : QDialog(parent),
      reason_(new QPlainTextEdit(this)),
      decided_by_(new QLineEdit(default_name, this)),
      accept_(nullptr) {
    setWindowTitle(tr("Go ahead despite this finding"));
    setObjectName(QStringLiteral("overrule_dialog"));
    setMinimumWidth(480);
    auto* what = new QLabel(with_colon(finding.about, finding.what), this);
    what->setWordWrap(true);
    QFont bold = what->font();
    bold.setBold(true);
    what->setFont(bold);
    auto* warning = new QLabel(
        tr("The reason is kept with the session. Local law and your centre's standard come first: "
           "they cannot be set aside here."),
        this);
    warning->setWordWrap(true);
    reason_->setObjectName(QStringLiteral("overrule_reason"));
    reason_->setTabChangesFocus(true);
    reason_->setPlaceholderText(tr("Why is it right to go ahead?"));
    reason_->setFixedHeight(90);
    decided_by_->setObjectName(QStringLiteral("overrule_by"));

    auto* form = new QFormLayout;
    form->addRow(tr("&Reason"), reason_);
    form->addRow(tr("&Decided by"), decided_by_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    accept_ = buttons->addButton(tr("&Go ahead"), QDialogButtonBox::AcceptRole);
    accept_->setObjectName(QStringLiteral("overrule_accept"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(reason_, &QPlainTextEdit::textChanged, this, &OverruleDialog::update_button);
    connect(decided_by_, &QLineEdit::textChanged, this, &OverruleDialog::update_button);

    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(12);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->addWidget(what);
    layout->addWidget(warning);
    layout->addLayout(form);
    layout->addWidget(buttons);
    update_button();
    reason_->setFocus();
}

QString OverruleDialog::reason() const { return reason_->toPlainText().simplified(); }
QString OverruleDialog::decided_by() const { return decided_by_->text().simplified(); }

void OverruleDialog::update_button() {
    accept_->setEnabled(!reason().isEmpty() && !decided_by().isEmpty());
}

void set_aside(SessionDocument& document, const std::string& finding_key,
               const OverruleDialog& dialog) {
    const Overrule decision{finding_key, dialog.reason().toStdString(),
                            dialog.decided_by().toStdString()};
    static_cast<void>(document
                          .edit(OverruleDialog::tr("Set a finding aside"),
                                [&](Session& session) {
                                    std::erase_if(session.overrules, [&](const Overrule& old) {
                                        return old.finding == finding_key;
                                    });
                                    session.overrules.push_back(decision);
                                })
                          .has_value());
}

void withdraw_decision(SessionDocument& document, const Finding& finding) {
    const Finding about = finding;  // the edit makes all findings anew
    static_cast<void>(document
                          .edit(OverruleDialog::tr("Withdraw a decision"),
                                [&](Session& session) {
                                    std::erase_if(session.overrules, [&](const Overrule& old) {
                                        return covers(old, about);
                                    });
                                })
                          .has_value());
}

}  // namespace leadline
