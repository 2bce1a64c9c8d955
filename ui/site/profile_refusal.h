// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/physics/result.h"

namespace leadline {

/// Why a profile was not taken over, in the words of the corner table instead of the file's.
QString profile_refusal(const Error& error);

}  // namespace leadline
