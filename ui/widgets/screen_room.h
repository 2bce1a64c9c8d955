// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>

class QWidget;

namespace leadline {

/// The size wanted for a window, or what its screen has room for where that is less: with large
/// type a screen holds few lines, and buttons below its edge cannot be reached.
QSize within_screen(const QWidget& window, QSize wanted);

}  // namespace leadline
