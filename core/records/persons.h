// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QtGlobal>
#include <map>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"

// Keeps the register of persons in step with the guests of a session that is being saved.

namespace leadline {

class HealthStore;

/// A guest as the session had it before the save: the person referred to, and what was known.
struct StoredGuest {
    qint64 person = 0;
    Guest lasting;
};
using StoredGuests = std::map<GuestId, StoredGuest>;

/// Which person each guest is.
using PersonOf = std::map<GuestId, qint64>;

/// Reads the lasting fields of a guest, in the order of the columns name, birth_date, language,
/// body_mass_kg, body_height_m, shoe_size_eu, measured_rmv_l_per_min, dives_before, phone, email.
Guest read_lasting(Row& row);

Result<StoredGuests> stored_guests(const QSqlDatabase& database, SessionRow session);

/// Finds the person each guest is, and adds those who are new. To be called while the session's
/// rows are still those of before the save.
///
/// A guest is the person of that name and birth date, or whom that person was merged into; else,
/// with name and birth date as before, the person the guest referred to before; else that person
/// too, if nobody else refers to it (a correction of name or date, which the register takes over);
/// else a person of that name and date whom this session left behind with sealed or waiting records
/// (a removal or a pick that was undone); else somebody new. A guest without a birth date is never taken for a person of the same name in
/// another session: too little is known, and a measured RMV of somebody else would mislead.
Result<PersonOf> identify_persons(const QSqlDatabase& database, SessionRow row,
                                  const Session& session, const StoredGuests& before);

/// Writes what the session knows of its guests to their persons. To be called when the session's
/// new rows stand. A person whom a later session knows is left alone. What the session leaves open
/// stays as it was, unless this very session had it before and took it back. A person without a
/// birth date to whom a guest referred until now, and nobody does any more, is taken out. Sealed
/// records of such a person go to the person the guest turned out to be: sealed anew while the vault
/// is open, otherwise the old person is kept and points to the new one. Of a person who stays, the
/// records sealed in this session follow the guest, unless another guest of the session is that
/// person; while the vault is locked they stay where they are.
/// @param health  nullptr: as with a locked vault
Result<Done> update_persons(const QSqlDatabase& database, SessionRow row, const Session& session,
                            const StoredGuests& before, const PersonOf& persons,
                            HealthStore* health);

}  // namespace leadline
