// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/planning/plan.h"

namespace leadline {

/// A group's forecast, or nullptr: nobody of it has a cylinder.
const GroupForecast* find_forecast(const Plan& plan, const GroupId& group);
/// A guest in it, or nullptr.
const GuestForecast* find_forecast(const Plan& plan, const GuestId& guest);

/// The guests of a group with a cylinder, the first to be low on air first: the forecast's likely
/// first, then by each one's median time at the reserve, then by what each may breathe until then
/// (GuestGas::load_to_reserve). Equals stay in roster order.
std::vector<GuestId> order_of_low_on_air(const Plan& plan, const GroupId& group);

}  // namespace leadline
