// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDoubleSpinBox>
#include <optional>

#include "ui/words/quantity_text.h"

namespace leadline {

/// What a box holds; fixes unit, range, step and decimals in both unit systems.
enum class QuantityKind {
    depth,              ///< m / ft, 0 to 60 m
    bottom_depth,       ///< m / ft, 0 to 200 m: of a site, where nobody goes
    altitude,           ///< m / ft, -430 to 5000 m
    height,             ///< cm / in, 80 to 250 cm
    wave_height,        ///< m / ft, 0 to 10 m
    visibility,         ///< m / ft, 0 to 100 m
    mass,               ///< kg / lb, 15 to 250 kg
    lead,               ///< kg / lb, 0 to 25 kg
    cylinder_pressure,  ///< bar / psi, 0 to 300 bar
    barometer,          ///< hPa / inHg, 500 to 1100 hPa
    water_temperature,  ///< C / F, -2 to 36 C
    air_temperature,    ///< C / F, -20 to 50 C
    gas_temperature,    ///< C / F, -20 to 70 C: of the air in a cylinder
    rmv,                ///< L/min / cu ft/min, 5 to 100 L/min
    minutes,            ///< min, 0 to 240
    latitude,           ///< degrees, -90 to 90
    salinity,           ///< no unit, 0 to 42
};

/// A spin box that holds a number in the metric unit of its kind, whatever unit it shows. May be
/// empty ("not known") when made so. The wheel changes it only while it has the focus.
class QuantityBox : public QDoubleSpinBox {
    Q_OBJECT
public:
    explicit QuantityBox(QuantityKind kind, QWidget* parent = nullptr);

    /// Allows no value: shown as `text` at the low end of the box ("–"). Emptying the line gives it.
    void allow_empty(const QString& text);
    void set_units(UnitSystem units);
    /// Shows a value without emitting edited(). No value needs allow_empty().
    void show_value(std::optional<double> metric);
    /// The value in the kind's metric unit (m, cm, kg, bar, hPa, C, L/min, min, degrees).
    [[nodiscard]] std::optional<double> metric_value() const;

    QValidator::State validate(QString& input, int& position) const override;
    void fixup(QString& input) const override;
    [[nodiscard]] double valueFromText(const QString& text) const override;

Q_SIGNALS:
    /// The user has changed the value (typed and left the field or pressed Return, stepped).
    void edited(std::optional<double> metric);

protected:
    void wheelEvent(QWheelEvent* event) override;

private:
    struct Scale;
    [[nodiscard]] static Scale scale_of(QuantityKind kind, UnitSystem units);
    void apply_scale();
    void report();
    [[nodiscard]] bool is_emptied(const QString& text) const;

    QuantityKind kind_;
    UnitSystem units_ = UnitSystem::metric;
    bool may_be_empty_ = false;
    std::optional<double> metric_;
    bool showing_ = false;
};

}  // namespace leadline
