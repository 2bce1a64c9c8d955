// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

namespace leadline {

/// Heading of a page of the editor: a mark and a word over a line, which is thick, and the word
/// bold, for the page shown.
class PageButton : public QAbstractButton {
    Q_OBJECT
public:
    explicit PageButton(const QString& text, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
};

}  // namespace leadline
