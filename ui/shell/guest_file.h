// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>
#include <optional>
#include <vector>

#include "core/planning/dates.h"
#include "core/records/guest_dossier.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A sealed record, opened for a guest's file.
struct SealedText {
    QString kind;
    QString made_at;
    QString content;
};

/// Opens the sealed records of a person; nothing while they are locked.
using SealedReader = std::function<std::optional<std::vector<SealedText>>(qint64 person)>;

/// All that is on record of one guest, for the guest: a page to read, and the same as JSON.
/// @param sealed  nothing: locked; the file then says how many there are
QString guest_page(const GuestDossier& dossier,
                   const std::optional<std::vector<SealedText>>& sealed, Date written_on,
                   UnitSystem units);
QByteArray guest_json(const GuestDossier& dossier,
                      const std::optional<std::vector<SealedText>>& sealed, Date written_on);

}  // namespace leadline
