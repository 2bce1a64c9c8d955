// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/cards.h"

namespace leadline {

CardSelection select_cards(const Session& session, const Plan& plan, UnitSystem units,
                           const std::set<GuestId>& left_out) {
    CardSelection selection;
    for (const Guest& guest : session.guests) {
        if (card_is_blocked(plan.findings, guest.id, guest.group)) {
            selection.blocked.push_back(guest.id);
        } else if (!left_out.contains(guest.id)) {
            selection.cards.push_back(card_content(session, plan, guest, units));
        }
    }
    return selection;
}

std::vector<Finding> blocking_findings(const Plan& plan, const Guest& guest) {
    std::vector<Finding> blocking;
    for (const Finding& finding : plan.findings) {
        // Asked one by one, so that what blocks is decided in one place only.
        if (card_is_blocked({finding}, guest.id, guest.group)) blocking.push_back(finding);
    }
    return blocking;
}

}  // namespace leadline
