// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/session_store.h"

// Rows of what the centre has to hand out, as it was on the day. Reading keeps the order in which
// they were written.

namespace leadline {

Result<Done> write_stock(const QSqlDatabase& database, SessionRow row, const Stock& stock);
Result<Stock> read_stock(const QSqlDatabase& database, SessionRow row);

}  // namespace leadline
