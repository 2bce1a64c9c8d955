// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <string>

namespace leadline {

/// What people typed or pasted, on one line: without control characters and the marks that would turn
/// a name or a number around (as a session file refuses them; numbers pasted from an address book often
/// bring some), and with at most four accents on a letter, more than any language stacks (common
/// practice, no source): a pile of them would be drawn over the lines above.
QString typed_line(const QString& typed);
QString typed_line(const std::string& typed);

/// The first letters of a text, with an ellipsis where that is not all; never a part of a letter.
/// @param longest  UTF-16 units of what is given back, 1 or more
QString beginning(const QString& text, int longest);

/// What people typed, with each number of several groups ("+00 555 0100", "09:30 - 10:30") kept as it
/// is written: it runs from left to right even behind words that run the other way (left-to-right
/// isolate, Unicode Standard Annex 9), and is not broken at the end of a line (no-break spaces).
/// Numbers longer than any that can be dialled may be broken.
QString with_whole_numbers(const QString& typed);

/// The numbers in a text that one could dial, as they are written: at least three digits each.
QStringList dialled_numbers(const QString& typed);

}  // namespace leadline
