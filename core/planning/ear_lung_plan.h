// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/body/ears.h"
#include "core/body/lungs.h"
#include "core/planning/profile.h"

namespace leadline {

/// Share of the locking pressure that a clearing step should use at most: half. Common practice, no
/// source.
inline constexpr double clearing_margin = 0.5;
/// Depths between two points of the lung chart.
inline constexpr Meters lung_chart_spacing{0.5};

/// Ears on the planned way down, lungs on the way up: what the charts of the Site tab show.
struct EarLungCharts {
    Meters step{};              ///< between clearings, as asked for
    Meters largest_step{};      ///< for `clearing_margin`
    EarTrace ears;              ///< from leaving the surface to first reaching the deepest point
    Pascals opening_least = ear_opening_least;
    Pascals opening_most = ear_opening_most;
    Pascals locking = eustachian_tube_locking;
    Pascals scarred_drum_tears = scarred_eardrum_rupture_lowest;
    Pascals drum_tears = eardrum_rupture_lowest;
    Pascals lung_tears = lung_tearing_lowest;
    std::vector<HeldBreathLimit> lungs;  ///< from the surface to the deepest planned point
};

/// The charts for a planned dive. Ups and downs before the deepest point are in the ear's trace.
///
/// @param profile  as check(profile) wants it
/// @param step     clearing step, 0.1 to 20 m
/// @returns the charts; the error of check(profile), or ErrorCode::out_of_range, otherwise
/// @source  see core/body/ears.h and core/body/lungs.h
Result<EarLungCharts> plan_ears_and_lungs(const WaterColumn& water, const Profile& profile,
                                          Meters step);

}  // namespace leadline
