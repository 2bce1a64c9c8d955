// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/planning/plan.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// What can be printed, in the order in which it is offered.
enum class SheetKind { cards, beach, skills, kit, emergency, pictures };
inline constexpr int sheet_kind_count = 6;

/// Whether the sheet is made for one group at a time.
[[nodiscard]] constexpr bool is_for_group(SheetKind kind) {
    return kind == SheetKind::beach || kind == SheetKind::skills || kind == SheetKind::kit;
}

/// One of the instructor's sheets, as chosen.
struct SheetChoice {
    SheetKind kind = SheetKind::beach;
    Paper paper = Paper::a4;
    GroupId group;               ///< empty: all
    std::string language = "en"; ///< of the page of pictures
    std::string second_language;
};

/// The pages of a sheet other than the cards. Empty where there is no group to make one for.
/// @param setter  kept from one call to the next, it remembers what it has measured
std::vector<Page> sheet_pages(const SheetChoice& choice, const Session& session, const Plan& plan,
                              UnitSystem units, TypeSetter& setter);

}  // namespace leadline
