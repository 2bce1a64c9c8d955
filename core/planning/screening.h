// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <vector>

namespace leadline {

/// What a guest is asked before the day: one question a theme. The wording shown is our own; a
/// centre's official form and a physician prevail.
/// @source  themes: international recreational diving medical screening, 2020 (UHMS / DMSC), by
///          theme only
enum class HealthTheme {
    lungs,
    heart_and_blood,
    over_45_with_risks,
    exercise,
    eyes_ears_sinuses,
    surgery_last_year,
    nerves_and_blackouts,
    mind,
    back_hernia_diabetes,
    stomach_and_gut,
    prescription_medicine,
    pregnancy,
};
inline constexpr std::size_t health_theme_count = 12;

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

enum class Answer { unanswered, no, yes };

/// A guest's answers. `physician_approval_seen` means that an instructor has held a physician's
/// written approval to dive in hand.
struct Screening {
    std::array<Answer, health_theme_count> health{};
    std::array<Answer, today_question_count> today{};
    bool physician_approval_seen = false;
    friend bool operator==(const Screening&, const Screening&) = default;
};

enum class ScreeningOutcome {
    unanswered,          ///< at least one health theme has no answer
    clear,               ///< every theme no, or a physician's approval seen
    physician_required,  ///< a theme was answered yes and no approval seen
    does_not_dive,       ///< pregnant or trying to be: no approval changes that
};

/// The outcome of the health themes. A 'does not dive' or a needed physician outweighs what is
/// still unanswered, so that bad news is never hidden by a gap.
ScreeningOutcome outcome(const Screening& screening);

/// Themes answered yes, in the order asked.
std::vector<HealthTheme> flagged_themes(const Screening& screening);
/// Today's questions answered yes, in the order asked.
std::vector<TodayQuestion> flagged_today(const Screening& screening);
/// Whether any of today's questions has no answer yet.
bool today_unanswered(const Screening& screening);

}  // namespace leadline
