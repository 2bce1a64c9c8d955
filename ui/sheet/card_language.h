// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/planning/session.h"

namespace leadline {

class GuestTongue;

/// The guests' words in the language of the window, for the instructor's own sheets; English where
/// guests are not briefed in that language.
const GuestTongue& window_tongue();

/// The name of a guest's language as the instructor reads it: "German"; "not entered" without one.
QString guest_language_name(const std::string& tag);

/// How far the words of a card in that language can be trusted: "German", "German: a draft, not
/// checked by a speaker", "No Swahili yet: the card is in English".
QString card_language_text(const std::string& tag);

/// The same in a few words for a list, the second language with it: "German (draft) and Italian",
/// "English, no Swahili yet".
QString card_languages_in_brief(const Guest& guest);

/// Whether a card can be had in the language.
bool has_card_language(const std::string& tag);

/// The guests whose own or second language has no translation, in roster order.
std::vector<const Guest*> guests_without_language(const std::vector<const Guest*>& guests);

/// How far the translations can be trusted that the guests' cards are in: a sentence for those that
/// are missing, for those drafted, and for each that is checked; empty where all read English.
QString review_text(const std::vector<const Guest*>& guests);

}  // namespace leadline
