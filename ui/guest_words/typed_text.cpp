// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/typed_text.h"

#include <QRegularExpression>
#include <QTextBoundaryFinder>
#include <algorithm>

#include "core/files/json_values.h"
#include "ui/guest_words/isolates.h"
#include "ui/guest_words/letters.h"

namespace leadline {
namespace {

// A country's code and a national number together have at most 15 digits (ITU-T E.164, section 6,
// from memory); two more for a zero in brackets and the like.
constexpr int most_digits = 17;

/// Groups of digits with what people write between them: a space, a hyphen, brackets, a stroke, a
/// point or a colon.
const QRegularExpression& number_pattern() {
    static const QRegularExpression pattern(QStringLiteral(
        "[+(]*\\p{Nd}+(?:(?: ?[()]{1,2} ?| ?[-\\x{2010}-\\x{2013}] ?\\(?|[ ./:])\\p{Nd}+)*\\)?"));
    return pattern;
}

int digits_in(const QString& text) {
    return static_cast<int>(
        std::count_if(text.begin(), text.end(), [](QChar one) { return one.isDigit(); }));
}

template <typename Change>
QString with_numbers(const QString& text, Change change) {
    QString result;
    qsizetype from = 0;
    for (auto all = number_pattern().globalMatch(text); all.hasNext();) {
        const QRegularExpressionMatch match = all.next();
        result += text.mid(from, match.capturedStart() - from) + change(match.captured());
        from = match.capturedEnd();
    }
    return result + text.mid(from);
}

/// Without the accents that no language stacks.
QString without_piles(const QString& text) {
    constexpr int most_accents = 4;
    QString kept;
    int accents = 0;
    for (const QChar one : text) {
        // Such marks beyond 16 bits are of scripts that stack none.
        const bool accent = one.category() == QChar::Mark_NonSpacing ||
                            one.category() == QChar::Mark_Enclosing;
        accents = accent ? accents + 1 : 0;
        if (accents <= most_accents) kept += one;
    }
    return kept;
}

}  // namespace

QString typed_line(const QString& typed) {
    return typed_line(typed.toStdString());
}

QString typed_line(const std::string& typed) {
    const std::string plain = without_controls(typed, TextForm::line);
    return without_piles(QString::fromStdString(plain).simplified());
}

QString beginning(const QString& text, int longest) {
    if (text.size() <= longest) return text;
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, text);
    finder.setPosition(longest - 1);
    const qsizetype end = finder.isAtBoundary() ? longest - 1 : finder.toPreviousBoundary();
    return text.left(std::max<qsizetype>(end, 0)) + QChar(0x2026);
}

QString with_whole_numbers(const QString& typed) {
    return with_numbers(typed, [](QString number) -> QString {
        const int digits = digits_in(number);
        if (digits == number.size()) return number;  // one group: cannot be turned around
        if (digits <= most_digits) number.replace(u' ', no_break_space);
        return left_to_right_isolate + number + pop_isolate;
    });
}

QStringList dialled_numbers(const QString& typed) {
    constexpr int least_digits = 3;
    QStringList numbers;
    QString spaced = typed;
    spaced.replace(no_break_space, u' ');
    for (auto all = number_pattern().globalMatch(spaced); all.hasNext();) {
        const QString number = all.next().captured();
        if (digits_in(number) >= least_digits) numbers << number;
    }
    return numbers;
}

}  // namespace leadline
