// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

#include "core/planning/health_entry.h"
#include "core/records/vault_names.h"

namespace leadline {

/// "Screening answers"
QString label(HealthKind kind);
/// "Opened a record"; for an event this version does not know, its stored name.
QString audit_event_words(const std::string& stored_event);
/// What stands beside an event: the record's kind, the way into the vault, or as it is stored.
QString audit_detail_words(const std::string& stored_detail);
/// A whole sentence: where the trail is broken, and what that means.
QString audit_fault_words(AuditFault fault, long long number);

}  // namespace leadline
