// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>

#include "core/planning/session.h"

namespace leadline::testing {

/// The session with twelve guests in three groups, "Blue", "Red" and "3", who breathe and have
/// filled differently, so that each group has levers and a swap between two of them helps.
inline Session crowd(Session session) {
    const Group group = session.groups.front();
    const Guest guest = session.guests.front();
    session.groups.clear();
    session.guests.clear();
    session.overrules.clear();
    const std::array<const char*, 3> names{"Blue", "Red", "3"};
    for (std::size_t i = 0; i < names.size(); ++i) {
        session.groups.push_back(group);
        session.groups.back().id = GroupId("crowd-" + std::to_string(i));
        session.groups.back().name = names[i];
    }
    for (std::size_t i = 0; i < 12; ++i) {
        Guest added = guest;
        added.id = GuestId("crowd-guest-" + std::to_string(i));
        added.name = "Guest " + std::to_string(i);
        added.group = session.groups[i / 4].id;
        // All the nervous ones in the first group.
        added.breathing = i < 4 ? BreathingClass::nervous : BreathingClass::calm;
        added.kit.cylinder = Cylinder{CylinderTypeId("steel-10"),
                                      Bars(180.0 + static_cast<double>(i)),
                                      session.conditions.air_temperature};
        session.guests.push_back(added);
    }
    return session;
}

}  // namespace leadline::testing
