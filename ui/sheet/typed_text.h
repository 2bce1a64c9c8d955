// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace leadline {

/// What people typed, with each number of several groups ("+00 555 0100", "09:30 - 10:30") kept as it
/// is written: it runs from left to right even behind words that run the other way (left-to-right
/// isolate, Unicode Standard Annex 9), and is not broken at the end of a line (no-break spaces).
/// Numbers longer than any that can be dialled may be broken.
QString with_whole_numbers(const QString& typed);

/// The numbers in a text that one could dial, as they are written: at least three digits each.
QStringList dialled_numbers(const QString& typed);

}  // namespace leadline
