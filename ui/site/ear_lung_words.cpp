// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/ear_lung_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace leadline {
namespace {

// A hair of slack keeps 0.4999999 m from being shown as 0.4.
constexpr double slack = 1e-6;

/// Names the context of this file's texts to lupdate.
class EarLungTexts {
    Q_DECLARE_TR_FUNCTIONS(EarsAndLungs)
};

/// A metre or a foot [m].
double unit_of(UnitSystem units) { return units == UnitSystem::imperial ? 0.3048 : 1.0; }

QString about_a_meter(UnitSystem units) {
    return units == UnitSystem::imperial ? EarLungTexts::tr("3 ft") : EarLungTexts::tr("1 m");
}

}  // namespace

int tenths_below(Meters length, UnitSystem units) {
    return static_cast<int>(std::floor(length.value() / unit_of(units) * 10.0 + slack));
}

QString length_below(Meters length, UnitSystem units) {
    return text(Meters(tenths_below(length, units) / 10.0 * unit_of(units)), units);
}

QString growth_text(double expansion) {
    return QChar(0x00D7) + QLocale().toString(std::ceil(expansion * 10.0 - slack) / 10.0, 'f', 1);
}

QString interval_text(Seconds interval) {
    const double whole = std::floor(interval.value() + slack);
    if (whole < 1.0) return EarLungTexts::tr("less than a second");
    return EarLungTexts::tr("%1 s").arg(QLocale().toString(whole, 'f', 0));
}

QString mmhg_text(Pascals pressure) {
    return EarLungTexts::tr("%1 mmHg").arg(
        QLocale().toString((pressure / millimeters_of_mercury(1.0)).value(), 'f', 0));
}

QString ear_sentence(const Plan& plan, UnitSystem units) {
    const ClearingLadder& ladder = plan.environment.ladder;
    const int times = static_cast<int>(ladder.clear_at.size());
    const QString locks = length_below(ladder.locks_at.meters(), units);
    if (times == 0) {
        return EarLungTexts::tr(
                   "Clear before %1: this dive is shallower than one step. The tube locks after %2 "
                   "without clearing.")
            .arg(length_below(ladder.step, units), locks);
    }
    const QString often =
        times == 1 ? EarLungTexts::tr("once on the way down")
                   : EarLungTexts::tr("%1 times on the way down, every %2 at the planned speed")
                         .arg(QLocale().toString(times), interval_text(ladder.interval));
    return EarLungTexts::tr(
               "Clear at least every %1: %2. The tube locks after %3 without clearing.")
        .arg(length_below(ladder.step, units), often, locks);
}

QString ear_step_sentence(const Plan& plan, UnitSystem units) {
    const Meters largest = plan.ears_and_lungs.largest_step;
    const QString most = length_below(largest, units);
    if (plan.ears_and_lungs.step > largest) {
        return EarLungTexts::tr(
                   "Largest step for half of that: %1. The step of the rules is longer.")
            .arg(most);
    }
    return EarLungTexts::tr("Largest step for half of that: %1.").arg(most);
}

QString ear_safety(UnitSystem units) {
    return EarLungTexts::tr(
               "Pain is the limit, not a figure: stop, go up %1, clear, go on. Never force. Ears "
               "that will not clear end the dive; ears that still hurt afterwards need a "
               "physician.")
        .arg(about_a_meter(units));
}

QString lung_sentence(const Plan& plan, UnitSystem units) {
    const QString hurt = EarLungTexts::tr("People were hurt from %1.").arg(about_a_meter(units));
    const auto& lungs = plan.ears_and_lungs.lungs;
    if (lungs.empty() || !lungs.back().ascent) {
        return EarLungTexts::tr(
                   "On so shallow a dive the surface comes before the published limit, which is no "
                   "promise. %1")
            .arg(hurt);
    }
    return EarLungTexts::tr(
               "From anywhere on this dive, about %1 of ascent with held breath and full lungs can "
               "tear a lung. %2")
        .arg(length_below(plan.environment.breath_danger_ascent, units), hurt);
}

QString lung_safety() {
    return EarLungTexts::tr(
        "Breathe all the time, most of all on the way up. Pain in the chest, trouble "
        "breathing or anything odd after a dive: oxygen, the emergency line, a physician.");
}

}  // namespace leadline
