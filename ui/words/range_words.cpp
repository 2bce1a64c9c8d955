// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/range_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class RangeTexts {
    Q_DECLARE_TR_FUNCTIONS(Errors)
};

}  // namespace

QString range_words(const std::string& allowed) {
    static const QRegularExpression range(
        QStringLiteral(R"(^(-?\d[-\d.: T]*) to (-?\d[-\d.: T]*)$)"));
    const QString text = QString::fromStdString(allowed);
    const QRegularExpressionMatch match = range.match(text);
    if (!match.hasMatch()) return text;
    return RangeTexts::tr("%1 to %2", "a range").arg(match.captured(1), match.captured(2));
}

}  // namespace leadline
