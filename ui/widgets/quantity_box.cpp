// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/quantity_box.h"

#include <QCoreApplication>
#include <QWheelEvent>
#include <cmath>

#include "ui/widgets/decimal_sign.h"

namespace leadline {

/// How a kind is shown: shown = metric * factor + offset.
struct QuantityBox::Scale {
    double factor = 1.0;
    double offset = 0.0;
    double least = 0.0;  ///< metric
    double most = 0.0;   ///< metric
    int decimals = 1;
    double step = 1.0;  ///< in the shown unit
    const char* unit = "";
};

QuantityBox::Scale QuantityBox::scale_of(QuantityKind kind, UnitSystem units) {
    constexpr double feet = 1.0 / 0.3048;
    constexpr double pounds = 1.0 / 0.45359237;
    constexpr double psi = 14.503773773;
    constexpr double inches_of_mercury = 0.02952998;
    constexpr double cubic_feet = 1.0 / 28.316846592;
    const bool metric = units == UnitSystem::metric;
    switch (kind) {
        case QuantityKind::depth:
            return metric ? Scale{1, 0, 0, 60, 1, 0.5, "m"} : Scale{feet, 0, 0, 60, 0, 1, "ft"};
        case QuantityKind::bottom_depth:
            return metric ? Scale{1, 0, 0, 200, 1, 1, "m"} : Scale{feet, 0, 0, 200, 0, 5, "ft"};
        case QuantityKind::altitude:
            return metric ? Scale{1, 0, -430, 5000, 0, 50, "m"}
                          : Scale{feet, 0, -430, 5000, 0, 100, "ft"};
        case QuantityKind::height:
            return metric ? Scale{1, 0, 80, 250, 0, 1, "cm"}
                          : Scale{1 / 2.54, 0, 80, 250, 0, 1, "in"};
        case QuantityKind::wave_height:
            return metric ? Scale{1, 0, 0, 10, 1, 0.1, "m"} : Scale{feet, 0, 0, 10, 1, 0.5, "ft"};
        case QuantityKind::visibility:
            return metric ? Scale{1, 0, 0, 100, 0, 1, "m"} : Scale{feet, 0, 0, 100, 0, 5, "ft"};
        case QuantityKind::mass:
            return metric ? Scale{1, 0, 15, 250, 0, 1, "kg"}
                          : Scale{pounds, 0, 15, 250, 0, 1, "lb"};
        case QuantityKind::lead:
            return metric ? Scale{1, 0, 0, 25, 1, 0.5, "kg"} : Scale{pounds, 0, 0, 25, 0, 1, "lb"};
        case QuantityKind::cylinder_pressure:
            return metric ? Scale{1, 0, 0, 300, 0, 5, "bar"}
                          : Scale{psi, 0, 0, 300, 0, 50, "psi"};
        case QuantityKind::barometer:
            return metric ? Scale{1, 0, 500, 1100, 0, 1, "hPa"}
                          : Scale{inches_of_mercury, 0, 500, 1100, 2, 0.01, "inHg"};
        case QuantityKind::water_temperature:
            return metric ? Scale{1, 0, -2, 36, 0, 1, "°C"} : Scale{1.8, 32, -2, 36, 0, 1, "°F"};
        case QuantityKind::air_temperature:
            return metric ? Scale{1, 0, -20, 50, 0, 1, "°C"}
                          : Scale{1.8, 32, -20, 50, 0, 1, "°F"};
        case QuantityKind::gas_temperature:
            return metric ? Scale{1, 0, -20, 70, 0, 1, "°C"}
                          : Scale{1.8, 32, -20, 70, 0, 1, "°F"};
        case QuantityKind::rmv:
            return metric ? Scale{1, 0, 5, 100, 1, 1, "L/min"}
                          : Scale{cubic_feet, 0, 5, 100, 2, 0.05, "cu ft/min"};
        case QuantityKind::minutes: return Scale{1, 0, 0, 240, 1, 1, "min"};
        case QuantityKind::latitude: return Scale{1, 0, -90, 90, 1, 1, "°"};
        case QuantityKind::salinity: return Scale{1, 0, 0, 42, 1, 1, ""};
    }
    return {};
}

QuantityBox::QuantityBox(QuantityKind kind, QWidget* parent) : QDoubleSpinBox(parent), kind_(kind) {
    setKeyboardTracking(false);
    setFocusPolicy(Qt::StrongFocus);
    setAlignment(Qt::AlignRight);
    setCorrectionMode(QAbstractSpinBox::CorrectToPreviousValue);
    setGroupSeparatorShown(false);
    apply_scale();
    connect(this, &QDoubleSpinBox::valueChanged, this, &QuantityBox::report);
}

void QuantityBox::apply_scale() {
    const Scale scale = scale_of(kind_, units_);
    showing_ = true;
    setDecimals(scale.decimals);
    setSingleStep(scale.step);
    const QString unit = QCoreApplication::translate("Quantity", scale.unit);
    setSuffix(unit.isEmpty() ? QString() : QChar(0x00A0) + unit);
    // One step below the range stands for "no value": a spin box has no other empty state.
    const double empty_step = may_be_empty_ ? scale.step : 0.0;
    setRange(scale.least * scale.factor + scale.offset - empty_step,
             scale.most * scale.factor + scale.offset);
    setValue(metric_ ? *metric_ * scale.factor + scale.offset
                     : (may_be_empty_ ? minimum() : scale.least * scale.factor + scale.offset));
    showing_ = false;
}

void QuantityBox::allow_empty(const QString& text) {
    may_be_empty_ = true;
    setSpecialValueText(text);
    apply_scale();
}

void QuantityBox::set_units(UnitSystem units) {
    if (units == units_) return;
    units_ = units;
    apply_scale();
}

void QuantityBox::show_value(std::optional<double> metric) {
    if (metric == metric_) return;
    metric_ = metric;
    apply_scale();
}

std::optional<double> QuantityBox::metric_value() const { return metric_; }

bool QuantityBox::is_emptied(const QString& text) const {
    QString number = text;
    number.remove(suffix());
    return may_be_empty_ && number.trimmed().isEmpty();
}

QValidator::State QuantityBox::validate(QString& input, int& position) const {
    if (is_emptied(input)) return QValidator::Acceptable;
    if (input != specialValueText() &&
        !settle_decimal_sign(input, suffix(), locale(), decimals())) {
        return QValidator::Intermediate;  // refused when the box is left: the old value comes back
    }
    return QDoubleSpinBox::validate(input, position);
}

void QuantityBox::fixup(QString& input) const {
    // Qt would take the sign out and make 25 of 2.5.
    if (settle_decimal_sign(input, suffix(), locale(), decimals())) QDoubleSpinBox::fixup(input);
}

double QuantityBox::valueFromText(const QString& text) const {
    return is_emptied(text) ? minimum() : QDoubleSpinBox::valueFromText(text);
}

void QuantityBox::report() {
    if (showing_) return;
    const Scale scale = scale_of(kind_, units_);
    const double least = scale.least * scale.factor + scale.offset;
    if (may_be_empty_ && value() < least - 1e-9) {
        metric_.reset();
    } else {
        // Rounded so that a value typed in metres comes back as typed.
        const double metric = (value() - scale.offset) / scale.factor;
        metric_ = std::round(metric * 1e6) / 1e6;
    }
    Q_EMIT edited(metric_);
}

void QuantityBox::wheelEvent(QWheelEvent* event) {
    // Scrolling the page must not change a number the pointer happens to pass over.
    if (hasFocus()) {
        QDoubleSpinBox::wheelEvent(event);
    } else {
        event->ignore();
    }
}

}  // namespace leadline
