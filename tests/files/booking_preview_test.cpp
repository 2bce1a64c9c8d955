// SPDX-License-Identifier: GPL-3.0-or-later
// What a booking list comes to: guests, questions where it can be read in two ways, and messages.
#include <cmath>

#include "tests/files/booking_support.h"

namespace leadline::files_test {
namespace {

using P = BookingProblem;
using Problems = std::vector<BookingProblem>;

Date day(int year, unsigned month, unsigned of_month) {
    return Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(of_month)};
}

/// The only row of a list of one column beside the name.
BookingRow row_with(const std::string& header, const std::string& cell) {
    const BookingPreview preview =
        booking_preview("Name;" + header + "\nMara Lind;\"" + cell + "\"\n");
    EXPECT_EQ(preview.rows.size(), 1U);
    return preview.rows.empty() ? BookingRow() : preview.rows.front();
}

std::optional<Date> birth(const std::string& cell) {
    return row_with("Birth date", cell).guest.birth_date;
}

TEST(BookingPreviewTest, ReadsAWholeGuest) {
    const BookingPreview preview = booking_preview(
        "First name;Surname;Birth date;Language;Weight kg;Height cm;Shoe size;Phone;E-mail;Dives;"
        "Note;Remarks\n"
        "Mara;Lind;1990-07-04;Swedish;62,5;171;38,5;+46 70 123 45 67;mara@lind.example;3;"
        "vegetarian;window seat\n");
    EXPECT_FALSE(preview.is_open());
    ASSERT_EQ(preview.rows.size(), 1U);
    const BookingRow& row = preview.rows.front();
    EXPECT_EQ(row.line, 2U);
    EXPECT_EQ(problems(row), Problems{});
    EXPECT_EQ(row.guest.name, "Mara Lind");
    EXPECT_EQ(row.guest.birth_date, day(1990, 7, 4));
    EXPECT_EQ(row.guest.language, "sv");
    EXPECT_EQ(row.guest.body_mass, Kilograms(62.5));
    EXPECT_EQ(row.guest.body_height, Meters(1.71));
    EXPECT_EQ(row.guest.shoe_size_eu, 38.5);
    EXPECT_EQ(row.guest.phone, "+46 70 123 45 67");
    EXPECT_EQ(row.guest.email, "mara@lind.example");
    EXPECT_EQ(row.guest.dives_before, 3);
    EXPECT_EQ(row.guest.note, "vegetarian\nwindow seat");
    EXPECT_EQ(row.guest.screening, HealthCheck{}) << "health is never taken from a list";
    EXPECT_FALSE(row.guest.guardian_consent);
}

// ---- dates -------------------------------------------------------------------------------------

TEST(BookingDates, AreReadAsPeopleWriteThem) {
    const Date expected = day(1990, 7, 24);
    for (const char* cell : {"1990-07-24", "24.07.1990", "24.7.1990", "24/7/1990", "7/24/1990",
                             "24-07-1990", "24 Jul 1990", "24-jul-1990", "July 24, 1990",
                             "24 de julio de 1990", "24 juillet 1990", "24. Juli 1990",
                             "24 luglio 1990", "24 lipca 1990", "24 juli 1990", "24th July 1990",
                             "1990/07/24", "1990-07-24T00:00:00", "24.07.1990 00:00", "1990.07.24."}) {
        EXPECT_EQ(birth(cell), expected) << cell;
    }
}

TEST(BookingDates, ThatAreNoneAreErrors) {
    for (const char* cell : {"30.02.1990", "24.13.1990", "1990", "yesterday", "24.07.190",
                             "24.07.1990.3", "33007", "1850-01-01", "24 Foo 1990", "Jul Jul 1990"}) {
        const BookingRow row = row_with("Birth date", cell);
        EXPECT_EQ(problems(row), Problems{P::not_a_date}) << cell;
        EXPECT_TRUE(row.has_error()) << cell;
        EXPECT_EQ(row.guest.birth_date, std::nullopt);
    }
    EXPECT_EQ(problems(row_with("Birth date", "2026-07-05")), Problems{P::birth_in_future});
    EXPECT_EQ(problems(row_with("Birth date", "2025-07-05")), Problems{P::age_unlikely});
}

TEST(BookingDates, ThatFitTwoOrdersAreAskedAndNotGuessed) {
    const BookingTable table =
        booking_table("Name,Birth date\nA,03/04/1990\nB,05/05/1991\nC,1992-03-04\n");
    BookingChoices choices = first_choices(table);
    const BookingPreview asked = preview_bookings(table, choices, booking_session());
    EXPECT_TRUE(asked.date_order.is_open());
    EXPECT_EQ(asked.date_order.example, "03/04/1990");
    EXPECT_EQ(asked.date_order.fitting,
              (std::vector{DateOrder::day_month_year, DateOrder::month_day_year}));
    EXPECT_EQ(asked.rows[0].guest.birth_date, std::nullopt);
    EXPECT_EQ(problems(asked.rows[0]), Problems{P::unit_not_chosen});
    EXPECT_EQ(asked.rows[2].guest.birth_date, day(1992, 3, 4)) << "nobody doubts this one";
    choices.date_order = DateOrder::month_day_year;
    const BookingPreview american = preview_bookings(table, choices, booking_session());
    EXPECT_FALSE(american.is_open());
    EXPECT_EQ(american.rows[0].guest.birth_date, day(1990, 3, 4));
    choices.date_order = DateOrder::day_month_year;
    EXPECT_EQ(preview_bookings(table, choices, booking_session()).rows[0].guest.birth_date,
              day(1990, 4, 3));
}

TEST(BookingDates, OneDayAfterTheTwelfthSettlesTheColumn) {
    const BookingPreview preview =
        booking_preview("Name,Birth date\nA,03/04/1990\nB,04/13/1991\n");
    EXPECT_FALSE(preview.is_open());
    EXPECT_EQ(preview.date_order.answer, DateOrder::month_day_year);
    EXPECT_EQ(preview.rows[0].guest.birth_date, day(1990, 3, 4));
}

TEST(BookingDates, ThatContradictEachOtherAreAsked) {
    const BookingPreview preview =
        booking_preview("Name,Birth date\nA,13/04/1990\nB,04/13/1991\n");
    EXPECT_TRUE(preview.date_order.is_open());
    EXPECT_TRUE(preview.date_order.fitting.empty());
}

TEST(BookingDates, TheHeaderMaySettle) {
    const BookingPreview preview = booking_preview("Name,DOB (mm/dd/yyyy)\nA,03/04/1990\n");
    EXPECT_EQ(preview.rows[0].guest.birth_date, day(1990, 3, 4));
    const BookingPreview alike = booking_preview("Name,DOB\nA,04/04/1990\n");
    EXPECT_FALSE(alike.is_open()) << "both orders say the same";
    EXPECT_EQ(alike.rows[0].guest.birth_date, day(1990, 4, 4));
}

TEST(BookingDates, OfTwoDigitYearsArePointedOut) {
    const BookingRow row = row_with("Birth date", "24.07.90");
    EXPECT_EQ(row.guest.birth_date, day(1990, 7, 24));
    EXPECT_EQ(problems(row), Problems{P::year_of_two_digits});
    EXPECT_FALSE(row.has_error());
    EXPECT_EQ(problems(row_with("Birth date", "24.07.13")), Problems{P::unit_not_chosen})
        << "24 July 2013 or 13 July 2024";
    const auto said = [](const char* cell) {
        return row_with("Birth date (dd.mm.yyyy)", cell).guest.birth_date;
    };
    EXPECT_EQ(said("24.07.13"), day(2013, 7, 24));
    EXPECT_EQ(said("24.07.26"), day(1926, 7, 24)) << "after the session in this century";
}

TEST(BookingDates, AreComparedWithTheAge) {
    const auto found = [](const char* cells) {
        return problems(booking_preview(std::string("Name,Birth date,Age\nA,") + cells + "\n").rows[0]);
    };
    EXPECT_EQ(found("1990-07-04,36"), Problems{});
    EXPECT_EQ(found("1990-07-05,36"), Problems{}) << "birthday tomorrow";
    EXPECT_EQ(found("1990-07-04,26"), Problems{P::age_contradicts_birth});
    EXPECT_EQ(found(",9"), Problems{P::age_without_birth_date});
    EXPECT_EQ(found(",nine"), Problems{P::not_an_age});
}

TEST(BookingDates, ThatFitNoOrderAreErrorsBeforeTheQuestionIsAnswered) {
    const BookingPreview preview = booking_preview(
        "Name,Birth date,Weight,Height\nA,03/04/1990,75,95\nB,31/31/1990,7,12\nC,,,x\n");
    EXPECT_TRUE(preview.date_order.is_open());
    EXPECT_EQ(problems(preview.rows[0]),
              (Problems{P::unit_not_chosen, P::unit_not_chosen, P::unit_not_chosen}));
    EXPECT_EQ(problems(preview.rows[1]),
              (Problems{P::not_a_date, P::mass_out_of_range, P::height_out_of_range}));
    EXPECT_EQ(problems(preview.rows[2]), Problems{P::not_a_height});
}

// ---- quantities --------------------------------------------------------------------------------

TEST(BookingMass, IsReadWithItsUnitOrAsked) {
    EXPECT_EQ(row_with("Weight", "75 kg").guest.body_mass, Kilograms(75.0));
    EXPECT_EQ(row_with("Weight", "75,5kg").guest.body_mass, Kilograms(75.5));
    EXPECT_NEAR(row_with("Weight", "165 lbs").guest.body_mass.value().value(), 74.8427, 1e-4);
    EXPECT_NEAR(row_with("Weight (lb)", "165").guest.body_mass.value().value(), 74.8427, 1e-4);
    EXPECT_EQ(row_with("Weight (lb)", "75 kg").guest.body_mass, Kilograms(75.0));
    const BookingPreview asked = booking_preview("Name,Weight\nA,75\nB,165\nC,20\n");
    EXPECT_TRUE(asked.mass_unit.is_open());
    EXPECT_EQ(asked.mass_unit.example, "75");
    EXPECT_EQ(problems(asked.rows[0]), Problems{P::unit_not_chosen});
    EXPECT_EQ(asked.rows[1].guest.body_mass, std::nullopt);
    EXPECT_FALSE(booking_preview("Name,Weight\nA,20\nB,28\n").is_open()) << "only as kilograms";
}

TEST(BookingMass, OutOfReasonIsAnError) {
    EXPECT_EQ(problems(row_with("Weight kg", "7,5")), Problems{P::mass_out_of_range});
    EXPECT_EQ(problems(row_with("Weight kg", "251")), Problems{P::mass_out_of_range});
    for (const char* cell : {"heavy", "75 stone", "-75", "7 5 0", "1e2", "75 kg net", "1.234,5"}) {
        EXPECT_EQ(problems(row_with("Weight kg", cell)), Problems{P::not_a_mass}) << cell;
    }
    for (const char* cell : {"", " ", "-", "?", "n/a"}) {
        EXPECT_EQ(problems(row_with("Weight kg", cell)), Problems{}) << cell;
    }
}

TEST(BookingHeight, IsReadInEveryForm) {
    const auto height = [](const char* header, const char* cell) {
        const auto read = row_with(header, cell).guest.body_height;
        return read ? std::round(read->value() * 10000.0) / 10000.0 : -1.0;
    };
    EXPECT_EQ(height("Height", "175"), 1.75);
    EXPECT_EQ(height("Height", "1,75"), 1.75);
    EXPECT_EQ(height("Height", "1.75 m"), 1.75);
    EXPECT_EQ(height("Height", "1m75"), 1.75);
    EXPECT_EQ(height("Height", "175cm"), 1.75);
    EXPECT_EQ(height("Height", "69"), 1.7526);
    EXPECT_EQ(height("Height", "5'9\"\""), 1.7526);
    EXPECT_EQ(height("Height", "5 ft 9 in"), 1.7526);
    EXPECT_EQ(height("Height", "5’9”"), 1.7526);
    EXPECT_EQ(height("Height", "5′9″"), 1.7526);
    EXPECT_EQ(height("Height", "6'"), 1.8288);
    EXPECT_EQ(height("Height", "5-9"), 1.7526);
    EXPECT_EQ(height("Height ft/in", "5 9"), 1.7526);
    EXPECT_EQ(height("Height ft/in", "5.9"), -1.0) << "5 ft 9 in or 5.9 ft: nobody knows";
    EXPECT_EQ(problems(row_with("Height ft/in", "5.9")), Problems{P::not_a_height});
    EXPECT_EQ(problems(row_with("Height cm", "17,5")), Problems{P::height_out_of_range});
    EXPECT_EQ(problems(row_with("Height", "5'13\"\"")), Problems{P::not_a_height});
}

TEST(BookingHeight, IsAskedWhereTwoUnitsFit) {
    const BookingPreview asked = booking_preview("Name,Height\nA,175\nB,95\n");
    EXPECT_TRUE(asked.height_unit.is_open()) << "95 cm or 95 in";
    EXPECT_FALSE(booking_preview("Name,Height\nA,175\nB,165\n").is_open());
    EXPECT_TRUE(booking_preview("Name,Height\nA,175\nB,1.65\n").height_unit.is_open())
        << "two units in one column";
}

// ---- the rest ----------------------------------------------------------------------------------

TEST(BookingLanguage, IsATagOrAName) {
    const auto tag = [](const char* cell) { return row_with("Language", cell).guest.language; };
    EXPECT_EQ(tag("de"), "de");
    EXPECT_EQ(tag("DE"), "de");
    EXPECT_EQ(tag("pt-br"), "pt-BR");
    EXPECT_EQ(tag("zh-hans"), "zh-Hans");
    EXPECT_EQ(tag("zh_HANT_tw"), "zh-Hant-TW");
    EXPECT_EQ(tag("fr_CH"), "fr-CH");
    EXPECT_EQ(tag("deu"), "de");
    EXPECT_EQ(tag("German"), "de");
    EXPECT_EQ(tag("Deutsch"), "de");
    EXPECT_EQ(tag("alemán"), "de");
    EXPECT_EQ(tag("niemiecki"), "de");
    EXPECT_EQ(tag("français"), "fr");
    EXPECT_EQ(tag("English, German"), "en");
    EXPECT_EQ(tag("日本語"), "ja");
    EXPECT_EQ(problems(row_with("Language", "Klingon?")), Problems{P::unknown_language});
    EXPECT_EQ(problems(row_with("Language", "xx")), Problems{P::unknown_language});
    EXPECT_EQ(problems(row_with("Language", "de-x-y")), Problems{P::unknown_language});
}

TEST(BookingRest, IsTakenOverOrLeftEmptyWithAWord) {
    EXPECT_EQ(row_with("Shoe size", "EU 41½").guest.shoe_size_eu, 41.5);
    EXPECT_EQ(problems(row_with("Shoe size", "9 UK")), Problems{P::not_a_shoe_size});
    EXPECT_EQ(problems(row_with("Shoe size", "9")), Problems{P::not_a_shoe_size});
    EXPECT_EQ(row_with("Dives", "0").guest.dives_before, 0);
    EXPECT_EQ(row_with("Dives", "12.0").guest.dives_before, 12);
    EXPECT_EQ(problems(row_with("Dives", "many")), Problems{P::not_a_number_of_dives});
    EXPECT_EQ(problems(row_with("Dives", "-1")), Problems{P::not_a_number_of_dives});
    EXPECT_EQ(problems(row_with("Dives", "20001")), Problems{P::not_a_number_of_dives});
    EXPECT_EQ(problems(row_with("E-mail", "mara at lind")), Problems{P::odd_email});
    EXPECT_EQ(row_with("E-mail", "mara at lind").guest.email, "mara at lind");
    EXPECT_EQ(problems(row_with("Phone", "3.46E+10")), Problems{P::odd_phone});
    EXPECT_EQ(problems(row_with("Note", "caf\xEF\xBF\xBD")), Problems{P::unread_letters});
}

TEST(BookingName, IsNeededAndNotTooLong) {
    const BookingPreview preview = booking_preview("Name,Age\n,30\n" + std::string(201, 'x') + ",30\n");
    EXPECT_EQ(preview.rows[0].messages.front(),
              (BookingMessage{0, P::name_missing, true, "", ""}));
    EXPECT_EQ(preview.rows[1].messages.front(),
              (BookingMessage{0, P::text_too_long, true, "201", "200"}));
    const BookingTable table = booking_table("Name,Age\nA,30\n");
    const BookingPreview unnamed = preview_bookings(table, {}, booking_session());
    EXPECT_EQ(unnamed.rows[0].messages.front(),
              (BookingMessage{std::nullopt, P::name_missing, true, "", ""}));
}

TEST(BookingChoicesTest, OfTwoColumnsWithOneMeaningTheFirstCounts) {
    const BookingTable table = booking_table("Name,Phone,Fax\nA,12345,67890\n");
    const BookingChoices choices{{BookingField::name, BookingField::phone, BookingField::phone},
                                 std::nullopt, std::nullopt, std::nullopt};
    EXPECT_EQ(preview_bookings(table, choices, booking_session()).rows[0].guest.phone, "12345");
}

// ---- duplicates --------------------------------------------------------------------------------

Guest known_guest(const char* name, std::optional<Date> birth_date, const char* phone = "",
                  const char* email = "") {
    Guest guest;
    guest.id = GuestId("guest-1");
    guest.name = name;
    guest.birth_date = birth_date;
    guest.phone = phone;
    guest.email = email;
    return guest;
}

std::optional<DuplicateReason> reason(const Guest& known, const std::string& row) {
    Session session = booking_session();
    session.guests = {known};
    const BookingPreview preview = booking_preview("Name,Birth date,Phone,E-mail\n" + row + "\n", session);
    const auto& duplicate = preview.rows.front().duplicate;
    if (duplicate) {
        EXPECT_EQ(duplicate->guest, known.id);
        EXPECT_EQ(duplicate->name, known.name);
    }
    return duplicate ? std::optional(duplicate->reason) : std::nullopt;
}

TEST(BookingDuplicates, AreFoundAgainstTheSession) {
    using R = DuplicateReason;
    const Guest mara = known_guest("Mara Lind", day(1990, 7, 4), "070-123 45 67", "mara@lind.example");
    EXPECT_EQ(reason(mara, "Mara Lind,1990-07-04,,"), R::birth_and_name);
    EXPECT_EQ(reason(mara, "mara lïnd,1990-07-04,,"), R::birth_and_name);
    EXPECT_EQ(reason(mara, "\"Lind, Mara\",1990-07-04,,"), R::birth_and_name);
    EXPECT_EQ(reason(mara, "Mora Lind,1990-07-04,,"), R::birth_and_name);
    EXPECT_EQ(reason(mara, "Mora Lund,1990-07-04,,"), std::nullopt) << "two slips in a short name";
    EXPECT_EQ(reason(mara, "Mara Lind,1991-07-04,,"), std::nullopt) << "a namesake";
    EXPECT_EQ(reason(mara, "Mara Lind,,,"), R::same_name);
    EXPECT_EQ(reason(mara, "Bo Ek,1985-01-01,+46 70 123 45 67,"), R::same_contact);
    EXPECT_EQ(reason(mara, "Bo Ek,1985-01-01,,MARA@lind.example"), R::same_contact);
    EXPECT_EQ(reason(mara, "Bo Ek,1985-01-01,112,nobody"), std::nullopt);
    EXPECT_EQ(reason(known_guest("", std::nullopt), ",1990-01-01,,"), std::nullopt);
}

TEST(BookingDuplicates, AreFoundWithinTheList) {
    const BookingPreview preview = booking_preview(
        "Name,Birth date,E-mail\nMara Lind,1990-07-04,lind@home.example\n"
        "Ana Lind,2014-02-03,lind@home.example\nMara Lindh,1990-07-04,\n");
    EXPECT_EQ(preview.rows[0].duplicate, std::nullopt);
    EXPECT_EQ(preview.rows[1].duplicate,
              (BookingDuplicate{DuplicateReason::same_contact, std::nullopt, 2, "Mara Lind"}));
    EXPECT_FALSE(preview.rows[1].is_repeat()) << "a family has one address";
    EXPECT_EQ(preview.rows[2].duplicate,
              (BookingDuplicate{DuplicateReason::birth_and_name, std::nullopt, 2, "Mara Lind"}));
    EXPECT_TRUE(preview.rows[2].is_repeat());
}

}  // namespace
}  // namespace leadline::files_test
