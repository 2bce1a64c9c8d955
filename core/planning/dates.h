// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>
#include <string_view>

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

using Date = std::chrono::year_month_day;

/// Time of day at the site's own clock, minutes after midnight, 0 to 1439.
struct TimeOfDay {
    int minutes_after_midnight = 0;
    friend constexpr auto operator<=>(TimeOfDay, TimeOfDay) = default;
};

/// Whole years from birth to a day, as the law counts them: a person born on 29 February is a year
/// older on 1 March of common years. Negative when birth lies after the day.
int age_in_years(Date birth, Date on);

/// ISO 8601 calendar date, "2026-07-04". ErrorCode::bad_date with `place` otherwise.
Result<Date> parse_date(std::string_view text, std::string_view place);
std::string to_text(Date date);

/// "09:30". ErrorCode::bad_text with `place` otherwise.
Result<TimeOfDay> parse_time_of_day(std::string_view text, std::string_view place);
std::string to_text(TimeOfDay time);

/// The time of day so much later, in whole minutes begun and past midnight again from 00:00.
/// @param after  0 min or more
TimeOfDay later(TimeOfDay start, Minutes after);

}  // namespace leadline
