// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/missing_letters.h"

#include <gmock/gmock.h>

#include "sheet_fixture.h"

namespace leadline::testing {
namespace {

Page page_with(const QString& text) {
    TypeSetter setter;
    Page page;
    page.items.emplace_back(setter.set({text, 0}, QRectF(10, 10, 180, 10), {}));
    return page;
}

TEST(MissingLetters, AreFoundAndNamed) {
    // Not a letter of any script (yet): no font has a shape for it.
    const QString unknown(QChar(0x0378));
    const auto found = unprintable_letters(page_with(QStringLiteral("Ana ") + unknown));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().letters, unknown);
    EXPECT_TRUE(found.front().line.startsWith(QStringLiteral("Ana")));
}

TEST(MissingLetters, NamesInManyScriptsAreNotBoxes) {
    for (const char* name : {"Åsa Þórsdóttir", "田中 結衣", "김서연", "ليلى حداد", "Вероника",
                             "ליאור", "สมชาย", "Ελένη", "अनिता", "Nguyễn Thị"}) {
        EXPECT_TRUE(unprintable_letters(page_with(QString::fromUtf8(name))).empty()) << name;
    }
}

TEST(MissingLetters, MarksOfDirectionNeedNoShape) {
    EXPECT_TRUE(unprintable_letters(page_with(isolated(QStringLiteral("1\u00a0m")))).empty());
}

TEST(MissingLetters, NoneStandOnTheCardsOfTheSamples) {
    for (const char* name : sample_names) {
        const auto cards = faces_of(sample(name).session, UnitSystem::metric);
        for (const Page& page : card_pages(cards, CardSize::a6_on_a4)) {
            for (const UnprintableText& text : unprintable_letters(page)) {
                ADD_FAILURE() << text.line.toStdString() << ": " << text.letters.toStdString();
            }
        }
    }
}

}  // namespace
}  // namespace leadline::testing
