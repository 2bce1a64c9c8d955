// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace leadline {

/// What is kept sealed of a guest.
enum class HealthKind { screening, physician_note, emergency_contact, signature };

/// One sealed record, opened.
struct HealthEntry {
    HealthKind kind{};
    std::string made_at;   ///< UTC, "2026-07-04T08:15:00Z"
    std::string given_by;  ///< the guest's name when it was made; shown, so that no record is taken
                           ///< for somebody else's
    std::string content;   ///< what was put in: JSON for answers, text, an SVG path for a signature
};

}  // namespace leadline
