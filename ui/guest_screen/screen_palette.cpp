// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/screen_palette.h"

#include <algorithm>
#include <cmath>

namespace leadline {
namespace {

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

}  // namespace

ScreenPalette screen_palette(Shade shade) {
    if (shade == Shade::light) {
        return {QColor(0xF7, 0xF4, 0xED), QColor(0xFF, 0xFE, 0xFB), QColor(0x14, 0x1C, 0x22),
                QColor(0x3C, 0x47, 0x4E), QColor(0x0B, 0x45, 0x56), QColor(0xFF, 0xFF, 0xFF),
                QColor(0x86, 0x14, 0x14), QColor(0xFF, 0xFF, 0xFF), QColor(0xD3, 0xE7, 0xEC),
                QColor(0x9F, 0xC6, 0xD1), QColor(0x8C, 0x93, 0x95), QColor(0xFF, 0xFF, 0xFF)};
    }
    return {QColor(0x12, 0x18, 0x1C), QColor(0x1E, 0x27, 0x2D), QColor(0xF4, 0xF1, 0xE8),
            QColor(0xCB, 0xD0, 0xD0), QColor(0x9C, 0xDB, 0xEA), QColor(0x0B, 0x12, 0x16),
            QColor(0xFF, 0xC2, 0xB8), QColor(0x1A, 0x08, 0x06), QColor(0x1B, 0x3B, 0x48),
            QColor(0x10, 0x28, 0x33), QColor(0x6E, 0x7A, 0x80), QColor(0xFF, 0xFF, 0xFF)};
}

double contrast_ratio(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

std::vector<std::pair<QColor, QColor>> pairs_of_words_and_ground(const ScreenPalette& palette) {
    std::vector<std::pair<QColor, QColor>> pairs;
    for (const QColor& ground : {palette.paper, palette.panel}) {
        for (const QColor& words : {palette.ink, palette.quiet, palette.accent, palette.warn}) {
            pairs.emplace_back(words, ground);
        }
    }
    for (const QColor& ground : {palette.water, palette.deep_water}) {
        pairs.emplace_back(palette.ink, ground);
    }
    pairs.emplace_back(palette.on_accent, palette.accent);
    pairs.emplace_back(palette.on_warn, palette.warn);
    pairs.emplace_back(QColor(Qt::black), palette.picture);
    return pairs;
}

}  // namespace leadline
