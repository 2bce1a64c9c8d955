// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/screening.h"

#include "tests/planning/scene.h"

namespace leadline {
namespace {

constexpr auto pregnancy = static_cast<std::size_t>(HealthTheme::pregnancy);

Screening all_no() {
    Screening screening;
    screening.health.fill(Answer::no);
    screening.today.fill(Answer::no);
    return screening;
}

TEST(ScreeningOutcomes, StartUnanswered) {
    EXPECT_EQ(outcome(Screening{}), ScreeningOutcome::unanswered);
    EXPECT_TRUE(today_unanswered(Screening{}));
    EXPECT_TRUE(flagged_themes(Screening{}).empty());
    EXPECT_TRUE(flagged_today(Screening{}).empty());
}

TEST(ScreeningOutcomes, AreClearOnlyWhenEveryThemeIsAnswered) {
    EXPECT_EQ(outcome(all_no()), ScreeningOutcome::clear);
    for (std::size_t i = 0; i < health_theme_count; ++i) {
        Screening screening = all_no();
        screening.health[i] = Answer::unanswered;
        EXPECT_EQ(outcome(screening), ScreeningOutcome::unanswered) << i;
    }
}

TEST(ScreeningOutcomes, SendEveryYesToAPhysicianAndPregnancyHome) {
    for (std::size_t i = 0; i < health_theme_count; ++i) {
        Screening screening = all_no();
        screening.health[i] = Answer::yes;
        EXPECT_EQ(outcome(screening), i == pregnancy ? ScreeningOutcome::does_not_dive
                                                     : ScreeningOutcome::physician_required)
            << i;
        EXPECT_EQ(flagged_themes(screening),
                  std::vector<HealthTheme>{static_cast<HealthTheme>(i)});
        screening.physician_approval_seen = true;
        EXPECT_EQ(outcome(screening), i == pregnancy ? ScreeningOutcome::does_not_dive
                                                     : ScreeningOutcome::clear)
            << i;
    }
}

TEST(ScreeningOutcomes, HideNoBadNewsBehindAGap) {
    Screening screening;  // nothing else answered
    screening.health[static_cast<std::size_t>(HealthTheme::lungs)] = Answer::yes;
    EXPECT_EQ(outcome(screening), ScreeningOutcome::physician_required);
    screening.health[pregnancy] = Answer::yes;
    EXPECT_EQ(outcome(screening), ScreeningOutcome::does_not_dive);
}

TEST(ScreeningOutcomes, AnApprovalDoesNotFillAGap) {
    Screening screening = all_no();
    screening.health[static_cast<std::size_t>(HealthTheme::lungs)] = Answer::yes;
    screening.health[static_cast<std::size_t>(HealthTheme::mind)] = Answer::unanswered;
    screening.physician_approval_seen = true;
    EXPECT_EQ(outcome(screening), ScreeningOutcome::unanswered);
}

TEST(ScreeningOutcomes, DoNotDependOnTodaysQuestions) {
    Screening screening = all_no();
    screening.today.fill(Answer::yes);
    EXPECT_EQ(outcome(screening), ScreeningOutcome::clear);
    EXPECT_EQ(flagged_today(screening).size(), today_question_count);
}

TEST(ScreeningLists, KeepTheOrderAsked) {
    Screening screening = all_no();
    screening.health[static_cast<std::size_t>(HealthTheme::mind)] = Answer::yes;
    screening.health[static_cast<std::size_t>(HealthTheme::lungs)] = Answer::yes;
    EXPECT_EQ(flagged_themes(screening),
              (std::vector<HealthTheme>{HealthTheme::lungs, HealthTheme::mind}));
    screening.today[static_cast<std::size_t>(TodayQuestion::cannot_swim)] = Answer::yes;
    screening.today[static_cast<std::size_t>(TodayQuestion::alcohol_or_drugs)] = Answer::yes;
    EXPECT_EQ(flagged_today(screening), (std::vector<TodayQuestion>{
                                            TodayQuestion::alcohol_or_drugs,
                                            TodayQuestion::cannot_swim}));
}

TEST(ScreeningLists, MissOneOfTodaysAnswers) {
    for (std::size_t i = 0; i < today_question_count; ++i) {
        Screening screening = all_no();
        EXPECT_FALSE(today_unanswered(screening));
        screening.today[i] = Answer::unanswered;
        EXPECT_TRUE(today_unanswered(screening)) << i;
    }
}

}  // namespace
}  // namespace leadline
