// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/schema_failure.h"

#include <algorithm>
#include <cstddef>
#include <regex>
#include <utility>

#include "core/files/json_gate.h"
#include "core/files/json_place.h"

namespace leadline {
namespace {

using nlohmann::json;
using Failure = std::optional<Error>;

constexpr const char* date_form = "YYYY-MM-DD";

std::string shown(const json& value) {
    if (value.is_string()) return shortened(printable(value.get_ref<const std::string&>()));
    if (value.is_structured()) return value.type_name();
    return value.dump();
}

std::string joined(const json& names) {
    std::string text;
    for (const json& name : names) text += (text.empty() ? "" : ", ") + shown(name);
    return text;
}

std::string names_of(const json& object) {
    std::string text;
    for (const auto& [name, unused] : object.items()) text += (text.empty() ? "" : ", ") + name;
    return text;
}

/// "0 to 60", ">= 0" or "<= 60", from two keys of a schema.
std::string range_text(const json& schema, const char* least, const char* most) {
    const bool from = schema.contains(least);
    const bool to = schema.contains(most);
    if (from && to) return schema[least].dump() + " to " + schema[most].dump();
    if (from) return ">= " + schema[least].dump();
    return "<= " + schema[most].dump();
}

bool has_type(const json& value, const std::string& type) {
    if (type == "object") return value.is_object();
    if (type == "array") return value.is_array();
    if (type == "string") return value.is_string();
    if (type == "integer") return value.is_number_integer();
    if (type == "number") return value.is_number();
    if (type == "boolean") return value.is_boolean();
    return value.is_null();
}

std::size_t characters(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

class Finder {
public:
    explicit Finder(const json& root) : root_(root) {}

    Failure find(const json& value, const json& schema, const std::string& place) const {
        if (schema.contains("$ref")) {
            const std::string reference = schema["$ref"].get<std::string>();
            return find(value, root_.at(json::json_pointer(reference.substr(1))), place);
        }
        if (schema.contains("anyOf")) return find(value, meant(value, schema["anyOf"]), place);
        if (Failure failure = wrong_type(value, schema, place)) return failure;
        if (Failure failure = wrong_choice(value, schema, place)) return failure;
        if (value.is_object()) return in_object(value, schema, place);
        if (value.is_array()) return in_array(value, schema, place);
        if (value.is_string()) return in_text(value.get_ref<const std::string&>(), schema, place);
        if (value.is_number()) return in_number(value, schema, place);
        return {};
    }

private:
    static Error error(ErrorCode code, const std::string& place, std::string given,
                       std::string allowed) {
        return {code, place.empty() ? "/" : place, std::move(given), std::move(allowed)};
    }

    /// Of several forms the one of the value's own type; the first when there is none.
    static const json& meant(const json& value, const json& forms) {
        const auto found = std::find_if(forms.begin(), forms.end(), [&](const json& form) {
            return form.contains("type") && has_type(value, form["type"].get<std::string>());
        });
        return found == forms.end() ? forms.front() : *found;
    }

    static Failure wrong_type(const json& value, const json& schema, const std::string& place) {
        if (!schema.contains("type")) return {};
        const std::string wanted = schema["type"].get<std::string>();
        if (has_type(value, wanted)) return {};
        return error(ErrorCode::wrong_type, place, shown(value), wanted);
    }

    static Failure wrong_choice(const json& value, const json& schema, const std::string& place) {
        if (schema.contains("const") && value != schema["const"]) {
            return error(ErrorCode::not_a_choice, place, shown(value), shown(schema["const"]));
        }
        if (!schema.contains("enum")) return {};
        const json& choices = schema["enum"];
        if (std::find(choices.begin(), choices.end(), value) != choices.end()) return {};
        return error(ErrorCode::not_a_choice, place, shown(value), joined(choices));
    }

    Failure in_object(const json& value, const json& schema, const std::string& place) const {
        const json properties = schema.value("properties", json::object());
        for (const auto& [name, child] : value.items()) {
            if (!properties.contains(name)) continue;
            Failure failure = find(child, properties[name], place + "/" + pointer_part(name));
            if (failure) return failure;
        }
        // An unknown name comes before a missing one: a misspelled field is both.
        if (!schema.value("additionalProperties", true)) {
            for (const auto& [name, unused] : value.items()) {
                if (properties.contains(name)) continue;
                return error(ErrorCode::unknown_field, place, shortened(printable(name)),
                             names_of(properties));
            }
        }
        for (const json& name : schema.value("required", json::array())) {
            if (value.contains(name.get<std::string>())) continue;
            return error(ErrorCode::missing_field, place, name.get<std::string>(), "");
        }
        return {};
    }

    Failure in_array(const json& value, const json& schema, const std::string& place) const {
        const std::size_t count = value.size();
        if (count < schema.value("minItems", std::size_t{0}) ||
            (schema.contains("maxItems") && count > schema["maxItems"].get<std::size_t>())) {
            return error(ErrorCode::bad_count, place, std::to_string(count),
                         range_text(schema, "minItems", "maxItems"));
        }
        if (!schema.contains("items")) return {};
        const json& items = schema["items"];
        for (std::size_t i = 0; i < count; ++i) {
            if (items.is_array() && i >= items.size()) break;
            const json& item = items.is_array() ? items[i] : items;
            Failure failure = find(value[i], item, place + "/" + std::to_string(i));
            if (failure) return failure;
        }
        return {};
    }

    static Failure in_text(const std::string& text, const json& schema, const std::string& place) {
        const std::size_t length = characters(text);
        if (length < schema.value("minLength", std::size_t{0}) ||
            (schema.contains("maxLength") && length > schema["maxLength"].get<std::size_t>())) {
            return error(ErrorCode::bad_text, place, shortened(printable(text)),
                         range_text(schema, "minLength", "maxLength") + " characters");
        }
        if (!schema.contains("pattern")) return {};
        const std::string pattern = schema["pattern"].get<std::string>();
        if (std::regex_search(text, std::regex(pattern))) return {};
        const std::string form = schema.value("$comment", pattern);
        return error(form == date_form ? ErrorCode::bad_date : ErrorCode::bad_text, place,
                     shortened(printable(text)), form);
    }

    static Failure in_number(const json& value, const json& schema, const std::string& place) {
        const double number = value.get<double>();
        // A limit that is not there is the number itself, which is never outside it.
        const double least = schema.value("minimum", number);
        const double most = schema.value("maximum", number);
        if (number >= least && number <= most) return {};
        return error(ErrorCode::out_of_range, place, shown(value),
                     range_text(schema, "minimum", "maximum"));
    }

    const json& root_;
};

}  // namespace

std::optional<Error> find_failure(const json& value, const json& schema) {
    return Finder(schema).find(value, schema, "");
}

}  // namespace leadline
