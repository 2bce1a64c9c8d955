// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/lead_sizes.h"

#include <QLocale>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace leadline {
namespace {

constexpr double kilograms_a_pound = 0.45359237;

/// One word between spaces or semicolons: a number, or several with commas between.
QStringList numbers_in(const QString& word) {
    const bool decimal_comma = word.count(u',') == 1 && !word.contains(u'.') &&
                               !word.startsWith(u',') && !word.endsWith(u',');
    if (!decimal_comma) return word.split(u',', Qt::SkipEmptyParts);
    QString number = word;
    return {number.replace(u',', u'.')};
}

}  // namespace

std::optional<std::vector<Kilograms>> read_lead_sizes(const QString& text, UnitSystem units) {
    static const QRegularExpression between(QStringLiteral("[;\\s]+"));
    std::vector<Kilograms> sizes;
    for (const QString& word : text.split(between, Qt::SkipEmptyParts)) {
        for (const QString& number : numbers_in(word)) {
            bool is_number = false;
            const double size = number.toDouble(&is_number);
            if (!is_number || !std::isfinite(size)) return std::nullopt;
            sizes.emplace_back(units == UnitSystem::metric ? size : size * kilograms_a_pound);
        }
    }
    return sizes;
}

QString lead_sizes_text(std::vector<Kilograms> sizes, UnitSystem units) {
    std::sort(sizes.begin(), sizes.end());
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QStringList words;
    for (const Kilograms size : sizes) {
        const double shown =
            units == UnitSystem::metric ? size.value() : size.value() / kilograms_a_pound;
        // Six digits: what was typed comes back as typed.
        words << locale.toString(shown, 'g', 6);
    }
    return words.join(QStringLiteral("  "));
}

}  // namespace leadline
