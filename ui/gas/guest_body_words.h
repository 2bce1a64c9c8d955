// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/planning/plan.h"
#include "ui/gas/gas_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {

class SessionDocument;

/// What the plan has about one guest's body.
struct GuestBody {
    const Guest* guest = nullptr;
    const GuestWarmth* warmth = nullptr;
    const GuestLead* lead = nullptr;
};

/// None for a guest of whom the plan knows nothing.
std::optional<GuestBody> guest_body(const SessionDocument& document, const GuestId& guest);

/// Minutes until too cold, rounded down: "38 min (24 to 55)", "over 240 min (from 30)".
QString too_cold_text(const GuestWarmth& warmth);
/// Minutes until the guest begins to feel cold, rounded down: "21 min", "over 240 min".
QString feels_cold_text(const GuestWarmth& warmth);
/// "sinks 2.1 kg", "floats 0.4 kg"; "neutral" where the figure would be nought.
QString lift_text(Kilograms lift, UnitSystem units);
/// What to try first, and from the least to the most: "6 kg (5 to 8)"; "6 kg" where all read alike.
QString lead_text(const GuestLead& lead, UnitSystem units);

/// Something to know about one guest: in short, for the table, and in full.
struct BodyNote {
    std::optional<FindingCode> code;   ///< none: something is missing
    std::optional<Severity> severity;  ///< none: something is missing, or it was set aside
    QString brief;
    QString full;
};
/// The gravest first; what is missing last.
std::vector<BodyNote> body_notes(const SessionDocument& document, const GuestId& guest);

/// Who of the guest's group is likely too cold first; with nobody too cold within 240 min, who
/// feels cold first.
bool is_first_cold(const SessionDocument& document, const GuestId& guest);

/// Who gets cold first, a sentence a group; who is too heavy or too light; for whom there is no
/// estimate and why.
std::vector<GasSentence> body_answers(const SessionDocument& document);
/// What a guest's figures follow from (empty id: nobody's), and the sources of all of them.
std::vector<GasSentence> body_reasons(const SessionDocument& document, const GuestId& guest);

}  // namespace leadline
