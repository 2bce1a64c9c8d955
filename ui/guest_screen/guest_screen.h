// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/guest_screen/guest_screen_control.h"

class QMenu;
class QScreen;

namespace leadline {

class GuestButton;
class GuestLabel;
class ScreenView;
class SessionDocument;

/// The briefing for guests to look at: a window of its own with pages to go through by mouse,
/// touch, keyboard or presenter. Shows nothing that does not stand on a card, and of others than
/// the picked guest no more than the first name.
class GuestScreen : public QWidget {
    Q_OBJECT
public:
    explicit GuestScreen(SessionDocument& document, QWidget* parent = nullptr);

    [[nodiscard]] GuestScreenControl& control() { return control_; }
    /// The page that is shown.
    [[nodiscard]] ScreenView* view() const;
    [[nodiscard]] ScreenView* view(ScreenPage page) const;
    /// Shows itself: over the whole of another monitor than the one given where there is one, else
    /// in a maximised window.
    void show_beside(const QScreen* taken);
    /// The words of the bar at the foot that are cut off: for tests.
    [[nodiscard]] QStringList cut_off_words() const;
    [[nodiscard]] QMenu* language_menu() const { return languages_; }
    [[nodiscard]] QMenu* menu() const { return menu_; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build_bar();
    void build_menu();
    void fill_menus();
    void show_page();
    void take_words();
    void fit_bar();
    [[nodiscard]] QString bar_state() const;
    QString fitted_bar_;  ///< for which the bar has been fitted
    void toggle_full_screen();
    GuestScreenControl control_;
    std::vector<ScreenView*> views_;  ///< in the order of ScreenPage
    QWidget* pages_ = nullptr;
    QWidget* bar_ = nullptr;
    QWidget* blank_ = nullptr;
    GuestLabel* draft_ = nullptr;
    GuestButton* back_ = nullptr;
    GuestLabel* place_ = nullptr;
    GuestButton* next_ = nullptr;
    GuestButton* run_ = nullptr;
    GuestButton* language_ = nullptr;
    GuestButton* more_ = nullptr;
    QMenu* languages_ = nullptr;
    QMenu* menu_ = nullptr;
    QMenu* groups_ = nullptr;
    QMenu* seconds_ = nullptr;
};

/// The monitor for guests: the first that is not taken; -1: there is none.
int monitor_for_guests(int count, int taken);

}  // namespace leadline
