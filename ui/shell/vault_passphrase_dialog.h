// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "core/physics/result.h"

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;

namespace leadline {

class VaultAccess;

/// Changes the passphrase of the open vault, or adds one where there is none.
class VaultPassphraseDialog : public QDialog {
    Q_OBJECT
public:
    VaultPassphraseDialog(VaultAccess& access, QWidget* parent);

private:
    void change();
    void finish(const Result<Done>& done);
    void update_state();

    VaultAccess& access_;
    bool busy_ = false;
    bool has_old_;
    QLineEdit* old_;
    QLineEdit* fresh_;
    QLineEdit* again_;
    QLabel* hint_;
    QLabel* trouble_;
    QProgressBar* bar_;
    QPushButton* change_;
};

}  // namespace leadline
