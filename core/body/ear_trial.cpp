// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/ear_trial.h"

#include <algorithm>

namespace leadline {
namespace {

constexpr double deepest_meters = 60.0;

void feel(EarTrial& trial) {
    if (trial.difference >= eustachian_tube_locking) trial.locked = true;
    if (trial.difference < ear_opening_least) trial.locked = false;
    trial.feeling = trial.locked ? EarFeeling::locked : ear_feeling(trial.difference);
}

}  // namespace

EarFeeling ear_feeling(Pascals difference) {
    if (difference >= eustachian_tube_locking) return EarFeeling::locked;
    if (difference >= ear_pain_usual) return EarFeeling::pain;
    if (difference >= ear_opening_least) return EarFeeling::discomfort;
    return EarFeeling::fine;
}

EarTrial ear_trial_at_surface(const WaterColumn& water) {
    EarTrial trial;
    trial.middle_ear = water.surface_pressure();
    return trial;
}

EarTrial ear_trial_moved(const WaterColumn& water, const EarTrial& trial, Depth depth) {
    EarTrial moved = trial;
    moved.depth = Depth(Meters(std::clamp(depth.meters().value(), 0.0, deepest_meters)));
    const Pascals ambient = water.absolute_pressure(moved.depth);
    // On the way up air leaves the ear by itself.
    moved.middle_ear = std::min(trial.middle_ear, ambient);
    moved.difference = ambient - moved.middle_ear;
    feel(moved);
    return moved;
}

bool can_clear(const EarTrial& trial) {
    return trial.feeling == EarFeeling::fine || trial.feeling == EarFeeling::discomfort;
}

EarTrial ear_trial_cleared(const WaterColumn& water, const EarTrial& trial) {
    if (!can_clear(trial)) return trial;
    EarTrial cleared = trial;
    cleared.middle_ear = water.absolute_pressure(trial.depth);
    cleared.difference = Pascals(0.0);
    feel(cleared);
    return cleared;
}

}  // namespace leadline
