// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>

namespace leadline {

/// Lets a point and a comma both stand for the decimal sign in what is typed into a number box: a
/// keypad has one, the language may write the other, and groups of digits are never shown. Without
/// it Qt takes the other one for a group sign, and 9.5 becomes 9 or 95.
/// @param text    what is typed; the sign in it becomes that of the locale
/// @param suffix  left as it is
/// @returns false when a number without decimals holds such a sign: it is to be refused as a whole
bool settle_decimal_sign(QString& text, const QString& suffix, const QLocale& locale, int decimals);

}  // namespace leadline
