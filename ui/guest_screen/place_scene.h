// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planning/plan.h"
#include "ui/guest_screen/guest_figures.h"
#include "ui/guest_screen/water_scene.h"

namespace leadline {

/// The scale of the planned dive: from the surface to its deepest point.
WaterScene::Content place_scene(const Environment& place, const GuestFigures& figures,
                                const GuestTongue& tongue);

}  // namespace leadline
