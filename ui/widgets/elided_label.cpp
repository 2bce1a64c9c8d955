// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/elided_label.h"

#include <QPainter>

#include "ui/widgets/plain_tip.h"

namespace leadline {

ElidedLabel::ElidedLabel(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    // The text must not widen the window; it takes what is there.
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void ElidedLabel::show_text(const QString& text) {
    if (text == this->text()) return;
    setText(text);
    setToolTip(plain_tip(text));
}

void ElidedLabel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(palette().color(foregroundRole()));
    painter.drawText(rect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                     fontMetrics().elidedText(text(), Qt::ElideRight, width()));
}

}  // namespace leadline
