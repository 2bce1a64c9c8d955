// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <algorithm>
#include <map>
#include <set>

#include "guest_screen_fixture.h"
#include "ui/guest_screen/place_scene.h"
#include "ui/guest_words/isolates.h"
#include "ui/guest_words/signal_words.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

using GuestScreenFigures = GuestScreenTest;

TEST_F(GuestScreenFigures, TheDiverIsDraggedByMouse) {
    show("mountain-lake");
    go_to(ScreenPage::breathe);
    WaterScene* scene = breath()->scene();
    const QPoint start(scene->width() / 2, qRound(scene->y_of(1.0)));
    const QPoint end(scene->width() / 2, qRound(scene->y_of(3.0)));
    QTest::mousePress(scene, Qt::LeftButton, {}, start);
    EXPECT_NEAR(breath()->demo().depth.meters().value(), 1.0, 0.02);
    QMouseEvent move(QEvent::MouseMove, QPointF(end), scene->mapToGlobal(QPointF(end)),
                     Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(scene, &move);
    EXPECT_NEAR(breath()->demo().depth.meters().value(), 3.0, 0.02);
    QTest::mouseRelease(scene, Qt::LeftButton, {}, end);
    // Beyond the surface and the foot of the scene the diver stays in the water.
    QTest::mousePress(scene, Qt::LeftButton, {}, QPoint(5, 0));
    EXPECT_DOUBLE_EQ(breath()->demo().depth.meters().value(), 0.0);
    QTest::mousePress(scene, Qt::LeftButton, {}, QPoint(5, scene->height() - 1));
    EXPECT_DOUBLE_EQ(breath()->demo().depth.meters().value(), 5.0);
}

TEST_F(GuestScreenFigures, ShowsTheNumbersOfThePlan) {
    show("mountain-lake");
    const Environment& place = document_.plan().environment;
    go_to(ScreenPage::breathe);
    breath()->move_to(place.deepest.meters().value());
    const BreathDemo& demo = breath()->demo();
    EXPECT_DOUBLE_EQ(demo.pressure.value(), place.bottom_pressure.value());
    EXPECT_DOUBLE_EQ(demo.held_breath_growth, place.breath_expansion_from_deepest);
    ASSERT_TRUE(demo.danger_ascent);
    EXPECT_DOUBLE_EQ(demo.danger_ascent->value(), place.breath_danger_ascent.value());
    EXPECT_DOUBLE_EQ(demo.uncleared.value(), place.ladder.uncleared_at_bottom.value());
    const std::string text = text_of_page();
    const double bar = Bars(place.bottom_pressure).value();
    EXPECT_THAT(text, HasSubstr(QString::number(bar, 'f', 2).toStdString()));
    const double growth = std::ceil(place.breath_expansion_from_deepest * 10.0 - 1e-6) / 10.0;
    EXPECT_THAT(text, HasSubstr("×" + QString::number(growth, 'f', 1).toStdString()));
    const double share = std::round(100.0 / place.breath_expansion_from_deepest);
    EXPECT_THAT(text, HasSubstr(QString::number(share, 'f', 0).toStdString()));
    go_to(ScreenPage::ears);
    const double locks = place.ladder.locks_at.meters().value();
    ears()->move_to(locks - 0.02);
    EXPECT_FALSE(ears()->trial().locked);
    ears()->move_to(locks + 0.02);
    EXPECT_TRUE(ears()->trial().locked);
    EXPECT_THAT(text_of_page(), HasSubstr("every 0.5"));
    go_to(ScreenPage::breathe);
    EXPECT_THAT(text_of_page(), HasSubstr("×" + QString::number(growth, 'f', 1).toStdString() +
                                          " the pressure at the top"));
    go_to(ScreenPage::ends);
    Bars highest(0.0);
    for (const GuestGas& gas : document_.plan().guests) {
        highest = std::max(highest, gas.signal_pressure);
    }
    const double shown = std::ceil(highest.value() / 10.0 - 1e-6) * 10.0;
    EXPECT_THAT(text_of_page(), HasSubstr(QString::number(shown, 'f', 0).toStdString()));
}

TEST_F(GuestScreenFigures, PressureAndHeldBreathAreRoundedAlikeAndNeverDown) {
    show("mountain-lake");
    go_to(ScreenPage::breathe);
    for (double depth = 0.5; depth <= 5.0; depth += 0.5) {
        breath()->move_to(depth);
        const BreathDemo& demo = breath()->demo();
        ASSERT_NEAR(demo.pressure_ratio, demo.held_breath_growth, 1e-9);
        const double up = std::ceil(demo.pressure_ratio * 10.0 - 1e-6) / 10.0;
        const std::string shown = "×" + QString::number(up, 'f', 1).toStdString();
        EXPECT_THAT(text_of_page(), HasSubstr(shown + " the pressure at the top")) << depth;
        EXPECT_THAT(child<QLabel>(*screen_, "breath_lungs")->text().toStdString(), HasSubstr(shown))
            << depth;
    }
}

TEST_F(GuestScreenFigures, EarsAreTriedWithTheButtonsToo) {
    show("salt-cove");
    go_to(ScreenPage::ears);
    auto* down = child<QPushButton>(*screen_, "ear_down");
    auto* up = child<QPushButton>(*screen_, "ear_up");
    auto* clear = child<QPushButton>(*screen_, "ear_clear");
    std::vector<EarFeeling> seen{ears()->state()->state()};
    std::vector<QString> said{ears()->state()->words()};
    for (int k = 0; k < 13; ++k) {
        QTest::mouseClick(down, Qt::LeftButton);
        if (ears()->state()->state() == seen.back()) continue;
        seen.push_back(ears()->state()->state());
        said.push_back(ears()->state()->words());
    }
    EXPECT_THAT(seen, ::testing::ElementsAre(EarFeeling::fine, EarFeeling::discomfort,
                                             EarFeeling::pain, EarFeeling::locked));
    EXPECT_EQ(std::set<QString>(said.begin(), said.end()).size(), 4U) << "each has its words";
    for (int k = 0; k < 13; ++k) QTest::mouseClick(up, Qt::LeftButton);
    for (int k = 0; k < 3; ++k) QTest::mouseClick(down, Qt::LeftButton);
    EXPECT_GT(ears()->trial().difference.value(), 0.0);
    QTest::mouseClick(clear, Qt::LeftButton);
    EXPECT_DOUBLE_EQ(ears()->trial().difference.value(), 0.0);
}

TEST_F(GuestScreenFigures, FollowsTheGuestsUnits) {
    show("mountain-lake");
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) { session.guests[0].units = UnitHabit::imperial; })
                    .has_value());
    go_to(ScreenPage::kit);
    control().set_guest(GuestId("guest-1"));
    EXPECT_EQ(control().figures().units(), UnitSystem::imperial);
    control().set_guest(GuestId("guest-2"));
    EXPECT_EQ(control().figures().units(), UnitSystem::metric);
    go_to(ScreenPage::breathe);
    breath()->move_to(5.0);
    EXPECT_THAT(text_of_page(), HasSubstr("5.0\u00A0m / 16\u00A0ft")) << "both are read";
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) {
                              for (Guest& guest : session.guests) {
                                  guest.units = UnitHabit::imperial;
                              }
                          })
                    .has_value());
    EXPECT_THAT(text_of_page(), HasSubstr("16\u00A0ft"));
    EXPECT_THAT(text_of_page(), HasSubstr("psi"));
    EXPECT_THAT(text_of_page(), Not(HasSubstr("bar")));
    go_to(ScreenPage::numbers);
    EXPECT_THAT(text_of_page(), HasSubstr("1700\u00A0psi"));
}

TEST_F(GuestScreenFigures, LowOnAirIsTheHighestOfTheGroupWhoeverIsPicked) {
    show("salt-cove");
    const std::vector<const Guest*> guests = control().guests();
    ASSERT_GE(guests.size(), 2U);
    std::map<double, GuestId> numbers;
    const auto rounded = [&](const GuestId& id) {
        return std::ceil(find_gas(document_.plan(), id)->signal_pressure.value() / 10.0 - 1e-6) *
               10.0;
    };
    // A small cylinder needs a higher reading: the numbers differ.
    const GuestId first = guests.front()->id;
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [&](Session& session) {
                              find_guest(session, first)->kit.cylinder->type =
                                  CylinderTypeId("steel-6");
                          })
                    .has_value());
    for (const Guest* guest : control().guests()) numbers[rounded(guest->id)] = guest->id;
    ASSERT_GE(numbers.size(), 2U);
    go_to(ScreenPage::signal_check);
    control().set_guest(numbers.begin()->second);
    go_to(ScreenPage::ends);
    EXPECT_EQ(control().guest(), nullptr) << "the page is read by all";
    // Whatever is picked, even on this page.
    for (const GuestId& id : {GuestId(), numbers.begin()->second}) {
        control().set_guest(id);
        const std::string sentence =
            "Your gauge reads " + QString::number(numbers.rbegin()->first, 'f', 0).toStdString() +
            "\u00A0bar or less";
        EXPECT_THAT(text_of_page(), HasSubstr(sentence));
    }
    const std::vector<QString> names = first_names(control().guests());
    for (std::size_t k = 0; k < names.size(); ++k) {
        const double number = rounded(control().guests()[k]->id);
        EXPECT_THAT(text_of_page(),
                    HasSubstr(names[k].toStdString() + ": " +
                              QString::number(number, 'f', 0).toStdString() + "\u00A0bar"));
    }
    EXPECT_THAT(text_of_page(), Not(HasSubstr("Ask which number")));
    ASSERT_TRUE(
        document_
            .edit(QStringLiteral("x"),
                  [&](Session& session) { find_guest(session, first)->kit.cylinder.reset(); })
            .has_value());
    EXPECT_THAT(text_of_page(), HasSubstr("Your gauge reads"));
    EXPECT_THAT(text_of_page(), HasSubstr("Ask which number"));
}

TEST_F(GuestScreenFigures, ScaleAndNumberAgreeInFeet) {
    show("mountain-lake");
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) {
                              for (Guest& guest : session.guests) {
                                  guest.units = UnitHabit::imperial;
                              }
                          })
                    .has_value());
    const WaterScene::Content content =
        place_scene(document_.plan().environment, control().figures(), control().tongue());
    ASSERT_GE(content.ticks.size(), 3U);
    for (std::size_t k = 1; k < content.ticks.size(); ++k) {
        const double feet = content.ticks[k].meters / 0.3048;
        EXPECT_NEAR(std::fmod(feet + 1e-6, 5.0), 0.0, 1e-5) << feet;
        EXPECT_EQ(control().figures().depth_now(Depth(Meters(content.ticks[k].meters))),
                  content.ticks[k].words);
    }
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        const GuestFigures figures(GuestTongue::of("en"), units);
        const auto number = [](QString text) {
            return text.remove(QChar(0x2068)).section(QChar(0x00A0), 0, 0).toDouble();
        };
        for (const double deepest : {3.9999, 4.98, 5.0, 7.96, 11.99}) {
            EXPECT_LE(number(figures.depth_now(Depth(Meters(deepest)))),
                      number(figures.at_most(Meters(deepest))))
                << deepest;
        }
    }
}

TEST_F(GuestScreenFigures, TheDiverStandsClearOfTheWordsAtTheTop) {
    show("mountain-lake");
    go_to(ScreenPage::ears);
    auto* scene = child<WaterScene>(*ears(), "ear_scene");
    scene->set_depth(0.0, true);
    for (const GuestLanguage& language : guest_languages()) {
        control().set_language(language.tag);
        const std::vector<SceneWords> all = scene->words();
        const QString clear = screen_word(ScreenWord::clear_here, control().tongue());
        const auto words = std::find_if(all.begin(), all.end(),
                                        [&](const SceneWords& one) { return one.text == clear; });
        ASSERT_NE(words, all.end());
        EXPECT_FALSE(words->box.intersects(scene->diver_box())) << language.tag;
    }
}

TEST_F(GuestScreenFigures, WelcomeSaysWhenToMeetAsTheCardDoes) {
    show("mountain-lake");
    EXPECT_THAT(text_of_page(), HasSubstr("Meet\n"));
    EXPECT_THAT(text_of_page(), Not(HasSubstr("When")));
}

TEST_F(GuestScreenFigures, ShowsOthersNoMoreThanByFirstName) {
    show("mountain-lake");
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) {
                              for (Guest& guest : session.guests) {
                                  guest.note = "Afraid of fish";
                                  guest.phone = "+00 555 0199";
                                  guest.body_mass = Kilograms(83.7);
                              }
                          })
                    .has_value());
    control().set_guest(GuestId("guest-1"));
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        control().go_to(static_cast<int>(k));
        const std::string text = text_of_page();
        for (const char* hidden :
             {"Castellani", "Fitzwilliam", "Oberhofer", "Afraid", "0199", "83", "Oxygen"}) {
            EXPECT_THAT(text, Not(HasSubstr(hidden))) << "page " << k;
        }
    }
}

TEST_F(GuestScreenFigures, TheHandsOfANumberStandWhereThePageBegins) {
    show("many-tongues", {1920, 1080});
    for (const char* language : {"en", "ar"}) {
        control().set_language(language);
        go_to(ScreenPage::numbers);
        const QWidget* view = screen_->view();
        std::vector<int> hands;
        QString number;
        for (const PictureView* picture : view->findChildren<PictureView*>()) {
            const bool in_tile =
                qobject_cast<const ScreenTile*>(picture->parentWidget()) != nullptr;
            if (in_tile || !picture->isVisibleTo(view) ||
                !picture->picture().contains(u"number-")) {
                continue;
            }
            hands.push_back(picture->mapTo(view, QPoint(0, 0)).x());
            number += picture->accessibleName();
        }
        ASSERT_EQ(number, QStringLiteral("120")) << language;
        // The first sign where reading begins, the others after it: as on the sheet of pictures.
        std::vector<int> arrows;
        for (const QLabel* label : view->findChildren<QLabel*>()) {
            if (!label->isVisibleTo(view) || !label->text().contains(arrow_to_next_sign)) continue;
            arrows.push_back(label->mapTo(view, label->rect().center()).x());
        }
        if (control().right_to_left()) {
            EXPECT_GT(hands.front(), view->width() / 2) << language;
            ASSERT_EQ(arrows.size(), 2U) << language;
            EXPECT_GT(hands[0], arrows[0]) << language;
            EXPECT_GT(arrows[0], hands[1]) << language;
            EXPECT_GT(hands[1], arrows[1]) << language;
            EXPECT_GT(arrows[1], hands[2]) << language;
        } else {
            EXPECT_LT(hands.front(), view->width() / 2) << language;
            EXPECT_TRUE(std::is_sorted(hands.begin(), hands.end())) << language;
            EXPECT_TRUE(arrows.empty()) << language;
        }
    }
}

TEST_F(GuestScreenFigures, EveryLineRunsTheWayThePageIsRead) {
    show("many-tongues");
    // From one direction to the other and back: the words are there before the page turns around.
    for (const char* language : {"ar", "en", "ar"}) {
        control().set_language(language);
        for (std::size_t k = 0; k < control().stops().size(); ++k) {
            control().go_to(static_cast<int>(k));
            for (const GuestLabel* label : screen_->view()->findChildren<GuestLabel*>()) {
                if (!label->isVisibleTo(screen_->view()) || label->text().isEmpty()) continue;
                EXPECT_EQ(label->text().isRightToLeft(), label->isRightToLeft())
                    << language << ", page " << k << ": " << label->text().toStdString();
                EXPECT_FALSE(label->accessibleName().contains(right_to_left_mark));
            }
        }
    }
}

}  // namespace
}  // namespace leadline::testing
