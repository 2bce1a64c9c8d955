// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/vault_passphrase_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/shell/secret_field.h"
#include "ui/shell/vault_access.h"
#include "ui/words/error_words.h"

namespace leadline {

VaultPassphraseDialog::VaultPassphraseDialog(VaultAccess& access, QWidget* parent)
    : QDialog(parent),
      access_(access),
      has_old_(access.has_way(VaultWay::passphrase)),
      old_(passphrase_field("vault_old_passphrase", this)),
      fresh_(passphrase_field("vault_passphrase", this)),
      again_(passphrase_field("vault_passphrase_again", this)),
      hint_(wrapped_text({}, this)),
      trouble_(trouble_line(this)),
      bar_(busy_bar(this)) {
    setWindowTitle(has_old_ ? tr("Change the passphrase") : tr("Add a passphrase"));
    setObjectName(QStringLiteral("vault_passphrase_dialog"));
    hint_->setForegroundRole(QPalette::PlaceholderText);
    hint_->setObjectName(QStringLiteral("vault_hint"));
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(12);
    form->setVerticalSpacing(8);
    if (has_old_) {
        form->addRow(tr("&Old passphrase"), old_);
    } else {
        old_->hide();
    }
    form->addRow(tr("&New passphrase"), fresh_);
    form->addRow(tr("&Again"), again_);
    form->addRow(hint_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    change_ =
        buttons->addButton(has_old_ ? tr("&Change") : tr("A&dd"), QDialogButtonBox::AcceptRole);
    change_->setObjectName(QStringLiteral("vault_change"));
    change_->setDefault(true);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 20, 20, 16);
    layout->setSpacing(8);
    layout->addLayout(form);
    layout->addWidget(trouble_);
    layout->addWidget(bar_);
    layout->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &VaultPassphraseDialog::change);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QLineEdit* field : {old_, fresh_, again_}) {
        connect(field, &QLineEdit::textChanged, this, &VaultPassphraseDialog::update_state);
    }
    // What is asked here belongs to the open vault.
    connect(&access_, &HealthAccess::state_changed, this, [this] {
        if (access_.vault_state() != HealthAccess::State::open) reject();
    });
    update_state();
    size_for_texts(*this, 480);
    (has_old_ ? old_ : fresh_)->setFocus();
}

void VaultPassphraseDialog::update_state() {
    const auto length = fresh_->text().toUcs4().size();
    const bool same = fresh_->text() == again_->text();
    QString hint =
        tr("At least %1 characters: a few words in a row are easy to keep.").arg(least_passphrase);
    if (length > 0 && length < least_passphrase) {
        hint = tr("%1 of at least %2 characters.").arg(length).arg(least_passphrase);
    } else if (!again_->text().isEmpty() && !same) {
        hint = tr("The two are not the same yet.");
    }
    hint_->setText(hint);
    const bool old_given = !has_old_ || !old_->text().isEmpty();
    change_->setEnabled(!busy_ && old_given && same && length >= least_passphrase);
    for (QLineEdit* field : {old_, fresh_, again_}) field->setEnabled(!busy_);
    bar_->setVisible(busy_);
}

void VaultPassphraseDialog::change() {
    if (busy_ || !change_->isEnabled()) return;
    say_trouble(*trouble_, {});
    const auto done = [this](const Result<Done>& result) { finish(result); };
    SecretBytes old = take_secret(*old_);
    SecretBytes fresh = take_secret(*fresh_);
    again_->setText(QString());
    busy_ = true;
    update_state();
    if (has_old_) {
        access_.change_passphrase(std::move(old), std::move(fresh), this, done);
    } else {
        access_.add_passphrase(std::move(fresh), this, done);
    }
}

void VaultPassphraseDialog::finish(const Result<Done>& done) {
    busy_ = false;
    update_state();
    if (done) {
        accept();
        return;
    }
    say_trouble(*trouble_, done.error().code == ErrorCode::vault_wrong_key
                               ? tr("The old passphrase is not the right one. Nothing was changed.")
                               : words(done.error()));
    (has_old_ ? old_ : fresh_)->setFocus();
}

}  // namespace leadline
