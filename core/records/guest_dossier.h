// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QtGlobal>
#include <vector>

#include "core/files/session_file.h"
#include "core/physics/result.h"
#include "core/records/database.h"
#include "core/records/session_store.h"

namespace leadline {

/// A past session as far as it is about one guest: place, conditions and plan, the guest's own row,
/// group and log, and what was decided about the guest. Nothing of other guests or of staff is in it,
/// nor the note on the whole dive, which may speak of others.
struct DossierSession {
    SessionRow row;
    SessionFile file;
};

/// All that is on record of one person but what is sealed, of which only the number is known here.
struct GuestDossier {
    Guest person;  ///< as the register knows the person; lasting fields only
    QStringList merged_names;
    std::vector<DossierSession> sessions;  ///< newest first
    int sealed_records = 0;  ///< with answers that wait to be sealed
};

/// Leaves of a session only what is about these guests.
SessionFile only_about(SessionFile file, const std::vector<GuestId>& guests);

/// @returns not_found for a person who is not there, was merged into another or removed
Result<GuestDossier> read_dossier(Database& database, qint64 person);

}  // namespace leadline
