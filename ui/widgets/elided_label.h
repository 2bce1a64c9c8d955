// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace leadline {

/// One line of plain text that is cut to the room there is; the tooltip has all of it.
class ElidedLabel : public QLabel {
    Q_OBJECT
public:
    explicit ElidedLabel(QWidget* parent = nullptr);
    void show_text(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace leadline
