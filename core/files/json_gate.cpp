// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/json_gate.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "core/files/json_place.h"
#include "core/files/text_file.h"

namespace leadline {
namespace {

using nlohmann::json;

constexpr int number_overflow = 406;  // nlohmann's number for "number overflow"

/// "line 3, column 7" of the character that ends after `read` bytes; columns count characters.
std::string line_and_column(std::string_view text, std::size_t read) {
    const std::string_view before = text.substr(0, std::min(read == 0 ? 0 : read - 1, text.size()));
    const auto line = std::count(before.begin(), before.end(), '\n') + 1;
    const std::size_t start = before.rfind('\n');
    const std::string_view last =
        start == std::string_view::npos ? before : before.substr(start + 1);
    const auto column = std::count_if(last.begin(), last.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    });
    return "line " + std::to_string(line) + ", column " + std::to_string(column + 1);
}

/// What the parser says, without its own prefix and without the bytes it choked on, which may be of
/// any length and need not be text.
std::string complaint(std::string_view what) {
    if (const auto start = what.find("error while parsing"); start != std::string_view::npos) {
        what.remove_prefix(start);
    }
    if (const auto end = what.find("; last read:"); end != std::string_view::npos) {
        const auto after = what.find("; expected", end);
        const std::string_view expected =
            after == std::string_view::npos ? std::string_view() : what.substr(after);
        return std::string(what.substr(0, end)) + std::string(expected);
    }
    return std::string(what.substr(0, 200));
}

/// Looks through a document as it is parsed and stops at the first thing that may not come in.
class Gate final : public nlohmann::json_sax<json> {
public:
    explicit Gate(std::string_view text) : text_(text) {}
    [[nodiscard]] const std::optional<Error>& error() const { return error_; }

    bool null() override { return value(); }
    bool boolean(bool /*truth*/) override { return value(); }
    bool number_integer(number_integer_t number) override {
        (void)value();
        return number >= -largest_whole_number || too_large(std::to_string(number));
    }
    bool number_unsigned(number_unsigned_t number) override {
        (void)value();
        return number <= largest_whole_number || too_large(std::to_string(number));
    }
    bool number_float(number_float_t /*number*/, const string_t& /*digits*/) override {
        return value();
    }
    bool string(string_t& text) override { return value() && short_enough(text); }
    bool binary(binary_t& /*bytes*/) override { return value(); }
    bool start_object(std::size_t /*count*/) override { return open(true); }
    bool start_array(std::size_t /*count*/) override { return open(false); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override {
        Level& level = levels_.back();
        level.key = name;
        if (!short_enough(name)) return false;
        if (level.keys.insert(name).second) return true;
        return fail(ErrorCode::duplicate_id, shortened(name), "");
    }
    bool parse_error(std::size_t position, const std::string& last_token,
                     const nlohmann::detail::exception& problem) override {
        if (problem.id == number_overflow) {
            (void)value();
            return fail(ErrorCode::out_of_range, shortened(last_token), "-1.8e308 to 1.8e308");
        }
        error_ = Error{ErrorCode::not_json, line_and_column(text_, position),
                       complaint(problem.what()), ""};
        return false;
    }

private:
    struct Level {
        bool object = false;
        std::string key;
        std::size_t count = 0;  ///< values begun so far in an array
        std::set<std::string> keys;
    };

    [[nodiscard]] std::string place() const {
        std::string pointer;
        for (const Level& level : levels_) {
            if (!level.object && level.count == 0) break;
            pointer += "/" + (level.object ? pointer_part(shortened(level.key))
                                           : std::to_string(level.count - 1));
        }
        return pointer.empty() ? "/" : pointer;
    }
    bool fail(ErrorCode code, std::string given, std::string allowed) {
        error_ = Error{code, place(), std::move(given), std::move(allowed)};
        return false;
    }
    bool value() {
        if (!levels_.empty() && !levels_.back().object) ++levels_.back().count;
        return true;
    }
    bool open(bool object) {
        (void)value();
        if (levels_.size() == static_cast<std::size_t>(deepest_nesting)) {
            return fail(ErrorCode::nested_too_deep, std::to_string(deepest_nesting + 1),
                        std::to_string(deepest_nesting));
        }
        levels_.push_back({object, {}, 0, {}});
        return true;
    }
    bool close() {
        levels_.pop_back();
        return true;
    }
    bool too_large(std::string given) {
        return fail(ErrorCode::out_of_range, std::move(given), "-2^53 to 2^53");
    }
    bool short_enough(const std::string& text) {
        if (text.size() > longest_text) {
            return fail(ErrorCode::bad_text, shortened(text),
                        "0 to " + std::to_string(longest_text) + " bytes");
        }
        // A NUL ends a text early for some readers of it, the schema library among them.
        if (text.find('\0') != std::string::npos) {
            return fail(ErrorCode::bad_text, shortened(printable(text)), "no U+0000");
        }
        return true;
    }

    std::string_view text_;
    std::vector<Level> levels_;
    std::optional<Error> error_;
};

}  // namespace

Result<Done> check_file_version(const json& document, const std::string& key, int version) {
    if (!document.is_object() || !document.contains(key)) return Done{};
    const json& given = document[key];
    if (!given.is_number_integer() || given == version) return Done{};
    return Error{ErrorCode::unsupported_version, "/" + key, given.dump(), std::to_string(version)};
}

std::string shortened(std::string_view text) {
    constexpr std::size_t longest = 60;
    if (text.size() <= longest) return std::string(text);
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
    return std::string(text.substr(0, end)) + "...";
}

Result<json> parse_json(std::string_view text) {
    if (text.size() > largest_text_file) {
        return Error{ErrorCode::file_too_large, "/", std::to_string(text.size()),
                     std::to_string(largest_text_file)};
    }
    Gate gate(text);
    const bool passed = json::sax_parse(text.begin(), text.end(), &gate);
    if (gate.error()) return *gate.error();
    if (!passed) return Error{ErrorCode::not_json, line_and_column(text, 1), "", ""};
    // Cannot fail any more; a discarded value would be refused by every schema.
    return json::parse(text.begin(), text.end(), nullptr, false);
}

}  // namespace leadline
