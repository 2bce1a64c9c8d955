// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "core/files/session_file.h"

namespace leadline::test {

Date day(int year, unsigned month, unsigned day_of_month);

/// A day of sessions, and one on which somebody was born.
inline const Date first_day{std::chrono::year(2026), std::chrono::July, std::chrono::day(4)};
inline const Date birth{std::chrono::year(1990), std::chrono::May, std::chrono::day(17)};

/// A session in which every field differs from its default in at least one place, with a log; its
/// numbers are not the round ones. Names, ids and lists are not in alphabetical order.
SessionFile full_session();

/// As full_session(), of what schema 1 knew.
SessionFile full_session_of_schema_1();

/// The least that is a session: a profile, and no people.
SessionFile plain_session();

/// A guest of whom only the id and the name are known.
Guest guest_named(const std::string& id, const std::string& name);
/// A guest who can be told from others.
Guest guest_born(const std::string& id, const std::string& name, const Date& birth_date);

/// A plain session on a day with these guests.
SessionFile session_with(const Date& date, const std::vector<Guest>& guests);

}  // namespace leadline::test
