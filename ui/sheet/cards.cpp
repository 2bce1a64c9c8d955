// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/cards.h"

#include <algorithm>

#include "ui/guest_words/guest_language.h"

namespace leadline {

namespace {

void add_faces(const Session& session, const Plan& plan, const Guest& guest, UnitSystem units,
               CardSelection& selection) {
    selection.cards.push_back(card_content(session, plan, guest, units));
    if (find_guest_language(guest.language) == nullptr) {
        selection.missing.push_back({guest.id, guest.language, false});
    }
    if (guest.second_language.empty()) return;
    const GuestLanguage* second = find_guest_language(guest.second_language);
    if (second == nullptr) {
        selection.missing.push_back({guest.id, guest.second_language, true});
    } else if (second->tag != selection.cards.back().language) {
        selection.cards.push_back(card_content(session, plan, guest, units, second->tag));
        selection.cards.back().second_face = true;
    }
}

}  // namespace

int CardSelection::guests() const {
    return static_cast<int>(std::count_if(
        cards.begin(), cards.end(), [](const CardContent& card) { return !card.second_face; }));
}

CardSelection select_cards(const Session& session, const Plan& plan, UnitSystem house_units,
                           const std::set<GuestId>& left_out) {
    CardSelection selection;
    for (const Guest& guest : session.guests) {
        if (card_is_blocked(plan.findings, guest.id, guest.group)) {
            selection.blocked.push_back(guest.id);
        } else if (!left_out.contains(guest.id)) {
            add_faces(session, plan, guest, house_units, selection);
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
