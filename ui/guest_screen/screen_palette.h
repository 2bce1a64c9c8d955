// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <utility>
#include <vector>

#include "ui/widgets/theme.h"

namespace leadline {

/// The colours of the guest screen: few and far apart, as it is read from 2 m and by anybody.
/// Every pair of words and ground reaches 7:1 (WCAG 2.1, 1.4.6).
struct ScreenPalette {
    QColor paper;      ///< ground of a page
    QColor panel;      ///< ground of a tile
    QColor ink;        ///< words
    QColor quiet;      ///< words of less weight
    QColor accent;     ///< headings, the chosen button's ground
    QColor on_accent;  ///< words on it
    QColor warn;       ///< ground of what must not be missed
    QColor on_warn;
    QColor water;       ///< words in `ink` stand on it
    QColor deep_water;  ///< at the foot of the scale; no words on it but in `ink`
    QColor rule;        ///< lines
    QColor picture;     ///< ground of pictures, which are drawn in black
};

ScreenPalette screen_palette(Shade shade);

/// Contrast of two colours, 1 to 21.
/// @source  Web Content Accessibility Guidelines 2.1, definitions of contrast ratio and of relative
///          luminance (from memory)
double contrast_ratio(const QColor& one, const QColor& other);

/// Every pair of words and ground that the screen uses: for the test of contrast.
std::vector<std::pair<QColor, QColor>> pairs_of_words_and_ground(const ScreenPalette& palette);

}  // namespace leadline
