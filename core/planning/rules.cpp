// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/rules.h"

#include <algorithm>
#include <array>
#include <utility>

namespace leadline {
namespace {

constexpr std::array<std::pair<RuleKind, const char*>, 28> kind_names{{
    {RuleKind::max_depth_m, "max_depth_m"},
    {RuleKind::usual_depth_m, "usual_depth_m"},
    {RuleKind::max_bottom_depth_m, "max_bottom_depth_m"},
    {RuleKind::least_age_years, "least_age_years"},
    {RuleKind::consent_below_age_years, "consent_below_age_years"},
    {RuleKind::guests_per_instructor, "guests_per_instructor"},
    {RuleKind::guests_with_assistant, "guests_with_assistant"},
    {RuleKind::companions_use_places, "companions_use_places"},
    {RuleKind::places_in_poor_visibility, "places_in_poor_visibility"},
    {RuleKind::places_in_current, "places_in_current"},
    {RuleKind::places_in_waves, "places_in_waves"},
    {RuleKind::places_with_children, "places_with_children"},
    {RuleKind::places_without_common_language, "places_without_common_language"},
    {RuleKind::places_with_nervous_guest, "places_with_nervous_guest"},
    {RuleKind::min_water_temperature_c, "min_water_temperature_c"},
    {RuleKind::max_minutes, "max_minutes"},
    {RuleKind::reserve_pressure_bar, "reserve_pressure_bar"},
    {RuleKind::max_ascent_rate_m_per_min, "max_ascent_rate_m_per_min"},
    {RuleKind::max_descent_rate_m_per_min, "max_descent_rate_m_per_min"},
    {RuleKind::min_visibility_m, "min_visibility_m"},
    {RuleKind::max_wave_height_m, "max_wave_height_m"},
    {RuleKind::max_current, "max_current"},
    {RuleKind::clearing_step_m, "clearing_step_m"},
    {RuleKind::staff_dives_per_day, "staff_dives_per_day"},
    {RuleKind::staff_ascents_per_day, "staff_ascents_per_day"},
    {RuleKind::staff_days_in_a_row, "staff_days_in_a_row"},
    {RuleKind::no_fly_hours, "no_fly_hours"},
    {RuleKind::screening_valid_months, "screening_valid_months"},
}};

bool greater_is_stricter(RuleKind kind) {
    switch (kind) {
        case RuleKind::least_age_years:
        case RuleKind::consent_below_age_years:
        case RuleKind::companions_use_places:
        case RuleKind::min_water_temperature_c:
        case RuleKind::reserve_pressure_bar:
        case RuleKind::min_visibility_m:
        case RuleKind::no_fly_hours: return true;
        default: return false;
    }
}

}  // namespace

std::optional<Limit> strictest(const RuleBook& book, const std::vector<RuleSetId>& chosen,
                               RuleKind kind, const std::function<bool(const Rule&)>& applies) {
    std::optional<Limit> found;
    for (const RuleSet& set : book.sets) {
        if (std::find(chosen.begin(), chosen.end(), set.id) == chosen.end()) continue;
        for (const Rule& rule : set.rules) {
            if (rule.kind != kind || (applies && !applies(rule))) continue;
            const bool stricter = !found || (greater_is_stricter(kind) ? rule.value > found->value
                                                                       : rule.value < found->value);
            // Of two equal values the one that stops the dive counts (stop is the least severity).
            const bool graver =
                found && rule.value == found->value && rule.severity < found->severity;
            if (stricter || graver) {
                found = Limit{rule.value, rule.threshold, rule.severity,
                              set.title,  rule.source,    rule.standing};
            }
        }
    }
    return found;
}

std::optional<Limit> strictest_for_age(const RuleBook& book, const std::vector<RuleSetId>& chosen,
                                       RuleKind kind, std::optional<int> age) {
    return strictest(book, chosen, kind, [&](const Rule& rule) {
        if (!rule.from_age && !rule.to_age) return true;
        return age && *age >= rule.from_age.value_or(0) && *age <= rule.to_age.value_or(200);
    });
}

std::optional<RuleKind> rule_kind(const std::string& name) {
    for (const auto& [kind, text] : kind_names) {
        if (name == text) return kind;
    }
    return std::nullopt;
}

std::string name(RuleKind kind) {
    for (const auto& [known, text] : kind_names) {
        if (known == kind) return text;
    }
    return {};
}

std::string name(Standing standing) {
    switch (standing) {
        case Standing::read: return "read";
        case Standing::summary: return "summary";
        case Standing::memory: return "memory";
        case Standing::common_practice: return "common_practice";
    }
    return {};
}

}  // namespace leadline
