// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/text_decoding.h"

#include <unicode/unistr.h>
#include <unicode/utf8.h>

#include <cstdint>

namespace leadline {
namespace {

std::string to_utf8(const icu::UnicodeString& wide) {
    std::string text;
    wide.toUTF8String(text);
    return text;
}

std::string converted(std::string_view bytes, const char* encoding) {
    return to_utf8(
        icu::UnicodeString(bytes.data(), static_cast<std::int32_t>(bytes.size()), encoding));
}

bool is_utf8(std::string_view text) {
    const auto* bytes = reinterpret_cast<const std::uint8_t*>(text.data());
    const auto length = static_cast<std::int32_t>(text.size());
    std::int32_t at = 0;
    while (at < length) {
        UChar32 letter = 0;
        U8_NEXT(bytes, at, length, letter);
        if (letter < 0) return false;
    }
    return true;
}

}  // namespace

DecodedText decode_text(std::string_view bytes) {
    if (bytes.starts_with("\xEF\xBB\xBF")) {
        bytes.remove_prefix(3);
    } else if (bytes.starts_with("\xFF\xFE")) {
        return {converted(bytes.substr(2), "UTF-16LE"), TextEncoding::utf16};
    } else if (bytes.starts_with("\xFE\xFF")) {
        return {converted(bytes.substr(2), "UTF-16BE"), TextEncoding::utf16};
    }
    if (is_utf8(bytes)) return {std::string(bytes), TextEncoding::utf8};
    return {converted(bytes, "windows-1252"), TextEncoding::windows_1252};
}

}  // namespace leadline
