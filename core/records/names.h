// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "core/body/breathing.h"
#include "core/planning/profile.h"
#include "core/planning/screening.h"
#include "core/planning/session.h"

namespace leadline {

/// Words under which the values of an enumeration stand in the database, in the enumeration's
/// order. They are part of the schema: the CHECK constraints in migrations/ list the same words,
/// and a changed word needs a migration.
template <typename Enum>
struct StoredNames;

template <>
struct StoredNames<StaffRole> {
    static constexpr auto names = std::to_array<std::string_view>({"instructor", "assistant"});
};

template <>
struct StoredNames<Entry> {
    static constexpr auto names = std::to_array<std::string_view>({"shore", "boat", "pool_steps"});
};

template <>
struct StoredNames<Current> {
    static constexpr auto names =
        std::to_array<std::string_view>({"none", "slight", "moderate", "strong"});
};

template <>
struct StoredNames<Phase> {
    static constexpr auto names =
        std::to_array<std::string_view>({"surface", "descent", "skills", "tour", "ascent"});
};

template <>
struct StoredNames<BreathingClass> {
    static constexpr auto names =
        std::to_array<std::string_view>({"calm", "average", "nervous", "child"});
};

/// `unanswered` is not stored: an answer that was not given has no row.
template <>
struct StoredNames<Answer> {
    static constexpr auto names = std::to_array<std::string_view>({"unanswered", "no", "yes"});
};

template <>
struct StoredNames<HealthTheme> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"lungs", "heart_and_blood", "over_45_with_risks", "exercise", "eyes_ears_sinuses",
         "surgery_last_year", "nerves_and_blackouts", "mind", "back_hernia_diabetes",
         "stomach_and_gut", "prescription_medicine", "pregnancy"});
};
static_assert(StoredNames<HealthTheme>::names.size() == health_theme_count);

template <>
struct StoredNames<TodayQuestion> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"cold_or_blocked_ears", "alcohol_or_drugs", "new_medicine",
         "flight_or_mountain_within_24_hours", "unwilling_or_very_afraid", "cannot_swim"});
};
static_assert(StoredNames<TodayQuestion>::names.size() == today_question_count);

template <typename Enum>
concept Stored = requires { StoredNames<Enum>::names; };

template <Stored Enum>
constexpr std::string_view stored_name(Enum value) {
    return StoredNames<Enum>::names.at(static_cast<std::size_t>(value));
}

/// The value stored under a word; nothing if no value has it.
template <Stored Enum>
constexpr std::optional<Enum> from_stored_name(std::string_view word) {
    const auto& names = StoredNames<Enum>::names;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == word) return static_cast<Enum>(i);
    }
    return std::nullopt;
}

}  // namespace leadline
