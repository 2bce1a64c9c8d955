// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/planning/kit_list.h"
#include "core/planning/session.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// One person's kit; an empty value is missing.
struct KitRow {
    QString name;
    QString group;
    QString values[kit_item_count];
    bool staff = false;  ///< brings the own kit; only the cylinder is packed
    friend bool operator==(const KitRow&, const KitRow&) = default;
};

/// What whoever packs needs: everybody's things with a box to tick, and how many of each kind.
struct KitSheet {
    QString title;    ///< the group, or "All groups"
    QString session;  ///< site, day, time
    std::vector<KitRow> rows;  ///< by group, then staff with a cylinder
    std::vector<std::pair<QString, QString>> totals;  ///< "Suits", "3 × 5 mm M, 1 × 7 mm L"
    QStringList missing;  ///< "Ana: suit, mask"
    QString standing;
    friend bool operator==(const KitSheet&, const KitSheet&) = default;
};

/// @param group  whose kit; empty: everybody's, those in no group last
KitSheet kit_sheet(const Session& session, const GroupId& group, UnitSystem units);

/// Pages of rows; the totals stand after the last.
std::vector<Page> kit_pages(const KitSheet& sheet, Paper paper, TypeSetter& setter);

}  // namespace leadline
