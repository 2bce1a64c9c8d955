// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "ui/sheet/layout.h"

namespace leadline {

/// Letters for which no installed font has a shape: they would be printed as empty boxes.
struct UnprintableText {
    QString line;     ///< the line they stand in: a guest's name
    QString letters;  ///< each once, in the order met
    friend bool operator==(const UnprintableText&, const UnprintableText&) = default;
};

/// What on a page cannot be printed here; empty: all can. To be said before anything is printed, with
/// the advice to install a font for these letters.
std::vector<UnprintableText> unprintable_letters(const Page& page);

}  // namespace leadline
