// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <vector>

namespace leadline {

/// When a copy was made, in UTC.
using CopyTime = std::chrono::sys_time<std::chrono::milliseconds>;

/// Which copies are kept. Source: common practice, no source.
struct CopySchedule {
    /// A copy is due when the newest is older than this; under a day, so that a counter that opens
    /// a little earlier than yesterday still makes one.
    std::chrono::hours due_after{20};
    /// Every copy of the last days stays,
    std::chrono::days every{7};
    /// then one of each week for so many weeks,
    std::chrono::weeks weekly{8};
    /// then one of each month for so many months.
    std::chrono::months monthly{12};
    /// So many of the newest stay however old: a clock that runs wrong, or a year without opening
    /// the program, must not cost the last copies. This errs to the side of keeping.
    std::size_t newest_kept = 7;
    friend bool operator==(const CopySchedule&, const CopySchedule&) = default;
};

/// Whether a copy is due. A copy from the future (the clock was wrong) counts for nothing.
bool copy_is_due(const std::vector<CopyTime>& copies, CopyTime now,
                 const CopySchedule& schedule = {});

/// The copies the schedule no longer keeps, oldest first. Of a week (Monday to Sunday, UTC) and of a
/// month the oldest copy stays, so that a copy once chosen stays chosen. Copies from the future
/// stay.
std::vector<CopyTime> copies_to_remove(std::vector<CopyTime> copies, CopyTime now,
                                       const CopySchedule& schedule = {});

}  // namespace leadline
