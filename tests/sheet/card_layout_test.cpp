// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include "sheet_fixture.h"

namespace leadline::testing {
namespace {

struct Case {
    std::string sample;
    CardSize size;
    UnitSystem units;
    std::string language;  ///< "longer": English, all fixed words stretched
};

std::vector<CardContent> cards_of(const Session& session, const Case& one) {
    if (one.language != "longer") return faces_of(session, one.units, one.language);
    std::vector<CardContent> cards = faces_of(session, one.units, "en");
    for (CardContent& card : cards) card = stretched(card);
    return cards;
}

/// Words that were cut, but for what people typed.
QStringList cut_words(const Page& page, const std::vector<CardContent>& cards) {
    QStringList typed;
    for (const CardContent& card : cards) {
        typed << card.name << card.group << card.instructor.value << card.where
              << card.when.value;
        for (const CardKit& item : card.kit) typed << item.value;
    }
    QStringList cut;
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || !text->elided) continue;
        const QString start = text->lines.front().text.left(4);
        const bool allowed = std::any_of(typed.begin(), typed.end(), [&](const QString& one) {
            return one.startsWith(start);
        });
        if (!allowed) cut << text->lines.front().text;
    }
    return cut;
}

class CardLayout : public ::testing::TestWithParam<Case> {};

TEST_P(CardLayout, NothingLeavesItsCardOrLiesOnAnotherAndNoFixedWordIsCut) {
    const auto cards = cards_of(sample(GetParam().sample.c_str()).session, GetParam());
    for (const Page& page : card_pages(cards, GetParam().size)) {
        EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
        EXPECT_EQ(cut_words(page, cards).join(u'\n').toStdString(), "");
    }
}

TEST_P(CardLayout, EveryWordOfTheContentIsOnThePage) {
    const auto cards = cards_of(sample(GetParam().sample.c_str()).session, GetParam());
    QString words;
    for (const Page& page : card_pages(cards, GetParam().size)) words += words_on(page).join(u' ');
    words = bare(words);
    for (const CardContent& card : cards) {
        for (const QString& text : all_words(card)) {
            EXPECT_TRUE(words.contains(bare(text))) << text.toStdString();
        }
    }
}

TEST_P(CardLayout, TypeIsAtLeastEightPointsAndTheRuleIsLargest) {
    const auto cards = cards_of(sample(GetParam().sample.c_str()).session, GetParam());
    for (const CardContent& card : cards) {
        double rule = 0.0;
        double largest = 0.0;
        const std::vector<Page> pages = card_pages({card}, GetParam().size);
        for (const SheetItem& item : pages.front().items) {
            const auto* text = std::get_if<TextItem>(&item);
            if (text == nullptr) continue;
            EXPECT_GE(text->points, 8.0) << text->lines.front().text.toStdString();
            largest = std::max(largest, text->points);
            if (bare(card.breath_rule).startsWith(bare(text->lines.front().text)) &&
                text->ink == Ink::white) {
                rule = text->points;
            }
        }
        EXPECT_GE(rule, largest - 0.01);
    }
}

std::vector<Case> cases() {
    std::vector<Case> all;
    std::vector<std::string> languages{"longer"};
    for (const GuestLanguage& language : guest_languages()) languages.push_back(language.tag);
    for (const CardSize size : card_sizes()) {
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
            for (const std::string& language : languages) {
                all.push_back({"harbour-morning", size, units, language});
            }
        }
    }
    for (const char* name : {"salt-cove", "mountain-lake", "finished-dive", "many-tongues"}) {
        for (const std::string& language : languages) {
            all.push_back({name, CardSize::a6_on_a4, UnitSystem::metric, language});
            all.push_back({name, CardSize::quarter_letter, UnitSystem::imperial, language});
        }
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(All, CardLayout, ::testing::ValuesIn(cases()), [](const auto& one) {
    std::string name = one.param.sample + one.param.language + "Size" +
                       std::to_string(static_cast<int>(one.param.size)) +
                       (one.param.units == UnitSystem::metric ? "Metric" : "Imperial");
    std::erase(name, '-');
    return name;
});

TEST(CardRule, NoWordOfItsReasonStandsAloneOnTheLastLine) {
    const Session session = sample("many-tongues").session;
    int in_lines = 0;
    for (const GuestLanguage& language : guest_languages()) {
        const CardContent card = faces_of(session, UnitSystem::metric, language.tag).front();
        const std::vector<Page> pages = card_pages({card}, CardSize::a6);
        for (const SheetItem& item : pages.front().items) {
            const auto* text = std::get_if<TextItem>(&item);
            if (text == nullptr || text->lines.size() < 2) continue;
            QString whole;
            for (const auto& line : text->lines) whole += line.text;
            if (bare(whole) != bare(card.breath_reason)) continue;
            ++in_lines;
            qsizetype longest = 0;
            for (const auto& line : text->lines) longest = std::max(longest, line.text.size());
            EXPECT_GE(2 * text->lines.back().text.trimmed().size(), longest) << language.tag;
        }
    }
    EXPECT_GE(in_lines, 3);
}

/// The longest that a session file lets in.
Session crowded_session() {
    Session session = sample("salt-cove").session;
    for (Guest& guest : session.guests) {
        guest.name = "Maria-Magdalena Åström " + std::string(97, 'w');
        guest.kit.mask = std::string(100, 'm');
        guest.kit.suit = std::string(100, 's');
    }
    for (StaffMember& member : session.staff) member.name = std::string(200, 'n');
    for (Group& group : session.groups) group.name = "The early " + std::string(100, 'g');
    session.site.meeting_place = std::string(500, 'p');
    std::string line = "+00 555 0100";
    while (line.size() + 9 <= 200) line += " ask duty";
    session.site.emergency_line = line;
    return session;
}

TEST(CardLayoutOfMany, WhatKeepsGuestsSafeIsNeverCut) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        for (const CardSize size : {CardSize::a6_on_a4, CardSize::quarter_letter}) {
            for (const bool longer : {false, true}) {
                std::vector<CardContent> cards = faces_of(crowded_session(), units, "en");
                if (longer) std::transform(cards.begin(), cards.end(), cards.begin(),
                                           [](const CardContent& card) { return stretched(card); });
                const auto pages = card_pages(cards, size);
                ASSERT_EQ(pages.size(), 1U);
                EXPECT_EQ(faults(pages.front()).join(u'\n').toStdString(), "");
                const QString shown = bare(words_on(pages.front()).join(QString()));
                const CardContent& card = cards.front();
                QStringList needed{card.breath_rule, card.breath_reason, card.watch, card.no_flying,
                                   card.emergency_line, card.low_on_air.label,
                                   card.low_on_air.number + card.low_on_air.unit,
                                   card.low_on_air.action};
                for (const QString& advice : card.advice) needed << advice;
                for (const QString& text : needed) {
                    EXPECT_TRUE(shown.contains(bare(text))) << text.toStdString();
                }
            }
        }
    }
}

TEST(CardLayoutOfMany, FortyGuestsWithNamesOfEveryLengthFit) {
    Session session = sample("salt-cove").session;
    const Guest pattern = session.guests.front();
    session.guests.clear();
    for (int i = 0; i < 40; ++i) {
        Guest guest = pattern;
        guest.id = GuestId("guest-" + std::to_string(i + 1));
        guest.name = std::string(static_cast<std::size_t>(3 * (i + 1)), i % 2 == 0 ? 'W' : 'i');
        guest.kit.suit = "7 mm two-piece with hood and gloves, size XXL long";
        session.guests.push_back(guest);
    }
    session.site.meeting_place = std::string(120, 'M');
    session.site.emergency_line = "+00 555 0100 then ask for the duty officer, channel 16";
    for (const CardSize size : card_sizes()) {
        const auto cards = faces_of(session, UnitSystem::metric, "en");
        const auto pages = card_pages(cards, size);
        EXPECT_EQ(pages.size(), 40U / static_cast<unsigned>(cards_on_page(size)));
        for (const Page& page : pages) EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
    }
}

TEST(CardLayoutOfMany, WhatIsNotKnownYetIsALineToWriteOn) {
    Session session = sample("salt-cove").session;
    session.site.emergency_line.clear();
    session.site.meeting_place.clear();
    for (Guest& guest : session.guests) {
        guest.kit = {};
        guest.group = {};
    }
    const auto cards = faces_of(session, UnitSystem::metric, "en");
    const Page page = card_pages({cards.front()}, CardSize::a6_on_a4).front();
    EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
    const auto lines = std::count_if(page.items.begin(), page.items.end(), [](const auto& item) {
        const auto* line = std::get_if<LineItem>(&item);
        return line != nullptr && line->ink == Ink::black && line->width > 0.1 &&
               line->width < 0.2 && line->line.dy() == 0.0;
    });
    // Instructor, seven pieces of kit, pressure, number to call.
    EXPECT_EQ(lines, 10);
}

TEST(CardLayoutOfMany, NamesOfBothDirectionsKeepToTheirPlace) {
    Session session = sample("salt-cove").session;
    session.guests[0].name = "ليلى حداد المنصوري";
    session.guests[1].name = "ליאור Ben-Ami כהן";
    session.guests[2].name = "Ana مريم 2 López";
    for (const bool mirrored : {false, true}) {
        auto cards = faces_of(session, UnitSystem::metric, "en");
        for (CardContent& card : cards) card.face.right_to_left = mirrored;
        const Page page = card_pages(cards, CardSize::a6_on_a4).front();
        EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
        // The name stands at the side where reading begins.
        const auto* name = std::get_if<TextItem>(&*std::find_if(
            page.items.begin(), page.items.end(), [](const SheetItem& item) {
                const auto* text = std::get_if<TextItem>(&item);
                return text != nullptr && text->lines.front().text.contains(QStringLiteral("حداد"));
            }));
        ASSERT_NE(name, nullptr);
        const TextLine& line = name->lines.front();
        if (mirrored) {
            EXPECT_GT(line.left + line.width, 95.0);
            EXPECT_LT(line.left + line.width, 105.0);
        } else {
            EXPECT_LT(line.left, 10.0);
        }
    }
}

TEST(CardLayoutOfMany, AMirroredCardHasItsPicturesUnturned) {
    auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric, "en");
    cards.resize(1);
    const Page plain = card_pages(cards, CardSize::a6).front();
    cards.front().face.right_to_left = true;
    const Page mirrored = card_pages(cards, CardSize::a6).front();
    ASSERT_EQ(plain.items.size(), mirrored.items.size());
    for (std::size_t i = 0; i < plain.items.size(); ++i) {
        const QRectF one = rect_of(plain.items[i]);
        const QRectF other = rect_of(mirrored.items[i]);
        EXPECT_NEAR(one.left() + one.right() + other.left() + other.right(), 2.0 * 105.0, 0.2);
        EXPECT_GT(other.width(), 0.0);
        if (const auto* picture = std::get_if<PictureItem>(&plain.items[i])) {
            EXPECT_EQ(picture->name, std::get<PictureItem>(mirrored.items[i]).name);
        }
    }
}

TEST(CardLayoutOfMany, ALargerCardHasLargerTypeAndPictures) {
    auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric, "en");
    cards.resize(1);
    const auto smallest = [&](CardSize size) {
        std::pair<double, double> least{1000.0, 1000.0};
        const std::vector<Page> pages = card_pages(cards, size);
        for (const SheetItem& item : pages.front().items) {
            if (const auto* text = std::get_if<TextItem>(&item)) {
                least.first = std::min(least.first, text->points);
            } else if (const auto* picture = std::get_if<PictureItem>(&item)) {
                least.second = std::min(least.second, picture->rect.width());
            }
        }
        return least;
    };
    const auto [type, picture] = smallest(CardSize::a6);
    const auto [type_of_a4, picture_of_a4] = smallest(CardSize::a4);
    EXPECT_GE(type_of_a4, 1.95 * type);
    EXPECT_GE(picture_of_a4, 1.9 * picture);
}

TEST(CardLayoutOfMany, ACutCardHasNoStrayLines) {
    for (const CardSize size : {CardSize::a6_on_a4, CardSize::quarter_letter}) {
        const QSizeF card = card_size(size);
        const auto pages =
            card_pages(faces_of(sample("salt-cove").session, UnitSystem::metric, "en"), size);
        int marks = 0;
        for (const SheetItem& item : pages.front().items) {
            const QRectF rect = rect_of(item);
            const bool on_card = std::any_of(
                pages.front().frames.begin(), pages.front().frames.end(), [&](const QRectF& frame) {
                    return frame.adjusted(3.0, 3.0, -3.0, -3.0).contains(rect);
                });
            if (on_card) continue;
            const auto* line = std::get_if<LineItem>(&item);
            ASSERT_NE(line, nullptr) << "only marks for cutting may lie at a card's edge";
            ++marks;
            const bool on_cut =
                (line->line.x1() == card.width() && line->line.x2() == card.width()) ||
                (line->line.y1() == card.height() && line->line.y2() == card.height());
            EXPECT_TRUE(on_cut);
        }
        EXPECT_EQ(marks, 7);  // the cross has its upright arm in two
    }
}

TEST(CardLayoutOfMany, TheFinderOfFaultsFindsThem) {
    std::vector<Page> pages = card_pages(
        faces_of(sample("salt-cove").session, UnitSystem::metric, "en"), CardSize::a6_on_a4);
    TextItem stray;
    stray.points = 10.0;
    stray.lines = {{QStringLiteral("stray"), 103.0, 60.0, 0, 10.0}};  // over the edge of a card
    pages.front().items.push_back(stray);
    EXPECT_TRUE(faults(pages.front()).join(u' ').contains(QStringLiteral("outside: stray")));
    const auto copy_onto = [&](const QRectF& rect, const char* words) {
        TextItem item;
        item.points = 10.0;
        item.lines = {{QString::fromUtf8(words), rect.left(), rect.center().y() + 1.0, 0, 10.0}};
        pages.front().items.push_back(item);
    };
    const std::vector<SheetItem> items = pages.front().items;
    bool on_text = false;
    bool on_picture = false;
    bool on_code = false;
    for (const SheetItem& item : items) {
        if (std::holds_alternative<TextItem>(item) && !on_text) {
            on_text = true;
            copy_onto(rect_of(item), "twice");
        } else if (std::holds_alternative<PictureItem>(item) && !on_picture) {
            on_picture = true;
            copy_onto(rect_of(item), "across");
        } else if (std::holds_alternative<QrItem>(item) && !on_code) {
            on_code = true;
            copy_onto(rect_of(item), "coded");
        }
    }
    const QString found = faults(pages.front()).join(u' ');
    EXPECT_TRUE(found.contains(QStringLiteral("overlap: twice")));
    EXPECT_TRUE(found.contains(QStringLiteral("on a picture: across")));
    EXPECT_TRUE(found.contains(QStringLiteral("on a picture: coded")));
}

TEST(CardLayoutOfMany, NoGuestsMakeNoPages) {
    for (const CardSize size : card_sizes()) EXPECT_TRUE(card_pages({}, size).empty());
}

}  // namespace
}  // namespace leadline::testing
