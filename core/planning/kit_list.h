// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/planning/session.h"

namespace leadline {

/// The things a guest is given, in the order in which they are packed.
enum class KitItem { suit, bcd, fins, mask, regulator, lead, cylinder };
inline constexpr int kit_item_count = 7;

/// So many of one label: 2 of "5 mm M".
struct KitCount {
    std::string label;  ///< as on the guest's kit, spaces trimmed; a cylinder: the id of its type
    int count = 0;
    friend bool operator==(const KitCount&, const KitCount&) = default;
};

/// What somebody still lacks.
struct KitGap {
    GuestId guest;
    std::vector<KitItem> missing;  ///< in the order of KitItem
    friend bool operator==(const KitGap&, const KitGap&) = default;
};

/// What is to be packed.
struct KitTotals {
    /// Of suit, bcd, fins, mask, regulator and cylinder, by label in alphabetical order; empty for
    /// lead. Staff bring their own kit but for the cylinders, which are counted.
    std::vector<KitCount> counts[kit_item_count];
    Kilograms lead{0.0};       ///< of all guests together
    int guests_with_lead = 0;
    std::vector<KitGap> gaps;  ///< roster order; those who lack nothing left out
};

[[nodiscard]] inline const std::vector<KitCount>& counts_of(const KitTotals& totals, KitItem item) {
    return totals.counts[static_cast<std::size_t>(item)];
}

/// @param group  whose kit; empty: everybody's
KitTotals kit_totals(const Session& session, const GroupId& group = {});

}  // namespace leadline
