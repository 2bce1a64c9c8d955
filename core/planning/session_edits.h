// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/planning/session.h"

namespace leadline {

// Edits after which something that was known no longer holds.

/// Age from which the questions ask more (`from_age` in resources/screening; a test compares them).
inline constexpr int closer_questions_from_age = 45;

/// Moves the session to another day. What the questions of the day came to, and decisions about it,
/// were for the day before; earlier dives that become too old go.
void move_to_date(Session& session, Date date);

/// Corrects a birth date. A check that was made without the questions for the age the guest turns
/// out to have is open again; the centre's own form is its own affair.
void correct_birth_date(Guest& guest, std::optional<Date> birth_date, Date session_date);

/// Decisions about the health check of a guest were made for the check as it was.
void forget_screening_overrules(Session& session, const GuestId& guest);

}  // namespace leadline
