// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/quantity_text.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QTime>
#include <cmath>
#include <type_traits>
#include <variant>

#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr double feet_per_meter = 1.0 / 0.3048;
constexpr double liters_per_cubic_foot = 28.316846592;

/// Names the context of this file's texts to lupdate.
class QuantityTexts {
    Q_DECLARE_TR_FUNCTIONS(Quantity)
};

double rounded(double value, int decimals, Rounding rounding) {
    const double scale = std::pow(10.0, decimals);
    // A hair of slack keeps 50.0000001 bar from being shown as 51 when it must round up.
    constexpr double slack = 1e-6;
    switch (rounding) {
        case Rounding::up: return std::ceil(value * scale - slack) / scale;
        case Rounding::down: return std::floor(value * scale + slack) / scale;
        case Rounding::nearest: break;
    }
    return std::round(value * scale) / scale;
}

QString with_unit(double value, int decimals, const QString& unit,
                  Rounding rounding = Rounding::nearest) {
    double shown = rounded(value, decimals, rounding);
    if (shown == 0.0) shown = 0.0;  // never "-0"
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(shown, 'f', decimals) + QChar(0x00A0) + unit;
}

}  // namespace

QString text(Depth depth, UnitSystem units, Rounding rounding) {
    const double meters = depth.meters().value();
    if (units == UnitSystem::imperial) {
        return with_unit(meters * feet_per_meter, 0, QuantityTexts::tr("ft"), rounding);
    }
    return with_unit(meters, 1, QuantityTexts::tr("m"), rounding);
}

QString text(Meters length, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        return with_unit(length.value() * feet_per_meter, 1, QuantityTexts::tr("ft"));
    }
    return with_unit(length.value(), 1, QuantityTexts::tr("m"));
}

QString text(Bars gauge, UnitSystem units, Rounding rounding) {
    if (units == UnitSystem::imperial) {
        // Gauges in psi are read to the nearest ten at best.
        const double tens = rounded(Psi(gauge).value() / 10.0, 0, rounding) * 10.0;
        return with_unit(tens, 0, QuantityTexts::tr("psi"));
    }
    return with_unit(gauge.value(), 0, QuantityTexts::tr("bar"), rounding);
}

QString text(Pascals absolute, UnitSystem units) {
    if (units == UnitSystem::imperial)
        return with_unit(Psi(absolute).value(), 1, QuantityTexts::tr("psi"));
    return with_unit(Bars(absolute).value(), 2, QuantityTexts::tr("bar"));
}

QString text(Kelvins temperature, UnitSystem units) {
    const double celsius = Celsius(temperature).value();
    if (units == UnitSystem::imperial)
        return with_unit(celsius * 1.8 + 32.0, 0, QuantityTexts::tr("°F"));
    const double tenth = std::abs(celsius - std::round(celsius));
    return with_unit(celsius, tenth < 0.05 ? 0 : 1, QuantityTexts::tr("°C"));
}

QString text(LitersPerMinute rmv, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        return with_unit(rmv.value() / liters_per_cubic_foot, 2, QuantityTexts::tr("cu ft/min"));
    }
    return with_unit(rmv.value(), 0, QuantityTexts::tr("L/min"));
}

QString text(MetersPerMinute rate, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        return with_unit(rate.value() * feet_per_meter, 0, QuantityTexts::tr("ft/min"));
    }
    const double tenth = std::abs(rate.value() - std::round(rate.value()));
    return with_unit(rate.value(), tenth < 0.05 ? 0 : 1, QuantityTexts::tr("m/min"));
}

QString text(Minutes time, Rounding rounding) {
    if (rounding != Rounding::nearest)
        return with_unit(time.value(), 0, QuantityTexts::tr("min"), rounding);
    // Plans are drawn in half minutes; anything finer is an estimate and shown whole.
    const double halves = time.value() * 2.0;
    const auto nearest = static_cast<int>(std::lround(halves));
    const bool is_half = std::abs(halves - nearest) < 0.02 && nearest % 2 != 0;
    return with_unit(time.value(), is_half ? 1 : 0, QuantityTexts::tr("min"));
}

QString text(Liters volume, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        return with_unit(volume.value() / liters_per_cubic_foot, 1, QuantityTexts::tr("cu ft"));
    }
    return with_unit(volume.value(), 0, QuantityTexts::tr("L"));
}

QString text(Kilograms mass, UnitSystem units) {
    if (units == UnitSystem::imperial)
        return with_unit(Pounds(mass).value(), 0, QuantityTexts::tr("lb"));
    const double part = std::abs(mass.value() - std::round(mass.value()));
    return with_unit(mass.value(), part < 0.05 ? 0 : 1, QuantityTexts::tr("kg"));
}

QString height_text(Meters height, UnitSystem units) {
    if (units == UnitSystem::metric)
        return with_unit(height.value() * 100.0, 0, QuantityTexts::tr("cm"));
    const int inches = static_cast<int>(std::lround(height.value() / 0.0254));
    return QuantityTexts::tr("%1 ft %2 in").arg(inches / 12).arg(inches % 12);
}

QString text(const FindingValue& value, UnitSystem units) {
    return std::visit(
        [&](const auto& quantity) -> QString {
            using Value = std::decay_t<decltype(quantity)>;
            if constexpr (std::is_same_v<Value, int>) {
                return QLocale().toString(quantity);
            } else if constexpr (std::is_same_v<Value, Minutes>) {
                return text(quantity);
            } else {
                return text(quantity, units);
            }
        },
        value);
}

QString text(Date date) {
    const QDate day(static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
                    static_cast<int>(unsigned(date.day())));
    return QLocale().toString(day, QuantityTexts::tr("ddd d MMMM yyyy"));
}

QString spelled(Date date) {
    return QuantityTexts::tr("%1 %2 %3", "day, name of the month, year")
        .arg(unsigned(date.day()))
        .arg(QLocale().monthName(static_cast<int>(unsigned(date.month()))))
        .arg(static_cast<int>(date.year()));
}

QString text(TimeOfDay time) { return QString::fromStdString(to_text(time)); }

QString text(const CylinderType& type, UnitSystem units) {
    const double liters = type.water_capacity.value();
    const bool whole = std::abs(liters - std::round(liters)) < 0.05;
    return QuantityTexts::tr("%1 %2, %3")
        .arg(label(type.metal), with_unit(liters, whole ? 0 : 1, QuantityTexts::tr("L")),
             text(type.working_pressure, units));
}

}  // namespace leadline
