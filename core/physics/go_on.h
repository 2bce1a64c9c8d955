// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace leadline {

/// Asked again and again during long work, with the share done (0 to 1); false stops the work with
/// ErrorCode::cancelled. Called in the thread that does the work.
using GoOn = std::function<bool(double share_done)>;

/// For a part of the work, that goes from one share of the whole to another.
inline GoOn part_of(const GoOn& whole, double from, double to) {
    if (!whole) return {};
    return [whole, from, to](double share) { return whole(from + (to - from) * share); };
}

}  // namespace leadline
