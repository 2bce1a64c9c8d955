// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/planning/finding.h"
#include "core/planning/session.h"

namespace leadline {

/// Key under which a decision to go ahead despite a finding is kept. A decision about a caution or a
/// note carries it in its key, so that it never lifts a stop which the same matter grows into.
inline std::string overrule_key(const Finding& finding) {
    return finding.severity == Severity::stop ? key(finding) : "care/" + key(finding);
}

/// Whether a decision covers a finding. One about a stop covers the milder finding too. A plain key,
/// as written before decisions told the two apart, counts as one about a stop.
inline bool covers(const Overrule& overrule, const Finding& finding) {
    return overrule.finding == key(finding) || overrule.finding == overrule_key(finding);
}

}  // namespace leadline
