// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_words.h"

#include <QCoreApplication>

#include "core/physics/air.h"
#include "ui/guest_words/guest_language.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/card_language.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

class SheetWords {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

}  // namespace

QString one_line(const std::string& typed) {
    return typed_line(typed);
}

QString one_line(const QString& typed) {
    return typed_line(typed);
}

QString set_apart(const QString& name) { return name.isRightToLeft() ? isolated(name) : name; }

QStringList lines_of(const std::string& typed) {
    QStringList lines;
    for (const QString& line : QString::fromStdString(typed).split(u'\n')) {
        const QString bare = typed_line(line);
        if (!bare.isEmpty()) lines << bare;
    }
    return lines;
}

QString kit_item_name(KitItem item) {
    switch (item) {
        case KitItem::suit:
            return SheetWords::tr("Suit");
        case KitItem::bcd:
            return SheetWords::tr("BCD");
        case KitItem::fins:
            return SheetWords::tr("Fins");
        case KitItem::mask:
            return SheetWords::tr("Mask");
        case KitItem::regulator:
            return SheetWords::tr("Regulator");
        case KitItem::lead:
            return SheetWords::tr("Lead");
        case KitItem::cylinder:
            return SheetWords::tr("Cylinder");
    }
    return {};
}

QString cylinder_text(const CylinderTypeId& id, UnitSystem units) {
    const CylinderType* type = find_cylinder_type(id);
    if (type == nullptr) return QString::fromStdString(id.text);
    if (units == UnitSystem::metric) {
        // The working pressure is stamped on it and helps nobody to find it on the rack.
        return text(*type, units).section(QStringLiteral(", "), 0, 0);
    }
    // By the air it holds when full, as cylinders are named there.
    const Cylinder full{type->id, type->working_pressure, Celsius(15.0)};
    const Moles content = cylinder_content(full, Bars(1.01325)).value_or(Moles(0.0));
    return SheetWords::tr("%1 %2", "metal and size of a cylinder")
        .arg(label(type->metal), text(free_air_volume(content), units));
}

QString kit_value(const Kit& kit, KitItem item, UnitSystem units) {
    switch (item) {
        case KitItem::suit:
            return one_line(kit.suit);
        case KitItem::bcd:
            return one_line(kit.bcd);
        case KitItem::fins:
            return one_line(kit.fins);
        case KitItem::mask:
            return one_line(kit.mask);
        case KitItem::regulator:
            return one_line(kit.regulator);
        case KitItem::lead:
            return kit.lead ? text(*kit.lead, units) : QString();
        case KitItem::cylinder:
            return kit.cylinder ? cylinder_text(kit.cylinder->type, units) : QString();
    }
    return {};
}

QString kit_line(const Kit& kit, UnitSystem units) {
    QStringList parts;
    for (int i = 0; i < kit_item_count; ++i) {
        const auto item = static_cast<KitItem>(i);
        const QString value = kit_value(kit, item, units);
        // A suit's thickness, a number on the set, kilograms and litres speak for themselves.
        const bool named = item == KitItem::bcd || item == KitItem::fins || item == KitItem::mask;
        if (value.isEmpty()) {
            parts << SheetWords::tr("%1 –", "item of kit that is missing").arg(kit_item_name(item));
        } else if (named) {
            parts
                << SheetWords::tr("%1 %2", "item of kit, its size").arg(kit_item_name(item), value);
        } else {
            parts << value;
        }
    }
    return parts.join(QStringLiteral(" · "));
}

QString translation_review(const GuestTongue& tongue) {
    const GuestLanguage& language = tongue.language();
    return language.review == ReviewState::written ? QString()
                                                   : QString(card_language_text(language.tag) + u'.');
}

QString planning_aid_line() {
    return SheetWords::tr(
        "A planning aid: figures can be wrong. Gauges, local rules and the instructor on the spot "
        "decide.");
}

QString units_line(UnitSystem units) {
    return units == UnitSystem::metric ? SheetWords::tr("Metric units")
                                       : SheetWords::tr("Imperial units");
}

QString session_line(const Session& session) {
    return SheetWords::tr("%1 · %2 · meet %3 · in the water %4", "site, day, times")
        .arg(one_line(session.site.name), text(session.date), text(session.meeting_time),
             text(session.dive_time));
}

QString page_line(std::size_t page, std::size_t pages) {
    return SheetWords::tr("Page %1 of %2").arg(page).arg(pages);
}

}  // namespace leadline
