// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/page_button.h"

#include <QPainter>
#include <QStyle>
#include <algorithm>

#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr int beside_mark = 8;

}  // namespace

PageButton::PageButton(const QString& text, QWidget* parent) : QAbstractButton(parent) {
    setText(text);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize PageButton::sizeHint() const {
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    constexpr int air = 16;
    return {metrics.horizontalAdvance(text()) + metrics.height() + beside_mark + air,
            metrics.height() + air};
}

void PageButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Inks colours = inks(palette());
    QFont shown = font();
    shown.setBold(isChecked());
    painter.setFont(shown);
    const int side = fontMetrics().height();
    const int width_of_text = painter.fontMetrics().size(Qt::TextShowMnemonic, text()).width();
    const int left = std::max(0, (width() - side - beside_mark - width_of_text) / 2);
    icon().paint(&painter, QRect(left, (height() - side) / 2, side, side));
    const QRect room(left + side + beside_mark, 0, width() - left - side - beside_mark, height());
    style()->drawItemText(&painter, room, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextShowMnemonic,
                          palette(), isEnabled(), text(), QPalette::WindowText);
    constexpr int thick = 3;
    constexpr int thin = 1;
    const int line = isChecked() ? thick : thin;
    painter.fillRect(0, height() - line, width(), line,
                     isChecked() ? colours.accent : palette().color(QPalette::Mid));
    if (hasFocus()) {
        painter.setPen(QPen(colours.accent, 2));
        painter.drawRect(rect().adjusted(2, 2, -2, -5));
    }
}

}  // namespace leadline
