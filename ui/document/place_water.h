// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/water.h"

namespace leadline {

class SessionDocument;

/// The water of the session's site as the plan reckons with it, to say a pressure as a height of
/// water or a depth as a pressure. Never an error for a document that has a plan.
Result<WaterColumn> place_water(const SessionDocument& document);

}  // namespace leadline
