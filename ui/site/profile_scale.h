// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <vector>

#include "core/planning/profile.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// How time and depth lie on the screen: time to the right, depth downward, the water's surface at
/// the top edge of `plot`.
struct ProfileScale {
    QRectF plot;
    double minutes = 1.0;  ///< at the right edge
    double meters = 1.0;   ///< at the bottom edge

    [[nodiscard]] double x(Minutes time) const;
    [[nodiscard]] double y(Depth depth) const;
    [[nodiscard]] QPointF at(const ProfilePoint& point) const;
    /// Not held to the edges of the plot; never negative.
    [[nodiscard]] Minutes time_at(double x) const;
    [[nodiscard]] Depth depth_at(double y) const;
};

/// A scale with room right of and below the dive, so that corners can be pulled there. The lines
/// that lie within about twice the deepest point are in view.
/// @param lines  depths of limits and of the bottom
ProfileScale fitting_scale(const QRectF& plot, const Profile& profile,
                           const std::vector<Depth>& lines);

/// Depths at which the scale has a mark, in whole units, at least `room` pixels apart.
std::vector<Depth> depth_marks(const ProfileScale& scale, UnitSystem units, double room);
std::vector<Minutes> time_marks(const ProfileScale& scale, double room);

}  // namespace leadline
