// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/body/breathing.h"
#include "core/planning/briefing.h"
#include "core/planning/finding.h"
#include "core/planning/plan.h"
#include "core/planning/profile.h"
#include "core/planning/rules.h"
#include "core/planning/screening.h"
#include "core/planning/session.h"

namespace leadline {

// Names of the enumerators as they stand in files, in the order of their declaration. They are part
// of the file format: renaming an enumerator must not change them.

template <typename Enum>
struct EnumNames;

template <>
struct EnumNames<Entry> {
    static constexpr std::array<std::string_view, 3> names{"shore", "boat", "pool_steps"};
};
template <>
struct EnumNames<Current> {
    static constexpr std::array<std::string_view, 4> names{"none", "slight", "moderate", "strong"};
};
template <>
struct EnumNames<Phase> {
    static constexpr std::array<std::string_view, 5> names{"surface", "descent", "skills", "tour",
                                                           "ascent"};
};
template <>
struct EnumNames<StaffRole> {
    static constexpr std::array<std::string_view, 2> names{"instructor", "assistant"};
};
template <>
struct EnumNames<BreathingClass> {
    static constexpr std::array<std::string_view, 4> names{"calm", "average", "nervous", "child"};
};
template <>
struct EnumNames<Severity> {
    static constexpr std::array<std::string_view, 3> names{"stop", "caution", "note"};
};
template <>
struct EnumNames<Standing> {
    static constexpr std::array<std::string_view, 4> names{"read", "summary", "memory",
                                                           "common_practice"};
};
template <>
struct EnumNames<RatioReason> {
    static constexpr std::array<std::string_view, 8> names{
        "plain", "with_assistant", "visibility", "current", "waves", "children", "language",
        "nervous"};
};
template <>
struct EnumNames<ScreeningOutcome> {
    static constexpr std::array<std::string_view, 4> names{"unanswered", "clear",
                                                           "physician_required", "does_not_dive"};
};
template <>
struct EnumNames<TodayOutcome> {
    static constexpr std::array<std::string_view, 4> names{"unanswered", "clear", "with_care",
                                                           "not_today"};
};
template <>
struct EnumNames<SignatureKind> {
    static constexpr std::array<std::string_view, 3> names{"none", "on_screen", "on_paper"};
};
template <>
struct EnumNames<ThemeKind> {
    static constexpr std::array<std::string_view, 3> names{"physician_at_once", "follow_ups",
                                                           "does_not_dive"};
};
template <>
struct EnumNames<TodayQuestion> {
    static constexpr std::array<std::string_view, today_question_count> names{
        "cold_or_blocked_ears", "alcohol_or_drugs",
        "new_medicine",         "flight_or_mountain_within_24_hours",
        "unwilling_or_very_afraid", "cannot_swim"};
};

template <>
struct EnumNames<HandSignal> {
    static constexpr std::array<std::string_view, hand_signal_count> names{
        "ok",         "something_wrong", "ears",      "stop",          "up",
        "down",       "low_on_air",      "out_of_air", "share_air",    "look",
        "come_here",  "stay_together",   "hold_hands", "level_off",    "slow_down",
        "cold",       "how_much_air",    "ok_at_surface", "help_at_surface"};
};
template <>
struct EnumNames<Skill> {
    static constexpr std::array<std::string_view, skill_count> names{
        "breathe_from_mouthpiece", "clear_mask",         "clear_mouthpiece", "find_mouthpiece",
        "clear_ears",              "fill_and_empty_bcd", "share_air",        "float_at_surface"};
};
template <>
struct EnumNames<UnitHabit> {
    static constexpr std::array<std::string_view, 3> names{"house", "metric", "imperial"};
};
template <>
struct EnumNames<LeverKind> {
    static constexpr std::array<std::string_view, 6> names{
        "shallower", "shorter_skills", "bigger_cylinder", "warmer_suit", "swap_guests",
        "one_guest_fewer"};
};
template <>
struct EnumNames<WarmthGap> {
    static constexpr std::array<std::string_view, 5> names{"none", "body_mass", "body_height",
                                                           "suit", "outside_range"};
};
template <>
struct EnumNames<LeadGap> {
    static constexpr std::array<std::string_view, 6> names{"none", "body_mass", "body_height",
                                                           "suit", "cylinder", "outside_range"};
};

/// Name of an enumerator in files.
template <typename Enum>
std::string enum_name(Enum value) {
    return std::string(EnumNames<Enum>::names.at(static_cast<std::size_t>(value)));
}

/// The enumerator with a name in files; none: no such name.
template <typename Enum>
std::optional<Enum> enum_value(std::string_view name) {
    const auto& names = EnumNames<Enum>::names;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == name) return static_cast<Enum>(i);
    }
    return std::nullopt;
}

}  // namespace leadline
