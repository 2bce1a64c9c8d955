// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <string>

#include "core/planning/session.h"
#include "ui/words/quantity_text.h"

namespace leadline {

// Edits of one guest's air, as the table makes them.

/// Hands out a cylinder of a type (empty: takes it back). A reading is never made up: that of the
/// cylinder before is kept where the new one may hold it, otherwise it is 0 bar, not read. The
/// temperature is kept, or that of the day's air.
void set_cylinder_type(Guest& guest, const std::string& type_id, Kelvins air_temperature);

/// Why an edit of a guest's air was not taken over.
QString gas_refusal(const Error& error, const Guest& guest, UnitSystem units);

}  // namespace leadline
