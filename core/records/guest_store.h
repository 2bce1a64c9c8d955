// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>
#include <optional>
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
    std::optional<Date> last_session;  ///< the newest of them
};

class GuestStore {
public:
    explicit GuestStore(Database& database) : database_(database) {}
    /// Persons found by name, phone or e-mail, as find_persons() says (person_search.h): case, accents
    /// and, where nobody fits, one slip of the pen are forgiven. Merged and removed persons are not
    /// among them.
    Result<std::vector<KnownGuest>> find(const QString& text, int limit = 20);
    /// The same, row numbers only.
    Result<std::vector<qint64>> find_rows(const QString& text, int limit);
    /// Persons by their row numbers, in that order; those that are not there are left out.
    Result<std::vector<KnownGuest>> read(const std::vector<qint64>& rows);
    /// All persons by name, a page at a time.
    Result<std::vector<KnownGuest>> page(int first, int count);
    Result<int> count();

private:
    Database& database_;
};

}  // namespace leadline
