// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <string>

#include "core/planning/kit_list.h"
#include "core/planning/session.h"
#include "ui/words/quantity_text.h"

namespace leadline {

class GuestTongue;

// Words that several of the instructor's sheets share.

/// Text as people typed it, on one line.
QString one_line(const std::string& typed);
QString one_line(const QString& typed);
/// A name that runs from right to left, isolated, so that a number behind it keeps its place; any other
/// as it is.
QString set_apart(const QString& name);
/// Its lines, without the empty ones.
QStringList lines_of(const std::string& typed);

/// "Suit"
QString kit_item_name(KitItem item);
/// What is entered for an item: "5 mm M", "6 kg", "Steel 12 L"; empty: nothing.
QString kit_value(const Kit& kit, KitItem item, UnitSystem units);
/// All of it on one line; what is missing is said so.
QString kit_line(const Kit& kit, UnitSystem units);
/// "Steel 12 L", "Aluminium 77 cu ft": as cylinders are asked for.
QString cylinder_text(const CylinderTypeId& type, UnitSystem units);

/// How far the guests' words on a page can be trusted, a sentence; empty: they were written so.
QString translation_review(const GuestTongue& tongue);
/// A planning aid; who decides.
QString planning_aid_line();
/// "Metric units"
QString units_line(UnitSystem units);
/// Site, day and times of a session on one line.
QString session_line(const Session& session);
/// "Page 1 of 2"
QString page_line(std::size_t page, std::size_t pages);

}  // namespace leadline
