// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace leadline {

/// The table of guests: whole rows, several at once; Return opens the editor, Delete removes. The
/// names take the width that the other columns leave.
class GuestTable : public QTableView {
    Q_OBJECT
public:
    explicit GuestTable(QWidget* parent = nullptr);
    /// Gives each column the width its contents are likely to need.
    void fit_columns();

Q_SIGNALS:
    void edit_wanted();
    void remove_wanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void stretch_names();
};

}  // namespace leadline
