// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/planning/dates.h"

namespace leadline {

enum class Answer { unanswered, no, yes };

/// What is asked again on the day, before kitting up. Common practice, no source.
enum class TodayQuestion {
    cold_or_blocked_ears,
    alcohol_or_drugs,
    new_medicine,
    flight_or_mountain_within_24_hours,
    unwilling_or_very_afraid,
    cannot_swim,
};
inline constexpr std::size_t today_question_count = 6;

// ---- what a session keeps: the outcome, never the answers --------------------------------------

enum class ScreeningOutcome {
    unanswered,          ///< not asked yet, or a question that matters has no answer
    clear,               ///< nothing that calls for a physician
    physician_required,  ///< a physician's written release to dive comes first
    does_not_dive,       ///< pregnant or trying to be: no release changes that
};

/// What today's questions come to.
enum class TodayOutcome {
    unanswered,
    clear,
    with_care,  ///< may dive after it was talked over
    not_today,
};

enum class SignatureKind { none, on_screen, on_paper };

/// What is on record of a guest's health check. No answer is in it: those stay with the person who
/// asked, or sealed.
struct HealthCheck {
    ScreeningOutcome outcome = ScreeningOutcome::unanswered;
    std::optional<Date> checked_on;  ///< day on which the guest answered
    std::string edition;             ///< of the questions; up to 100 characters, empty: not known
    std::string checked_by;          ///< who saw to it; up to 200 characters
    /// An instructor has held a physician's written release to dive in hand.
    bool physician_approval_seen = false;
    std::optional<Date> approval_on;  ///< the date on that release; none: not entered
    TodayOutcome today = TodayOutcome::unanswered;
    SignatureKind signature = SignatureKind::none;
    friend bool operator==(const HealthCheck&, const HealthCheck&) = default;
};

/// Edition of the questions in resources/screening that this program asks.
inline constexpr const char* present_edition = "Leadline 1";
/// Edition of a check made with the centre's own form on paper, of which only the outcome is kept.
inline constexpr const char* own_form_edition = "own form";

/// Edition of answers kept by a program before 'Leadline 1'.
inline constexpr const char* earlier_edition = "before Leadline 1";

/// What the check means for the dive: a release that was seen makes 'physician first' clear, and
/// changes nothing else.
ScreeningOutcome outcome(const HealthCheck& check);

/// First day on which a check or a release of `from` no longer counts: the same day of the month
/// `months` later, or the last of that month where it has fewer days. The day itself is out, which
/// is the safe side.
/// @param months  1 or more
Date expires_on(Date from, int months);

/// Whether there is a check of a known day that still counts on `on`. Without a limit in months it
/// counts for ever.
bool is_current(const HealthCheck& check, std::optional<int> months, Date on);

// ---- the questions -----------------------------------------------------------------------------

/// What a yes to a theme leads to.
enum class ThemeKind {
    physician_at_once,  ///< a physician's release first
    follow_ups,         ///< closer questions: all no is clear, any yes needs the release
    does_not_dive,
};

struct FollowUp {
    std::string id;  ///< unique within the questionnaire
    std::string question;
};

/// One theme. A theme with `from_age` has no question of its own: who is that old goes straight to
/// the closer ones, and nobody younger is asked.
struct QuestionTheme {
    std::string id;
    std::string title;     ///< "Lungs"
    std::string question;  ///< as put to the guest; empty with `from_age`
    ThemeKind kind{};
    std::optional<int> from_age;
    std::vector<FollowUp> follow_ups;  ///< one or more with ThemeKind::follow_ups, else none
};

/// The questions put before the day: our own wording, not that of any form. A centre's official
/// form and a physician prevail.
/// @source  themes: international recreational diving medical screening, 2020 (UHMS / DMSC), by
///          theme only
struct Questionnaire {
    std::string edition;
    std::vector<QuestionTheme> themes;
};

/// A guest's answers while they are given. Never part of a session.
struct HealthAnswers {
    std::string edition;
    std::map<std::string, Answer> by_id;  ///< themes and follow-ups; not there: unanswered
    std::array<Answer, today_question_count> today{};
    friend bool operator==(const HealthAnswers&, const HealthAnswers&) = default;
};

/// The answer to a theme or a follow-up.
Answer answer_to(const HealthAnswers& answers, const std::string& id);
void set_answer(HealthAnswers& answers, const std::string& id, Answer answer);

/// Whether a theme concerns somebody of an age. An age that is not known counts as old enough, so
/// that nothing is left out.
bool concerns(const QuestionTheme& theme, std::optional<int> age);
/// Whether the theme's closer questions are to be asked.
bool asks_follow_ups(const QuestionTheme& theme, const HealthAnswers& answers,
                     std::optional<int> age);

/// What the answers come to. Bad news outweighs what is still unanswered, so that it is never hidden
/// by a gap; a closer question without an answer is a gap, and so is a theme without one.
/// @param age  whole years on the day of the dive; none: not known
ScreeningOutcome outcome_of(const Questionnaire& questionnaire, const HealthAnswers& answers,
                            std::optional<int> age);
/// How many questions that are to be asked have no answer.
int open_questions(const Questionnaire& questionnaire, const HealthAnswers& answers,
                   std::optional<int> age);
/// What today's answers come to; bad news outweighs gaps.
TodayOutcome today_outcome_of(const HealthAnswers& answers);
/// Whether a yes to a question of the day ends it, or calls for care.
TodayOutcome outcome_of_yes(TodayQuestion question);
int open_today(const HealthAnswers& answers);

/// What of a guest's answers is kept sealed.
enum class AnswersKept {
    flagged,  ///< only what was answered yes: the least that serves
    all,
};
/// The answers without those that are not to be kept.
HealthAnswers to_be_kept(const HealthAnswers& answers, AnswersKept kept);

/// Checks what no schema can see: each id once, follow-ups where the kind asks for them and only
/// there, a question exactly where there is no `from_age`.
/// @returns Done, or duplicate_id, missing_field or unknown_field with its place in the file
Result<Done> check(const Questionnaire& questionnaire);

}  // namespace leadline
