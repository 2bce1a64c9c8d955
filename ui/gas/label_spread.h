// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

namespace leadline {

/// A label that wants to stand at a height.
struct WantedLabel {
    double center = 0.0;  ///< [pixels]
    int rank = 0;         ///< the lower, the later it is left out
};

/// Spreads labels of one height along a vertical edge so that none covers another, each as near to
/// where it wants to stand as the others let it (least squares, by pooling of adjacent violators:
/// Ayer and others, Annals of Mathematical Statistics 26 (1955) 641-647, from memory). Where not
/// all fit between `top` and `bottom`, those of the highest rank are left out.
///
/// @param height  of a label with its gap, > 0
/// @returns a centre for each label, in the given order; none for one that is left out
std::vector<std::optional<double>> spread_labels(const std::vector<WantedLabel>& wanted,
                                                 double height, double top, double bottom);

}  // namespace leadline
