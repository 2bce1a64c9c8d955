// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/booking_csv.h"
#include "tests/fuzz/support.h"
#include "tests/fuzz/target.h"

namespace leadline::fuzz {
namespace {

const BookingWords& words() {
    static const BookingWords read = [] {
        const Result<BookingWords> result =
            read_booking_words(source_file("resources/booking/header-words.json"));
        must(result.has_value(), "the words can be read");
        return *result;
    }();
    return read;
}

/// The rows that can be added are guests a session takes.
Session session_of(const BookingPreview& preview, const Session& before) {
    Session session = before;
    for (const BookingRow& row : preview.rows) {
        if (row.has_error() || session.guests.size() == 20) continue;
        Guest guest = row.guest;
        guest.id = next_guest_id(session);
        session.guests.push_back(guest);
    }
    return session;
}

void expect_good(const BookingTable& table, const BookingChoices& choices) {
    Session empty;
    empty.date = Date{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(4)};
    empty.profile = standard_profile(Depth(Meters(8.0)), Depth(Meters(2.0)), Minutes(10.0),
                                     Minutes(15.0));
    const BookingPreview preview = preview_bookings(table, choices, empty);
    must(preview.rows.size() == table.lines.size(), "a row for every line");
    const Session session = session_of(preview, empty);
    const Result<Done> checked = check(session);
    must(checked.has_value(), checked ? "" : checked.error().place.c_str());
    const Result<BookingTable> again = read_booking_table(write_booking_csv(session), words());
    must(again.has_value() || session.guests.empty(), "what was written can be read");
    if (!again) return;
    const BookingPreview back = preview_bookings(*again, first_choices(*again), empty);
    must(!back.is_open(), "what was written leaves no question");
    must(back.rows.size() == session.guests.size(), "as many guests as were written");
    for (std::size_t i = 0; i < back.rows.size(); ++i) {
        const Guest& read = back.rows[i].guest;
        const Guest& written = session.guests[i];
        must(!back.rows[i].has_error(), "what was written has no error");
        must(read.name == written.name, "the name comes back");
        must(read.note == written.note, "the note comes back");
        must(read.phone == written.phone, "the phone number comes back");
        must(read.birth_date == written.birth_date, "the birth date comes back");
        must(read.dives_before == written.dives_before, "the dives come back");
        must(read.language == written.language, "the language comes back");
    }
}

}  // namespace

void booking_list(std::string_view bytes) {
    const Result<BookingTable> table = read_booking_table(bytes, words());
    if (!table) return must(!table.error().given.empty(), "an error says what");
    BookingChoices choices = first_choices(*table);
    expect_good(*table, choices);
    // Every cell read as every meaning: the columns' meanings turned by one, with answers.
    for (std::size_t i = 0; i < choices.columns.size(); ++i) {
        choices.columns[i] = static_cast<BookingField>(
            (static_cast<int>(choices.columns[i]) + static_cast<int>(i) + 1) % booking_field_count);
    }
    choices.date_order = DateOrder::month_day_year;
    choices.mass_unit = MassUnit::pounds;
    choices.height_unit = HeightUnit::feet_and_inches;
    expect_good(*table, choices);
}

}  // namespace leadline::fuzz
