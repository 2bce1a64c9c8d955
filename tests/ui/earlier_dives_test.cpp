// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/earlier_dives_dialog.h"

#include <QAbstractItemModelTester>
#include <QDateTimeEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QWheelEvent>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/earlier_dives_model.h"

namespace leadline::testing {
namespace {

/// The dialog of Mara, opened from her line by a click.
class EarlierDivesTest : public RosterTest {
protected:
    void open_dialog(const Session& session, DiveFinder finder = {}) {
        open(session);
        if (finder) tab_->set_dive_finder(std::move(finder));
        if (!child<QAbstractButton>("crew_toggle")->isChecked()) click("crew_toggle");
        click("staff_1_dives");
        dialog_ = tab_->findChild<EarlierDivesDialog*>();
        ASSERT_NE(dialog_, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == dialog_; }));
        table_ = child<QTableView>("earlier_dives_table");
    }
    const StaffMember& mara() { return document_.session().staff.front(); }
    std::string shown(int row, DiveColumn column) {
        const QModelIndex cell = table_->model()->index(row, static_cast<int>(column));
        return cell.data().toString().toStdString();
    }
    std::string message() { return child<QLabel>("earlier_dives_message")->text().toStdString(); }
    bool says(const char* words) { return message().find(words) != std::string::npos; }
    void press_button(const char* name) {
        auto* button = child<QPushButton>(name);
        EXPECT_TRUE(button->isEnabled()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    /// The box a cell is edited in.
    static QWidget* editor() {
        EXPECT_EQ(focus_name(), "earlier_dive_editor");
        return QApplication::focusWidget();
    }
    /// A key that closes the box; the value is taken over once the key has been worked off.
    static void leave_box(Qt::Key key) {
        QTest::keyClick(editor(), key);
        EXPECT_TRUE(QTest::qWaitFor([] { return focus_name() != "earlier_dive_editor"; }));
    }
    /// Types over the text of the box and goes on to the next cell.
    void fill(const char* text) {
        QWidget* box = editor();
        for (const QChar letter : QString::fromUtf8(text)) type_letter(box, letter);
        QTest::keyClick(box, Qt::Key_Tab);
    }

    EarlierDivesDialog* dialog_ = nullptr;
    QTableView* table_ = nullptr;
};

EarlierDive dive(Date date, int start, double deepest, double minutes, int ascents = 1) {
    return {date, TimeOfDay{start}, Depth(Meters(deepest)), Minutes(minutes), ascents};
}

TEST_F(EarlierDivesTest, ADiveIsTypedByKeysAlone) {
    open_dialog(staffed_session());
    EXPECT_TRUE(child<QLabel>("earlier_dives_empty")->isVisible());
    EXPECT_EQ(focus_name(), "earlier_dives_add");
    press(Qt::Key_Space);
    ASSERT_TRUE(table_->isVisible());
    ASSERT_EQ(table_->model()->rowCount(), 1);
    fill("3");  // the day of the month
    fill("0715");
    fill("12.5");
    fill("41");
    QWidget* last = editor();
    type_letter(last, u'4');
    leave_box(Qt::Key_Return);
    EXPECT_EQ(shown(0, DiveColumn::date), "Fri 3 July 2026");
    EXPECT_EQ(shown(0, DiveColumn::start), "07:15");
    EXPECT_TRUE(message().empty()) << message();
    EXPECT_TRUE(mara().earlier_dives.empty()) << "nothing is taken over before OK";
    press_button("earlier_dives_ok");
    EXPECT_EQ(mara().earlier_dives,
              std::vector<EarlierDive>{dive(day(2026, 7, 3), 435, 12.5, 41.0, 4)});
    EXPECT_EQ(child<QAbstractButton>("staff_1_dives")->text().toStdString(), "1…");
}

TEST_F(EarlierDivesTest, AllOfItIsOneStepToUndo) {
    open_dialog(staffed_session());
    press_button("earlier_dives_add");
    leave_box(Qt::Key_Return);
    press_button("earlier_dives_add");
    leave_box(Qt::Key_Return);
    enter("extra_ascents_box", "3");
    press_button("earlier_dives_ok");
    EXPECT_EQ(mara().earlier_dives.size(), 2U);
    EXPECT_EQ(mara().extra_ascents, 3);
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    document_.undo_stack()->undo();
    EXPECT_TRUE(mara().earlier_dives.empty());
    EXPECT_EQ(mara().extra_ascents, 0);
    document_.undo_stack()->redo();
    EXPECT_EQ(mara().earlier_dives.size(), 2U);
}

TEST_F(EarlierDivesTest, SuggestionsNeverOverlap) {
    open_dialog(staffed_session());
    for (int i = 0; i < 30; ++i) {
        press_button("earlier_dives_add");
        leave_box(Qt::Key_Return);
        ASSERT_TRUE(message().empty()) << message();
    }
    press_button("earlier_dives_ok");
    EXPECT_EQ(mara().earlier_dives.size(), 30U);
}

TEST_F(EarlierDivesTest, CancelAndEscapeTakeNothingOver) {
    open_dialog(staffed_session());
    press_button("earlier_dives_add");
    leave_box(Qt::Key_Escape);
    EXPECT_TRUE(dialog_->isVisible()) << "Escape leaves the cell first";
    QTest::keyClick(table_, Qt::Key_Escape);
    EXPECT_TRUE(mara().earlier_dives.empty());
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(EarlierDivesTest, SaysWhatIsWrongAndStaysOpen) {
    Session session = staffed_session();
    session.staff[0].earlier_dives = {dive(day(2026, 7, 4), 480, 9.0, 40.0)};
    open_dialog(session);
    table_->setCurrentIndex(table_->model()->index(0, static_cast<int>(DiveColumn::start)));
    press(Qt::Key_F2);
    fill("0930");  // over at 10:10, after this dive begins
    EXPECT_TRUE(says("09:30")) << message();
    press_button("earlier_dives_ok");
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(mara().earlier_dives[0].start, TimeOfDay{480});
    ASSERT_EQ(focus_name(), "earlier_dive_editor") << "the wrong cell is open";
    EXPECT_EQ(table_->currentIndex().column(), static_cast<int>(DiveColumn::start));
    fill("0900");
    EXPECT_TRUE(message().empty());
    press_button("earlier_dives_ok");
    EXPECT_EQ(mara().earlier_dives[0].start, TimeOfDay{540});
}

TEST_F(EarlierDivesTest, RowsAreRemovedByKey) {
    Session session = staffed_session();
    session.staff[0].earlier_dives = {dive(day(2026, 7, 2), 480, 9.0, 40.0),
                                      dive(day(2026, 7, 3), 480, 9.0, 40.0)};
    open_dialog(session);
    EXPECT_EQ(shown(0, DiveColumn::date), "Fri 3 July 2026") << "newest first";
    EXPECT_EQ(focus_name(), "earlier_dives_table");
    press(Qt::Key_Delete);
    ASSERT_EQ(table_->model()->rowCount(), 1);
    EXPECT_EQ(shown(0, DiveColumn::date), "Thu 2 July 2026");
    press(Qt::Key_Delete);
    EXPECT_EQ(focus_name(), "earlier_dives_add");
    EXPECT_FALSE(child<QPushButton>("earlier_dives_remove")->isEnabled());
    press_button("earlier_dives_ok");
    EXPECT_TRUE(mara().earlier_dives.empty());
}

TEST_F(EarlierDivesTest, TheKeyboardGetsOutOfTheTable) {
    Session session = staffed_session();
    session.staff[0].earlier_dives = {dive(day(2026, 7, 2), 480, 9.0, 40.0)};
    open_dialog(session);
    for (int i = 0; i < dive_column_count; ++i) press(Qt::Key_Tab);
    EXPECT_EQ(focus_name(), "earlier_dives_add");
    press(Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(focus_name(), "earlier_dives_table");
}

TEST_F(EarlierDivesTest, TheRecordsAreTakenOverOnce) {
    const Date yesterday = day(2026, 7, 3);
    std::string asked;
    open_dialog(staffed_session(), [&](const std::string& name, Date date, TimeOfDay time) {
        asked = name + " " + to_text(date) + " " + to_text(time);
        return Result<std::vector<EarlierDive>>({dive(yesterday, 600, 8.0, 40.0),
                                                 dive(yesterday, 610, 8.0, 40.0),
                                                 dive(yesterday, 900, 7.0, 45.0)});
    });
    press_button("earlier_dives_take");
    EXPECT_EQ(asked, "Mara Lind 2026-07-04 10:00");
    EXPECT_EQ(table_->model()->rowCount(), 2);
    EXPECT_EQ(message(), "Taken over: 2. In the table already: 1.");
    press_button("earlier_dives_take");
    EXPECT_EQ(table_->model()->rowCount(), 2);
    EXPECT_EQ(message(), "Taken over: 0. In the table already: 3.");
    press_button("earlier_dives_ok");
    EXPECT_EQ(mara().earlier_dives.size(), 2U);
}

TEST_F(EarlierDivesTest, RecordsThatCannotBeReadAreTold) {
    open_dialog(staffed_session(), [](const std::string&, Date, TimeOfDay) {
        return Result<std::vector<EarlierDive>>(
            Error{ErrorCode::database_locked, "records.sqlite", {}, {}});
    });
    press_button("earlier_dives_take");
    EXPECT_TRUE(says("in use by another program"));
}

TEST_F(EarlierDivesTest, WithoutRecordsOrNameNothingIsLookedUp) {
    open_dialog(staffed_session());
    EXPECT_FALSE(child<QPushButton>("earlier_dives_take")->isEnabled());
    QTest::keyClick(dialog_, Qt::Key_Escape);
    Session session = staffed_session();
    session.staff[0].name.clear();
    open_dialog(session, [](const std::string&, Date, TimeOfDay) {
        return Result<std::vector<EarlierDive>>(std::vector<EarlierDive>());
    });
    EXPECT_FALSE(child<QPushButton>("earlier_dives_take")->isEnabled());
}

TEST_F(EarlierDivesTest, EveryControlHasANameToBeReadOut) {
    open_dialog(staffed_session());
    for (const QWidget* widget : dialog_->findChildren<QWidget*>()) {
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const bool named = !widget->accessibleName().isEmpty() ||
                           (button != nullptr && !button->text().isEmpty());
        if (widget->focusPolicy() == Qt::NoFocus) continue;
        if (widget->objectName().startsWith(u"qt_")) continue;
        EXPECT_TRUE(named) << widget->metaObject()->className() << " "
                           << widget->objectName().toStdString();
    }
}

TEST_F(EarlierDivesTest, TheWheelOverABoxWithoutFocusChangesNothing) {
    open_dialog(staffed_session());
    auto* box = child<QSpinBox>("extra_ascents_box");
    ASSERT_FALSE(box->hasFocus());
    const QPointF at = box->rect().center();
    QWheelEvent wheel(at, box->mapToGlobal(at), {}, QPoint(0, 120), Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(box, &wheel);
    EXPECT_EQ(box->value(), 0);
    box->setFocus();
    QApplication::sendEvent(box, &wheel);
    EXPECT_EQ(box->value(), 1);
}

TEST(EarlierDivesModelTest, IsASoundModel) {
    EarlierDivesModel model(UnitSystem::imperial);
    QAbstractItemModelTester tester(&model,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show_dives(
        {dive(day(2026, 7, 2), 480, 9.0, 40.0), dive(day(2026, 7, 3), 480, 9.0, 40.0)});
    EXPECT_EQ(model.index(0, 2).data().toString(), QStringLiteral("30\u00a0ft"));
    model.add(dive(day(2026, 7, 4), 480, 9.0, 40.0));
    EXPECT_TRUE(model.setData(model.index(0, 3), 55.5, Qt::EditRole));
    EXPECT_EQ(model.dives()[0].duration.value(), 55.5);
    model.set_wrong(model.index(1, 1), QStringLiteral("too late"));
    model.remove(1);
    model.set_wrong(std::nullopt, {});
    EXPECT_EQ(model.rowCount(), 2);
}

}  // namespace
}  // namespace leadline::testing
