// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QIcon>
#include <QPalette>

#include "core/planning/finding.h"

class QApplication;
class QWidget;

namespace leadline {

enum class Shade { light, dark };

/// The colours beside the palette's own. One accent; the rest are inks. Text colours reach 4.5:1 and
/// more on the base colour (WCAG 2.1, 1.4.3).
struct Inks {
    QColor accent;    ///< lines, links, the selected tab
    QColor stop;      ///< always with the word or the octagon-like shape
    QColor caution;   ///< always with the word or the triangle
    QColor note;
    QColor faint;     ///< secondary text
    QColor rule;      ///< hairlines
    QColor water;     ///< fill of the water in the profile
};

/// Sets style (Fusion), font and palette for the whole program.
void apply_theme(QApplication& application, Shade shade);
/// Light or dark, as the widget's palette has it.
Shade shade_of(const QPalette& palette);
Inks inks(const QPalette& palette);

/// The shape for a severity (filled square with bar: stop, triangle: care, ring: note), drawn in its
/// ink. Never used without the word beside it.
QIcon severity_icon(Severity severity, const QPalette& palette);

}  // namespace leadline
