// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/records/sealing.h"
#include "ui/sheet/layout.h"

namespace leadline {

/// Of the recovery key, on paper and on the screen alike.
inline constexpr int groups_in_row = 3;

/// The paper with the recovery key, for the centre's safe.
/// @param made_on  date as it is shown
/// @param records  where the records lie
Page recovery_sheet(const SecretBytes& recovery_key, const QString& made_on,
                    const QString& records);

}  // namespace leadline
