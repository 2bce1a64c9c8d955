// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QRegularExpression>
#include <cmath>

#include "sheet_fixture.h"

namespace leadline::testing {
namespace {

/// Pieces between spaces that hold a letter: names, units and single letters count as well.
QStringList words_in(const QString& text) {
    static const QRegularExpression spaces(QStringLiteral("[\\s\u00a0]+"));
    QStringList words;
    for (const QString& piece : text.split(spaces, Qt::SkipEmptyParts)) {
        if (std::any_of(piece.begin(), piece.end(), [](QChar one) { return one.isLetter(); })) {
            words << piece;
        }
    }
    return words;
}

/// Syllables of an English word: its groups of vowels, less a silent e at its end; at least one.
int syllables(const QString& word) {
    const QString vowels = QStringLiteral("aeiouy");
    QString letters;
    for (const QChar one : word.toLower()) {
        if (one.isLetter()) letters += one;
    }
    int count = 0;
    for (qsizetype i = 0; i < letters.size(); ++i) {
        const bool starts = vowels.contains(letters[i]) && (i == 0 || !vowels.contains(letters[i - 1]));
        count += starts ? 1 : 0;
    }
    const bool spoken_e = letters.size() > 2 && letters.endsWith(QStringLiteral("le")) &&
                          !vowels.contains(letters[letters.size() - 3]);
    if (letters.endsWith(u'e') && !spoken_e && count > 1) --count;
    return std::max(1, count);
}

/// @source  Kincaid, Fishburne, Rogers, Chissom: "Derivation of New Readability Formulas", Research
///          Branch Report 8-75, Naval Technical Training, 1975 (coefficients from memory)
double reading_grade(const QStringList& texts) {
    static const QRegularExpression ends(QStringLiteral("[.?!](\\s|$)"));
    int words = 0;
    int sentences = 0;
    int spoken = 0;
    for (const QString& text : texts) {
        const QStringList found = words_in(text);
        words += static_cast<int>(found.size());
        for (const QString& word : found) spoken += syllables(word);
        sentences += std::max(1, static_cast<int>(text.count(ends)));
    }
    return 0.39 * words / sentences + 11.8 * spoken / words - 15.59;
}

TEST(CardReadability, AtMostAHundredAndTwentyWordsStandOnACard) {
    for (const char* name : sample_names) {
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
            for (const GuestLanguage& language : guest_languages()) {
                qsizetype most = 0;
                for (const CardContent& card :
                     faces_of(sample(name).session, units, language.tag)) {
                    most = std::max(most, words_in(all_words(card).join(u' ')).size());
                }
                EXPECT_LE(most, 120) << name << ' ' << language.tag;
                // Japanese and Chinese put no spaces between words: there is little to count.
                const bool spaced = language.tag != "ja" && language.tag != "zh-Hans";
                EXPECT_GE(most, spaced ? 70 : 20) << name << ' ' << language.tag;
            }
        }
    }
}

TEST(CardReadability, AChildOfTenReadsIt) {
    const CardContent card =
        faces_of(sample("harbour-morning").session, UnitSystem::metric, "en").front();
    QStringList texts{card.breath_rule, card.breath_reason, card.no_flying, card.watch,
                      card.standing};
    for (const QString& advice : card.advice) texts << advice;
    EXPECT_LE(reading_grade(texts), 5.0);
}

TEST(CardReadability, TheGradeTellsHardTextFromEasy) {
    EXPECT_EQ(syllables(QStringLiteral("air")), 1);
    EXPECT_EQ(syllables(QStringLiteral("hole")), 1);
    EXPECT_EQ(syllables(QStringLiteral("little")), 2);
    EXPECT_EQ(syllables(QStringLiteral("instructor")), 3);
    EXPECT_LT(reading_grade({QStringLiteral("Go up now. Do not stop.")}), 2.0);
    EXPECT_GT(reading_grade({QStringLiteral(
                  "Equalisation of the middle ear necessitates continual attention throughout the "
                  "initial descent, particularly where congestion is anticipated.")}),
              12.0);
}

/// Relative luminance and contrast.
/// @source  W3C: Web Content Accessibility Guidelines 2.1, definitions of "relative luminance" and
///          "contrast ratio" (from memory)
double luminance(const QColor& colour) {
    const auto linear = [](double value) {
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double one = luminance(a);
    const double other = luminance(b);
    return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

TEST(CardReadability, EveryTextStandsOutFromItsGround) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 0.01);
    EXPECT_LT(contrast(ink_colour(Ink::grey), Qt::white), 7.0);  // hence hairlines only
    for (const char* name : sample_names) {
        const auto cards = faces_of(sample(name).session, UnitSystem::metric);
        for (const Page& page : card_pages(cards, CardSize::a6_on_a4)) {
            int white_texts = 0;
            for (const SheetItem& item : page.items) {
                const auto* text = std::get_if<TextItem>(&item);
                if (text == nullptr) continue;
                QColor ground = Qt::white;
                for (const SheetItem& other : page.items) {
                    const auto* box = std::get_if<RectItem>(&other);
                    if (box == nullptr || box->width > 0.0) continue;
                    if (box->rect.contains(text->rect.center())) ground = ink_colour(box->ink);
                }
                white_texts += text->ink == Ink::white ? 1 : 0;
                EXPECT_GE(contrast(ink_colour(text->ink), ground), 7.0)
                    << text->lines.front().text.toStdString();
            }
            EXPECT_EQ(white_texts, 3 * static_cast<int>(page.frames.size()));
        }
    }
}

}  // namespace
}  // namespace leadline::testing
