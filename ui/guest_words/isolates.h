// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChar>

namespace leadline {

// Letters without a shape that keep a part of a line in its own direction.
// Source: Unicode Standard Annex 9, Unicode Bidirectional Algorithm, 2.2 and 2.5.
inline constexpr QChar left_to_right_isolate(0x2066);
inline constexpr QChar right_to_left_isolate(0x2067);
inline constexpr QChar first_strong_isolate(0x2068);
inline constexpr QChar pop_isolate(0x2069);

// Letters without a shape at the front of a text that make all of it run their way.
// Source: as above, 2.6 and 3.3.1 (rules P2 and P3).
inline constexpr QChar left_to_right_mark(0x200E);
inline constexpr QChar right_to_left_mark(0x200F);

}  // namespace leadline
