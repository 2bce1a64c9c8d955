// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheets.h"

#include <iterator>

#include "ui/sheet/beach_sheet.h"
#include "ui/sheet/emergency_sheet.h"
#include "ui/sheet/kit_sheet.h"
#include "ui/sheet/picture_sheet.h"
#include "ui/sheet/skills_sheet.h"

namespace leadline {
namespace {

template <typename Make>
std::vector<Page> each_group(const SheetChoice& choice, const Session& session, Make make) {
    std::vector<Page> pages;
    for (const Group& group : session.groups) {
        if (!choice.group.empty() && group.id != choice.group) continue;
        std::vector<Page> more = make(group);
        pages.insert(pages.end(), std::make_move_iterator(more.begin()),
                     std::make_move_iterator(more.end()));
    }
    return pages;
}

}  // namespace

std::vector<Page> sheet_pages(const SheetChoice& choice, const Session& session, const Plan& plan,
                              UnitSystem units, TypeSetter& setter) {
    switch (choice.kind) {
        case SheetKind::cards:
            return {};
        case SheetKind::beach:
            return each_group(choice, session, [&](const Group& group) {
                return beach_pages(beach_sheet(session, plan, group, units), choice.paper, setter);
            });
        case SheetKind::skills:
            return each_group(choice, session, [&](const Group& group) {
                return skills_pages(skills_sheet(session, group), choice.paper, setter);
            });
        case SheetKind::kit:
            return kit_pages(kit_sheet(session, choice.group, units), choice.paper, setter);
        case SheetKind::emergency:
            return emergency_pages(emergency_sheet(session, plan, units), choice.paper, setter);
        case SheetKind::pictures:
            return picture_pages(
                picture_sheet(plan, units, choice.language, choice.second_language), choice.paper,
                setter);
    }
    return {};
}

}  // namespace leadline
