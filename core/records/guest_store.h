// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/database.h"

namespace leadline {

/// A person on record, with what lasts from one session to the next: name, birth date, language,
/// sizes, last measured RMV, dives
/// made. Screening and consent belong to a session and are not carried over.
struct KnownGuest {
    qint64 row = 0;
    Guest guest;      ///< only the lasting fields are filled; id and group are empty
    int sessions = 0; ///< how many sessions refer to the person
};

class GuestStore {
public:
    explicit GuestStore(Database& database) : database_(database) {}
    /// Persons whose name contains every word of the text, ignoring case and accents; by name.
    Result<std::vector<KnownGuest>> find(const QString& text, int limit = 20);
    Result<int> count();

private:
    Database& database_;
};

}  // namespace leadline
