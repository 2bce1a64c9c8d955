// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QRegularExpression>

#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

const QChar space(0x00A0);

TEST(QuantityText, MetricAndImperialAreNeverMixed) {
    EXPECT_EQ(text(Depth(Meters(8.0)), UnitSystem::metric), QString(u"8.0" + QString(space) + u"m"));
    EXPECT_EQ(text(Depth(Meters(8.0)), UnitSystem::imperial),
              QString(u"26" + QString(space) + u"ft"));
    EXPECT_EQ(text(Kelvins(Celsius(18.0)), UnitSystem::imperial),
              QString(u"64" + QString(space) + u"°F"));
    EXPECT_EQ(text(Bars(50.0), UnitSystem::imperial), QString(u"730" + QString(space) + u"psi"));
}

TEST(QuantityText, RoundsToTheSideAskedFor) {
    EXPECT_EQ(text(Bars(50.2), UnitSystem::metric, Rounding::up),
              QString(u"51" + QString(space) + u"bar"));
    EXPECT_EQ(text(Bars(50.0000001), UnitSystem::metric, Rounding::up),
              QString(u"50" + QString(space) + u"bar"));
    EXPECT_EQ(text(Depth(Meters(7.99)), UnitSystem::metric, Rounding::down),
              QString(u"7.9" + QString(space) + u"m"));
}

TEST(QuantityText, MinutesAreHalvesInPlansAndWholeInEstimates) {
    EXPECT_EQ(text(Minutes(31.5)), QString(u"31.5" + QString(space) + u"min"));
    EXPECT_EQ(text(Minutes(31.3)), QString(u"31" + QString(space) + u"min"));
    EXPECT_EQ(text(Minutes(40.8), Rounding::down), QString(u"40" + QString(space) + u"min"));
    EXPECT_EQ(text(Minutes(31.5), Rounding::down), QString(u"31" + QString(space) + u"min"));
}

TEST(QuantityText, NeverWritesMinusZero) {
    EXPECT_EQ(text(Kelvins(Celsius(-0.01)), UnitSystem::metric),
              QString(u"0" + QString(space) + u"°C"));
}

TEST(QuantityText, HeightsInFeetCarryOverInches) {
    EXPECT_EQ(height_text(Meters(1.8288), UnitSystem::imperial).toStdString(), "6 ft 0 in");
    EXPECT_EQ(height_text(Meters(1.825), UnitSystem::imperial).toStdString(), "6 ft 0 in");
}

/// Every code, so that none stays without words when one is added.
std::vector<FindingCode> all_codes() {
    std::vector<FindingCode> codes;
    for (int i = 0; i <= static_cast<int>(FindingCode::head_count_open); ++i) {
        codes.push_back(static_cast<FindingCode>(i));
    }
    return codes;
}

TEST(FindingWordsTest, EveryCodeHasWordsForWhatAndRemedy) {
    const Session session;
    for (const FindingCode code : all_codes()) {
        Finding finding;
        finding.code = code;
        finding.values = {1, 2, 3};
        const FindingText said = words(finding, session, UnitSystem::metric);
        EXPECT_FALSE(said.what.isEmpty()) << name(code);
        EXPECT_FALSE(said.remedy.isEmpty()) << name(code);
        EXPECT_FALSE(said.what.contains(QRegularExpression(QStringLiteral("%[0-9]")))) << name(code);
    }
}

TEST(FindingWordsTest, NamesTheRuleSetItComesFrom) {
    Finding finding;
    finding.code = FindingCode::depth_over_limit;
    finding.rule_set = "House rules";
    finding.source = "common practice, no source";
    EXPECT_EQ(words(finding, {}, UnitSystem::metric).source.toStdString(),
              "House rules (common practice, no source)");
}

TEST(FindingWordsTest, PercentSignsInNamesAreHarmless) {
    Session session;
    Guest guest;
    guest.id = GuestId("g");
    guest.name = "%1 %2 100%";
    session.guests.push_back(guest);
    Finding finding;
    finding.code = FindingCode::cylinder_missing;
    finding.subject = guest.id;
    EXPECT_EQ(words(finding, session, UnitSystem::metric).about.toStdString(), "%1 %2 100%");
}

TEST(ErrorWordsTest, EveryCodeHasASentenceWithPlaceAndGiven) {
    for (int i = 0; i <= static_cast<int>(ErrorCode::not_found); ++i) {
        const Error error{static_cast<ErrorCode>(i), "PLACE", "GIVEN", "ALLOWED"};
        const QString said = words(error, QStringLiteral("FILE"));
        EXPECT_THAT(said.toStdString(), ::testing::StartsWith("FILE: ")) << i;
        EXPECT_TRUE(said.contains(QStringLiteral("PLACE")) || said.contains(QStringLiteral("GIVEN")))
            << i << said.toStdString();
        EXPECT_GT(said.size(), 25) << i;
    }
}

TEST(ErrorWordsTest, EveryCodeOfTheVaultHasASentence) {
    for (int i = static_cast<int>(ErrorCode::vault_not_set_up);
         i <= static_cast<int>(ErrorCode::keyring_failed); ++i) {
        const QString said = words({static_cast<ErrorCode>(i), "PLACE", "GIVEN", "ALLOWED"});
        EXPECT_GT(said.size(), 25) << i;
        EXPECT_TRUE(said.endsWith(u'.')) << i << said.toStdString();
    }
}

TEST(ErrorWordsTest, LongAndUnprintableTextIsCut) {
    const Error error{ErrorCode::bad_text, "/title", std::string(5000, 'x') + "\x01", "short"};
    EXPECT_LT(words(error).size(), 300);
}

TEST(NameWords, QuestionsOfTheDayEndWithAQuestionMark) {
    for (std::size_t i = 0; i < today_question_count; ++i) {
        EXPECT_TRUE(question(static_cast<TodayQuestion>(i)).endsWith(u'?'));
        EXPECT_FALSE(label(static_cast<TodayQuestion>(i)).isEmpty());
    }
}

TEST(NameWords, OutcomesOfACheckHaveLabels) {
    for (int i = 0; i < 4; ++i) {
        EXPECT_FALSE(label(static_cast<ScreeningOutcome>(i)).isEmpty()) << i;
        EXPECT_FALSE(label(static_cast<TodayOutcome>(i)).isEmpty()) << i;
    }
    for (int i = 0; i < 3; ++i) EXPECT_FALSE(label(static_cast<SignatureKind>(i)).isEmpty()) << i;
    EXPECT_EQ(edition_words("Leadline 1").toStdString(), "edition Leadline 1");
    EXPECT_EQ(edition_words(own_form_edition).toStdString(), "by the centre's own form");
    EXPECT_TRUE(edition_words({}).isEmpty());
}

TEST(FindingWordsTest, OfScreeningSayWhatToAskAndNameNoIllness) {
    Finding finding;
    finding.code = FindingCode::screening_out_of_date;
    finding.text = "2025-05-03";
    finding.values = {12};
    EXPECT_EQ(words(finding, {}, UnitSystem::metric).what.toStdString(),
              "The health check of 3 May 2025 counts for 12 months and is out of date.");
    finding.text.clear();
    EXPECT_EQ(words(finding, {}, UnitSystem::metric).what.toStdString(),
              "The day of the health check is not on record.");
    finding = {};
    finding.code = FindingCode::screening_today_flagged;
    finding.severity = Severity::stop;
    const QString stop = words(finding, {}, UnitSystem::metric).remedy;
    finding.severity = Severity::caution;
    EXPECT_NE(words(finding, {}, UnitSystem::metric).remedy, stop);
}

TEST(NameWords, LanguagesHaveNamesAndUnknownTagsStay) {
    EXPECT_EQ(language_name("de").toStdString(), "German");
    EXPECT_EQ(language_name("de-CH").toStdString(), "German");
    for (const QString& tag : common_languages()) {
        EXPECT_NE(language_name(tag.toStdString()), tag) << tag.toStdString();
    }
}

}  // namespace
}  // namespace leadline::testing
