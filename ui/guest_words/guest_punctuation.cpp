// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/guest_punctuation.h"

#include "ui/guest_words/letters.h"

namespace leadline {
namespace {

constexpr QChar wide_colon(0xFF1A);

bool has_wide_punctuation(const GuestTongue& tongue) {
    const QLocale::Language language = tongue.locale().language();
    return language == QLocale::Chinese || language == QLocale::Japanese;
}

}  // namespace

QString number_with_unit(const QString& number, const QString& unit) {
    if (!unit.isEmpty() && is_east_asian(unit.front())) return number + unit;
    return number + no_break_space + unit;
}

QString number_with_percent(const QString& number, const GuestTongue& tongue) {
    const QString sign = tongue.locale().percent();
    const bool close = has_wide_punctuation(tongue) ||
                       tongue.locale().language() == QLocale::Korean;
    if (close) return number + sign;
    return number + no_break_space + sign;
}

QString labelled(const QString& label, const QString& value, const GuestTongue& tongue) {
    if (has_wide_punctuation(tongue)) return label + wide_colon + value;
    const bool stands_off = tongue.locale().language() == QLocale::French;
    const QString before = stands_off ? QString(narrow_no_break_space) : QString();
    return label + before + QStringLiteral(": ") + value;
}

QString sentences_together(const QStringList& sentences, const GuestTongue& tongue) {
    return sentences.join(has_wide_punctuation(tongue) ? QString() : QStringLiteral(" "));
}

}  // namespace leadline
