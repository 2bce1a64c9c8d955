// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/finding.h"

#include <algorithm>

namespace leadline {

std::string name(FindingCode code) {
    switch (code) {
        case FindingCode::depth_over_limit: return "depth_over_limit";
        case FindingCode::depth_over_usual: return "depth_over_usual";
        case FindingCode::bottom_below_limit: return "bottom_below_limit";
        case FindingCode::guest_too_young: return "guest_too_young";
        case FindingCode::birth_date_missing: return "birth_date_missing";
        case FindingCode::consent_missing: return "consent_missing";
        case FindingCode::screening_unanswered: return "screening_unanswered";
        case FindingCode::screening_physician: return "screening_physician";
        case FindingCode::screening_does_not_dive: return "screening_does_not_dive";
        case FindingCode::screening_today_flagged: return "screening_today_flagged";
        case FindingCode::screening_today_unanswered: return "screening_today_unanswered";
        case FindingCode::screening_out_of_date: return "screening_out_of_date";
        case FindingCode::screening_in_future: return "screening_in_future";
        case FindingCode::approval_older_than_check: return "approval_older_than_check";
        case FindingCode::screening_not_signed: return "screening_not_signed";
        case FindingCode::screening_edition_older: return "screening_edition_older";
        case FindingCode::ratio_exceeded: return "ratio_exceeded";
        case FindingCode::group_without_instructor: return "group_without_instructor";
        case FindingCode::staff_in_two_groups: return "staff_in_two_groups";
        case FindingCode::group_empty: return "group_empty";
        case FindingCode::guest_without_group: return "guest_without_group";
        case FindingCode::no_guests: return "no_guests";
        case FindingCode::no_common_language: return "no_common_language";
        case FindingCode::water_too_cold: return "water_too_cold";
        case FindingCode::minutes_over_limit: return "minutes_over_limit";
        case FindingCode::visibility_low: return "visibility_low";
        case FindingCode::current_strong: return "current_strong";
        case FindingCode::waves_high: return "waves_high";
        case FindingCode::ends_below_reserve: return "ends_below_reserve";
        case FindingCode::minimum_gas_above_reserve: return "minimum_gas_above_reserve";
        case FindingCode::cylinder_missing: return "cylinder_missing";
        case FindingCode::staff_cylinder_missing: return "staff_cylinder_missing";
        case FindingCode::staff_gas_below_minimum: return "staff_gas_below_minimum";
        case FindingCode::group_unlikely_to_finish: return "group_unlikely_to_finish";
        case FindingCode::sharing_may_not_last: return "sharing_may_not_last";
        case FindingCode::staff_dives_over_limit: return "staff_dives_over_limit";
        case FindingCode::staff_ascents_over_limit: return "staff_ascents_over_limit";
        case FindingCode::staff_days_over_limit: return "staff_days_over_limit";
        case FindingCode::staff_needs_stop: return "staff_needs_stop";
        case FindingCode::kit_missing: return "kit_missing";
        case FindingCode::ascent_too_fast: return "ascent_too_fast";
        case FindingCode::descent_too_fast: return "descent_too_fast";
        case FindingCode::ear_step_over_locking: return "ear_step_over_locking";
        case FindingCode::emergency_line_missing: return "emergency_line_missing";
        case FindingCode::cold_before_end: return "cold_before_end";
        case FindingCode::bcd_cannot_hold: return "bcd_cannot_hold";
        case FindingCode::cannot_stay_down: return "cannot_stay_down";
        case FindingCode::lead_outside_range: return "lead_outside_range";
        case FindingCode::no_rules_chosen: return "no_rules_chosen";
        case FindingCode::logged_too_deep: return "logged_too_deep";
        case FindingCode::logged_depth_over_limit: return "logged_depth_over_limit";
        case FindingCode::logged_below_reserve: return "logged_below_reserve";
        case FindingCode::logged_longer: return "logged_longer";
        case FindingCode::log_missing: return "log_missing";
        case FindingCode::head_count_open: return "head_count_open";
    }
    return {};
}

std::string name(Severity severity) {
    switch (severity) {
        case Severity::stop: return "stop";
        case Severity::caution: return "caution";
        case Severity::note: return "note";
    }
    return {};
}

std::string key(const Finding& finding) {
    std::string text = name(finding.code);
    if (const auto* guest = std::get_if<GuestId>(&finding.subject)) text += ":" + guest->text;
    if (const auto* group = std::get_if<GroupId>(&finding.subject)) text += ":" + group->text;
    if (const auto* staff = std::get_if<StaffId>(&finding.subject)) text += ":" + staff->text;
    return text;
}

Readiness readiness(const std::vector<Finding>& findings) {
    Readiness result;
    for (const Finding& finding : findings) {
        if (finding.overruled_because) {
            ++result.overruled;
            continue;
        }
        switch (finding.severity) {
            case Severity::stop: ++result.stops; break;
            case Severity::caution: ++result.cautions; break;
            case Severity::note: ++result.notes; break;
        }
    }
    return result;
}

bool card_is_blocked(const std::vector<Finding>& findings, const GuestId& guest,
                     const GroupId& group) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        if (finding.severity != Severity::stop || finding.overruled_because) return false;
        if (const auto* about = std::get_if<GuestId>(&finding.subject)) return *about == guest;
        if (const auto* about = std::get_if<GroupId>(&finding.subject)) return *about == group;
        return true;
    });
}

}  // namespace leadline
