// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/booking_values.h"

#include <unicode/uloc.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <utility>

#include "core/files/digits.h"
#include "core/files/name_folding.h"

namespace leadline {
namespace {

constexpr double inches_a_foot = 12.0;
constexpr double meters_an_inch = 0.0254;   // exact, international inch of 1959
constexpr double kilograms_a_pound = 0.45359237;  // exact, international pound of 1959

/// A number or a run of anything else but spaces.
struct Piece {
    std::optional<double> number;
    std::string word;
};

/// "5ft 9in" -> 5, "ft", 9, "in". None where a number is none.
std::optional<std::vector<Piece>> pieces_of(std::string_view cell) {
    constexpr std::size_t longest_quantity = 40;
    if (cell.size() > longest_quantity) return std::nullopt;
    const std::string text = folded_text(cell);
    std::vector<Piece> pieces;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t start = at;
        if (text[at] == ' ') {
            ++at;
        } else if (is_digit(text[at])) {
            while (at < text.size() && (is_digit(text[at]) || text[at] == '.' || text[at] == ',')) {
                ++at;
            }
            std::size_t end = at;
            while (!is_digit(text[end - 1])) --end;  // "75." and "5ft," end in no decimals
            const auto number = plain_number(std::string_view(text).substr(start, end - start));
            if (!number) return std::nullopt;
            pieces.push_back({number, {}});
        } else {
            while (at < text.size() && text[at] != ' ' && !is_digit(text[at])) ++at;
            pieces.push_back({std::nullopt, text.substr(start, at - start)});
        }
    }
    return pieces;
}

std::string unit_word(const Piece& piece) {
    std::string word = piece.word;
    while (!word.empty() && word.back() == '.') word.pop_back();
    return word;
}

bool is_feet(const std::string& word) {
    return word == "'" || word == "ft" || word == "feet" || word == "foot" || word == "\xE2\x80\xB2";
}
bool is_inches(const std::string& word) {
    // NFKC takes the double prime and two single ones for the same.
    return word == "\"" || word == "''" || word == "in" || word == "inch" || word == "inches" ||
           word == "\xE2\x80\xB2\xE2\x80\xB2" || word == "\xE2\x80\x9D";
}

/// Inches of 5'9", 5 ft 9 in, 5 ft 9, 5'.
std::optional<double> written_inches(const std::vector<Piece>& pieces) {
    if (pieces.size() < 2 || pieces.size() > 4 || !pieces[0].number) return std::nullopt;
    if (!is_feet(unit_word(pieces[1]))) return std::nullopt;
    double inches = inches_a_foot * *pieces[0].number;
    if (pieces.size() == 2) return inches;
    if (!pieces[2].number || *pieces[2].number >= inches_a_foot) return std::nullopt;
    if (*pieces[0].number != std::floor(*pieces[0].number)) return std::nullopt;
    if (pieces.size() == 4 && !is_inches(unit_word(pieces[3]))) return std::nullopt;
    return inches + *pieces[2].number;
}

/// Languages by name: those a booking list may name, in those it may be written in.
std::map<std::string, std::string> language_names() {
    constexpr std::array named{"en", "es", "fr", "de", "it", "pt", "nl", "pl", "ru", "zh",
                               "ja", "ko", "ar", "sv", "da", "nb", "fi", "cs", "hu", "el",
                               "tr", "he", "hi", "th", "vi", "id", "uk", "ro", "no", "ca",
                               "sk", "sl", "hr", "sr", "bg", "et", "lv", "lt", "is", "eu"};
    constexpr std::array written_in{"en", "es", "fr", "de", "it", "pt", "nl", "pl", "sv"};
    std::map<std::string, std::string> names;
    const auto add = [&](const char* language, const char* in) {
        UErrorCode code = U_ZERO_ERROR;
        std::array<char16_t, 120> buffer{};
        const std::int32_t length = uloc_getDisplayLanguage(
            language, in, buffer.data(), static_cast<std::int32_t>(buffer.size()), &code);
        if (U_FAILURE(code) || length <= 0) return;
        std::string name;
        icu::UnicodeString(buffer.data(), length).toUTF8String(name);
        names.emplace(folded_text(name), language);
    };
    for (const char* language : named) {
        add(language, language);
        for (const char* in : written_in) add(language, in);
    }
    return names;
}

std::optional<std::string> language_of(const std::string& folded) {
    static const std::map<std::string, std::string> names = language_names();
    const auto found = names.find(folded);
    if (found != names.end()) return found->second;
    // A code: the language must be one ICU has a name for, in its short form.
    std::string tag = folded;
    std::replace(tag.begin(), tag.end(), '_', '-');
    const std::size_t end = std::min(tag.find('-'), tag.size());
    if (end < 2 || end > 3 || tag.size() > 10) return std::nullopt;
    const bool letters = std::all_of(tag.begin(), tag.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || c == '-';
    });
    if (!letters) return std::nullopt;
    std::array<char, 16> code{};
    UErrorCode status = U_ZERO_ERROR;
    uloc_getLanguage(tag.substr(0, end).c_str(), code.data(),
                     static_cast<std::int32_t>(code.size()), &status);
    const std::string language = code.data();
    if (U_FAILURE(status) || uloc_getISO3Language(language.c_str())[0] == '\0') {
        return std::nullopt;
    }
    std::string read = language;
    bool region_read = false;
    for (std::size_t at = end; at < tag.size();) {
        const std::size_t next = std::min(tag.find('-', at + 1), tag.size());
        std::string part = tag.substr(at + 1, next - at - 1);
        const auto upper = [](char c) { return static_cast<char>(c - 'a' + 'A'); };
        if (part.size() == 4 && at == end) {  // a script: "zh-Hans"
            part.front() = upper(part.front());
        } else if (part.size() == 2 && !region_read) {
            std::transform(part.begin(), part.end(), part.begin(), upper);
            region_read = true;
        } else {
            return std::nullopt;
        }
        read += '-' + part;
        at = next;
    }
    return read;
}

}  // namespace

std::string trimmed(std::string_view text) {
    constexpr std::string_view no_break_space = "\xC2\xA0";
    constexpr std::string_view spaces = " \t\r\n";
    for (bool more = true; more;) {
        more = false;
        while (!text.empty() && spaces.find(text.front()) != std::string_view::npos) {
            text.remove_prefix(1);
        }
        while (!text.empty() && spaces.find(text.back()) != std::string_view::npos) {
            text.remove_suffix(1);
        }
        if (text.starts_with(no_break_space)) {
            text.remove_prefix(no_break_space.size());
            more = true;
        }
        if (text.ends_with(no_break_space)) {
            text.remove_suffix(no_break_space.size());
            more = true;
        }
    }
    return std::string(text);
}

bool says_nothing(std::string_view cell) {
    if (cell.size() > 8) return false;
    const std::string text = folded_text(trimmed(cell));
    return text.empty() || text == "-" || text == "--" || text == "?" || text == "n/a" ||
           text == "na" || text == "\xE2\x80\x93" || text == "\xE2\x80\x94";
}

std::optional<double> plain_number(std::string_view text) {
    constexpr std::size_t most_digits = 6;
    std::string digits(text);
    std::replace(digits.begin(), digits.end(), ',', '.');
    const std::size_t point = std::min(digits.find('.'), digits.size());
    if (point == 0 || point > most_digits || point + 1 == digits.size()) return std::nullopt;
    double number = 0.0;
    const char* end = digits.data() + digits.size();
    const auto [read, code] =
        std::from_chars(digits.data(), end, number, std::chars_format::fixed);
    if (code != std::errc() || read != end || !is_digit(digits.front())) return std::nullopt;
    return number;
}

std::optional<ReadMass> read_mass(std::string_view cell) {
    const auto pieces = pieces_of(cell);
    if (!pieces || pieces->empty() || pieces->size() > 2 || !(*pieces)[0].number) {
        return std::nullopt;
    }
    ReadMass mass{*(*pieces)[0].number, std::nullopt};
    if (pieces->size() == 1) return mass;
    const std::string unit = unit_word((*pieces)[1]);
    if (unit == "kg" || unit == "kgs" || unit == "kilo" || unit == "kilos") {
        mass.unit = MassUnit::kilograms;
    } else if (unit == "lb" || unit == "lbs" || unit == "pound" || unit == "pounds") {
        mass.unit = MassUnit::pounds;
    } else {
        return std::nullopt;
    }
    return mass;
}

Kilograms mass_of(double number, MassUnit unit) {
    return Kilograms(unit == MassUnit::kilograms ? number : number * kilograms_a_pound);
}

bool is_possible(Kilograms mass) { return mass.value() >= 15.0 && mass.value() <= 250.0; }

std::optional<ReadHeight> read_height(std::string_view cell) {
    const auto pieces = pieces_of(cell);
    if (!pieces || pieces->empty() || !(*pieces)[0].number) return std::nullopt;
    const double number = *(*pieces)[0].number;
    if (pieces->size() == 1) return ReadHeight{number, std::nullopt};
    if (const auto inches = written_inches(*pieces)) return ReadHeight{*inches, HeightUnit::inches};
    const std::string unit = unit_word((*pieces)[1]);
    if (pieces->size() == 2) {
        if (unit == "cm") return ReadHeight{number, HeightUnit::centimeters};
        if (unit == "m") return ReadHeight{number, HeightUnit::meters};
        if (is_inches(unit)) return ReadHeight{number, HeightUnit::inches};
    }
    // "1m75"
    if (pieces->size() == 3 && unit == "m" && (*pieces)[2].number &&
        *(*pieces)[2].number < 100.0 && number == std::floor(number)) {
        return ReadHeight{number + *(*pieces)[2].number / 100.0, HeightUnit::meters};
    }
    return std::nullopt;
}

std::optional<Meters> read_feet_and_inches(std::string_view cell) {
    const auto pieces = pieces_of(cell);
    if (!pieces || pieces->size() < 2) return std::nullopt;
    if (const auto inches = written_inches(*pieces)) return height_of(*inches, HeightUnit::inches);
    const Piece& last = pieces->back();
    const bool joined = pieces->size() == 2 || (pieces->size() == 3 && (*pieces)[1].word == "-");
    const std::optional<double> feet = pieces->front().number;
    if (!joined || !feet || !last.number || *feet != std::floor(*feet) ||
        *last.number >= inches_a_foot) {
        return std::nullopt;
    }
    return height_of(inches_a_foot * *feet + *last.number, HeightUnit::inches);
}

Meters height_of(double number, HeightUnit unit) {
    switch (unit) {
        case HeightUnit::centimeters: return Meters(number / 100.0);
        case HeightUnit::meters: return Meters(number);
        case HeightUnit::inches:
        case HeightUnit::feet_and_inches: return Meters(number * meters_an_inch);
    }
    return Meters(number);
}

bool is_possible(Meters height) {
    // As check() of a session sees it, in centimetres.
    return height.value() * 100.0 >= 80.0 && height.value() * 100.0 <= 250.0;
}

std::optional<std::string> read_language(std::string_view cell) {
    constexpr std::size_t longest_language = 100;
    if (cell.size() > longest_language) return std::nullopt;
    const std::string all = folded_text(trimmed(cell));
    if (auto tag = language_of(all)) return tag;
    const std::size_t end = all.find_first_of(",;/+&(");
    if (end == std::string::npos) return std::nullopt;
    return language_of(folded_text(trimmed(std::string_view(all).substr(0, end))));
}

std::optional<int> read_count(std::string_view cell, int most) {
    const std::optional<double> number = plain_number(trimmed(cell));
    if (!number || *number != std::floor(*number) || *number > most) return std::nullopt;
    return static_cast<int>(*number);
}

std::optional<double> read_shoe_size(std::string_view cell) {
    std::string text = folded_text(trimmed(cell));
    if (text.starts_with("eu")) text = trimmed(std::string_view(text).substr(2));
    if (text.ends_with("eu")) text = trimmed(std::string_view(text).substr(0, text.size() - 2));
    // Sizes between two whole ones.
    static const std::array<std::pair<std::string_view, double>, 3> parts{
        {{"1\xE2\x81\x84" "2", 0.5}, {"1\xE2\x81\x84" "3", 1.0 / 3.0}, {"2\xE2\x81\x84" "3", 2.0 / 3.0}}};
    double part = 0.0;
    for (const auto& [sign, value] : parts) {  // NFKC spells one half as 1, fraction slash, 2
        if (text.size() <= sign.size() + 1 || !text.ends_with(sign)) continue;
        // "41½" comes apart to "411/2": two digits stand before the fraction.
        text = trimmed(std::string_view(text).substr(0, text.size() - sign.size()));
        if (text.size() != 2) return std::nullopt;
        part = value;
    }
    const std::optional<double> number = plain_number(text);
    if (!number || *number + part < 20.0 || *number + part > 55.0) return std::nullopt;
    return *number + part;
}

bool looks_like_email(std::string_view text) {
    const std::size_t at = text.find('@');
    return at != std::string_view::npos && at > 0 && at + 1 < text.size() &&
           text.find('@', at + 1) == std::string_view::npos &&
           text.find_first_of(" \t\n,;<>") == std::string_view::npos;
}

bool looks_like_phone(std::string_view text) {
    const auto digits = std::count_if(text.begin(), text.end(), is_digit);
    return digits >= 5 && text.find_first_not_of("0123456789 +-()./") == std::string_view::npos;
}

std::string phone_key(std::string_view phone) {
    constexpr std::size_t compared = 9;
    constexpr std::size_t fewest = 7;
    std::string digits;
    std::copy_if(phone.begin(), phone.end(), std::back_inserter(digits), is_digit);
    if (digits.size() < fewest) return {};
    return digits.size() > compared ? digits.substr(digits.size() - compared) : digits;
}

}  // namespace leadline
