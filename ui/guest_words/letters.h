// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChar>

namespace leadline {

inline constexpr QChar no_break_space(0x00A0);
inline constexpr QChar narrow_no_break_space(0x202F);

inline bool is_han(QChar letter) { return letter.script() == QChar::Script_Han; }
inline bool is_hiragana(QChar letter) { return letter.script() == QChar::Script_Hiragana; }
/// Hiragana, katakana and the mark of a long vowel, which belongs to both.
inline bool is_kana(QChar letter) {
    constexpr QChar long_vowel(0x30FC);
    return is_hiragana(letter) || letter.script() == QChar::Script_Katakana || letter == long_vowel;
}
/// A letter of Chinese, Japanese or Korean.
inline bool is_east_asian(QChar letter) {
    return is_han(letter) || is_kana(letter) || letter.script() == QChar::Script_Hangul;
}

}  // namespace leadline
