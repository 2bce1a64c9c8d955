// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/physics/result.h"

namespace leadline {

/// An error as one or two plain sentences: what is wrong, where, and what to do.
/// @param file  name of the file concerned, put in front; may be empty
QString words(const Error& error, const QString& file = {});

}  // namespace leadline
