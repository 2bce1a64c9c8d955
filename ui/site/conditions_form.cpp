// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/conditions_form.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <cmath>

#include "ui/document/session_document.h"
#include "ui/widgets/quantity_box.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Degrees as typed: the way over kelvin leaves a rest in the thirteenth digit.
double shown_celsius(Kelvins temperature) {
    return std::round(Celsius(temperature).value() * 1e6) / 1e6;
}

template <typename Quantity>
std::optional<double> shown(const std::optional<Quantity>& quantity, double scale = 1.0) {
    if (!quantity) return std::nullopt;
    return std::round(quantity->value() * scale * 1e6) / 1e6;
}

constexpr double hectopascals_per_pascal = 0.01;

}  // namespace

ConditionsForm::ConditionsForm(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      water_(new QuantityBox(QuantityKind::water_temperature)),
      air_(new QuantityBox(QuantityKind::air_temperature)),
      barometer_(new QuantityBox(QuantityKind::barometer)),
      visibility_(new QuantityBox(QuantityKind::visibility)),
      current_(new QComboBox),
      waves_(new QuantityBox(QuantityKind::wave_height)) {
    water_->setObjectName(QStringLiteral("conditions_water"));
    air_->setObjectName(QStringLiteral("conditions_air"));
    barometer_->setObjectName(QStringLiteral("conditions_barometer"));
    visibility_->setObjectName(QStringLiteral("conditions_visibility"));
    current_->setObjectName(QStringLiteral("conditions_current"));
    waves_->setObjectName(QStringLiteral("conditions_waves"));
    barometer_->allow_empty(tr("From altitude"));
    barometer_->setToolTip(
        tr("As read at the site itself, not reduced to sea level. Empty: standard atmosphere"));
    visibility_->allow_empty(tr("Not known"));
    waves_->allow_empty(tr("Not known"));
    for (const Current current :
         {Current::none, Current::slight, Current::moderate, Current::strong}) {
        current_->addItem(label(current), static_cast<int>(current));
    }

    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("Water temperature"), water_);
    auto* coldest = new QLabel(tr("The coldest the guests will meet"));
    coldest->setForegroundRole(QPalette::PlaceholderText);
    coldest->setWordWrap(true);
    form->addRow(QString(), coldest);
    form->addRow(tr("Air temperature"), air_);
    form->addRow(tr("Barometer"), barometer_);
    form->addRow(tr("Visibility"), visibility_);
    form->addRow(tr("&Current"), current_);
    form->addRow(tr("Waves"), waves_);

    connect(water_, &QuantityBox::edited, this, [this](std::optional<double> celsius) {
        edit(tr("Change the water temperature"), [&](Conditions& today) {
            today.water_temperature = Celsius(celsius.value_or(20.0));
        });
    });
    connect(air_, &QuantityBox::edited, this, [this](std::optional<double> celsius) {
        edit(tr("Change the air temperature"), [&](Conditions& today) {
            today.air_temperature = Celsius(celsius.value_or(20.0));
        });
    });
    connect(barometer_, &QuantityBox::edited, this, [this](std::optional<double> hectopascals) {
        edit(tr("Change the barometer"), [&](Conditions& today) {
            today.barometer.reset();
            if (hectopascals) today.barometer = Pascals(*hectopascals / hectopascals_per_pascal);
        });
    });
    connect(visibility_, &QuantityBox::edited, this, [this](std::optional<double> meters) {
        edit(tr("Change the visibility"), [&](Conditions& today) {
            today.visibility.reset();
            if (meters) today.visibility = Meters(*meters);
        });
    });
    connect(waves_, &QuantityBox::edited, this, [this](std::optional<double> meters) {
        edit(tr("Change the waves"), [&](Conditions& today) {
            today.wave_height.reset();
            if (meters) today.wave_height = Meters(*meters);
        });
    });
    connect(current_, &QComboBox::activated, this, [this](int index) {
        edit(tr("Change the current"), [&](Conditions& today) {
            today.current = static_cast<Current>(current_->itemData(index).toInt());
        });
    });
    connect(&document_, &SessionDocument::changed, this, &ConditionsForm::refresh);
    refresh();
}

void ConditionsForm::edit(const QString& what, const std::function<void(Conditions&)>& change) {
    const Result<Done> done =
        document_.edit(what, [&](Session& session) { change(session.conditions); });
    if (!done) refresh();
}

void ConditionsForm::refresh() {
    const Conditions& today = document_.session().conditions;
    for (QuantityBox* box : {water_, air_, barometer_, visibility_, waves_}) {
        box->set_units(document_.units());
    }
    water_->show_value(shown_celsius(today.water_temperature));
    air_->show_value(shown_celsius(today.air_temperature));
    barometer_->show_value(shown(today.barometer, hectopascals_per_pascal));
    visibility_->show_value(shown(today.visibility));
    waves_->show_value(shown(today.wave_height));
    current_->setCurrentIndex(current_->findData(static_cast<int>(today.current)));
}

}  // namespace leadline
