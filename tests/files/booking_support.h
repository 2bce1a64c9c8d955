// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/files/booking_csv.h"
#include "tests/files/support.h"

namespace leadline::files_test {

inline const BookingWords& booking_words() {
    static const BookingWords words = [] {
        const Result<BookingWords> read =
            read_booking_words(slurp(source_dir() / "resources/booking/header-words.json"));
        EXPECT_TRUE(read.has_value());
        return read.value_or({});
    }();
    return words;
}

/// A list that must be readable.
inline BookingTable booking_table(std::string_view csv) {
    const Result<BookingTable> table = read_booking_table(csv, booking_words());
    EXPECT_TRUE(table.has_value()) << (table ? "" : testing::PrintToString(table.error()));
    return table.value_or({});
}

/// A session on 4 July 2026 with nobody in it.
inline Session booking_session() {
    Session session;
    session.date = Date{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(4)};
    return session;
}

/// What a list comes to as it is guessed.
inline BookingPreview booking_preview(std::string_view csv,
                                      const Session& session = booking_session()) {
    const BookingTable table = booking_table(csv);
    return preview_bookings(table, first_choices(table), session);
}

inline std::vector<BookingProblem> problems(const BookingRow& row) {
    std::vector<BookingProblem> found;
    for (const BookingMessage& message : row.messages) found.push_back(message.problem);
    return found;
}

}  // namespace leadline::files_test
