// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include "core/debrief/review.h"
#include "core/planning/plan.h"

namespace leadline {

/// Makes words of a finding; the core itself has none.
struct FindingWords {
    std::string what;
    std::string remedy;
};
using FindingSpeaker = std::function<FindingWords(const Finding&)>;

/// The plan as JSON. Every quantity has its unit in its key: "bottom_pressure_bar". Contains
/// environment, limits, guests, groups, findings and readiness.
std::string plan_to_json(const Session& session, const Plan& plan, const FindingSpeaker& speak);

/// The review as JSON, likewise.
std::string review_to_json(const Session& session, const Review& review,
                           const FindingSpeaker& speak);

}  // namespace leadline
