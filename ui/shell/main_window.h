// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <functional>

#include "core/planning/finding.h"
#include "ui/shell/record_keeper.h"

class QLabel;
class QPushButton;
class QTabWidget;

namespace leadline {

class BriefingTab;
class DebriefTab;
class FindingsPanel;
class GasTab;
class RosterTab;
class SessionDocument;
class SiteTab;
class VaultAccess;

/// The window: the session line, five tabs, the findings beside them, and the menus.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(SessionDocument& document, RecordKeeper& keeper, QWidget* parent = nullptr);

    /// Opens a session file without keeping it. A file that cannot be read leaves the window as it
    /// was and says why in the message line.
    bool open_file(const QString& path);
    /// Shows a message in the line at the foot of the window until it is closed or replaced.
    void show_message(const QString& message, Severity severity);
    [[nodiscard]] QString message() const;
    /// Asks for a file and writes the open session into it. @returns whether it was written
    bool write_session_file();
    /// Whether the open session may be left: all is saved, or was written to a file, or the user
    /// gives it up. Tries to save first; asks only when that fails.
    bool may_leave_session();

    enum Tab { roster_tab, site_tab, gas_tab, briefing_tab, debrief_tab };
    void show_tab(Tab tab);
    [[nodiscard]] QTabWidget* tabs() const { return tabs_; }
    [[nodiscard]] BriefingTab* briefing() const { return briefing_; }
    [[nodiscard]] DebriefTab* debrief() const { return debrief_; }

    /// The health vault, for the tabs and for tests.
    [[nodiscard]] VaultAccess* health() const { return health_; }

    /// Asks for a file to open or to write; replaced in tests.
    std::function<QString()> choose_open_path;
    std::function<QString()> choose_export_path;

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    friend class WindowActions;
    void build_tabs();
    void connect_screening();
    void build_notice();
    void build_message_line();
    void show_finding(const Finding& finding);
    void show_subject(const Subject& subject, Tab tab);
    void update_notice();
    void update_title();

    SessionDocument& document_;
    RecordKeeper& keeper_;
    VaultAccess* health_;
    QTabWidget* tabs_;
    RosterTab* roster_ = nullptr;
    SiteTab* site_ = nullptr;
    GasTab* gas_ = nullptr;
    BriefingTab* briefing_ = nullptr;
    DebriefTab* debrief_ = nullptr;
    FindingsPanel* findings_;
    QWidget* notice_ = nullptr;
    QLabel* notice_text_ = nullptr;
    QPushButton* notice_keep_ = nullptr;
    QWidget* message_line_ = nullptr;
    QLabel* message_icon_ = nullptr;
    bool says_not_saved_ = false;
    QLabel* message_text_ = nullptr;
    QString file_name_;
};

}  // namespace leadline
