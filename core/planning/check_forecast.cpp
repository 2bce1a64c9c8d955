// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/planning/checks.h"

namespace leadline {
namespace {

// Below these chances the instructor is told. Common practice, no source: a plan that fails every
// second time is none; nine in ten is little for two on one cylinder.
constexpr double least_completes = 0.5;
constexpr double least_sharing = 0.9;

Finding caution(FindingCode code, Subject subject, double chance) {
    Finding finding;
    finding.code = code;
    finding.severity = Severity::caution;
    finding.subject = std::move(subject);
    // Rounded down: never said to be better than it is.
    finding.values = {static_cast<int>(std::floor(chance * 100.0))};
    return finding;
}

}  // namespace

std::vector<Finding> check_forecast(const CheckContext& context,
                                    const std::vector<GroupForecast>& forecasts) {
    std::vector<Finding> found;
    for (const GroupForecast& forecast : forecasts) {
        if (forecast.completes < least_completes) {
            found.push_back(caution(FindingCode::group_unlikely_to_finish, forecast.group,
                                    forecast.completes));
        }
        const Group* group = find_group(context.session, forecast.group);
        if (group != nullptr && forecast.sharing_lasts.value_or(1.0) < least_sharing) {
            found.push_back(caution(FindingCode::sharing_may_not_last, group->instructor,
                                    *forecast.sharing_lasts));
        }
    }
    return found;
}

}  // namespace leadline
