// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFontMetricsF>
#include <QLineF>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

#include "core/planning/finding.h"
#include "ui/site/profile_scale.h"

namespace leadline {

class SessionDocument;

/// A level drawn across the water.
struct DepthLine {
    enum class Kind { limit, usual, bottom };
    Kind kind = Kind::limit;
    Depth depth;
    QString text;         ///< "At most 12.0 m: title of the rule set"
    bool broken = false;  ///< the dive goes below it
    bool in_view = true;  ///< otherwise only its text stands at the lower edge
};

/// A stretch between two corners.
struct ProfileLeg {
    QLineF line;
    QString text;  ///< "Skills 8 min", "Down 4 m/min"
    bool steep = false;
    bool downward = false;
    std::optional<Severity> warning;  ///< faster than a rule allows
};

struct ProfileLabel {
    QRectF box;
    QString text;
    bool faint = false;
    std::optional<Severity> severity;  ///< drawn with its shape; the text has the word
};

/// Everything the profile shows, laid out, before anything is painted: so that what is said and
/// where it stands can be tested without looking at pixels.
struct ProfileScene {
    ProfileScale scale;
    Profile profile;
    std::vector<Depth> depth_marks;
    std::vector<Minutes> time_marks;
    std::vector<DepthLine> lines;
    std::vector<ProfileLeg> legs;           ///< leg i ends at corner i + 1
    std::vector<QPointF> clearing_marks;    ///< on the descents, where ears are to be cleared
    std::vector<ProfileLabel> labels;       ///< none overlaps another
};

/// Lays the dive out in a widget of a size.
/// @param scale  a scale to keep (while something is dragged); otherwise a fitting one
ProfileScene profile_scene(const SessionDocument& document, const QRectF& area,
                           const QFontMetricsF& metrics,
                           const std::optional<ProfileScale>& scale = {});

}  // namespace leadline
