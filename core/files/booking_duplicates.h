// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/files/booking_csv.h"

namespace leadline {

/// Marks the rows that may be somebody who is in the session already or in an earlier row. The
/// strongest reason counts, and a guest of the session before an earlier row.
///
/// Work is bounded: where very many rows share one birth date (a stand-in, mostly), slips in their
/// names are looked for only as far as `most_close_looks` goes; equal names are always found.
inline constexpr int most_close_looks = 200'000;
void mark_duplicates(std::vector<BookingRow>& rows, const Session& session);

}  // namespace leadline
