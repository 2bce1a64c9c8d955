// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A booking list from any spreadsheet, on its way to guests:
//   bytes --read_booking_table()--> BookingTable --first_choices()--> BookingChoices (the user's)
//   table + choices + session --preview_bookings()--> BookingPreview --> guests to be added
// and the roster on its way out: write_booking_csv(). All of them are pure.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/booking_words.h"
#include "core/files/text_decoding.h"
#include "core/physics/result.h"
#include "core/planning/session.h"

namespace leadline {

// ---- reading -----------------------------------------------------------------------------------

inline constexpr std::size_t largest_booking_file = 10U * 1024U * 1024U;
inline constexpr std::size_t most_booking_rows = 5000;
inline constexpr std::size_t most_booking_columns = 200;

struct BookingColumn {
    std::string header;  ///< as it stands in the list; empty without a header
    BookingField guess = BookingField::unused;
    std::vector<BookingField> alternatives;  ///< what else the header may mean
    std::optional<MassUnit> mass_unit;       ///< as the header says it
    std::optional<HeightUnit> height_unit;
    std::optional<DateOrder> date_order;
};

struct BookingLine {
    std::size_t number = 0;          ///< row of the spreadsheet, the first is 1
    std::vector<std::string> cells;  ///< at most as many as there are columns
};

/// A booking list as it was read, before anything is understood but its headers.
struct BookingTable {
    TextEncoding encoding = TextEncoding::utf8;
    char delimiter = ',';
    std::optional<std::size_t> header_line;  ///< row of the spreadsheet; none found: none
    std::vector<BookingColumn> columns;
    std::vector<BookingLine> lines;  ///< without header, what stands above it, and empty ones
};

/// Reads comma-, semicolon- or tab-separated values (RFC 4180, and what spreadsheets make of it:
/// any line end, line breaks within quotes, quotes in the middle of a cell). Control characters
/// become spaces; line breaks within a cell stay.
///
/// @returns the table; file_too_large (more than 10 MB), table_too_large (5,000 rows, 200 columns),
///          or not_a_table (nothing in it; a quotation mark left open)
Result<BookingTable> read_booking_table(std::string_view bytes, const BookingWords& words);

// ---- understanding -----------------------------------------------------------------------------

/// What the user decides. None: not decided; then it follows from the list, where it can.
struct BookingChoices {
    std::vector<BookingField> columns;  ///< one a column; missing ones count as unused
    std::optional<DateOrder> date_order;
    std::optional<MassUnit> mass_unit;
    std::optional<HeightUnit> height_unit;
    friend bool operator==(const BookingChoices&, const BookingChoices&) = default;
};

/// The guesses of the table, each meaning but `note` once.
BookingChoices first_choices(const BookingTable& table);

enum class BookingProblem {
    name_missing,           ///< error
    text_too_long,          ///< error; given: characters; allowed: the most
    not_a_date,             ///< error; given
    birth_in_future,        ///< error; given; allowed: the session's date
    not_a_mass,             ///< error; given
    not_a_height,           ///< error; given
    mass_out_of_range,      ///< error; given
    height_out_of_range,    ///< error; given
    unit_not_chosen,        ///< doubt: how to read the cell has been asked and not answered
    year_of_two_digits,     ///< doubt; given; allowed: the year it was taken for
    age_unlikely,           ///< doubt: below 6 or above 90; given: years
    age_without_birth_date, ///< doubt; given: years
    age_contradicts_birth,  ///< doubt; given: years in the list; allowed: years from the birth date
    not_an_age,             ///< doubt; given
    unknown_language,       ///< doubt; given
    not_a_shoe_size,        ///< doubt; given: no European size, left empty
    not_a_number_of_dives,  ///< doubt; given: left empty
    odd_email,              ///< doubt; given: taken over as it is
    odd_phone,              ///< doubt; given: taken over as it is
    unread_letters,         ///< doubt: the cell holds U+FFFD
};

struct BookingMessage {
    std::optional<std::size_t> column;  ///< none: the whole row
    BookingProblem problem{};
    bool error = false;  ///< keeps the row from being added; otherwise a doubt, to be looked at
    std::string given;
    std::string allowed;
    friend bool operator==(const BookingMessage&, const BookingMessage&) = default;
};

enum class DuplicateReason {
    birth_and_name,  ///< born on the same day and called nearly the same
    same_name,       ///< called the same, and one of them without a birth date
    same_contact,    ///< the same e-mail or phone under another name: family, perhaps
};

struct BookingDuplicate {
    DuplicateReason reason{};
    std::optional<GuestId> guest;  ///< who is in the session already; none: an earlier row
    std::size_t line = 0;          ///< the earlier row's number; 0 for a guest of the session
    std::string name;
    friend bool operator==(const BookingDuplicate&, const BookingDuplicate&) = default;
};

struct BookingRow {
    std::size_t line = 0;  ///< row of the spreadsheet
    Guest guest;           ///< without id
    std::optional<int> age;  ///< as the list says; no guest has a place for it
    std::vector<BookingMessage> messages;
    std::optional<BookingDuplicate> duplicate;
    [[nodiscard]] bool has_error() const;
    /// Whether it should be left out unless the user wants it: somebody who is there already.
    [[nodiscard]] bool is_repeat() const;
};

/// A question about a whole column that the list itself may answer.
template <typename Choice>
struct BookingQuestion {
    bool arises = false;          ///< some cell can only be read with an answer
    std::vector<Choice> fitting;  ///< answers that all such cells allow; empty: they contradict
    std::optional<Choice> answer; ///< the user's, the header's, or the only one that fits
    std::string example;          ///< a cell that is read differently by different answers
    [[nodiscard]] bool is_open() const { return arises && !answer; }
};

struct BookingPreview {
    std::vector<BookingRow> rows;  ///< one a line of the table, in its order
    BookingQuestion<DateOrder> date_order;
    BookingQuestion<MassUnit> mass_unit;
    BookingQuestion<HeightUnit> height_unit;
    [[nodiscard]] bool is_open() const {
        return date_order.is_open() || mass_unit.is_open() || height_unit.is_open();
    }
};

/// What the list comes to with these choices. Dates are birth dates: a year of two digits is the
/// latest that is not after the session. An order of dates or a unit is taken from the header or
/// where only one fits every cell of the column; otherwise the question stays open and the cells
/// concerned are left empty, never guessed.
BookingPreview preview_bookings(const BookingTable& table, const BookingChoices& choices,
                                const Session& session);

// ---- writing -----------------------------------------------------------------------------------

/// The roster as comma-separated values (RFC 4180, UTF-8 with byte order mark, CR LF): name, birth
/// date, language, mass, height, shoe size, phone, e-mail, dives and note. Nothing of health questions, consent,
/// kit or groups. read_booking_table() and preview_bookings() of it give the same guests back, but
/// for spaces at the ends of texts and digits beyond the sixth decimal.
///
/// Cells that a spreadsheet would take for a formula get an apostrophe in front, which reading takes
/// off again (formula_guarded()).
std::string write_booking_csv(const Session& session);

/// The text with an apostrophe in front where it begins with = + - @, a tab or CR, behind any
/// number of apostrophes. Plain numbers are left alone: "-3.5", and a phone number with its groups
/// apart, "+34 600 123 456", which spreadsheets keep as text. One without spaces is guarded, since
/// they would make a number of it and lose the plus.
/// @source  OWASP Foundation, "CSV Injection" (web page), for the characters -- from memory
std::string formula_guarded(std::string_view text);
/// Takes off what formula_guarded() put in front.
std::string_view formula_unguarded(std::string_view text);

}  // namespace leadline
