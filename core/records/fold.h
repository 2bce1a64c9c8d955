// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace leadline {

/// A name as it is searched (core/files/name_folding.h), for the texts of Qt.
QString folded(const QString& name);

}  // namespace leadline
