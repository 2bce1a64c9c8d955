// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/range_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class RangeTexts {
    Q_DECLARE_TR_FUNCTIONS(Errors)
};

/// The unit after a number: "K", "kg/m3" and "bar min" are the same in every language, what is
/// counted is not.
QString unit_words(const QString& unit) {
    if (unit == u" characters") return u' ' + RangeTexts::tr("characters");
    if (unit == u" bytes") return u' ' + RangeTexts::tr("bytes");
    return unit;
}

}  // namespace

QString number_words(const QString& number) {
    // The core writes a point; the language of the window may have a comma.
    static const QRegularExpression pattern(
        QStringLiteral(R"(^(-?\d+)\.(\d+(?:[eE][-+]?\d+)?)((?: [A-Za-z][\w/]*)*)$)"));
    const QRegularExpressionMatch match = pattern.match(number);
    if (!match.hasMatch()) return number;
    return match.captured(1) + QLocale().decimalPoint() + match.captured(2) + match.captured(3);
}

QString range_words(const std::string& allowed) {
    static const QRegularExpression range(QStringLiteral(
        R"(^(-?\d[-+\d.: Te]*) to (-?\d(?:[-+\d.:Te]| (?=\d))*)((?: [A-Za-z][\w/]*)*)$)"));
    const QString text = QString::fromStdString(allowed);
    const QRegularExpressionMatch match = range.match(text);
    if (!match.hasMatch()) return number_words(text);
    return RangeTexts::tr("%1 to %2", "a range")
        .arg(number_words(match.captured(1)),
             number_words(match.captured(2)) + unit_words(match.captured(3)));
}

}  // namespace leadline
