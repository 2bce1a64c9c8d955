// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <vector>

#include "ui/sheet/card_content.h"

namespace leadline {

/// Who gets a card, and who is refused one.
struct CardSelection {
    std::vector<CardContent> cards;  ///< roster order
    std::vector<GuestId> blocked;    ///< a stop stands for the guest, the group or the session
};

/// The cards of a session. A guest is refused while a stop stands that nobody has overruled.
/// @param left_out  guests for whom no card is wanted; those blocked are listed all the same
CardSelection select_cards(const Session& session, const Plan& plan, UnitSystem units,
                           const std::set<GuestId>& left_out = {});

/// The stops that keep a guest from a card, worst first.
std::vector<Finding> blocking_findings(const Plan& plan, const Guest& guest);

}  // namespace leadline
