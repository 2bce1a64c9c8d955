// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <concepts>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/physics/quantities.h"
#include "core/planning/ids.h"

namespace leadline {

enum class Severity { stop, caution, note };

/// Everything a rule can have to say. Words are made from it outside the core (ui/words).
/// Beside each: the numbers it carries, in order.
enum class FindingCode {
    depth_over_limit,           ///< planned Depth, allowed Depth (whole plan or one guest's age band)
    depth_over_usual,           ///< planned Depth, usual Depth
    bottom_below_limit,         ///< bottom Depth, allowed Depth
    guest_too_young,            ///< age, least age
    birth_date_missing,         ///<
    consent_missing,            ///< age, age of consent
    screening_unanswered,       ///<
    screening_physician,        ///<
    screening_does_not_dive,    ///<
    screening_today_flagged,    ///<
    screening_today_unanswered, ///<
    screening_out_of_date,      ///< months it counts (day of the check in `text`; none: not known)
    screening_in_future,        ///< (day of the check in `text`)
    approval_older_than_check,  ///< (day of the release in `text`); a stop when out of date itself
    screening_not_signed,       ///<
    screening_edition_older,    ///< (edition in `text`; none: not known)
    ratio_exceeded,             ///< places used, places allowed (RatioReason in `reason`)
    group_without_instructor,   ///<
    staff_in_two_groups,        ///< groups that need the same person in the water at once
    group_empty,                ///<
    guest_without_group,        ///<
    no_guests,                  ///<
    no_common_language,         ///< (language tag in `text`)
    water_too_cold,             ///< water Kelvins, least Kelvins
    minutes_over_limit,         ///< planned Minutes, allowed Minutes, below Kelvins
    visibility_low,             ///< visibility Meters, least Meters
    current_strong,             ///<
    waves_high,                 ///< height Meters, highest Meters
    ends_below_reserve,         ///< pressure at the end Bars, reserve Bars, minutes to reserve
    minimum_gas_above_reserve,  ///< minimum gas Bars, reserve Bars
    cylinder_missing,           ///< for a guest
    staff_cylinder_missing,     ///< for a member of staff who is in a group
    staff_gas_below_minimum,    ///< pressure left at the ascent Bars, minimum gas Bars
    group_unlikely_to_finish,   ///< chance in percent that all last the planned dive
    sharing_may_not_last,       ///< chance in percent that two reach the surface on the instructor's air
    staff_dives_over_limit,     ///< dives today, allowed
    staff_ascents_over_limit,   ///< ascents today, allowed
    staff_days_over_limit,      ///< days in a row, allowed
    staff_needs_stop,           ///< planned Minutes, no-stop Minutes left at the deepest point
    kit_missing,                ///< (items in `text`, comma separated: "suit, fins")
    ascent_too_fast,            ///< planned or logged MetersPerMinute, allowed MetersPerMinute
    descent_too_fast,           ///< planned or logged MetersPerMinute, allowed MetersPerMinute
    ear_step_over_locking,      ///< clearing step Meters, locking Meters
    emergency_line_missing,     ///<
    no_rules_chosen,            ///< no limit of any rule set is checked
    cold_before_end,            ///< low Minutes of warmth, planned Minutes
    bcd_cannot_hold,            ///< lead carried Kilograms, lift assumed Kilograms
    cannot_stay_down,           ///< lead carried Kilograms, low Kilograms, high Kilograms
    lead_outside_range,         ///< lead carried Kilograms, low Kilograms, high Kilograms
    logged_too_deep,            ///< logged Depth, planned Depth
    logged_depth_over_limit,    ///< logged Depth, allowed Depth
    logged_below_reserve,       ///< end Bars, reserve Bars
    logged_longer,              ///< logged Minutes, planned Minutes
    log_missing,                ///< for a guest who has no log entry
    head_count_open,            ///< fewer back than went in: in, out
};

/// Why a group's places are fewer than the plain ratio.
enum class RatioReason { plain, with_assistant, visibility, current, waves, children, language, nervous };

/// Whom or what a finding is about; monostate: the whole session.
using Subject = std::variant<std::monostate, GuestId, GroupId, StaffId>;

/// One of several types, made from exactly one of them: a plain variant would try each unit's
/// conversion to the others, which not every compiler lets pass.
template <typename... Types>
class ExactVariant : public std::variant<Types...> {
public:
    template <typename Type>
        requires(std::same_as<Type, Types> || ...)
    ExactVariant(Type value)  // NOLINT: implicit by design
        : std::variant<Types...>(std::in_place_type<Type>, value) {}
};

/// A number in a finding, with its unit in the type.
using FindingValue = ExactVariant<int, Depth, Meters, Kelvins, Bars, Minutes, MetersPerMinute,
                                  LitersPerMinute, Kilograms>;

/// The one way in which any rule speaks.
struct Finding {
    FindingCode code{};
    Severity severity = Severity::note;
    Subject subject;
    std::vector<FindingValue> values;
    RatioReason reason = RatioReason::plain;
    std::string text;      ///< raw names only (items of kit, a language tag, an ISO day), never a sentence
    std::string rule_set;  ///< title of the set the value came from; empty: the program's own check
    std::string source;    ///< where that set has the value from
    std::optional<std::string> overruled_because;
};

/// Name by which an overrule refers to a finding: "ratio_exceeded:group-1". Stable over edits as
/// long as the same rule speaks of the same subject.
std::string key(const Finding& finding);
/// "ratio_exceeded"
std::string name(FindingCode code);
std::string name(Severity severity);

/// How ready the session is: findings that still stop it, and those that call for care. Overruled
/// ones count apart.
struct Readiness {
    int stops = 0;
    int cautions = 0;
    int notes = 0;
    int overruled = 0;
    [[nodiscard]] bool may_dive() const { return stops == 0; }
};
Readiness readiness(const std::vector<Finding>& findings);

/// Whether a card may be printed for a guest: no open stop on the guest, the guest's group or the
/// whole session.
bool card_is_blocked(const std::vector<Finding>& findings, const GuestId& guest,
                     const GroupId& group);

}  // namespace leadline
