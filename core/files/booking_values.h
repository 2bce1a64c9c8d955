// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What single cells of a booking list mean. Every function takes a cell as it was typed and gives
// none where it cannot be read; none of them guesses.

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/booking_words.h"
#include "core/physics/quantities.h"
#include "core/planning/dates.h"

namespace leadline {

/// Spaces, tabs and line breaks at both ends taken off (U+00A0 as well).
std::string trimmed(std::string_view text);
/// Whether nothing is said: empty, "-", "?", "n/a".
bool says_nothing(std::string_view cell);

/// A number with a decimal point or comma, at most six digits before it; nothing else around it.
std::optional<double> plain_number(std::string_view text);

// ---- dates -------------------------------------------------------------------------------------

/// Three numbers that may be a date, in the order in which they stand.
struct DateParts {
    std::array<int, 3> numbers{};
    std::array<int, 3> digits{};    ///< how many each has; 0: the month was written as a word
    std::optional<int> named_month; ///< place of the month that was written as a word
};
/// Reads "04.07.1990", "1990-07-04", "4 Jul 1990", "4 de julio de 1990", "July 4, 1990"; a time of
/// day behind it is dropped. Months by name in the languages of booking lists.
std::optional<DateParts> read_date_parts(std::string_view cell);

/// A date read in one order.
struct ReadDate {
    Date date;
    bool two_digit_year = false;
};
/// None where the numbers make no date in that order. A year of two digits is the latest that makes
/// a date not after `latest`.
std::optional<ReadDate> date_in_order(const DateParts& parts, DateOrder order, Date latest);
/// The date of parts that only one reading can have, whatever the rest of the column says: a year
/// of four digits in front, or a month written as a word.
std::optional<ReadDate> evident_date(const DateParts& parts, Date latest);

// ---- quantities --------------------------------------------------------------------------------

/// A number and, where the cell has one, its unit.
struct ReadMass {
    double number = 0.0;
    std::optional<MassUnit> unit;
};
/// "75", "75,5 kg", "165 lbs".
std::optional<ReadMass> read_mass(std::string_view cell);
Kilograms mass_of(double number, MassUnit unit);
/// 15 to 250 kg, as of a Guest.
bool is_possible(Kilograms mass);

/// A length written out with its unit, or a bare number.
struct ReadHeight {
    double number = 0.0;
    std::optional<HeightUnit> unit;  ///< never feet_and_inches: such a cell is read to inches
};
/// "175", "1,75 m", "1m75", "69 in", "5'9\"", "5 ft 9 in".
std::optional<ReadHeight> read_height(std::string_view cell);
/// Likewise for a column of feet and inches: "5 9" and "5-9", too. A bare number is none: nobody
/// knows whether 5.9 is 5 ft 9 in.
std::optional<Meters> read_feet_and_inches(std::string_view cell);
/// @param unit  any but feet_and_inches
Meters height_of(double number, HeightUnit unit);
/// 0.8 to 2.5 m, as of a Guest.
bool is_possible(Meters height);

// ---- the rest ----------------------------------------------------------------------------------

/// A BCP 47 tag ("de", "pt-BR"), a three-letter code, or a language's name in one of the languages
/// of booking lists or in itself. Of several ("English, German") the first.
std::optional<std::string> read_language(std::string_view cell);
/// A whole number from 0 to `most`.
std::optional<int> read_count(std::string_view cell, int most);
/// A European size, 20 to 55, halves and thirds included.
std::optional<double> read_shoe_size(std::string_view cell);
bool looks_like_email(std::string_view text);
bool looks_like_phone(std::string_view text);
/// The digits of a phone number that are compared: the last nine, since one number is written with
/// and without its country; empty where there are fewer than seven.
std::string phone_key(std::string_view phone);

}  // namespace leadline
