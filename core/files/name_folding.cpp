// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/name_folding.h"

#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <cstdint>
#include <vector>

namespace leadline {
namespace {

/// Letters that no normalization takes apart; null where there is nothing to say.
const char32_t* plain_spelling(UChar32 letter) {
    switch (letter) {
        case 0x00E6: return U"ae";  // æ
        case 0x00F0:                // ð
        case 0x0111: return U"d";   // đ
        case 0x00F8: return U"o";   // ø
        case 0x00FE: return U"th";  // þ
        case 0x0131: return U"i";   // ı
        case 0x0142: return U"l";   // ł
        case 0x0153: return U"oe";  // œ
        case 0x0060:                // `
        case 0x00B4:                // acute accent standing alone
        case 0x2018:
        case 0x2019:
        case 0x02BC: return U"'";
        default: return nullptr;
    }
}

bool is_space(UChar32 letter) { return u_isUWhiteSpace(letter) != 0; }

std::u32string folded_letters(std::string_view text) {
    UErrorCode code = U_ZERO_ERROR;
    const icu::Normalizer2* case_fold = icu::Normalizer2::getNFKCCasefoldInstance(code);
    const icu::Normalizer2* apart = icu::Normalizer2::getNFDInstance(code);
    icu::UnicodeString wide = icu::UnicodeString::fromUTF8(
        icu::StringPiece(text.data(), static_cast<std::int32_t>(text.size())));
    if (U_SUCCESS(code)) wide = apart->normalize(case_fold->normalize(wide, code), code);
    std::u32string folded;
    for (std::int32_t at = 0; at < wide.length(); at = wide.moveIndex32(at, 1)) {
        const UChar32 letter = wide.char32At(at);
        if (u_charType(letter) == U_NON_SPACING_MARK) continue;
        if (is_space(letter)) {
            if (!folded.empty() && folded.back() != U' ') folded += U' ';
        } else if (const char32_t* plain = plain_spelling(letter)) {
            folded += plain;
        } else {
            folded += static_cast<char32_t>(letter);
        }
    }
    if (!folded.empty() && folded.back() == U' ') folded.pop_back();
    return folded;
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

std::string folded_text(std::string_view text) {
    const std::u32string letters = folded_letters(text);
    std::string folded;
    icu::UnicodeString::fromUTF32(reinterpret_cast<const UChar32*>(letters.data()),
                                  static_cast<std::int32_t>(letters.size()))
        .toUTF8String(folded);
    return folded;
}

FoldedName folded_name(std::string_view name) {
    FoldedName folded{folded_letters(name), {}, {}};
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
