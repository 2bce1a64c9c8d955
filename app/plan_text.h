// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/debrief/review.h"
#include "core/planning/plan.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// The plan as plain text for a terminal: readiness, the place, groups, guests and findings.
QString plan_text(const Session& session, const Plan& plan, UnitSystem units);

/// The review as plain text: planned against actual for each guest, and findings.
QString review_text(const Session& session, const Review& review, UnitSystem units);

/// The findings as plain text, one a paragraph.
QString findings_text(const Session& session, const std::vector<Finding>& findings,
                      UnitSystem units);

}  // namespace leadline
