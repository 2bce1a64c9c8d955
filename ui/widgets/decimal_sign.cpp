// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/decimal_sign.h"

namespace leadline {

bool settle_decimal_sign(QString& text, const QString& suffix, const QLocale& locale,
                         int decimals) {
    const QString point = locale.decimalPoint();
    if (point.size() != 1) return true;
    const qsizetype end =
        !suffix.isEmpty() && text.endsWith(suffix) ? text.size() - suffix.size() : text.size();
    for (qsizetype i = 0; i < end; ++i) {
        if (text[i] != u'.' && text[i] != u',') continue;
        if (decimals == 0) return false;
        text[i] = point.front();
    }
    return true;
}

}  // namespace leadline
