// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/body/ears.h"
#include "core/physics/quantities.h"
#include "core/physics/water.h"

namespace leadline {

/// Pressure across the eardrum from which a descent usually hurts: 60 mmHg, about 0.8 m of water.
/// Some feel pain earlier, so that every text says to clear before anything is felt.
/// @source  from memory: diving-medicine teaching names pain at about 60 mmHg (2.6 ft) and locking
///          at about 90 mmHg (3.9 ft); aviation physiology teaching names 30 to 60 mmHg
inline constexpr Pascals ear_pain_usual = millimeters_of_mercury(60.0);

/// How ears feel, the worst last.
enum class EarFeeling {
    fine,        ///< below `ear_opening_least`
    discomfort,  ///< from there: the time to clear is now
    pain,        ///< from `ear_pain_usual`: stop and go up; clearing by force can hurt
    locked,      ///< from `eustachian_tube_locking`: only going up helps
};

/// A middle ear taken down and up by hand, to try what happens. A rigid, closed cavity, as in
/// clearing_ladder(); going up, its air leaves by itself.
struct EarTrial {
    Depth depth;
    Pascals middle_ear{};  ///< absolute
    Pascals difference{};  ///< ambient less middle ear, never negative
    bool locked = false;   ///< since the difference came to the locking, until it is near nothing
    EarFeeling feeling = EarFeeling::fine;
};

/// Ears at the surface, at rest.
EarTrial ear_trial_at_surface(const WaterColumn& water);

/// Goes to a depth without clearing. The tube stays locked until the difference is back below
/// `ear_opening_least`: that it opens only when nearly all is gone is the safe side.
/// @param depth  0 to 60 m; beyond, the nearest of the two
EarTrial ear_trial_moved(const WaterColumn& water, const EarTrial& trial, Depth depth);

/// Tries to clear. Works while the ears are fine or full; in pain and when locked nothing changes,
/// as forcing them can do harm.
/// @returns the ears afterwards
EarTrial ear_trial_cleared(const WaterColumn& water, const EarTrial& trial);

/// Whether clearing would work now.
[[nodiscard]] bool can_clear(const EarTrial& trial);

/// @source  thresholds as named
EarFeeling ear_feeling(Pascals difference);

}  // namespace leadline
