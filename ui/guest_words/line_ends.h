// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

namespace leadline {

/// Where a line may end by the rules but a reader stumbles, in order; each is an index of the letter
/// that would begin the next line. In Japanese inside a phrase; in Chinese inside a word and before
/// the last letter or two of a text; in both and in Korean between a number and its unit. None in
/// other scripts.
/// @source  phrases: ICU line breaking for Japanese with "lw=phrase" (Unicode Technical Standard 35,
///          part 1, key "lw"; from memory); words: ICU's dictionary; the rest: common practice, no
///          source
std::vector<qsizetype> poor_line_ends(const QString& text);

/// The same text with a word joiner (U+2060) at every poor end, for widgets that break lines on
/// their own.
QString with_good_line_ends(const QString& text);

}  // namespace leadline
