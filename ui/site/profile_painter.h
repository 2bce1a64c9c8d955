// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPalette>
#include <QString>

#include "ui/site/profile_scene.h"

class QPainter;

namespace leadline {

/// What the pointer and the keyboard are at.
struct ProfilePointer {
    int selected = -1;  ///< corner; -1: none
    int hovered = -1;
    bool focused = false;
    std::optional<QPointF> reading_at;  ///< point of the dive's line a reading is shown for
    QString reading;                    ///< "12 min   8.0 m   1.82 bar"
};

/// Paints the laid-out profile: water, levels, the dive, its corners, labels and the reading.
void paint_profile(QPainter& painter, const ProfileScene& scene, const ProfilePointer& pointer,
                   UnitSystem units, const QPalette& palette);

}  // namespace leadline
