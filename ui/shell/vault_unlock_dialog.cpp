// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/vault_unlock_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <chrono>

#include "core/records/recovery_key.h"
#include "ui/shell/secret_field.h"
#include "ui/shell/vault_access.h"
#include "ui/words/error_words.h"

namespace leadline {

VaultUnlockDialog::VaultUnlockDialog(VaultAccess& access, QWidget* parent)
    : QDialog(parent),
      access_(access),
      who_(who_field(access.staff_names(), this)),
      passphrase_label_(new QLabel(tr("&Passphrase"), this)),
      passphrase_(passphrase_field("vault_passphrase", this)),
      recovery_label_(new QLabel(tr("Recovery &key"), this)),
      recovery_(new QLineEdit(this)),
      use_recovery_(new QCheckBox(tr("Use the &recovery key"), this)),
      trouble_(trouble_line(this)),
      bar_(busy_bar(this)),
      ticks_(new QTimer(this)) {
    setWindowTitle(tr("Unlock the health vault"));
    setObjectName(QStringLiteral("vault_unlock_dialog"));
    passphrase_label_->setBuddy(passphrase_);
    recovery_label_->setBuddy(recovery_);
    recovery_->setObjectName(QStringLiteral("vault_recovery_key"));
    recovery_->setPlaceholderText(tr("Nine groups of four"));
    // Spaces and dashes are welcome between the groups.
    recovery_->setMaxLength(recovery_key_groups * (recovery_group_signs + 3));
    use_recovery_->setObjectName(QStringLiteral("vault_use_recovery"));

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    unlock_ = buttons->addButton(tr("&Unlock"), QDialogButtonBox::AcceptRole);
    unlock_->setObjectName(QStringLiteral("vault_unlock"));
    unlock_->setDefault(true);
    keyring_ = buttons->addButton(tr("Unlock by &keyring"), QDialogButtonBox::ActionRole);
    keyring_->setObjectName(QStringLiteral("vault_unlock_keyring"));
    const bool has_passphrase = access_.has_way(VaultWay::passphrase);
    const bool has_keyring = access_.has_way(VaultWay::keyring);
    keyring_->setVisible(has_keyring);
    if (!has_passphrase) {
        keyring_->setDefault(has_keyring);
        use_recovery_->setChecked(!has_keyring);
    }

    auto* form = new QFormLayout;
    form->setHorizontalSpacing(12);
    form->setVerticalSpacing(8);
    form->addRow(tr("&Who is asking"), who_);
    form->addRow(passphrase_label_, passphrase_);
    form->addRow(recovery_label_, recovery_);
    form->addRow(QString(), use_recovery_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 20, 20, 16);
    layout->setSpacing(8);
    layout->addLayout(form);
    layout->addWidget(trouble_);
    layout->addWidget(bar_);
    layout->addWidget(buttons);

    connect(buttons, &QDialogButtonBox::accepted, this, &VaultUnlockDialog::unlock);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(keyring_, &QPushButton::clicked, this, &VaultUnlockDialog::unlock_with_keyring);
    connect(use_recovery_, &QCheckBox::toggled, this, [this] {
        say_trouble(*trouble_, {});
        update_state();
        focus_secret();
    });
    for (QLineEdit* field : {passphrase_, recovery_}) {
        connect(field, &QLineEdit::textChanged, this, &VaultUnlockDialog::update_state);
    }
    connect(who_, &QComboBox::editTextChanged, this, &VaultUnlockDialog::update_state);
    // The wait after wrong tries runs down while one looks on.
    ticks_->setInterval(std::chrono::milliseconds(500));
    connect(ticks_, &QTimer::timeout, this, &VaultUnlockDialog::update_state);
    update_state();
    size_for_texts(*this, 480);
    if (who_in(*who_).isEmpty()) {
        who_->setFocus();
    } else {
        focus_secret();
    }
}

bool VaultUnlockDialog::by_recovery_key() const {
    return use_recovery_->isChecked();
}

void VaultUnlockDialog::focus_secret() {
    if (by_recovery_key()) {
        recovery_->setFocus();
    } else if (access_.has_way(VaultWay::passphrase)) {
        passphrase_->setFocus();
    } else {
        keyring_->setFocus();
    }
}

void VaultUnlockDialog::update_state() {
    const bool recovery = by_recovery_key();
    const bool has_passphrase = access_.has_way(VaultWay::passphrase);
    for (QWidget* part :
         {static_cast<QWidget*>(passphrase_label_), static_cast<QWidget*>(passphrase_)}) {
        part->setVisible(!recovery && has_passphrase);
        part->setEnabled(!busy_);
    }
    for (QWidget* part :
         {static_cast<QWidget*>(recovery_label_), static_cast<QWidget*>(recovery_)}) {
        part->setVisible(recovery);
        part->setEnabled(!busy_);
    }
    who_->setEnabled(!busy_);
    use_recovery_->setEnabled(!busy_);
    Vault* vault = access_.vault();
    const int wait =
        recovery || busy_ || vault == nullptr ? 0 : vault->seconds_to_wait().value_or(0);
    if (wait > 0) {
        ticks_->start();
        unlock_->setText(tr("Wait %1 s").arg(wait));
    } else {
        ticks_->stop();
        unlock_->setText(tr("&Unlock"));
    }
    const bool named = !who_in(*who_).isEmpty();
    const QLineEdit* field = recovery ? recovery_ : passphrase_;
    unlock_->setVisible(recovery || has_passphrase);
    unlock_->setEnabled(!busy_ && wait == 0 && named && !field->text().isEmpty());
    keyring_->setEnabled(!busy_ && named);
}

void VaultUnlockDialog::set_busy(bool busy) {
    busy_ = busy;
    bar_->setVisible(busy);
    update_state();
}

void VaultUnlockDialog::unlock() {
    if (busy_ || !unlock_->isEnabled()) return;
    say_trouble(*trouble_, {});
    if (by_recovery_key()) {
        // Kept on a mistake: one sign of 36 is easier put right than all typed anew.
        QString text = recovery_->text();
        QByteArray utf8 = text.toUtf8();
        const SecretBytes typed =
            SecretBytes::copy_of({utf8.constData(), static_cast<std::size_t>(utf8.size())});
        wipe(utf8);
        wipe(text);
        finish(access_.unlock_with_recovery_key(typed, who_in(*who_)));
        return;
    }
    SecretBytes passphrase = take_secret(*passphrase_);
    set_busy(true);
    access_.unlock(std::move(passphrase), who_in(*who_), this,
                   [this](const Result<Done>& done) { finish(done); });
}

void VaultUnlockDialog::unlock_with_keyring() {
    if (busy_) return;
    say_trouble(*trouble_, {});
    set_busy(true);
    access_.unlock_with_keyring(who_in(*who_), this,
                                [this](const Result<Done>& done) { finish(done); });
}

void VaultUnlockDialog::finish(const Result<Done>& done) {
    set_busy(false);
    if (done) {
        recovery_->clear();
        accept();
        return;
    }
    say_trouble(*trouble_, done.error().code == ErrorCode::not_found
                               ? tr("This computer's keyring has no key of this vault. Use the "
                                    "recovery key.")
                               : words(done.error()));
    focus_secret();
}

}  // namespace leadline
