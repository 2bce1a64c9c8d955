// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAccessible>
#include <QAction>
#include <QMenu>
#include <QScrollArea>
#include <set>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/language_button.h"

namespace leadline::testing {
namespace {

TEST_F(RosterTest, AGuestIsTakenInWithoutTheMouse) {
    open(staffed_session());
    press(Qt::Key_Insert);
    ASSERT_EQ(focus_name(), "name_edit");
    type("Ana");
    press(Qt::Key_Tab);
    EXPECT_EQ(focus_name(), "birth_date_edit");
    type("17.5.1990");
    press(Qt::Key_Tab);
    EXPECT_EQ(focus_name(), "language_combo");
    press(Qt::Key_Tab);
    EXPECT_EQ(focus_name(), "group_combo");
    press(Qt::Key_Down);
    EXPECT_EQ(guest(0).group, GroupId("group-1"));

    press(Qt::Key_C, Qt::AltModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return child<QWidget>("open_questions")->isVisible(); }));
    press(Qt::Key_Escape);
    EXPECT_EQ(focus_name(), "guest_table");
    press(Qt::Key_Return);
    EXPECT_EQ(focus_name(), "open_questions") << "Return goes to the page shown";
    press(Qt::Key_Space);
    EXPECT_EQ(focus_name(), "answer_lungs_open");
    // No to the lungs; a yes to the heart unfolds its closer questions, and the third is a yes.
    type("ny");
    EXPECT_EQ(focus_name(), "answer_heart_pressure_open");
    type("nnynnn");
    EXPECT_EQ(focus_name(), "answer_exercise_open") << "nobody under 45 is asked what comes between";
    type("nnnnnnnnn");
    EXPECT_EQ(focus_name(), "answer_cold_or_blocked_ears_open");
    type("nnnnnn");
    EXPECT_EQ(focus_name(), "answer_cannot_swim_no");
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Physician first · Clear today");
    press(Qt::Key_Up);
    EXPECT_EQ(focus_name(), "answer_unwilling_or_very_afraid_no");
    press(Qt::Key_Right);
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Physician first · Not today");
    press(Qt::Key_Left);
    EXPECT_EQ(guest(0).screening, HealthCheck()) << "nothing is recorded before Record";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(guest(0).screening.outcome, ScreeningOutcome::physician_required);
    EXPECT_EQ(guest(0).screening.today, TodayOutcome::clear);
    EXPECT_EQ(text_of("screening_outcome"), "Physician first");
    EXPECT_EQ(focus_name(), "open_questions");

    press(Qt::Key_I, Qt::AltModifier);
    ASSERT_TRUE(QTest::qWaitFor([&] { return child<QWidget>("suit_edit")->isVisible(); }));
    press(Qt::Key_Escape);
    press(Qt::Key_Return);
    EXPECT_EQ(focus_name(), "guest_cylinder_combo");
    choose("guest_cylinder_combo", "Steel 12");
    press(Qt::Key_Tab);
    EXPECT_EQ(focus_name(), "guest_fill_box");
    type("200");
    press(Qt::Key_Tab);
    ASSERT_TRUE(guest(0).kit.cylinder.has_value());
    EXPECT_DOUBLE_EQ(guest(0).kit.cylinder->fill_pressure.value(), 200.0);

    press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(focus_name(), "name_edit");
    press(Qt::Key_Escape);
    press(Qt::Key_Delete);
    EXPECT_EQ(rows(), 1);
    press(Qt::Key_F, Qt::ControlModifier);
    EXPECT_EQ(focus_name(), "guest_search");
    press(Qt::Key_Down);
    EXPECT_EQ(focus_name(), "guest_table");
}

TEST_F(RosterTest, AnAnswerIsOneStopForTheTabKey) {
    open(session_with({"Ana"}));
    click("page_screening");
    click("open_questions");
    child<QWidget>("answer_lungs_no")->setFocus();
    press(Qt::Key_Tab);
    EXPECT_EQ(focus_name(), "answer_heart_and_blood_no");
    press(Qt::Key_Tab, Qt::ShiftModifier);
    EXPECT_EQ(focus_name(), "answer_lungs_no");
}

TEST_F(RosterTest, AnAnswerInTheScrolledPartComesIntoSight) {
    open(session_with({"Ana"}));
    click("page_screening");
    click("open_questions");
    child<QWidget>("answer_lungs_no")->setFocus();
    for (int i = 0; i < 16; ++i) press(Qt::Key_Down);
    EXPECT_EQ(focus_name(), "answer_cannot_swim_open");
    const QWidget* last = QApplication::focusWidget();
    const auto* area = child<QScrollArea>("page_area_1");
    const QPoint place = last->mapTo(area->viewport(), last->rect().center());
    EXPECT_TRUE(area->viewport()->rect().contains(place));
}

TEST_F(RosterTest, LanguagesAreTickedInAMenuThatStaysOpen) {
    open(staffed_session());
    click("crew_toggle");
    auto* button = child<LanguageButton>("staff_3_languages");
    EXPECT_EQ(button->text(), QStringLiteral("Portuguese"));
    QMenu* menu = button->menu();
    menu->popup(QPoint(10, 10));
    const auto actions = menu->actions();
    menu->setActiveAction(*std::find_if(actions.begin(), actions.end(), [](const QAction* action) {
        return action->data().toString() == QStringLiteral("es");
    }));
    QTest::keyClick(menu, Qt::Key_Space);
    EXPECT_TRUE(menu->isVisible());
    EXPECT_EQ(document_.session().staff[2].languages, (std::vector<std::string>{"pt", "es"}));
    QTest::keyClick(menu, Qt::Key_Space);
    EXPECT_EQ(document_.session().staff[2].languages, std::vector<std::string>{"pt"});
    QTest::keyClick(menu, Qt::Key_Escape);
    EXPECT_FALSE(menu->isVisible());
}

/// Controls a screen reader would announce without a name.
void collect_nameless(QAccessibleInterface* element, std::vector<std::string>& nameless) {
    if (element == nullptr) return;
    static const std::set<QAccessible::Role> controls{
        QAccessible::PushButton, QAccessible::CheckBox,     QAccessible::RadioButton,
        QAccessible::ComboBox,   QAccessible::EditableText, QAccessible::SpinBox,
        QAccessible::Table,      QAccessible::ButtonMenu};
    const bool inside_compound =
        element->parent() != nullptr && (element->parent()->role() == QAccessible::SpinBox ||
                                         element->parent()->role() == QAccessible::ComboBox);
    if (controls.contains(element->role()) && !inside_compound &&
        element->text(QAccessible::Name).trimmed().isEmpty()) {
        nameless.push_back(element->object() != nullptr
                               ? element->object()->objectName().toStdString()
                               : std::string("?"));
    }
    if (element->role() == QAccessible::Table) return;  // its cells are the model's business
    for (int i = 0; i < element->childCount(); ++i) collect_nameless(element->child(i), nameless);
}

TEST_F(RosterTest, EveryControlHasANameForScreenReaders) {
    Session session = session_with({"Ana", "Bo"});
    session.guests[0].birth_date = day(2012, 1, 1);
    open(session);
    click("crew_toggle");
    const auto expect_named = [&](const char* where) {
        std::vector<std::string> nameless;
        collect_nameless(QAccessible::queryAccessibleInterface(tab_.get()), nameless);
        EXPECT_TRUE(nameless.empty()) << where << ": " << ::testing::PrintToString(nameless);
    };
    for (const char* page : {"page_person", "page_screening", "page_kit"}) {
        click(page);
        expect_named(page);
    }
    click("page_screening");
    click("open_questions");
    expect_named("questions");
    click("close_check");
    click("open_own_form");
    expect_named("own form");
    click_row(0);
    click_row(1, Qt::ControlModifier);
    expect_named("several");
}

TEST_F(RosterTest, EveryControlHasAnObjectName) {
    open(session_with({"Ana"}));
    click("crew_toggle");
    click("page_screening");
    click("open_questions");
    for (const auto* widget : tab_->findChildren<QWidget*>()) {
        const bool control = widget->focusPolicy() != Qt::NoFocus &&
                             !widget->objectName().startsWith(QStringLiteral("qt_")) &&
                             widget->parentWidget()->objectName() != widget->objectName();
        if (!control || widget->focusProxy() != nullptr) continue;
        EXPECT_FALSE(widget->objectName().isEmpty())
            << widget->metaObject()->className() << " in "
            << widget->parentWidget()->objectName().toStdString();
    }
}

TEST_F(RosterTest, NoTwoControlsInSightShareAMnemonic) {
    Session session = session_with({"Ana"});
    session.guests[0].birth_date = day(2012, 1, 1);
    open(session);
    for (const char* page : {"page_person", "page_screening", "open_questions", "page_kit"}) {
        click(page);
        std::map<QString, std::string> seen;
        const auto note = [&](const QWidget* widget, const QString& text) {
            const QString key = QKeySequence::mnemonic(text).toString();
            if (key.isEmpty() || !widget->isVisible()) return;
            const auto [other, fresh] = seen.emplace(key, text.toStdString());
            EXPECT_TRUE(fresh) << page << ": " << text.toStdString() << " and " << other->second;
        };
        for (const auto* button : tab_->findChildren<QAbstractButton*>()) {
            note(button, button->text());
        }
        for (const auto* label : tab_->findChildren<QLabel*>()) {
            if (label->buddy() != nullptr) note(label, label->text());
        }
    }
}

TEST_F(RosterTest, ItsKeysAreForItselfOnly) {
    open(session_with({"Ana"}));
    tab_->hide();
    QWidget other;
    other.show();
    other.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&other));
    QTest::keyClick(&other, Qt::Key_Insert);
    EXPECT_EQ(document_.session().guests.size(), 1U);
}

}  // namespace
}  // namespace leadline::testing
