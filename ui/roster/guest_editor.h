// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>

#include "ui/roster/edit_desk.h"
#include "ui/roster/guest_facts.h"
#include "ui/roster/known_guest_list.h"

class QButtonGroup;
class QLabel;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace leadline {

class ElidedLabel;
class FindingList;
class KitPage;
class PersonPage;
class ScreeningPage;

/// Everything about one guest, on three pages in the order in which a guest is seen to: who it is,
/// whether the health allows it, what is handed out. Above them the name and whether the guest may
/// dive; on each page first what stands against it there.
class GuestEditor : public QWidget {
    Q_OBJECT
public:
    explicit GuestEditor(SessionDocument& document, QWidget* parent = nullptr);

    void set_guest_finder(GuestFinder finder);
    [[nodiscard]] ScreeningPage* screening() const { return screening_; }
    /// Shows another guest; the same one again only refreshes.
    void show_guest(const GuestId& guest);
    [[nodiscard]] const GuestId& guest() const { return desk_.guest_id(); }
    void refresh();

    void show_page(GuestPage page);
    [[nodiscard]] GuestPage page() const;
    /// Page with the worst of what stands against the guest, the first page when nothing does.
    [[nodiscard]] GuestPage worst_page() const;
    void focus_name();
    /// Focus to the first field of the page shown.
    void focus_page();

Q_SIGNALS:
    /// Complaints that were still unread when another guest was chosen, and whom they concern.
    void unread_complaint(const QString& text);
    /// Escape was pressed: back to the table.
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build_header(QVBoxLayout* column);
    QScrollArea* add_page(GuestPage page, const QString& name, QWidget* content);
    void refresh_header(const Guest& guest);
    void refresh_findings();

    EditDesk desk_;
    ElidedLabel* name_;
    QLabel* shape_;
    QLabel* state_;
    QButtonGroup* buttons_;
    QStackedWidget* stack_;
    PersonPage* person_;
    ScreeningPage* screening_;
    KitPage* kit_;
    std::array<FindingList*, 3> findings_{};
};

}  // namespace leadline
