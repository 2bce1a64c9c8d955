// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/guest_punctuation.h"

#include <gtest/gtest.h>

#include "ui/guest_words/card_words.h"

namespace leadline::testing {
namespace {

TEST(GuestPunctuation, KeepsNumbersAndUnitsAsEachScriptWritesThem) {
    const auto minutes = [](const char* tag) {
        return number_with_unit(QStringLiteral("31"),
                                card_word(CardWord::minutes, GuestTongue::of(tag)));
    };
    EXPECT_EQ(minutes("en"), QStringLiteral("31\u00A0min"));
    EXPECT_EQ(minutes("ja"), QStringLiteral("31分"));
    EXPECT_EQ(minutes("ko"), QStringLiteral("31분"));
    EXPECT_EQ(minutes("zh-Hans"), QStringLiteral("31分钟"));
    EXPECT_EQ(number_with_unit(QStringLiteral("50"), QStringLiteral("bar")),
              QStringLiteral("50\u00A0bar"));
    EXPECT_EQ(number_with_percent(QStringLiteral("55"), GuestTongue::of("de")),
              QStringLiteral("55\u00A0%"));
    EXPECT_EQ(number_with_percent(QStringLiteral("55"), GuestTongue::of("ko")),
              QStringLiteral("55%"));
}

TEST(GuestPunctuation, AColonStandsAsTheLanguageWritesIt) {
    const auto colon = [](const char* tag) {
        return labelled(QStringLiteral("a"), QStringLiteral("5"), GuestTongue::of(tag));
    };
    for (const char* tag : {"en", "ar", "ko"}) EXPECT_EQ(colon(tag), QStringLiteral("a: 5")) << tag;
    for (const char* tag : {"ja", "zh-Hans"}) EXPECT_EQ(colon(tag), QStringLiteral("a\uFF1A5")) << tag;
    EXPECT_EQ(colon("fr"), QStringLiteral("a\u202F: 5"));
}

TEST(GuestPunctuation, SentencesFollowAsTheLanguageWritesThem) {
    const QStringList two{QStringLiteral("甲。"), QStringLiteral("乙。")};
    for (const char* tag : {"ja", "zh-Hans"}) {
        EXPECT_EQ(sentences_together(two, GuestTongue::of(tag)), QStringLiteral("甲。乙。")) << tag;
    }
    for (const char* tag : {"en", "ko"}) {
        EXPECT_EQ(sentences_together(two, GuestTongue::of(tag)), QStringLiteral("甲。 乙。")) << tag;
    }
}

}  // namespace
}  // namespace leadline::testing
