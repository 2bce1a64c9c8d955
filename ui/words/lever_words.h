// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/planning/plan.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A chance as so many of 100 dives, whole ones and rounded down: "83 of 100"; the ends are not
/// pretended to be known: "over 99 of 100", "fewer than 1 of 100".
/// @param chance  0 to 1
QString chance_text(double chance);
/// "83 → 91 of 100"; "83 of 100, as now" when both read alike.
QString chance_change_text(double before, double after);

/// A group by its name: "Blue", "Group 2" where the name is a bare number, "Group" without one.
QString group_label(const Session& session, const GroupId& id);

/// A lever in words.
struct LeverText {
    QString what;      ///< the change: "Steel 15 L for Ana"
    QString gain;      ///< median minutes, rounded down: "+4 min"
    QString chance;    ///< "83 → 91 of 100"
    QString cost;      ///< what it takes: "3.6 kg more on land; if one is free. Read …"
    QString sentence;  ///< all of it, for a screen reader
};

/// @param plan     the plan that holds the lever
/// @param session  the session of that plan
LeverText words(const Lever& lever, const Plan& plan, const Session& session, UnitSystem units);

}  // namespace leadline
