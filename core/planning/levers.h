// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/planning/forecast_plan.h"
#include "core/planning/plan.h"

namespace leadline {

/// What each change to the plan would do for a group's air, best first: most minutes, then the
/// greatest gain in the chance to complete the dive. Only changes that help are listed; each is
/// judged alone. Closed forms throughout, so that two levers differ by what they do and not by luck.
///
/// @param guests  the plan's, of the whole session
std::vector<Lever> find_levers(const Session& session, const GasContext& context,
                               const std::vector<GuestGas>& guests,
                               const GroupForecast& forecast);

/// The session with a change made. A lever that no longer fits (its guest is gone) changes nothing.
Session with_lever(const Session& session, const Lever& lever);

}  // namespace leadline
