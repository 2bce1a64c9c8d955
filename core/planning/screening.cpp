// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/screening.h"

#include <algorithm>

namespace leadline {
namespace {

template <typename Question, std::size_t count>
std::vector<Question> answered_yes(const std::array<Answer, count>& answers) {
    std::vector<Question> flagged;
    for (std::size_t i = 0; i < count; ++i) {
        if (answers[i] == Answer::yes) flagged.push_back(static_cast<Question>(i));
    }
    return flagged;
}

template <std::size_t count>
bool any_unanswered(const std::array<Answer, count>& answers) {
    return std::find(answers.begin(), answers.end(), Answer::unanswered) != answers.end();
}

}  // namespace

ScreeningOutcome outcome(const Screening& screening) {
    const auto pregnancy = static_cast<std::size_t>(HealthTheme::pregnancy);
    if (screening.health[pregnancy] == Answer::yes) return ScreeningOutcome::does_not_dive;
    if (!flagged_themes(screening).empty() && !screening.physician_approval_seen) {
        return ScreeningOutcome::physician_required;
    }
    if (any_unanswered(screening.health)) return ScreeningOutcome::unanswered;
    return ScreeningOutcome::clear;
}

std::vector<HealthTheme> flagged_themes(const Screening& screening) {
    return answered_yes<HealthTheme>(screening.health);
}

std::vector<TodayQuestion> flagged_today(const Screening& screening) {
    return answered_yes<TodayQuestion>(screening.today);
}

bool today_unanswered(const Screening& screening) { return any_unanswered(screening.today); }

}  // namespace leadline
