// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace leadline {

/// A tooltip that shows the text as it is, line breaks included, whatever signs a name may hold.
QString plain_tip(const QString& text);

}  // namespace leadline
