// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QtGlobal>
#include <vector>

#include "core/physics/go_on.h"
#include "core/physics/result.h"
#include "core/records/database.h"

namespace leadline {

/// How alike two names are.
enum class NameLikeness {
    different,
    same,      ///< folded, the same
    reordered, ///< the last name first in one of them
    one_slip,  ///< a letter wrong, missing, too many, or two swapped; also with the last name first
};

/// Compares two folded names (fold.h). Names under five letters count as alike only when the same.
NameLikeness likeness(const QString& first, const QString& second);

/// Two persons on record who may be one. They are offered; whether they are is for a person to say:
/// brothers and sisters share a phone number, twins a birth date.
struct DuplicatePair {
    qint64 first = 0;  ///< the smaller row number
    qint64 second = 0;
    NameLikeness names = NameLikeness::different;
    bool same_birth_date = false;
    bool birth_dates_differ = false;  ///< both are known
    bool same_phone = false;
    bool same_email = false;
};

class Duplicates {
public:
    explicit Duplicates(Database& database) : database_(database) {}

    /// Pairs of shown persons with like names and the same birth date, phone number or e-mail
    /// address, those kept apart left out; those most likely one first. A phone number or address
    /// that more than twenty persons have (the centre's own, say) is no sign.
    /// @return cancelled where `go_on` stopped it
    Result<std::vector<DuplicatePair>> find(const GoOn& go_on = {});

    /// Remembers that two persons are two: they are not offered again.
    Result<Done> keep_apart(qint64 one, qint64 other);

private:
    Database& database_;
};

}  // namespace leadline
