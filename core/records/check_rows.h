// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planning/screening.h"
#include "core/records/statement.h"

namespace leadline {

/// Reads a health check, in the order of the columns screening_outcome, screening_checked_on,
/// screening_edition, screening_checked_by, physician_approval_seen, physician_approval_on,
/// screening_today, screening_signature.
inline HealthCheck read_check(Row& row) {
    HealthCheck check;
    check.outcome = row.choice<ScreeningOutcome>();
    check.checked_on = row.optional_date();
    check.edition = row.text();
    check.checked_by = row.text();
    check.physician_approval_seen = row.yes();
    check.approval_on = row.optional_date();
    check.today = row.choice<TodayOutcome>();
    check.signature = row.choice<SignatureKind>();
    return check;
}

}  // namespace leadline
