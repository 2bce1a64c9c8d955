// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_gas_edit.h"

#include <QCoreApplication>

#include "ui/words/error_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class GasEditTexts {
    Q_DECLARE_TR_FUNCTIONS(GasTab)
};

}  // namespace

void set_cylinder_type(Guest& guest, const std::string& type_id, Kelvins air_temperature) {
    const CylinderType* type = find_cylinder_type(CylinderTypeId(type_id));
    if (type == nullptr) {
        guest.kit.cylinder.reset();
        return;
    }
    Cylinder cylinder = guest.kit.cylinder.value_or(Cylinder{{}, Bars(0.0), air_temperature});
    cylinder.type = type->id;
    if (cylinder.fill_pressure > type->working_pressure) cylinder.fill_pressure = Bars(0.0);
    guest.kit.cylinder = cylinder;
}

QString gas_refusal(const Error& error, const Guest& guest, UnitSystem units) {
    const QString name = QString::fromStdString(guest.name);
    if (error.code == ErrorCode::overfilled_cylinder) {
        bool given_ok = false;
        bool allowed_ok = false;
        const Bars given(QString::fromStdString(error.given).toDouble(&given_ok));
        const Bars allowed(QString::fromStdString(error.allowed).toDouble(&allowed_ok));
        if (given_ok && allowed_ok) {
            return GasEditTexts::
                tr("Not changed: %1 is over the working pressure of %2's cylinder, %3. Read the "
                   "gauge again; never use an overfilled cylinder.")
                    .arg(text(given, units), name, text(allowed, units));
        }
    }
    return GasEditTexts::tr("Not changed for %1. %2").arg(name, words(error));
}

}  // namespace leadline
