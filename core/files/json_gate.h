// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "core/physics/result.h"

namespace leadline {

/// Deepest nesting of arrays and objects let in.
inline constexpr int deepest_nesting = 32;
/// Longest single text let in, in bytes. Longer than any the schemas allow (2000 characters of up
/// to four bytes), and short enough for the regular expressions that look at it.
inline constexpr std::size_t longest_text = 8192;
/// Largest whole number let in: every one up to it is exact as a double, 2^53.
inline constexpr std::int64_t largest_whole_number = 9007199254740992;

/// Parses JSON from a place that is not trusted. The text is looked through once without building
/// anything, so that size, nesting, doubled keys, over-long texts and numbers that no double holds
/// are refused before memory is spent.
///
/// @returns the value, or the first thing wrong: file_too_large; not_json with "line 3, column 7"
///          as its place; nested_too_deep, duplicate_id (a key used twice in one object),
///          bad_text (over-long, or with a NUL), out_of_range (a number too large) with a JSON
///          pointer as theirs
Result<nlohmann::json> parse_json(std::string_view text);

/// Refuses a file whose version, a whole number under `key`, is another one than `version`, with
/// unsupported_version; what is no version at all is left to the schema.
Result<Done> check_file_version(const nlohmann::json& document, const std::string& key, int version);

/// A text as it goes into an Error: at most about 60 bytes, cut between characters.
std::string shortened(std::string_view text);

}  // namespace leadline
