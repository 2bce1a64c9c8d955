// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace leadline {

/// Asked again and again during long work, with the share done (0 to 1); false stops the work with
/// ErrorCode::cancelled. Called in the thread that does the work.
using GoOn = std::function<bool(double share_done)>;

}  // namespace leadline
