// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <string_view>

#include "core/physics/result.h"

namespace leadline {

/// Validates a value against a JSON Schema (draft-07).
///
/// @param schema_json  the schema's text; a resource of the program
/// @returns Done, or the first failure with its place as a JSON pointer ("/" for the whole
///          document); not_json with the place "schema" when the schema itself cannot be used
Result<Done> check_schema(const nlohmann::json& value, std::string_view schema_json);

}  // namespace leadline
