// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

#include "core/physics/result.h"
#include "core/records/database.h"

namespace leadline::bench {

struct BigRecords {
    int persons = 100'000;
    int dives = 400'000;  ///< rows of session_guests: a guest on a past session, most with a log
    int guests_a_session = 5;
    std::uint32_t seed = 20260704;
};

/// Fills an empty database with invented persons and past sessions, the same every time. Names are
/// made of syllables, some with accents, some in other scripts; nobody of that name is meant.
/// @returns Done, or the database's error; nothing is written then
Result<Done> fill(Database& database, const BigRecords& size);

}  // namespace leadline::bench
