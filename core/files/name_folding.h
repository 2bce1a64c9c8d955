// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace leadline {

/// A name with what people spell differently made alike: compatibility forms taken apart (NFKD),
/// accents and other nonspacing and enclosing marks stripped, lower case, the letters that do not
/// come apart spelled out (ø o, ł l, ß ss, æ ae, œ oe, ı i, đ d, ð d, þ th, ς σ), one apostrophe for
/// all, single spaces. "Łukasz  Ærø" becomes "lukasz aero". For searching and comparing only: it
/// makes different names alike. Records keep what it gives: it must give the same for ever, so it
/// leaves letters that came after Unicode 14 as they are.
/// @source  Unicode Standard Annex #15 (normalization forms), through ICU; the letters by common
///          practice
std::u16string folded(std::u16string_view name);

/// The same for a text from a list, in UTF-8, without the characters nobody sees, and with accents
/// that stand alone (` and ´) as apostrophes.
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
