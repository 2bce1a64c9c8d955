// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/vault_set_up_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <utility>

#include "core/records/database.h"
#include "ui/shell/recovery_page.h"
#include "ui/shell/secret_field.h"
#include "ui/shell/vault_access.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

enum SetUpPage { choice_index, recovery_index };

}  // namespace

VaultSetUpDialog::VaultSetUpDialog(VaultAccess& access, QWidget* parent)
    : QDialog(parent),
      access_(access),
      pages_(new QStackedWidget(this)),
      recovery_(new RecoveryPage(this)),
      trouble_(trouble_line(this)),
      bar_(busy_bar(this)) {
    setWindowTitle(tr("Set up the health vault"));
    setObjectName(QStringLiteral("vault_set_up_dialog"));
    pages_->addWidget(choice_page());
    pages_->addWidget(recovery_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    next_ = buttons->addButton(tr("&Next"), QDialogButtonBox::AcceptRole);
    next_->setObjectName(QStringLiteral("vault_next"));
    next_->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &VaultSetUpDialog::go_on);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(recovery_, &RecoveryPage::confirmed_changed, this, &VaultSetUpDialog::update_state);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 20, 20, 16);
    layout->setSpacing(8);
    layout->addWidget(pages_, 1);
    layout->addWidget(trouble_);
    layout->addWidget(bar_);
    layout->addWidget(buttons);
    update_state();
    size_for_texts(*this, 560);
    if (who_in(*who_).isEmpty()) {
        who_->setFocus();
    } else {
        passphrase_->setFocus();
    }
}

VaultSetUpDialog::~VaultSetUpDialog() {
    disconnect(recovery_, nullptr, this, nullptr);
    give_up_keyring_key();
    recovery_->forget();
}

QWidget* VaultSetUpDialog::choice_page() {
    auto* page = new QWidget(this);
    who_ = who_field(access_.staff_names(), page);
    by_passphrase_ = new QRadioButton(tr("A &passphrase of the centre"), page);
    by_passphrase_->setObjectName(QStringLiteral("vault_by_passphrase"));
    by_passphrase_->setChecked(true);
    by_keyring_ = new QRadioButton(tr("This computer's &keyring"), page);
    by_keyring_->setObjectName(QStringLiteral("vault_by_keyring"));
    passphrase_ = passphrase_field("vault_passphrase", page);
    again_ = passphrase_field("vault_passphrase_again", page);
    hint_ = wrapped_text({}, page);
    hint_->setObjectName(QStringLiteral("vault_hint"));
    hint_->setForegroundRole(QPalette::PlaceholderText);
    constexpr int indent = 24;
    // Not in the form: there a wrapped row gets the height of one line.
    hint_->setContentsMargins(indent, 0, 0, 0);
    auto* form = new QFormLayout;
    form->setHorizontalSpacing(12);
    form->addRow(tr("&Who sets it up"), who_);
    auto* secret = new QFormLayout;
    secret->setHorizontalSpacing(12);
    secret->setContentsMargins(indent, 0, 0, 0);
    secret->addRow(tr("Pa&ssphrase"), passphrase_);
    secret->addRow(tr("&Again"), again_);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(wrapped_text(
        tr("Health answers, notes of physicians, emergency contacts and signatures are kept sealed "
           "in a vault. Choose how it is opened."),
        page));
    layout->addLayout(form);
    layout->addWidget(by_passphrase_);
    layout->addLayout(secret);
    layout->addWidget(hint_);
    layout->addWidget(by_keyring_);
    QLabel* about_keyring = wrapped_text(
        tr("The keyring opens with the login to this computer: quick, and as safe as that login."),
        page);
    about_keyring->setForegroundRole(QPalette::PlaceholderText);
    about_keyring->setContentsMargins(secret->contentsMargins().left(), 0, 0, 0);
    layout->addWidget(about_keyring);
    layout->addStretch(1);
    setTabOrder(who_, by_passphrase_);
    setTabOrder(by_passphrase_, passphrase_);
    setTabOrder(passphrase_, again_);
    setTabOrder(again_, by_keyring_);
    connect(by_keyring_, &QRadioButton::toggled, this, &VaultSetUpDialog::update_state);
    connect(passphrase_, &QLineEdit::textChanged, this, &VaultSetUpDialog::update_state);
    connect(again_, &QLineEdit::textChanged, this, &VaultSetUpDialog::update_state);
    connect(who_, &QComboBox::editTextChanged, this, &VaultSetUpDialog::update_state);
    return page;
}

void VaultSetUpDialog::update_state() {
    const bool typed = by_passphrase_->isChecked();
    passphrase_->setEnabled(typed && !busy_);
    again_->setEnabled(typed && !busy_);
    who_->setEnabled(!busy_);
    by_passphrase_->setEnabled(!busy_);
    by_keyring_->setEnabled(!busy_);
    // Characters as people count them; check_passphrase() has the last word.
    const auto length = passphrase_->text().toUcs4().size();
    const bool same = passphrase_->text() == again_->text();
    QString hint =
        tr("At least %1 characters: a few words in a row are easy to keep.").arg(least_passphrase);
    if (length > 0 && length < least_passphrase) {
        hint = tr("%1 of at least %2 characters.").arg(length).arg(least_passphrase);
    } else if (!again_->text().isEmpty() && !same) {
        hint = tr("The two are not the same yet.");
    }
    hint_->setText(hint);
    if (pages_->currentIndex() == recovery_index) {
        next_->setText(tr("&Finish"));
        next_->setEnabled(!busy_ && recovery_->is_confirmed());
    } else {
        const bool ready = !typed || (length >= least_passphrase && same);
        next_->setEnabled(!busy_ && ready && !who_in(*who_).isEmpty());
    }
}

void VaultSetUpDialog::set_busy(bool busy) {
    busy_ = busy;
    bar_->setVisible(busy);
    update_state();
}

void VaultSetUpDialog::go_on() {
    if (busy_ || !next_->isEnabled()) return;
    if (pages_->currentIndex() == choice_index) {
        make();
    } else {
        keep();
    }
}

void VaultSetUpDialog::make() {
    say_trouble(*trouble_, {});
    const auto show = [this](Result<NewVault> made) { show_recovery(std::move(made)); };
    set_busy(true);
    if (by_passphrase_->isChecked()) {
        again_->clear();
        access_.make(take_secret(*passphrase_), this, show);
    } else {
        access_.make_with_keyring(this, show);
    }
}

void VaultSetUpDialog::show_recovery(Result<NewVault> made) {
    set_busy(false);
    if (!made) {
        say_trouble(*trouble_, made.error().code == ErrorCode::keyring_failed
                                   ? tr("This computer's keyring does not answer. Choose a "
                                        "passphrase.")
                                   : words(made.error()));
        if (made.error().code == ErrorCode::keyring_failed) by_passphrase_->setChecked(true);
        passphrase_->setFocus();
        return;
    }
    made_.emplace(std::move(*made));
    if (made_->wrapped.front().way == VaultWay::keyring) keyring_entry_of_ = made_->vault_id;
    pages_->setCurrentIndex(recovery_index);
    recovery_->show_key(made_->recovery_key.clone(), access_.records_path());
    update_state();
}

void VaultSetUpDialog::keep() {
    const Result<Done> done = access_.keep(std::move(*made_), who_in(*who_));
    if (!done) {
        give_up_keyring_key();
        // What was made is spent: begin again rather than keep half of it.
        made_.reset();
        recovery_->forget();
        pages_->setCurrentIndex(choice_index);
        say_trouble(*trouble_, words(done.error()));
        update_state();
        return;
    }
    keyring_entry_of_.clear();
    accept();
}

void VaultSetUpDialog::give_up_keyring_key() {
    if (!keyring_entry_of_.isEmpty()) access_.forget_keyring_key(keyring_entry_of_);
    keyring_entry_of_.clear();
}

}  // namespace leadline
