// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QLabel;
class QPushButton;

namespace leadline {

class RecoveryPage;
class VaultAccess;

/// Makes a new recovery key for the open vault. The old one opens it until a group of the new one
/// was typed.
class RecoveryKeyDialog : public QDialog {
    Q_OBJECT
public:
    RecoveryKeyDialog(VaultAccess& access, QWidget* parent);
    ~RecoveryKeyDialog() override;
    [[nodiscard]] RecoveryPage* page() const { return page_; }

private:
    void keep();

    VaultAccess& access_;
    RecoveryPage* page_;
    QLabel* trouble_;
    QPushButton* keep_;
};

}  // namespace leadline
