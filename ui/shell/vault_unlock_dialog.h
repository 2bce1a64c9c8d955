// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

#include "core/physics/result.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTimer;

namespace leadline {

class VaultAccess;

/// Opens the health vault: who is asking, and the passphrase, the keyring or the recovery key.
class VaultUnlockDialog : public QDialog {
    Q_OBJECT
public:
    VaultUnlockDialog(VaultAccess& access, QWidget* parent);

private:
    void unlock();
    void unlock_with_keyring();
    void finish(const Result<Done>& done);
    void update_state();
    void set_busy(bool busy);
    [[nodiscard]] bool by_recovery_key() const;
    void focus_secret();

    VaultAccess& access_;
    bool busy_ = false;
    QComboBox* who_;
    QLabel* passphrase_label_;
    QLineEdit* passphrase_;
    QLabel* recovery_label_;
    QLineEdit* recovery_;
    QCheckBox* use_recovery_;
    QLabel* trouble_;
    QProgressBar* bar_;
    QPushButton* unlock_;
    QPushButton* keyring_;
    QTimer* ticks_;
};

}  // namespace leadline
