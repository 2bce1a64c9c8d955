// SPDX-License-Identifier: GPL-3.0-or-later
// The roster as CSV, and back.
#include <gmock/gmock.h>

#include <random>

#include "core/files/name_folding.h"
#include "tests/files/booking_support.h"

namespace leadline::files_test {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

TEST(FormulaGuard, StandsBeforeWhatASpreadsheetWouldWorkOut) {
    EXPECT_EQ(formula_guarded("=1+1"), "'=1+1");
    EXPECT_EQ(formula_guarded("@SUM(A1)"), "'@SUM(A1)");
    EXPECT_EQ(formula_guarded("+cmd|'/c calc'!A0"), "'+cmd|'/c calc'!A0");
    EXPECT_EQ(formula_guarded("-2+3+cmd"), "'-2+3+cmd");
    EXPECT_EQ(formula_guarded("\t=1"), "'\t=1");
    EXPECT_EQ(formula_guarded("\r=1"), "'\r=1");
    EXPECT_EQ(formula_guarded("+34-600-123"), "'+34-600-123") << "would be a difference";
    EXPECT_EQ(formula_guarded("+34600123456"), "'+34600123456") << "would lose its plus";
    EXPECT_EQ(formula_guarded("+34 600 123 456"), "+34 600 123 456");
    EXPECT_EQ(formula_guarded("-3.5"), "-3.5");
    EXPECT_EQ(formula_guarded("-3.5.1"), "'-3.5.1");
    EXPECT_EQ(formula_guarded("-"), "'-");
    EXPECT_EQ(formula_guarded("a=b"), "a=b");
    EXPECT_EQ(formula_guarded("'t Hooft"), "'t Hooft");
    EXPECT_EQ(formula_guarded(""), "");
}

TEST(FormulaGuard, ComesOffAgain) {
    for (const char* text : {"=1", "'=1", "''=1", "'", "''", "'-3", "-3", "'t Hooft", "+34 600", "",
                             "+34600", "'\t", "x"}) {
        EXPECT_EQ(formula_unguarded(formula_guarded(text)), text);
    }
    EXPECT_EQ(formula_unguarded("'-3"), "-3") << "put there by hand";
}

/// The guests of a session without what no list holds.
std::vector<Guest> listed(std::vector<Guest> guests) {
    std::vector<Guest> left;
    for (const Guest& guest : guests) {
        Guest one;
        one.name = guest.name;
        one.birth_date = guest.birth_date;
        one.language = guest.language;
        one.phone = guest.phone;
        one.email = guest.email;
        one.body_mass = guest.body_mass;
        one.body_height = guest.body_height;
        one.shoe_size_eu = guest.shoe_size_eu;
        one.dives_before = guest.dives_before;
        one.note = guest.note;
        left.push_back(one);
    }
    return left;
}

void expect_same_guests(const Session& session) {
    Session empty;
    empty.date = session.date;
    const BookingPreview preview = booking_preview(write_booking_csv(session), empty);
    EXPECT_FALSE(preview.is_open());
    std::vector<Guest> read;
    for (const BookingRow& row : preview.rows) {
        EXPECT_FALSE(row.has_error()) << row.guest.name;
        read.push_back(row.guest);
    }
    const std::vector<Guest> expected = listed(session.guests);
    ASSERT_EQ(read.size(), expected.size());
    for (std::size_t i = 0; i < read.size(); ++i) {
        SCOPED_TRACE(expected[i].name);
        EXPECT_EQ(read[i].name, expected[i].name);
        EXPECT_EQ(read[i].note, expected[i].note);
        EXPECT_EQ(read[i].phone, expected[i].phone);
        EXPECT_EQ(read[i].body_height, expected[i].body_height);
        EXPECT_TRUE(read[i] == expected[i]);
    }
}

TEST(BookingExport, OfTheSamplesComesBack) {
    for (const std::filesystem::path& path : sample_paths()) {
        SCOPED_TRACE(path.filename().string());
        expect_same_guests(load_session(path).session);
    }
}

TEST(BookingExport, OfOddGuestsComesBack) {
    std::mt19937 random(20260704);
    const std::vector<std::string> odd = {"=", "+", "-", "@", "'", "\"", ",", ";", "\n", "x", "é",
                                          "Ł", "日", "1", ".", " y", "-?-", "n/a", "\"\"", "+34 6"};
    const auto text = [&](std::size_t most) {
        std::string made;
        for (std::size_t count = random() % most; count > 0; --count) made += odd[random() % odd.size()];
        return made;
    };
    const auto is_trimmed = [](const std::string& one) {
        return one.empty() || (one.find_first_of(" \n") != 0 && one.find_last_of(" \n") != one.size() - 1);
    };
    Session session = booking_session();
    for (int i = 0; i < 300; ++i) {
        Guest guest;
        guest.name = "N" + text(8);
        std::replace(guest.name.begin(), guest.name.end(), '\n', ' ');
        guest.note = text(12);
        guest.phone = "+" + std::to_string(random() % 1000000);
        if (!is_trimmed(guest.name) || !is_trimmed(guest.note)) continue;
        guest.email = "=a@b.example";
        guest.language = i % 2 == 0 ? "pt-BR" : "pl";
        guest.body_mass = Kilograms(15.0 + 0.5 * (i % 400));
        guest.body_height = Meters((80.0 + i % 150) / 100.0);
        guest.shoe_size_eu = 20.0 + 0.5 * (i % 60);
        guest.dives_before = i;
        guest.birth_date = Date{std::chrono::sys_days(session.date) - std::chrono::days(100 * (i + 25))};
        session.guests.push_back(guest);
    }
    ASSERT_GT(session.guests.size(), 100U);
    expect_same_guests(session);
}

TEST(BookingExport, IsRfc4180WithByteOrderMark) {
    Session session = booking_session();
    Guest guest;
    guest.name = "Lind, \"Mara\"";
    guest.note = "=HYPERLINK(\"x\")";
    session.guests = {guest};
    EXPECT_EQ(write_booking_csv(session),
              "\xEF\xBB\xBF\"Name\",\"Birth date\",\"Language\",\"Weight (kg)\",\"Height (cm)\","
              "\"Shoe size (EU)\",\"Phone\",\"E-mail\",\"Dives\",\"Note\"\r\n"
              "\"Lind, \"\"Mara\"\"\",,\"en\",,,,,,,\"'=HYPERLINK(\"\"x\"\")\"\r\n");
}

TEST(BookingExport, HoldsNothingOfHealthOrConsent) {
    Session session = booking_session();
    Guest guest;
    guest.name = "Mara Lind";
    const std::string without = [&] {
        session.guests = {guest};
        return write_booking_csv(session);
    }();
    guest.screening = {ScreeningOutcome::physician_required, session.date, "own form", "Kai Ohm",
                       true, session.date, TodayOutcome::not_today, SignatureKind::on_paper};
    guest.guardian_consent = true;
    guest.certified = true;
    guest.breathing = BreathingClass::nervous;
    guest.measured_rmv = LitersPerMinute(33.0);
    guest.kit.suit = "5 mm M";
    guest.group = GroupId("group-1");
    session.guests = {guest};
    EXPECT_EQ(write_booking_csv(session), without);
}

// ---- names -------------------------------------------------------------------------------------

TEST(NameFolding, MakesSpellingsAlike) {
    EXPECT_EQ(folded_text("Łukasz  Ærø"), "lukasz aero");
    EXPECT_EQ(folded_text(" STRASSE Straße "), "strasse strasse");
    EXPECT_EQ(folded_text("O’Néill"), "o'neill");
    EXPECT_EQ(folded_text("Zoe\xCC\x88"), "zoe");
    EXPECT_EQ(folded_text("ΜΆΡΑΣ"), folded_text("μάρας"));
    EXPECT_EQ(folded_text("\xFF\xC3"), folded_text("\xFF\xC3")) << "no UTF-8: no harm";
}

TEST(NameFolding, FindsOneSlipAndTwoInLongNames) {
    const auto near = [](const char* a, const char* b) {
        const bool there = near_names(folded_name(a), folded_name(b));
        EXPECT_EQ(there, near_names(folded_name(b), folded_name(a))) << a << " " << b;
        return there;
    };
    EXPECT_TRUE(near("Mara Lind", "mara lind"));
    EXPECT_TRUE(near("Mara Lind", "Mara Lin"));
    EXPECT_TRUE(near("Mara Lind", "Maar Lind")) << "two letters swapped";
    EXPECT_TRUE(near("Mara Lind", "Lind Mara"));
    EXPECT_TRUE(near("Mara-Lisa Lind", "Lind, Mara Lisa"));
    EXPECT_FALSE(near("Mara Lind", "Mira Lund"));
    EXPECT_TRUE(near("Wilhelmina Vermeer", "Wilhelmine Vermer"));
    EXPECT_FALSE(near("Wilhelmina Vermeer", "Wilhelmine Vermers"));
    EXPECT_FALSE(near("Ana", "Bo"));
    EXPECT_FALSE(near("", ""));
    EXPECT_FALSE(near(" ", "x"));
}

}  // namespace
}  // namespace leadline::files_test
