// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <algorithm>
#include <set>

#include "sheets_support.h"
#include "ui/guest_words/guest_language.h"
#include "ui/sheet/sheets.h"
#include "ui/words/window_language.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;

Plan plan_for(const Session& session) {
    const Result<Plan> planned = plan(session, rules());
    EXPECT_TRUE(planned.has_value()) << (planned ? "" : words(planned.error()).toStdString());
    return planned.value_or({});
}

std::vector<Page> pages_of(const Session& session, SheetKind kind, Paper paper,
                           UnitSystem units = UnitSystem::metric, const char* second = "") {
    TypeSetter setter;
    SheetChoice choice;
    choice.kind = kind;
    choice.paper = paper;
    choice.second_language = second;
    return sheet_pages(choice, session, plan_for(session), units, setter);
}

struct SheetCase {
    SheetKind kind;
    Paper paper;
    UnitSystem units;
};

class SheetLayout : public ::testing::TestWithParam<SheetCase> {
protected:
    void expect_sound(const Session& session) {
        const auto pages =
            pages_of(session, GetParam().kind, GetParam().paper, GetParam().units);
        ASSERT_FALSE(pages.empty());
        for (const Page& page : pages) {
            EXPECT_EQ(page.paper, GetParam().paper);
            EXPECT_EQ(faults_of(page).join(u'\n').toStdString(), "");
        }
    }
};

TEST_P(SheetLayout, OfASampleHasNoFault) {
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning", "finished-dive"}) {
        SCOPED_TRACE(name);
        expect_sound(sample(name).session);
    }
}

TEST_P(SheetLayout, OfEightGuestsWithTheLongestTextsHasNoFault) {
    expect_sound(crowded(sample("harbour-morning").session, 8));
}

TEST_P(SheetLayout, OfFortyGuestsHasNoFault) {
    expect_sound(crowded(sample("harbour-morning").session, 40));
}

TEST_P(SheetLayout, OfNothingHasNoFault) {
    expect_sound(bare_session(sample("salt-cove").session));
}

std::vector<SheetCase> sheet_cases() {
    std::vector<SheetCase> cases;
    for (const SheetKind kind : {SheetKind::beach, SheetKind::skills, SheetKind::kit,
                                 SheetKind::emergency, SheetKind::pictures}) {
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
                cases.push_back({kind, paper, units});
            }
        }
    }
    return cases;
}

std::string case_name(const ::testing::TestParamInfo<SheetCase>& info) {
    const char* const kinds[] = {"Cards", "Beach", "Skills", "Kit", "Emergency", "Pictures"};
    std::string name = kinds[static_cast<std::size_t>(info.param.kind)];
    name += info.param.paper == Paper::a4 ? "A4" : "Letter";
    return name + (info.param.units == UnitSystem::metric ? "Metric" : "Imperial");
}

INSTANTIATE_TEST_SUITE_P(All, SheetLayout, ::testing::ValuesIn(sheet_cases()), case_name);

TEST(SheetFaults, AreFoundWhereThereAreAny) {
    auto pages = pages_of(sample("salt-cove").session, SheetKind::beach, Paper::a4);
    Page& page = pages.front();
    TextItem text;
    text.rect = QRectF(2.0, 100.0, 30.0, 5.0);
    text.points = 6.0;
    text.lines = {{QStringLiteral("stray"), 2.0, 100.0, 0, 30.0}};
    page.items.emplace_back(text);
    page.items.emplace_back(text);
    page.items.emplace_back(RectItem{QRectF(205.0, 10.0, 20.0, 5.0), 0.0, 0.2, Ink::black});
    const std::string found = faults_of(page).join(u' ').toStdString();
    EXPECT_THAT(found, HasSubstr("outside: stray"));
    EXPECT_THAT(found, HasSubstr("small: stray"));
    EXPECT_THAT(found, HasSubstr("overlap: stray"));
    EXPECT_THAT(found, HasSubstr("off the page"));
}

/// Items of the sheets of a sample with short names that end in an ellipsis.
QStringList cut_texts() {
    QStringList cut;
    for (const SheetCase& one : sheet_cases()) {
        for (const Page& page :
             pages_of(sample("salt-cove").session, one.kind, one.paper, one.units)) {
            EXPECT_EQ(faults_of(page).join(u'\n').toStdString(), "");
            for (const SheetItem& item : page.items) {
                const auto* text = std::get_if<TextItem>(&item);
                if (text == nullptr || text->lines.empty()) continue;
                if (text->elided) cut << text->lines.front().text;
                if (text->broken_word) cut << QStringLiteral("broken: ") + text->lines.front().text;
            }
        }
    }
    cut.removeDuplicates();
    return cut;
}

TEST(SheetsInEachLanguageOfTheWindow, CutAndBreakNoneOfTheirOwnWords) {
    for (const WindowLanguage& language : window_languages()) {
        speak(language.tag);
        QLocale::setDefault(QLocale(language.tag));
        EXPECT_EQ(cut_texts().join(u'\n').toStdString(), "") << language.tag.toStdString();
    }
    speak(QStringLiteral("en"));
    QLocale::setDefault(QLocale::c());
}

TEST(KitPages, CutNoNameOfTheSamples) {
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning", "finished-dive",
                             "many-tongues"}) {
        for (const Page& page : pages_of(sample(name).session, SheetKind::kit, Paper::a4)) {
            for (const SheetItem& item : page.items) {
                const auto* text = std::get_if<TextItem>(&item);
                if (text == nullptr || text->lines.empty()) continue;
                EXPECT_FALSE(text->elided) << name << ": " << text->lines.back().text.toStdString();
            }
        }
    }
}

TEST(PicturePages, AreOneWithAllNineteenSignalsAndTenNumbers) {
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const auto pages = pages_of(sample("salt-cove").session, SheetKind::pictures, paper);
        ASSERT_EQ(pages.size(), 1U);
        std::set<QString> large;
        std::set<QString> numbers;
        for (const SheetItem& item : pages.front().items) {
            const auto* picture = std::get_if<PictureItem>(&item);
            if (picture == nullptr || !picture->name.contains(u"/signals/")) continue;
            const double width = picture->rect.width();
            // Told apart from where a group stands around the page.
            if (width >= 28.0) large.insert(picture->name);
            if (width >= 14.0 && picture->name.contains(u"number-")) numbers.insert(picture->name);
        }
        EXPECT_EQ(large.size(), std::size_t{hand_signal_count});
        EXPECT_EQ(numbers.size(), 10U);
    }
}

TEST(PicturePages, KeepTheBalloonsInProportion) {
    const auto pages = pages_of(sample("salt-cove").session, SheetKind::pictures, Paper::a4);
    const Plan planned = plan_for(sample("salt-cove").session);
    std::vector<double> widths;
    for (const SheetItem& item : pages.front().items) {
        const auto* picture = std::get_if<PictureItem>(&item);
        if (picture != nullptr && picture->name.contains(u"balloon")) {
            widths.push_back(picture->rect.width());
        }
    }
    const auto& balloons = planned.environment.balloons;
    ASSERT_EQ(widths.size(), 2 * balloons.size());
    for (std::size_t i = 0; i < balloons.size(); ++i) {
        const double down = widths[i] / widths[0];
        EXPECT_NEAR(down * down * down, balloons[i].shrinks_to, 1e-6);
        const double up = widths[balloons.size() + i] / widths[balloons.size()];
        EXPECT_NEAR(up * up * up, balloons[i].swells_to, 1e-6);
    }
}

void expect_whole(const std::string& language, const std::string& second, Paper paper) {
    static TypeSetter setter;
    static const Session session = sample("salt-cove").session;
    static const Plan planned = plan_for(session);
    const SheetChoice choice{SheetKind::pictures, paper, {}, language, second};
    for (const Page& page : sheet_pages(choice, session, planned, UnitSystem::metric, setter)) {
        EXPECT_EQ(faults_of(page).join(u'\n').toStdString(), "");
        for (const SheetItem& item : page.items) {
            const auto* text = std::get_if<TextItem>(&item);
            if (text == nullptr || text->lines.empty()) continue;
            EXPECT_FALSE(text->elided) << text->lines.front().text.toStdString();
        }
    }
}

TEST(PicturePages, OfTwoLanguagesHaveNoFault) {
    // Every language beside English and beside the one that tends to be longest; right to left beside
    // left to right.
    for (const GuestLanguage& language : guest_languages()) {
        for (const char* second : {"", "en", "de", "ar"}) {
            for (const Paper paper : {Paper::a4, Paper::letter}) {
                SCOPED_TRACE(language.tag + "+" + second);
                expect_whole(language.tag, second, paper);
            }
        }
    }
}

TEST(EmergencyPages, HoldTheWholePlanHoweverLong) {
    const Session session = crowded(sample("harbour-morning").session, 1);
    const auto pages = pages_of(session, SheetKind::emergency, Paper::letter);
    const std::string words = all_words_on(pages).toStdString();
    const int steps = 1900 / 45;
    EXPECT_THAT(words, HasSubstr("Step 1:"));
    EXPECT_THAT(words, HasSubstr("Step " + std::to_string(steps) + ":"));
    for (const Page& page : pages) {
        for (const SheetItem& item : page.items) {
            const auto* text = std::get_if<TextItem>(&item);
            if (text == nullptr || text->lines.empty()) continue;
            const bool step = text->lines.front().text.startsWith(u"Step");
            EXPECT_GE(text->points, step ? 11.0 : 8.0);
        }
    }
}

TEST(KitPages, GoOnAndEndWithTheTotals) {
    const auto pages =
        pages_of(crowded(sample("harbour-morning").session, 40), SheetKind::kit, Paper::a4);
    EXPECT_GE(pages.size(), 2U);
    EXPECT_THAT(all_words_on({pages.back()}).toStdString(), HasSubstr("To pack in all"));
    const std::string words = all_words_on(pages).toStdString();
    for (int i = 1; i <= 40; ++i) {
        EXPECT_THAT(words, HasSubstr(" " + std::to_string(i) + " Maria"));
    }
}

/// Heights of the rows between the rules from edge to edge on a kit list's page.
std::vector<double> kit_row_heights(const Page& page) {
    const QRectF& frame = page.frames.front();
    const double foot = frame.bottom() - 8.0;
    std::vector<double> rules_at;
    for (const SheetItem& item : page.items) {
        const auto* rule = std::get_if<LineItem>(&item);
        if (rule == nullptr || rule->line.dx() < frame.width() - 1.0) continue;
        if (rule->width < 0.5 && rule->line.y1() < foot) rules_at.push_back(rule->line.y1());
    }
    std::vector<double> heights;
    for (std::size_t i = 1; i < rules_at.size(); ++i) {
        heights.push_back(rules_at[i] - rules_at[i - 1]);
    }
    return heights;
}

TEST(KitPages, HaveWiderRowsOnlyWhereOnePageHoldsAll) {
    const Session many = crowded(sample("harbour-morning").session, 24);
    bool wide = false;
    bool went_on = false;
    for (std::size_t guests = 1; guests <= many.guests.size(); ++guests) {
        Session session = many;
        session.guests.resize(guests);
        for (std::size_t i = 0; i < guests; ++i) {
            Guest& guest = session.guests[i];
            const std::string number = std::to_string(i + 1);
            guest.name = "Ana " + number;
            guest.kit = {};
            guest.kit.suit = number + " mm made to measure, colour " + number;
        }
        const auto pages = pages_of(session, SheetKind::kit, Paper::a4);
        std::vector<double> heights = kit_row_heights(pages.front());
        ASSERT_FALSE(heights.empty());
        heights.resize(std::min(heights.size(), guests));
        const double widest = *std::max_element(heights.begin(), heights.end());
        if (pages.size() > 1) {
            EXPECT_NEAR(widest, 9.0, 0.01) << guests;
            went_on = true;
        }
        wide = wide || widest > 10.0;
    }
    EXPECT_TRUE(wide);
    EXPECT_TRUE(went_on);
}

TEST(SheetPages, AreNoneWithoutGroups) {
    Session session = bare_session(sample("salt-cove").session);
    session.groups.clear();
    EXPECT_TRUE(pages_of(session, SheetKind::beach, Paper::a4).empty());
    EXPECT_TRUE(pages_of(session, SheetKind::skills, Paper::a4).empty());
    EXPECT_EQ(pages_of(session, SheetKind::kit, Paper::a4).size(), 1U);
    EXPECT_EQ(pages_of(session, SheetKind::emergency, Paper::a4).size(), 1U);
}

}  // namespace
}  // namespace leadline::testing
