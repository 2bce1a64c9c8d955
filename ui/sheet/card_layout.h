// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/sheet/card_content.h"
#include "ui/sheet/layout.h"

namespace leadline {

class TypeSetter;

/// How large the cards are, and how they lie on the paper. A larger card is for weaker eyes: its type
/// and pictures are larger, not more.
enum class CardSize {
    a6_on_a4,        ///< four on A4: 105 x 148 mm, which leaves 1 mm uncut at the foot
    quarter_letter,  ///< four on Letter: 4.25 x 5.5 in
    a6,              ///< one on A6
    a5_on_a4,        ///< two on A4, lying
    half_letter,     ///< two on Letter, lying: 5.5 x 8.5 in
    a5,              ///< one on A5
    a4,
    letter,
};

/// All there are, in the order in which they are offered.
std::vector<CardSize> card_sizes();

Paper paper_of(CardSize size);
/// Whether the paper lies on its long side.
bool is_landscape(CardSize size);
/// Of one card [mm].
QSizeF card_size(CardSize size);
int cards_on_page(CardSize size);

/// The cards in the order given, as many to a page as fit; the last page may hold fewer. Marks for
/// cutting stand where the cuts cross and at the edge of the paper, so that no line is left on a cut
/// card. The two faces of a card lie side by side in one row, with marks for folding in place of those
/// for cutting; where one place of a row would stay empty for it, the next single card takes it. On
/// paper that holds one card each face is a page.
/// @param setter  kept from one call to the next, it remembers what it has measured
std::vector<Page> card_pages(const std::vector<CardContent>& cards, CardSize size,
                             TypeSetter& setter);
/// The same with a setter of its own.
std::vector<Page> card_pages(const std::vector<CardContent>& cards, CardSize size);

}  // namespace leadline
