// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/marks_style.h"

#include <QPainter>
#include <QStyleOption>

#include "ui/widgets/theme.h"

namespace leadline {

MarksStyle::MarksStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void MarksStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool radio = element == PE_IndicatorRadioButton;
    if (!radio && element != PE_IndicatorCheckBox) return;
    // Fusion makes the edge from the window's colour, darker: on a dark window nothing is left of it.
    if (shade_of(option->palette) != Shade::dark) return;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setBrush(Qt::NoBrush);
    const bool enabled = option->state.testFlag(State_Enabled);
    painter->setPen(enabled ? inks(option->palette).faint : inks(option->palette).rule);
    const QRectF edge = QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5);
    if (radio) {
        painter->drawEllipse(edge);
    } else {
        painter->drawRect(edge);
    }
    painter->restore();
}

}  // namespace leadline
