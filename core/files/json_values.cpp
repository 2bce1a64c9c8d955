// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/json_values.h"



#include "core/files/json_gate.h"

namespace leadline {
namespace {

/// Length of the control character that the text begins with, in bytes of UTF-8; 0: none there.
std::size_t control_length(std::string_view text, TextForm form) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
    };
    const unsigned first = byte(0);
    if (form == TextForm::lines && (first == '\n' || first == '\t')) return 0;
    if (first < 0x20U || first == 0x7FU) return 1;
    if (first == 0xC2U && byte(1) >= 0x80U && byte(1) <= 0x9FU) return 2;  // U+0080 to U+009F
    if (first != 0xE2U) return 0;
    const bool separator_or_turn = byte(1) == 0x80U && byte(2) >= 0xA8U && byte(2) <= 0xAEU;
    const bool isolate = byte(1) == 0x81U && byte(2) >= 0xA6U && byte(2) <= 0xA9U;
    return separator_or_turn || isolate ? 3 : 0;  // U+2028 to U+202E, U+2066 to U+2069
}

}  // namespace

std::string without_controls(std::string_view text, TextForm form) {
    std::string plain;
    plain.reserve(text.size());
    while (!text.empty()) {
        const std::size_t control = control_length(text, form);
        plain += control > 0 ? ' ' : text.front();
        text.remove_prefix(std::max<std::size_t>(control, 1));
    }
    return plain;
}

std::string FieldReader::text(const char* key, TextForm form) const {
    if (!has(key)) return {};
    std::string value = object_.at(key).get<std::string>();
    if (without_controls(value, form) != value) {
        fail({ErrorCode::bad_text, place(key), shortened(printable(value)),
              "no control characters"});
    }
    return value;
}

}  // namespace leadline
