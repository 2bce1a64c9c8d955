// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>
#include <QPalette>

#include "core/planning/finding.h"
#include "core/planning/screening.h"

namespace leadline {

/// A shape that stands before a word, so that a state is told at a glance and without colour: a
/// hook for done, a dashed ring for open, and the shapes of the severities.
enum class Mark { none, done, open, note, caution, stop };

QIcon mark_icon(Mark mark, const QPalette& palette);
Mark mark_of(Severity severity);
Mark mark_of(ScreeningOutcome outcome);
Mark mark_of(TodayOutcome outcome);

}  // namespace leadline
