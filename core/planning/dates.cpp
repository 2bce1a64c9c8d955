// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/dates.h"

#include <charconv>
#include <cmath>
#include <cstdio>

namespace leadline {
namespace {

/// Reads exactly the digits of `text`; nothing else may stand there.
bool read_digits(std::string_view text, int& value) {
    if (text.empty() || text.front() < '0' || text.front() > '9') return false;
    const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
    return code == std::errc() && end == text.data() + text.size();
}

}  // namespace

int age_in_years(Date birth, Date on) {
    const int years = static_cast<int>(on.year()) - static_cast<int>(birth.year());
    const bool before_birthday = on.month() < birth.month() ||
                                 (on.month() == birth.month() && on.day() < birth.day());
    return years - (before_birthday ? 1 : 0);
}

Result<Date> parse_date(std::string_view text, std::string_view place) {
    const Error error{ErrorCode::bad_date, std::string(place), std::string(text), "YYYY-MM-DD"};
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return error;
    int year = 0;
    int month = 0;
    int day = 0;
    if (!read_digits(text.substr(0, 4), year) || !read_digits(text.substr(5, 2), month) ||
        !read_digits(text.substr(8, 2), day)) {
        return error;
    }
    const Date date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                    std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok() || year < 1900 || year > 2200) return error;
    return date;
}

std::string to_text(Date date) {
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return buffer;
}

Result<TimeOfDay> parse_time_of_day(std::string_view text, std::string_view place) {
    const Error error{ErrorCode::bad_text, std::string(place), std::string(text), "HH:MM"};
    int hours = 0;
    int minutes = 0;
    if (text.size() != 5 || text[2] != ':' || !read_digits(text.substr(0, 2), hours) ||
        !read_digits(text.substr(3, 2), minutes) || hours > 23 || minutes > 59) {
        return error;
    }
    return TimeOfDay{hours * 60 + minutes};
}

std::string to_text(TimeOfDay time) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%02d:%02d", time.minutes_after_midnight / 60,
                  time.minutes_after_midnight % 60);
    return buffer;
}

TimeOfDay later(TimeOfDay start, Minutes after) {
    constexpr int minutes_of_day = 24 * 60;
    constexpr double slack = 1e-6;  // 20 min never become 19 for a rounding
    const int passed = static_cast<int>(std::floor(after.value() + slack));
    return TimeOfDay{(start.minutes_after_midnight + passed) % minutes_of_day};
}

}  // namespace leadline
