// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/plain_tip.h"

namespace leadline {

QString plain_tip(const QString& text) {
    if (text.isEmpty()) return {};
    QString escaped = text.toHtmlEscaped();
    escaped.replace(u'\n', QStringLiteral("<br>"));
    return QStringLiteral("<qt>") + escaped + QStringLiteral("</qt>");
}

}  // namespace leadline
