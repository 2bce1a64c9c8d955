// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_gas_headers.h"

#include <QCoreApplication>

#include "core/body/breathing.h"
#include "core/planning/plan.h"
#include "ui/gas/guest_gas_model.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class GasHeaderTexts {
    Q_DECLARE_TR_FUNCTIONS(GuestGasModel)
};

/// A heading of words after a column of numbers, as the cells below it are set.
QString apart(const QString& heading) { return QChar(0x2003) + heading; }

}  // namespace

QString gas_heading(int column) {
    switch (column) {
        case GuestGasModel::name_column:
            return GasHeaderTexts::tr("Guest");
        case GuestGasModel::group_column:
            return apart(GasHeaderTexts::tr("Group"));
        case GuestGasModel::cylinder_column:
            return apart(GasHeaderTexts::tr("Cylinder"));
        case GuestGasModel::fill_column:
            return GasHeaderTexts::tr("As read");
        case GuestGasModel::gas_temperature_column:
            return GasHeaderTexts::tr("Read at");
        case GuestGasModel::breathing_column:
            return apart(GasHeaderTexts::tr("Breathing"));
        case GuestGasModel::rmv_column:
            return GasHeaderTexts::tr("RMV");
        case GuestGasModel::start_column:
            return GasHeaderTexts::tr("Read →\nin the water");
        case GuestGasModel::end_column:
            return GasHeaderTexts::tr("At the\nend");
        case GuestGasModel::minutes_column:
            return GasHeaderTexts::tr("Until\nreserve");
        case GuestGasModel::spread_column:
            return GasHeaderTexts::tr("10 to 90\nof 100");
        case GuestGasModel::ends_dive_column:
            return GasHeaderTexts::tr("Ends\nthe dive");
        case GuestGasModel::turn_column:
            return GasHeaderTexts::tr("Turn at");
        case GuestGasModel::leave_column:
            return GasHeaderTexts::tr("Leave\nbottom at");
        case GuestGasModel::minimum_column:
            return GasHeaderTexts::tr("Minimum\nfor two");
        case GuestGasModel::signal_column:
            return GasHeaderTexts::tr("Signal\nat");
        default: return {};
    }
}

QString gas_heading_help(int column, UnitSystem units) {
    const auto rmv = [&](LitersPerMinute value) { return text(value, units); };
    switch (column) {
        case GuestGasModel::name_column:
            return GasHeaderTexts::tr(
                "Guests of the group; who is likely first at the reserve in bold.");
        case GuestGasModel::group_column:
            return GasHeaderTexts::tr("The guest's group.");
        case GuestGasModel::cylinder_column:
            return GasHeaderTexts::tr(
                "Size and working pressure as the trade names them. What is stamped on the "
                "cylinder prevails.");
        case GuestGasModel::fill_column:
            return GasHeaderTexts::tr(
                       "Gauge reading when the cylinder was handed out. A gauge may read %1 wrong: "
                       "2.5 % of its scale (EN 837-1, from memory), common practice that diving "
                       "gauges are of this class.")
                .arg(text(gauge_error, units, Rounding::up));
        case GuestGasModel::gas_temperature_column:
            return GasHeaderTexts::tr(
                "Temperature of the air in the cylinder when the gauge was read. Warm air "
                "reads high and loses pressure in the water.");
        case GuestGasModel::breathing_column:
            return GasHeaderTexts::tr(
                       "How the guest is likely to breathe: calm %1, not known %2, nervous %3, "
                       "child %4. Common practice, no source; errs to the high side.")
                .arg(rmv(planning_rmv(BreathingClass::calm)),
                     rmv(planning_rmv(BreathingClass::average)),
                     rmv(planning_rmv(BreathingClass::nervous)),
                     rmv(planning_rmv(BreathingClass::child)));
        case GuestGasModel::rmv_column:
            return GasHeaderTexts::tr(
                "Respiratory minute volume: air breathed a minute at the pressure around "
                "the guest. By class, or measured on an own past dive; empty it to go back "
                "to the class.");
        case GuestGasModel::start_column:
            return GasHeaderTexts::tr(
                "What the reading becomes once the cylinder is as cold as the water: no air "
                "is lost, but pressure. Air as a real gas: Lemmon and others, J. Phys. "
                "Chem. Ref. Data 29 (2000). Rounded down.");
        case GuestGasModel::end_column:
            return GasHeaderTexts::tr(
                "Left at the end of the planned dive. RMV × pressure around the guest × "
                "time, with more for settling, the way down and skills (common practice); "
                "errs to the low side.");
        case GuestGasModel::minutes_column:
            return GasHeaderTexts::tr(
                "From the start until the guest is at the reserve in the middle one of all "
                "such dives, were the group to stay at the depth from which the final ascent "
                "starts. Rounded down.");
        case GuestGasModel::spread_column:
            return GasHeaderTexts::tr(
                "Minutes until the reserve in the 10th and in the 90th of 100 such dives, "
                "fastest first: how much this guest's breathing may differ from what is "
                "planned with (lognormal; its width is common practice, no source). Rounded "
                "down.");
        case GuestGasModel::ends_dive_column:
            return GasHeaderTexts::tr(
                "How many of 100 such dives end because this guest is the first of the group "
                "at the reserve. Rounded down.");
        case GuestGasModel::turn_column:
            return GasHeaderTexts::tr(
                "Half of what the tour may use is gone: go back. Common practice, no "
                "source. Rounded up.");
        case GuestGasModel::leave_column:
            return GasHeaderTexts::tr(
                       "Start the ascent now to surface with the reserve, and never with less than "
                       "the minimum for two and the %1 that a gauge may read too high. Rounded up.")
                .arg(text(gauge_error, units, Rounding::up));
        case GuestGasModel::minimum_column:
            return GasHeaderTexts::tr(
                       "Enough in this cylinder for guest and instructor, both stressed (%1 and "
                       "%2, common practice): one minute at the deepest point, then up at the "
                       "allowed rate, with a margin for the regulator (U.S. Navy Diving Manual, "
                       "vol. 2, p. 8-3). Rounded up.")
                .arg(rmv(stressed_guest_rmv), rmv(stressed_staff_rmv));
        case GuestGasModel::signal_column:
            return GasHeaderTexts::tr(
                       "What the card says: the reserve, or the minimum for two with the %1 that a "
                       "gauge may read too high, the greater, rounded well up. At this reading the "
                       "guest tells the instructor.")
                .arg(text(gauge_error, units, Rounding::up));
        default: return {};
    }
}

}  // namespace leadline
