// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/briefing.h"

#include <algorithm>

namespace leadline {

std::vector<Skill> standard_skills() {
    std::vector<Skill> skills;
    skills.reserve(skill_count);
    for (int i = 0; i < skill_count; ++i) skills.push_back(static_cast<Skill>(i));
    return skills;
}

void set_understood(BriefingCheck& check, HandSignal signal, bool understood) {
    const auto place = std::lower_bound(check.understood.begin(), check.understood.end(), signal);
    const bool there = place != check.understood.end() && *place == signal;
    if (understood && !there) check.understood.insert(place, signal);
    if (!understood && there) check.understood.erase(place);
}

bool is_understood(const BriefingCheck& check, HandSignal signal) {
    return std::find(check.understood.begin(), check.understood.end(), signal) !=
           check.understood.end();
}

std::vector<HandSignal> signals_to_know() {
    return {HandSignal::ok,   HandSignal::something_wrong, HandSignal::ears,
            HandSignal::stop, HandSignal::up,              HandSignal::down,
            HandSignal::low_on_air, HandSignal::out_of_air, HandSignal::ok_at_surface};
}

}  // namespace leadline
