// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/site/profile_scene.h"

namespace leadline {

/// Side of the severity shape drawn before a label [pixels], and the gap after it.
inline constexpr double label_shape = 14.0;
inline constexpr double label_gap = 4.0;

/// Whether a stretch of line runs through a box.
bool crosses(const QRectF& box, const QLineF& line);

/// Places the labels of legs, levels and ear clearing so that none covers another or the line of
/// the dive. Warnings and levels are placed over the line if need be; plain ones are left out where
/// there is no room.
/// @param clearing  text beside the marks of ear clearing; may be empty
std::vector<ProfileLabel> place_labels(const ProfileScene& scene, const QRectF& area,
                                       const QFontMetricsF& metrics, const QString& clearing);

}  // namespace leadline
