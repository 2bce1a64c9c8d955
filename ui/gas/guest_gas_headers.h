// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/words/quantity_text.h"

namespace leadline {

/// Short heading of a column of GuestGasModel.
QString gas_heading(int column);
/// What the column holds, how it is found, which side it errs to, and the source.
QString gas_heading_help(int column, UnitSystem units);

}  // namespace leadline
