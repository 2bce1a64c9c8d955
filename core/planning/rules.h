// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/physics/quantities.h"
#include "core/planning/finding.h"
#include "core/planning/ids.h"

namespace leadline {

/// What a rule limits. The number's unit is fixed by the kind.
enum class RuleKind {
    max_depth_m,                    ///< strictest: least
    usual_depth_m,                  ///< a caution beyond it; strictest: least
    max_bottom_depth_m,             ///< strictest: least
    least_age_years,                ///< strictest: greatest
    consent_below_age_years,        ///< strictest: greatest
    guests_per_instructor,          ///< places; strictest: least
    guests_with_assistant,          ///< places with an assistant; strictest: least
    companions_use_places,          ///< 1: certified companions count as guests
    places_in_poor_visibility,      ///< places while visibility is below `threshold` m
    places_in_current,              ///< places from `threshold` on (0 none .. 3 strong)
    places_in_waves,                ///< places while waves exceed `threshold` m
    places_with_children,           ///< places while a guest is under `threshold` years
    places_without_common_language, ///< places while a guest shares no language with the instructor
    places_with_nervous_guest,      ///< places while a guest is marked nervous
    min_water_temperature_c,        ///< strictest: greatest
    max_minutes,                    ///< while water is below `threshold` degrees C; strictest: least
    reserve_pressure_bar,           ///< strictest: greatest
    max_ascent_rate_m_per_min,      ///< strictest: least
    max_descent_rate_m_per_min,     ///< strictest: least
    min_visibility_m,               ///< strictest: greatest
    max_wave_height_m,              ///< strictest: least
    max_current,                    ///< 0 none .. 3 strong; strictest: least
    clearing_step_m,                ///< strictest: least
    staff_dives_per_day,            ///< strictest: least
    staff_ascents_per_day,          ///< times at the surface; strictest: least
    staff_days_in_a_row,            ///< with a dive; strictest: least
    no_fly_hours,                   ///< strictest: greatest
    screening_valid_months,         ///< a health check counts so long; strictest: least
};

/// How well a value is known. Shown beside it; never hidden.
enum class Standing { read, summary, memory, common_practice };

/// One value of one set.
struct Rule {
    RuleKind kind{};
    double value = 0.0;                  ///< in the unit the kind names
    std::optional<double> threshold;     ///< see the kind
    std::optional<int> from_age;         ///< applies to guests of this age and older
    std::optional<int> to_age;           ///< applies to guests up to and including this age
    Severity severity = Severity::stop;  ///< of the finding when it is broken
    std::string source;                  ///< author, title, year, table or section
    Standing standing = Standing::common_practice;
};

/// A published standard, a law or a centre's own house rules. Data: read from resources/rules.
struct RuleSet {
    RuleSetId id;
    std::string title;
    std::string note;  ///< scope, date, and whom it binds
    std::vector<Rule> rules;
};

/// A value and the set it came from.
struct Limit {
    double value = 0.0;
    std::optional<double> threshold;
    Severity severity = Severity::stop;
    std::string rule_set;
    std::string source;
    Standing standing = Standing::common_practice;
};

/// All rule sets known to the program.
struct RuleBook {
    std::vector<RuleSet> sets;
};

/// The strictest value of a kind among the chosen sets (unknown ids count as none: plan() refuses
/// them before); of equal values the graver. Only rules for which `applies` holds are looked at.
std::optional<Limit> strictest(const RuleBook& book, const std::vector<RuleSetId>& chosen,
                               RuleKind kind,
                               const std::function<bool(const Rule&)>& applies = {});

/// The strictest value for a person of an age; rules without an age band apply to everybody.
std::optional<Limit> strictest_for_age(const RuleBook& book, const std::vector<RuleSetId>& chosen,
                                       RuleKind kind, std::optional<int> age);

std::optional<RuleKind> rule_kind(const std::string& name);
std::string name(RuleKind kind);
std::string name(Standing standing);

}  // namespace leadline
