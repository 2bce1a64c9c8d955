// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QtGlobal>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/records/database.h"
#include "core/records/sealing.h"
#include "core/records/vault_names.h"

namespace leadline {

/// The time of day for records: seconds since 1970, UTC. Replaced in tests.
using UtcClock = std::function<std::int64_t()>;
std::int64_t system_time();
/// "2026-07-04T08:15:00Z"
std::string utc_text(std::int64_t seconds);

/// One line of the trail. Nothing of a record's content is ever in it.
struct AuditEntry {
    qint64 number = 0;   ///< 1, 2, 3 ...
    std::string at;      ///< UTC, "2026-07-04T08:15:00Z"
    std::string who;     ///< as said when unlocking; who really typed it is not known
    std::string event;   ///< stored name of an AuditEvent
    qint64 person = 0;   ///< 0: about no person
    qint64 record = 0;   ///< 0: about no record
    std::string detail;  ///< the record's kind, the way into the vault, or the fault found
    friend bool operator==(const AuditEntry&, const AuditEntry&) = default;
};

struct AuditVerdict {
    qint64 entries = 0;
    bool seal_checked = false;          ///< needs the open vault: without it a cut end is not seen
    std::optional<AuditFault> fault{};  ///< nothing: no fault found
    qint64 first_broken = 0;            ///< number of the entry at which it is broken
    friend bool operator==(const AuditVerdict&, const AuditVerdict&) = default;
};

/// Who did what with the sealed records, and when. Every entry is chained to the one before by a
/// hash, and as long as the vault is open the length and the end of the chain are sealed with its
/// key. So an entry that was changed or taken out is found, and so is an end cut off. Not found:
/// what is noted without the key (failed unlocks, records that went with a removed guest), made up or
/// cut off before the next unlock, and a whole file put back to an older state.
class AuditTrail {
public:
    explicit AuditTrail(Database& database, UtcClock clock = system_time)
        : database_(database), clock_(std::move(clock)) {}

    struct Note {
        AuditEvent event{};
        std::string who;
        qint64 person = 0;
        qint64 record = 0;
        std::string detail{};
    };

    /// Adds an entry, inside the caller's transaction. With a key a fault at the end of the trail
    /// is noted first, so that the new seal does not cover it up.
    /// @param key  the audit key of the open vault; nullptr: locked, and no seal is made
    Result<Done> append(const Note& note, const SecretBytes* key);
    /// Newest first.
    Result<std::vector<AuditEntry>> entries(int limit);
    /// Looks through the whole trail.
    Result<AuditVerdict> verify(const SecretBytes* key);
    /// Notes what verify() finds, unless the trail says so already; inside the caller's
    /// transaction.
    Result<Done> note_faults(const std::string& who, const SecretBytes& key);

private:
    Result<Done> add(const Note& note);
    Result<Done> write_seal(const SecretBytes& key);
    Result<std::optional<AuditVerdict>> fault_at_end(const SecretBytes& key);
    Result<Done> note_fault(const std::string& who, const AuditVerdict& verdict);

    Database& database_;
    UtcClock clock_;
};

}  // namespace leadline
