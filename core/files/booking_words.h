// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/physics/result.h"

namespace leadline {

/// What a column of a booking list means.
enum class BookingField {
    unused,
    name,
    first_name,
    last_name,
    birth_date,
    age,
    language,
    mass,
    height,
    shoe_size,
    phone,
    email,
    dives,
    note,
};
inline constexpr int booking_field_count = 14;

enum class DateOrder { day_month_year, month_day_year, year_month_day };
enum class MassUnit { kilograms, pounds };
/// `feet_and_inches` is for what is written so: 5'9", 5 ft 9 in, 5-9.
enum class HeightUnit { centimeters, meters, inches, feet_and_inches };

/// The words that head columns, as resources/booking/header-words.json has them.
struct BookingWords {
    std::map<std::string, std::vector<BookingField>> fields;  ///< folded word -> meanings
    std::set<std::string> somebody_else;  ///< folded words of columns about another than the guest
};

/// Reads the table of words. Errors as of parse_json(); wrong_type, unknown_field or
/// unsupported_version with a JSON pointer.
Result<BookingWords> read_booking_words(std::string_view json);

/// What a header says.
struct HeaderMeaning {
    std::vector<BookingField> fields;  ///< the likeliest first; empty: not understood
    bool exact = false;                ///< the header is such a word, and not only holds one
    std::optional<MassUnit> mass_unit;
    std::optional<HeightUnit> height_unit;
    std::optional<DateOrder> date_order;  ///< from "dd/mm/yyyy", "jj/mm/aaaa", "TT.MM.JJJJ"
};
HeaderMeaning read_header(std::string_view header, const BookingWords& words);

}  // namespace leadline
