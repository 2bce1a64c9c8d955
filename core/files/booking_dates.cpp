// SPDX-License-Identifier: GPL-3.0-or-later
#include <unicode/dtfmtsym.h>
#include <unicode/locid.h>

#include <algorithm>
#include <charconv>
#include <map>

#include "core/files/booking_values.h"
#include "core/files/digits.h"
#include "core/files/name_folding.h"

namespace leadline {
namespace {

/// Languages whose months are known: those of resources/booking/header-words.json.
constexpr std::array<const char*, 9> month_languages{"en", "es", "fr", "de", "it",
                                                     "pt", "nl", "pl", "sv"};

std::string without_point(std::string word) {
    while (!word.empty() && word.back() == '.') word.pop_back();
    return word;
}

/// Folded month names, long and short, standing alone and within a date, to 1 to 12. A word that
/// is one month here and another there is left out ("sty" is none of them).
std::map<std::string, int> month_names() {
    std::map<std::string, int> names;
    std::map<std::string, int> doubtful;
    using Symbols = icu::DateFormatSymbols;
    for (const char* language : month_languages) {
        UErrorCode code = U_ZERO_ERROR;
        const Symbols symbols(icu::Locale(language), code);
        if (U_FAILURE(code)) continue;
        for (const auto context : {Symbols::FORMAT, Symbols::STANDALONE}) {
            for (const auto width : {Symbols::WIDE, Symbols::ABBREVIATED}) {
                std::int32_t count = 0;
                const icu::UnicodeString* months = symbols.getMonths(count, context, width);
                for (int month = 0; month < std::min(count, 12); ++month) {
                    std::string word;
                    months[month].toUTF8String(word);
                    word = without_point(folded_text(word));
                    const auto [known, is_new] = names.emplace(word, month + 1);
                    if (!is_new && known->second != month + 1) doubtful[word] = 1;
                }
            }
        }
    }
    for (const auto& [word, unused] : doubtful) names.erase(word);
    return names;
}

std::optional<int> month_of(const std::string& word) {
    static const std::map<std::string, int> names = month_names();
    const auto found = names.find(without_point(word));
    return found == names.end() ? std::nullopt : std::optional(found->second);
}

bool separates(char c) { return std::string_view(" ./-,").find(c) != std::string_view::npos; }

/// "1990-07-04T00:00:00", "4.7.1990 0:00": only the date.
std::string_view without_time(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos) return text;
    const std::size_t start = text.find_last_of(" t", colon);
    return start == std::string_view::npos ? text : text.substr(0, start);
}

std::vector<std::string> pieces(std::string_view text) {
    std::vector<std::string> found;
    std::size_t at = 0;
    while (at < text.size()) {
        if (separates(text[at])) {
            ++at;
            continue;
        }
        const bool digits = is_digit(text[at]);
        const std::size_t start = at;
        while (at < text.size() && !separates(text[at]) && is_digit(text[at]) == digits) ++at;
        found.emplace_back(text.substr(start, at - start));
    }
    return found;
}

std::optional<Date> date_of(int year, int month, int day) {
    if (year < 1900 || year > 2200 || month < 1 || month > 12 || day < 1 || day > 31) {
        return std::nullopt;
    }
    const Date date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                    std::chrono::day(static_cast<unsigned>(day))};
    return date.ok() ? std::optional(date) : std::nullopt;
}

struct Places {
    std::size_t year;
    std::size_t month;
    std::size_t day;
};

Places places_of(DateOrder order) {
    switch (order) {
        case DateOrder::day_month_year: return {2, 1, 0};
        case DateOrder::month_day_year: return {2, 0, 1};
        case DateOrder::year_month_day: return {0, 1, 2};
    }
    return {2, 1, 0};
}

}  // namespace

std::optional<DateParts> read_date_parts(std::string_view cell) {
    constexpr std::size_t longest_date = 60;
    if (cell.size() > longest_date) return std::nullopt;
    const std::string folded = folded_text(cell);
    DateParts parts;
    std::size_t count = 0;
    for (const std::string& piece : pieces(without_time(folded))) {
        const bool number = is_digit(piece.front());
        // "4 de julio de 1990", "4th", "1er".
        if (!number && count > 0 && (piece == "de" || piece == "of" || piece == "st" ||
                                     piece == "nd" || piece == "rd" || piece == "th" ||
                                     piece == "er" || piece == "r")) {
            continue;
        }
        if (count == parts.numbers.size()) return std::nullopt;
        if (number) {
            if (piece.size() != 4 && piece.size() > 2) return std::nullopt;
            std::from_chars(piece.data(), piece.data() + piece.size(), parts.numbers[count]);
            parts.digits[count] = static_cast<int>(piece.size());
        } else {
            const std::optional<int> month = month_of(piece);
            if (!month || parts.named_month) return std::nullopt;
            parts.numbers[count] = *month;
            parts.named_month = static_cast<int>(count);
        }
        ++count;
    }
    return count == parts.numbers.size() ? std::optional(parts) : std::nullopt;
}

std::optional<ReadDate> date_in_order(const DateParts& parts, DateOrder order, Date latest) {
    const Places at = places_of(order);
    if (parts.named_month && *parts.named_month != static_cast<int>(at.month)) return std::nullopt;
    if (parts.digits[at.month] > 2 || parts.digits[at.day] > 2 || parts.digits[at.year] == 0) {
        return std::nullopt;
    }
    const int month = parts.numbers[at.month];
    const int day = parts.numbers[at.day];
    const int year = parts.numbers[at.year];
    if (parts.digits[at.year] == 4) {
        const std::optional<Date> date = date_of(year, month, day);
        return date ? std::optional(ReadDate{*date, false}) : std::nullopt;
    }
    for (const int century : {2100, 2000, 1900}) {
        const std::optional<Date> date = date_of(century + year, month, day);
        if (date && *date <= latest) return ReadDate{*date, true};
    }
    return std::nullopt;
}

std::optional<ReadDate> evident_date(const DateParts& parts, Date latest) {
    if (parts.digits[0] == 4) return date_in_order(parts, DateOrder::year_month_day, latest);
    if (!parts.named_month) return std::nullopt;
    const bool month_first = *parts.named_month == 0;
    return date_in_order(
        parts, month_first ? DateOrder::month_day_year : DateOrder::day_month_year, latest);
}

}  // namespace leadline
