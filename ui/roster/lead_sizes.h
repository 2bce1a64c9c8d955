// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "ui/words/quantity_text.h"

namespace leadline {

/// Sizes of lead as people type them: "0.5 1 2", "0,5; 1; 2", "1, 2, 3"; in kilograms, or in pounds
/// in imperial units. A comma is a decimal sign where it stands alone between digits ("0,5"), and
/// separates where there are several or a point beside it.
/// @returns the sizes in the order typed, none for an empty text; nothing where a word is no number
std::optional<std::vector<Kilograms>> read_lead_sizes(const QString& text, UnitSystem units);

/// "0.5  1  2" or "0,5  1  2", by the language, as read_lead_sizes() takes it; smallest first.
QString lead_sizes_text(std::vector<Kilograms> sizes, UnitSystem units);

}  // namespace leadline
