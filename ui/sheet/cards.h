// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string>
#include <vector>

#include "ui/sheet/card_content.h"

namespace leadline {

/// A guest who asked for a language in which there are no words.
struct MissingLanguage {
    GuestId guest;
    std::string tag;      ///< as the guest has it
    bool second = false;  ///< the second language: the card has one face less; else it is in English
    friend bool operator==(const MissingLanguage&, const MissingLanguage&) = default;
};

/// Who gets a card, and who is refused one.
struct CardSelection {
    std::vector<CardContent> cards;  ///< faces in roster order, a second face behind its first
    std::vector<GuestId> blocked;    ///< a stop stands for the guest, the group or the session
    std::vector<MissingLanguage> missing;  ///< of the guests with a card, roster order
    /// How many guests get a card: fewer than faces where some read two languages.
    [[nodiscard]] int guests() const;
};

/// The cards of a session, each in its guest's language and units. A guest is refused while a stop
/// stands that nobody has overruled.
/// @param house_units  of the window and the gauges
/// @param left_out  guests for whom no card is wanted; those blocked are listed all the same
CardSelection select_cards(const Session& session, const Plan& plan, UnitSystem house_units,
                           const std::set<GuestId>& left_out = {});

/// The stops that keep a guest from a card, worst first.
std::vector<Finding> blocking_findings(const Plan& plan, const Guest& guest);

}  // namespace leadline
