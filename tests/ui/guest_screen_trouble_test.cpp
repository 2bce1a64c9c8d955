// SPDX-License-Identifier: GPL-3.0-or-later
// The guest screen with what people paste, and with a session that changes under it.
#include <gmock/gmock.h>

#include <QUndoStack>
#include <algorithm>

#include "guest_screen_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class GuestScreenTrouble : public GuestScreenTest {
protected:
    void change(const std::function<void(Session&)>& change) {
        ASSERT_TRUE(document_.edit(QStringLiteral("x"), change).has_value());
    }
    /// Tells the present signal right.
    void tell() {
        const auto& choices = check()->check()->choices();
        const auto right = std::find(choices.begin(), choices.end(), check()->check()->question());
        check()->answer(static_cast<int>(right - choices.begin()));
    }
    void tell_all() {
        while (!check()->check()->done()) tell();
    }
};

TEST_F(GuestScreenTrouble, AMarkThatTurnsTextAroundReachesNoPage) {
    show("mountain-lake");
    change([](Session& session) {
        session.site.emergency_line = "\u202E112 \u2069\u202E911";
        session.site.meeting_place = "Hut\u0007 \u202E7";
        session.site.name = "\u2067Lake";
        session.groups.front().name = "\u202EBlue 1";
        for (Guest& guest : session.guests) {
            guest.name = "\u202E" + guest.name;
            guest.kit.suit = "\u202E7 mm";
        }
        for (StaffMember& member : session.staff) member.name += "\u202E 2";
    });
    control().set_guest(document_.session().guests.front().id);
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        control().go_to(static_cast<int>(k));
        for (const QString& words : shown_words()) {
            for (const QChar letter : words) {
                const bool turns = letter.unicode() >= 0x202A && letter.unicode() <= 0x202E;
                EXPECT_FALSE(turns || letter == QChar(0x0007)) << words.toStdString();
            }
            EXPECT_LE(words.count(QChar(0x2069)), words.count(QChar(0x2068)) +
                                                      words.count(QChar(0x2066)))
                << "what is closed was opened: " << words.toStdString();
        }
    }
}

TEST_F(GuestScreenTrouble, TheNumberToCallKeepsItsOrderBehindArabicWords) {
    // In such a line groups of digits would stand from right to left: Unicode Standard Annex 9, W2.
    const QString shown = typed_text("الطوارئ +00 (0)555 010-0200");
    EXPECT_TRUE(shown.contains(QChar(0x2066) + QStringLiteral("+00 (0)555 010-0200") + QChar(0x2069)))
        << shown.toStdString();
}

TEST_F(GuestScreenTrouble, EarsAreFineAtTheSurfaceOfAnyWater) {
    show("mountain-lake");
    go_to(ScreenPage::ears);
    ASSERT_EQ(ears()->trial().feeling, EarFeeling::fine);
    // From a mountain lake to the sea: the air above weighs more there, but nobody went down.
    change([](Session& session) { session.site.altitude = Altitude(Meters(0.0)); });
    EXPECT_NEAR(ears()->trial().difference.value(), 0.0, 1e-6);
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::fine);
    EXPECT_FALSE(ears()->trial().locked);
    EXPECT_THAT(text_of_page(), HasSubstr("Fine"));
    // And back, with ears that were not cleared: what presses on them is the water alone.
    ears()->move_to(0.5);
    const double pressed = ears()->trial().difference.value();
    ASSERT_GT(pressed, 0.0);
    change([](Session& session) { session.site.altitude = Altitude(Meters(2000.0)); });
    EXPECT_NEAR(ears()->trial().difference.value(), pressed, 0.01 * pressed);
}

TEST_F(GuestScreenTrouble, AnotherSessionsGuestsStartAtTheSurface) {
    show("mountain-lake");
    go_to(ScreenPage::ears);
    ears()->move_to(2.0);
    ASSERT_TRUE(ears()->trial().locked);
    open("salt-cove");
    go_to(ScreenPage::ears);
    EXPECT_EQ(ears()->trial().depth, Depth());
    EXPECT_EQ(ears()->trial().feeling, EarFeeling::fine);
}

TEST_F(GuestScreenTrouble, NotesThatAreTakenBackEndTheCheck) {
    show("mountain-lake");
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    for (int k = 0; k < 4; ++k) tell();
    document_.undo_stack()->undo();
    EXPECT_FALSE(check()->check()) << "four of them would never be asked";
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 0 of 9"));
    press(Qt::Key_Return);
    tell_all();
    EXPECT_THAT(text_of_page(), HasSubstr("You know them all"));
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 9 of 9"));
    document_.undo_stack()->undo();
    EXPECT_THAT(text_of_page(), HasSubstr("Known: 0 of 9"));
    EXPECT_THAT(text_of_page(), Not(HasSubstr("You know them all")));
    // What has nothing to do with it leaves a check alone.
    press(Qt::Key_Return);
    tell();
    change([](Session& session) { session.guests[1].name = "Ida"; });
    EXPECT_TRUE(check()->check());
    document_.undo_stack()->undo();
    EXPECT_TRUE(check()->check());
}

TEST_F(GuestScreenTrouble, ClosesWhileItRunsAndWhileAnAnswerIsOnItsWay) {
    show("mountain-lake");
    control().set_seconds(least_page_seconds);
    control().set_running(true);
    go_to(ScreenPage::signal_check);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    tell();
    screen_->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(screen_.isNull()) << "gone, its timer too";
    // The session lives on without it.
    change([](Session& session) { session.guests.clear(); });
    document_.undo_stack()->undo();
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.session().guests.front().briefing, BriefingCheck{});
}

TEST_F(GuestScreenTrouble, StartsInTheLanguageThatAllRead) {
    show("mountain-lake");
    const auto starts_in = [&](std::vector<std::string> tags) {
        change([&](Session& session) {
            for (std::size_t k = 0; k < session.guests.size(); ++k) {
                session.guests[k].language = tags[k % tags.size()];
            }
        });
        show("mountain-lake");  // another guest screen over the same session
        return control().tongue().language().tag;
    };
    EXPECT_EQ(starts_in({"de"}), "de");
    EXPECT_EQ(starts_in({"de-AT", "DE"}), "de");
    EXPECT_EQ(starts_in({"de", "it"}), "en");
    EXPECT_EQ(starts_in({"de", "tlh"}), "en");
    EXPECT_EQ(starts_in({"tlh"}), "en");
    EXPECT_EQ(starts_in({""}), "en");
}

TEST_F(GuestScreenTrouble, WithoutItsGroupItIsForEverybody) {
    show("harbour-morning");
    control().set_group(document_.session().groups.back().id);
    change([](Session& session) {
        const GroupId gone = session.groups.back().id;
        session.groups.pop_back();
        for (Guest& guest : session.guests) {
            if (guest.group == gone) guest.group = {};
        }
    });
    EXPECT_EQ(control().group(), GroupId());
    EXPECT_EQ(control().guests().size(), document_.session().guests.size());
}

TEST(GuestFiguresTrouble, TheDiverIsNeverShownDeeperThanItIs) {
    const GuestFigures feet(GuestTongue::of("en"), UnitSystem::imperial);
    EXPECT_TRUE(feet.depth_now(Depth(Meters(11.8))).contains(u"38"_qs)) << "38.7 ft";
    const GuestFigures metres(GuestTongue::of("en"), UnitSystem::metric);
    EXPECT_TRUE(metres.depth_now(Depth(Meters(7.99))).contains(u"7.9"_qs));
}

TEST_F(GuestScreenTrouble, ABlankScreenTurnsNoPages) {
    show("mountain-lake");
    control().set_running(true);
    ASSERT_TRUE(control().is_running());
    press(Qt::Key_B);
    EXPECT_FALSE(control().is_running());
    EXPECT_EQ(control().time_left(), -1);
}

TEST_F(GuestScreenTrouble, WhoDoesSomethingGetsTheWholeTimeOfAPage) {
    show("mountain-lake");
    control().set_seconds(most_page_seconds);
    control().set_running(true);
    EXPECT_GT(control().time_left(), 500'000);
    // The time starts anew, now a shorter one.
    control().set_seconds(least_page_seconds);
    EXPECT_GT(control().time_left(), 0);
    EXPECT_LT(control().time_left(), 10'000);
}

TEST_F(GuestScreenTrouble, KeepsTheDiverWhenTheLanguageChangesInMidDrag) {
    show("mountain-lake");
    go_to(ScreenPage::breathe);
    WaterScene* scene = breath()->scene();
    QTest::mousePress(scene, Qt::LeftButton, {}, QPoint(scene->width() / 2, qRound(scene->y_of(2.0))));
    for (const char* tag : {"ar", "ja", "en"}) {
        control().set_language(tag);
        EXPECT_NEAR(breath()->demo().depth.meters().value(), 2.0, 0.05) << tag;
        const QPointF to(scene->width() / 2.0, scene->y_of(3.0));
        QMouseEvent move(QEvent::MouseMove, to, scene->mapToGlobal(to), Qt::NoButton,
                         Qt::LeftButton, {});
        QApplication::sendEvent(scene, &move);
        EXPECT_NEAR(breath()->demo().depth.meters().value(), 3.0, 0.02) << tag;
        breath()->move_to(2.0);
    }
    QTest::mouseRelease(scene, Qt::LeftButton, {}, QPoint(1, 1));
}

TEST_F(GuestScreenTrouble, FortyGuestsWithLongNamesAndNoneAtAll) {
    show("mountain-lake");
    change([](Session& session) {
        const Guest one = session.guests.front();
        session.guests.clear();
        for (int k = 1; k <= 40; ++k) {
            Guest guest = one;
            guest.id = GuestId("guest-" + std::to_string(k));
            guest.name = std::string(100, 'W') + " N" + std::to_string(k);
            session.guests.push_back(guest);
        }
    });
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        control().go_to(static_cast<int>(k));
        EXPECT_EQ(screen_->view()->cut_off_words().join(u'\n').toStdString(), "") << k;
    }
    change([](Session& session) { session.guests.clear(); });
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        control().go_to(static_cast<int>(k));
        EXPECT_EQ(screen_->view()->cut_off_words().join(u'\n').toStdString(), "") << k;
    }
}

TEST(GuestFirstNamesTrouble, AreCutBetweenLetters) {
    std::vector<Guest> guests(2);
    for (int k = 0; k < 30; ++k) guests[0].name += "🌊";
    guests[1].name = guests[0].name + " 🌊🌊";
    for (const QString& name : first_names({&guests[0], &guests[1]})) {
        EXPECT_TRUE(name.isValidUtf16()) << name.toStdString();
        EXPECT_LE(name.size(), 60);
    }
}

TEST_F(GuestScreenTrouble, AGuestWithoutANameCanBePicked) {
    show("mountain-lake");
    change([](Session& session) { session.guests.front().name = " \u202E "; });
    go_to(ScreenPage::kit);
    const auto* button = child<QPushButton>(*screen_->view(), "guest_0");
    EXPECT_FALSE(button->text().trimmed().isEmpty());
}

}  // namespace
}  // namespace leadline::testing
