// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/planning/plan.h"

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

}  // namespace leadline
