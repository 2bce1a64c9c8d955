// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "ui/document/session_document.h"
#include "ui/roster/earlier_dives_dialog.h"
#include "ui/roster/known_guest_list.h"
#include "ui/roster/screening_page.h"

class QAction;
class QBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSplitter;
class QStackedWidget;

namespace leadline {

class BulkPage;
class CrewPanel;
class GuestEditor;
class GuestFilter;
class GuestModel;
class GuestTable;
class NoticeStrip;

/// Who comes, may they dive today, with whom, in what? The guests as a table, the one chosen beside
/// it to be edited, groups and staff below.
class RosterTab : public QWidget {
    Q_OBJECT
public:
    /// @param document  outlives the tab
    explicit RosterTab(SessionDocument& document, QWidget* parent = nullptr);

    /// Where persons on record are looked up by name while a new guest is typed. Without one, no
    /// list is offered.
    void set_guest_finder(GuestFinder finder);
    /// Where dives that staff made before are looked up by name.
    void set_dive_finder(DiveFinder finder);
    /// How answers about health are sealed. nullptr, and until this is called: they are not, and
    /// only outcomes are kept.
    void set_health_access(HealthAccess* access);
    /// Where a returning guest's last health check is looked up.
    void set_check_finder(CheckFinder finder);
    /// Which answers the centre keeps sealed.
    void set_answers_kept(AnswersKept kept);
    /// Chooses a guest, a group or a member of staff and puts the focus where it can be edited.
    /// Nothing happens for the session as a whole or for somebody who is gone.
    void show_subject(const Subject& subject);
    void focus_search();

    // For a menu; all work by key while the tab is in sight.
    [[nodiscard]] QAction* add_guest_action() const { return add_action_; }
    [[nodiscard]] QAction* remove_guest_action() const { return remove_action_; }
    [[nodiscard]] QAction* find_action() const { return find_action_; }
    [[nodiscard]] QAction* import_action() const { return import_action_; }
    [[nodiscard]] QAction* export_action() const { return export_action_; }
    /// Asks what the centre has to hand out.
    void open_stock();

    /// Ask for a booking list to read, and for a file to write the guests to; replaced in tests.
    std::function<QString()> choose_booking_list;
    std::function<QString()> choose_guest_file;

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void answers_kept_chosen(AnswersKept kept);

protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build_actions();
    QWidget* build_splitters();
    QWidget* build_left();
    QBoxLayout* build_bar(QWidget* parent);
    QWidget* build_right();
    void connect_parts();

    void refresh();
    void start_anew();
    void search(const QString& text);
    void selection_changed();
    [[nodiscard]] std::vector<GuestId> selected() const;
    bool select(const GuestId& guest);
    void select_row(int row);
    void add_guest();
    void remove_guests();
    void edit_selected();
    void update_empty_state();
    void import_bookings();
    void export_guests();

    SessionDocument& document_;
    GuestModel* model_;
    GuestFilter* filter_;
    GuestTable* table_ = nullptr;
    QStackedWidget* table_stack_ = nullptr;
    QLabel* empty_ = nullptr;
    QLineEdit* search_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* stock_ = nullptr;
    QPushButton* lists_ = nullptr;
    NoticeStrip* notice_ = nullptr;
    CrewPanel* crew_ = nullptr;
    QSplitter* across_ = nullptr;
    QSplitter* down_ = nullptr;
    QStackedWidget* right_ = nullptr;
    GuestEditor* editor_ = nullptr;
    BulkPage* bulk_ = nullptr;
    QLabel* nobody_ = nullptr;
    QAction* add_action_ = nullptr;
    QAction* remove_action_ = nullptr;
    QAction* find_action_ = nullptr;
    QAction* import_action_ = nullptr;
    QAction* export_action_ = nullptr;

    std::vector<GuestId> removed_;  ///< last
    int last_row_ = 0;  ///< of the table, where the selection goes when its guest is gone
    bool refreshing_ = false;
    bool sized_ = false;
};

}  // namespace leadline
