// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/screening.h"

#include "core/files/questionnaire_file.h"
#include "core/files/text_file.h"
#include "core/planning/check_screening.h"
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

Questionnaire present_questions() {
    const std::string resources = LEADLINE_SOURCE_DIR "/resources/";
    return must(read_questionnaire(
        must(read_text_file(resources + "screening/questions-1.json")),
        must(read_text_file(resources + "schema/questions.schema.json"))));
}

/// One theme of each sort.
Questionnaire small_questions() {
    return {"Test 1",
            {{"heart", "Heart", "Trouble?", ThemeKind::follow_ups, {}, {{"a", "?"}, {"b", "?"}}},
             {"over", "Over", "", ThemeKind::follow_ups, 45, {{"smoking", "?"}}},
             {"surgery", "Surgery", "Lately?", ThemeKind::physician_at_once, {}, {}},
             {"pregnancy", "Pregnancy", "Now?", ThemeKind::does_not_dive, {}, {}}}};
}

HealthAnswers all_no(const Questionnaire& questionnaire) {
    HealthAnswers answers;
    for (const QuestionTheme& theme : questionnaire.themes) {
        if (!theme.from_age) set_answer(answers, theme.id, Answer::no);
        for (const FollowUp& asked : theme.follow_ups) set_answer(answers, asked.id, Answer::no);
    }
    answers.today.fill(Answer::no);
    return answers;
}

ScreeningOutcome judged(const std::map<std::string, Answer>& changes, std::optional<int> age) {
    const Questionnaire questions = small_questions();
    HealthAnswers answers = all_no(questions);
    for (const auto& [id, answer] : changes) set_answer(answers, id, answer);
    return outcome_of(questions, answers, age);
}

constexpr auto yes = Answer::yes;
constexpr auto open = Answer::unanswered;
using Outcome = ScreeningOutcome;

TEST(HealthOutcome, IsUnansweredAtFirstAndClearWhenAllIsNo) {
    EXPECT_EQ(outcome_of(small_questions(), {}, 30), Outcome::unanswered);
    EXPECT_EQ(judged({}, 30), Outcome::clear);
    EXPECT_EQ(judged({}, 60), Outcome::clear);
}

TEST(HealthOutcome, OfAYesFollowsTheKindOfTheTheme) {
    EXPECT_EQ(judged({{"surgery", yes}}, 30), Outcome::physician_required);
    EXPECT_EQ(judged({{"pregnancy", yes}}, 30), Outcome::does_not_dive);
    EXPECT_EQ(judged({{"heart", yes}}, 30), Outcome::clear) << "all closer questions are no";
    EXPECT_EQ(judged({{"heart", yes}, {"b", yes}}, 30), Outcome::physician_required);
}

TEST(HealthOutcome, IgnoresCloserQuestionsOfAThemeThatIsNo) {
    EXPECT_EQ(judged({{"a", yes}}, 30), Outcome::clear);
    EXPECT_EQ(judged({{"a", open}, {"b", open}}, 30), Outcome::clear);
}

TEST(HealthOutcome, OfAnEmptyCloserQuestionIsUnanswered) {
    EXPECT_EQ(judged({{"heart", yes}, {"a", open}}, 30), Outcome::unanswered);
    EXPECT_EQ(judged({{"heart", yes}, {"a", open}, {"b", open}}, 30), Outcome::unanswered);
}

TEST(HealthOutcome, AsksByAgeWhoIsOldEnoughOrOfUnknownAge) {
    EXPECT_EQ(judged({{"smoking", yes}}, 44), Outcome::clear);
    EXPECT_EQ(judged({{"smoking", yes}}, 45), Outcome::physician_required);
    EXPECT_EQ(judged({{"smoking", yes}}, std::nullopt), Outcome::physician_required);
    EXPECT_EQ(judged({{"smoking", open}}, 44), Outcome::clear);
    EXPECT_EQ(judged({{"smoking", open}}, 45), Outcome::unanswered);
    EXPECT_EQ(judged({{"smoking", open}}, std::nullopt), Outcome::unanswered);
}

TEST(HealthOutcome, IsNeverHiddenByAGap) {
    const Questionnaire questions = small_questions();
    HealthAnswers answers;
    set_answer(answers, "surgery", yes);
    EXPECT_EQ(outcome_of(questions, answers, 30), Outcome::physician_required);
    set_answer(answers, "pregnancy", yes);
    EXPECT_EQ(outcome_of(questions, answers, 30), Outcome::does_not_dive);
    EXPECT_EQ(judged({{"heart", yes}, {"a", yes}, {"b", open}}, 30), Outcome::physician_required);
    EXPECT_EQ(judged({{"heart", open}, {"surgery", open}}, 30), Outcome::unanswered);
}

TEST(HealthOutcome, OfTheQuestionsAskedIsNeverClearWithOneOfThemOpenOrAnyFlagged) {
    const Questionnaire questions = present_questions();
    const HealthAnswers sound = all_no(questions);
    EXPECT_EQ(outcome_of(questions, sound, 60), Outcome::clear);
    for (const QuestionTheme& theme : questions.themes) {
        HealthAnswers answers = sound;
        if (!theme.from_age) {
            set_answer(answers, theme.id, open);
            EXPECT_EQ(outcome_of(questions, answers, 60), Outcome::unanswered) << theme.id;
            set_answer(answers, theme.id, yes);
        }
        for (const FollowUp& asked : theme.follow_ups) {
            set_answer(answers, asked.id, open);
            EXPECT_EQ(outcome_of(questions, answers, 60), Outcome::unanswered) << asked.id;
            set_answer(answers, asked.id, yes);
            EXPECT_EQ(outcome_of(questions, answers, 60), Outcome::physician_required)
                << asked.id;
            set_answer(answers, asked.id, Answer::no);
        }
    }
}

TEST(OpenQuestions, CountThoseThatAreToBeAsked) {
    const Questionnaire questions = small_questions();
    EXPECT_EQ(open_questions(questions, {}, 30), 3);
    EXPECT_EQ(open_questions(questions, {}, 45), 4);
    HealthAnswers answers;
    set_answer(answers, "heart", yes);
    EXPECT_EQ(open_questions(questions, answers, 30), 4);
    EXPECT_EQ(open_questions(questions, all_no(questions), 60), 0);
    EXPECT_EQ(open_today({}), 6);
}

TEST(PresentQuestions, AreThoseOfThePresentEditionAndLeadWhereTheTradeLeads) {
    const Questionnaire questions = present_questions();
    EXPECT_EQ(questions.edition, present_edition);
    std::map<std::string, ThemeKind> kinds;
    for (const QuestionTheme& theme : questions.themes) kinds[theme.id] = theme.kind;
    ASSERT_EQ(kinds.size(), 12U);
    for (const char* id : {"exercise", "surgery_last_year", "prescription_medicine"}) {
        EXPECT_EQ(kinds.at(id), ThemeKind::physician_at_once) << id;
    }
    EXPECT_EQ(kinds.at("pregnancy"), ThemeKind::does_not_dive);
    EXPECT_EQ(kinds.at("lungs"), ThemeKind::follow_ups);
    for (const QuestionTheme& theme : questions.themes) {
        EXPECT_EQ(theme.question.ends_with("?"), !theme.from_age) << theme.id;
        for (const FollowUp& asked : theme.follow_ups) {
            EXPECT_TRUE(asked.question.ends_with("?")) << asked.id;
        }
    }
}

TEST(TodayOutcomes, PutBadNewsBeforeGaps) {
    HealthAnswers answers;
    EXPECT_EQ(today_outcome_of(answers), TodayOutcome::unanswered);
    answers.today.fill(Answer::no);
    EXPECT_EQ(today_outcome_of(answers), TodayOutcome::clear);
    for (std::size_t i = 0; i < today_question_count; ++i) {
        HealthAnswers one = answers;
        one.today[i] = Answer::unanswered;
        EXPECT_EQ(today_outcome_of(one), TodayOutcome::unanswered) << i;
        HealthAnswers alone;
        alone.today[i] = Answer::yes;
        EXPECT_EQ(today_outcome_of(alone), outcome_of_yes(static_cast<TodayQuestion>(i))) << i;
    }
    answers.today[static_cast<std::size_t>(TodayQuestion::cannot_swim)] = Answer::yes;
    EXPECT_EQ(today_outcome_of(answers), TodayOutcome::with_care);
    answers.today[static_cast<std::size_t>(TodayQuestion::alcohol_or_drugs)] = Answer::yes;
    EXPECT_EQ(today_outcome_of(answers), TodayOutcome::not_today);
}

TEST(ACheck, IsClearedByAReleaseOnlyWhereAPhysicianIsAskedFor) {
    HealthCheck check;
    check.physician_approval_seen = true;
    EXPECT_EQ(outcome(check), Outcome::unanswered) << "a release answers no question";
    check.outcome = Outcome::physician_required;
    EXPECT_EQ(outcome(check), Outcome::clear);
    check.outcome = Outcome::does_not_dive;
    EXPECT_EQ(outcome(check), Outcome::does_not_dive);
    check.outcome = Outcome::physician_required;
    check.physician_approval_seen = false;
    EXPECT_EQ(outcome(check), Outcome::physician_required);
}

TEST(ACheck, ExpiresOnTheSameDayOfALaterMonth) {
    EXPECT_EQ(expires_on(day(2025, 7, 4), 12), day(2026, 7, 4));
    EXPECT_EQ(expires_on(day(2026, 8, 31), 6), day(2027, 2, 28));
    EXPECT_EQ(expires_on(day(2024, 2, 29), 12), day(2025, 2, 28));
    EXPECT_EQ(expires_on(day(2026, 12, 1), 1), day(2027, 1, 1));
}

TEST(ACheck, IsCurrentUntilTheDayBefore) {
    HealthCheck check;
    check.outcome = Outcome::clear;
    EXPECT_FALSE(is_current(check, 12, day(2026, 7, 4))) << "its day is not known";
    check.checked_on = day(2025, 7, 5);
    EXPECT_TRUE(is_current(check, 12, day(2026, 7, 4)));
    EXPECT_FALSE(is_current(check, 12, day(2026, 7, 5)));
    EXPECT_TRUE(is_current(check, std::nullopt, day(2036, 7, 5)));
    EXPECT_FALSE(is_current(check, 12, day(2025, 7, 4))) << "it was not made yet";
    check.outcome = Outcome::unanswered;
    EXPECT_FALSE(is_current(check, 12, day(2026, 7, 4)));
}

TEST(AnswersToBeKept, AreTheYesAlone) {
    HealthAnswers answers;
    answers.edition = "Test 1";
    set_answer(answers, "heart", yes);
    set_answer(answers, "surgery", Answer::no);
    answers.today[2] = yes;
    answers.today[3] = Answer::no;
    EXPECT_EQ(to_be_kept(answers, AnswersKept::all), answers);
    const HealthAnswers flagged = to_be_kept(answers, AnswersKept::flagged);
    EXPECT_EQ(flagged.by_id, (std::map<std::string, Answer>{{"heart", yes}}));
    EXPECT_EQ(flagged.today[2], yes);
    EXPECT_EQ(flagged.today[3], open);
    EXPECT_EQ(flagged.edition, "Test 1");
}

TEST(AQuestionnaire, IsRefusedWhenItContradictsItself) {
    EXPECT_TRUE(check(small_questions()));
    const auto refused = [](const std::function<void(Questionnaire&)>& spoil) {
        Questionnaire questions = small_questions();
        spoil(questions);
        const Result<Done> checked = check(questions);
        EXPECT_FALSE(checked);
        return checked ? Error{} : checked.error();
    };
    EXPECT_EQ(refused([](auto& q) { q.themes[2].id = "heart"; }),
              (Error{ErrorCode::duplicate_id, "/themes/2/id", "heart", ""}));
    EXPECT_EQ(refused([](auto& q) { q.themes[0].follow_ups[1].id = "a"; }),
              (Error{ErrorCode::duplicate_id, "/themes/0/follow_ups/1/id", "a", ""}));
    EXPECT_EQ(refused([](auto& q) { q.themes[0].follow_ups.clear(); }),
              (Error{ErrorCode::missing_field, "/themes/0", "follow_ups", ""}));
    EXPECT_EQ(refused([](auto& q) { q.themes[3].follow_ups = {{"c", "?"}}; }),
              (Error{ErrorCode::unknown_field, "/themes/3", "follow_ups", ""}));
    EXPECT_EQ(refused([](auto& q) { q.themes[2].question.clear(); }),
              (Error{ErrorCode::missing_field, "/themes/2", "question", ""}));
    EXPECT_EQ(refused([](auto& q) { q.themes[1].question = "Old?"; }),
              (Error{ErrorCode::unknown_field, "/themes/1", "question", ""}));
    EXPECT_EQ(refused([](auto& q) {
                  q.themes[2].from_age = 45;
                  q.themes[2].question.clear();
              }),
              (Error{ErrorCode::unknown_field, "/themes/2", "from_age", ""}));
}

// ---- who is still waited for -------------------------------------------------------------------

std::string waiting(const Scene& scene) {
    return names_of(still_waiting(scene.session, scene.rules, scene.session.guests.front()));
}

TEST(StillWaiting, IsEmptyForASoundGuestWhateverTheDayBrings) {
    Scene scene = sound_scene();
    EXPECT_EQ(waiting(scene), "");
    guest_of(scene).screening.today = TodayOutcome::not_today;
    guest_of(scene).screening.signature = SignatureKind::none;
    guest_of(scene).group = GroupId();
    EXPECT_EQ(waiting(scene), "");
}

TEST(StillWaiting, ListsAnswersReleaseConsentAndRenewal) {
    Scene scene = sound_scene();
    Guest& guest = guest_of(scene);
    guest.screening = HealthCheck();
    EXPECT_EQ(waiting(scene), "screening_unanswered:guest-1");
    guest.screening.outcome = Outcome::physician_required;
    guest.screening.checked_on = day(2025, 7, 4);
    guest.birth_date = day(2012, 1, 1);
    EXPECT_EQ(waiting(scene),
              "consent_missing:guest-1, screening_physician:guest-1, "
              "screening_out_of_date:guest-1");
    scene.session.overrules = {{"screening_physician:guest-1", "release read aloud", "Ruta"}};
    guest.guardian_consent = true;
    EXPECT_EQ(waiting(scene), "screening_out_of_date:guest-1");
    guest.birth_date.reset();
    EXPECT_EQ(waiting(scene), "birth_date_missing:guest-1, screening_out_of_date:guest-1");
}

TEST(StillWaiting, CountsMonthsByTheChosenRulesThatStop) {
    Scene scene = sound_scene();
    rule_of(scene.rules, RuleKind::screening_valid_months).value = 6;
    EXPECT_EQ(screening_months(scene.session, scene.rules), 6);
    scene.session.rule_sets.clear();
    EXPECT_EQ(screening_months(scene.session, scene.rules), 12) << "the safe side without a rule";
}

}  // namespace
}  // namespace leadline
