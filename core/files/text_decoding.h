// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace leadline {

enum class TextEncoding { utf8, utf16, windows_1252 };

/// A text as UTF-8, and how it was written.
struct DecodedText {
    std::string text;  ///< valid UTF-8 without byte order mark; what could not be read is U+FFFD
    TextEncoding encoding = TextEncoding::utf8;
};

/// Reads text in the encodings spreadsheets write: UTF-8 with or without byte order mark, UTF-16
/// with one, and, where it is neither, Windows-1252. That last one is a guess, since every byte is
/// a letter in it: say so to the user.
/// @param bytes  of any length below 2^31 and any content
DecodedText decode_text(std::string_view bytes);

}  // namespace leadline
