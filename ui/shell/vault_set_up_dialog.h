// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <optional>

#include "core/records/vault.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QRadioButton;
class QStackedWidget;

namespace leadline {

class RecoveryPage;
class VaultAccess;

/// Sets the health vault up: who, how it is opened, and the recovery key on paper. Nothing is kept
/// until one group of that key was typed; leaving before leaves all as it was.
class VaultSetUpDialog : public QDialog {
    Q_OBJECT
public:
    VaultSetUpDialog(VaultAccess& access, QWidget* parent);
    ~VaultSetUpDialog() override;
    [[nodiscard]] RecoveryPage* recovery() const { return recovery_; }

private:
    QWidget* choice_page();
    void go_on();
    void make();
    void show_recovery(Result<NewVault> made);
    void keep();
    void update_state();
    void set_busy(bool busy);
    void give_up_keyring_key();

    VaultAccess& access_;
    std::optional<NewVault> made_;
    QByteArray keyring_entry_of_;  ///< vault whose key is in the keyring, though it is not kept yet
    bool busy_ = false;
    QStackedWidget* pages_;
    QComboBox* who_ = nullptr;
    QRadioButton* by_passphrase_ = nullptr;
    QRadioButton* by_keyring_ = nullptr;
    QLineEdit* passphrase_ = nullptr;
    QLineEdit* again_ = nullptr;
    QLabel* hint_ = nullptr;
    RecoveryPage* recovery_;
    QLabel* trouble_;
    QProgressBar* bar_;
    QPushButton* next_;
};

}  // namespace leadline
