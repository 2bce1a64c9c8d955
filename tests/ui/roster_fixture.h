// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTest>
#include <QUndoStack>
#include <memory>
#include <string>
#include <vector>

#include "tests/ui/ui_fixture.h"
#include "ui/roster/guest_model.h"
#include "ui/roster/roster_tab.h"

namespace leadline::testing {

/// A guest against whom nothing stands.
inline Guest ready_guest(const std::string& id, const std::string& name) {
    Guest guest;
    guest.id = GuestId(id);
    guest.name = name;
    guest.birth_date = day(1990, 5, 17);
    guest.screening = {ScreeningOutcome::clear, day(2026, 7, 3), present_edition, "Mara Lind", false,
                       std::nullopt, TodayOutcome::clear, SignatureKind::on_paper};
    guest.kit = {"5 mm M", "M", "40-41", "standard", "R" + id, Kilograms(5.0),
                 Cylinder{CylinderTypeId("steel-12"), Bars(200.0), Kelvins(Celsius(20.0))}};
    guest.group = GroupId("group-1");
    return guest;
}

/// 4 July 2026; two groups, two instructors and an assistant; no guests.
inline Session staffed_session() {
    Session session = empty_session(day(2026, 7, 4));
    session.site.emergency_line = "000";
    const Cylinder cylinder{CylinderTypeId("steel-12"), Bars(210.0), Kelvins(Celsius(20.0))};
    session.staff = {
        {StaffId("staff-1"), "Mara Lind", StaffRole::instructor, {"en", "sv"}, cylinder},
        {StaffId("staff-2"), "Ilse Vermeer", StaffRole::instructor, {"nl", "en"}, cylinder},
        {StaffId("staff-3"), "Tomás Duarte", StaffRole::assistant, {"pt"}, std::nullopt}};
    session.groups = {{GroupId("group-1"), "Blue", StaffId("staff-1"), StaffId()},
                      {GroupId("group-2"), "White", StaffId("staff-2"), StaffId()}};
    return session;
}

/// The same with these people, all of them ready.
inline Session session_with(const std::vector<std::string>& names) {
    Session session = staffed_session();
    for (const std::string& name : names) {
        session.guests.push_back(ready_guest(next_guest_id(session).text, name));
    }
    return session;
}

/// The Roster in a window of its own, worked by clicks and keys.
class RosterTest : public ::testing::Test {
protected:
    void open(const Session& session) {
        SessionFile file;
        file.session = session;
        ASSERT_TRUE(document_.open(file).has_value());
        tab_ = std::make_unique<RosterTab>(document_);
        tab_->resize(1280, 720);
        tab_->show();
        tab_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(tab_.get()));
    }
    template <typename Widget>
    Widget* child(const char* name) {
        auto* found = tab_->findChild<Widget*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << "no " << name;
        return found;
    }
    void click(const char* name) {
        auto* widget = child<QWidget>(name);
        QCoreApplication::processEvents();  // what was just unfolded gets its place
        EXPECT_TRUE(widget->isVisible()) << name;
        EXPECT_TRUE(widget->isEnabled()) << name;
        QTest::mouseClick(widget, Qt::LeftButton);
    }
    /// As QTest::keyClicks, which knows no letters beyond ASCII.
    static void type_letter(QWidget* widget, QChar letter) {
        const Qt::Key key = letter.unicode() < 128 ? QTest::asciiToKey(letter.toLatin1())
                                                   : Qt::Key_unknown;
        QTest::sendKeyEvent(QTest::Click, widget, key, QString(letter), Qt::NoModifier);
    }
    /// Types over what stands in a line or box and leaves it by Tab.
    void enter(const char* name, const char* text) {
        QWidget* widget = child<QWidget>(name);
        EXPECT_TRUE(widget->isVisible()) << name;
        widget->setFocus();
        QTest::keyClick(widget, Qt::Key_A, Qt::ControlModifier);
        for (const QChar letter : QString::fromUtf8(text)) type_letter(widget, letter);
        QTest::keyClick(widget, Qt::Key_Tab);
    }
    /// Steps through a list with the keyboard to the first choice that starts so.
    void choose(const char* name, const char* start) {
        auto* box = child<QComboBox>(name);
        EXPECT_TRUE(box->isVisible()) << name;
        box->setFocus();
        const int wanted = box->findText(QString::fromUtf8(start), Qt::MatchStartsWith);
        ASSERT_GE(wanted, 0) << "no " << start << " in " << name;
        while (box->currentIndex() > wanted) QTest::keyClick(box, Qt::Key_Up);
        while (box->currentIndex() < wanted) QTest::keyClick(box, Qt::Key_Down);
    }
    /// A key to whatever has the focus.
    static void press(int key, Qt::KeyboardModifiers modifiers = {}) {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key), modifiers);
    }
    /// Letter by letter to whatever has the focus then.
    static void type(const char* text) {
        for (const QChar letter : QString::fromUtf8(text)) {
            ASSERT_NE(QApplication::focusWidget(), nullptr);
            type_letter(QApplication::focusWidget(), letter);
        }
    }
    static std::string focus_name() {
        const QWidget* widget = QApplication::focusWidget();
        return widget != nullptr ? widget->objectName().toStdString() : std::string();
    }
    void click_row(int row, Qt::KeyboardModifiers modifiers = {}) {
        auto* table = child<QTableView>("guest_table");
        const QRect cell = table->visualRect(table->model()->index(row, 0));
        QTest::mouseClick(table->viewport(), Qt::LeftButton, modifiers, cell.center());
    }
    std::string cell(int row, GuestColumn column) {
        const auto* model = child<QTableView>("guest_table")->model();
        return model->index(row, static_cast<int>(column)).data().toString().toStdString();
    }
    int rows() { return child<QTableView>("guest_table")->model()->rowCount(); }
    std::string text_of(const char* name) { return child<QLabel>(name)->text().toStdString(); }
    std::string line(const char* name) { return child<QLineEdit>(name)->text().toStdString(); }
    const Guest& guest(std::size_t place) const { return document_.session().guests.at(place); }

    SessionDocument document_{rules()};
    std::unique_ptr<RosterTab> tab_;
};

}  // namespace leadline::testing
