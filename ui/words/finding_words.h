// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/planning/finding.h"
#include "core/planning/session.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A finding in words.
struct FindingText {
    QString about;   ///< whom or what: a guest's name, "Blue group", "Session"
    QString what;    ///< what is wrong, with numbers
    QString remedy;  ///< what to do
    QString source;  ///< rule set and where it has the value from; empty for the program's own check
};

FindingText words(const Finding& finding, const Session& session, UnitSystem units);

/// Name of what a finding is about.
QString subject_name(const Subject& subject, const Session& session);

}  // namespace leadline
