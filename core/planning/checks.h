// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/planning/exposure.h"
#include "core/planning/lead.h"
#include "core/planning/plan.h"
#include "core/planning/warmth_plan.h"

namespace leadline {

/// What the checks look at.
struct CheckContext {
    const Session& session;
    const RuleBook& rules;
    const Environment& environment;
    const Limits& limits;
};

/// The limit of a kind that a value breaks: first among the rules that stop a dive, then among those
/// that call for care, then among notes, so that a strict advice never hides a broken law.
/// @param breaks  whether a rule's value is broken
std::optional<Limit> broken_limit(const RuleBook& rules, const std::vector<RuleSetId>& chosen,
                                  RuleKind kind, std::optional<int> age,
                                  const std::function<bool(const Rule&)>& breaks);
std::optional<Limit> broken_limit(const CheckContext& context, RuleKind kind,
                                  std::optional<int> age,
                                  const std::function<bool(const Rule&)>& breaks);

/// A finding from a broken limit.
Finding finding_of(FindingCode code, Subject subject, const Limit& limit,
                   std::vector<FindingValue> values);

std::vector<Finding> check_place(const CheckContext& context);   ///< depth, water, sea, profile
std::vector<Finding> check_people(const CheckContext& context);  ///< age, screening, groups, kit
std::vector<Finding> check_gas(const CheckContext& context, const std::vector<GuestGas>& guests,
                               const std::vector<GroupGas>& groups);
/// Groups that will hardly finish as planned, and instructors whose air may not bring two up.
std::vector<Finding> check_forecast(const CheckContext& context,
                                    const std::vector<GroupForecast>& forecasts);
/// Warmth and lead. A guest with a gap has no finding: nothing is known.
std::vector<Finding> check_body(const CheckContext& context,
                                const std::vector<GuestWarmth>& warmths,
                                const std::vector<GuestLead>& leads);
/// Dives, ascents and days of those who dive now, against the rules; a dive that needs a stop.
std::vector<Finding> check_staff(const CheckContext& context,
                                 const std::vector<StaffExposure>& staff);

}  // namespace leadline
