// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QPixmap>
#include <ctime>

#include "guest_screen_fixture.h"
#include "ui/guest_screen/screen_palette.h"

namespace leadline::testing {
namespace {

/// Windows the screen must fit: two monitors, a tablet upright, and both monitors at 150 %, where a
/// window is two thirds as many pixels wide to the program.
constexpr std::array<QSize, 6> sizes{QSize(1280, 720), QSize(1920, 1080), QSize(800, 1280),
                                     QSize(853, 480),  QSize(533, 853),   QSize(3840, 2160)};

class GuestScreenFit : public GuestScreenTest {
protected:
    /// Brings a page into the state with the most on it.
    void fill_page() {
        const ScreenPage page = control().stop().page;
        if (page == ScreenPage::breathe) breath()->move_to(100.0);
        if (page == ScreenPage::ears) {
            ears()->move_to(1.5);
            ears()->clear();
        }
        if (page == ScreenPage::signal_check) {
            check()->start();
            check()->answer(0);
            check()->answer(1);
        }
        QApplication::processEvents();
    }
    void expect_all_fits(const std::string& where, double least_em = 7.0) {
        for (std::size_t k = 0; k < control().stops().size(); ++k) {
            control().go_to(static_cast<int>(k));
            fill_page();
            const std::string place = where + ", page " + std::to_string(k + 1);
            EXPECT_TRUE(screen_->view()->fits()) << place;
            EXPECT_THAT(screen_->view()->cut_off_words(), ::testing::IsEmpty()) << place;
            EXPECT_THAT(screen_->cut_off_words(), ::testing::IsEmpty()) << place;
            EXPECT_GE(screen_->view()->em(), least_em) << place;
        }
    }
};

TEST_F(GuestScreenFit, NothingIsCutOffInAnyLanguageAndWindow) {
    for (const QSize size : sizes) {
        show("salt-cove", size);
        control().set_guest(control().guests().front()->id);
        for (const GuestLanguage& language : guest_languages()) {
            control().set_language(language.tag);
            // Body text of 24 pixels on a monitor of 1080 lines is read from 2 m.
            // Arabic stands taller on the line and takes a little less.
            const double readable = language.right_to_left ? 21.0 : 24.0;
            const double least_em = size == QSize(1920, 1080) ? readable : 8.0;
            expect_all_fits(language.tag + " at " + std::to_string(size.width()), least_em);
        }
    }
}

TEST_F(GuestScreenFit, NothingIsCutOffWithLongNamesAndManyGuests) {
    open("mountain-lake");
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) {
                              const Guest like = session.guests.front();
                              for (int k = 0; k < 8; ++k) {
                                  Guest guest = like;
                                  guest.id = next_guest_id(session);
                                  guest.name = "Maximiliana-Wilhelmina Overlangenbroeck";
                                  session.guests.push_back(guest);
                              }
                              session.site.name = std::string(70, 'w') + " bay";
                              session.site.meeting_place =
                                  "Behind the second boathouse past the harbour master’s office";
                              session.site.emergency_line = "+00 555 0118 and then channel 16";
                          })
                    .has_value());
    for (const QSize size : sizes) {
        screen_ = new GuestScreen(document_);  // keeps show() from opening the sample anew
        show("mountain-lake", size);
        control().set_group({});
        control().set_guest(GuestId("guest-5"));
        expect_all_fits("long names at " + std::to_string(size.width()));
    }
}

TEST_F(GuestScreenFit, NothingIsCutOffInBothUnitsWithEachOnesOwnNumber) {
    open("salt-cove");
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [](Session& session) {
                              Guest& first = session.guests.front();
                              first.units = UnitHabit::imperial;
                              first.kit.cylinder->type = CylinderTypeId("steel-6");
                          })
                    .has_value());
    for (const QSize size : sizes) {
        screen_ = new GuestScreen(document_);  // keeps show() from opening the sample anew
        show("salt-cove", size);
        for (const char* tag : {"en", "de", "ar"}) {
            control().set_language(tag);
            expect_all_fits(std::string(tag) + " at " + std::to_string(size.width()));
        }
    }
}

TEST_F(GuestScreenFit, TheNeverHoldLineIsTheLargest) {
    show("salt-cove", {1920, 1080});
    go_to(ScreenPage::breathe);
    const int largest = child<QLabel>(*screen_, "never_hold")->font().pixelSize();
    for (const QLabel* label : screen_->view()->findChildren<QLabel*>()) {
        if (label->objectName() == QStringLiteral("never_hold")) continue;
        EXPECT_LT(label->font().pixelSize(), largest) << label->text().toStdString();
    }
}

TEST_F(GuestScreenFit, EverythingToTapHasAName) {
    show("salt-cove");
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        control().go_to(static_cast<int>(k));
        for (const QAbstractButton* button : screen_->findChildren<QAbstractButton*>()) {
            if (!button->isVisible()) continue;
            EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty())
                << button->objectName().toStdString();
        }
        for (const WaterScene* scene : screen_->view()->findChildren<WaterScene*>()) {
            EXPECT_FALSE(scene->accessibleName().isEmpty());
            EXPECT_FALSE(scene->accessibleDescription().isEmpty());
        }
    }
}

TEST_F(GuestScreenFit, AFrameOfADragTakesLessThanFiftyMilliseconds) {
    show("salt-cove", {1920, 1080});
    control().set_calm(false);
    for (const ScreenPage page : {ScreenPage::breathe, ScreenPage::ears}) {
        go_to(page);
        QPixmap frame(screen_->size());
        screen_->render(&frame);
        constexpr int frames = 20;
        // Time of this process, not of the clock: others may be at work on the machine.
        const std::clock_t before = std::clock();
        for (int k = 0; k < frames; ++k) {
            if (page == ScreenPage::breathe) breath()->move_to(0.3 * k);
            if (page == ScreenPage::ears) ears()->move_to(0.1 * k);
            QApplication::processEvents();
            screen_->render(&frame);
        }
        const double milliseconds =
            1000.0 * static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC / frames;
        RecordProperty(page == ScreenPage::breathe ? "breathe_ms" : "ears_ms",
                       std::to_string(milliseconds));
        EXPECT_LT(milliseconds, 50.0);
    }
}

TEST_F(GuestScreenFit, AnotherPageIsThereInLessThanFiftyMilliseconds) {
    show("salt-cove", {1920, 1080});
    control().set_guest(control().guests().front()->id);
    double worst = 0.0;
    for (std::size_t k = 0; k < control().stops().size(); ++k) {
        const std::clock_t before = std::clock();
        control().go_to(static_cast<int>(k));
        QApplication::processEvents();
        worst =
            std::max(worst, 1000.0 * static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC);
    }
    RecordProperty("worst_ms", std::to_string(worst));
#if !defined(__SANITIZE_ADDRESS__)
    EXPECT_LT(worst, 50.0);
#endif
}

TEST(GuestScreenPalette, WordsReachSevenToOneOnEveryGround) {
    for (const Shade shade : {Shade::light, Shade::dark}) {
        for (const auto& [words, ground] : pairs_of_words_and_ground(screen_palette(shade))) {
            EXPECT_GE(contrast_ratio(words, ground), 7.0)
                << words.name().toStdString() << " on " << ground.name().toStdString();
        }
    }
}

TEST(GuestScreenPalette, ContrastIsThatOfTheGuidelines) {
    EXPECT_NEAR(contrast_ratio(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast_ratio(Qt::white, Qt::white), 1.0, 1e-9);
    // The grey that is known to reach just 4.5:1 on white, and the one below it that does not.
    EXPECT_GE(contrast_ratio(QColor(0x76, 0x76, 0x76), Qt::white), 4.5);
    EXPECT_LT(contrast_ratio(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
}

}  // namespace
}  // namespace leadline::testing
