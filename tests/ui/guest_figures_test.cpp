// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <algorithm>
#include <map>
#include <set>

#include "guest_screen_fixture.h"
#include "ui/guest_screen/place_scene.h"
#include "ui/guest_words/guest_measures.h"

namespace leadline::testing {
namespace {

TEST(GuestFirstNames, AreAloneUnlessTwoShareOne) {
    std::vector<Guest> guests(4);
    guests[0].name = "  Ana   Maria Prado ";
    guests[1].name = "Ben";
    guests[2].name = "Ben Ngata";
    guests[3].name = "Õnne";
    std::vector<const Guest*> pointers;
    for (const Guest& guest : guests) pointers.push_back(&guest);
    EXPECT_THAT(first_names(pointers),
                ::testing::ElementsAre(QStringLiteral("Ana"), QStringLiteral("Ben"),
                                       QStringLiteral("Ben N."), QStringLiteral("Õnne")));
    EXPECT_TRUE(first_names({}).empty());
}

TEST(GuestFirstNames, AreNeverTheSame) {
    std::vector<Guest> guests(8);
    guests[0].name = "Ben Nagel";
    guests[1].name = "Ben Nagy";
    guests[2].name = "Ben Noor";
    guests[3].name = "Ida Lund";
    guests[4].name = "Ida Maria Lund";
    guests[5].name = "Tom";
    guests[6].name = "Tom";
    guests[7].name = "Tom (1)";
    std::vector<const Guest*> pointers;
    for (const Guest& guest : guests) pointers.push_back(&guest);
    const std::vector<QString> names = first_names(pointers);
    EXPECT_EQ(std::set<QString>(names.begin(), names.end()).size(), names.size());
    EXPECT_THAT(names, ::testing::ElementsAre(
                           QStringLiteral("Ben Nage."), QStringLiteral("Ben Nagy"),
                           QStringLiteral("Ben No."), QStringLiteral("Ida Lund"),
                           QStringLiteral("Ida Maria Lund"), ::testing::_, ::testing::_,
                           ::testing::_));
}

TEST(GuestFigures, TheStepOfClearingIsThatOfTheCard) {
    for (const double step : {0.3, 0.5, 0.928, 1.0}) {
        const GuestFigures feet(GuestTongue::of("en"), UnitSystem::imperial);
        const ShownNumber shown = clearing_step_number(Meters(step), UnitSystem::imperial);
        EXPECT_LE(shown.value * 0.3048, step + 1e-6) << "rounded down";
        EXPECT_TRUE(feet.clearing_step(Meters(step))
                        .contains(QLocale::c().toString(shown.value, 'f', shown.decimals)));
    }
    EXPECT_EQ(clearing_step_number(Meters(0.5), UnitSystem::imperial).value, 1.0);
    EXPECT_EQ(clearing_step_number(Meters(0.5), UnitSystem::metric).value, 0.5);
}

TEST(GuestFigures, LongWordsMayBreakAndNothingIsLost) {
    EXPECT_TRUE(typed_text("  ").isEmpty());
    for (const char* typed :
         {"Boathouse", "Donaudampfschifffahrtsgesellschaft", "a b-c",
          "\U0001F30A\U0001F30A\U0001F30A\U0001F30A\U0001F30A\U0001F30A\U0001F30A"
          "\U0001F30A\U0001F30A\U0001F30A\U0001F30A"}) {
        QString shown = typed_text(typed);
        shown.remove(QChar(0x2068)).remove(QChar(0x2069)).remove(QChar(0x200B));
        EXPECT_EQ(shown.toStdString(), typed);
    }
    EXPECT_FALSE(typed_text("Boathouse at the pier").contains(QChar(0x200B)));
    EXPECT_TRUE(typed_text(std::string(40, 'w')).contains(QChar(0x200B)));
}

TEST(GuestFigures, RoundLimitsToTheSafeSide) {
    const GuestFigures metric(GuestTongue::of("en"), UnitSystem::metric);
    const GuestFigures imperial(GuestTongue::of("en"), UnitSystem::imperial);
    const auto plain = [](QString text) {
        return text.remove(QChar(0x2068))
            .remove(QChar(0x2069))
            .replace(QChar(0x00A0), u' ')
            .toStdString();
    };
    EXPECT_EQ(plain(metric.at_most(Meters(0.928))), "0.9 m");
    EXPECT_EQ(plain(metric.at_most(Meters(5.0))), "5 m");
    EXPECT_EQ(plain(imperial.at_most(Meters(0.928))), "3 ft");
    EXPECT_EQ(plain(imperial.at_most(Meters(0.5))), "1.5 ft");
    EXPECT_EQ(plain(imperial.at_most(Meters(8.0))), "26 ft");
    EXPECT_EQ(plain(metric.signal_at(Bars(50.0000001))), "50 bar");
    EXPECT_EQ(plain(metric.signal_at(Bars(51.0))), "60 bar");
    EXPECT_EQ(plain(imperial.signal_at(Bars(50.0))), "750 psi");
    EXPECT_EQ(plain(metric.growth(1.61)), "×1.7");
    EXPECT_EQ(plain(metric.minutes_at_most(Minutes(22.9))), "22 min");
    EXPECT_EQ(plain(metric.hours_at_least(Hours(12.1))), "13");
    EXPECT_EQ(plain(metric.share(0.5549)), "55 %");
    EXPECT_EQ(plain(metric.mass(Kilograms(3.5))), "3.5 kg");
    EXPECT_EQ(plain(imperial.mass(Kilograms(3.5))), "8 lb");
    EXPECT_EQ(plain(metric.cylinder(CylinderTypeId("steel-12"))), "12 L");
    EXPECT_EQ(plain(metric.cylinder(CylinderTypeId("none"))), "");
}
}  // namespace
}  // namespace leadline::testing
