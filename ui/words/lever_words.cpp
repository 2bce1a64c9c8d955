// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/lever_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class LeverTexts {
    Q_DECLARE_TR_FUNCTIONS(Levers)
};

constexpr double certain = 0.99;
constexpr double hardly = 0.01;

/// The number alone, for "83 → 91 of 100".
QString of_hundred(double chance) {
    if (chance > certain) return LeverTexts::tr("over 99");
    if (chance < hardly) return LeverTexts::tr("fewer than 1");
    // A hair of slack keeps 0.83, which no double holds exactly, from being shown as 82.
    constexpr double slack = 1e-9;
    return QString::number(static_cast<int>(std::floor(chance * 100.0 + slack)));
}

QString name_of(const Session& session, const GuestId& id) {
    const Guest* guest = find_guest(session, id);
    return QString::fromStdString(guest != nullptr ? guest->name : id.text);
}

double chance_now(const Plan& plan, const GroupId& group) {
    const auto found =
        std::find_if(plan.forecasts.begin(), plan.forecasts.end(),
                     [&](const GroupForecast& forecast) { return forecast.group == group; });
    return found == plan.forecasts.end() ? 0.0 : found->completes;
}

/// Metal and size: "Steel 15 L".
QString cylinder_size(const CylinderType& type, UnitSystem units) {
    return text(type, units).section(QStringLiteral(", "), 0, 0);
}

QString what_of(const Lever& lever, const Session& session, UnitSystem units) {
    const QString name = name_of(session, lever.guest);
    switch (lever.kind) {
        case LeverKind::shallower:
            return LeverTexts::tr("No deeper than %1").arg(text(lever.deepest, units));
        case LeverKind::shorter_skills:
            return LeverTexts::tr("%1 less for skills").arg(text(lever.minutes_off));
        case LeverKind::bigger_cylinder: {
            const CylinderType* type = find_cylinder_type(lever.cylinder);
            return LeverTexts::tr("%1 for %2")
                .arg(type != nullptr ? cylinder_size(*type, units)
                                     : QString::fromStdString(lever.cylinder.text),
                     name);
        }
        case LeverKind::warmer_suit:
            return LeverTexts::tr("Suit %1 for %2").arg(QString::fromStdString(lever.suit), name);
        case LeverKind::swap_guests:
            return LeverTexts::tr("%1 and %2 change places")
                .arg(name, name_of(session, lever.other_guest));
        case LeverKind::one_guest_fewer:
            return LeverTexts::tr("Without %1").arg(name);
    }
    return {};
}

QString if_free(const Lever& lever) {
    return lever.stock_known ? LeverTexts::tr("one is free by the stock list")
                             : LeverTexts::tr("if one is free");
}

/// What the bigger cylinder weighs more than the one in hand.
QString heavier(const Lever& lever, const Session& session, UnitSystem units) {
    const Guest* guest = find_guest(session, lever.guest);
    const CylinderType* next = find_cylinder_type(lever.cylinder);
    const CylinderType* now = guest != nullptr && guest->kit.cylinder
                                  ? find_cylinder_type(guest->kit.cylinder->type)
                                  : nullptr;
    if (now == nullptr || next == nullptr || now->empty_mass.value() <= 0.0 ||
        next->empty_mass.value() <= 0.0) {
        return LeverTexts::tr("Heavier to carry");
    }
    const Kilograms more = next->empty_mass - now->empty_mass;
    // The table's masses are good to 1.5 kg; a smaller difference says nothing.
    constexpr double told_apart = 0.5;
    if (std::abs(more.value()) < told_apart) return LeverTexts::tr("About as heavy");
    const QString by = text(Kilograms(std::abs(more.value())), units);
    return more.value() > 0.0 ? LeverTexts::tr("%1 more on land").arg(by)
                              : LeverTexts::tr("%1 less on land").arg(by);
}

QString swap_cost(const Lever& lever, const Plan& plan, const Session& session) {
    const Guest* other = find_guest(session, lever.other_guest);
    if (other == nullptr) return {};
    const double before = chance_now(plan, other->group);
    return LeverTexts::tr("Ask first whether they came together. %1: %2 last the plan.")
        .arg(group_label(session, other->group),
             chance_change_text(before, before + lever.other_group_change));
}

QString cost_of(const Lever& lever, const Plan& plan, const Session& session, UnitSystem units) {
    switch (lever.kind) {
        case LeverKind::shallower:
            return LeverTexts::tr("Less to see.");
        case LeverKind::shorter_skills:
            return LeverTexts::tr("Less practice; the whole dive is %1 shorter.")
                .arg(text(lever.minutes_off));
        case LeverKind::bigger_cylinder:
            return LeverTexts::tr("%1; %2. Read its gauge, check the lead.")
                .arg(heavier(lever, session, units), if_free(lever));
        case LeverKind::warmer_suit:
            return LeverTexts::tr("Needs more lead, check at the surface; %1.").arg(if_free(lever));
        case LeverKind::swap_guests: return swap_cost(lever, plan, session);
        case LeverKind::one_guest_fewer:
            return LeverTexts::tr("Needs another group or another time.");
    }
    return {};
}

QString gain_of(const Lever& lever) {
    if (!lever.gain) return LeverTexts::tr("–");
    const double minutes = lever.gain->value();
    constexpr double noticed = 0.05;
    // More dives last, but the first may be there sooner: never shown as less than it is.
    if (minutes <= -noticed)
        return LeverTexts::tr("−%1").arg(text(Minutes(-minutes), Rounding::up));
    if (minutes < noticed) return text(Minutes(0.0));
    if (minutes < 1.0) return LeverTexts::tr("under %1").arg(text(Minutes(1.0)));
    if (lever.gain_is_least)
        return LeverTexts::tr("over +%1").arg(text(*lever.gain, Rounding::down));
    return LeverTexts::tr("+%1").arg(text(*lever.gain, Rounding::down));
}

QString sentence_of(const LeverText& said, const Lever& lever, const Plan& plan,
                    const Session& session) {
    const QString group = group_label(session, lever.group);
    const QString before = chance_text(chance_now(plan, lever.group));
    const QString after = chance_text(lever.completes);
    const QString gain = lever.gain
                             ? LeverTexts::tr("%1 until the first is at the reserve").arg(said.gain)
                             : LeverTexts::tr("the first is at the reserve later than %1")
                                   .arg(text(longest_profile));
    return LeverTexts::tr("%1: %2. %3; all last the plan in %4, now %5. %6")
        .arg(group, said.what, gain, after, before, said.cost);
}

}  // namespace

QString chance_text(double chance) {
    return LeverTexts::tr("%1 of 100").arg(of_hundred(chance));
}

QString chance_change_text(double before, double after) {
    const QString from = of_hundred(before);
    const QString to = of_hundred(after);
    if (from == to) return LeverTexts::tr("%1 of 100, as now").arg(to);
    return LeverTexts::tr("%1 → %2 of 100").arg(from, to);
}

QString group_label(const Session& session, const GroupId& id) {
    const Group* group = find_group(session, id);
    if (group == nullptr) return {};
    const QString name = QString::fromStdString(group->name);
    // "Blue" stands for itself; a bare number or nothing at all needs the word.
    bool is_number = false;
    static_cast<void>(name.toInt(&is_number));
    return name.isEmpty() || is_number ? LeverTexts::tr("Group %1").arg(name).trimmed() : name;
}

LeverText words(const Lever& lever, const Plan& plan, const Session& session, UnitSystem units) {
    LeverText said;
    said.what = what_of(lever, session, units);
    said.gain = gain_of(lever);
    said.chance = chance_change_text(chance_now(plan, lever.group), lever.completes);
    said.cost = cost_of(lever, plan, session, units);
    said.sentence = sentence_of(said, lever, plan, session);
    return said;
}

}  // namespace leadline
