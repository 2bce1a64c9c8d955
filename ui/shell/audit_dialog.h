// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QLabel;
class QTableView;

namespace leadline {

class AuditModel;
class VaultAccess;

/// The audit trail of the health vault, and whether it is whole.
class AuditDialog : public QDialog {
    Q_OBJECT
public:
    AuditDialog(VaultAccess& access, QWidget* parent);

private:
    void fill();

    VaultAccess& access_;
    AuditModel* model_;
    QTableView* table_;
    QLabel* mark_;
    QLabel* verdict_;
};

}  // namespace leadline
