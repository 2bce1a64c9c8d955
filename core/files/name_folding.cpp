// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/name_folding.h"

#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/uniset.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <cstdint>
#include <vector>

namespace leadline {
namespace {

/// The letters whose folding is fixed. Younger ones stay as they are, for that is how they stand in
/// folded texts on record, which must be found again whatever ICU is installed.
const icu::UnicodeSet& letters_folded() {
    static const icu::UnicodeSet letters = [] {
        UErrorCode code = U_ZERO_ERROR;
        icu::UnicodeSet set(u"[:age=14.0:]", code);
        set.freeze();
        return set;
    }();
    return letters;
}

/// What a letter, already in lower case, is searched as, where no normalization takes it apart; null
/// where there is nothing to say.
const char16_t* plain_spelling(UChar32 letter) {
    switch (letter) {
        case U'ø': return u"o";
        case U'ł': return u"l";
        case U'đ':
        case U'ð': return u"d";
        case U'ı': return u"i";
        case U'ς': return u"σ";
        case U'‘':
        case U'’':
        case U'ʼ': return u"'";
        case U'ß': return u"ss";
        case U'æ': return u"ae";
        case U'œ': return u"oe";
        case U'þ': return u"th";
        default: return nullptr;
    }
}

bool is_mark(UChar32 letter) {
    const std::int8_t type = u_charType(letter);
    return type == U_NON_SPACING_MARK || type == U_ENCLOSING_MARK;
}

void append_folded(icu::UnicodeString& text, UChar32 letter) {
    if (u_charType(letter) == U_SURROGATE) {
        text.append(UChar32(0xFFFD));
    } else if (!letters_folded().contains(letter)) {
        text.append(letter);
    } else if (u_isUWhiteSpace(letter)) {
        if (!text.isEmpty() && text[text.length() - 1] != u' ') text.append(u' ');
    } else if (!is_mark(letter)) {
        const UChar32 small = u_tolower(letter);
        if (const char16_t* plain = plain_spelling(small)) {
            text.append(plain, -1);
        } else {
            text.append(small);
        }
    }
}

icu::UnicodeString folded(const icu::UnicodeString& text) {
    UErrorCode code = U_ZERO_ERROR;
    const icu::FilteredNormalizer2 apart(*icu::Normalizer2::getNFKDInstance(code),
                                         letters_folded());
    icu::UnicodeString wide;
    apart.normalize(text, wide, code);
    icu::UnicodeString plain;
    for (std::int32_t at = 0; at < wide.length(); at = wide.moveIndex32(at, 1)) {
        append_folded(plain, wide.char32At(at));
    }
    if (plain.endsWith(u' ')) plain.truncate(plain.length() - 1);
    return plain;
}

/// A text from a list, folded. Spreadsheets carry along what nobody sees (soft hyphens, marks of
/// byte order and direction), and people type accents that stand alone as apostrophes.
icu::UnicodeString folded_cell(std::string_view text) {
    const icu::UnicodeString typed = icu::UnicodeString::fromUTF8(
        icu::StringPiece(text.data(), static_cast<std::int32_t>(text.size())));
    icu::UnicodeString seen;
    for (std::int32_t at = 0; at < typed.length(); at = typed.moveIndex32(at, 1)) {
        const UChar32 letter = typed.char32At(at);
        if (letter == U'`' || letter == U'´') {
            seen.append(u'\'');
        } else if (!u_hasBinaryProperty(letter, UCHAR_DEFAULT_IGNORABLE_CODE_POINT)) {
            seen.append(letter);
        }
    }
    return folded(seen);
}

std::u32string letters_of(const icu::UnicodeString& text) {
    std::u32string letters;
    for (std::int32_t at = 0; at < text.length(); at = text.moveIndex32(at, 1)) {
        letters += static_cast<char32_t>(text.char32At(at));
    }
    return letters;
}

/// Slips between two texts (optimal string alignment: insertion, deletion, substitution, swap of
/// neighbours), or `most` + 1 where there are more. Only the band that can matter is worked out.
/// @source  P. E. Black (ed.), Dictionary of Algorithms and Data Structures, NIST,
///          "Damerau-Levenshtein distance" -- from memory
std::size_t slips(const std::u32string& a, const std::u32string& b, std::size_t most) {
    if (a.size() > b.size()) return slips(b, a, most);
    if (b.size() - a.size() > most) return most + 1;
    std::vector<std::size_t> before(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    std::vector<std::size_t> next(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        const std::size_t from = i > most ? i - most : 1;
        const std::size_t to = std::min(b.size(), i + most);
        std::fill(next.begin(), next.end(), most + 1);
        next[0] = i;
        std::size_t least = i;
        for (std::size_t j = from; j <= to; ++j) {
            std::size_t best = row[j - 1] + (a[i - 1] == b[j - 1] ? 0U : 1U);
            best = std::min({best, row[j] + 1, next[j - 1] + 1});
            const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (swapped) best = std::min(best, before[j - 2] + 1);
            next[j] = best;
            least = std::min(least, best);
        }
        if (least > most) return most + 1;
        before.swap(row);
        row.swap(next);
    }
    return std::min(row[b.size()], most + 1);
}

/// Two in long names.
std::size_t slips_allowed(const std::u32string& a, const std::u32string& b) {
    constexpr std::size_t long_name = 12;
    return std::min(a.size(), b.size()) >= long_name ? 2 : 1;
}

bool near(const std::u32string& a, const std::u32string& b) {
    const std::size_t most = slips_allowed(a, b);
    return slips(a, b, most) <= most;
}

}  // namespace

std::u16string folded(std::u16string_view name) {
    const icu::UnicodeString plain =
        folded(icu::UnicodeString(name.data(), static_cast<std::int32_t>(name.size())));
    return {plain.getBuffer(), static_cast<std::size_t>(plain.length())};
}

std::string folded_text(std::string_view text) {
    std::string plain;
    folded_cell(text).toUTF8String(plain);
    return plain;
}

FoldedName folded_name(std::string_view name) {
    FoldedName folded{letters_of(folded_cell(name)), {}, {}};
    std::vector<std::u32string> words(1);
    for (const char32_t letter : folded.in_order) {
        if (letter == U' ' || letter == U',' || letter == U'-' || letter == U'.') {
            words.emplace_back();
        } else {
            words.back() += letter;
            std::uint8_t& lot = folded.lots[letter % folded.lots.size()];
            if (lot < 255) ++lot;
        }
    }
    std::sort(words.begin(), words.end());
    for (const std::u32string& word : words) {
        if (word.empty()) continue;
        if (!folded.sorted.empty()) folded.sorted += U' ';
        folded.sorted += word;
    }
    return folded;
}

bool maybe_near_names(const FoldedName& a, const FoldedName& b) {
    // A slip changes at most two letters: one goes, another comes.
    int apart = 0;
    for (std::size_t i = 0; i < a.lots.size(); ++i) apart += std::abs(a.lots[i] - b.lots[i]);
    constexpr int most_slips = 2;
    return apart <= 2 * most_slips;
}

bool near_names(const FoldedName& a, const FoldedName& b) {
    if (a.sorted.empty() || b.sorted.empty() || !maybe_near_names(a, b)) return false;
    return a.sorted == b.sorted || near(a.in_order, b.in_order) || near(a.sorted, b.sorted);
}

}  // namespace leadline
