// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/sheet/sheets.h"

class QButtonGroup;

namespace leadline {

/// The choice of what to print: one row of buttons, of which one is down. Tab reaches the row, the
/// arrow keys go along it.
class SheetBar : public QWidget {
    Q_OBJECT
public:
    explicit SheetBar(QWidget* parent = nullptr);

    [[nodiscard]] SheetKind kind() const;
    void choose(SheetKind kind);

Q_SIGNALS:
    void chosen(leadline::SheetKind kind);

private:
    QButtonGroup* buttons_;
};

}  // namespace leadline
