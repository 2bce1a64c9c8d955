// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/persons.h"
#include "core/records/session_store.h"

// Rows of the people of a session: staff, groups, guests with kit and screening. Staff are written
// before groups and groups before guests, because the later refer to the earlier. Reading keeps the
// order in which they were written.

namespace leadline {

/// A session's staff, and which of them leads.
struct StoredStaff {
    std::vector<StaffMember> members;
    StaffId leader;  ///< empty: none
};

Result<Done> write_staff(const QSqlDatabase& database, SessionRow row, const Session& session);
Result<StoredStaff> read_staff(const QSqlDatabase& database, SessionRow row);

Result<Done> write_groups(const QSqlDatabase& database, SessionRow row,
                          const std::vector<Group>& groups);
Result<std::vector<Group>> read_groups(const QSqlDatabase& database, SessionRow row);

Result<Done> write_guests(const QSqlDatabase& database, SessionRow row,
                          const std::vector<Guest>& guests, const PersonOf& persons);
Result<std::vector<Guest>> read_guests(const QSqlDatabase& database, SessionRow row);

}  // namespace leadline
