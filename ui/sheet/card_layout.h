// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/sheet/card_content.h"
#include "ui/sheet/layout.h"

namespace leadline {

/// Four cards to a sheet, upright: A6 (105 x 148 mm, ISO 216) on A4, which leaves 1 mm uncut at the
/// foot, or quarters of Letter (107.95 x 139.7 mm).
enum class CardSize { a6_on_a4, quarter_letter };

inline constexpr int cards_on_page = 4;

Paper paper_of(CardSize size);
QSizeF card_size(CardSize size);

/// The cards, four to a page in the order given; the last page may hold fewer. Marks for cutting
/// stand where the cuts cross and at the edge of the paper, so that no line is left on a cut card.
std::vector<Page> card_pages(const std::vector<CardContent>& cards, CardSize size);

}  // namespace leadline
