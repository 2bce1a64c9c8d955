// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace leadline {

/// Round what a page or a dialog holds, and between its parts [px].
inline constexpr int margin = 16;
inline constexpr int spacing = 8;

// What the session file's schema lets in.
inline constexpr int most_guests = 200;
inline constexpr int longest_name = 200;   ///< characters
inline constexpr int longest_note = 2000;  ///< characters
inline constexpr int most_pieces = 1000;   ///< of one kind in stock

}  // namespace leadline
