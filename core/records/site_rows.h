// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"

// Rows of sites: in the register, and a session's own.

namespace leadline {

/// Reads a site, in the order of the columns name, altitude_m, latitude_deg, salinity,
/// bottom_depth_m, entry, meeting_place, emergency_line, emergency_plan.
Site read_site(Row& row);

Result<Done> write_session_site(const QSqlDatabase& database, SessionRow row, const Site& site);
Result<Site> read_session_site(const QSqlDatabase& database, SessionRow row);

/// Puts a site into the register, in place of the one of that name.
Result<Done> write_known_site(const QSqlDatabase& database, const Site& site);

/// Puts a session's site into the register, unless it has no name or a later session at the site of
/// that name knows it better.
Result<Done> keep_site_of(const QSqlDatabase& database, const Session& session);

}  // namespace leadline
