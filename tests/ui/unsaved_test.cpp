// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <sqlite3.h>

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QElapsedTimer>
#include <QFile>
#include <QSqlDatabase>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTimer>
#include <filesystem>

#include "core/records/session_store.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"
#include "ui/shell/main_window.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::SizeIs;

/// A window over records, with another program that can hold them.
class Unsaved : public DocumentTest {
protected:
    void SetUp() override {
        Result<std::unique_ptr<Database>> database = Database::open(path());
        ASSERT_TRUE(database.has_value());
        // Waiting two seconds for every refusal would make these tests slow.
        ASSERT_TRUE(execute((*database)->connection(), QStringLiteral("PRAGMA busy_timeout = 20"))
                        .has_value());
        handle_ = sqlite_handle((*database)->connection());
        keeper_ = std::make_unique<RecordKeeper>(document_, std::move(database).value());
        window_ = std::make_unique<MainWindow>(document_, *keeper_);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        window_->findChild<QAction*>(QStringLiteral("action_new"))->trigger();
    }
    [[nodiscard]] QString path() const {
        return folder_.filePath(QStringLiteral("stick/records.sqlite"));
    }
    void type(const char* text) {
        auto* title = child<QLineEdit>(*window_, "session_title");
        title->setFocus();
        QTest::keyClicks(title, QString::fromLatin1(text));
    }
    void hold_records() {
        other_ = SideConnection::open(path(), SideConnection::Access::read_write);
        ASSERT_TRUE(other_->has_value());
        ASSERT_TRUE(execute((**other_)->database(), QStringLiteral("BEGIN IMMEDIATE")).has_value());
    }
    void wait_as_long_as_the_program_does() {
        ASSERT_TRUE(execute(keeper_->database()->connection(),
                            QStringLiteral("PRAGMA busy_timeout = 2000"))
                        .has_value());
    }
    void release_records() { other_.reset(); }
    /// Answers the question with a button; counts how often it was asked.
    void answer(const char* button_name) {
        auto* timer = new QTimer(window_.get());
        QObject::connect(timer, &QTimer::timeout, window_.get(), [this, timer, button_name] {
            auto* box = window_->findChild<QDialog*>(QStringLiteral("unsaved_question"));
            if (box == nullptr || !box->isVisible()) return;
            timer->deleteLater();
            ++asked_;
            auto* button = box->findChild<QPushButton*>(QString::fromLatin1(button_name));
            ASSERT_NE(button, nullptr);
            QTest::mouseClick(button, Qt::LeftButton);
        });
        timer->start(5);
    }
    /// Titles on record, read by another connection.
    std::vector<std::string> titles() const {
        const auto database = Database::open(path());
        EXPECT_TRUE(database.has_value());
        if (!database) return {};
        std::vector<std::string> found;
        const auto sessions = SessionStore(**database).list();
        EXPECT_TRUE(sessions.has_value());
        for (const SessionSummary& session : *sessions) found.push_back(session.title);
        return found;
    }

    QTemporaryDir folder_;
    std::unique_ptr<RecordKeeper> keeper_;
    std::unique_ptr<MainWindow> window_;
    std::optional<Result<std::unique_ptr<SideConnection>>> other_;
    sqlite3* handle_ = nullptr;
    int asked_ = 0;
};

TEST_F(Unsaved, AnEditWhileAnotherProgramWritesIsMarkedAndSavedWithTheNext) {
    type("A");
    EXPECT_FALSE(window_->isWindowModified());
    hold_records();
    type("B");
    EXPECT_TRUE(keeper_->has_unsaved());
    EXPECT_TRUE(window_->isWindowModified());
    EXPECT_EQ(document_.session().title, "AB");
    // Somebody who writes for a moment is not worth a word.
    EXPECT_EQ(window_->message(), QString());
    QTRY_VERIFY(!window_->message().isEmpty());
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("Not saved"));
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("in use by another program"));
    release_records();
    EXPECT_THAT(titles(), ::testing::ElementsAre("A"));
    type("C");
    EXPECT_FALSE(keeper_->has_unsaved());
    EXPECT_FALSE(window_->isWindowModified());
    EXPECT_EQ(window_->message(), QString());
    EXPECT_THAT(titles(), ::testing::ElementsAre("ABC"));
}

TEST_F(Unsaved, AnEditIsSavedByItselfOnceTheOtherProgramIsDone) {
    const QSignalSpy told(keeper_.get(), &RecordKeeper::save_failed);
    hold_records();
    type("A");
    EXPECT_TRUE(keeper_->has_unsaved());
    release_records();
    QTRY_VERIFY(!keeper_->has_unsaved());
    EXPECT_FALSE(window_->isWindowModified());
    EXPECT_EQ(told.count(), 0);
    EXPECT_THAT(titles(), ::testing::ElementsAre("A"));
}

TEST_F(Unsaved, TheWindowDoesNotWaitForTheOtherProgram) {
    wait_as_long_as_the_program_does();
    hold_records();
    QElapsedTimer typing;
    typing.start();
    type("A");
    // No measurement: whoever waits in full waits two seconds.
    EXPECT_LT(typing.elapsed(), 1900);
    EXPECT_TRUE(keeper_->has_unsaved());
    release_records();
    // Closing the window does wait.
    EXPECT_TRUE(window_->close());
    EXPECT_THAT(titles(), ::testing::ElementsAre("A"));
}

TEST_F(Unsaved, StayingInTheWindowGoesOnTrying) {
    hold_records();
    type("A");
    answer("unsaved_stay");
    EXPECT_FALSE(window_->close());
    release_records();
    QTRY_VERIFY(!keeper_->has_unsaved());
    EXPECT_THAT(titles(), ::testing::ElementsAre("A"));
}

TEST_F(Unsaved, AHoldThatLastsIsSaidOnceAndHidesNothingElse) {
    const QSignalSpy told(keeper_.get(), &RecordKeeper::save_failed);
    hold_records();
    type("A");
    QTRY_COMPARE(told.count(), 1);
    window_->show_message(QStringLiteral("Something else."), Severity::note);
    // The next try, a second later.
    auto* retry = keeper_->findChild<QTimer*>(QStringLiteral("save_retry"));
    const QSignalSpy tried(retry, &QTimer::timeout);
    QTRY_COMPARE(tried.count(), 1);
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(window_->message(), QStringLiteral("Something else."));
    release_records();
    QTRY_VERIFY(!keeper_->has_unsaved());
    EXPECT_EQ(window_->message(), QStringLiteral("Something else."));
    // Who types on is told again.
    hold_records();
    type("B");
    QTRY_COMPARE(told.count(), 2);
    release_records();
}

TEST_F(Unsaved, AChoiceDoesNotWaitForTheOtherProgram) {
    wait_as_long_as_the_program_does();
    hold_records();
    QElapsedTimer choosing;
    choosing.start();
    EXPECT_FALSE(keeper_->put_setting(QStringLiteral("shade"), QStringLiteral("dark")));
    EXPECT_LT(choosing.elapsed(), 1900);
    release_records();
}

TEST_F(Unsaved, WhatWaitsForTheOtherProgramIsNotSavedIntoAnotherSession) {
    hold_records();
    type("A");
    EXPECT_TRUE(keeper_->findChild<QTimer*>(QStringLiteral("save_retry"))->isActive());
    answer("unsaved_lose");
    EXPECT_TRUE(window_->open_file(sample_path("salt-cove")));
    release_records();
    EXPECT_FALSE(keeper_->findChild<QTimer*>(QStringLiteral("save_retry"))->isActive());
    EXPECT_THAT(titles(), ::testing::IsEmpty());
}

TEST_F(Unsaved, ALanguageThatCannotBeKeptIsNotSaidToBe) {
    const auto language = [this](const char* name) {
        return window_->findChild<QAction*>(QString::fromLatin1(name));
    };
    language("action_language_de")->trigger();
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("Kept."));
    hold_records();
    language("action_language_fr")->trigger();
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("in use by another program"));
    EXPECT_TRUE(language("action_language_de")->isChecked()) << "as it is kept";
    release_records();
    language("action_language_fr")->trigger();
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("Kept."));
    EXPECT_TRUE(language("action_language_fr")->isChecked());
}

TEST_F(Unsaved, ClosingSavesFirstAndAsksNothingWhenThatWorks) {
    hold_records();
    type("A");
    release_records();
    EXPECT_TRUE(window_->close());
    EXPECT_EQ(asked_, 0);
    EXPECT_THAT(titles(), ::testing::ElementsAre("A"));
}

TEST_F(Unsaved, ClosingAsksInsteadOfLosingAndGoingBackKeepsTheWindow) {
    hold_records();
    type("A");
    answer("unsaved_stay");
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->isVisible());
    EXPECT_EQ(asked_, 1);
    EXPECT_EQ(document_.session().title, "A");
    release_records();
}

TEST_F(Unsaved, EscapeIsGoingBack) {
    hold_records();
    type("A");
    QTimer::singleShot(100, window_.get(), [this] {
        auto* box = window_->findChild<QDialog*>(QStringLiteral("unsaved_question"));
        ASSERT_NE(box, nullptr);
        QTest::keyClick(box, Qt::Key_Escape);
    });
    EXPECT_FALSE(window_->close());
    release_records();
}

TEST_F(Unsaved, TryingAgainSavesWhenTheOtherIsDone) {
    hold_records();
    type("A");
    QTimer::singleShot(100, window_.get(), [this] {
        release_records();
        auto* box = window_->findChild<QDialog*>(QStringLiteral("unsaved_question"));
        ASSERT_NE(box, nullptr);
        QTest::mouseClick(box->findChild<QPushButton*>(QStringLiteral("unsaved_try")),
                          Qt::LeftButton);
    });
    EXPECT_TRUE(window_->close());
    EXPECT_THAT(titles(), ::testing::ElementsAre("A"));
}

TEST_F(Unsaved, TheSessionCanBeWrittenToAFileInstead) {
    hold_records();
    type("A");
    const QString file = folder_.filePath(QStringLiteral("rescued.json"));
    window_->choose_export_path = [&] { return file; };
    answer("unsaved_write");
    const SessionFile before = document_.file();
    EXPECT_TRUE(window_->close());
    release_records();
    ASSERT_TRUE(window_->open_file(file));
    EXPECT_EQ(document_.file(), before);
}

TEST_F(Unsaved, AnotherSessionIsNotOpenedOverIt) {
    hold_records();
    type("A");
    answer("unsaved_stay");
    window_->findChild<QAction*>(QStringLiteral("action_new"))->trigger();
    EXPECT_EQ(document_.session().title, "A");
    answer("unsaved_stay");
    EXPECT_FALSE(window_->open_file(sample_path("salt-cove")));
    EXPECT_EQ(document_.session().title, "A");
    EXPECT_EQ(asked_, 2);
    answer("unsaved_lose");
    EXPECT_TRUE(window_->open_file(sample_path("salt-cove")));
    EXPECT_FALSE(keeper_->has_unsaved());
    release_records();
}

TEST_F(Unsaved, TheRedListOpensNoOtherSessionOverIt) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        Guest guest;
        guest.id = GuestId("guest-1");
        guest.name = "Ana Lindqvist";
        session.title = "To come";
        session.guests = {guest};
    }).has_value());
    window_->findChild<QAction*>(QStringLiteral("action_new"))->trigger();
    hold_records();
    type("A");
    answer("unsaved_stay");
    QTimer::singleShot(0, window_.get(), [] {
        auto* dialog = QApplication::activeModalWidget();
        ASSERT_NE(dialog, nullptr);
        QTest::mouseClick(dialog->findChild<QWidget*>(QStringLiteral("red_list_open")),
                          Qt::LeftButton);
    });
    window_->findChild<QAction*>(QStringLiteral("action_red_list"))->trigger();
    EXPECT_EQ(asked_, 1);
    EXPECT_EQ(document_.session().title, "A");
    EXPECT_TRUE(keeper_->has_unsaved());
    release_records();
}

TEST_F(Unsaved, AVanishedDiskIsSaidAndTheNextEditAfterItIsBackIsSaved) {
    type("A");
    const std::string here = folder_.filePath(QStringLiteral("stick")).toStdString();
    std::filesystem::rename(here, here + "-away");
    type("B");
    EXPECT_TRUE(keeper_->has_unsaved());
    EXPECT_THAT(window_->message().toStdString(), HasSubstr("is not there"));
    std::filesystem::rename(here + "-away", here);
    type("C");
    EXPECT_FALSE(keeper_->has_unsaved());
    EXPECT_THAT(titles(), ::testing::ElementsAre("ABC"));
}

TEST_F(Unsaved, ACommitThatStoodWithoutBeingAcknowledgedMakesNoSecondSession) {
    // SQLite calls the hook after the commit stands; its error becomes that of the commit.
    sqlite3_wal_hook(
        handle_, [](void*, sqlite3*, const char*, int) { return SQLITE_IOERR; }, nullptr);
    type("A");
    EXPECT_TRUE(keeper_->has_unsaved());
    EXPECT_THAT(titles(), ::testing::ElementsAre("A")) << "the hook let the commit stand";
    sqlite3_wal_hook(handle_, nullptr, nullptr);
    type("B");
    EXPECT_FALSE(keeper_->has_unsaved());
    EXPECT_THAT(titles(), ::testing::ElementsAre("AB"));
    // Also when the second try is one of those.
    type("C");
    EXPECT_THAT(titles(), ::testing::ElementsAre("ABC"));
}

TEST_F(Unsaved, KeepingAFileTwiceAfterSuchACommitMakesOneSession) {
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    sqlite3_wal_hook(
        handle_, [](void*, sqlite3*, const char*, int) { return SQLITE_IOERR; }, nullptr);
    QTest::mouseClick(child<QPushButton>(*window_, "notice_keep"), Qt::LeftButton);
    EXPECT_FALSE(keeper_->is_kept());
    sqlite3_wal_hook(handle_, nullptr, nullptr);
    QTest::mouseClick(child<QPushButton>(*window_, "notice_keep"), Qt::LeftButton);
    EXPECT_TRUE(keeper_->is_kept());
    EXPECT_THAT(titles(), SizeIs(1));
}

}  // namespace
}  // namespace leadline::testing
