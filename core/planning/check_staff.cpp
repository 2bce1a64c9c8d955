// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/checks.h"

namespace leadline {
namespace {

/// Shown where more than 24 h were left.
constexpr Minutes longest_no_stop{1440.0};

class StaffChecks {
public:
    StaffChecks(const CheckContext& context, const StaffExposure& exposure)
        : context_(context), exposure_(exposure) {}

    void run(std::vector<Finding>& found) const {
        limit(FindingCode::staff_dives_over_limit, RuleKind::staff_dives_per_day,
              exposure_.dives_today, found);
        limit(FindingCode::staff_ascents_over_limit, RuleKind::staff_ascents_per_day,
              exposure_.ascents_today, found);
        limit(FindingCode::staff_days_over_limit, RuleKind::staff_days_in_a_row,
              exposure_.days_in_a_row, found);
        if (exposure_.needs_stop) found.push_back(stop_needed());
    }

private:
    void limit(FindingCode code, RuleKind kind, int count, std::vector<Finding>& found) const {
        const std::optional<Limit> broken =
            broken_limit(context_, kind, std::nullopt,
                         [&](const Rule& rule) { return count > rule.value; });
        if (!broken) return;
        found.push_back(finding_of(code, exposure_.staff, *broken,
                                   {count, static_cast<int>(broken->value)}));
    }

    /// Whoever leads guests must be free to go straight up with one of them at any moment.
    [[nodiscard]] Finding stop_needed() const {
        Finding finding;
        finding.code = FindingCode::staff_needs_stop;
        finding.severity = Severity::stop;
        finding.subject = exposure_.staff;
        finding.values = {exposure_.planned_time,
                          exposure_.no_stop_left.value_or(longest_no_stop)};
        return finding;
    }

    const CheckContext& context_;
    const StaffExposure& exposure_;
};

}  // namespace

std::vector<Finding> check_staff(const CheckContext& context,
                                 const std::vector<StaffExposure>& staff) {
    std::vector<Finding> found;
    for (const StaffExposure& exposure : staff) {
        // Who stays ashore is not kept from anything by the plan.
        if (exposure.dives_now) StaffChecks(context, exposure).run(found);
    }
    return found;
}

}  // namespace leadline
