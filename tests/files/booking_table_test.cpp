// SPDX-License-Identifier: GPL-3.0-or-later
// Booking lists as spreadsheets write them: encodings, delimiters, quotes, headers, limits.
#include <nlohmann/json.hpp>

#include "tests/files/booking_support.h"

namespace leadline::files_test {
namespace {

using Fields = std::vector<BookingField>;
using Cells = std::vector<std::string>;

Fields guesses(std::string_view csv) { return first_choices(booking_table(csv)).columns; }

std::string utf16(std::u16string_view text, bool little) {
    std::string bytes = little ? "\xFF\xFE" : "\xFE\xFF";
    for (const char16_t unit : text) {
        const char low = static_cast<char>(unit & 0xFFU);
        const char high = static_cast<char>(unit >> 8U);
        bytes += little ? low : high;
        bytes += little ? high : low;
    }
    return bytes;
}

TEST(BookingTable, IsReadInEveryEncodingASpreadsheetWrites) {
    const std::string plain = "Name;Geburtsdatum\nZoë Łuczak;1990-07-04\n";
    const std::u16string wide = u"Name;Geburtsdatum\nZoë Łuczak;1990-07-04\n";
    for (const auto& [bytes, encoding] :
         std::vector<std::pair<std::string, TextEncoding>>{
             {plain, TextEncoding::utf8},
             {"\xEF\xBB\xBF" + plain, TextEncoding::utf8},
             {utf16(wide, true), TextEncoding::utf16},
             {utf16(wide, false), TextEncoding::utf16}}) {
        const BookingTable table = booking_table(bytes);
        EXPECT_EQ(table.encoding, encoding);
        ASSERT_EQ(table.lines.size(), 1U);
        EXPECT_EQ(table.lines[0].cells, (Cells{"Zoë Łuczak", "1990-07-04"}));
        EXPECT_EQ(table.columns[0].guess, BookingField::name) << "the mark is no part of a header";
    }
    const BookingTable old = booking_table("Name,Note\nJos\xE9 M\xFCller,5 \x80\n");
    EXPECT_EQ(old.encoding, TextEncoding::windows_1252);
    EXPECT_EQ(old.lines[0].cells, (Cells{"José Müller", "5 €"}));
}

TEST(BookingTable, FindsItsDelimiter) {
    EXPECT_EQ(booking_table("Name,Phone\nA,1\n").delimiter, ',');
    EXPECT_EQ(booking_table("Name;Weight\nA;75,5\nB;80,5\n").delimiter, ';');
    EXPECT_EQ(booking_table("Name\tNote\nA\t1,5; 2,5\nB\t3,5; 4\n").delimiter, '\t');
    EXPECT_EQ(booking_table("Ana;75,5\nBo;80,5\nCy;9\n").delimiter, ';') << "without a header";
    EXPECT_EQ(booking_table("Name\nA\n").delimiter, ',');
    const BookingTable said = booking_table("sep=;\nName;Phone\nA;1\n");
    EXPECT_EQ(said.delimiter, ';');
    EXPECT_EQ(said.header_line, 2U);
}

TEST(BookingTable, KeepsQuotesAndLineBreaksWithinCells) {
    const BookingTable table = booking_table(
        "Name,Height,Note\r\n\"Lind, Mara\",\"5'9\"\"\",\"one\r\ntwo\"\r\nBo,5'10\",\"say \"\"hi\"\"\"\r\n");
    ASSERT_EQ(table.lines.size(), 2U);
    EXPECT_EQ(table.lines[0].cells, (Cells{"Lind, Mara", "5'9\"", "one\ntwo"}));
    EXPECT_EQ(table.lines[1].cells, (Cells{"Bo", "5'10\"", "say \"hi\""}));
}

TEST(BookingTable, ReadsEveryLineEnd) {
    for (const char* csv : {"Name,Age\nA,1\nB,2", "Name,Age\r\nA,1\r\nB,2\r\n", "Name,Age\rA,1\rB,2\r"}) {
        const BookingTable table = booking_table(csv);
        ASSERT_EQ(table.lines.size(), 2U) << csv;
        EXPECT_EQ(table.lines[1].cells, (Cells{"B", "2"}));
    }
}

TEST(BookingTable, CountsRowsAsTheSpreadsheetDoes) {
    const BookingTable table =
        booking_table("Saturday trip,,\n\nName,Age,Note\nA,1,\"x\ny\"\n,,\n\nB,2,\n");
    EXPECT_EQ(table.header_line, 3U) << "below a title";
    ASSERT_EQ(table.lines.size(), 2U);
    EXPECT_EQ(table.lines[0].number, 4U);
    EXPECT_EQ(table.lines[1].number, 7U);
    EXPECT_EQ(table.lines[1].cells, (Cells{"B", "2"}));
}

TEST(BookingTable, WithoutAHeaderGuessesNothing) {
    const BookingTable table = booking_table("Mara Lind,1990-07-04\nBo Ek,1991-01-02\n");
    EXPECT_EQ(table.header_line, std::nullopt);
    EXPECT_EQ(table.lines.size(), 2U);
    EXPECT_EQ(first_choices(table).columns, (Fields{BookingField::unused, BookingField::unused}));
}

TEST(BookingTable, TakesEachMeaningOnce) {
    EXPECT_EQ(guesses("Name,Phone,Telephone,Note,Remarks\nA,1,2,3,4\n"),
              (Fields{BookingField::name, BookingField::phone, BookingField::unused,
                      BookingField::note, BookingField::note}));
    EXPECT_EQ(guesses("Name,Emergency contact name,Emergency phone\nA,1,2\n"),
              (Fields{BookingField::name, BookingField::unused, BookingField::unused}));
    EXPECT_EQ(guesses("Main guest name of the trip,Age\nA,1\n").front(), BookingField::name)
        << "a header that only holds the word";
}

TEST(BookingTable, TakesNeitherHealthForANoteNorATourForAName) {
    const BookingTable table =
        booking_table("First name,Last name,Tour name,Doctor name,Medical notes,Boot Name\n"
                      "Ana,Sol,Morning,Dr. Mund,none,x\n");
    EXPECT_EQ(table.columns[0].guess, BookingField::first_name);
    EXPECT_EQ(table.columns[1].guess, BookingField::last_name);
    for (const std::size_t other : {2U, 3U, 4U, 5U}) {
        EXPECT_EQ(table.columns[other].guess, BookingField::unused) << table.columns[other].header;
    }
    const BookingTable diet = booking_table("Name,Diet notes\nAna,vegetarian\n");
    EXPECT_EQ(diet.columns[1].guess, BookingField::note) << "other notes are taken";
}

TEST(BookingTable, SettlesWhatNameMeansByTheOtherColumns) {
    EXPECT_EQ(guesses("Vorname;Name\nA;B\n"),
              (Fields{BookingField::first_name, BookingField::last_name}));
    EXPECT_EQ(guesses("Name;Geburtsdatum\nA;B\n").front(), BookingField::name);
    EXPECT_EQ(guesses("Nombre;Apellidos\nA;B\n"),
              (Fields{BookingField::first_name, BookingField::last_name}));
    EXPECT_EQ(guesses("Nombre;Edad\nA;4\n").front(), BookingField::name);
    EXPECT_EQ(guesses("Nom;Âge\nA;4\n").front(), BookingField::name);
}

TEST(BookingTable, ReplacesControlCharacters) {
    const std::string nul("Name,Note\nA\0b,x\x1B[31m\n", 22);
    EXPECT_EQ(booking_table(nul).lines[0].cells, (Cells{"A b", "x [31m"}));
}

void expect_error(std::string_view csv, ErrorCode code, const std::string& place) {
    const Result<BookingTable> table = read_booking_table(csv, booking_words());
    ASSERT_FALSE(table.has_value());
    EXPECT_EQ(code_name(table.error().code), code_name(code));
    EXPECT_EQ(table.error().place, place);
}

TEST(BookingTable, RefusesWhatIsNoList) {
    expect_error("", ErrorCode::not_a_table, "");
    expect_error("\n , ,\n\n", ErrorCode::not_a_table, "");
    expect_error("Name,Note\nA,x\nB,\"y\nC,z\n", ErrorCode::not_a_table, "row 3");
}

TEST(BookingTable, RefusesWhatIsTooLargeAndTakesTheLargest) {
    const auto rows = [](std::size_t count) {
        std::string csv = "Name\n";
        for (std::size_t i = 0; i < count; ++i) csv += "A\n";
        return csv;
    };
    EXPECT_EQ(booking_table(rows(most_booking_rows)).lines.size(), most_booking_rows);
    expect_error(rows(most_booking_rows + 1), ErrorCode::table_too_large, "rows");
    expect_error(rows(2 * most_booking_rows), ErrorCode::table_too_large, "rows");
    const auto columns = [](std::size_t count) {
        return "Name\n" + std::string(count - 1, ',') + "x\n";
    };
    EXPECT_EQ(booking_table(columns(most_booking_columns)).columns.size(), most_booking_columns);
    expect_error(columns(most_booking_columns + 1), ErrorCode::table_too_large, "columns");
    EXPECT_EQ(booking_table("Name" + std::string(500, ',') + "\nA\n").columns.size(), 1U)
        << "empty cells at the end are none";
    expect_error(std::string(largest_booking_file + 1, 'x'), ErrorCode::file_too_large, "/");
}

// ---- headers -----------------------------------------------------------------------------------

struct HeaderCase {
    const char* header;
    BookingField field;
};

TEST(BookingHeaders, AreKnownInManyLanguages) {
    using F = BookingField;
    for (const auto& [header, field] : std::vector<HeaderCase>{
             {"Date of Birth", F::birth_date}, {"FECHA DE NACIMIENTO", F::birth_date},
             {"Date de naissance", F::birth_date}, {"Geburtsdatum", F::birth_date},
             {"Data di nascita", F::birth_date}, {"Data de nascimento", F::birth_date},
             {"Geboortedatum", F::birth_date}, {"Data urodzenia", F::birth_date},
             {"Weight", F::mass}, {"Peso", F::mass}, {"Poids", F::mass}, {"Gewicht", F::mass},
             {"Waga (kg)", F::mass}, {"Größe in cm", F::height}, {"GRÖSSE", F::height},
             {"Taille", F::height}, {"Altezza in cm", F::height}, {"Wzrost", F::height},
             {"Lengte (cm)", F::height}, {"Pointure", F::shoe_size}, {"Schuhgröße", F::shoe_size},
             {"Numero di scarpe", F::shoe_size}, {"Rozmiar buta", F::shoe_size},
             {"Shoe size (EU)", F::shoe_size}, {"Schoenmaat", F::shoe_size},
             {"E-Mail", F::email}, {"email_address", F::email}, {"Courriel", F::email},
             {"Teléfono", F::phone}, {"Handy", F::phone}, {"Sprache", F::language},
             {"Język", F::language}, {"Tauchgänge", F::dives}, {"Inmersiones", F::dives},
             {"Observações", F::note}, {"Uwagi", F::note}, {"Imię", F::first_name},
             {"Cognome", F::last_name}, {"Achternaam", F::last_name}, {"Alter", F::age}}) {
        const HeaderMeaning meaning = read_header(header, booking_words());
        EXPECT_TRUE(meaning.exact) << header;
        ASSERT_FALSE(meaning.fields.empty()) << header;
        EXPECT_EQ(static_cast<int>(meaning.fields.front()), static_cast<int>(field)) << header;
    }
}

TEST(BookingHeaders, OfEveryFieldAreThereInEightLanguages) {
    const nlohmann::json file = nlohmann::json::parse(
        slurp(source_dir() / "resources/booking/header-words.json"));
    EXPECT_EQ(file["fields"].size(), static_cast<std::size_t>(booking_field_count - 1));
    for (const auto& [field, languages] : file["fields"].items()) {
        for (const char* language : {"en", "es", "fr", "de", "it", "pt", "nl", "pl"}) {
            EXPECT_FALSE(languages.value(language, nlohmann::json()).empty())
                << field << " " << language;
        }
    }
}

TEST(BookingHeaders, SayTheirUnit) {
    const auto mass = [](const char* text) { return read_header(text, booking_words()).mass_unit; };
    EXPECT_EQ(mass("Weight (lb)"), MassUnit::pounds);
    EXPECT_EQ(mass("Weight [LBS]"), MassUnit::pounds);
    EXPECT_EQ(mass("Peso kg"), MassUnit::kilograms);
    EXPECT_EQ(mass("Weight"), std::nullopt);
    EXPECT_EQ(mass("Weight kg/lb"), std::nullopt);
    const auto height = [](const char* text) {
        return read_header(text, booking_words()).height_unit;
    };
    EXPECT_EQ(height("Height ft/in"), HeightUnit::feet_and_inches);
    EXPECT_EQ(height("Height (in)"), HeightUnit::inches);
    EXPECT_EQ(height("Altezza in cm"), HeightUnit::centimeters);
    EXPECT_EQ(height("Taille (m)"), HeightUnit::meters);
    EXPECT_EQ(height("Height cm or ft"), std::nullopt);
}

TEST(BookingHeaders, SayTheOrderOfDates) {
    const auto order = [](const char* text) {
        return read_header(text, booking_words()).date_order;
    };
    EXPECT_EQ(order("DOB (dd/mm/yyyy)"), DateOrder::day_month_year);
    EXPECT_EQ(order("DOB MM-DD-YYYY"), DateOrder::month_day_year);
    EXPECT_EQ(order("Geburtsdatum (TT.MM.JJJJ)"), DateOrder::day_month_year);
    EXPECT_EQ(order("Naissance jj/mm/aaaa"), DateOrder::day_month_year);
    EXPECT_EQ(order("yyyy-mm-dd"), DateOrder::year_month_day);
    EXPECT_EQ(order("Date of birth"), std::nullopt);
}

TEST(BookingHeaders, AreDataThatIsChecked) {
    const auto place = [](const char* json) {
        const Result<BookingWords> words = read_booking_words(json);
        return words ? std::string("read") : code_name(words.error().code) + words.error().place;
    };
    EXPECT_EQ(place("{"), "not_jsonline 1, column 2");
    EXPECT_EQ(place("[]"), "missing_field/");
    EXPECT_EQ(place(R"({"fields":{},"somebody_else":{}})"),
              "unsupported_version/leadline_booking_words");
    EXPECT_EQ(place(R"({"leadline_booking_words":1,"fields":{"x":{}},"somebody_else":{}})"),
              "unknown_field/fields");
    EXPECT_EQ(place(R"({"leadline_booking_words":1,"fields":{"name":{"en":[1]}},"somebody_else":{}})"),
              "wrong_type/fields/name/en");
    EXPECT_EQ(place(R"({"leadline_booking_words":1,"fields":{},"somebody_else":[]})"),
              "wrong_type/somebody_else");
}

}  // namespace
}  // namespace leadline::files_test
