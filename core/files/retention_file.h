// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/physics/result.h"
#include "core/planning/retention.h"

namespace leadline {

/// Reads how long records are kept (resources/retention/house.json), checked against its schema
/// (resources/schema/retention.schema.json).
/// @returns the periods, or the first thing wrong with its place as a JSON pointer; duplicate_id for
///          a kind that is there twice, out_of_range where it would be due before it may be removed
Result<RetentionRules> read_retention_rules(std::string_view json, std::string_view schema_json);

}  // namespace leadline
