// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/session_edits.h"

#include <gtest/gtest.h>

#include "core/planning/overrule_key.h"
#include "core/planning/plan.h"
#include "tests/planning/scene.h"

namespace leadline {
namespace {

TEST(MoveToDate, AsksTheQuestionsOfTheDayAnew) {
    Session session = sound_scene().session;
    session.guests[0].screening.today = TodayOutcome::clear;
    session.overrules = {{"care/screening_today_flagged:guest-1", "holds hands", "Ruta"},
                         {"screening_today_flagged:guest-1", "slept it off", "Ruta"},
                         {"kit_missing:guest-1", "own set", "Ruta"}};
    Session same = session;
    move_to_date(same, session.date);
    EXPECT_EQ(same, session) << "the same day changes nothing";
    move_to_date(session, day(2026, 7, 5));
    EXPECT_EQ(session.date, day(2026, 7, 5));
    EXPECT_EQ(session.guests[0].screening.today, TodayOutcome::unanswered);
    ASSERT_EQ(session.overrules.size(), 1U);
    EXPECT_EQ(session.overrules[0].finding, "kit_missing:guest-1");
}

HealthCheck corrected(std::optional<Date> before, std::optional<Date> after,
                      const std::string& edition = present_edition) {
    Guest guest;
    guest.birth_date = before;
    guest.screening.outcome = ScreeningOutcome::clear;
    guest.screening.edition = edition;
    correct_birth_date(guest, after, day(2026, 7, 4));
    EXPECT_EQ(guest.birth_date, after);
    return guest.screening;
}

TEST(CorrectBirthDate, OpensACheckThatAskedTooLittle) {
    const Date young = day(1990, 1, 1);
    const Date of_age = day(1981, 7, 4);
    const Date nearly = day(1981, 7, 5);
    EXPECT_EQ(corrected(young, of_age).outcome, ScreeningOutcome::unanswered);
    EXPECT_EQ(corrected(young, std::nullopt).outcome, ScreeningOutcome::unanswered);
    EXPECT_EQ(corrected(young, nearly).outcome, ScreeningOutcome::clear);
    EXPECT_EQ(corrected(of_age, young).outcome, ScreeningOutcome::clear);
    EXPECT_EQ(corrected(std::nullopt, of_age).outcome, ScreeningOutcome::clear)
        << "nobody's age was known, so all was asked";
    EXPECT_EQ(corrected(young, of_age, own_form_edition).outcome, ScreeningOutcome::clear);
}

TEST(OverruleKey, ADecisionAboutACautionNeverLiftsAStop) {
    Finding caution;
    caution.code = FindingCode::screening_today_flagged;
    caution.severity = Severity::caution;
    caution.subject = GuestId("guest-1");
    Finding stop = caution;
    stop.severity = Severity::stop;
    const Overrule about_caution{overrule_key(caution), "holds hands", "Ruta"};
    const Overrule about_stop{overrule_key(stop), "slept it off", "Ruta"};
    EXPECT_TRUE(covers(about_caution, caution));
    EXPECT_FALSE(covers(about_caution, stop));
    EXPECT_TRUE(covers(about_stop, stop));
    EXPECT_TRUE(covers(about_stop, caution));
    stop.subject = caution.subject = GuestId("guest-2");
    EXPECT_FALSE(covers(about_stop, stop));
    EXPECT_FALSE(covers(about_caution, caution));
}

TEST(ForgetScreeningOverrules, LeavesEverythingElse) {
    Session session;
    session.overrules = {{"screening_physician:guest-1", "a", "R"},
                         {"care/approval_older_than_check:guest-1", "b", "R"},
                         {"screening_physician:guest-11", "c", "R"},
                         {"kit_missing:guest-1", "d", "R"}};
    forget_screening_overrules(session, GuestId("guest-1"));
    ASSERT_EQ(session.overrules.size(), 2U);
    EXPECT_EQ(session.overrules[0].reason, "c");
    EXPECT_EQ(session.overrules[1].reason, "d");
}

TEST(OutcomeOfYes, IsAsTheTradeHasIt) {
    EXPECT_EQ(outcome_of_yes(TodayQuestion::cold_or_blocked_ears), TodayOutcome::not_today);
    EXPECT_EQ(outcome_of_yes(TodayQuestion::alcohol_or_drugs), TodayOutcome::not_today);
    EXPECT_EQ(outcome_of_yes(TodayQuestion::new_medicine), TodayOutcome::not_today);
    EXPECT_EQ(outcome_of_yes(TodayQuestion::unwilling_or_very_afraid), TodayOutcome::not_today);
    EXPECT_EQ(outcome_of_yes(TodayQuestion::cannot_swim), TodayOutcome::with_care);
    EXPECT_EQ(outcome_of_yes(TodayQuestion::flight_or_mountain_within_24_hours),
              TodayOutcome::with_care);
}

}  // namespace
}  // namespace leadline
