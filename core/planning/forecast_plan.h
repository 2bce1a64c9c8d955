// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/planning/forecast.h"
#include "core/planning/gas_plan.h"
#include "core/planning/plan.h"

namespace leadline {

/// A breather from a load; a load of nothing stands as ln_load -60, a time below any second.
LogBreather breather(const BreathingSpread& breathing, BarMinutes load);

/// Time band from one guest's own spread: exact quantiles of a lognormal.
TimeBand guest_band(const GasContext& context, const BreathingSpread& breathing, BarMinutes load);

/// Median time of the group's first at the reserve, and the chance that all last the planned dive: the
/// two figures by which a change of plan is judged. Closed form only.
struct GroupOutlook {
    std::optional<Minutes> first_at_reserve;  ///< none: later than 240 min
    double completes = 0.0;
};
/// @param log  1 to 100 breathers
GroupOutlook outlook(const GasContext& context, const LogGroup& log);

/// The forecast of one group. No value when no guest of it has a cylinder.
std::optional<GroupForecast> forecast_group(const GasContext& context, const Session& session,
                                            const Group& group,
                                            const std::vector<GuestGas>& guests, int runs);

}  // namespace leadline
