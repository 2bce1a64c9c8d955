// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/planning/plan.h"

namespace leadline {

/// The guests of a group with a cylinder, the first to be low on air first: by what each may breathe
/// until the reserve is reached (GuestGas::load_to_reserve). Equals stay in roster order.
std::vector<GuestId> order_of_low_on_air(const Plan& plan, const GroupId& group);

}  // namespace leadline
