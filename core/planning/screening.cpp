// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/screening.h"

#include <algorithm>
#include <set>

namespace leadline {
namespace {

/// Calls `see(answer)` for every question that is to be asked of somebody of that age.
template <typename See>
void each_asked(const QuestionTheme& theme, const HealthAnswers& answers, std::optional<int> age,
                See see) {
    if (!concerns(theme, age)) return;
    if (!theme.from_age) see(answer_to(answers, theme.id));
    if (!asks_follow_ups(theme, answers, age)) return;
    for (const FollowUp& follow_up : theme.follow_ups) see(answer_to(answers, follow_up.id));
}

/// What the theme alone says, gaps aside.
ScreeningOutcome bad_news(const QuestionTheme& theme, const HealthAnswers& answers,
                          std::optional<int> age) {
    if (!concerns(theme, age)) return ScreeningOutcome::clear;
    const bool yes = !theme.from_age && answer_to(answers, theme.id) == Answer::yes;
    switch (theme.kind) {
        case ThemeKind::does_not_dive:
            return yes ? ScreeningOutcome::does_not_dive : ScreeningOutcome::clear;
        case ThemeKind::physician_at_once:
            return yes ? ScreeningOutcome::physician_required : ScreeningOutcome::clear;
        case ThemeKind::follow_ups: break;
    }
    const bool flagged =
        asks_follow_ups(theme, answers, age) &&
        std::any_of(theme.follow_ups.begin(), theme.follow_ups.end(), [&](const FollowUp& asked) {
            return answer_to(answers, asked.id) == Answer::yes;
        });
    return flagged ? ScreeningOutcome::physician_required : ScreeningOutcome::clear;
}

}  // namespace

ScreeningOutcome outcome(const HealthCheck& check) {
    const bool released = check.outcome == ScreeningOutcome::physician_required &&
                          check.physician_approval_seen;
    return released ? ScreeningOutcome::clear : check.outcome;
}

Date expires_on(Date from, int months) {
    const Date later = from + std::chrono::months(months);
    return later.ok() ? later : Date(later.year() / later.month() / std::chrono::last);
}

bool is_current(const HealthCheck& check, std::optional<int> months, Date on) {
    if (check.outcome == ScreeningOutcome::unanswered || !check.checked_on) return false;
    if (*check.checked_on > on) return false;
    return !months || on < expires_on(*check.checked_on, *months);
}

Answer answer_to(const HealthAnswers& answers, const std::string& id) {
    const auto found = answers.by_id.find(id);
    return found == answers.by_id.end() ? Answer::unanswered : found->second;
}

void set_answer(HealthAnswers& answers, const std::string& id, Answer answer) {
    if (answer == Answer::unanswered) {
        answers.by_id.erase(id);
    } else {
        answers.by_id[id] = answer;
    }
}

bool concerns(const QuestionTheme& theme, std::optional<int> age) {
    return !theme.from_age || !age || *age >= *theme.from_age;
}

bool asks_follow_ups(const QuestionTheme& theme, const HealthAnswers& answers,
                     std::optional<int> age) {
    if (theme.kind != ThemeKind::follow_ups || !concerns(theme, age)) return false;
    return theme.from_age || answer_to(answers, theme.id) == Answer::yes;
}

ScreeningOutcome outcome_of(const Questionnaire& questionnaire, const HealthAnswers& answers,
                            std::optional<int> age) {
    ScreeningOutcome worst = ScreeningOutcome::clear;
    for (const QuestionTheme& theme : questionnaire.themes) {
        worst = std::max(worst, bad_news(theme, answers, age));
    }
    if (worst != ScreeningOutcome::clear) return worst;
    return open_questions(questionnaire, answers, age) > 0 ? ScreeningOutcome::unanswered
                                                           : ScreeningOutcome::clear;
}

int open_questions(const Questionnaire& questionnaire, const HealthAnswers& answers,
                   std::optional<int> age) {
    int open = 0;
    for (const QuestionTheme& theme : questionnaire.themes) {
        each_asked(theme, answers, age, [&](Answer answer) {
            if (answer == Answer::unanswered) ++open;
        });
    }
    return open;
}

TodayOutcome outcome_of_yes(TodayQuestion question) {
    switch (question) {
        case TodayQuestion::cold_or_blocked_ears:
        case TodayQuestion::alcohol_or_drugs:
        case TodayQuestion::new_medicine:
        case TodayQuestion::unwilling_or_very_afraid: return TodayOutcome::not_today;
        case TodayQuestion::cannot_swim:
        case TodayQuestion::flight_or_mountain_within_24_hours: return TodayOutcome::with_care;
    }
    return TodayOutcome::not_today;
}

TodayOutcome today_outcome_of(const HealthAnswers& answers) {
    TodayOutcome worst = TodayOutcome::clear;
    for (std::size_t i = 0; i < answers.today.size(); ++i) {
        if (answers.today[i] != Answer::yes) continue;
        worst = std::max(worst, outcome_of_yes(static_cast<TodayQuestion>(i)));
    }
    if (worst != TodayOutcome::clear) return worst;
    return open_today(answers) > 0 ? TodayOutcome::unanswered : TodayOutcome::clear;
}

int open_today(const HealthAnswers& answers) {
    return static_cast<int>(
        std::count(answers.today.begin(), answers.today.end(), Answer::unanswered));
}

HealthAnswers to_be_kept(const HealthAnswers& answers, AnswersKept kept) {
    if (kept == AnswersKept::all) return answers;
    HealthAnswers flagged = answers;
    std::erase_if(flagged.by_id, [](const auto& entry) { return entry.second != Answer::yes; });
    for (Answer& answer : flagged.today) {
        if (answer != Answer::yes) answer = Answer::unanswered;
    }
    return flagged;
}

Result<Done> check(const Questionnaire& questionnaire) {
    std::set<std::string> ids;
    for (std::size_t i = 0; i < questionnaire.themes.size(); ++i) {
        const QuestionTheme& theme = questionnaire.themes[i];
        const std::string place = "/themes/" + std::to_string(i);
        if (!ids.insert(theme.id).second) {
            return Error{ErrorCode::duplicate_id, place + "/id", theme.id, {}};
        }
        if (theme.question.empty() != theme.from_age.has_value()) {
            return Error{theme.from_age ? ErrorCode::unknown_field : ErrorCode::missing_field,
                         place, "question", {}};
        }
        const bool wanted = theme.kind == ThemeKind::follow_ups;
        if (wanted == theme.follow_ups.empty() || (theme.from_age && !wanted)) {
            return Error{wanted ? ErrorCode::missing_field : ErrorCode::unknown_field, place,
                         theme.from_age && !wanted ? "from_age" : "follow_ups", {}};
        }
        for (std::size_t j = 0; j < theme.follow_ups.size(); ++j) {
            if (ids.insert(theme.follow_ups[j].id).second) continue;
            return Error{ErrorCode::duplicate_id,
                         place + "/follow_ups/" + std::to_string(j) + "/id",
                         theme.follow_ups[j].id, {}};
        }
    }
    return Done{};
}

}  // namespace leadline
