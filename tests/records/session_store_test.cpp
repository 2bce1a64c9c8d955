// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/session_store.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QString>
#include <QStringList>
#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <filesystem>
#include <limits>

#include "core/files/text_file.h"
#include "core/records/guest_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::day;
using test::must;
using testing::HasSubstr;

/// Tables that hold parts of sessions.
const QStringList session_tables{
    u"sessions"_qs,         u"session_sites"_qs,     u"conditions"_qs,     u"profile_points"_qs,
    u"session_rule_sets"_qs, u"overrules"_qs,        u"staff"_qs,          u"staff_languages"_qs,
    u"session_groups"_qs,   u"session_guests"_qs,    u"logs"_qs,
                u"log_divers"_qs,     u"log_samples"_qs,
    u"staff_earlier_dives"_qs, u"stock_cylinders"_qs, u"stock_suits"_qs,
    u"stock_lead_pieces"_qs};

class SessionStoreTest : public testing::Test {
protected:
    SessionFile stored(const SessionFile& file) {
        return must(store_.load(must(store_.insert(file))));
    }
    qint64 rows(const QString& table) {
        return test::number(*database_, u"SELECT count(*) FROM %1"_qs.arg(table));
    }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    SessionStore store_{*database_};
};

std::uint64_t bits(double value) { return std::bit_cast<std::uint64_t>(value); }

TEST_F(SessionStoreTest, GivesBackEveryField) {
    const SessionFile file = test::full_session();
    const SessionFile loaded = stored(file);
    EXPECT_EQ(loaded, file);
    // The quantities' own == is approximate; the file's text shows every digit.
    EXPECT_EQ(write_session(loaded), write_session(file));
}

TEST_F(SessionStoreTest, TheFullSessionLeavesNoTableEmpty) {
    must(store_.insert(test::full_session()));
    for (const QString& table : session_tables) EXPECT_GT(rows(table), 0) << table.toStdString();
}

TEST_F(SessionStoreTest, GivesBackAPlainSession) {
    const SessionFile loaded = stored(test::plain_session());
    EXPECT_EQ(loaded, test::plain_session());
    EXPECT_FALSE(loaded.log.has_value());
}

TEST_F(SessionStoreTest, KeepsNumbersToTheLastBit) {
    SessionFile file = test::full_session();
    Guest& guest = file.session.guests.at(1);
    guest.body_mass = Kilograms(0.1 + 61.2);
    guest.measured_rmv = LitersPerMinute(100.0 / 7.0);
    guest.kit.lead = Kilograms(std::numeric_limits<double>::denorm_min());
    guest.kit.cylinder->fill_pressure = Bars(std::nextafter(200.0, 201.0));
    guest.kit.cylinder->fill_temperature = Kelvins(293.15000000000003);
    file.session.conditions.barometer = Pascals(1e5 + 1.0 / 3.0);
    const SessionFile loaded = stored(file);
    const Guest& back = loaded.session.guests.at(1);
    EXPECT_EQ(bits(back.body_mass->value()), bits(guest.body_mass->value()));
    EXPECT_EQ(bits(back.measured_rmv->value()), bits(guest.measured_rmv->value()));
    EXPECT_EQ(bits(back.kit.lead->value()), bits(guest.kit.lead->value()));
    EXPECT_EQ(bits(back.kit.cylinder->fill_pressure.value()),
              bits(guest.kit.cylinder->fill_pressure.value()));
    EXPECT_EQ(bits(back.kit.cylinder->fill_temperature.value()),
              bits(guest.kit.cylinder->fill_temperature.value()));
    EXPECT_EQ(bits(loaded.session.conditions.barometer->value()),
              bits(file.session.conditions.barometer->value()));
    EXPECT_EQ(bits(loaded.session.conditions.water_temperature.value()),
              bits(file.session.conditions.water_temperature.value()));
    EXPECT_EQ(bits(loaded.session.site.latitude.value()), bits(file.session.site.latitude.value()));
}

TEST_F(SessionStoreTest, KnowsEveryChoice) {
    for (const Entry entry : {Entry::shore, Entry::boat, Entry::pool_steps}) {
        SessionFile file = test::plain_session();
        file.session.site.entry = entry;
        EXPECT_EQ(stored(file), file);
    }
    for (const Current current :
         {Current::none, Current::slight, Current::moderate, Current::strong}) {
        SessionFile file = test::plain_session();
        file.session.conditions.current = current;
        EXPECT_EQ(stored(file), file);
    }
    for (const BreathingClass breathing : {BreathingClass::calm, BreathingClass::average,
                                           BreathingClass::nervous, BreathingClass::child}) {
        SessionFile file = test::session_with(day(2026, 7, 4), {test::guest_named("a", "Anna")});
        file.session.guests.front().breathing = breathing;
        EXPECT_EQ(stored(file), file);
    }
}

TEST_F(SessionStoreTest, KnowsEveryOutcomeOfAHealthCheck) {
    for (int i = 0; i < 4; ++i) {
        SessionFile file = test::session_with(day(2026, 7, 4), {test::guest_named("a", "Anna")});
        HealthCheck& check = file.session.guests.front().screening;
        check.outcome = static_cast<ScreeningOutcome>(i);
        check.today = static_cast<TodayOutcome>(3 - i);
        check.signature = static_cast<SignatureKind>(i % 3);
        check.physician_approval_seen = i % 2 == 0;
        EXPECT_EQ(stored(file), file);
    }
}

TEST_F(SessionStoreTest, KeepsTheOrderOfLists) {
    SessionFile file = test::full_session();
    const SessionRow row = must(store_.insert(file));
    std::reverse(file.session.guests.begin(), file.session.guests.end());
    std::reverse(file.session.staff.begin(), file.session.staff.end());
    std::reverse(file.session.groups.begin(), file.session.groups.end());
    std::reverse(file.session.rule_sets.begin(), file.session.rule_sets.end());
    std::reverse(file.session.overrules.begin(), file.session.overrules.end());
    std::reverse(file.log->divers.begin(), file.log->divers.end());
    must(store_.save(row, file));
    EXPECT_EQ(must(store_.load(row)), file);
}

TEST_F(SessionStoreTest, SavesAnEdit) {
    SessionFile file = test::full_session();
    const SessionRow row = must(store_.insert(file));
    file.session.title = "";
    file.session.leader = StaffId();
    file.session.site.bottom_depth.reset();
    file.session.guests.erase(file.session.guests.begin() + 2);
    file.session.guests.push_back(test::guest_named("guest-40", "Ina"));
    file.session.guests.at(1).kit.cylinder.reset();
    file.session.staff.pop_back();
    file.session.groups.erase(file.session.groups.begin() + 1);
    file.session.guests.front().group = GroupId();
    file.session.overrules.clear();
    file.log->divers.erase(file.log->divers.begin());
    file.log->divers.front().samples.pop_back();
    must(store_.save(row, file));
    EXPECT_EQ(must(store_.load(row)), file);
    EXPECT_EQ(rows(u"sessions"_qs), 1);
}

TEST_F(SessionStoreTest, SavingAPlainSessionOverAFullOneLeavesNothingBehind) {
    const SessionRow row = must(store_.insert(test::full_session()));
    must(store_.save(row, test::plain_session()));
    EXPECT_EQ(must(store_.load(row)), test::plain_session());
    for (const QString& table : {u"staff"_qs, u"session_groups"_qs, u"session_guests"_qs,
                                 u"overrules"_qs,
                                 u"logs"_qs, u"log_divers"_qs, u"log_samples"_qs,
                                 u"staff_earlier_dives"_qs, u"stock_cylinders"_qs,
                                 u"stock_suits"_qs, u"stock_lead_pieces"_qs}) {
        EXPECT_EQ(rows(table), 0) << table.toStdString();
    }
}

TEST_F(SessionStoreTest, SavingTouchesNoOtherSession) {
    const SessionRow one = must(store_.insert(test::full_session()));
    const SessionRow other = must(store_.insert(test::full_session()));
    must(store_.save(one, test::plain_session()));
    EXPECT_EQ(must(store_.load(other)), test::full_session());
}

TEST_F(SessionStoreTest, RemovesAllThatBelongsToASession) {
    const SessionRow row = must(store_.insert(test::full_session()));
    must(store_.remove(row));
    for (const QString& table : session_tables) EXPECT_EQ(rows(table), 0) << table.toStdString();
    EXPECT_EQ(must(GuestStore(*database_).count()), 3);
}

TEST_F(SessionStoreTest, NeverGivesTheRowOfARemovedSessionAgain) {
    const SessionRow row = must(store_.insert(test::plain_session()));
    must(store_.remove(row));
    EXPECT_NE(must(store_.insert(test::plain_session())), row);
}

TEST_F(SessionStoreTest, TellsWhenASessionIsNotThere) {
    const Error missing{ErrorCode::not_found, "session", "99", ""};
    const auto loaded = store_.load(SessionRow{99});
    ASSERT_FALSE(loaded.has_value());
    EXPECT_EQ(loaded.error(), missing);
    const auto saved = store_.save(SessionRow{99}, test::full_session());
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error(), missing);
    const auto removed = store_.remove(SessionRow{99});
    ASSERT_FALSE(removed.has_value());
    EXPECT_EQ(removed.error(), missing);
    EXPECT_EQ(rows(u"persons"_qs), 0);
}

TEST_F(SessionStoreTest, RefusesWhatASessionFileMayNotHold) {
    SessionFile file = test::full_session();
    file.session.guests.at(1).body_mass = Kilograms(1000.0);
    const auto inserted = store_.insert(file);
    ASSERT_FALSE(inserted.has_value());
    EXPECT_EQ(inserted.error().code, ErrorCode::out_of_range);
    file = test::full_session();
    file.log->divers.front().end_pressure = Bars(222.0);
    const auto logged = store_.insert(file);
    ASSERT_FALSE(logged.has_value());
    EXPECT_EQ(logged.error().code, ErrorCode::ends_at_higher_pressure);
    EXPECT_EQ(rows(u"sessions"_qs), 0);
}

TEST_F(SessionStoreTest, AFailedSaveChangesNothing) {
    const SessionRow row = must(store_.insert(test::full_session()));
    test::run(*database_, u"CREATE TEMP TRIGGER no_samples BEFORE INSERT ON log_samples "
                          "BEGIN SELECT raise(ABORT, 'the disk is full'); END"_qs);
    SessionFile file = test::full_session();
    file.session.title = "Changed";
    file.session.guests.front().name = "Changed";
    file.session.site.name = "Changed";
    file.log->divers.at(1).samples.pop_back();
    const auto saved = store_.save(row, file);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().code, ErrorCode::database_failed);
    EXPECT_THAT(saved.error().given, HasSubstr("the disk is full"));
    EXPECT_FALSE(store_.insert(file).has_value());
    EXPECT_EQ(must(store_.load(row)), test::full_session());
    EXPECT_EQ(rows(u"sessions"_qs), 1);
    EXPECT_EQ(must(GuestStore(*database_).find(u"changed"_qs)).size(), 0U);
    EXPECT_EQ(rows(u"sites"_qs), 1);
}

TEST_F(SessionStoreTest, TakesTextForTextOnly) {
    const std::vector<std::string> texts{
        "Robert'); DROP TABLE persons;--", "\" OR 1=1 --", "?", ":name @name $1 %1 %2", "\\'\\\"",
        "a\nb\r\n\tc",  "\xF0\x9F\x90\xA0 \xE6\xBD\x9C\xE6\xB0\xB4", "NULL", std::string("a\0b", 3),
        " leading and trailing ", "e\xCC\x81 and \xC3\xA9"};
    for (const std::string& text : texts) {
        SessionFile file = test::full_session();
        file.session.title = text;
        file.session.guests.front().name = text;
        file.session.guests.front().note = text;
        file.session.site.name = text;
        file.session.overrules.front().reason = text;
        file.session.staff.front().languages.front() = text;
        file.log->note = text;
        EXPECT_EQ(stored(file), file) << text;
    }
    EXPECT_EQ(rows(u"sessions"_qs), qint64(texts.size()));
}

TEST_F(SessionStoreTest, RefusesTextThatIsNotUtf8) {
    SessionFile file = test::plain_session();
    file.session.title = "\xC3(";
    const auto inserted = store_.insert(file);
    ASSERT_FALSE(inserted.has_value());
    EXPECT_EQ(inserted.error().code, ErrorCode::bad_text);
    EXPECT_EQ(rows(u"sessions"_qs), 0);
}

TEST_F(SessionStoreTest, ListsTheNewestFirst) {
    SessionFile early = test::plain_session();
    early.session.date = day(2026, 7, 4);
    early.session.dive_time = TimeOfDay{540};
    SessionFile late = early;
    late.session.dive_time = TimeOfDay{900};
    SessionFile old = early;
    old.session.date = day(2025, 12, 31);
    const SessionRow early_row = must(store_.insert(early));
    const SessionRow late_row = must(store_.insert(late));
    const SessionRow old_row = must(store_.insert(old));
    const SessionRow twin_row = must(store_.insert(early));
    std::vector<SessionRow> order;
    for (const SessionSummary& summary : must(store_.list())) order.push_back(summary.row);
    EXPECT_EQ(order, (std::vector<SessionRow>{late_row, twin_row, early_row, old_row}));
}

TEST_F(SessionStoreTest, SummarizesASession) {
    const SessionFile file = test::full_session();
    const SessionRow row = must(store_.insert(file));
    const SessionRow plain = must(store_.insert(test::plain_session()));
    const std::vector<SessionSummary> list = must(store_.list());
    ASSERT_EQ(list.size(), 2U);
    EXPECT_EQ(list[0].row, row);
    EXPECT_EQ(list[0].title, file.session.title);
    EXPECT_EQ(list[0].date, file.session.date);
    EXPECT_EQ(list[0].dive_time, file.session.dive_time);
    EXPECT_EQ(list[0].site, file.session.site.name);
    EXPECT_EQ(list[0].guests, 3);
    EXPECT_TRUE(list[0].has_log);
    EXPECT_EQ(list[1].row, plain);
    EXPECT_EQ(list[1].guests, 0);
    EXPECT_FALSE(list[1].has_log);
}

TEST_F(SessionStoreTest, ListsNothingAtFirst) { EXPECT_TRUE(must(store_.list()).empty()); }

TEST_F(SessionStoreTest, TellsOfAValueThatTheSchemaShouldHaveKeptOut) {
    const SessionRow row = must(store_.insert(test::full_session()));
    test::run(*database_, u"PRAGMA ignore_check_constraints = ON"_qs);
    test::run(*database_, u"UPDATE conditions SET current = 'whirling'"_qs);
    const auto loaded = store_.load(row);
    ASSERT_FALSE(loaded.has_value());
    EXPECT_EQ(loaded.error().code, ErrorCode::database_failed);
    EXPECT_EQ(loaded.error().given, "whirling");
    test::run(*database_, u"UPDATE conditions SET current = 'none'"_qs);
    test::run(*database_, u"UPDATE sessions SET date = '2026-02-30'"_qs);
    EXPECT_EQ(store_.load(row).error().given, "2026-02-30");
}

TEST_F(SessionStoreTest, GivesBackTheShippedSessions) {
    const std::filesystem::path source(LEADLINE_SOURCE_DIR);
    const std::string schema =
        must(read_text_file(source / "resources/schema/session.schema.json"));
    int read = 0;
    for (const auto& entry : std::filesystem::directory_iterator(source / "sample-sessions")) {
        if (entry.path().extension() != ".json") continue;
        const SessionFile file = must(read_session(must(read_text_file(entry.path())), schema));
        const SessionFile loaded = stored(file);
        EXPECT_EQ(loaded, file) << entry.path();
        EXPECT_EQ(write_session(loaded), write_session(file)) << entry.path();
        ++read;
    }
    EXPECT_GT(read, 0) << "no sample sessions found";
}

}  // namespace
}  // namespace leadline
