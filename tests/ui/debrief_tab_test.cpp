// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QDir>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QStackedWidget>
#include <QTableView>
#include <QTimeEdit>
#include <QUndoStack>

#include "tests/ui/site_gas_walk.h"
#include "ui/debrief/debrief_model.h"
#include "ui/debrief/debrief_tab.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class DebriefTabTest : public DocumentTest {
protected:
    void show(const char* name) {
        open(name);
        tab_ = std::make_unique<DebriefTab>(document_);
        tab_->resize(1000, 700);
        tab_->show();
    }
    /// Gives the window and the table the focus, which a test must not take for granted.
    void focus_table() {
        tab_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(tab_.get()));
        table().setFocus();
        ASSERT_TRUE(table().hasFocus());
    }
    void click(const char* name) {
        QTest::mouseClick(child<QPushButton>(*tab_, name), Qt::LeftButton);
    }
    QTableView& table() { return *child<QTableView>(*tab_, "debrief_table"); }
    QString cell(int row, int column) {
        return table().model()->index(row, column).data().toString();
    }
    /// Types into a cell as a user would: choose it, type, Return.
    void type(int row, int column, const char* text) {
        table().setCurrentIndex(table().model()->index(row, column));
        table().setFocus();
        QTest::keyClick(table().viewport(), Qt::Key_F2);
        QWidget* editor = table().findChild<QWidget*>(QStringLiteral("debrief_editor"));
        if (editor == nullptr) {
            table().edit(table().currentIndex());
            editor = table().findChild<QWidget*>(QStringLiteral("debrief_editor"));
        }
        ASSERT_NE(editor, nullptr);
        QTest::keyClicks(editor, QString::fromUtf8(text));
        QTest::keyClick(editor, Qt::Key_Return);
        EXPECT_TRUE(QTest::qWaitFor([&] {
            return table().findChild<QWidget*>(QStringLiteral("debrief_editor")) == nullptr;
        }));
    }
    QString message() { return child<QLabel>(*tab_, "debrief_message")->text(); }

    std::unique_ptr<DebriefTab> tab_;
};

TEST_F(DebriefTabTest, ShowsWhatEverybodyBreathed) {
    show("finished-dive");
    ASSERT_EQ(table().model()->rowCount(), static_cast<int>(document_.log()->divers.size()));
    const LitersPerMinute rmv = document_.review()->divers[2].actual_rmv.value();
    EXPECT_TRUE(cell(2, DebriefModel::rmv_column)
                    .endsWith(QStringLiteral("→ ") + text(rmv, UnitSystem::metric)));
    EXPECT_TRUE(cell(2, DebriefModel::rmv_change_column).endsWith(QStringLiteral("% more")));
}

TEST_F(DebriefTabTest, NamesWhoCameBackWithTheLeast) {
    show("finished-dive");
    EXPECT_THAT(child<QLabel>(*tab_, "debrief_answer")->text().toStdString(),
                HasSubstr("came back with the least air"));
}

TEST_F(DebriefTabTest, SaysWhatWasExceededInWords) {
    show("finished-dive");
    const std::string words = child<QLabel>(*tab_, "debrief_findings")->text().toStdString();
    EXPECT_THAT(words, HasSubstr("Stop"));
    EXPECT_THAT(words, HasSubstr("m/min"));
}

TEST_F(DebriefTabTest, MarksWhoIsConcernedAndWhoHadTheLeast) {
    show("finished-dive");
    const auto icon = [&](int row) {
        return table().model()->index(row, DebriefModel::name_column)
            .data(Qt::DecorationRole).isValid();
    };
    EXPECT_FALSE(icon(0));
    EXPECT_TRUE(icon(1));  // up too fast
    EXPECT_TRUE(icon(2));  // below the reserve
    EXPECT_TRUE(cell(2, DebriefModel::end_column).endsWith(QStringLiteral("least")));
    EXPECT_FALSE(cell(0, DebriefModel::end_column).contains(QStringLiteral("least")));
    EXPECT_THAT(table().model()->index(1, DebriefModel::name_column)
                    .data(Qt::AccessibleTextRole).toString().toStdString(),
                HasSubstr("Stop"));
    EXPECT_THAT(child<QWidget>(*tab_, "debrief_chart")->accessibleDescription().toStdString(),
                HasSubstr("up too fast: 10.4"));
}

TEST_F(DebriefTabTest, ClaimsNothingBeforeAnythingWasEntered) {
    show("salt-cove");
    click("debrief_start");
    const auto* answer = child<QLabel>(*tab_, "debrief_answer");
    EXPECT_THAT(answer->text().toStdString(), HasSubstr("enter each guest's end pressure"));
    EXPECT_THAT(child<QLabel>(*tab_, "debrief_findings")->text().toStdString(),
                Not(HasSubstr("No limit")));
    EXPECT_EQ(cell(0, DebriefModel::deepest_column).toStdString(), "–");
    type(0, DebriefModel::end_column, "90");
    EXPECT_THAT(answer->text().toStdString(), HasSubstr("so far; still to enter: 3"));
}

TEST_F(DebriefTabTest, TabLeavesTheTable) {
    show("finished-dive");
    focus_table();
    QTest::keyClick(&table(), Qt::Key_Tab);
    EXPECT_FALSE(table().hasFocus());
}

TEST_F(DebriefTabTest, AnUntouchedRefreshKeepsTheFocusAndTheCell) {
    show("finished-dive");
    const QModelIndex index = table().model()->index(3, DebriefModel::duration_column);
    table().setCurrentIndex(index);
    focus_table();
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.title = "Another";
    }).has_value());
    EXPECT_TRUE(table().hasFocus());
    EXPECT_EQ(table().currentIndex(), index);
}

TEST_F(DebriefTabTest, ALogIsStartedFilledInAndReviewed) {
    show("salt-cove");
    EXPECT_EQ(child<QStackedWidget>(*tab_, "debrief_pages")->currentIndex(), 0);
    click("debrief_start");
    ASSERT_TRUE(document_.log().has_value());
    EXPECT_EQ(cell(0, DebriefModel::rmv_column).toStdString(), "not yet known");
    type(0, DebriefModel::end_column, "90");
    type(0, DebriefModel::duration_column, "35");
    EXPECT_EQ(document_.log()->divers[0].end_pressure.value(), 90.0);
    EXPECT_EQ(document_.log()->divers[0].duration.value(), 35.0);
    ASSERT_TRUE(document_.review()->divers[0].actual_rmv.has_value());
    EXPECT_THAT(cell(0, DebriefModel::rmv_column).toStdString(), HasSubstr("L/min"));
}

TEST_F(DebriefTabTest, AnOpenHeadCountIsAStopUntilItAgrees) {
    show("salt-cove");
    click("debrief_start");
    EXPECT_THAT(child<QLabel>(*tab_, "debrief_heads_words")->text().toStdString(),
                HasSubstr("Stop"));
    auto* back = child<QSpinBox>(*tab_, "debrief_heads_out");
    back->setFocus();
    back->selectAll();
    QTest::keyClicks(back, QStringLiteral("5"));  // four guests and who leads them
    QTest::keyClick(back, Qt::Key_Return);
    EXPECT_EQ(child<QLabel>(*tab_, "debrief_heads_words")->text().toStdString(), "All back");
    EXPECT_EQ(document_.log()->heads_in, 5);
    EXPECT_EQ(document_.log()->heads_out, 5);
}

TEST_F(DebriefTabTest, AnEndAboveTheStartIsRefusedAndTheOldValueStays) {
    show("finished-dive");
    const double before = document_.log()->divers[0].end_pressure.value();
    type(0, DebriefModel::end_column, "230");
    EXPECT_EQ(document_.log()->divers[0].end_pressure.value(), before);
    EXPECT_EQ(cell(0, DebriefModel::end_column), text(Bars(before), UnitSystem::metric));
    EXPECT_THAT(message().toStdString(), HasSubstr("230"));
}

TEST_F(DebriefTabTest, TimesThatRunBackwardsAreRefused) {
    show("finished-dive");
    const TimeOfDay before = document_.log()->time_out;
    auto* out = child<QTimeEdit>(*tab_, "debrief_time_out");
    out->setTime(QTime(1, 0));
    EXPECT_EQ(document_.log()->time_out, before);
    EXPECT_EQ(out->time().hour() * 60 + out->time().minute(), before.minutes_after_midnight);
}

TEST_F(DebriefTabTest, UndoTakesBackAPressureAndThenTheLog) {
    show("salt-cove");
    click("debrief_start");
    type(0, DebriefModel::end_column, "90");
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.log()->divers[0].end_pressure.value(),
              document_.log()->divers[0].start_pressure.value());
    document_.undo_stack()->undo();
    EXPECT_FALSE(document_.log().has_value());
}

TEST_F(DebriefTabTest, ALogIsTakenFromAFile) {
    show("finished-dive");
    const DiveLog log = *document_.log();
    click("debrief_remove");
    EXPECT_FALSE(document_.log().has_value());
    tab_->set_log_path_chooser([] { return sample_path("finished-dive"); });
    click("debrief_open");
    ASSERT_TRUE(document_.log().has_value());
    EXPECT_EQ(*document_.log(), log);
}

TEST_F(DebriefTabTest, ABrokenLogFileIsRefusedAndNothingChanges) {
    show("salt-cove");
    const SessionFile before = document_.file();
    for (const char* name : {"log-ends-before-start", "not-json", "log-unknown-guest"}) {
        tab_->set_log_path_chooser([name]() -> QString {
            return QStringLiteral(LEADLINE_TEST_DATA_DIR "/broken/") + QString::fromUtf8(name) +
                   QStringLiteral(".json");
        });
        click("debrief_open");
        EXPECT_EQ(document_.file(), before) << name;
        EXPECT_THAT(message().toStdString(), HasSubstr(name));
    }
    tab_->set_log_path_chooser([] { return sample_path("harbour-morning"); });
    click("debrief_open");
    EXPECT_EQ(document_.file(), before) << "a session without a log";
    EXPECT_THAT(message().toStdString(), HasSubstr("log"));
}

TEST_F(DebriefTabTest, ALogOfOtherPeopleIsRefusedThoughTheirIdsAreTheSame) {
    show("salt-cove");
    const SessionFile before = document_.file();
    ASSERT_EQ(before.session.guests.front().id, sample("finished-dive").session.guests.front().id);
    tab_->set_log_path_chooser([] { return sample_path("finished-dive"); });
    click("debrief_open");
    EXPECT_EQ(document_.file(), before);
    EXPECT_THAT(message().toStdString(), HasSubstr("/date"));
    // The same day does not make them the same people.
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.date = sample("finished-dive").session.date;
    }).has_value());
    click("debrief_open");
    EXPECT_FALSE(document_.log().has_value());
    EXPECT_THAT(message().toStdString(), HasSubstr("Noura al-Farsi"));
    EXPECT_THAT(message().toStdString(), HasSubstr(before.session.guests.front().name));
}

TEST_F(DebriefTabTest, OneChangedNameRefusesTheWholeLog) {
    show("finished-dive");
    click("debrief_remove");
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests.back().name = "Somebody Else";
    }).has_value());
    tab_->set_log_path_chooser([] { return sample_path("finished-dive"); });
    click("debrief_open");
    EXPECT_FALSE(document_.log().has_value());
    EXPECT_THAT(message().toStdString(), HasSubstr("Somebody Else"));
}

TEST_F(DebriefTabTest, AMeasuredRateFeedsTheNextPlanRoundedUp) {
    show("finished-dive");
    tab_->show_subject(document_.session().guests[2].id);
    const double rmv = document_.review()->divers[2].actual_rmv->value();
    click("debrief_use_one");
    const Guest& guest = document_.session().guests[2];
    ASSERT_TRUE(guest.measured_rmv.has_value());
    EXPECT_GE(guest.measured_rmv->value(), rmv - 1e-9);
    EXPECT_LT(guest.measured_rmv->value(), rmv + 0.5);
    EXPECT_EQ(find_gas(document_.plan(), guest.id)->rmv_source, RmvSource::measured);
}

TEST_F(DebriefTabTest, AllRatesAreTakenOverInOneStep) {
    show("finished-dive");
    const Session before = document_.session();
    click("debrief_use_all");
    for (const Guest& guest : document_.session().guests) EXPECT_TRUE(guest.measured_rmv.has_value());
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.session(), before);
}

TEST_F(DebriefTabTest, TickingEarTroubleIsKept) {
    show("finished-dive");
    const bool before = document_.log()->divers[0].ears_troubled;
    const QModelIndex index = table().model()->index(0, DebriefModel::ears_column);
    table().setCurrentIndex(index);
    table().setFocus();
    QTest::keyClick(&table(), Qt::Key_Space);
    EXPECT_NE(document_.log()->divers[0].ears_troubled, before);
}

TEST_F(DebriefTabTest, FeetAndPsiAreShownWhenChosen) {
    show("finished-dive");
    document_.set_units(UnitSystem::imperial);
    EXPECT_THAT(cell(0, DebriefModel::start_column).toStdString(), HasSubstr("psi"));
    EXPECT_THAT(cell(0, DebriefModel::deepest_column).toStdString(), HasSubstr("ft"));
}

TEST_F(DebriefTabTest, EveryControlHasANameForEyesEarsAndScripts) {
    show("finished-dive");
    EXPECT_EQ(nameless_controls(*tab_).join(u'\n').toStdString(), "");
}

TEST_F(DebriefTabTest, TheModelKeepsItsPromises) {
    open("finished-dive");
    DebriefModel model(document_);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(document_.edit_log(QStringLiteral("x"), [](std::optional<DiveLog>& log) {
        log->divers.pop_back();
    }).has_value());
    EXPECT_EQ(model.rowCount(), static_cast<int>(document_.log()->divers.size()));
}

}  // namespace
}  // namespace leadline::testing
