// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/booking_words.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <utility>

#include "core/files/json_gate.h"
#include "core/files/json_place.h"
#include "core/files/name_folding.h"

namespace leadline {
namespace {

using nlohmann::json;

constexpr int words_version = 1;

constexpr std::array<std::pair<std::string_view, BookingField>, 13> field_names{{
    {"name", BookingField::name},
    {"first_name", BookingField::first_name},
    {"last_name", BookingField::last_name},
    {"birth_date", BookingField::birth_date},
    {"age", BookingField::age},
    {"language", BookingField::language},
    {"mass", BookingField::mass},
    {"height", BookingField::height},
    {"shoe_size", BookingField::shoe_size},
    {"phone", BookingField::phone},
    {"email", BookingField::email},
    {"dives", BookingField::dives},
    {"note", BookingField::note},
}};

std::optional<BookingField> field_of(std::string_view name) {
    for (const auto& [known, field] : field_names) {
        if (known == name) return field;
    }
    return std::nullopt;
}

bool is_separator(char c) {
    return std::string_view(" \t\n()[]{}:;,./\\|_-*#?\"&+").find(c) != std::string_view::npos;
}

std::vector<std::string> words_of(std::string_view folded) {
    std::vector<std::string> words(1);
    for (const char c : folded) {
        if (!is_separator(c)) {
            words.back() += c;
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    if (words.back().empty()) words.pop_back();
    return words;
}

/// Words with single spaces between, so that "e-mail", "E mail" and "e_mail" are one.
std::string joined(const std::vector<std::string>& words, std::size_t from, std::size_t count) {
    std::string text;
    for (std::size_t i = from; i < from + count; ++i) {
        if (!text.empty()) text += ' ';
        text += words[i];
    }
    return text;
}

/// Calls `take(word, place)` for every text of an object of lists by language.
template <typename Take>
std::optional<Error> each_word(const json& languages, const std::string& place, Take take) {
    if (!languages.is_object()) {
        return Error{ErrorCode::wrong_type, place, languages.type_name(), "object"};
    }
    for (const auto& [language, list] : languages.items()) {
        const std::string at = place + "/" + pointer_part(language);
        if (!list.is_array()) return Error{ErrorCode::wrong_type, at, list.type_name(), "array"};
        for (const json& word : list) {
            if (!word.is_string()) {
                return Error{ErrorCode::wrong_type, at, word.type_name(), "string"};
            }
            const std::vector<std::string> parts =
                words_of(folded_text(word.get_ref<const std::string&>()));
            take(joined(parts, 0, parts.size()));
        }
    }
    return std::nullopt;
}

bool among(const std::vector<std::string>& words, std::initializer_list<std::string_view> wanted) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return std::find(wanted.begin(), wanted.end(), word) != wanted.end();
    });
}

bool is_unit(const std::string& word) {
    return among({word}, {"kg", "kgs", "lb", "lbs", "cm", "m", "ft", "in", "inch", "inches", "feet",
                          "eu", "pounds", "libras", "funty", "kilo", "kilos"});
}

std::optional<MassUnit> mass_unit_of(const std::vector<std::string>& words) {
    const bool kilograms = among(words, {"kg", "kgs", "kilo", "kilos"});
    const bool pounds = among(words, {"lb", "lbs", "pounds", "libras", "funty"});
    if (kilograms == pounds) return std::nullopt;
    return kilograms ? MassUnit::kilograms : MassUnit::pounds;
}

std::optional<HeightUnit> height_unit_of(const std::vector<std::string>& words) {
    const bool centimeters = among(words, {"cm"});
    const bool meters = among(words, {"m"});
    const bool feet = among(words, {"ft", "feet"});
    // "in" is also a word of its own: "Altezza in cm".
    const bool inches = among(words, {"inch", "inches"}) ||
                        (among(words, {"in"}) && !centimeters && !meters);
    if (int(centimeters) + int(meters) + int(feet || inches) != 1) return std::nullopt;
    if (centimeters) return HeightUnit::centimeters;
    if (meters) return HeightUnit::meters;
    return feet ? HeightUnit::feet_and_inches : HeightUnit::inches;
}

/// "dd", "mm", "yyyy" and what they are in other languages. The month is "mm" in all of them; the
/// year has four letters.
std::optional<DateOrder> date_order_of(const std::vector<std::string>& words) {
    const auto all_one = [](const std::string& word, std::string_view letters) {
        return !word.empty() && letters.find(word.front()) != std::string_view::npos &&
               word.find_first_not_of(word.front()) == std::string::npos;
    };
    for (std::size_t i = 0; i + 3 <= words.size(); ++i) {
        const auto is_year = [&](std::size_t at) {
            return words[i + at].size() == 4 && all_one(words[i + at], "yajr");
        };
        const auto is_day = [&](std::size_t at) {
            return words[i + at].size() <= 2 && all_one(words[i + at], "dtgj");
        };
        const auto is_month = [&](std::size_t at) {
            return words[i + at].size() <= 2 && all_one(words[i + at], "m");
        };
        if (is_day(0) && is_month(1) && is_year(2)) return DateOrder::day_month_year;
        if (is_month(0) && is_day(1) && is_year(2)) return DateOrder::month_day_year;
        if (is_year(0) && is_month(1) && is_day(2)) return DateOrder::year_month_day;
    }
    return std::nullopt;
}

void add_fields(std::vector<BookingField>& to, const std::vector<BookingField>& more) {
    for (const BookingField field : more) {
        if (std::find(to.begin(), to.end(), field) == to.end()) to.push_back(field);
    }
}

}  // namespace

Result<BookingWords> read_booking_words(std::string_view text) {
    const Result<json> document = parse_json(text);
    if (!document) return document.error();
    if (!document->is_object() || !document->contains("fields") ||
        !document->contains("somebody_else")) {
        return Error{ErrorCode::missing_field, "/", "fields", ""};
    }
    const json version = document->value("leadline_booking_words", json());
    if (version != words_version) {
        return Error{ErrorCode::unsupported_version, "/leadline_booking_words", version.dump(),
                     std::to_string(words_version)};
    }
    BookingWords words;
    const json& fields = document->at("fields");
    if (!fields.is_object()) {
        return Error{ErrorCode::wrong_type, "/fields", fields.type_name(), "object"};
    }
    for (const auto& [name, languages] : fields.items()) {
        const std::optional<BookingField> field = field_of(name);
        if (!field) return Error{ErrorCode::unknown_field, "/fields", name, ""};
        const auto error = each_word(languages, "/fields/" + name, [&](const std::string& word) {
            add_fields(words.fields[word], {*field});
        });
        if (error) return *error;
    }
    const auto error =
        each_word(document->at("somebody_else"), "/somebody_else",
                  [&](const std::string& word) { words.somebody_else.insert(word); });
    if (error) return *error;
    return words;
}

HeaderMeaning read_header(std::string_view header, const BookingWords& known) {
    // No header has more letters than this; what is longer is no header and costs no time.
    constexpr std::size_t longest_header = 120;
    HeaderMeaning meaning;
    if (header.size() > longest_header) return meaning;
    const std::vector<std::string> all = words_of(folded_text(header));
    meaning.mass_unit = mass_unit_of(all);
    meaning.height_unit = height_unit_of(all);
    meaning.date_order = date_order_of(all);
    std::vector<std::string> words;
    std::copy_if(all.begin(), all.end(), std::back_inserter(words),
                 [](const std::string& word) { return !is_unit(word); });
    for (const std::vector<std::string>& form : {all, words}) {
        const auto found = known.fields.find(joined(form, 0, form.size()));
        if (found == known.fields.end()) continue;
        meaning.fields = found->second;
        meaning.exact = true;
        return meaning;
    }
    const bool of_another = std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return known.somebody_else.contains(word);
    });
    if (of_another) return meaning;
    for (std::size_t count = words.size(); count > 0; --count) {
        for (std::size_t from = 0; from + count <= words.size(); ++from) {
            const auto found = known.fields.find(joined(words, from, count));
            if (found != known.fields.end()) add_fields(meaning.fields, found->second);
        }
    }
    return meaning;
}

}  // namespace leadline
