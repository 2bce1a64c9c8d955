// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace leadline {

/// One part of a JSON pointer: "~" and "/" are written "~0" and "~1" (RFC 6901, section 3).
inline std::string pointer_part(std::string_view key) {
    std::string part;
    for (const char c : key) {
        if (c == '~') {
            part += "~0";
        } else if (c == '/') {
            part += "~1";
        } else {
            part += c;
        }
    }
    return part;
}

/// The text with every ASCII control character shown as "\x1f".
inline std::string printable(std::string_view text) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string shown;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x20U && byte != 0x7FU) {
            shown += c;
        } else {
            shown += "\\x";
            shown += digits[byte >> 4U];
            shown += digits[byte & 0x0FU];
        }
    }
    return shown;
}

}  // namespace leadline
