// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "ui/document/session_document.h"

namespace leadline {

/// Where on the Roster a finding about a guest can be put right.
enum class GuestPage { person, screening, kit };

/// Findings about one guest, in the plan's order.
std::vector<const Finding*> findings_of(const Plan& plan, const GuestId& guest);
GuestPage page_of(FindingCode code);

/// Age on the day of the session; none without a birth date.
std::optional<int> age_of(const Session& session, const Guest& guest);

/// Whether a guardian's consent belongs on the screen: under 18 (the safe side of most laws), asked
/// for by a rule in force, or already ticked.
bool consent_matters(const SessionDocument& document, const Guest& guest);

/// The group's name as called out; empty for none.
QString group_name(const Session& session, const GroupId& group);
/// A member of staff by name, or by role while nameless.
QString staff_name(const StaffMember& member);
/// Items of kit not yet found, for people: "mask, suit"; empty when complete.
QString missing_kit(const Plan& plan, const GuestId& guest);
/// "200 bar · Steel 12 L, 232 bar"; empty without a cylinder.
QString cylinder_text(const std::optional<Cylinder>& cylinder, UnitSystem units);
/// "2 stop, 1 care"; empty when neither.
QString count_text(const Readiness& counts);

}  // namespace leadline
