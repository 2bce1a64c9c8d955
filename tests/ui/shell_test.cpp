// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAction>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>
#include <QUndoStack>

#include "tests/ui/site_gas_walk.h"
#include "ui/guest_screen/guest_screen.h"
#include "ui/roster/roster_tab.h"
#include "ui/shell/findings_model.h"
#include "ui/shell/main_window.h"
#include "ui_fixture.h"

#include <QAbstractItemModelTester>

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;

/// A window over records in a folder that vanishes.
class Shell : public DocumentTest {
protected:
    void SetUp() override { start(); }

    void start() {
        window_.reset();
        keeper_.reset();
        Result<std::unique_ptr<Database>> database = Database::open(database_path());
        ASSERT_TRUE(database.has_value());
        keeper_ = std::make_unique<RecordKeeper>(document_, std::move(database).value());
        window_ = std::make_unique<MainWindow>(document_, *keeper_);
        window_->resize(1280, 800);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
    }
    [[nodiscard]] QString database_path() const {
        return folder_.filePath(QStringLiteral("records.sqlite"));
    }
    QAction* action(const char* name) {
        auto* found = window_->findChild<QAction*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }

    QTemporaryDir folder_;
    std::unique_ptr<RecordKeeper> keeper_;
    std::unique_ptr<MainWindow> window_;
};

TEST_F(Shell, OpensASampleWithoutKeepingIt) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    EXPECT_FALSE(keeper_->is_kept());
    EXPECT_TRUE(child<QWidget>(*window_, "notice")->isVisible());
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.title = "Changed";
    }).has_value());
    EXPECT_TRUE(keeper_->sessions()->empty());
}

TEST_F(Shell, KeepsASampleWhenAskedAndEveryEditAfterThat) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    QTest::mouseClick(child<QPushButton>(*window_, "notice_keep"), Qt::LeftButton);
    EXPECT_TRUE(keeper_->is_kept());
    EXPECT_FALSE(child<QWidget>(*window_, "notice")->isVisible());
    auto* title = child<QLineEdit>(*window_, "session_title");
    title->selectAll();
    QTest::keyClicks(title, QStringLiteral("Evening dive"));
    const SessionFile as_left = document_.file();

    start();  // as after closing and opening the program
    const auto sessions = keeper_->sessions();
    ASSERT_TRUE(sessions.has_value());
    ASSERT_EQ(sessions->size(), 1U);
    EXPECT_EQ(sessions->front().title, "Evening dive");
    ASSERT_TRUE(keeper_->open_row(sessions->front().row).has_value());
    EXPECT_EQ(document_.file(), as_left);
}

TEST_F(Shell, ANewSessionIsKeptFromItsFirstEdit) {
    action("action_new")->trigger();
    EXPECT_TRUE(keeper_->sessions()->empty());
    QTest::keyClicks(child<QLineEdit>(*window_, "session_title"), QStringLiteral("A"));
    EXPECT_EQ(keeper_->sessions()->size(), 1U);
    QTest::keyClicks(child<QLineEdit>(*window_, "session_title"), QStringLiteral("B"));
    EXPECT_EQ(keeper_->sessions()->size(), 1U);
    EXPECT_EQ(keeper_->sessions()->front().title, "AB");
}

TEST_F(Shell, UndoAndRedoByMenuAreSavedToo) {
    action("action_new")->trigger();
    QTest::keyClicks(child<QLineEdit>(*window_, "session_title"), QStringLiteral("A"));
    action("action_undo")->trigger();
    EXPECT_EQ(keeper_->sessions()->front().title, "");
    action("action_redo")->trigger();
    EXPECT_EQ(keeper_->sessions()->front().title, "A");
}

TEST_F(Shell, ABrokenFileLeavesTheWindowAsItWasAndSaysWhy) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    const SessionFile before = document_.file();
    for (const char* name : {"not-json", "depth-900", "birth-in-future", "two-guests-same-id"}) {
        const QString path = QStringLiteral(LEADLINE_TEST_DATA_DIR "/broken/") +
                             QString::fromUtf8(name) + QStringLiteral(".json");
        ASSERT_TRUE(QFile::exists(path)) << name;
        EXPECT_FALSE(window_->open_file(path)) << name;
        EXPECT_EQ(document_.file(), before) << name;
        EXPECT_THAT(window_->message().toStdString(), HasSubstr(name));
    }
    EXPECT_THAT(window_->windowTitle().toStdString(), HasSubstr(before.session.title));
}

TEST_F(Shell, WritesTheSessionToAFileThatOpensAgain) {
    ASSERT_TRUE(window_->open_file(sample_path("mountain-lake")));
    const SessionFile before = document_.file();
    const QString path = folder_.filePath(QStringLiteral("out.json"));
    window_->choose_export_path = [&] { return path; };
    action("action_export")->trigger();
    ASSERT_TRUE(window_->open_file(path));
    EXPECT_EQ(document_.file(), before);
}

TEST_F(Shell, ReadinessFollowsEveryEdit) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    auto* ready = child<QPushButton>(*window_, "session_readiness");
    EXPECT_THAT(ready->text().toStdString(), HasSubstr("Ready"));
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.site.emergency_line.clear();
    }).has_value());
    EXPECT_THAT(ready->text().toStdString(), HasSubstr("stop"));
}

TEST_F(Shell, AFindingLeadsToItsTab) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.site.emergency_line.clear();
    }).has_value());
    auto* list = child<QListView>(*window_, "findings_list");
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::mouseClick(child<QPushButton>(*window_, "finding_go"), Qt::LeftButton);
    EXPECT_EQ(window_->tabs()->currentIndex(), MainWindow::site_tab);
}

TEST_F(Shell, FindingsDoNotOverlapWhenTheListBecomesNarrower) {
    ASSERT_TRUE(window_->open_file(sample_path("harbour-morning")));
    auto* list = child<QListView>(*window_, "findings_list");
    ASSERT_GT(list->model()->rowCount(), 1);
    const auto place = [&](int row) { return list->visualRect(list->model()->index(row, 0)); };
    int first_height = 0;
    for (const int width : {480, 200}) {
        list->resize(width, list->height());
        list->grab();
        for (int row = 1; row < list->model()->rowCount(); ++row) {
            EXPECT_GT(place(row).top(), place(row - 1).bottom()) << "row " << row << " at " << width;
        }
        EXPECT_GT(place(0).height(), first_height) << "narrower is taller";
        first_height = place(0).height();
    }
}

TEST_F(Shell, AStopIsSetAsideOnlyWithAReasonAndCanBeTakenBack) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.site.emergency_line.clear();
    }).has_value());
    EXPECT_EQ(document_.plan().readiness.stops, 1);
    auto* list = child<QListView>(*window_, "findings_list");
    list->setCurrentIndex(list->model()->index(0, 0));
    bool button_was_off = false;
    QTimer::singleShot(0, this->window_.get(), [&] {
        auto* dialog = window_->findChild<QDialog*>(QStringLiteral("overrule_dialog"));
        ASSERT_NE(dialog, nullptr);
        auto* accept = dialog->findChild<QPushButton*>(QStringLiteral("overrule_accept"));
        button_was_off = !accept->isEnabled();
        QTest::keyClicks(dialog->findChild<QPlainTextEdit*>(QStringLiteral("overrule_reason")),
                         QStringLiteral("The number hangs on the wall"));
        dialog->findChild<QLineEdit*>(QStringLiteral("overrule_by"))
            ->setText(QStringLiteral("Ines"));
        QTest::mouseClick(accept, Qt::LeftButton);
    });
    QTest::mouseClick(child<QPushButton>(*window_, "finding_overrule"), Qt::LeftButton);
    EXPECT_TRUE(button_was_off);
    EXPECT_EQ(document_.plan().readiness.stops, 0);
    ASSERT_FALSE(document_.session().overrules.empty());
    EXPECT_EQ(document_.session().overrules.back().reason, "The number hangs on the wall");
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.plan().readiness.stops, 1);
}

TEST_F(Shell, FeetAndPsiAreRememberedForNextTime) {
    action("action_imperial")->trigger();
    EXPECT_EQ(document_.units(), UnitSystem::imperial);
    document_.set_units(UnitSystem::metric);
    start();
    EXPECT_EQ(document_.units(), UnitSystem::imperial);
}

TEST_F(Shell, ARefusedEditIsExplainedAtTheFoot) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    ASSERT_FALSE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.profile.points[2].depth = Depth(Meters(-3.0));
    }).has_value());
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("-3"));
}

TEST_F(Shell, EveryTabIsReachedByItsNumber) {
    for (int tab = 0; tab < 5; ++tab) {
        window_->show_tab(static_cast<MainWindow::Tab>(tab));
        EXPECT_EQ(window_->tabs()->currentIndex(), tab);
        EXPECT_TRUE(window_->tabs()->tabText(tab).startsWith(
            QString(u'&' + QString::number(tab + 1))));
    }
}

Guest asked_guest(const HealthCheck& check) {
    Guest guest;
    guest.id = GuestId("guest-1");
    guest.name = "Ana Lindqvist";
    guest.birth_date = Date{std::chrono::year(1990), std::chrono::month(5), std::chrono::day(17)};
    guest.screening = check;
    return guest;
}

TEST_F(Shell, TheRedListLeadsToTheGuestInASessionToCome) {
    action("action_new")->trigger();
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.title = "To come";
        session.guests = {asked_guest({})};
    }).has_value());
    action("action_new")->trigger();
    EXPECT_TRUE(document_.session().guests.empty());
    bool shown = false;
    QTimer::singleShot(0, window_.get(), [&] {
        auto* dialog = QApplication::activeModalWidget();
        ASSERT_NE(dialog, nullptr);
        auto* table = dialog->findChild<QTableView*>(QStringLiteral("red_list_table"));
        shown = table->model()->rowCount() == 1;
        QTest::mouseClick(dialog->findChild<QWidget*>(QStringLiteral("red_list_open")),
                          Qt::LeftButton);
    });
    action("action_red_list")->trigger();
    EXPECT_TRUE(shown);
    EXPECT_EQ(document_.session().title, "To come");
    EXPECT_EQ(child<QLabel>(*window_, "editor_name")->text().toStdString(), "Ana Lindqvist");
    EXPECT_TRUE(child<QWidget>(*window_, "editor_name")->isVisible());
}

TEST_F(Shell, AReturningGuestsLastCheckIsOfferedFromTheRecords) {
    action("action_new")->trigger();
    HealthCheck clear;
    clear.outcome = ScreeningOutcome::clear;
    clear.checked_on = document_.session().date;
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [&](Session& session) {
        session.guests = {asked_guest(clear)};
    }).has_value());
    action("action_new")->trigger();
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests = {asked_guest({})};
    }).has_value());
    QTest::mouseClick(child<QWidget>(*window_, "page_screening"), Qt::LeftButton);
    EXPECT_TRUE(child<QWidget>(*window_, "last_check_offer")->isVisible());
    EXPECT_THAT(child<QLabel>(*window_, "last_check_text")->text().toStdString(),
                HasSubstr(": clear. Has anything changed since?"));
}

TEST_F(Shell, WhichAnswersAreSealedIsRememberedForNextTime) {
    auto* roster = window_->findChild<RosterTab*>();
    ASSERT_NE(roster, nullptr);
    EXPECT_FALSE(keeper_->setting(QStringLiteral("answers_kept")));
    Q_EMIT roster->answers_kept_chosen(AnswersKept::all);
    EXPECT_EQ(keeper_->setting(QStringLiteral("answers_kept")), QStringLiteral("all"));
    Q_EMIT roster->answers_kept_chosen(AnswersKept::flagged);
    EXPECT_EQ(keeper_->setting(QStringLiteral("answers_kept")), QStringLiteral("flagged"));
}

TEST_F(Shell, EveryControlHasAName) {
    ASSERT_TRUE(window_->open_file(sample_path("harbour-morning")));
    for (int tab = 0; tab < 5; ++tab) {
        window_->show_tab(static_cast<MainWindow::Tab>(tab));
        EXPECT_EQ(nameless_controls(*window_).join(u'\n').toStdString(), "") << tab;
    }
}

TEST_F(Shell, FindingsModelKeepsItsPromises) {
    FindingsModel model(document_);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(window_->open_file(sample_path("finished-dive")));
    EXPECT_GT(model.rowCount(), 0);
}

TEST_F(Shell, OpensOneGuestScreenByKeyAndByButtonAndKeepsItsSettings) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    QTest::keyClick(window_.get(), Qt::Key_F9);
    auto screens = window_->findChildren<GuestScreen*>();
    ASSERT_EQ(screens.size(), 1);
    QPointer<GuestScreen> screen = screens.front();
    EXPECT_TRUE(screen->isVisible());
    window_->show_tab(MainWindow::briefing_tab);
    QTest::mouseClick(child<QPushButton>(*window_, "briefing_guest_screen"), Qt::LeftButton);
    EXPECT_EQ(window_->findChildren<GuestScreen*>().size(), 1);
    screen->control().set_seconds(60);
    screen->control().set_calm(true);
    QTest::keyClick(screen.data(), Qt::Key_Escape);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(screen, nullptr);
    EXPECT_TRUE(window_->isVisible());
    action("action_guest_screen")->trigger();
    screens = window_->findChildren<GuestScreen*>();
    ASSERT_EQ(screens.size(), 1);
    EXPECT_EQ(screens.front()->control().seconds(), 60);
    EXPECT_TRUE(screens.front()->control().is_calm());
}

}  // namespace
}  // namespace leadline::testing
