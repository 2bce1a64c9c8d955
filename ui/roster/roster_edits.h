// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/session.h"

namespace leadline {

// Changes to a session that touch more than one value. Each leaves the session without references
// to what is gone.

/// Adds a guest of this name, in no group; the language is that of the guest before, since people
/// who book together mostly share one.
GuestId add_guest(Session& session, const std::string& name);

/// Adds guests as they are at the end of the roster, each under a new id and in no group.
void add_guests(Session& session, const std::vector<Guest>& guests);

/// Removes guests together with the overrules that speak of them: their ids may be given out again,
/// and a decision made for one person must never fall to the next.
void remove_guests(Session& session, const std::vector<GuestId>& guests);

/// Adds a group of this name, led by the first instructor who leads none yet.
GroupId add_group(Session& session, const std::string& name);

/// Removes a group; its guests are in none afterwards.
void remove_group(Session& session, const GroupId& group);

/// Removes a member of staff from the list, from the groups and as the session's leader.
void remove_staff(Session& session, const StaffId& member);

/// Whether nothing that lasts from one session to the next is known of a guest beyond the name and
/// the language, so that taking a person from the records can overwrite nothing.
bool nothing_lasting(const Guest& guest);

/// Takes over what lasts: name, birth date, language, sizes, measured RMV. Screening and consent
/// are given anew every time and stay as they are.
void fill_lasting(Guest& guest, const Guest& known);

/// A cylinder of another type handed out in place of `before`. The reading is kept where the new
/// one may hold it; otherwise it is 0 bar, so that nobody plans with air that no gauge has shown.
/// @param air  where nothing was handed out before, the gas is taken to be as warm as the air around
///             it, and never colder than the customary 15 C, which errs to less air
Cylinder cylinder_of_type(const CylinderType& type, const std::optional<Cylinder>& before,
                          Kelvins air);

}  // namespace leadline
