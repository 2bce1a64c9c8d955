// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "core/records/sealing.h"

class QLabel;
class QLineEdit;

namespace leadline {

/// Shows a recovery key to be written down, printed or saved as a PDF, and asks for one group of it
/// as a proof that this was done.
class RecoveryPage : public QWidget {
    Q_OBJECT
public:
    explicit RecoveryPage(QWidget* parent);
    /// @param records  where the records lie; for the paper
    void show_key(SecretBytes key, const QString& records);
    /// Lets go of the key and blanks what shows it.
    void forget();
    [[nodiscard]] const SecretBytes& key() const { return key_; }
    /// Whether the group asked for was typed.
    [[nodiscard]] bool is_confirmed() const;

    /// Asks where the PDF goes; replaced in tests.
    std::function<QString()> choose_pdf_path;

Q_SIGNALS:
    void confirmed_changed();

private:
    void save_pdf();
    void print();

    SecretBytes key_;
    QString records_;
    std::vector<QLabel*> groups_;
    int asked_ = 0;
    QLabel* question_;
    QLineEdit* answer_;
    QLabel* said_;
};

}  // namespace leadline
