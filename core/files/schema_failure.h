// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "core/physics/result.h"

namespace leadline {

/// Where and why a value breaks a schema, for one that a validator has refused: the first failure
/// in the order of the fields' names, the most deeply nested one before those around it.
///
/// Knows the words of JSON Schema draft-07 that the project's schemas use: $ref within the
/// document, type, const, enum, properties, required, additionalProperties false, items, minItems,
/// maxItems, minimum, maximum, minLength, maxLength, pattern. "$comment" beside a pattern names the
/// form wanted; where that is YYYY-MM-DD, the text is a date. ("format" would say so, too, but the
/// validator builds its regular expression for it anew for every date.)
///
/// @returns missing_field, unknown_field, wrong_type, out_of_range, not_a_choice, bad_text,
///          bad_count or bad_date with place, given and allowed; none when nothing was found
std::optional<Error> find_failure(const nlohmann::json& value, const nlohmann::json& schema);

}  // namespace leadline
