// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/session_store.h"

// Rows of a session that are about no person: conditions, profile, rule sets, overrules. Reading
// keeps the order in which they were written.

namespace leadline {

Result<Done> write_conditions(const QSqlDatabase& database, SessionRow row,
                              const Conditions& conditions);
Result<Conditions> read_conditions(const QSqlDatabase& database, SessionRow row);

Result<Done> write_profile(const QSqlDatabase& database, SessionRow row, const Profile& profile);
Result<Profile> read_profile(const QSqlDatabase& database, SessionRow row);

Result<Done> write_rule_sets(const QSqlDatabase& database, SessionRow row,
                             const std::vector<RuleSetId>& rule_sets);
Result<std::vector<RuleSetId>> read_rule_sets(const QSqlDatabase& database, SessionRow row);

Result<Done> write_overrules(const QSqlDatabase& database, SessionRow row,
                             const std::vector<Overrule>& overrules);
Result<std::vector<Overrule>> read_overrules(const QSqlDatabase& database, SessionRow row);

}  // namespace leadline
