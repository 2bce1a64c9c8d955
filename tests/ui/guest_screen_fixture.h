// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QStringList>

#include "ui/guest_screen/breath_view.h"
#include "ui/guest_screen/ear_view.h"
#include "ui/guest_screen/guest_screen.h"
#include "ui/guest_screen/signal_check_view.h"
#include "ui_fixture.h"

namespace leadline::testing {

/// The guest screen over a sample, calm and with a fixed day and order of questions.
class GuestScreenTest : public DocumentTest {
protected:
    void show(const char* name, QSize size = {1280, 720}) {
        if (screen_ == nullptr) open(name);
        delete screen_.data();
        screen_ = new GuestScreen(document_);
        control().set_calm(true);
        control().today = [] {
            return Date{std::chrono::year(2026), std::chrono::month(8), std::chrono::day(5)};
        };
        check()->seed = [] { return std::uint64_t{5}; };
        screen_->resize(size);
        screen_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(screen_.data()));
    }
    void TearDown() override { delete screen_.data(); }

    GuestScreenControl& control() { return screen_->control(); }
    void go_to(ScreenPage page) {
        for (std::size_t k = 0; k < control().stops().size(); ++k) {
            if (control().stops()[k].page == page) return control().go_to(static_cast<int>(k));
        }
        FAIL() << "no such page";
    }
    BreathView* breath() { return dynamic_cast<BreathView*>(screen_->view(ScreenPage::breathe)); }
    EarView* ears() { return dynamic_cast<EarView*>(screen_->view(ScreenPage::ears)); }
    SignalCheckView* check() {
        return dynamic_cast<SignalCheckView*>(screen_->view(ScreenPage::signal_check));
    }
    void press(Qt::Key key) {
        QWidget* focused = screen_->focusWidget();
        QTest::keyClick(focused != nullptr ? focused : screen_.data(), key);
    }
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
    /// All that can be read on the page shown.
    QStringList shown_words() {
        QStringList words;
        for (const QLabel* label : screen_->view()->findChildren<QLabel*>()) {
            if (label->isVisibleTo(screen_->view())) words << label->text();
        }
        for (const QPushButton* button : screen_->view()->findChildren<QPushButton*>()) {
            if (button->isVisibleTo(screen_->view())) words << button->text();
        }
        for (const WaterScene* scene : screen_->view()->findChildren<WaterScene*>()) {
            for (const SceneWords& drawn : scene->words()) words << drawn.text;
        }
        return words;
    }
    /// The page's words as one text, without the marks that keep figures in order.
    std::string text_of_page() {
        QString text = shown_words().join(u'\n');
        text.remove(QChar(0x2066)).remove(QChar(0x2068)).remove(QChar(0x2069));
        return text.toStdString();
    }

    QPointer<GuestScreen> screen_;
};

}  // namespace leadline::testing
