// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QRegularExpression>
#include <QSet>

#include "ui/guest_words/screen_words.h"

namespace leadline::testing {
namespace {

ScreenWord word_at(int k) {
    return static_cast<ScreenWord>(k);
}

QString english(int k) {
    QString text = screen_word(word_at(k), GuestTongue::of("en"));
    return text.remove(QRegularExpression(QStringLiteral("%\\d")));
}

/// Groups of vowels, a silent e left out: how syllables of English are mostly counted.
int syllables(QString word) {
    word = word.toLower();
    static const QRegularExpression silent(QStringLiteral("[^aeiouyl]e$"));
    static const QRegularExpression vowels(QStringLiteral("[aeiouy]+"));
    word.remove(silent);
    int count = 0;
    for (auto match = vowels.globalMatch(word); match.hasNext(); match.next()) ++count;
    return std::max(1, count);
}

/// Grade of school by Flesch and Kincaid.
/// @source  Kincaid et al., Research Branch Report 8-75, Naval Technical Training, 1975 (from
/// memory)
double grade(const QString& text) {
    static const QRegularExpression word(QStringLiteral("[A-Za-z’]+"));
    static const QRegularExpression end(QStringLiteral("[.?!]+"));
    int words = 0;
    int sounds = 0;
    for (auto match = word.globalMatch(text); match.hasNext();) {
        sounds += syllables(match.next().captured());
        ++words;
    }
    const auto sentences = std::max<qsizetype>(1, text.count(end));
    if (words == 0) return 0.0;
    return 0.39 * words / static_cast<double>(sentences) + 11.8 * sounds / words - 15.59;
}

TEST(GuestScreenWords, EachHasWordsOfItsOwnPlaces) {
    for (int k = 0; k < screen_word_count; ++k) EXPECT_FALSE(english(k).isEmpty()) << k;
    EXPECT_TRUE(screen_word(word_at(screen_word_count), GuestTongue::of("en")).isEmpty())
        << "the count is not up to date";
}

TEST(GuestScreenWords, AChildOfTenReadsThemWithEase) {
    QString all;
    for (int k = 0; k < screen_word_count; ++k) {
        const QString text = english(k);
        if (text.count(u' ') < 3) continue;  // labels
        EXPECT_LE(grade(text), 8.0) << text.toStdString();
        all += text.endsWith(u'.') || text.endsWith(u'?') || text.endsWith(u'!')
                   ? text + QStringLiteral(" ")
                   : text + QStringLiteral(". ");
    }
    EXPECT_LE(grade(all), 5.0);
    RecordProperty("grade", std::to_string(grade(all)));
}

TEST(GuestScreenWords, TheMeasureKnowsHardFromEasy) {
    EXPECT_LT(grade(QStringLiteral("The cat sat on the mat.")), 1.0);
    EXPECT_GT(grade(QStringLiteral("Decompression obligations necessitate conservative "
                                   "interpretation of atmospheric exposure.")),
              12.0);
}

TEST(GuestScreenWords, StaySaidInShortSentences) {
    for (int k = 0; k < screen_word_count; ++k) {
        static const QRegularExpression end(QStringLiteral("[.?!:]"));
        for (const QString& sentence : english(k).split(end)) {
            EXPECT_LE(sentence.simplified().count(u' ') + 1, 12) << sentence.toStdString();
        }
    }
}

TEST(GuestScreenWords, PromiseNothing) {
    for (int k = 0; k < screen_word_count; ++k) {
        for (const char* promise :
             {"safe", "guarantee", "danger-free", "no risk", "always works"}) {
            EXPECT_FALSE(english(k).contains(QLatin1String(promise), Qt::CaseInsensitive))
                << english(k).toStdString();
        }
    }
}

}  // namespace
}  // namespace leadline::testing
