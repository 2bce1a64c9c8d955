// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>
#include <vector>

#include "core/physics/result.h"
#include "core/records/database.h"

namespace leadline {

class HealthStore;

/// A merge that stands.
struct PersonMerge {
    qint64 id = 0;
    qint64 kept = 0;
    qint64 merged = 0;
    QString merged_name;
    QString merged_at;  ///< UTC, "2026-07-04T08:15:00Z"
};

/// Makes one person of two. The merged one's row stays as it was and only points to the one kept, to
/// whom their guests now refer; gaps of the kept one are filled from it. Lists, counts and the search
/// show the kept one alone.
class PersonMerges {
public:
    /// @param health  seals records anew when a merge is taken back; nullptr: as with a locked vault
    explicit PersonMerges(Database& database, HealthStore* health = nullptr)
        : database_(database), health_(health) {}

    /// Whether a person stands in lists: not merged into another, and not removed.
    Result<bool> is_shown(qint64 person);

    /// @param at  the time, UTC as ISO 8601
    /// @returns the merge's number; not_found where one of them is not shown any more, or they are
    ///          the same row
    Result<qint64> merge(qint64 kept, qint64 merged, const QString& at);

    /// Takes a merge back: every guest who pointed to the merged person does so again, and gaps that
    /// the merge filled are gaps again, unless something else was typed since. What was sealed since
    /// in a session of such a guest goes back too, unless the kept person is in that session as well.
    /// @returns Done; not_found where the merge is not there, or one of the two has been merged into
    ///          somebody else since (take that back first) or removed; vault_locked where records
    ///          must be sealed anew, and nothing is changed then
    Result<Done> undo(qint64 merge);

    /// Merges into a person, the newest first.
    Result<std::vector<PersonMerge>> into(qint64 kept);

private:
    Database& database_;
    HealthStore* health_;
};

}  // namespace leadline
