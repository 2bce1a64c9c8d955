// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/debrief/dive_log.h"
#include "core/planning/plan.h"

namespace leadline {

class SessionDocument;

/// A log to fill in: one entry a guest with the planned start pressure (whole bar, rounded down) and
/// nothing breathed yet; times as planned. The head count back is zero until somebody has counted, so
/// that an open count shows as a stop.
DiveLog started_log(const Session& session, const Plan& plan);

/// Takes over the log of a session file for guests with the same ids.
/// @returns Done; or what is wrong with the file, in which case nothing has changed
Result<Done> load_log(SessionDocument& document, const QString& path);

/// Writes the breathing rates of the review into the guests' measured RMV, rounded up to half a litre
/// a minute (the safe side), as one undoable step. Rates outside 5 to 100 L/min are left out.
/// @returns how many guests were changed
int use_as_measured(SessionDocument& document, const std::vector<GuestId>& guests);

}  // namespace leadline
