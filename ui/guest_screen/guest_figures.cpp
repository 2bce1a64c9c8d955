// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/guest_figures.h"

#include <QDate>
#include <QTime>
#include <algorithm>
#include <cmath>

#include "core/physics/air.h"
#include "core/planning/cylinder.h"
#include "ui/guest_words/card_words.h"
#include "ui/guest_words/guest_measures.h"
#include "ui/guest_words/guest_punctuation.h"
#include "ui/guest_words/typed_text.h"
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
    return isolated(number_with_unit(number, unit));
}

QString GuestFigures::in_both(QString (GuestFigures::*in_one)(double) const, double value) const {
    const QString first = (GuestFigures(*tongue_, units_).*in_one)(value);
    if (!also_) return first;
    const QString second = (GuestFigures(*tongue_, *also_).*in_one)(value);
    return first == second ? first : isolated(first + QStringLiteral(" / ") + second);
}

QString GuestFigures::depth_now(Depth depth) const {
    return in_both(&GuestFigures::one_depth, depth.meters().value());
}

QString GuestFigures::one_depth(double meters) const {
    // Down, as the deepest point is: the diver is never shown below it.
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(down(meters / meters_per_foot, 1.0), 0),
                         card_word(CardWord::feet, *tongue_));
    }
    return with_unit(number(down(meters, 0.1), 1), card_word(CardWord::meters, *tongue_));
}

QString GuestFigures::depth_mark(double value) const {
    return with_unit(number(value, 0), card_word(units_ == UnitSystem::imperial ? CardWord::feet
                                                                               : CardWord::meters,
                                                 *tongue_));
}

QString GuestFigures::clearing_step(Meters step) const {
    return in_both(&GuestFigures::one_step, step.value());
}

QString GuestFigures::one_step(double meters) const {
    const ShownNumber shown = clearing_step_number(Meters(meters), units_);
    return with_unit(
        number(shown.value, shown.decimals),
        card_word(units_ == UnitSystem::imperial ? CardWord::feet : CardWord::meters, *tongue_));
}

QString GuestFigures::at_most(Meters length) const {
    return in_both(&GuestFigures::one_length, length.value());
}

QString GuestFigures::one_length(double meters) const {
    const Meters length(meters);
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
    return in_both(&GuestFigures::one_gauge, gauge.value());
}

QString GuestFigures::one_gauge(double bar) const {
    const Bars gauge(bar);
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(signal_reading(gauge, units_), 0),
                         card_word(CardWord::psi, *tongue_));
    }
    return with_unit(number(signal_reading(gauge, units_), 0), card_word(CardWord::bar, *tongue_));
}

QString GuestFigures::pressure(Pascals pressure) const {
    return in_both(&GuestFigures::one_pressure, pressure.value());
}

QString GuestFigures::one_pressure(double pascals) const {
    const Pascals pressure(pascals);
    if (units_ == UnitSystem::imperial) {
        return with_unit(number(Psi(pressure).value(), 1), card_word(CardWord::psi, *tongue_));
    }
    return with_unit(number(Bars(pressure).value(), 2), card_word(CardWord::bar, *tongue_));
}

QString GuestFigures::growth(double factor) const {
    return isolated(QChar(0x00D7) + number(up(factor, 0.1), 1));
}

QString GuestFigures::share(double share) const {
    return isolated(number_with_percent(number(std::round(share * 100.0), 0), *tongue_));
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
    // A wide screen breaks few numbers, a narrow one must.
    const QString line = with_whole_numbers(typed_line(typed)).replace(QChar(0x00A0), u' ');
    for (const QChar letter : line) {
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

namespace {

constexpr int longest_name = 24;

/// A name by its first word and so many letters of its last; beyond the last letter, all of it.
QString name_with(const QStringList& words, int letters) {
    // Who has no name yet can still be pressed.
    if (words.front().isEmpty()) return QStringLiteral("?");
    const QString first = beginning(words.front(), longest_name);
    if (letters == 0 || words.size() < 2) return first;
    const QString& last = words.back();
    if (letters > last.size()) return beginning(words.join(u' '), 2 * longest_name);
    // Never between the halves of a letter.
    if (last.at(letters - 1).isHighSurrogate()) ++letters;
    const QString shown = first + u' ' + last.left(letters);
    return letters < last.size() ? shown + u'.' : shown;
}

/// Those that are still the same are counted.
void number_alike(std::vector<QString>& names) {
    for (std::size_t k = 0; k < names.size(); ++k) {
        if (std::count(names.begin(), names.end(), names[k]) < 2) continue;
        const QString alike = names[k];
        int number = 0;
        for (QString& name : names) {
            if (name != alike) continue;
            QString counted;
            do {
                ++number;
                counted = alike + QStringLiteral(" (%1)").arg(number);
            } while (std::count(names.begin(), names.end(), counted) > 0);
            name = counted;
        }
    }
}

}  // namespace

std::vector<QString> first_names(const std::vector<const Guest*>& guests) {
    std::vector<QStringList> words;
    std::vector<QString> names;
    for (const Guest* guest : guests) {
        words.push_back(typed_line(guest->name).split(u' '));
        names.push_back(name_with(words.back(), 0));
    }
    std::vector<int> letters(names.size(), 0);
    for (bool longer = true; longer;) {
        longer = false;
        const std::vector<QString> before = names;
        for (std::size_t k = 0; k < names.size(); ++k) {
            const bool unique = std::count(before.begin(), before.end(), before[k]) == 1;
            if (unique || words[k].size() < 2 || letters[k] > words[k].back().size()) continue;
            names[k] = name_with(words[k], ++letters[k]);
            longer = true;
        }
    }
    number_alike(names);
    return names;
}

}  // namespace leadline
