// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"

namespace leadline {

/// How a guest is likely to breathe, as far as the counter can tell.
enum class BreathingClass {
    calm,     ///< at ease in the water
    average,  ///< nothing known
    nervous,  ///< afraid, tense, cold, or very fit and eager
    child,    ///< under 15 and at ease
};

/// Planning RMV of a guest on a first dive, from the class: calm 20, average 25, nervous 35, child
/// 18 L/min. Errs to the high side, so that the air lasts longer than planned rather than shorter.
/// @source  common practice, no source (calm experienced 15-18, new diver 25-27, nervous 28-42,
///          children 15-18 L/min); near the 31.5 +/- 7.1 L/min of divers with fewer than 100 dives
///          at work ("Diving ergospirometry with suspended weights", secondary summary)
LitersPerMinute planning_rmv(BreathingClass breathing);

/// Stressed RMV used for minimum gas, for each of two people sharing: 50 L/min for a guest (upper end
/// of 30 to 50), 30 L/min for the instructor (lower end: trained). Common practice, no source.
inline constexpr LitersPerMinute stressed_guest_rmv{50.0};
inline constexpr LitersPerMinute stressed_staff_rmv{30.0};

/// Planning RMV of an instructor or assistant at work, 20 L/min. Common practice, no source.
inline constexpr LitersPerMinute planning_staff_rmv{20.0};

}  // namespace leadline
