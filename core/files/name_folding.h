// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace leadline {

/// A text with what people spell differently made alike: lower case, no accents, letters that do
/// not come apart spelled plainly (ø o, ł l, ß ss, æ ae), one apostrophe for all, single spaces.
/// "Łukasz  Ærø" becomes "lukasz aero". For comparing only: it makes different names alike.
/// @source  Unicode Standard Annex #15 (normalization forms) and Unicode Standard, section 3.13
///          (default caseless matching), through ICU; the letters by common practice
std::string folded_text(std::string_view text);

/// A name ready to be compared.
struct FoldedName {
    std::u32string in_order;  ///< as written, folded
    std::u32string sorted;    ///< its words by alphabet, so that "Lind, Mara" is "Mara Lind"
    /// How often each letter is in it, letters counted in 32 lots: two names that are far apart here
    /// need not be compared letter by letter.
    std::array<std::uint8_t, 32> lots{};
    friend bool operator==(const FoldedName&, const FoldedName&) = default;
};
FoldedName folded_name(std::string_view name);

/// Whether two names may be one, misspelled: the same words in any order, or one slip apart (a
/// letter too many, too few, wrong, or two swapped); two slips where both have 12 letters or more.
/// Empty names are near to none. Common practice, no source.
bool near_names(const FoldedName& a, const FoldedName& b);
/// Whether near_names() needs a closer look at all: false means no, at little cost.
bool maybe_near_names(const FoldedName& a, const FoldedName& b);

}  // namespace leadline
