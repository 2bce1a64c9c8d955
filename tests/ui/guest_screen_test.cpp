// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAction>
#include <QFile>
#include <QMenu>
#include <QUndoStack>

#include "guest_screen_fixture.h"
#include "ui/guest_words/line_ends.h"
#include "ui/guest_words/signal_words.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

using GuestScreenFlow = GuestScreenTest;

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
    // The signs of a number follow one another from where reading begins, as on the sheet.
    go_to(ScreenPage::numbers);
    const auto digits = screen_->view()->findChildren<PictureView*>();
    int at = screen_->view()->width();
    for (const char* name : {"number-1.svg", "number-2.svg"}) {
        for (const PictureView* picture : digits) {
            if (!picture->picture().endsWith(QLatin1String(name)) || picture->width() < 60)
                continue;
            EXPECT_LT(picture->mapTo(screen_->view(), QPoint()).x(), at);
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
