// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/place_water.h"

#include "ui/document/session_document.h"

namespace leadline {

Result<WaterColumn> place_water(const SessionDocument& document) {
    const Environment& place = document.plan().environment;
    const Session& session = document.session();
    return WaterColumn::make(place.surface_pressure, place.gravity, session.site.salinity,
                             session.conditions.water_temperature);
}

}  // namespace leadline
