// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QUndoStack>
#include <algorithm>

#include "guest_screen_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

using GuestScreenCheck = GuestScreenTest;

TEST_F(GuestScreenCheck, KnownSignalsAreNotedWithDayAndLanguageAndUndoneAtOnce) {
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

TEST_F(GuestScreenCheck, ACheckOfAnotherDayIsAskedAnewAndKeptUntilThen) {
    show("mountain-lake");
    BriefingCheck old;
    for (const HandSignal known : signals_to_know()) set_understood(old, known, true);
    old.checked_on = Date{std::chrono::year(2024), std::chrono::month(1), std::chrono::day(1)};
    ASSERT_TRUE(document_.edit(QStringLiteral("Old check"),
                               [&](Session& session) { session.guests.front().briefing = old; }));
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

TEST_F(GuestScreenCheck, ACheckIsOneStepOfUndoAndAnotherGuestsIsAnother) {
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

TEST_F(GuestScreenCheck, AnotherGuestStartsAnotherCheck) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_TRUE(check()->check());
    press(Qt::Key_Down);
    EXPECT_FALSE(check()->check());
}

TEST_F(GuestScreenCheck, ACheckEndsWithItsSessionEvenOutOfSight) {
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

TEST_F(GuestScreenCheck, AfterTheLastAnswerTheKeyboardIsAtTheStart) {
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

TEST_F(GuestScreenCheck, TheStartStandsInTheMiddleOfItsRoom) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    const auto* start = screen_->view()->findChild<GuestButton*>(QStringLiteral("check_start"));
    const auto* score = screen_->view()->findChild<GuestLabel*>(QStringLiteral("check_score"));
    ASSERT_TRUE(start != nullptr && start->isVisible() && score != nullptr);
    const QWidget* tile = score->parentWidget();
    const int middle = tile->mapTo(screen_->view(), tile->rect().center()).y();
    EXPECT_NEAR(start->mapTo(screen_->view(), start->rect().center()).y(), middle, 20);
}

}  // namespace
}  // namespace leadline::testing
