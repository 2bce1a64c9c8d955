// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/guest_figures.h"

#include <QDate>
#include <QTime>
#include <algorithm>
#include <cmath>

#include "core/physics/air.h"
#include "core/planning/cylinder.h"
#include "ui/guest_words/card_words.h"
#include "ui/words/gauge_steps.h"

namespace leadline {
namespace {

constexpr double meters_per_foot = 0.3048;
constexpr double liters_per_cubic_foot = 28.316846592;
constexpr double kilograms_per_pound = 0.45359237;
// Keeps 50.0000001 bar from being shown as 60 when it must round up.
constexpr double slack = 1e-6;

double down(double value, double step) {
    return std::floor(value / step + slack) * step;
}
double up(double value, double step) {
    return std::ceil(value / step - slack) * step;
}
bool is_whole(double value) {
    return std::abs(value - std::round(value)) < slack;
}

}  // namespace

QString GuestFigures::number(double value, int decimals) const {
    return tongue_->locale().toString(value + 0.0, 'f', decimals);
}

QString GuestFigures::with_unit(const QString& number, const QString& unit) const {
    return isolated(number + QChar(0x00A0) + unit);
}

QString GuestFigures::depth_now(Depth depth) const {
    const double meters = depth.meters().value();
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(std::round(meters / meters_per_foot), 0),
                         card_word(CardWord::feet, *tongue_));
    }
    return with_unit(number(meters, 1), card_word(CardWord::meters, *tongue_));
}

QString GuestFigures::at_most(Meters length) const {
    if (units_ == UnitSystem::imperial) {
        const double feet = length.value() / meters_per_foot;
        const double shown = down(feet, feet >= 3.0 ? 1.0 : 0.5);
        return with_unit(number(shown, is_whole(shown) ? 0 : 1),
                         card_word(CardWord::feet, *tongue_));
    }
    const double shown = down(length.value(), 0.1);
    return with_unit(number(shown, is_whole(shown) ? 0 : 1), card_word(CardWord::meters, *tongue_));
}

QString GuestFigures::signal_at(Bars gauge) const {
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(signal_reading(gauge, units_), 0),
                         card_word(CardWord::psi, *tongue_));
    }
    return with_unit(number(signal_reading(gauge, units_), 0), card_word(CardWord::bar, *tongue_));
}

QString GuestFigures::pressure(Pascals pressure) const {
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(Psi(pressure).value(), 1), card_word(CardWord::psi, *tongue_));
    }
    return with_unit(number(Bars(pressure).value(), 2), card_word(CardWord::bar, *tongue_));
}

QString GuestFigures::growth(double factor) const {
    return this->factor(up(factor, 0.1));
}

QString GuestFigures::factor(double factor) const {
    return isolated(QChar(0x00D7) + number(factor, 1));
}

QString GuestFigures::share(double share) const {
    return isolated(number(std::round(share * 100.0), 0) + QChar(0x00A0) +
                    tongue_->locale().percent());
}

QString GuestFigures::minutes_at_most(Minutes time) const {
    return with_unit(number(down(time.value(), 1.0), 0), card_word(CardWord::minutes, *tongue_));
}

QString GuestFigures::hours_at_least(Hours time) const {
    return isolated(number(up(time.value(), 1.0), 0));
}

QString GuestFigures::mass(Kilograms mass) const {
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(std::round(mass.value() / kilograms_per_pound), 0),
                         card_word(CardWord::pounds, *tongue_));
    }
    return with_unit(number(mass.value(), is_whole(mass.value()) ? 0 : 1),
                     card_word(CardWord::kilograms, *tongue_));
}

QString GuestFigures::cylinder(const CylinderTypeId& id) const {
    const CylinderType* type = find_cylinder_type(id);
    if (type == nullptr) return {};
    if (units_ == UnitSystem::imperial) {
        const Cylinder full{type->id, type->working_pressure, Celsius(15.0)};
        const Moles content = cylinder_content(full, Bars(1.01325)).value_or(Moles(0.0));
        const double cubic_feet = free_air_volume(content).value() / liters_per_cubic_foot;
        return with_unit(number(std::round(cubic_feet), 0),
                         card_word(CardWord::cubic_feet, *tongue_));
    }
    const double liters = type->water_capacity.value();
    return with_unit(number(liters, is_whole(liters) ? 0 : 1),
                     card_word(CardWord::liters, *tongue_));
}

QString GuestFigures::day(Date date) const {
    const QDate shown(static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
                      static_cast<int>(unsigned(date.day())));
    return isolated(tongue_->locale().toString(shown, QLocale::LongFormat));
}

QString GuestFigures::time(TimeOfDay time) const {
    return isolated(
        QTime(0, 0).addSecs(time.minutes_after_midnight * 60).toString(QStringLiteral("HH:mm")));
}

QString GuestFigures::sample_digits() const {
    return units_ == UnitSystem::imperial ? QStringLiteral("1700") : QStringLiteral("120");
}

QString GuestFigures::sample_reading() const {
    return with_unit(
        sample_digits(),
        card_word(units_ == UnitSystem::imperial ? CardWord::psi : CardWord::bar, *tongue_));
}

QString typed_text(const std::string& typed) {
    constexpr int longest_word = 18;
    constexpr QChar may_break(0x200B);
    QString shown;
    int run = 0;
    for (const QChar letter : QString::fromStdString(typed).simplified()) {
        run = letter.isSpace() || letter == u'-' ? 0 : run + 1;
        // Never between the halves of a letter or before its accent.
        const bool joins = letter.isLowSurrogate() || letter.isMark();
        if (run > longest_word && !joins) {
            shown += may_break;
            run = 1;
        }
        shown += letter;
    }
    return shown.isEmpty() ? shown : isolated(shown);
}

std::vector<QString> first_names(const std::vector<const Guest*>& guests) {
    std::vector<QStringList> words;
    for (const Guest* guest : guests) {
        words.push_back(QString::fromStdString(guest->name).simplified().split(u' '));
    }
    std::vector<QString> names;
    for (const QStringList& name : words) {
        const auto alike = std::count_if(words.begin(), words.end(), [&](const QStringList& other) {
            return other.front() == name.front();
        });
        QString shown = name.front();
        constexpr int longest_name = 24;
        if (shown.size() > longest_name) shown = shown.left(longest_name - 1) + QChar(0x2026);
        if (alike > 1 && name.size() > 1) {
            shown += QChar(u' ') + name.back().left(1) + QChar(u'.');
        }
        names.push_back(shown);
    }
    return names;
}

}  // namespace leadline
