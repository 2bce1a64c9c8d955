// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>

class QMenu;

namespace leadline {

class GuestScreen;
class MainWindow;

/// The window's menus and what they do. Owned by the window.
class WindowActions : public QObject {
    Q_OBJECT
public:
    explicit WindowActions(MainWindow& window);

private:
    void build_session_menu();
    void build_records_menu();
    void build_edit_menu();
    void build_view_menu();
    void build_help_menu();
    void add_samples(QMenu& menu);
    void new_session();
    void open_recorded();
    void show_copies();
    void open_people();
    void open_red_list();
    void export_session();
    void set_units_imperial(bool imperial);
    void set_dark(bool dark);
    void open_guest_screen();

    MainWindow& window_;
    QPointer<GuestScreen> guest_screen_;
};

/// Folder of the sample sessions: beside the sources of a development build, or where the program
/// was installed. Empty when there is none.
QString sample_folder();

}  // namespace leadline
