// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/planning/plan.h"
#include "core/planning/session.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// The page for the wall at the site: whom to call and what to do. Nothing of any guest stands on it.
struct EmergencySheet {
    QString site;
    QString meeting_place;  ///< empty: a line to write on
    QString number;         ///< to call; empty: a line to write on
    QStringList steps;      ///< the site's plan, line by line; empty: blanks
    QString altitude;       ///< "The water lies 1800 m above sea level …"; empty at sea level
    QString depth;          ///< how deep guests are taken and how deep the bottom lies
    QStringList blanks;     ///< what is to be filled in by hand
    QString standing;
    friend bool operator==(const EmergencySheet&, const EmergencySheet&) = default;
};

EmergencySheet emergency_sheet(const Session& session, const Plan& plan, UnitSystem units);

/// One page in as large a type as the plan allows; a plan too long for that goes on on another page.
std::vector<Page> emergency_pages(const EmergencySheet& sheet, Paper paper, TypeSetter& setter);

}  // namespace leadline
