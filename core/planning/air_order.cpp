// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/air_order.h"

#include <algorithm>

namespace leadline {

std::vector<GuestId> order_of_low_on_air(const Plan& plan, const GroupId& group) {
    std::vector<const GuestGas*> breathing;
    for (const GuestGas& gas : plan.guests) {
        if (gas.group == group && gas.has_cylinder) breathing.push_back(&gas);
    }
    std::stable_sort(breathing.begin(), breathing.end(),
                     [](const GuestGas* a, const GuestGas* b) {
                         return a->load_to_reserve < b->load_to_reserve;
                     });
    std::vector<GuestId> order;
    order.reserve(breathing.size());
    for (const GuestGas* gas : breathing) order.push_back(gas->guest);
    return order;
}

}  // namespace leadline
