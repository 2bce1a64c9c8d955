// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/air_order.h"

#include <algorithm>
#include <limits>

namespace leadline {
namespace {

/// Median time at the reserve, in minutes; beyond all where it is later than the forecast looks.
double median_at_reserve(const Plan& plan, const GuestId& guest) {
    const GuestForecast* forecast = find_forecast(plan, guest);
    return forecast != nullptr && forecast->reserve.middle
               ? forecast->reserve.middle->value()
               : std::numeric_limits<double>::infinity();
}

}  // namespace

const GroupForecast* find_forecast(const Plan& plan, const GroupId& group) {
    const auto found =
        std::find_if(plan.forecasts.begin(), plan.forecasts.end(),
                     [&](const GroupForecast& forecast) { return forecast.group == group; });
    return found == plan.forecasts.end() ? nullptr : &*found;
}

const GuestForecast* find_forecast(const Plan& plan, const GuestId& guest) {
    for (const GroupForecast& forecast : plan.forecasts) {
        for (const GuestForecast& one : forecast.guests) {
            if (one.guest == guest) return &one;
        }
    }
    return nullptr;
}

std::vector<GuestId> order_of_low_on_air(const Plan& plan, const GroupId& group) {
    struct Place {
        const GuestGas* gas;
        bool likely_first;
        double median;
    };
    const GroupForecast* forecast = find_forecast(plan, group);
    std::vector<Place> breathing;
    for (const GuestGas& gas : plan.guests) {
        if (gas.group != group || !gas.has_cylinder) continue;
        breathing.push_back({&gas, forecast != nullptr && forecast->likely_first == gas.guest,
                             median_at_reserve(plan, gas.guest)});
    }
    std::stable_sort(breathing.begin(), breathing.end(), [](const Place& a, const Place& b) {
        if (a.likely_first != b.likely_first) return a.likely_first;
        if (a.median != b.median) return a.median < b.median;
        return a.gas->load_to_reserve < b.gas->load_to_reserve;
    });
    std::vector<GuestId> order;
    order.reserve(breathing.size());
    for (const Place& place : breathing) order.push_back(place.gas->guest);
    return order;
}

}  // namespace leadline
