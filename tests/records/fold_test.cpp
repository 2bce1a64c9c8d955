// SPDX-License-Identifier: GPL-3.0-or-later
// Folded names on record are found by folding what is typed: the folding must give today what it
// gave when the first records were written, through Qt 6.4 with Unicode 14.
#include "core/records/fold.h"

#include <gtest/gtest.h>

#include <QList>
#include <random>

namespace leadline {
namespace {

bool is_mark(char32_t letter) {
    const QChar::Category category = QChar::category(letter);
    return category == QChar::Mark_NonSpacing || category == QChar::Mark_Enclosing;
}

/// The folding of the first records, as it was.
QString first_folding(const QString& name) {
    QString plain;
    for (const uint letter : name.normalized(QString::NormalizationForm_KD).toLower().toUcs4()) {
        if (is_mark(char32_t(letter))) continue;
        switch (char32_t(letter)) {
            case U'ø': plain += u'o'; break;
            case U'ł': plain += u'l'; break;
            case U'đ':
            case U'ð': plain += u'd'; break;
            case U'ı': plain += u'i'; break;
            case U'ς': plain += u'σ'; break;
            case U'‘':
            case U'’':
            case U'ʼ': plain += u'\''; break;
            case U'ß': plain += QLatin1String("ss"); break;
            case U'æ': plain += QLatin1String("ae"); break;
            case U'œ': plain += QLatin1String("oe"); break;
            case U'þ': plain += QLatin1String("th"); break;
            default: plain += QChar::fromUcs4(char32_t(letter));
        }
    }
    return plain.simplified();
}

/// Letters that a later Qt knows and the first records could not.
bool is_younger(char32_t letter) { return QChar::unicodeVersion(letter) > QChar::Unicode_14_0; }

QString shown(const QString& text) {
    QString numbers;
    for (const QChar unit : text) {
        numbers += QStringLiteral("%1 ").arg(int(unit.unicode()), 4, 16, QLatin1Char('0'));
    }
    return numbers;
}

void expect_same(const QString& name) {
    EXPECT_EQ(shown(folded(name)).toStdString(), shown(first_folding(name)).toStdString())
        << shown(name).toStdString();
}

TEST(Fold, GivesForEveryLetterWhatTheFirstRecordsHold) {
    constexpr char32_t end = 0x110000;
    constexpr char32_t at_once = 64;
    int letters = 0;
    for (char32_t start = 0; start < end && !::testing::Test::HasFailure(); start += at_once) {
        QString name;
        for (char32_t letter = start; letter < start + at_once; ++letter) {
            if (QChar::isSurrogate(letter) || is_younger(letter)) continue;
            // Two letters between keep marks and spaces apart from each other.
            name += u'a';
            name += QChar::fromUcs4(letter);
            name += u'b';
            ++letters;
        }
        expect_same(name);
    }
    EXPECT_GT(letters, 1'100'000);
}

TEST(Fold, GivesForMixedNamesWhatTheFirstRecordsHold) {
    // Where foldings differ: marks in any order, Hangul, compatibility forms, spaces, case, halves of
    // letters outside the first plane.
    const QList<QString> pieces{
        u"a"_qs, u"B"_qs, u"ø"_qs, u"Ł"_qs, u"ß"_qs, u"ẞ"_qs, u"İ"_qs, u"ı"_qs, u"I"_qs, u"Σ"_qs,
        u"ς"_qs, u"ﬁ"_qs, u"Ｆ"_qs, u"ǆ"_qs, u"ﬅ"_qs, u"각"_qs, u"ᄀ"_qs, u"ᅡ"_qs, u"潜"_qs,
        u"\u0301"_qs, u"\u0327"_qs, u"\u0345"_qs, u"\u20dd"_qs, u"\u0903"_qs, u"\u09be"_qs,
        u"\u302e"_qs, u"\U0001D165"_qs, u"\U0001D16E"_qs, u" "_qs, u"\u00a0"_qs, u"\u0085"_qs,
        u"\u3000"_qs, u"\t"_qs, u"\u200d"_qs, u"\u00ad"_qs, u"\ufeff"_qs, u"´"_qs, u"`"_qs,
        u"’"_qs, u"'"_qs, u"\u0958"_qs, u"\u212b"_qs, u"\U0001F420"_qs, u"\U00010400"_qs,
        u"\U0001E030"_qs, u"Ꭰ"_qs, u"ꭰ"_qs, u"\u0000"_qs, QString(QChar(0xD800)),
        QString(QChar(0xDC00)), u"\ufffe"_qs};
    std::mt19937 random(20);
    std::uniform_int_distribution<qsizetype> piece(0, pieces.size() - 1);
    std::uniform_int_distribution<int> length(0, 9);
    for (int i = 0; i < 50'000 && !::testing::Test::HasFailure(); ++i) {
        QString name;
        for (int left = length(random); left > 0; --left) name += pieces[piece(random)];
        expect_same(name);
    }
}

TEST(Fold, LeavesLettersAsTheyAreThatTheFirstRecordsCouldNotKnow) {
    const QString later = u"\U0001E030\u0ECE"_qs;  // of Unicode 15: would be а and nothing
    EXPECT_EQ(folded(later), later);
}

}  // namespace
}  // namespace leadline
