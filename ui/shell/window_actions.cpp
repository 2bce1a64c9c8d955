// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/window_actions.h"

#include <QAction>
#include <QApplication>
#include <QCoreApplication>
#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QUndoStack>

#include "core/files/session_file.h"
#include "ui/document/session_document.h"
#include "ui/guest_screen/guest_screen.h"
#include "ui/roster/red_list_dialog.h"
#include "ui/roster/roster_tab.h"
#include "ui/sheet/briefing_tab.h"
#include "ui/shell/backups_dialog.h"
#include "ui/shell/language_menu.h"
#include "ui/shell/main_window.h"
#include "ui/shell/people_dialog.h"
#include "ui/shell/sessions_dialog.h"
#include "ui/shell/vault_access.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

const QString units_setting = QStringLiteral("units");
const QString shade_setting = QStringLiteral("shade");
const QString page_seconds_setting = QStringLiteral("guest_screen_seconds");
const QString calm_setting = QStringLiteral("guest_screen_calm");

Date today() {
    const QDate day = QDate::currentDate();
    return Date{std::chrono::year(day.year()),
                std::chrono::month(static_cast<unsigned>(day.month())),
                std::chrono::day(static_cast<unsigned>(day.day()))};
}

}  // namespace

QString sample_folder() {
    const QDir here(QCoreApplication::applicationDirPath());
    const QStringList candidates{
        here.absoluteFilePath(QStringLiteral("../share/leadline/sample-sessions")),
        here.absoluteFilePath(QStringLiteral("../../../sample-sessions")),
        here.absoluteFilePath(QStringLiteral("../../sample-sessions"))};
    for (const QString& candidate : candidates) {
        if (QFileInfo(candidate).isDir()) return QDir::cleanPath(candidate);
    }
    return {};
}

WindowActions::WindowActions(MainWindow& window) : QObject(&window), window_(window) {
    build_session_menu();
    build_edit_menu();
    build_records_menu();
    build_view_menu();
    build_help_menu();
    if (window_.keeper_.setting(units_setting) == QStringLiteral("imperial")) {
        window_.document_.set_units(UnitSystem::imperial);
    }
}

void WindowActions::build_session_menu() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Session"));
    QAction* fresh = menu->addAction(tr("&New session"), this, &WindowActions::new_session);
    fresh->setShortcut(QKeySequence::New);
    fresh->setObjectName(QStringLiteral("action_new"));
    QAction* open = menu->addAction(tr("&Open a file…"), this, [this] {
        const QString path = window_.choose_open_path();
        if (!path.isEmpty()) window_.open_file(path);
    });
    open->setShortcut(QKeySequence::Open);
    open->setObjectName(QStringLiteral("action_open"));
    add_samples(*menu->addMenu(tr("Open a s&ample")));
    menu->addSeparator();
    QAction* write = menu->addAction(tr("&Write to a file…"), this, &WindowActions::export_session);
    write->setShortcut(QKeySequence(tr("Ctrl+Shift+S")));
    write->setObjectName(QStringLiteral("action_export"));
    QAction* print = menu->addAction(tr("&Print cards"), this,
                                     [this] { window_.show_tab(MainWindow::briefing_tab); });
    print->setShortcut(QKeySequence::Print);
    menu->addSeparator();
    QAction* quit = menu->addAction(tr("&Quit"), &window_, &QWidget::close);
    quit->setShortcut(QKeySequence::Quit);
}

void WindowActions::build_records_menu() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Records"));
    menu->setObjectName(QStringLiteral("records_menu"));
    const auto add = [&](const QString& name, const char* object_name, const QString& keys,
                         void (WindowActions::*act)()) {
        QAction* action = menu->addAction(name, this, act);
        action->setObjectName(QLatin1String(object_name));
        action->setShortcut(QKeySequence(keys));
        return action;
    };
    const auto with_database = [&](QAction* action) {
        action->setEnabled(window_.keeper_.has_database());
        connect(&window_.keeper_, &RecordKeeper::database_changed, action,
                [action, this] { action->setEnabled(window_.keeper_.has_database()); });
    };
    with_database(add(tr("&Sessions on record…"), "action_recorded", tr("Ctrl+Shift+O"),
                      &WindowActions::open_recorded));
    with_database(add(tr("&Guests on record…"), "action_people", tr("Ctrl+Shift+G"),
                      &WindowActions::open_people));
    QAction* red_list = add(tr("&Red list…"), "action_red_list", tr("Ctrl+Shift+R"),
                            &WindowActions::open_red_list);
    red_list->setToolTip(tr("Who must still see a physician, bring consent, answer or renew."));
    with_database(red_list);
    menu->addSeparator();
    // Also when the records could not be opened: that is when a copy is wanted.
    add(tr("&Copies of the records…"), "action_copies", {}, &WindowActions::show_copies)
        ->setEnabled(!window_.keeper_.wanted_path().isEmpty());
}

void WindowActions::add_samples(QMenu& menu) {
    const QDir folder(sample_folder());
    const QStringList names =
        sample_folder().isEmpty()
            ? QStringList()
            : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
    for (const QString& name : names) {
        const QString path = folder.filePath(name);
        QString title = QFileInfo(name).baseName().replace(u'-', u' ');
        title[0] = title[0].toUpper();
        menu.addAction(title, this, [this, path] { window_.open_file(path); });
    }
    if (names.isEmpty()) menu.addAction(tr("No samples installed"))->setEnabled(false);
}

void WindowActions::build_edit_menu() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Edit"));
    QAction* undo = window_.document_.undo_stack()->createUndoAction(this, tr("Undo"));
    undo->setShortcut(QKeySequence::Undo);
    undo->setObjectName(QStringLiteral("action_undo"));
    menu->addAction(undo);
    QAction* redo = window_.document_.undo_stack()->createRedoAction(this, tr("Redo"));
    redo->setShortcuts({QKeySequence::Redo, QKeySequence(tr("Ctrl+Y"))});
    redo->setObjectName(QStringLiteral("action_redo"));
    menu->addAction(redo);
    menu->addSeparator();
    QAction* find = menu->addAction(tr("&Find a guest"), this, [this] {
        window_.show_tab(MainWindow::roster_tab);
        window_.roster_->focus_search();
    });
    find->setShortcut(QKeySequence::Find);
    // The window's key works on every tab; two owners of one key would silence both.
    window_.roster_->find_action()->setShortcut(QKeySequence());
}

void WindowActions::build_view_menu() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&View"));
    QAction* imperial = menu->addAction(tr("Feet, psi and °F"));
    imperial->setObjectName(QStringLiteral("action_imperial"));
    imperial->setCheckable(true);
    imperial->setChecked(window_.keeper_.setting(units_setting) == QStringLiteral("imperial"));
    connect(imperial, &QAction::toggled, this, &WindowActions::set_units_imperial);
    QAction* dark = menu->addAction(tr("&Dark"));
    dark->setObjectName(QStringLiteral("action_dark"));
    dark->setCheckable(true);
    dark->setChecked(shade_of(window_.palette()) == Shade::dark);
    connect(dark, &QAction::toggled, this, &WindowActions::set_dark);
    menu->addSeparator();
    add_language_menu(*menu, window_.keeper_,
                      [this](const QString& kept) { window_.show_message(kept, Severity::note); });
    menu->addSeparator();
    QAction* guests = menu->addAction(tr("&Guest screen"), this, &WindowActions::open_guest_screen);
    guests->setObjectName(QStringLiteral("action_guest_screen"));
    guests->setShortcut(QKeySequence(Qt::Key_F9));
    guests->setToolTip(tr("The briefing for guests to look at, on another monitor if there is one."));
    connect(window_.briefing_, &BriefingTab::guest_screen_requested, this,
            &WindowActions::open_guest_screen);
}

void WindowActions::build_help_menu() {
    QMenu* menu = window_.menuBar()->addMenu(tr("&Help"));
    menu->addAction(tr("&About Leadline"), this, [this] {
        QMessageBox::about(
            &window_, tr("About Leadline"),
            tr("<p><b>Leadline %1</b></p><p>Plans a first, supervised scuba session, prints a card "
               "for every guest and reviews the log.</p><p>A planning aid: no dive computer, no "
               "medical device, no legal advice. Local law, your organisation's standard, the "
               "instructor and a physician come first. Numbers are estimates to be checked in the "
               "water.</p><p>Free software under the GNU General Public License, version 3 or "
               "later.</p>")
                .arg(QCoreApplication::applicationVersion()));
    });
}

void WindowActions::show_copies() {
    BackupsDialog dialog(window_.keeper_, &window_);
    dialog.exec();
}

void WindowActions::new_session() {
    if (!window_.may_leave_session()) return;
    SessionFile file{empty_session(today()), std::nullopt};
    file.session.leader = file.session.staff.front().id;
    // The next session is mostly at the last place.
    const std::vector<Site> sites = window_.keeper_.sites();
    if (sites.size() == 1) file.session.site = sites.front();
    if (const Result<Done> done = window_.keeper_.open_new(std::move(file)); !done) {
        window_.show_message(words(done.error()), Severity::stop);
    }
    window_.show_tab(MainWindow::roster_tab);
}

void WindowActions::open_recorded() {
    if (!window_.may_leave_session()) return;
    SessionsDialog dialog(window_.keeper_, &window_);
    if (dialog.exec() != QDialog::Accepted || !dialog.chosen()) return;
    if (const Result<Done> done = window_.keeper_.open_row(*dialog.chosen()); !done) {
        window_.show_message(words(done.error()), Severity::stop);
    }
}

void WindowActions::open_people() {
    if (!window_.keeper_.has_database()) return;
    PeopleDialog dialog(window_.keeper_, window_.document_.units(), &window_);
    dialog.read_sealed = [this](qint64 person) { return window_.health_->read_all(person); };
    if (const Vault* vault = window_.health_->vault()) dialog.who = vault->who();
    dialog.exec();
}

void WindowActions::open_red_list() {
    RedListDialog dialog(window_.keeper_.sessions_to_come(today()), window_.document_.rules(),
                         &window_);
    if (dialog.exec() != QDialog::Accepted || !dialog.chosen_session()) return;
    if (window_.keeper_.current_row() != dialog.chosen_session()) {
        if (!window_.may_leave_session()) return;
        if (const Result<Done> done = window_.keeper_.open_row(*dialog.chosen_session()); !done) {
            return window_.show_message(words(done.error()), Severity::stop);
        }
    }
    window_.show_subject(dialog.chosen_guest(), MainWindow::roster_tab);
}

void WindowActions::export_session() { window_.write_session_file(); }

void WindowActions::set_units_imperial(bool imperial) {
    window_.document_.set_units(imperial ? UnitSystem::imperial : UnitSystem::metric);
    window_.keeper_.put_setting(units_setting, imperial ? QStringLiteral("imperial")
                                                        : QStringLiteral("metric"));
}

void WindowActions::set_dark(bool dark) {
    auto* application = qobject_cast<QApplication*>(QCoreApplication::instance());
    if (application == nullptr) return;
    apply_theme(*application, dark ? Shade::dark : Shade::light);
    window_.keeper_.put_setting(shade_setting,
                                dark ? QStringLiteral("dark") : QStringLiteral("light"));
    // Everything drawn by hand takes its inks anew.
    Q_EMIT window_.document_.changed();
}

void WindowActions::open_guest_screen() {
    if (guest_screen_ != nullptr) {
        guest_screen_->raise();
        guest_screen_->activateWindow();
        return;
    }
    guest_screen_ = new GuestScreen(window_.document_, &window_);
    GuestScreenControl& control = guest_screen_->control();
    const int seconds =
        window_.keeper_.setting(page_seconds_setting).value_or(QString()).toInt();
    if (seconds > 0) control.set_seconds(seconds);
    control.set_calm(window_.keeper_.setting(calm_setting) == QStringLiteral("yes"));
    connect(&control, &GuestScreenControl::settings_changed, this, [this, &control] {
        window_.keeper_.put_setting(page_seconds_setting, QString::number(control.seconds()));
        window_.keeper_.put_setting(
            calm_setting, control.is_calm() ? QStringLiteral("yes") : QStringLiteral("no"));
    });
    guest_screen_->show_beside(window_.screen());
}

}  // namespace leadline
