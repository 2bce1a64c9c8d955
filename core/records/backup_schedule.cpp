// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/backup_schedule.h"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

namespace leadline {

namespace {

using std::chrono::days;
using std::chrono::floor;

/// Clocks of one machine are set by seconds all the time; that is not yet the future.
constexpr std::chrono::minutes clock_slack{5};

/// Monday of the week of a time, and the first day of its month: which week or month it is.
std::chrono::sys_days week_of(CopyTime time) {
    const std::chrono::sys_days day = floor<days>(time);
    return day - (std::chrono::weekday(day) - std::chrono::Monday);
}

std::chrono::year_month month_of(CopyTime time) {
    const std::chrono::year_month_day day(floor<days>(time));
    return {day.year(), day.month()};
}

/// The same day so many months earlier; the last of the month where there is no such day.
std::chrono::sys_days months_before(std::chrono::sys_days day, std::chrono::months months) {
    const std::chrono::year_month_day date = std::chrono::year_month_day(day) - months;
    if (date.ok()) return date;
    return date.year() / date.month() / std::chrono::last;
}

}  // namespace

bool copy_is_due(const std::vector<CopyTime>& copies, CopyTime now, const CopySchedule& schedule) {
    return std::none_of(copies.begin(), copies.end(), [&](CopyTime made) {
        return made <= now + clock_slack && now - made <= schedule.due_after;
    });
}

std::vector<CopyTime> copies_to_remove(std::vector<CopyTime> copies, CopyTime now,
                                       const CopySchedule& schedule) {
    std::sort(copies.begin(), copies.end());
    const CopyTime daily_from = now - schedule.every;
    const CopyTime weekly_from = daily_from - schedule.weekly;
    const CopyTime monthly_from = months_before(floor<days>(weekly_from), schedule.monthly);
    std::set<std::chrono::sys_days> weeks;
    std::set<std::chrono::year_month> months;
    std::vector<CopyTime> gone;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        const CopyTime made = copies[i];
        bool kept = i + schedule.newest_kept >= copies.size();
        if (made >= daily_from) {
            kept = true;
        } else if (made >= weekly_from) {
            kept = weeks.insert(week_of(made)).second || kept;
        } else if (made >= monthly_from) {
            kept = months.insert(month_of(made)).second || kept;
        }
        if (!kept) gone.push_back(made);
    }
    return gone;
}

}  // namespace leadline
