// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/planning/air_order.h"
#include "core/planning/plan.h"
#include "ui/words/quantity_text.h"

namespace leadline {

class SessionDocument;

/// A sentence and, when it is about something that needs attention, how much.
struct GasSentence {
    std::optional<Severity> severity;
    QString text;
};

/// Minutes that a person may rely on: whole ones, rounded down.
QString whole_minutes(Minutes time);
/// The median: "34 min"; "over 240 min" when it is later than any profile.
QString median_text(const TimeBand& band);
/// From the 10 % to the 90 % dive: "27 to 43"; empty when both are later than any profile.
QString spread_text(const TimeBand& band);
/// Both: "34 min (27 to 43)".
QString band_text(const TimeBand& band);

/// Who is likely to be the first of the guest's group at the reserve.
bool is_likely_first(const Plan& plan, const GuestGas& gas);
/// Whether nobody else of the group has a cylinder, so that there is no first.
bool is_alone(const Plan& plan, const GuestGas& gas);

/// Who of a group is likely first at the reserve, when, and the chance that all last the plan.
GasSentence group_answer(const SessionDocument& document, const GroupGas& gas);
/// What the group's instructor keeps for bringing a guest up.
GasSentence instructor_answer(const SessionDocument& document, const GroupGas& gas);
/// The answers for a group, or for all when `group` is empty; guests without a group get one too.
std::vector<GasSentence> group_answers(const SessionDocument& document, const GroupId& group);
std::vector<GasSentence> instructor_answers(const SessionDocument& document, const GroupId& group);
/// The same chance when air is lost, and that two reach the surface on the instructor's cylinder.
std::vector<GasSentence> trouble_answers(const SessionDocument& document, const GroupId& group);
/// How the answers were reckoned, and their witness.
std::vector<GasSentence> answer_reasons(const SessionDocument& document, const GroupId& group);

/// The open finding of a kind about a guest, or nullptr.
const Finding* open_finding(const Plan& plan, FindingCode code, const Subject& subject);

}  // namespace leadline
