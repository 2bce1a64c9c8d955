// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <optional>

#include "core/debrief/dive_log.h"
#include "core/physics/result.h"
#include "core/records/session_store.h"

// Rows of a session's log: what happened, and every diver's pressures, times and depths.

namespace leadline {

/// Brings the stored log to what it is now. Samples, of which there may be many thousand, are only
/// written for the divers whose samples changed.
Result<Done> write_log(const QSqlDatabase& database, SessionRow row,
                       const std::optional<DiveLog>& log);

/// The log, divers and samples in the order in which they were written; nothing if there is none.
Result<std::optional<DiveLog>> read_log(const QSqlDatabase& database, SessionRow row);

}  // namespace leadline
