// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QRegularExpression>

#include "sheet_fixture.h"
#include "ui/guest_words/signal_words.h"

namespace leadline::testing {
namespace {

using ::testing::Contains;
using ::testing::Not;

/// The card of the first guest, for a signal pressure as given.
CardContent card_with(Bars signal, UnitSystem house, UnitHabit habit = UnitHabit::house) {
    Session session = sample("salt-cove").session;
    session.guests.front().units = habit;
    Plan planned = plan(session, rules()).value_or({});
    planned.guests.front().signal_pressure = signal;
    return card_content(session, planned, session.guests.front(), house, "en");
}

TEST(CardContentTest, PressuresAreRoundedUpAsTheirGaugeIsRead) {
    const CardContent metric = card_with(Bars(50.2), UnitSystem::metric);
    EXPECT_EQ(metric.low_on_air.number, u"60");
    EXPECT_EQ(metric.low_on_air.unit, u"bar");
    EXPECT_TRUE(metric.low_on_air.as_read.isEmpty());
    // 60 bar are 870 psi.
    const CardContent imperial = card_with(Bars(60.0), UnitSystem::imperial);
    EXPECT_EQ(imperial.low_on_air.number, u"900");
    EXPECT_EQ(imperial.low_on_air.unit, u"psi");
}

TEST(CardContentTest, AGuestsOwnHabitComesFirstAndTheGaugeBeside) {
    const CardContent imperial = card_with(Bars(60.0), UnitSystem::metric, UnitHabit::imperial);
    EXPECT_EQ(imperial.low_on_air.number, u"900");
    EXPECT_EQ(imperial.low_on_air.unit, u"psi");
    EXPECT_EQ(bare(imperial.low_on_air.as_read), u"60bar");
    EXPECT_EQ(imperial.deepest.unit, u"ft");
    const CardContent metric = card_with(Bars(60.0), UnitSystem::imperial, UnitHabit::metric);
    EXPECT_EQ(metric.low_on_air.number, u"60");
    EXPECT_EQ(bare(metric.low_on_air.as_read), u"900psi");
    const CardContent same = card_with(Bars(60.0), UnitSystem::metric, UnitHabit::metric);
    EXPECT_TRUE(same.low_on_air.as_read.isEmpty());
}

TEST(CardContentTest, RoundsEveryFigureToTheSafeSide) {
    Session session = sample("salt-cove").session;
    for (ProfilePoint& point : session.profile.points) {
        point.depth = Depth(point.depth.meters() * 0.97);
    }
    const Result<Plan> planned = plan(session, rules());
    ASSERT_TRUE(planned.has_value());
    const Guest& guest = session.guests.front();
    const CardContent card = card_content(session, *planned, guest, UnitSystem::metric, "en");
    EXPECT_GE(card.low_on_air.number.toDouble(),
              find_gas(*planned, guest.id)->signal_pressure.value() - 1e-6);
    // No deeper and no longer than planned, whatever the rounding.
    EXPECT_LE(card.deepest.number.toDouble(), deepest(session.profile).meters().value());
    EXPECT_LE(card.time.number.toDouble(), duration(session.profile).value());
    EXPECT_GE(card.breath_growth.mid(1).toDouble(),
              planned->environment.breath_expansion_from_deepest - 1e-9);
}

/// A card whose plan says odd numbers, so that every rounding shows.
CardContent odd_card(UnitSystem units) {
    Session session = sample("salt-cove").session;
    Guest& guest = session.guests.front();
    guest.kit.suit = "suit";
    guest.kit.bcd = "jacket";
    guest.kit.fins = "fins";
    guest.kit.mask = "mask";
    guest.kit.regulator = "R9";
    guest.kit.lead = Kilograms(8.0);
    Plan planned = plan(session, rules()).value_or({});
    planned.environment.deepest = Depth(Meters(11.89));
    planned.environment.breath_expansion_from_deepest = 2.11;
    planned.environment.ladder.step = Meters(0.59);
    planned.limits.no_fly = Hours(12.2);
    for (GroupGas& group : planned.groups) group.ends_at = Minutes(28.9);
    return card_content(session, planned, guest, units, "en");
}

TEST(CardContentTest, TellsThePlansNumbersRoundedToTheSafeSideInBothUnits) {
    const CardContent metric = odd_card(UnitSystem::metric);
    EXPECT_EQ(metric.deepest.number, u"11.8");
    EXPECT_EQ(metric.time.number, u"28") << "when the air ends it, not the plan";
    EXPECT_EQ(metric.breath_growth, QStringLiteral("×2.2"));
    EXPECT_TRUE(bare(metric.advice.front()).contains(u"every0.5m"_qs));
    EXPECT_TRUE(bare(metric.advice.front()).contains(u"goup1m"_qs));
    EXPECT_TRUE(bare(metric.no_flying).startsWith(u"13h"_qs));
    const CardContent imperial = odd_card(UnitSystem::imperial);
    // 11.89 m are 39.009 ft; 0.59 m 1.94 ft.
    EXPECT_EQ(imperial.deepest.number, u"39");
    EXPECT_EQ(imperial.time.number, u"28");
    EXPECT_TRUE(bare(imperial.advice.front()).contains(u"every1ft"_qs));
    EXPECT_TRUE(bare(imperial.advice.front()).contains(u"goup3ft"_qs));
    Session session = sample("salt-cove").session;
    Plan planned = plan(session, rules()).value_or({});
    planned.environment.deepest = Depth(Meters(11.8));  // 38.7 ft
    EXPECT_EQ(card_content(session, planned, session.guests.front(), UnitSystem::imperial, "en")
                  .deepest.number,
              u"38");
}

TEST(CardContentTest, EachPieceOfKitStandsUnderItsOwnPicture) {
    const std::vector<std::pair<KitPart, const char*>> expected{
        {KitPart::suit, "suit"}, {KitPart::bcd, "jacket"},   {KitPart::fins, "fins"},
        {KitPart::mask, "mask"}, {KitPart::mouthpiece, "R9"}, {KitPart::weights, "8kg"},
        {KitPart::cylinder, "12L"}};
    const CardContent card = odd_card(UnitSystem::metric);
    ASSERT_EQ(card.kit.size(), expected.size());
    for (std::size_t k = 0; k < expected.size(); ++k) {
        EXPECT_EQ(card.kit[k].picture, kit_picture(expected[k].first));
        EXPECT_EQ(bare(card.kit[k].value).toStdString(), expected[k].second);
    }
    EXPECT_EQ(bare(odd_card(UnitSystem::imperial).kit[5].value), u"18lb");
}

TEST(CardContentTest, WithoutAMeetingPlaceItNamesTheSite) {
    Session session = sample("salt-cove").session;
    EXPECT_EQ(faces_of(session, UnitSystem::metric, "en").front().where, u"Blue gate above the slipway");
    session.site.meeting_place = " ";
    EXPECT_EQ(faces_of(session, UnitSystem::metric, "en").front().where, u"Salt Cove");
}

TEST(CardContentTest, WithoutACylinderThePressureIsFilledInByHand) {
    Session session = sample("salt-cove").session;
    session.guests.front().kit.cylinder.reset();
    const CardContent card = faces_of(session, UnitSystem::metric, "en").front();
    EXPECT_TRUE(card.kit.back().value.isEmpty());
    EXPECT_TRUE(card.low_on_air.number.isEmpty());
    EXPECT_EQ(card.low_on_air.unit, u"bar");
    const Page page = card_pages({card}, CardSize::a6_on_a4).front();
    EXPECT_EQ(faults(page).join(u'\n').toStdString(), "");
}

TEST(CardContentTest, ImperialCardsHoldNoMetricUnit) {
    const QRegularExpression metric(QStringLiteral("[0-9][\\s\u00a0](m|cm|kg|bar|L|°C)(?![A-Za-z])"));
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning"}) {
        const Session session = sample(name).session;
        const auto words = [&](UnitSystem units) {
            const CardContent card = faces_of(session, units, "en").front();
            const QString low = card.low_on_air.number + u' ' + card.low_on_air.unit;
            return QString(all_words(card).join(u' ') + u' ' + low);
        };
        EXPECT_FALSE(words(UnitSystem::imperial).contains(metric)) << name;
        // The pattern does find them where they are.
        EXPECT_TRUE(words(UnitSystem::metric).contains(metric)) << name;
    }
}

TEST(CardContentTest, HoldsNothingPrivate) {
    Session session = sample("harbour-morning").session;
    for (Guest& guest : session.guests) {
        guest.note = "SECRETNOTE";
        guest.phone = "+00 555 7777";
        guest.email = "SECRET@example.org";
        guest.birth_date = Date{std::chrono::year(1987), std::chrono::month(11), std::chrono::day(23)};
        guest.body_mass = Kilograms(137.0);
        guest.body_height = Meters(1.93);
    }
    session.site.emergency_plan = "SECRETPLAN";
    for (const CardContent& card : faces_of(session, UnitSystem::metric)) {
        const QString words = all_words(card).join(u' ');
        for (const char* secret : {"SECRET", "7777", "1987", "137", "193", "1.93"}) {
            EXPECT_FALSE(words.contains(QString::fromUtf8(secret))) << secret;
        }
    }
}

TEST(CardSelectionTest, AStopKeepsBackTheCardUntilItIsOverruled) {
    Session session = sample("salt-cove").session;
    Guest& guest = session.guests.front();
    guest.screening.outcome = ScreeningOutcome::unanswered;
    CardSelection selection = select_cards(session, *plan(session, rules()), UnitSystem::metric);
    EXPECT_THAT(selection.blocked, Contains(guest.id));
    EXPECT_EQ(selection.guests(), static_cast<int>(session.guests.size()) - 1);
    session.overrules.push_back(
        {"screening_unanswered:" + guest.id.text, "Asked aloud, all no", "Instructor"});
    selection = select_cards(session, *plan(session, rules()), UnitSystem::metric);
    EXPECT_THAT(selection.blocked, Not(Contains(guest.id)));
    EXPECT_EQ(selection.guests(), static_cast<int>(session.guests.size()));
}

TEST(CardSelectionTest, AStopOnTheSessionRefusesEveryCard) {
    Session session = sample("salt-cove").session;
    session.site.emergency_line.clear();
    const CardSelection selection =
        select_cards(session, *plan(session, rules()), UnitSystem::metric);
    EXPECT_TRUE(selection.cards.empty());
    EXPECT_EQ(selection.blocked.size(), session.guests.size());
}

TEST(CardSelectionTest, SaysForWhomThereAreNoWords) {
    Session session = sample("salt-cove").session;
    const Result<Plan> planned = plan(session, rules());
    ASSERT_TRUE(planned.has_value());
    session.guests[0].language = "tlh";
    session.guests[1].language = "en";
    session.guests[1].second_language = "tlh";
    session.guests[2].language = "en";
    session.guests[2].second_language = "en-GB";  // the same words: no second face
    const CardSelection selection = select_cards(session, *planned, UnitSystem::metric);
    ASSERT_EQ(selection.missing.size(), 2U);
    EXPECT_EQ(selection.missing[0], (MissingLanguage{session.guests[0].id, "tlh", false}));
    EXPECT_EQ(selection.missing[1], (MissingLanguage{session.guests[1].id, "tlh", true}));
    EXPECT_EQ(selection.cards.front().language, "en");
    EXPECT_EQ(selection.guests(), static_cast<int>(session.guests.size()));
    EXPECT_EQ(selection.cards.size(), session.guests.size());
}

TEST(GuestLanguageTest, LetterCaseMeansNothingInATag) {
    const auto found = [](const char* tag) {
        const GuestLanguage* language = find_guest_language(tag);
        return language != nullptr ? language->tag : std::string("none");
    };
    EXPECT_EQ(found("DE"), "de");
    EXPECT_EQ(found("pt-br"), "pt");
    EXPECT_EQ(found("PT_BR"), "pt");
    EXPECT_EQ(found("EN-gb"), "en");
    for (const char* simplified : {"zh", "ZH", "zh-hans", "zh-HANS", "zh-cn", "zh_CN", "zh-Hans-HK"}) {
        EXPECT_EQ(found(simplified), "zh-Hans") << simplified;
    }
    for (const char* traditional :
         {"zh-hant", "ZH-HANT", "zh-Hant", "zh-tw", "zh_TW", "zh-hk", "zh-mo", "ZH-Mo"}) {
        EXPECT_EQ(found(traditional), "none") << traditional;
    }
    for (const char* unknown : {"", "-", "tlh", "zhx"}) EXPECT_EQ(found(unknown), "none") << unknown;
}

TEST(CardSelectionTest, ASecondLanguageGivesASecondFace) {
    if (find_guest_language("fr") == nullptr) GTEST_SKIP() << "no French words are built";
    Session session = sample("salt-cove").session;
    const Result<Plan> planned = plan(session, rules());
    ASSERT_TRUE(planned.has_value());
    session.guests[0].language = "en";
    session.guests[0].second_language = "fr-CA";
    const CardSelection selection = select_cards(session, *planned, UnitSystem::metric);
    ASSERT_EQ(selection.cards.size(), session.guests.size() + 1);
    EXPECT_FALSE(selection.cards[0].second_face);
    EXPECT_TRUE(selection.cards[1].second_face);
    EXPECT_EQ(selection.cards[1].language, "fr");
    EXPECT_EQ(selection.cards[1].guest, selection.cards[0].guest);
    EXPECT_EQ(selection.guests(), static_cast<int>(session.guests.size()));
}

}  // namespace
}  // namespace leadline::testing
