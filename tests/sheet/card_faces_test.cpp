// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "sheet_fixture.h"

namespace leadline::testing {
namespace {

/// Faces named by letters: "A" a card of one face, "Bb" one of two.
std::vector<CardContent> faces(QStringView names) {
    const CardContent pattern =
        faces_of(sample("salt-cove").session, UnitSystem::metric, "en").front();
    std::vector<CardContent> cards;
    for (const QStringView name : names.split(u' ')) {
        for (qsizetype i = 0; i < name.size(); ++i) {
            cards.push_back(pattern);
            cards.back().name = QStringLiteral("Face ") + name[i];
            cards.back().second_face = i > 0;
        }
    }
    return cards;
}

/// The faces of a page by place, left to right and down: "Bb/A.".
QString places(const Page& page, CardSize size) {
    const QSizeF card = card_size(size);
    const int columns = page_size(page).width() > 1.5 * card.width() ? 2 : 1;
    QString found(cards_on_page(size), u'.');
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || !text->lines.front().text.startsWith(QStringLiteral("Face "))) continue;
        const int column = static_cast<int>(text->rect.left() / card.width());
        const int row = static_cast<int>(text->rect.top() / card.height());
        found[row * columns + column] = text->lines.front().text.back();
    }
    return found;
}

QString all_places(QStringView names, CardSize size) {
    QStringList result;
    for (const Page& page : card_pages(faces(names), size)) result << places(page, size);
    return result.join(u' ');
}

TEST(CardFaces, TwoFacesLieInOneRow) {
    const CardSize four = CardSize::a6_on_a4;
    EXPECT_EQ(all_places(u"Aa", four), u"Aa..");
    EXPECT_EQ(all_places(u"A B Cc", four), u"ABCc");
    // The place beside A would stay empty: the next single card takes it.
    EXPECT_EQ(all_places(u"A Bb C", four), u"ACBb");
    EXPECT_EQ(all_places(u"A Bb Cc", four), u"A.Bb Cc..");
    EXPECT_EQ(all_places(u"Aa B Cc D", four), u"AaBD Cc..");
}

TEST(CardFaces, TwoOnAPageAreAPairAndOneOnAPageFollow) {
    EXPECT_EQ(all_places(u"A Bb C", CardSize::a5_on_a4), u"AC Bb");
    EXPECT_EQ(all_places(u"A Bb", CardSize::a5), u"A B b");
}

TEST(CardFaces, AFoldIsMarkedInDashesWhereACutWouldBe) {
    const auto upright_marks = [](QStringView names) {
        const Page page = card_pages(faces(names), CardSize::a6_on_a4).front();
        return std::count_if(page.items.begin(), page.items.end(), [](const SheetItem& item) {
            const auto* line = std::get_if<LineItem>(&item);
            return line != nullptr && line->line.dx() == 0.0 && line->line.x1() == 105.0;
        });
    };
    EXPECT_EQ(upright_marks(u"A B C D"), 4);
    EXPECT_GT(upright_marks(u"Aa B C"), 8);
    EXPECT_GT(upright_marks(u"Aa Bb"), upright_marks(u"Aa B C"));
}

TEST(CardFaces, EveryCardOfEverySizeLiesOnItsPaper) {
    for (const CardSize size : card_sizes()) {
        const auto pages = card_pages(faces(u"A Bb C D"), size);
        int faces_found = 0;
        for (const Page& page : pages) {
            EXPECT_EQ(page.paper, paper_of(size));
            EXPECT_EQ(page.landscape, is_landscape(size));
            const QRectF paper(QPointF(0, 0), page_size(page));
            for (const QRectF& frame : page.frames) EXPECT_TRUE(paper.contains(frame));
            for (const SheetItem& item : page.items) EXPECT_TRUE(paper.contains(rect_of(item)));
            faces_found += static_cast<int>(page.frames.size());
        }
        EXPECT_EQ(faces_found, 5);
    }
}

}  // namespace
}  // namespace leadline::testing
