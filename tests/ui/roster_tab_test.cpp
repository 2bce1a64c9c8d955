// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractItemView>
#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QPlainTextEdit>
#include <QSignalSpy>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/guest_editor.h"

namespace leadline::testing {
namespace {

TEST_F(RosterTest, AGuestIsTakenInFromNothingToReady) {
    open(staffed_session());
    EXPECT_EQ(text_of("roster_empty"), "No guests yet. Add the first one (Ins) or open a session.");
    EXPECT_TRUE(child<QLabel>("roster_empty")->isVisible());

    click("add_guest");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(focus_name(), "name_edit");
    type("Zoë van Dijk");
    EXPECT_EQ(guest(0).name, "Zoë van Dijk") << "saved while typing";
    EXPECT_EQ(cell(0, GuestColumn::name), "Zoë van Dijk");
    enter("birth_date_edit", "17/5/1990");
    EXPECT_EQ(guest(0).birth_date, day(1990, 5, 17));
    EXPECT_EQ(line("birth_date_edit"), "17 May 1990");
    EXPECT_EQ(text_of("age_label"), "36 years old on the day");
    choose("language_combo", "Dutch");
    EXPECT_EQ(guest(0).language, "nl");
    choose("group_combo", "White");
    EXPECT_EQ(guest(0).group, GroupId("group-2"));

    click("page_screening");
    EXPECT_EQ(text_of("screening_outcome"), "Not answered");
    click("open_questions");
    click("all_no_health");
    EXPECT_EQ(text_of("screening_outcome"), "Not answered") << "not before it is recorded";
    click("all_no_today");
    choose("signature_combo", "Signed on paper");
    click("record_check");
    EXPECT_EQ(text_of("screening_outcome"), "Clear");
    EXPECT_EQ(guest(0).screening.today, TodayOutcome::clear);
    EXPECT_EQ(guest(0).screening.checked_by, "Ilse Vermeer") << "who leads the group";

    click("page_kit");
    choose("guest_cylinder_combo", "Steel 12");
    ASSERT_TRUE(guest(0).kit.cylinder.has_value());
    EXPECT_EQ(guest(0).kit.cylinder->fill_pressure.value(), 0.0);
    EXPECT_TRUE(child<QLabel>("fill_remark")->isVisible()) << "asks for the gauge to be read";
    enter("guest_fill_box", "210");
    EXPECT_DOUBLE_EQ(guest(0).kit.cylinder->fill_pressure.value(), 210.0);
    EXPECT_FALSE(child<QLabel>("fill_remark")->isVisible());
    for (const char* item : {"suit_edit", "bcd_edit", "mask_edit", "fins_edit"}) enter(item, "M");
    enter("regulator_edit", "R4");
    EXPECT_EQ(cell(0, GuestColumn::kit), "No lead");
    enter("lead_box", "6");
    ASSERT_TRUE(guest(0).kit.lead.has_value());
    EXPECT_EQ(cell(0, GuestColumn::kit), "Complete");
    EXPECT_EQ(cell(0, GuestColumn::findings), "Ready");
    EXPECT_EQ(text_of("editor_state"), "Ready");
}

TEST_F(RosterTest, AddingAndNamingIsOneStep) {
    open(staffed_session());
    click("add_guest");
    type("Ana");
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(rows(), 0);
    document_.undo_stack()->redo();
    EXPECT_EQ(cell(0, GuestColumn::name), "Ana");
}

TEST_F(RosterTest, TheSearchNarrowsTheTableWhileTyping) {
    open(session_with({"Ana Müller", "Łukasz Wójcik", "Zoë van Dijk"}));
    tab_->focus_search();
    type("woj");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, GuestColumn::name), "Łukasz Wójcik");
    EXPECT_EQ(line("name_edit"), "Łukasz Wójcik") << "the one found is the one shown";
    EXPECT_EQ(focus_name(), "guest_search");
    type("xyz");
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(text_of("roster_empty").starts_with("Nobody is called \"wojxyz\""));
    press(Qt::Key_Escape);
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(focus_name(), "guest_search");
}

TEST_F(RosterTest, RemovingIsToldAndTakenBack) {
    open(session_with({"Ana", "Bo", "Cy"}));
    click_row(1);
    click("remove_guest");
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(text_of("notice_text"), "Removed Bo");
    EXPECT_EQ(line("name_edit"), "Cy") << "the next guest takes the place";
    click("undo_remove");
    ASSERT_EQ(rows(), 3);
    EXPECT_EQ(cell(1, GuestColumn::name), "Bo");
    EXPECT_EQ(line("name_edit"), "Bo");
    EXPECT_FALSE(child<QWidget>("notice")->isVisible());
    document_.undo_stack()->redo();
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(cell(1, GuestColumn::name), "Cy");
}

TEST_F(RosterTest, TheUndoOfARemovalGoesOnceSomethingElseIsDone) {
    open(session_with({"Ana", "Bo"}));
    click("remove_guest");
    ASSERT_TRUE(child<QWidget>("undo_remove")->isVisible());
    enter("name_edit", "Bobby");
    EXPECT_FALSE(child<QWidget>("notice")->isVisible());
}

TEST_F(RosterTest, TheLastGuestCanGo) {
    open(session_with({"Ana"}));
    click("remove_guest");
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(child<QLabel>("roster_empty")->isVisible());
    EXPECT_TRUE(child<QLabel>("editor_empty")->isVisible());
    EXPECT_FALSE(child<QWidget>("remove_guest")->isEnabled());
}

TEST_F(RosterTest, ABadDateIsRefusedInWordsAndTheOldOneStays) {
    open(session_with({"Ana"}));
    enter("birth_date_edit", "31/2/1990");
    EXPECT_EQ(guest(0).birth_date, day(1990, 5, 17));
    EXPECT_EQ(line("birth_date_edit"), "17 May 1990");
    EXPECT_TRUE(child<QLabel>("birth_date_edit_message")->isVisible());
    EXPECT_NE(text_of("birth_date_edit_message").find("31/2/1990"), std::string::npos);

    enter("birth_date_edit", "17/5/1991");
    EXPECT_EQ(guest(0).birth_date, day(1991, 5, 17));
    EXPECT_FALSE(child<QLabel>("birth_date_edit_message")->isVisible());
}

TEST_F(RosterTest, ABirthAfterTheSessionIsRefusedAndTheOldDateStays) {
    open(session_with({"Ana"}));
    enter("birth_date_edit", "5/7/2026");
    EXPECT_EQ(guest(0).birth_date, day(1990, 5, 17));
    EXPECT_EQ(line("birth_date_edit"), "17 May 1990");
    const std::string message = text_of("birth_date_edit_message");
    EXPECT_TRUE(message.starts_with("Birth date: born on 2026-07-05")) << message;
    EXPECT_EQ(message.find('/'), std::string::npos) << "no pointer into the file: " << message;
}

TEST_F(RosterTest, ACutOffDateFallsBackToTheOneBeforeTyping) {
    open(session_with({"Ana"}));
    enter("birth_date_edit", "1988-03-1x");
    EXPECT_EQ(guest(0).birth_date, day(1990, 5, 17));
}

TEST_F(RosterTest, ABirthDateCanBeTakenBackToUnknown) {
    open(session_with({"Ana"}));
    auto* date = child<QLineEdit>("birth_date_edit");
    date->setFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    EXPECT_EQ(guest(0).birth_date, day(1990, 5, 17)) << "not before the line is left";
    press(Qt::Key_Tab);
    EXPECT_FALSE(guest(0).birth_date.has_value());
    EXPECT_EQ(text_of("age_label"), "Age not known");
}

TEST_F(RosterTest, AComplaintThatWasNotReadIsRepeatedAboveTheTable) {
    open(session_with({"Ana", "Bo"}));
    auto* date = child<QLineEdit>("birth_date_edit");
    date->setFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    type("soon");
    child<QTableView>("guest_table")->setFocus();
    click_row(1);
    EXPECT_EQ(line("name_edit"), "Bo");
    EXPECT_FALSE(child<QLabel>("birth_date_edit_message")->isVisible());
    EXPECT_TRUE(text_of("notice_text").starts_with("Ana")) << text_of("notice_text");
    EXPECT_TRUE(child<QLabel>("notice_text")->isVisible());
}

TEST_F(RosterTest, AnOverfilledCylinderIsRefused) {
    open(session_with({"Ana"}));
    click("page_kit");
    enter("guest_fill_box", "240");
    EXPECT_DOUBLE_EQ(guest(0).kit.cylinder->fill_pressure.value(), 200.0);
    EXPECT_DOUBLE_EQ(child<QDoubleSpinBox>("guest_fill_box")->value(), 200.0);
    EXPECT_TRUE(child<QLabel>("guest_fill_box_message")->isVisible());
    EXPECT_TRUE(text_of("guest_fill_box_message").starts_with("Cylinder: 240 bar is over"))
        << text_of("guest_fill_box_message");
}

TEST_F(RosterTest, SteppingThroughTheKindsOfCylinderLosesNoReading) {
    Session session = session_with({"Ana", "Bo"});
    session.guests[0].kit.cylinder->fill_pressure = Bars(230.0);
    session.guests[1].kit.cylinder.reset();
    open(session);
    click("page_kit");
    choose("guest_cylinder_combo", "None yet");  // past aluminium, which may not hold 230 bar
    EXPECT_FALSE(guest(0).kit.cylinder.has_value());
    choose("guest_cylinder_combo", "Steel 15");
    ASSERT_TRUE(guest(0).kit.cylinder.has_value());
    EXPECT_DOUBLE_EQ(guest(0).kit.cylinder->fill_pressure.value(), 230.0);
    choose("guest_cylinder_combo", "None yet");
    click_row(1);
    choose("guest_cylinder_combo", "Steel 12");
    EXPECT_EQ(guest(1).kit.cylinder->fill_pressure.value(), 0.0)
        << "somebody else's reading must not be taken over";
}

TEST_F(RosterTest, AGuestKeepsANameWhileItIsEmptied) {
    open(session_with({"Ana"}));
    auto* name = child<QLineEdit>("name_edit");
    name->setFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_Delete);
    EXPECT_EQ(guest(0).name, "Ana");
    EXPECT_EQ(name->text(), QString()) << "the line itself is not disturbed";
    EXPECT_TRUE(child<QLabel>("name_edit_message")->isVisible());
    press(Qt::Key_Tab);
    EXPECT_EQ(line("name_edit"), "Ana");
}

TEST_F(RosterTest, NumbersCanBeClearedAgain) {
    Session session = session_with({"Ana"});
    session.guests[0].measured_rmv = LitersPerMinute(22.0);
    session.guests[0].shoe_size_eu = 41.0;
    open(session);
    EXPECT_TRUE(text_of("planned_rmv_label").find("as measured") != std::string::npos);
    for (const char* name : {"rmv_box", "shoe_box", "lead_box"}) {
        if (std::string(name) != "rmv_box") click("page_kit");
        auto* box = child<QDoubleSpinBox>(name);
        box->setFocus();
        press(Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Delete);
        press(Qt::Key_Tab);
    }
    EXPECT_FALSE(guest(0).measured_rmv.has_value());
    EXPECT_FALSE(guest(0).shoe_size_eu.has_value());
    EXPECT_FALSE(guest(0).kit.lead.has_value());
    enter("shoe_box", "42");
    EXPECT_EQ(guest(0).shoe_size_eu, 42.0);
    enter("height_box", "172");
    ASSERT_TRUE(guest(0).body_height.has_value());
    EXPECT_NEAR(guest(0).body_height->value(), 1.72, 1e-9);
}

TEST_F(RosterTest, ConsentIsAskedForMinorsOnly) {
    Session session = session_with({"Ana", "Bo"});
    session.guests[1].birth_date = day(2012, 1, 1);
    open(session);
    auto* consent = child<QCheckBox>("consent_check");
    EXPECT_FALSE(consent->isVisible());
    click_row(1);
    ASSERT_TRUE(consent->isVisible());
    EXPECT_EQ(cell(1, GuestColumn::consent), "Missing");
    consent->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(guest(1).guardian_consent);
    EXPECT_EQ(cell(1, GuestColumn::consent), "Seen");
    EXPECT_TRUE(consent->isVisible()) << "a tick can be taken back";
}

TEST_F(RosterTest, SeveralGuestsGetAGroupAndACylinderAtOnce) {
    Session session = session_with({"Ana", "Bo", "Cy"});
    for (Guest& guest : session.guests) {
        guest.group = GroupId();
        guest.kit.cylinder.reset();
    }
    open(session);
    click_row(0);
    click_row(2, Qt::ControlModifier);
    EXPECT_EQ(text_of("bulk_title"), "2 guests selected");
    choose("bulk_group_combo", "White");
    click("bulk_set_group");
    EXPECT_EQ(guest(0).group, GroupId("group-2"));
    EXPECT_TRUE(guest(1).group.empty());
    EXPECT_EQ(guest(2).group, GroupId("group-2"));
    EXPECT_EQ(text_of("bulk_title"), "2 guests selected") << "the selection stays";

    EXPECT_FALSE(child<QWidget>("bulk_hand_out")->isEnabled());
    choose("bulk_cylinder_combo", "Aluminium 11");
    enter("bulk_fill_box", "230");
    click("bulk_hand_out");
    EXPECT_FALSE(guest(0).kit.cylinder.has_value()) << "over the working pressure";
    EXPECT_TRUE(child<QLabel>("bulk_fill_box_message")->isVisible());
    enter("bulk_fill_box", "205");
    click("bulk_hand_out");
    EXPECT_FALSE(child<QLabel>("bulk_fill_box_message")->isVisible());
    const int steps = document_.undo_stack()->count();
    EXPECT_EQ(steps, 2) << "one for the group, one for the cylinders";
    for (const std::size_t place : {0U, 2U}) {
        ASSERT_TRUE(guest(place).kit.cylinder.has_value());
        EXPECT_EQ(guest(place).kit.cylinder->type, CylinderTypeId("aluminium-11"));
        EXPECT_DOUBLE_EQ(guest(place).kit.cylinder->fill_pressure.value(), 205.0);
    }
    EXPECT_FALSE(guest(1).kit.cylinder.has_value());
    click("remove_guest");
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(text_of("notice_text"), "Removed 2 guests");
}

TEST_F(RosterTest, TypingIsNotDisturbedByChangesElsewhere) {
    open(session_with({"Ana Müller", "Bo"}));
    auto* name = child<QLineEdit>("name_edit");
    name->setFocus();
    name->setCursorPosition(3);
    type("bel ");
    EXPECT_EQ(line("name_edit"), "Anabel  Müller");
    EXPECT_EQ(name->cursorPosition(), 7);
    const auto rename = [](Session& session) {
        session.guests[1].name = "Bob";
        session.title = "Morning";
    };
    ASSERT_TRUE(document_.edit(QStringLiteral("elsewhere"), rename).has_value());
    document_.set_units(UnitSystem::imperial);
    EXPECT_EQ(name->cursorPosition(), 7);
    EXPECT_TRUE(name->hasFocus());

    auto* date = child<QLineEdit>("birth_date_edit");
    date->setFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    type("3/1");
    ASSERT_TRUE(document_.edit(QStringLiteral("again"), [](Session& session) {
                             session.title = "Evening";
                         }).has_value());
    EXPECT_EQ(line("birth_date_edit"), "3/1") << "half a date is left alone";
    EXPECT_EQ(date->cursorPosition(), 3);

    auto* note = child<QPlainTextEdit>("note_edit");
    note->setFocus();
    type("line one ");
    document_.set_units(UnitSystem::metric);
    type("goes on");
    EXPECT_EQ(guest(0).note, "line one goes on");
}

TEST_F(RosterTest, UndoBringsEveryFieldBack) {
    open(session_with({"Ana"}));
    enter("name_edit", "Beatrix");
    enter("birth_date_edit", "1/2/1980");
    click("page_kit");
    enter("suit_edit", "7 mm L");
    EXPECT_EQ(document_.undo_stack()->count(), 3) << "typing makes one step a field";
    while (document_.undo_stack()->canUndo()) document_.undo_stack()->undo();
    EXPECT_EQ(line("name_edit"), "Ana");
    EXPECT_EQ(line("birth_date_edit"), "17 May 1990");
    EXPECT_EQ(line("suit_edit"), "5 mm M");
}

TEST_F(RosterTest, APersonOnRecordIsOfferedForANewGuest) {
    open(session_with({"Cy"}));
    std::vector<std::string> asked;
    tab_->set_guest_finder([&](const QString& text) {
        asked.push_back(text.toStdString());
        KnownGuest known;
        known.guest.name = "Ana Müller";
        known.guest.birth_date = day(1985, 1, 12);
        known.guest.language = "de";
        known.guest.body_mass = Kilograms(64.0);
        known.guest.measured_rmv = LitersPerMinute(21.0);
        known.guest.screening.outcome = ScreeningOutcome::clear;
        known.guest.guardian_consent = true;
        known.sessions = 3;
        return std::vector<KnownGuest>{known};
    });
    click("add_guest");
    type("a");
    EXPECT_TRUE(asked.empty()) << "one letter finds everybody";
    type("na");
    ASSERT_FALSE(asked.empty());
    EXPECT_EQ(asked.back(), "ana");
    auto* list = QApplication::activePopupWidget();
    ASSERT_NE(list, nullptr);
    auto* view = qobject_cast<QAbstractItemView*>(list);
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->model()->index(0, 0).data().toString().toStdString(),
              "Ana Müller · born 12 January 1985 · 3 sessions");
    QTest::keyClick(view, Qt::Key_Down);
    QTest::keyClick(view, Qt::Key_Return);

    EXPECT_EQ(guest(1).name, "Ana Müller");
    EXPECT_EQ(guest(1).birth_date, day(1985, 1, 12));
    EXPECT_EQ(guest(1).language, "de");
    ASSERT_TRUE(guest(1).measured_rmv.has_value());
    EXPECT_EQ(guest(1).screening, HealthCheck()) << "asked anew every time";
    EXPECT_FALSE(guest(1).guardian_consent);
    EXPECT_EQ(line("name_edit"), "Ana Müller");
    EXPECT_EQ(line("birth_date_edit"), "12 January 1985");

    // Known now: the list is not opened over the data again.
    const std::size_t before = asked.size();
    type("x");
    EXPECT_EQ(asked.size(), before);
}

TEST_F(RosterTest, APersonAlreadyInTheSessionIsNotOfferedAgain) {
    open(session_with({"Ana Müller"}));
    tab_->set_guest_finder([](const QString&) {
        KnownGuest known;
        known.guest.name = "Ana Müller";
        known.guest.birth_date = day(1990, 5, 17);
        return std::vector<KnownGuest>{known};
    });
    click("add_guest");
    type("ana");
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    EXPECT_EQ(guest(1).name, "ana");
}

TEST_F(RosterTest, SubjectsAreShownWhereTheyCanBeEdited) {
    Session session = session_with({"Ana", "Bo"});
    session.guests[1].kit.mask.clear();
    open(session);
    tab_->show_subject(Subject(GuestId("guest-2")));
    EXPECT_EQ(line("name_edit"), "Bo");
    EXPECT_TRUE(child<QWidget>("mask_edit")->isVisible()) << "on the page where something is wrong";
    tab_->show_subject(Subject(GroupId("group-2")));
    EXPECT_EQ(focus_name(), "group_2_name");
    EXPECT_TRUE(child<QWidget>("group_2_name")->isVisible());
    tab_->show_subject(Subject(StaffId("staff-3")));
    EXPECT_EQ(focus_name(), "staff_3_name");
    tab_->show_subject(Subject(GuestId("nobody")));
    tab_->show_subject(Subject());
    EXPECT_EQ(focus_name(), "staff_3_name") << "nothing to show, nothing happens";
}

TEST_F(RosterTest, ASubjectHiddenByTheSearchIsShownAllTheSame) {
    open(session_with({"Ana", "Bo"}));
    tab_->focus_search();
    type("ana");
    ASSERT_EQ(rows(), 1);
    tab_->show_subject(Subject(GuestId("guest-2")));
    EXPECT_EQ(line("name_edit"), "Bo");
}

TEST_F(RosterTest, GroupsAndStaffAreEditedInTheirPanel) {
    open(session_with({"Ana", "Bo"}));
    click("crew_toggle");
    EXPECT_EQ(text_of("group_1_guests"), "2 guests");
    enter("group_1_name", "Violet");
    EXPECT_EQ(document_.session().groups[0].name, "Violet");
    EXPECT_EQ(cell(0, GuestColumn::group), "Violet");
    choose("group_1_assistant", "Tomás");
    EXPECT_EQ(document_.session().groups[0].assistant, StaffId("staff-3"));
    click("add_group");
    ASSERT_EQ(document_.session().groups.size(), 3U);
    EXPECT_EQ(focus_name(), "group_3_name");
    click("group_3_remove");
    EXPECT_TRUE(QTest::qWaitFor([&] { return document_.session().groups.size() == 2U; }));

    click("add_staff");
    ASSERT_EQ(document_.session().staff.size(), 4U);
    EXPECT_EQ(focus_name(), "staff_4_name");
    type("Noor");
    EXPECT_EQ(document_.session().staff[3].name, "Noor");
    choose("staff_4_role", "Assistant");
    EXPECT_EQ(document_.session().staff[3].role, StaffRole::assistant);
    choose("staff_3_cylinder_combo", "Steel 15");
    enter("staff_3_fill_box", "220");
    ASSERT_TRUE(document_.session().staff[2].cylinder.has_value());
    EXPECT_DOUBLE_EQ(document_.session().staff[2].cylinder->fill_pressure.value(), 220.0);
    enter("staff_3_fill_box", "290");
    EXPECT_DOUBLE_EQ(document_.session().staff[2].cylinder->fill_pressure.value(), 220.0);
    EXPECT_TRUE(text_of("notice_text").starts_with("Staff: 290 bar")) << text_of("notice_text");
    click("staff_1_remove");
    EXPECT_TRUE(QTest::qWaitFor([&] { return document_.session().staff.size() == 3U; }));
    EXPECT_TRUE(document_.session().groups[0].instructor.empty());
    EXPECT_TRUE(text_of("crew_summary").find("1 stop") != std::string::npos)
        << text_of("crew_summary");
}

TEST_F(RosterTest, TheTableTakesBackTheRoomOfAClosedPanel) {
    open(session_with({"Ana", "Bo"}));
    const auto* table_and_editor = child<QWidget>("roster_splitter");
    const int before = table_and_editor->height();
    click("crew_toggle");
    EXPECT_TRUE(QTest::qWaitFor([&] { return table_and_editor->height() < before; }));
    click("crew_toggle");
    EXPECT_TRUE(QTest::qWaitFor([&] { return table_and_editor->height() == before; }))
        << table_and_editor->height() << " of " << before;
}

TEST_F(RosterTest, TooManyGuestsInAGroupAreSaidBesideIt) {
    open(session_with({"A1", "A2", "A3", "A4", "A5", "A6", "A7", "A8", "A9"}));
    click("crew_toggle");
    EXPECT_EQ(text_of("group_1_guests"), "9 guests");
    auto* findings = child<QWidget>("group_1_findings");
    ASSERT_TRUE(findings->isVisible());
    bool said = false;
    for (const auto* label : findings->findChildren<QLabel*>()) {
        said = said || label->text().contains(QStringLiteral("9 places used"));
    }
    EXPECT_TRUE(said);
    EXPECT_EQ(cell(0, GuestColumn::findings), "Group: stop");
}

TEST_F(RosterTest, OpeningAnotherSessionStartsAnew) {
    open(session_with({"Ana", "Bo"}));
    click_row(1);
    tab_->focus_search();
    type("bo");
    SessionFile other;
    other.session = session_with({"Eva", "Fay", "Gil"});
    ASSERT_TRUE(document_.open(other).has_value());
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(line("guest_search"), "");
    EXPECT_EQ(line("name_edit"), "Eva");
}

TEST_F(RosterTest, FortyGuestsFit) {
    std::vector<std::string> names;
    for (int i = 1; i <= 40; ++i) names.push_back("Guest number " + std::to_string(i));
    open(session_with(names));
    EXPECT_EQ(rows(), 40);
    click("add_guest");
    EXPECT_EQ(rows(), 41);
    const auto* table = child<QTableView>("guest_table");
    const QRect last = table->visualRect(table->model()->index(40, 0));
    EXPECT_TRUE(table->viewport()->rect().contains(last.center())) << "scrolled to the new one";
}

TEST_F(RosterTest, ALongNameWidensNothing) {
    open(session_with({std::string(200, 'W')}));
    EXPECT_EQ(tab_->width(), 1280);
    EXPECT_LT(tab_->minimumSizeHint().width(), 860) << "fits a screen at 150 %";
}

}  // namespace
}  // namespace leadline::testing
