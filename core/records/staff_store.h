// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/database.h"

namespace leadline {

/// What the records know of staff, who have no register: they are found by name.
class StaffStore {
public:
    explicit StaffStore(Database& database) : database_(database) {}

    /// Dives that somebody of this name led or assisted, by the logs on record; oldest first. A
    /// session without a log does not count: nobody may have dived.
    ///
    /// The depth is the deepest sample of the guests of the person's groups. Where none of them has
    /// samples it is the deepest planned point, which also stands for a group without entries in
    /// the log: too much on the safe side. The time is the log's, from the first in to the last
    /// out, at least 1 min and at most the 240 min an earlier dive may have. The logs do not tell
    /// ascents of staff: 1.
    ///
    /// @param name  the whole name; white space at both ends aside
    /// @param date  with `time`, when the next dive begins: dives that last longer are left out
    /// @param days  how far back, 1 to `earlier_dives_kept_days`
    /// @returns the dives, of which some overlap where a dive is on record twice; out_of_range for
    ///          `days` or bad_date; database_failed, database_locked
    Result<std::vector<EarlierDive>> earlier_dives_of(const std::string& name, Date date,
                                                      TimeOfDay time, int days);

private:
    Database& database_;
};

}  // namespace leadline
