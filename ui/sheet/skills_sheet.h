// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/planning/session.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"

namespace leadline {

struct SheetSkill {
    QString picture;
    QString name;
    QString purpose;
    friend bool operator==(const SheetSkill&, const SheetSkill&) = default;
};

/// Who is to practise what: guests down, skills across, a box to tick for each.
struct SkillsSheet {
    QString group;
    QString session;  ///< site and day
    std::vector<QString> guests;
    std::vector<SheetSkill> skills;
    QString standing;
    friend bool operator==(const SkillsSheet&, const SkillsSheet&) = default;
};

/// @param group  one of the session's groups
SkillsSheet skills_sheet(const Session& session, const Group& group);

inline constexpr std::size_t skills_guests_on_page = 16;

std::vector<Page> skills_pages(const SkillsSheet& sheet, Paper paper, TypeSetter& setter);

}  // namespace leadline
