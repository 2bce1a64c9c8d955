// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/body/composition.h"
#include "core/planning/session.h"

namespace leadline {

/// Age on the session's day, as far as the body is concerned: where the birth date is not known, that
/// of a child who is said to breathe as one, else that of an adult.
inline int body_age(const Session& session, const Guest& guest) {
    if (guest.birth_date) return age_in_years(*guest.birth_date, session.date);
    return guest.breathing == BreathingClass::child ? assumed_child_years : assumed_adult_years;
}

}  // namespace leadline
