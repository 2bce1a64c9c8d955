// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>

#include "core/planning/profile.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// Steps to which drawing and the arrow keys snap.
struct Snap {
    Minutes time{0.5};
    Meters depth{0.5};
};

/// Half minutes and half metres (feet: whole ones); fine: tenths (feet: half ones).
Snap snap_for(UnitSystem units, bool fine);

/// The multiple of `step` that is nearest to a value.
double to_grid(double value, double step);

/// What happens to the corners after the one that is moved in time.
enum class LaterCorners { stay, follow };

// Hand edits of a profile. Each gives back a profile that passes check() when the given one does,
// so that a drag can never be refused half way; what cannot be done leaves the profile as it was.

/// Moves a corner to a time and a depth, held between its neighbours. The first corner never moves,
/// the last only in time.
/// @param index  of the corner, below the number of points
Profile with_corner_at(Profile profile, std::size_t index, Minutes time, Depth depth,
                       LaterCorners later);
/// Moves a corner by whole steps: to the next multiple of the snap in each direction.
Profile with_corner_stepped(Profile profile, std::size_t index, int time_steps, int depth_steps,
                            const Snap& snap, LaterCorners later);
/// Moves both ends of the leg that ends at `index` to one depth change; the ends of the dive stay.
Profile with_leg_lowered(Profile profile, std::size_t index, Meters by);
/// Whether with_leg_lowered() can move this leg: neither end is an end of the dive.
bool leg_can_move(const Profile& profile, std::size_t index);

/// Adds a corner half way along the leg that ends at `index`, with that leg's phase.
/// @returns index of the new corner; none when the leg is too short or the profile is full
std::optional<std::size_t> add_corner(Profile& profile, std::size_t index);
/// Likewise at a time of the dive, snapped.
std::optional<std::size_t> add_corner_at(Profile& profile, Minutes time, const Snap& snap);
/// Whether a corner may go: not an end, and three are left.
bool corner_can_go(const Profile& profile, std::size_t index);
Profile without_corner(Profile profile, std::size_t index);

/// The four numbers from which standard_profile() draws a dive.
struct PlainDive {
    Depth deepest;
    Depth skills_depth;
    Minutes skills{};
    Minutes tour{};
};

/// The numbers that describe a profile best: its deepest point, the depth of its skills and the
/// minutes of its skills and tour legs.
PlainDive plain_dive_of(const Profile& profile);
Profile profile_of(const PlainDive& dive);
/// Whether a profile is what standard_profile() draws, within half a second and half a centimetre.
bool is_plain_dive(const Profile& profile);

}  // namespace leadline
