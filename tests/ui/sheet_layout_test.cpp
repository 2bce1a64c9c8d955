// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QFontInfo>
#include <QFontMetricsF>
#include <QRegularExpression>

#include "ui/sheet/cards.h"
#include "ui/sheet/card_layout.h"
#include "ui/sheet/type_setting.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

std::vector<CardContent> cards_of(const Session& session, UnitSystem units) {
    const Result<Plan> planned = plan(session, rules());
    EXPECT_TRUE(planned.has_value());
    std::vector<CardContent> cards;
    for (const Guest& guest : session.guests) {
        cards.push_back(card_content(session, *planned, guest, units));
    }
    return cards;
}

/// Where the letters of a text really stand: from the height of a capital down to a descender, as
/// wide as the line is set. Frames may touch; letters may not.
std::vector<QRectF> letter_boxes(const TextItem& text) {
    constexpr double capital = 0.72;     // of the size, Noto Sans
    constexpr double descender = 0.22;
    const double size = text.points * mm_per_point;
    std::vector<QRectF> boxes;
    for (const TextLine& line : text.lines) {
        const bool bold = text.bold || line.bold_letters == line.text.size();
        // Measured large and scaled down, so that no hinting of small type gets in.
        const QFontMetricsF metrics(sheet_font(100.0, bold));
        const double em = QFontInfo(sheet_font(100.0, bold)).pixelSize();
        const double width = metrics.horizontalAdvance(line.text) / em * size;
        boxes.emplace_back(line.left, line.baseline - capital * size, width,
                           (capital + descender) * size);
    }
    return boxes;
}

/// Texts that leave the card they stand on, or whose letters lie on those of another.
QStringList faults(const Page& page) {
    constexpr double hair = 0.3;  // [mm], of overlap that no eye sees
    QStringList found;
    std::vector<std::pair<QRectF, QString>> placed;
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || text->lines.empty()) continue;
        const QString first = text->lines.front().text;
        std::vector<QRectF> own = letter_boxes(*text);
        for (const QRectF& box : own) {
            const bool inside =
                std::any_of(page.frames.begin(), page.frames.end(), [&](const QRectF& frame) {
                    return frame.adjusted(-hair, -hair, hair, hair).contains(box);
                });
            if (!inside) found << QStringLiteral("outside: ") + first;
            for (const auto& [other, words] : placed) {
                const QRectF overlap = box.intersected(other);
                if (overlap.width() > hair && overlap.height() > hair) {
                    found << QStringLiteral("overlap: ") + first + QStringLiteral(" / ") + words;
                }
            }
        }
        for (const QRectF& box : own) placed.emplace_back(box, first);
    }
    return found;
}

struct Case {
    const char* sample;
    CardSize size;
    UnitSystem units;
};

class CardLayout : public ::testing::TestWithParam<Case> {};

TEST_P(CardLayout, NothingLeavesItsCardOrLiesOnAnother) {
    const auto cards = cards_of(sample(GetParam().sample).session, GetParam().units);
    const std::vector<Page> pages = card_pages(cards, GetParam().size);
    EXPECT_EQ(pages.size(), (cards.size() + 3) / 4);
    for (const Page& page : pages) EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
}

TEST_P(CardLayout, EveryWordOfTheContentIsOnThePage) {
    const auto cards = cards_of(sample(GetParam().sample).session, GetParam().units);
    QString words;
    for (const Page& page : card_pages(cards, GetParam().size)) {
        words += words_on(page).join(u' ') + u' ';
    }
    words = words.simplified().remove(u' ');
    for (const CardContent& card : cards) {
        for (QString text : all_words(card)) {
            const QString bare = text.simplified().remove(u' ').remove(QChar(0x00A0));
            EXPECT_TRUE(QString(words).remove(QChar(0x00A0)).contains(bare)) << text.toStdString();
        }
    }
}

TEST_P(CardLayout, TypeIsNeverSmallerThanSevenPoints) {
    const auto cards = cards_of(sample(GetParam().sample).session, GetParam().units);
    for (const Page& page : card_pages(cards, GetParam().size)) {
        for (const SheetItem& item : page.items) {
            if (const auto* text = std::get_if<TextItem>(&item)) {
                EXPECT_GE(text->points, 7.0) << text->lines.front().text.toStdString();
            }
        }
    }
}

std::vector<Case> cases() {
    std::vector<Case> all;
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning", "finished-dive"}) {
        for (const CardSize size : {CardSize::a6_on_a4, CardSize::quarter_letter}) {
            for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
                all.push_back({name, size, units});
            }
        }
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(All, CardLayout, ::testing::ValuesIn(cases()), [](const auto& one) {
    std::string name = one.param.sample;
    std::erase(name, '-');
    name += one.param.size == CardSize::a6_on_a4 ? "A6" : "Letter";
    return name + (one.param.units == UnitSystem::metric ? "Metric" : "Imperial");
});

TEST(CardLayoutOfMany, TwelveGuestsWithLongNamesFit) {
    Session session = sample("salt-cove").session;
    const Guest pattern = session.guests.front();
    session.guests.clear();
    for (int i = 0; i < 12; ++i) {
        Guest guest = pattern;
        guest.id = GuestId("guest-" + std::to_string(i + 1));
        guest.name = std::string(static_cast<std::size_t>(10 * (i + 1)), i % 2 == 0 ? 'W' : 'i');
        guest.kit.suit = "7 mm two-piece with hood and gloves, size XXL long";
        session.guests.push_back(guest);
    }
    session.site.meeting_place = std::string(120, 'M');
    session.site.emergency_line = "+00 555 0100 then ask for the duty officer, channel 16";
    for (const CardSize size : {CardSize::a6_on_a4, CardSize::quarter_letter}) {
        const auto pages = card_pages(cards_of(session, UnitSystem::metric), size);
        EXPECT_EQ(pages.size(), 3U);
        for (const Page& page : pages) EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
    }
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
            const auto cards = cards_of(crowded_session(), units);
            const auto pages = card_pages(cards, size);
            ASSERT_EQ(pages.size(), 1U);
            EXPECT_EQ(faults(pages.front()).join(u'\n').toStdString(), "");
            const QString shown = words_on(pages.front()).join(QString()).remove(u' ');
            QStringList needed{cards.front().breath_rule, cards.front().breath_reason,
                               cards.front().watch.text, cards.front().after.text,
                               cards.front().emergency_line, cards.front().lead.value};
            for (const CardAdvice& advice : cards.front().advice) needed << advice.text;
            for (const CardFigure& figure : cards.front().figures) {
                needed << figure.label + figure.number + figure.unit + figure.action;
            }
            for (QString text : needed) {
                EXPECT_TRUE(shown.contains(text.remove(u' '))) << text.toStdString();
            }
        }
    }
}

TEST(CardLayoutOfMany, ACutCardHasNoStrayLines) {
    for (const CardSize size : {CardSize::a6_on_a4, CardSize::quarter_letter}) {
        const QSizeF card = card_size(size);
        const auto pages =
            card_pages(cards_of(sample("salt-cove").session, UnitSystem::metric), size);
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
        EXPECT_EQ(marks, 6);
    }
}

TEST(CardLayoutOfMany, TheFinderOfFaultsFindsThem) {
    std::vector<Page> pages =
        card_pages(cards_of(sample("salt-cove").session, UnitSystem::metric), CardSize::a6_on_a4);
    TextItem stray;
    stray.points = 10.0;
    stray.lines = {{QStringLiteral("stray"), 103.0, 60.0, 0}};  // over the edge of the first card
    pages.front().items.push_back(stray);
    EXPECT_NE(faults(pages.front()).join(u' ').indexOf(QStringLiteral("outside: stray")), -1);
    for (SheetItem& item : pages.front().items) {
        auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || text->lines.empty()) continue;
        TextItem twice = *text;
        twice.lines.front().text = QStringLiteral("twice");
        pages.front().items.push_back(twice);
        break;
    }
    EXPECT_NE(faults(pages.front()).join(u' ').indexOf(QStringLiteral("overlap: twice")), -1);
}

TEST(CardLayoutOfMany, NoGuestsMakeNoPages) {
    EXPECT_TRUE(card_pages({}, CardSize::a6_on_a4).empty());
}

TEST(CardContentTest, RoundsEveryFigureToTheSafeSide) {
    Session session = sample("salt-cove").session;
    for (ProfilePoint& point : session.profile.points) {
        point.depth = Depth(point.depth.meters() * 0.97);
    }
    const Result<Plan> planned = plan(session, rules());
    ASSERT_TRUE(planned.has_value());
    const Guest& guest = session.guests.front();
    const GuestGas* gas = find_gas(*planned, guest.id);
    const CardContent card = card_content(session, *planned, guest, UnitSystem::metric);
    bool low_found = false;
    for (const CardFigure& figure : card.figures) {
        if (!figure.strong) continue;
        low_found = true;
        EXPECT_GE(figure.number.toDouble(), gas->signal_pressure.value() - 1e-6);
    }
    EXPECT_TRUE(low_found);
    // No deeper than planned, whatever the rounding.
    bool depth_found = false;
    for (const CardFigure& figure : card.figures) {
        if (figure.unit != u"m") continue;
        depth_found = true;
        EXPECT_LE(figure.number.toDouble(), deepest(session.profile).meters().value());
    }
    EXPECT_TRUE(depth_found);
}

/// The figures of the first guest, "label number unit", for gas as given.
QStringList figures_with(const Bars& start, const Bars& turn, const Bars& signal,
                         UnitSystem units) {
    const Session session = sample("salt-cove").session;
    Plan planned = plan(session, rules()).value_or({});
    GuestGas& gas = planned.guests.front();
    gas.start_pressure = start;
    gas.turn_pressure = turn;
    gas.signal_pressure = signal;
    QStringList figures;
    const CardContent card = card_content(session, planned, session.guests.front(), units);
    for (const CardFigure& figure : card.figures) {
        figures << QStringList{figure.label, figure.number, figure.unit}.join(u' ');
    }
    return figures;
}

TEST(CardContentTest, PressuresAreRoundedUpAsTheirGaugeIsRead) {
    EXPECT_THAT(figures_with(Bars(200.0), Bars(121.0), Bars(60.0), UnitSystem::metric),
                ::testing::IsSupersetOf({QStringLiteral("Half your air 130 bar"),
                                         QStringLiteral("Low on air 60 bar")}));
    // 121 bar are 1755 psi, 60 bar are 870 psi.
    EXPECT_THAT(figures_with(Bars(200.0), Bars(121.0), Bars(60.0), UnitSystem::imperial),
                ::testing::IsSupersetOf({QStringLiteral("Half your air 1800 psi"),
                                         QStringLiteral("Low on air 900 psi")}));
}

TEST(CardContentTest, AHalfThatHelpsNobodyIsLeftOut) {
    EXPECT_EQ(figures_with(Bars(200.0), Bars(130.0), Bars(60.0), UnitSystem::metric).size(), 4);
    EXPECT_EQ(figures_with(Bars(200.0), Bars(58.0), Bars(60.0), UnitSystem::metric).size(), 3);
    EXPECT_EQ(figures_with(Bars(90.0), Bars(95.0), Bars(60.0), UnitSystem::metric).size(), 3);
}

TEST(CardContentTest, WithoutACylinderThePressureIsFilledInByHand) {
    Session session = sample("salt-cove").session;
    session.guests.front().kit.cylinder.reset();
    const CardContent card = cards_of(session, UnitSystem::metric).front();
    EXPECT_TRUE(card.cylinder.value.isEmpty());
    ASSERT_EQ(card.figures.size(), 3U);
    EXPECT_TRUE(card.figures.front().strong);
    EXPECT_TRUE(card.figures.front().number.isEmpty());
    EXPECT_EQ(card.figures.front().unit, u"bar");
    const Page page = card_pages({card}, CardSize::a6_on_a4).front();
    EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
}

TEST(CardContentTest, ImperialCardsHoldNoMetricUnit) {
    const QRegularExpression metric(
        QStringLiteral("[0-9][\\s\u00a0](m|cm|kg|bar|L|°C)(?![A-Za-z])"));
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning"}) {
        const Session session = sample(name).session;
        for (const CardContent& card : cards_of(session, UnitSystem::imperial)) {
            EXPECT_FALSE(all_words(card).join(u' ').contains(metric)) << name;
        }
        // The pattern does find them where they are.
        EXPECT_TRUE(all_words(cards_of(session, UnitSystem::metric).front())
                        .join(u' ')
                        .contains(metric));
    }
}

TEST(CardContentTest, HoldsNothingPrivate) {
    Session session = sample("salt-cove").session;
    Guest& guest = session.guests.front();
    guest.note = "SECRETNOTE";
    guest.birth_date = Date{std::chrono::year(1987), std::chrono::month(11), std::chrono::day(23)};
    guest.body_mass = Kilograms(137.0);
    guest.body_height = Meters(1.93);
    guest.screening.outcome = ScreeningOutcome::physician_required;
    guest.screening.physician_approval_seen = true;
    session.overrules.push_back({"screening_physician:" + guest.id.text, "SECRETREASON", "Me"});
    const QString words =
        all_words(cards_of(session, UnitSystem::metric).front()).join(u' ');
    for (const char* secret : {"SECRETNOTE", "1987", "137", "193", "SECRETREASON", "hysician"}) {
        EXPECT_FALSE(words.contains(QString::fromUtf8(secret))) << secret;
    }
}

TEST(CardContentTest, SaysWhatEveryCardMustSay) {
    const QString words =
        all_words(cards_of(sample("salt-cove").session, UnitSystem::metric).front()).join(u' ');
    for (const char* must : {"Never hold your breath", "Ears", "24", "Up, not", "Low on air",
                             "Out of air", "instructor decides", "no shame"}) {
        EXPECT_TRUE(words.contains(QString::fromUtf8(must))) << must << "\n" << words.toStdString();
    }
}

TEST(CardContentTest, StaysShort) {
    for (const CardContent& card :
         cards_of(sample("harbour-morning").session, UnitSystem::metric)) {
        const QString words = all_words(card).join(u' ').simplified();
        EXPECT_LE(words.split(u' ').size(), 260) << words.toStdString();
    }
}

TEST(CardSelectionTest, AStopRefusesTheCardUntilItIsOverruled) {
    Session session = sample("salt-cove").session;
    Guest& guest = session.guests.front();
    guest.screening.outcome = ScreeningOutcome::unanswered;
    CardSelection selection = select_cards(session, *plan(session, rules()), UnitSystem::metric);
    EXPECT_THAT(selection.blocked, Contains(guest.id));
    EXPECT_EQ(selection.cards.size(), session.guests.size() - 1);
    session.overrules.push_back(
        {"screening_unanswered:" + guest.id.text, "Asked aloud, all no", "Instructor"});
    selection = select_cards(session, *plan(session, rules()), UnitSystem::metric);
    EXPECT_THAT(selection.blocked, Not(Contains(guest.id)));
    EXPECT_EQ(selection.cards.size(), session.guests.size());
}

TEST(CardSelectionTest, AStopOnTheSessionRefusesEveryCard) {
    Session session = sample("salt-cove").session;
    session.site.emergency_line.clear();
    const CardSelection selection =
        select_cards(session, *plan(session, rules()), UnitSystem::metric);
    EXPECT_TRUE(selection.cards.empty());
    EXPECT_EQ(selection.blocked.size(), session.guests.size());
}

}  // namespace
}  // namespace leadline::testing
