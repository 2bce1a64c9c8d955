// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/recovery_key_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/records/recovery_key.h"
#include "ui/shell/recovery_page.h"
#include "ui/shell/secret_field.h"
#include "ui/shell/vault_access.h"
#include "ui/words/error_words.h"

namespace leadline {

RecoveryKeyDialog::RecoveryKeyDialog(VaultAccess& access, QWidget* parent)
    : QDialog(parent),
      access_(access),
      page_(new RecoveryPage(this)),
      trouble_(trouble_line(this)) {
    setWindowTitle(tr("New recovery key"));
    setObjectName(QStringLiteral("recovery_key_dialog"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    keep_ = buttons->addButton(tr("&Replace the old key"), QDialogButtonBox::AcceptRole);
    keep_->setObjectName(QStringLiteral("recovery_keep"));
    keep_->setDefault(true);
    keep_->setEnabled(false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 20, 20, 16);
    layout->setSpacing(8);
    layout->addWidget(page_, 1);
    layout->addWidget(trouble_);
    layout->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &RecoveryKeyDialog::keep);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(page_, &RecoveryPage::confirmed_changed, this,
            [this] { keep_->setEnabled(page_->is_confirmed()); });
    connect(&access_, &HealthAccess::state_changed, this, [this] {
        if (access_.vault_state() != HealthAccess::State::open) reject();
    });
    page_->show_key(new_recovery_key(), access_.records_path());
    size_for_texts(*this, 560);
}

RecoveryKeyDialog::~RecoveryKeyDialog() {
    // The fields speak once more when they are emptied; nobody is there to hear it.
    disconnect(page_, nullptr, this, nullptr);
    page_->forget();
}

void RecoveryKeyDialog::keep() {
    if (!page_->is_confirmed()) return;
    if (const Result<Done> done = access_.replace_recovery_key(page_->key()); !done) {
        say_trouble(*trouble_, words(done.error()));
        return;
    }
    accept();
}

}  // namespace leadline
