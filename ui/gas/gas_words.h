// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/planning/plan.h"

namespace leadline {

class SessionDocument;

/// A sentence and, when it is about something that needs attention, how much.
struct GasSentence {
    std::optional<Severity> severity;
    QString text;
};

/// Minutes that a person may rely on: whole ones, rounded down.
QString whole_minutes(Minutes time);

/// How long a group's air lasts, and for whom.
GasSentence group_answer(const SessionDocument& document, const GroupGas& gas);
/// What the group's instructor keeps for bringing a guest up.
GasSentence instructor_answer(const SessionDocument& document, const GroupGas& gas);
/// The answers for a group, or for all when `group` is empty; guests without a group get one too.
std::vector<GasSentence> group_answers(const SessionDocument& document, const GroupId& group);
std::vector<GasSentence> instructor_answers(const SessionDocument& document, const GroupId& group);

/// The open finding of a kind about a guest, or nullptr.
const Finding* open_finding(const Plan& plan, FindingCode code, const Subject& subject);

}  // namespace leadline
