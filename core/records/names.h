// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/body/breathing.h"
#include "core/planning/briefing.h"
#include "core/planning/health_entry.h"
#include "core/planning/profile.h"
#include "core/planning/screening.h"
#include "core/planning/session.h"
#include "core/records/vault_names.h"

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

template <>
struct StoredNames<ScreeningOutcome> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"unanswered", "clear", "physician_required", "does_not_dive"});
};

template <>
struct StoredNames<TodayOutcome> {
    static constexpr auto names =
        std::to_array<std::string_view>({"unanswered", "clear", "with_care", "not_today"});
};

template <>
struct StoredNames<SignatureKind> {
    static constexpr auto names =
        std::to_array<std::string_view>({"none", "on_screen", "on_paper"});
};

template <>
struct StoredNames<UnitHabit> {
    static constexpr auto names =
        std::to_array<std::string_view>({"house", "metric", "imperial"});
};

template <>
struct StoredNames<HandSignal> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"ok", "something_wrong", "ears", "stop", "up", "down", "low_on_air", "out_of_air",
         "share_air", "look", "come_here", "stay_together", "hold_hands", "level_off", "slow_down",
         "cold", "how_much_air", "ok_at_surface", "help_at_surface"});
};

template <>
struct StoredNames<Skill> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"breathe_from_mouthpiece", "clear_mask", "clear_mouthpiece", "find_mouthpiece",
         "clear_ears", "fill_and_empty_bcd", "share_air", "float_at_surface"});
};

template <>
struct StoredNames<HealthKind> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"screening", "physician_note", "emergency_contact", "signature"});
};

template <>
struct StoredNames<VaultWay> {
    static constexpr auto names =
        std::to_array<std::string_view>({"passphrase", "keyring", "recovery"});
};

template <>
struct StoredNames<AuditEvent> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"vault_set_up", "unlocked", "unlock_failed", "locked", "passphrase_changed", "way_added",
         "way_removed", "record_written", "record_opened", "record_exported", "record_erased",
         "record_erased_locked", "record_moved", "trail_broken"});
};

template <>
struct StoredNames<AuditFault> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"entry_changed", "entry_missing", "end_cut", "head_replaced", "seal_wrong",
         "written_without_key", "found_earlier"});
};

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

/// Several values in one text, a space between.
template <Stored Enum>
std::string names_text(const std::vector<Enum>& values) {
    std::string text;
    for (const Enum value : values) {
        if (!text.empty()) text += ' ';
        text += stored_name(value);
    }
    return text;
}

}  // namespace leadline
