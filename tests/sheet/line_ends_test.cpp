// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/line_ends.h"

#include <gmock/gmock.h>

#include <QTextBoundaryFinder>
#include <algorithm>
#include <string>

#include "ui/guest_words/guest_language.h"
#include "ui/sheet/type_setting.h"

namespace leadline::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// The pieces between which a line may end, a stroke between them.
std::string pieces(const QString& text) {
    QTextBoundaryFinder finder(QTextBoundaryFinder::Line, text);
    const std::vector<qsizetype> poor = poor_line_ends(text);
    QString all;
    qsizetype from = 0;
    for (qsizetype at = finder.toNextBoundary(); at >= 0; at = finder.toNextBoundary()) {
        if (std::binary_search(poor.begin(), poor.end(), at)) continue;
        if (!all.isEmpty()) all += u'|';
        all += text.mid(from, at - from);
        from = at;
    }
    return all.toStdString();
}

TEST(LineEnds, StandBetweenPhrasesInJapanese) {
    EXPECT_EQ(pieces(QStringLiteral("息を止めて浮上すると、空気がふくらみます。")),
              "息を|止めて|浮上すると、|空気が|ふくらみます。");
    EXPECT_EQ(pieces(QStringLiteral("合図してください。")), "合図して|ください。");
    EXPECT_EQ(pieces(QStringLiteral("耳抜きは早めに")), "耳抜きは|早めに");
    EXPECT_EQ(pieces(QStringLiteral("レギュレーターの水を出す")),
              "レギュレーターの|水を|出す");
}

TEST(LineEnds, StandBetweenWordsInChineseAndLeaveNoSingleLetterBehind) {
    EXPECT_EQ(pieces(QStringLiteral("可以用鼻子往里呼气。")),
              "可以|用|鼻子|往里呼气。");
    EXPECT_EQ(pieces(QStringLiteral("自己的空气不足时")), "自己|的|空气|不足时");
}

TEST(LineEnds, NeverPartANumberFromItsUnit) {
    const QString number = isolated(QStringLiteral("0.5米"));
    EXPECT_THAT(poor_line_ends(number), ElementsAre(4));
    EXPECT_THAT(poor_line_ends(isolated(QStringLiteral("24")) + QStringLiteral("小时")),
                ElementsAre(4, 5))
        << "nor the unit in itself";
    EXPECT_THAT(poor_line_ends(QStringLiteral("31분")), ElementsAre(2));
}

TEST(LineEnds, AreLeftAloneInOtherScripts) {
    for (const char* text : {"", "Never hold your breath", "Не задерживайте дыхание", "لا تحبس نفسك",
                             "절대 숨을 참지 마세요"}) {
        EXPECT_THAT(poor_line_ends(QString::fromUtf8(text)), IsEmpty()) << text;
        EXPECT_EQ(with_good_line_ends(QString::fromUtf8(text)), QString::fromUtf8(text));
    }
}

TEST(LineEnds, AddNothingThatIsSeen) {
    const QString text = QStringLiteral("ゆっくり浮上してください。");
    QString joined = with_good_line_ends(text);
    EXPECT_NE(joined, text);
    EXPECT_EQ(joined.remove(QChar(0x2060)), text);
}

TEST(LineEnds, AreTakenWhenTypeIsSet) {
    TypeSetter setter;
    TextStyle style;
    style.points = 10.0;
    style.least_points = 10.0;
    style.most_lines = 9;
    style.face.family = QStringLiteral("Noto Sans CJK JP");
    const QString text = QStringLiteral("息を止めて浮上すると、空気がふくらみ、肺が破れることがあります。");
    const std::vector<qsizetype> poor = poor_line_ends(text);
    for (double width = 25.0; width < 90.0; width += 2.5) {
        const TextItem set = setter.set({text, 0}, QRectF(0.0, 0.0, width, 60.0), style);
        QString all;
        for (const TextLine& line : set.lines) {
            if (!all.isEmpty()) {
                EXPECT_FALSE(std::binary_search(poor.begin(), poor.end(), all.size()))
                    << width << ": " << line.text.toStdString();
            }
            EXPECT_LE(line.width, width + 0.03);
            all += line.text;
        }
        EXPECT_EQ(all, text) << width;
    }
}

}  // namespace
}  // namespace leadline::testing
