// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/checks.h"

namespace leadline {
namespace {

/// The reserve may stand in several sets, as a rule and as a stricter advice: the rule that is broken
/// speaks, not the advice above it.
void check_reserve(const CheckContext& context, const GuestGas& gas, std::vector<Finding>& found) {
    if (!(gas.end_pressure < context.limits.reserve)) return;
    const std::optional<Limit> broken = broken_limit(
        context, RuleKind::reserve_pressure_bar, std::nullopt,
        [&](const Rule& rule) { return gas.end_pressure < Bars(rule.value); });
    Finding finding;
    finding.code = FindingCode::ends_below_reserve;
    finding.severity = broken ? broken->severity : Severity::stop;
    finding.subject = gas.guest;
    finding.values = {gas.end_pressure, broken ? Bars(broken->value) : context.limits.reserve,
                      gas.minutes_to_reserve.value_or(longest_profile)};
    if (broken) {
        finding.rule_set = broken->rule_set;
        finding.source = broken->source;
    }
    found.push_back(finding);
}

void check_guest(const CheckContext& context, const GuestGas& gas, std::vector<Finding>& found) {
    Finding finding;
    finding.subject = gas.guest;
    finding.severity = Severity::stop;
    if (!gas.has_cylinder) {
        finding.code = FindingCode::cylinder_missing;
        found.push_back(finding);
        return;
    }
    check_reserve(context, gas, found);
    if (gas.minimum_gas > context.limits.reserve) {
        finding.code = FindingCode::minimum_gas_above_reserve;
        finding.severity = Severity::caution;
        finding.values = {gas.minimum_gas, context.limits.reserve};
        found.push_back(finding);
    }
}

void check_staff(const CheckContext& context, const GroupGas& gas, std::vector<Finding>& found) {
    const Group* group = find_group(context.session, gas.group);
    if (group == nullptr || find_staff(context.session, group->instructor) == nullptr) return;
    if (guests_in(context.session, group->id).empty()) return;
    Finding finding;
    finding.subject = group->instructor;
    if (!gas.instructor_minimum_gas || !gas.instructor_at_ascent) {
        finding.code = FindingCode::staff_cylinder_missing;
        finding.severity = Severity::caution;
        found.push_back(finding);
    } else if (*gas.instructor_at_ascent < *gas.instructor_minimum_gas) {
        finding.code = FindingCode::staff_gas_below_minimum;
        finding.severity = Severity::stop;
        finding.values = {*gas.instructor_at_ascent, *gas.instructor_minimum_gas};
        found.push_back(finding);
    }
}

}  // namespace

std::vector<Finding> check_gas(const CheckContext& context, const std::vector<GuestGas>& guests,
                               const std::vector<GroupGas>& groups) {
    std::vector<Finding> found;
    for (const GuestGas& gas : guests) check_guest(context, gas, found);
    for (const GroupGas& gas : groups) check_staff(context, gas, found);
    return found;
}

}  // namespace leadline
