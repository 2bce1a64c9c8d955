// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/planning/rules.h"
#include "core/planning/session.h"

namespace leadline {

// What stands against one guest by the health check and by consent. Of the session only its date,
// rule sets and overrules are looked at, so that a list of guests to come can be judged without
// loading all of every session.

/// Age on the day of the session; none without a birth date.
std::optional<int> age_on_day(const Session& session, const Guest& guest);

/// Outcome, currency, release, signature and edition of the check before the day, as of the
/// session's date.
std::vector<Finding> check_screening(const Session& session, const RuleBook& rules,
                                     const Guest& guest);
/// A guardian's consent, or the birth date without which nobody can tell.
std::vector<Finding> check_consent(const Session& session, const RuleBook& rules,
                                   const Guest& guest);
/// What the questions of the day came to.
std::vector<Finding> check_today(const Guest& guest);

/// What a guest must still bring, answer, renew or be told before the day: the stops of the two
/// above that nobody has overruled. Empty: nothing.
std::vector<Finding> still_waiting(const Session& session, const RuleBook& rules,
                                   const Guest& guest);

/// For how many months a check counts by the chosen rules that stop a dive, 12 where none says
/// anything; none: no limit that stops.
std::optional<int> screening_months(const Session& session, const RuleBook& rules);

}  // namespace leadline
