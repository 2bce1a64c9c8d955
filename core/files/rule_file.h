// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/physics/result.h"
#include "core/planning/rules.h"

namespace leadline {

/// Reads one rule set (resources/rules/*.json), checked against its schema
/// (resources/schema/rules.schema.json).
/// @returns the set, or the first thing wrong with its place as a JSON pointer
Result<RuleSet> read_rule_set(std::string_view json, std::string_view schema_json);

}  // namespace leadline
