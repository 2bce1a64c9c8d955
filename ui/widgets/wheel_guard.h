// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace leadline {

/// Lets the wheel change a box only while it has the focus: scrolling the page must not change what
/// the pointer happens to pass over. For boxes that are not a QuantityBox, which does so itself.
void guard_wheel(QWidget* box);

}  // namespace leadline
