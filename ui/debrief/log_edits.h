// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/debrief/dive_log.h"
#include "core/planning/plan.h"

namespace leadline {

class SessionDocument;

/// A log to fill in: one entry a guest with the planned start pressure (whole bar, rounded down) and
/// nothing breathed yet; times as planned. Everybody is counted in, the groups' staff too; the count
/// back is zero until somebody has counted, so that an open count shows as a stop.
DiveLog started_log(const Session& session, const Plan& plan);

/// Takes over the log of a session file. Ids are no proof of who somebody is (every session numbers
/// its guests from one), so the day, and each logged guest's name and birth date, must be the same
/// here; one that is not refuses the whole log.
/// @returns Done; or what is wrong, log_of_another_session among it; then nothing has changed
Result<Done> load_log(SessionDocument& document, const QString& path);

/// Writes the breathing rates of the review into the guests' measured RMV, rounded up to half a litre
/// a minute (the safe side), as one undoable step. Rates outside 5 to 100 L/min are left out.
/// @returns how many guests were changed
int use_as_measured(SessionDocument& document, const std::vector<GuestId>& guests);

}  // namespace leadline
