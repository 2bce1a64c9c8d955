// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

#include "core/physics/result.h"
#include "core/planning/retention.h"
#include "core/planning/rules.h"
#include "core/planning/screening.h"

namespace leadline {

/// Text of a file built into the program: "schema/session.schema.json". Empty when there is none.
std::string resource_text(const QString& name);

/// Every rule set built into the program; the house rules last.
Result<RuleBook> load_rule_book();

/// How long the centre keeps what it knows of a guest.
Result<RetentionRules> load_retention_rules();
/// The health questions built into the program.
Result<Questionnaire> load_questionnaire();

}  // namespace leadline
