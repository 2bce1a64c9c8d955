// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>

#include "core/planning/plan.h"

namespace leadline {

// Parts of a plan as JSON: numbers with their unit in the key, rounded to six decimals. What has no
// value is left out.

/// Time bands, chances and what the runs say, one entry a group.
nlohmann::ordered_json forecasts_json(const Plan& plan);
nlohmann::ordered_json levers_json(const Plan& plan);
nlohmann::ordered_json warmth_json(const Plan& plan);
nlohmann::ordered_json lead_json(const Plan& plan);
nlohmann::ordered_json exposures_json(const Session& session, const Plan& plan);
/// Kinds of cylinder with what they lift in this water.
nlohmann::ordered_json cylinders_json(const Plan& plan);
nlohmann::ordered_json ears_and_lungs_json(const EarLungCharts& charts);

}  // namespace leadline
