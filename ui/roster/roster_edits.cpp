// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/roster_edits.h"

#include <algorithm>
#include <utility>

namespace leadline {
namespace {

/// The keys of findings end in ":" and the id of their subject; ids hold no colon.
void forget_overrules(Session& session, const std::string& id) {
    const std::string ending = ":" + id;
    std::erase_if(session.overrules, [&](const Overrule& overrule) {
        return overrule.finding.ends_with(ending);
    });
}

}  // namespace

GuestId add_guest(Session& session, const std::string& name) {
    Guest guest;
    guest.id = next_guest_id(session);
    guest.name = name;
    if (!session.guests.empty()) guest.language = session.guests.back().language;
    session.guests.push_back(guest);
    return guest.id;
}

void add_guests(Session& session, const std::vector<Guest>& guests) {
    for (Guest guest : guests) {
        guest.id = next_guest_id(session);
        guest.group = GroupId();
        session.guests.push_back(std::move(guest));
    }
}

void remove_guests(Session& session, const std::vector<GuestId>& guests) {
    for (const GuestId& id : guests) {
        std::erase_if(session.guests, [&](const Guest& guest) { return guest.id == id; });
        forget_overrules(session, id.text);
    }
}

GroupId add_group(Session& session, const std::string& name) {
    Group added{next_group_id(session), name, StaffId(), StaffId()};
    for (const StaffMember& member : session.staff) {
        const bool leads = std::any_of(
            session.groups.begin(), session.groups.end(),
            [&](const Group& group) { return group.instructor == member.id; });
        if (member.role != StaffRole::instructor || leads) continue;
        added.instructor = member.id;
        break;
    }
    session.groups.push_back(added);
    return added.id;
}

void remove_group(Session& session, const GroupId& group) {
    for (Guest& guest : session.guests) {
        if (guest.group == group) guest.group = GroupId();
    }
    std::erase_if(session.groups, [&](const Group& other) { return other.id == group; });
    forget_overrules(session, group.text);
}

void remove_staff(Session& session, const StaffId& member) {
    for (Group& group : session.groups) {
        if (group.instructor == member) group.instructor = StaffId();
        if (group.assistant == member) group.assistant = StaffId();
    }
    if (session.leader == member) session.leader = StaffId();
    std::erase_if(session.staff, [&](const StaffMember& other) { return other.id == member; });
    forget_overrules(session, member.text);
}

bool nothing_lasting(const Guest& guest) {
    return !guest.birth_date && !guest.body_mass && !guest.body_height && !guest.shoe_size_eu &&
           !guest.measured_rmv && !guest.dives_before && guest.phone.empty() && guest.email.empty();
}

void fill_lasting(Guest& guest, const Guest& known) {
    guest.name = known.name;
    guest.language = known.language;
    guest.birth_date = known.birth_date;
    guest.body_mass = known.body_mass;
    guest.body_height = known.body_height;
    guest.shoe_size_eu = known.shoe_size_eu;
    guest.measured_rmv = known.measured_rmv;
    guest.dives_before = known.dives_before;
    guest.phone = known.phone;
    guest.email = known.email;
}

Cylinder cylinder_of_type(const CylinderType& type, const std::optional<Cylinder>& before,
                          Kelvins air) {
    Cylinder cylinder;
    cylinder.type = type.id;
    // Air that was warmer when the gauge was read is less air: the safe side.
    if (air > cylinder.fill_temperature) cylinder.fill_temperature = air;
    if (before) cylinder.fill_temperature = before->fill_temperature;
    if (before && before->fill_pressure.value() <= type.working_pressure.value()) {
        cylinder.fill_pressure = before->fill_pressure;
    }
    return cylinder;
}

}  // namespace leadline
