// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAction>
#include <QFile>
#include <QMenu>
#include <QSignalSpy>
#include <QUndoStack>
#include <algorithm>
#include <ctime>
#include <map>
#include <set>

#include "guest_screen_fixture.h"
#include "ui/document/place_water.h"
#include "ui/guest_screen/place_scene.h"
#include "ui/guest_words/guest_measures.h"
#include "ui/guest_words/line_ends.h"
#include "ui/guest_words/signal_words.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class GuestScreenFlow : public GuestScreenTest {
protected:
    /// Tells the signal that is asked, by its number key.
    void tell(bool right) {
        ASSERT_TRUE(check()->check() && check()->check()->question());
        const auto& choices = check()->check()->choices();
        for (int k = 0; k < signal_choice_count; ++k) {
            const bool is_right =
                choices.at(static_cast<std::size_t>(k)) == check()->check()->question();
            if (is_right == right) return press(static_cast<Qt::Key>(Qt::Key_1 + k));
        }
    }
};

TEST_F(GuestScreenFlow, IsGoneThroughByKeyboardAlone) {
    show("mountain-lake");
    EXPECT_THAT(text_of_page(), HasSubstr("Jakob, Chiara, Lena"));
    EXPECT_THAT(text_of_page(), HasSubstr("no deeper than 5"));
    EXPECT_THAT(text_of_page(), HasSubstr("Boathouse"));
    press(Qt::Key_PageDown);
    ASSERT_EQ(control().stop().page, ScreenPage::kit);
    EXPECT_THAT(text_of_page(), Not(HasSubstr("7 mm")));
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_EQ(control().guest()->id, GuestId("guest-2"));
    EXPECT_THAT(text_of_page(), HasSubstr("7 mm M, hood"));
    EXPECT_THAT(text_of_page(), HasSubstr("10"));
    press(Qt::Key_Space);
    ASSERT_EQ(control().stop().page, ScreenPage::breathe);
    for (int k = 0; k < 30; ++k) press(Qt::Key_Down);
    EXPECT_DOUBLE_EQ(breath()->demo().depth.meters().value(), 5.0);
    press(Qt::Key_Up);
    EXPECT_DOUBLE_EQ(breath()->demo().depth.meters().value(), 4.5);
    press(Qt::Key_Right);
    ASSERT_EQ(control().stop().page, ScreenPage::ears);
    for (int k = 0; k < 15; ++k) press(Qt::Key_Down);
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::locked);
    press(Qt::Key_C);
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::locked);
    EXPECT_THAT(text_of_page(), HasSubstr("Go up a bit first"));
    for (int k = 0; k < 15; ++k) press(Qt::Key_Up);
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::fine);
    for (int k = 0; k < 4; ++k) press(Qt::Key_Down);
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::discomfort);
    press(Qt::Key_Return);
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::fine);
    EXPECT_THAT(text_of_page(), HasSubstr("The drum is flat"));
    press(Qt::Key_PageDown);
    std::string all_signals;
    for (; control().stop().page == ScreenPage::hand_signals; press(Qt::Key_PageDown)) {
        all_signals += text_of_page();
    }
    for (int k = 0; k < hand_signal_count; ++k) {
        EXPECT_THAT(
            all_signals,
            HasSubstr(
                signal_making(static_cast<HandSignal>(k), GuestTongue::of("en")).toStdString()));
    }
    ASSERT_EQ(control().stop().page, ScreenPage::numbers);
    press(Qt::Key_PageDown);
    ASSERT_EQ(control().stop().page, ScreenPage::signal_check);
    EXPECT_EQ(control().guest(), nullptr) << "the pages between were everybody's";
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    tell(false);
    EXPECT_THAT(text_of_page(), HasSubstr("Not quite"));
    EXPECT_TRUE(control().guest()->briefing.understood.empty());
    for (int k = 0; k < 9; ++k) tell(true);
    EXPECT_THAT(text_of_page(), HasSubstr("You know them all"));
    EXPECT_EQ(control().guest()->briefing.understood, signals_to_know());
    press(Qt::Key_PageDown);
    ASSERT_EQ(control().stop().page, ScreenPage::skills);
    press(Qt::Key_PageDown);
    ASSERT_EQ(control().stop().page, ScreenPage::ends);
    press(Qt::Key_PageDown);
    ASSERT_EQ(control().stop().page, ScreenPage::afterwards);
    EXPECT_THAT(text_of_page(), HasSubstr("+00 555 0118"));
    press(Qt::Key_PageDown);
    EXPECT_EQ(control().stop().page, ScreenPage::afterwards);
    press(Qt::Key_Home);
    EXPECT_EQ(control().index(), 0);
    press(Qt::Key_PageUp);
    EXPECT_EQ(control().index(), 0);
    press(Qt::Key_End);
    EXPECT_EQ(control().stop().page, ScreenPage::afterwards);
    press(Qt::Key_Escape);
    EXPECT_TRUE(screen_ == nullptr || !screen_->isVisible());
}

TEST_F(GuestScreenFlow, KnownSignalsAreNotedWithDayAndLanguageAndUndoneAtOnce) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Return);
    EXPECT_FALSE(check()->check()) << "nobody is picked";
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    for (int k = 0; k < 9; ++k) tell(true);
    const Guest* guest = find_guest(document_.session(), GuestId("guest-1"));
    EXPECT_EQ(guest->briefing.understood.size(), 9U);
    EXPECT_EQ(guest->briefing.language, "en");
    EXPECT_EQ(guest->briefing.checked_on, control().today());
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 9 of 9"));
    EXPECT_THAT(text_of_page(), HasSubstr("5 August 2026"));
    // The next check is a step of its own.
    press(Qt::Key_Return);
    tell(true);
    EXPECT_EQ(document_.undo_stack()->count(), 1) << "nothing new was learned";
    document_.undo_stack()->undo();
    guest = find_guest(document_.session(), GuestId("guest-1"));
    EXPECT_EQ(guest->briefing, BriefingCheck{});
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 0 of 9"));
}

TEST_F(GuestScreenFlow, ACheckOfAnotherDayIsAskedAnewAndKeptUntilThen) {
    show("mountain-lake");
    BriefingCheck old;
    for (const HandSignal known : signals_to_know()) set_understood(old, known, true);
    old.checked_on = Date{std::chrono::year(2024), std::chrono::month(1), std::chrono::day(1)};
    ASSERT_TRUE(document_.edit(QStringLiteral("Old check"), [&](Session& session) {
        session.guests.front().briefing = old;
    }));
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 0 of 9"));
    EXPECT_THAT(text_of_page(), Not(HasSubstr("2024")));
    EXPECT_EQ(document_.session().guests.front().briefing, old);
    press(Qt::Key_Return);
    tell(true);
    EXPECT_EQ(document_.session().guests.front().briefing.understood.size(), 1U);
    EXPECT_EQ(document_.session().guests.front().briefing.checked_on, control().today());
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 1 of 9"));
}

TEST_F(GuestScreenFlow, ACheckIsOneStepOfUndoAndAnotherGuestsIsAnother) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    for (const int guest : {0, 1}) {
        press(Qt::Key_Down);
        press(Qt::Key_Return);
        tell(true);
        tell(true);
        EXPECT_EQ(document_.undo_stack()->count(), guest + 1);
    }
    document_.undo_stack()->undo();
    EXPECT_EQ(find_guest(document_.session(), GuestId("guest-1"))->briefing.understood.size(), 2U);
    EXPECT_TRUE(find_guest(document_.session(), GuestId("guest-2"))->briefing.understood.empty());
}

TEST_F(GuestScreenFlow, AnotherGuestStartsAnotherCheck) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(check()->check());
    press(Qt::Key_Down);
    EXPECT_FALSE(check()->check());
}

TEST_F(GuestScreenFlow, LookingChangesNothing) {
    show("mountain-lake");
    const SessionFile before = document_.file();
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        press(Qt::Key_Down);
        press(Qt::Key_Up);
        press(Qt::Key_C);
        press(Qt::Key_1);
        press(Qt::Key_PageDown);
    }
    press(Qt::Key_Escape);
    EXPECT_EQ(document_.file().session, before.session);
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(GuestScreenFlow, TheDiverIsDraggedByMouse) {
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

TEST_F(GuestScreenFlow, ShowsTheNumbersOfThePlan) {
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
    const double ratio = demo.pressure_ratio;
    go_to(ScreenPage::breathe);
    EXPECT_THAT(text_of_page(), HasSubstr("×" + QString::number(ratio, 'f', 1).toStdString() +
                                          " the pressure at the top"));
    go_to(ScreenPage::ends);
    Bars highest(0.0);
    for (const GuestGas& gas : document_.plan().guests) {
        highest = std::max(highest, gas.signal_pressure);
    }
    const double shown = std::ceil(highest.value() / 10.0 - 1e-6) * 10.0;
    EXPECT_THAT(text_of_page(), HasSubstr(QString::number(shown, 'f', 0).toStdString()));
}

TEST_F(GuestScreenFlow, EarsAreTriedWithTheButtonsToo) {
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

TEST_F(GuestScreenFlow, FollowsTheGuestsUnits) {
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

TEST_F(GuestScreenFlow, LowOnAirIsTheHighestOfTheGroupWhoeverIsPicked) {
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
            "Your gauge reads " +
            QString::number(numbers.rbegin()->first, 'f', 0).toStdString() + "\u00A0bar or less";
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
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [&](Session& session) {
                              find_guest(session, first)->kit.cylinder.reset();
                          })
                    .has_value());
    EXPECT_THAT(text_of_page(), HasSubstr("Your gauge reads"));
    EXPECT_THAT(text_of_page(), HasSubstr("Ask which number"));
}

TEST_F(GuestScreenFlow, APressedNameIsLetGoAndForgottenWhereAllRead) {
    show("mountain-lake");
    go_to(ScreenPage::kit);
    auto* name = child<QPushButton>(*screen_->view(), "guest_1");
    QTest::mouseClick(name, Qt::LeftButton);
    ASSERT_NE(control().guest(), nullptr);
    EXPECT_TRUE(name->isChecked());
    QTest::mouseClick(name, Qt::LeftButton);
    EXPECT_EQ(control().guest(), nullptr);
    EXPECT_FALSE(name->isChecked());
    QTest::mouseClick(name, Qt::LeftButton);
    press(Qt::Key_PageDown);
    EXPECT_EQ(control().guest(), nullptr);
}

TEST_F(GuestScreenFlow, ACheckEndsWithItsSessionEvenOutOfSight) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    tell(true);
    ASSERT_TRUE(check()->check());
    screen_->hide();
    open("harbour-morning");
    EXPECT_FALSE(check()->check());
    EXPECT_EQ(control().guest(), nullptr);
}

TEST_F(GuestScreenFlow, AfterTheLastAnswerTheKeyboardIsAtTheStart) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    for (int k = 0; k < 9; ++k) {
        const auto& choices = check()->check()->choices();
        const auto right = std::find(choices.begin(), choices.end(), check()->check()->question());
        const std::string name = "answer_" + std::to_string(right - choices.begin() + 1);
        auto* button = child<QPushButton>(*check(), name.c_str());
        button->setFocus();
        QTest::mouseClick(button, Qt::LeftButton);
    }
    ASSERT_TRUE(check()->check()->done());
    EXPECT_EQ(screen_->focusWidget(), child<QPushButton>(*check(), "check_start"));
}

TEST_F(GuestScreenFlow, ScaleAndNumberAgreeInFeet) {
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

TEST_F(GuestScreenFlow, TheDiverStandsClearOfTheWordsAtTheTop) {
    show("mountain-lake");
    go_to(ScreenPage::ears);
    auto* scene = child<WaterScene>(*ears(), "ear_scene");
    scene->set_depth(0.0, true);
    for (const GuestLanguage& language : guest_languages()) {
        control().set_language(language.tag);
        const std::vector<SceneWords> all = scene->words();
        const QString clear = screen_word(ScreenWord::clear_here, control().tongue());
        const auto words = std::find_if(all.begin(), all.end(), [&](const SceneWords& one) {
            return one.text == clear;
        });
        ASSERT_NE(words, all.end());
        EXPECT_FALSE(words->box.intersects(scene->diver_box())) << language.tag;
    }
}

TEST_F(GuestScreenFlow, WelcomeSaysWhenToMeetAsTheCardDoes) {
    show("mountain-lake");
    EXPECT_THAT(text_of_page(), HasSubstr("Meet\n"));
    EXPECT_THAT(text_of_page(), Not(HasSubstr("When")));
}

TEST_F(GuestScreenFlow, ShowsOthersNoMoreThanByFirstName) {
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

TEST_F(GuestScreenFlow, TurnsPagesByItselfUntilTheLast) {
    show("mountain-lake");
    control().set_seconds(20);
    QTest::mouseClick(child<QPushButton>(*screen_, "screen_run"), Qt::LeftButton);
    ASSERT_TRUE(control().is_running());
    EXPECT_EQ(child<QPushButton>(*screen_, "screen_run")->text(), QStringLiteral("Pause"));
    const int last = static_cast<int>(control().stops().size()) - 1;
    for (int k = 0; k < last; ++k) {
        EXPECT_TRUE(control().is_running()) << k;
        control().turn_page();
    }
    EXPECT_EQ(control().index(), last);
    EXPECT_FALSE(control().is_running());
    control().set_running(true);
    EXPECT_FALSE(control().is_running()) << "there is no page left to turn to";
    control().go_to(0);
    control().set_running(true);
    QTest::mouseClick(child<QPushButton>(*screen_, "screen_run"), Qt::LeftButton);
    EXPECT_FALSE(control().is_running());
}

TEST_F(GuestScreenFlow, TakesOnlySecondsThatMakeSense) {
    show("mountain-lake");
    control().set_seconds(0);
    EXPECT_EQ(control().seconds(), least_page_seconds);
    control().set_seconds(100000);
    EXPECT_EQ(control().seconds(), most_page_seconds);
}

TEST_F(GuestScreenFlow, BlanksAndComesBackWhereItWas) {
    show("mountain-lake");
    go_to(ScreenPage::ears);
    for (const Qt::Key key : {Qt::Key_B, Qt::Key_Period}) {
        press(key);
        EXPECT_TRUE(child<QWidget>(*screen_, "blank")->isVisible());
        EXPECT_EQ(child<QWidget>(*screen_, "blank")->geometry(), screen_->rect());
        press(Qt::Key_PageDown);
        EXPECT_FALSE(child<QWidget>(*screen_, "blank")->isVisible());
        EXPECT_EQ(control().stop().page, ScreenPage::ears);
    }
    press(Qt::Key_B);
    QTest::mouseClick(child<QWidget>(*screen_, "blank"), Qt::LeftButton);
    EXPECT_FALSE(control().is_blank()) << "without a keyboard too";
    EXPECT_EQ(control().stop().page, ScreenPage::ears);
}

TEST_F(GuestScreenFlow, CalmStatesJumpAndOthersGlide) {
    show("mountain-lake");
    go_to(ScreenPage::breathe);
    breath()->move_to(4.0);
    EXPECT_DOUBLE_EQ(breath()->scene()->shown_depth(), 4.0);
    control().set_calm(false);
    breath()->move_to(1.0);
    EXPECT_DOUBLE_EQ(breath()->scene()->depth(), 1.0);
    EXPECT_GT(breath()->scene()->shown_depth(), 1.0) << "still on the way";
    EXPECT_DOUBLE_EQ(breath()->demo().depth.meters().value(), 1.0) << "numbers do not wait";
}

TEST_F(GuestScreenFlow, ReadsFromRightToLeft) {
    show("mountain-lake");
    control().direction = [] { return true; };
    Q_EMIT control().content_changed();
    EXPECT_EQ(screen_->layoutDirection(), Qt::RightToLeft);
    press(Qt::Key_Left);
    EXPECT_EQ(control().index(), 1);
    press(Qt::Key_Right);
    EXPECT_EQ(control().index(), 0);
    press(Qt::Key_PageDown);
    EXPECT_EQ(control().index(), 1) << "a presenter's keys mean what they say";
    auto* back = child<QPushButton>(*screen_, "screen_back");
    auto* next = child<QPushButton>(*screen_, "screen_next");
    EXPECT_GT(back->x(), next->x());
    // The figures of a number keep their order.
    go_to(ScreenPage::numbers);
    const auto digits = screen_->view()->findChildren<PictureView*>();
    int at = -1;
    for (const char* name : {"number-1.svg", "number-2.svg"}) {
        for (const PictureView* picture : digits) {
            if (!picture->picture().endsWith(QLatin1String(name)) || picture->width() < 60)
                continue;
            EXPECT_GT(picture->mapTo(screen_->view(), QPoint()).x(), at);
            at = picture->mapTo(screen_->view(), QPoint()).x();
            break;
        }
    }
}

TEST_F(GuestScreenFlow, ChangesLanguageByItsOwnName) {
    show("mountain-lake");
    go_to(ScreenPage::breathe);
    screen_->grab();
    QTest::mouseClick(child<QPushButton>(*screen_, "screen_language"), Qt::LeftButton);
    const QList<QAction*> offered = screen_->language_menu()->actions();
    ASSERT_EQ(offered.size(), static_cast<qsizetype>(guest_languages().size()));
    for (std::size_t k = 0; k < guest_languages().size(); ++k) {
        const GuestLanguage& language = guest_languages()[k];
        EXPECT_EQ(offered[static_cast<qsizetype>(k)]->text(), language.own_name);
        control().set_language(language.tag);
        EXPECT_EQ(screen_->layoutDirection(),
                  language.right_to_left ? Qt::RightToLeft : Qt::LeftToRight);
        const QString never =
            screen_word(ScreenWord::never_hold, GuestTongue::of(language.tag));
        const auto* label = child<QLabel>(*screen_, "never_hold");
        EXPECT_EQ(label->text(), with_good_line_ends(never));
        EXPECT_EQ(label->accessibleName(), label->text() == never ? QString() : never) << "read aloud";
        EXPECT_EQ(control().stop().page, ScreenPage::breathe);
    }
    // No entry is cut off.
    const QMenu* menu = screen_->language_menu();
    for (QAction* action : menu->actions()) {
        const int needed = menu->fontMetrics().horizontalAdvance(action->text());
        EXPECT_GE(menu->actionGeometry(action).width(),
                  needed + 4 * menu->fontMetrics().height())
            << action->text().toStdString();
    }
    screen_->language_menu()->close();
}

TEST_F(GuestScreenFlow, KeepsToItsGroup) {
    show("harbour-morning");
    ASSERT_GE(document_.session().groups.size(), 2U);
    const GroupId second = document_.session().groups[1].id;
    control().set_guest(control().guests().front()->id);
    control().set_group(second);
    EXPECT_EQ(control().guest(), nullptr) << "of another group";
    for (const Guest* guest : control().guests()) EXPECT_EQ(guest->group, second);
    control().set_group({});
    EXPECT_EQ(control().guests().size(), document_.session().guests.size());
}

TEST_F(GuestScreenFlow, FollowsTheSession) {
    show("mountain-lake");
    control().set_guest(GuestId("guest-1"));
    go_to(ScreenPage::kit);
    ASSERT_TRUE(
        document_.edit(QStringLiteral("x"), [](Session& session) { session.guests[0].kit = Kit{}; })
            .has_value());
    EXPECT_THAT(text_of_page(), HasSubstr("not chosen yet"));
    EXPECT_THAT(text_of_page(), Not(HasSubstr("7 mm")));
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) { session.guests.erase(session.guests.begin()); })
                    .has_value());
    EXPECT_EQ(control().guest(), nullptr);
    EXPECT_THAT(text_of_page(), Not(HasSubstr("Jakob")));
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) {
                              session.guests.clear();
                              session.groups.clear();
                              session.skills.clear();
                              session.site.emergency_line.clear();
                          })
                    .has_value());
    EXPECT_THAT(text_of_page(), HasSubstr("No guests yet"));
    go_to(ScreenPage::skills);
    EXPECT_THAT(text_of_page(), HasSubstr("Ask your instructor what we try"));
    go_to(ScreenPage::ends);
    EXPECT_THAT(text_of_page(), HasSubstr("Ask which number"));
    go_to(ScreenPage::afterwards);
    EXPECT_THAT(text_of_page(), HasSubstr("Ask your instructor for the number"));
}

TEST_F(GuestScreenFlow, StartsOverWithAnotherSession) {
    show("mountain-lake");
    control().set_guest(GuestId("guest-1"));
    go_to(ScreenPage::ends);
    open("harbour-morning");
    EXPECT_EQ(control().index(), 0);
    EXPECT_EQ(control().guest(), nullptr);
    EXPECT_EQ(control().group(), document_.session().groups.front().id);
    EXPECT_THAT(text_of_page(), HasSubstr("Jetty 3"));
}

TEST_F(GuestScreenFlow, LanguageAndRunHaveKeysAndTabReachesTheBar) {
    show("mountain-lake");
    press(Qt::Key_R);
    EXPECT_TRUE(control().is_running());
    press(Qt::Key_R);
    EXPECT_FALSE(control().is_running());
    press(Qt::Key_L);
    EXPECT_TRUE(screen_->language_menu()->isVisible());
    screen_->language_menu()->close();
    QSet<QString> reached;
    for (int k = 0; k < 12; ++k) {
        press(Qt::Key_Tab);
        if (screen_->focusWidget() != nullptr) reached << screen_->focusWidget()->objectName();
    }
    for (const char* name : {"screen_next", "screen_run", "screen_language", "screen_more"}) {
        EXPECT_TRUE(reached.contains(QLatin1String(name))) << name;
    }
    // Space on a button presses it; arrows still turn the pages.
    child<QPushButton>(*screen_, "screen_run")->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(control().is_running());
    press(Qt::Key_Right);
    EXPECT_EQ(control().index(), 1);
}

TEST_F(GuestScreenFlow, EveryPictureIsThere) {
    show("mountain-lake");
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        control().go_to(static_cast<int>(k));
        for (const PictureView* picture : screen_->view()->findChildren<PictureView*>()) {
            if (!picture->isVisibleTo(screen_->view())) continue;
            EXPECT_TRUE(picture->is_drawn()) << picture->picture().toStdString();
        }
    }
    for (const char* body : {"diver", "lungs", "head-pinch-nose"}) {
        EXPECT_TRUE(QFile::exists(QStringLiteral(":/leadline/body/") + QLatin1String(body) +
                                  QStringLiteral(".svg")))
            << body;
    }
}

TEST_F(GuestScreenFlow, SaysThatItIsAnAidWhereNumbersCanHurt) {
    show("mountain-lake");
    for (const ScreenPage page : {ScreenPage::welcome, ScreenPage::breathe, ScreenPage::ears,
                                  ScreenPage::ends, ScreenPage::afterwards}) {
        go_to(page);
        EXPECT_THAT(text_of_page(), HasSubstr("A planning aid. Your instructor decides."));
    }
}

TEST(GuestScreenMonitor, IsTheFirstThatIsNotTaken) {
    EXPECT_EQ(monitor_for_guests(1, 0), -1);
    EXPECT_EQ(monitor_for_guests(2, 0), 1);
    EXPECT_EQ(monitor_for_guests(2, 1), 0);
    EXPECT_EQ(monitor_for_guests(3, 0), 1);
    EXPECT_EQ(monitor_for_guests(0, -1), -1);
}

}  // namespace
}  // namespace leadline::testing
