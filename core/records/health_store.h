// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtGlobal>
#include <optional>
#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/health_entry.h"
#include "core/planning/ids.h"
#include "core/records/database.h"
#include "core/records/session_store.h"
#include "core/records/vault.h"

namespace leadline {

/// Sealed records about guests. Every reading and writing needs the open vault and stands in the
/// audit trail in the same transaction; without a line in the trail nothing is given out. Records
/// of a person are also found under the person that one was merged into (persons.merged_into).
class HealthStore {
public:
    HealthStore(Database& database, Vault& vault) : database_(database), vault_(vault) {}

    /// The person a guest of a session on record is. @returns not_found
    Result<qint64> person_of(SessionRow session, const GuestId& guest);

    /// The name on record of a person; empty when there is none of that number any more.
    Result<std::string> name_of(qint64 person);

    /// Seals a record, bound to its row, person and kind. The person's name and birth date as on
    /// record now are sealed with it. Earlier records stay.
    /// @param content  UTF-8, up to 1 MiB
    /// @returns its row; vault_locked; not_found; bad_text; out_of_range
    Result<qint64> put(qint64 person, std::optional<SessionRow> session, HealthKind kind,
                       const std::string& content);
    /// Newest first. One record that cannot be opened is an error for all of them: a list with a
    /// gap would be read as if it were whole.
    /// @returns vault_locked; sealed_unreadable with the row
    Result<std::vector<HealthEntry>> open(qint64 person, HealthKind kind);
    /// Needs no open vault.
    Result<int> count(qint64 person, HealthKind kind);
    /// Notes that a person's records of a kind leave the program. To be called before they do.
    Result<Done> note_export(qint64 person, HealthKind kind);
    /// Rows of records that the trail says were written and not erased, and that are not there:
    /// somebody took them out from outside. Needs no open vault; as sure as the trail is.
    Result<std::vector<qint64>> taken_out();
    /// Removes all records of a person for good; the trail says so. @returns how many
    Result<int> erase(qint64 person);

    /// Whether records can be sealed anew for another person.
    [[nodiscard]] bool can_move() const { return vault_.is_open(); }
    /// Seals a person's own records anew for another person, inside the caller's transaction. What
    /// cannot be opened stays where it is. @returns vault_locked
    Result<Done> move(qint64 from, qint64 to);
    /// The same for those alone that were sealed in one session, also of persons merged into `from`.
    Result<Done> move(qint64 from, qint64 to, SessionRow session);

private:
    Result<Done> move_record(qint64 row, qint64 to);
    Result<Done> note(AuditEvent event, qint64 person, qint64 record, const std::string& detail);

    Database& database_;
    Vault& vault_;
};

}  // namespace leadline
