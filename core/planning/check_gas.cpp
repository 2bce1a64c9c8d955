// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/checks.h"

namespace leadline {
namespace {

void check_guest(const CheckContext& context, const GuestGas& gas, std::vector<Finding>& found) {
    Finding finding;
    finding.subject = gas.guest;
    finding.severity = Severity::stop;
    if (!gas.has_cylinder) {
        finding.code = FindingCode::cylinder_missing;
        found.push_back(finding);
        return;
    }
    if (gas.end_pressure < context.limits.reserve) {
        finding.code = FindingCode::ends_below_reserve;
        finding.values = {gas.end_pressure, context.limits.reserve,
                          gas.minutes_to_reserve.value_or(longest_profile)};
        if (context.limits.reserve_rule) {
            finding.severity = context.limits.reserve_rule->severity;
            finding.rule_set = context.limits.reserve_rule->rule_set;
            finding.source = context.limits.reserve_rule->source;
        }
        found.push_back(finding);
    }
    if (gas.minimum_gas > context.limits.reserve) {
        finding.code = FindingCode::minimum_gas_above_reserve;
        finding.severity = Severity::caution;
        finding.values = {gas.minimum_gas, context.limits.reserve};
        finding.rule_set.clear();
        finding.source.clear();
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
