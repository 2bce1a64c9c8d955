// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/files/enum_names.h"
#include "core/files/json_gate.h"
#include "core/files/json_place.h"
#include "core/physics/result.h"

namespace leadline {

/// A number freed of the noise of arithmetic: six decimals, where what they leave out is no more
/// than the rounding of arithmetic (1e-12, or 1e-12 of a value above one), so that 18 degrees
/// Celsius stay 18 after their way through kelvin; otherwise all its digits, so that nothing typed
/// is lost.
inline double tidy(double value) {
    const double rounded = std::round(value * 1e6) / 1e6;
    const double noise = 1e-12 * std::max(1.0, std::abs(value));
    // Adding zero turns a negative zero into a plain one.
    return (std::abs(rounded - value) <= noise ? rounded : value) + 0.0;
}

/// A number as it is written into a file: tidy, and without a point where it is whole.
inline nlohmann::ordered_json number_json(double value) {
    const double number = tidy(value);
    const bool exact = std::abs(number) < static_cast<double>(largest_whole_number);
    if (exact && number == std::floor(number)) {
        return static_cast<std::int64_t>(number);
    }
    return number;
}

enum class TextForm { line, lines };

/// The text with every control character replaced by a space: C0 and C1 controls, line and
/// paragraph separators, and the overrides that turn the direction of text and with it the meaning
/// of a name or a number (U+202A-U+202E, U+2066-U+2069). In several lines tabs and line feeds stay.
/// @param text  valid UTF-8; what is not is left as it is
std::string without_controls(std::string_view text, TextForm form);

/// Reads the fields of one JSON object whose types a schema has checked. The first failure that no
/// schema can see (a bad date, a control character) is kept in a slot shared by all readers of one
/// document; later ones are dropped.
class FieldReader {
public:
    FieldReader(const nlohmann::json& object, std::string place, std::optional<Error>& error)
        : object_(object), place_(std::move(place)), error_(error) {}

    [[nodiscard]] bool has(const char* key) const { return object_.contains(key); }
    [[nodiscard]] bool holds_object(const char* key) const {
        return has(key) && object_.at(key).is_object();
    }
    [[nodiscard]] std::string place(const char* key) const {
        return place_ + "/" + pointer_part(key);
    }
    [[nodiscard]] FieldReader object(const char* key) const {
        return {has(key) ? object_.at(key) : empty(), place(key), error_};
    }

    [[nodiscard]] double number(const char* key) const { return object_.at(key).get<double>(); }
    [[nodiscard]] int whole(const char* key) const { return object_.at(key).get<int>(); }
    [[nodiscard]] bool truth(const char* key) const { return object_.value(key, false); }
    /// A single line; empty when it is not there.
    [[nodiscard]] std::string line(const char* key) const { return text(key, TextForm::line); }
    /// Text that may have line breaks; empty when it is not there.
    [[nodiscard]] std::string lines(const char* key) const { return text(key, TextForm::lines); }
    template <typename Key>
    [[nodiscard]] Key id(const char* key) const {
        return Key(line(key));
    }
    /// An enumerator by its name; the type's first where the field is not there.
    template <typename Enum>
    [[nodiscard]] Enum choice(const char* key, Enum otherwise = Enum{}) const {
        if (!has(key)) return otherwise;
        const std::string name = object_.at(key).get<std::string>();
        const std::optional<Enum> value = enum_value<Enum>(name);
        if (!value) fail({ErrorCode::not_a_choice, place(key), name, ""});
        return value.value_or(otherwise);
    }
    /// Calls `read(number)` and gives its result where the field is there.
    template <typename Read>
    [[nodiscard]] auto optional_number(const char* key, Read read) const
        -> std::optional<decltype(read(0.0))> {
        if (!has(key)) return std::nullopt;
        return read(number(key));
    }
    /// The value of a parser for text (a date, a time of day), or a default and the error kept.
    template <typename Parse>
    [[nodiscard]] auto parsed(const char* key, Parse parse) const {
        const std::string text = object_.at(key).get<std::string>();
        auto result = parse(text, place(key));
        if (!result) fail(result.error());
        using Value = std::remove_cvref_t<decltype(result.value())>;
        return result ? result.value() : Value{};
    }
    /// Calls `read(item, place)` for each item of a list; nothing when the list is not there.
    template <typename Read>
    void each(const char* key, Read read) const {
        if (!has(key)) return;
        const nlohmann::json& list = object_.at(key);
        for (std::size_t i = 0; i < list.size(); ++i) {
            read(list.at(i), place(key) + "/" + std::to_string(i));
        }
    }
    void fail(Error error) const {
        if (!error_) error_ = std::move(error);
    }
    [[nodiscard]] std::optional<Error>& error_slot() const { return error_; }

private:
    [[nodiscard]] std::string text(const char* key, TextForm form) const;
    static const nlohmann::json& empty() {
        static const nlohmann::json object = nlohmann::json::object();
        return object;
    }

    const nlohmann::json& object_;
    std::string place_;
    std::optional<Error>& error_;
};

}  // namespace leadline
