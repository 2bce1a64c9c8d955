// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/cylinder_picker.h"

#include <cmath>

#include "ui/roster/fields.h"
#include "ui/roster/roster_edits.h"

namespace leadline {

const char* changed_part(const std::optional<Cylinder>& before,
                         const std::optional<Cylinder>& after) {
    if (!before || !after || before->type != after->type) return "cylinder_type";
    if (before->fill_pressure.value() != after->fill_pressure.value()) return "cylinder_fill";
    return "cylinder_temperature";
}

CylinderPicker::CylinderPicker(const QString& stem, const QString& nothing, QWidget* parent)
    : QObject(parent),
      type_(new ChoiceBox(stem + QStringLiteral("_cylinder_combo"), parent)),
      fill_(new QuantityBox(QuantityKind::cylinder_pressure, parent)),
      temperature_(new QuantityBox(QuantityKind::gas_temperature, parent)),
      nothing_(nothing) {
    fill_->setObjectName(stem + QStringLiteral("_fill_box"));
    temperature_->setObjectName(stem + QStringLiteral("_fill_temperature_box"));
    type_->setAccessibleName(tr("Cylinder"));
    fill_->setAccessibleName(tr("Gauge reading"));
    temperature_->setAccessibleName(tr("Gas temperature when read"));
    fill_->setToolTip(tr("As the gauge shows it now."));
    temperature_->setToolTip(
        tr("Of the gas when the gauge was read. Hot from filling or the sun, it holds less."));
    offer_types(UnitSystem::metric);
    connect(type_, &QComboBox::activated, this, &CylinderPicker::pick_type);
    connect(fill_, &QuantityBox::edited, this, [this](std::optional<double> bars) {
        if (!cylinder_ || !bars) return;
        cylinder_->fill_pressure = Bars(*bars);
        Q_EMIT edited(cylinder_);
    });
    connect(temperature_, &QuantityBox::edited, this, [this](std::optional<double> celsius) {
        if (!cylinder_ || !celsius) return;
        cylinder_->fill_temperature = Kelvins(Celsius(*celsius));
        Q_EMIT edited(cylinder_);
    });
    show_cylinder(std::nullopt);
}

void CylinderPicker::offer_types(UnitSystem units) {
    std::vector<ChoiceBox::Choice> choices{{nothing_, QString()}};
    for (const CylinderType& type : cylinder_types()) {
        choices.push_back({text(type, units), QString::fromStdString(type.id.text)});
    }
    type_->offer(choices);
}

void CylinderPicker::pick_type() {
    const CylinderType* type = find_cylinder_type(CylinderTypeId(type_->choice().toStdString()));
    std::optional<Cylinder> picked;
    if (type != nullptr) picked = cylinder_of_type(*type, before_, air_);
    picked_ = picked;
    show_cylinder(picked);
    Q_EMIT edited(cylinder_);
}

void CylinderPicker::set_units(UnitSystem units) {
    offer_types(units);
    fill_->set_units(units);
    temperature_->set_units(units);
}

void CylinderPicker::start_anew() {
    before_ = cylinder_;
    picked_.reset();
}

void CylinderPicker::show_cylinder(const std::optional<Cylinder>& cylinder) {
    cylinder_ = cylinder;
    if (cylinder != picked_) start_anew();
    type_->show_choice(cylinder ? QString::fromStdString(cylinder->type.text) : QString());
    fill_->setEnabled(cylinder.has_value());
    temperature_->setEnabled(cylinder.has_value());
    fill_->show_value(cylinder ? cylinder->fill_pressure.value() : 0.0);
    // Rounded, so that 22 C kept in kelvin does not come back as 21.99999.
    const Kelvins kelvins = cylinder ? cylinder->fill_temperature : air_;
    temperature_->show_value(std::round(Celsius(kelvins).value() * 100.0) / 100.0);
}

}  // namespace leadline
