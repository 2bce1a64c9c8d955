// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {

void set_depth(Scene& scene, double depth_m) {
    for (const std::size_t corner : {2U, 3U, 4U}) {
        scene.session.profile.points[corner].depth = meters(depth_m);
    }
}

Guest& guest_of(Scene& scene, std::size_t index) { return scene.session.guests.at(index); }

void fill_group(Scene& scene, std::size_t guests) {
    while (scene.session.guests.size() < guests) {
        Guest guest = scene.session.guests.front();
        guest.id = next_guest_id(scene.session);
        scene.session.guests.push_back(guest);
    }
}

LogEntry& logged(Scene& scene) {
    if (!scene.log) scene.log = log_as_planned(scene.session, plan_of(scene));
    return scene.log->divers.front();
}

std::vector<FindingCase> all_finding_cases() {
    std::vector<FindingCase> all;
    for (const auto& part : {place_cases(), people_cases(), ratio_cases(), gas_cases(), log_cases(),
                             staff_cases(), body_cases()}) {
        all.insert(all.end(), part.begin(), part.end());
    }
    return all;
}

}  // namespace leadline
