// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdio>
#include <string>

namespace leadline {

/// A number as it stands in an Error: at most six decimals, no trailing zeros, a point whatever the
/// locale. For people the words are made in ui/words.
inline std::string number_text(double value) {
    std::array<char, 352> buffer{};  // the longest finite double has 309 digits before its point
    std::snprintf(buffer.data(), buffer.size(), "%.6f", value);
    std::string text(buffer.data());
    for (char& letter : text) {
        if (letter == ',') letter = '.';
    }
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return text;
}

}  // namespace leadline
