// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace leadline {

/// A drawing that the program carries, as a resource: "kit/bcd" is ":/leadline/kit/bcd.svg".
inline QString picture_path(const char* name) {
    return QStringLiteral(":/leadline/") + QLatin1String(name) + QStringLiteral(".svg");
}

}  // namespace leadline
