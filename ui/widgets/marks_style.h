// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace leadline {

/// Fusion with a ring around check boxes and radio buttons that can be seen in the dark look too.
class MarksStyle : public QProxyStyle {
    Q_OBJECT
public:
    MarksStyle();
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
};

}  // namespace leadline
