// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/result.h"
#include "core/records/database.h"
#include "core/records/health_store.h"

namespace leadline {

/// Seals the answers that an older schema kept open (answers_to_seal()), one record for each person
/// and session, and takes them out of the open, of the write-ahead file too. Stopped half-way, the rest waits for the next time.
/// @returns how many answers were sealed; vault_locked
Result<int> seal_waiting_answers(Database& database, HealthStore& health);

}  // namespace leadline
