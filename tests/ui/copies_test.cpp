// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QDialog>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTimer>

#include "core/records/check.h"
#include "ui/shell/backups_dialog.h"
#include "ui/shell/copy_timer.h"
#include "ui/shell/record_keeper.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using namespace std::chrono_literals;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr int patience_ms = 20000;

/// The dialog of copies over records with one kept session.
class Copies : public DocumentTest {
protected:
    void SetUp() override {
        Result<std::unique_ptr<Database>> database = Database::open(path());
        ASSERT_TRUE(database.has_value());
        start(std::move(database).value());
        SessionFile file = sample("salt-cove");
        file.session.title = "Morning";
        ASSERT_TRUE(keeper_->open_new(file).has_value());
        ASSERT_TRUE(keeper_->keep().has_value());
    }
    void start(std::unique_ptr<Database> database) {
        dialog_.reset();
        keeper_ = std::make_unique<RecordKeeper>(document_, std::move(database), nullptr, path());
        dialog_ = std::make_unique<BackupsDialog>(*keeper_, nullptr);
        dialog_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog_.get()));
    }
    [[nodiscard]] QString path() const {
        return folder_.filePath(QStringLiteral("records.sqlite"));
    }
    QTableWidget* table() { return child<QTableWidget>(*dialog_, "backups_table"); }
    void click(const char* name) {
        auto* button = child<QPushButton>(*dialog_, name);
        ASSERT_TRUE(button->isEnabled()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void click_and_wait(const char* name) {
        QSignalSpy finished(dialog_.get(), &BackupsDialog::finished_work);
        click(name);
        if (finished.isEmpty()) {
            ASSERT_TRUE(finished.wait(patience_ms));
        }
    }
    /// Clicks a button of the next dialog that opens, after looking at it.
    void when_asked(const char* dialog_name, const char* button_name,
                    std::function<void(QDialog&)> look = {}) {
        auto* timer = new QTimer(dialog_.get());
        QObject::connect(timer, &QTimer::timeout, dialog_.get(),
                         [this, timer, dialog_name, button_name, look = std::move(look)] {
            auto* asked = dialog_->findChild<QDialog*>(QString::fromLatin1(dialog_name));
            if (asked == nullptr || !asked->isVisible()) return;
            timer->deleteLater();
            if (look) look(*asked);
            auto* button = asked->findChild<QPushButton*>(QString::fromLatin1(button_name));
            ASSERT_NE(button, nullptr) << button_name;
            QTest::mouseClick(button, Qt::LeftButton);
        });
        timer->start(10);
    }
    void set_title(const char* title) {
        ASSERT_TRUE(document_.edit(QStringLiteral("x"), [&](Session& session) {
            session.title = title;
        }).has_value());
    }

    QTemporaryDir folder_;
    std::unique_ptr<RecordKeeper> keeper_;
    std::unique_ptr<BackupsDialog> dialog_;
};

TEST_F(Copies, OneIsMadeByAClickAndListedAsWhole) {
    EXPECT_EQ(table()->rowCount(), 0);
    EXPECT_FALSE(child<QPushButton>(*dialog_, "backups_restore")->isEnabled());
    click_and_wait("backups_make");
    ASSERT_EQ(table()->rowCount(), 1);
    EXPECT_EQ(table()->item(0, 1)->text(), QStringLiteral("By hand"));
    EXPECT_EQ(table()->item(0, 3)->text(), QStringLiteral("whole"));
    EXPECT_THAT(list_copies(path()), SizeIs(1));
    EXPECT_TRUE(child<QPushButton>(*dialog_, "backups_restore")->isEnabled());
}

TEST_F(Copies, ADamagedOneIsFoundWhenTheListIsOpened) {
    click_and_wait("backups_make");
    QFile copy(list_copies(path()).front().path);
    ASSERT_TRUE(copy.resize(copy.size() / 2));
    dialog_ = std::make_unique<BackupsDialog>(*keeper_, nullptr);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return table()->item(0, 3)->text() == QStringLiteral("not whole"); }, patience_ms));
}

TEST_F(Copies, PuttingOneBackShowsWhatChangesAndReopensTheSession) {
    click_and_wait("backups_make");
    set_title("Changed since");
    when_asked("restore_dialog", "restore_accept", [&](QDialog& asked) {
        EXPECT_THAT(asked.findChild<QLabel*>(QStringLiteral("restore_summary"))
                        ->text().toStdString(),
                    HasSubstr("1 would change back"));
        EXPECT_EQ(asked.findChild<QTableWidget*>(QStringLiteral("restore_sessions"))->rowCount(),
                  1);
        EXPECT_GT(asked.findChild<QTableWidget*>(QStringLiteral("restore_tables"))->rowCount(),
                  10);
        EXPECT_TRUE(asked.findChild<QPushButton*>(QStringLiteral("restore_accept"))
                        ->text().contains(QStringLiteral("Put")));
    });
    click_and_wait("backups_restore");
    EXPECT_THAT(dialog_->message().toStdString(), HasSubstr("is in place"));
    EXPECT_EQ(document_.session().title, "Morning");
    EXPECT_TRUE(keeper_->is_kept());
    // What stood there before is kept, and edits go on being saved.
    EXPECT_THAT(list_copies(path()), SizeIs(2));
    set_title("After");
    EXPECT_EQ(keeper_->sessions()->front().title, "After");
    EXPECT_THAT(*keeper_->sessions(), SizeIs(1));
}

TEST_F(Copies, ASecondLookMayEndInNo) {
    click_and_wait("backups_make");
    set_title("Changed since");
    when_asked("restore_dialog", "restore_cancel", [](QDialog& asked) {
        EXPECT_TRUE(asked.findChild<QPushButton*>(QStringLiteral("restore_cancel"))->isDefault())
            << "Enter alone replaces nothing";
    });
    QSignalSpy finished(dialog_.get(), &BackupsDialog::finished_work);
    click("backups_restore");
    if (finished.isEmpty()) {
        ASSERT_TRUE(finished.wait(patience_ms));
    }
    EXPECT_EQ(document_.session().title, "Changed since");
    EXPECT_EQ(keeper_->sessions()->front().title, "Changed since");
}

TEST_F(Copies, NothingIsPutBackWhileAnotherProgramHasTheRecordsOpen) {
    click_and_wait("backups_make");
    set_title("Changed since");
    const auto other = Database::open(path());
    ASSERT_TRUE(other.has_value());
    when_asked("restore_dialog", "restore_accept");
    click_and_wait("backups_restore");
    EXPECT_THAT(dialog_->message().toStdString(), HasSubstr("in use by another program"));
    EXPECT_EQ(document_.session().title, "Changed since");
    set_title("Still saved");
    EXPECT_EQ(keeper_->sessions()->front().title, "Still saved");
}

TEST_F(Copies, AFileThatIsNoCopyIsRefused) {
    const QString letter = folder_.filePath(QStringLiteral("letter.sqlite"));
    QFile file(letter);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray("Dear guests, ").repeated(500));
    file.close();
    dialog_->choose_restore_file = [&] { return letter; };
    click_and_wait("backups_from_file");
    EXPECT_THAT(dialog_->message().toStdString(), HasSubstr("letter.sqlite"));
    EXPECT_EQ(document_.session().title, "Morning");
}

TEST_F(Copies, OneIsDeletedOnlyAfterAsking) {
    click_and_wait("backups_make");
    when_asked("backups_delete_question", "backups_delete_yes");
    click("backups_delete");
    EXPECT_EQ(table()->rowCount(), 0);
    EXPECT_THAT(list_copies(path()), IsEmpty());
}

TEST_F(Copies, EverythingIsWrittenOutAndCanBePutBack) {
    dialog_->choose_export_folder = [&] { return folder_.path(); };
    click_and_wait("backups_export");
    const QStringList made =
        QDir(folder_.path()).entryList({QStringLiteral("leadline-records-*")}, QDir::Dirs);
    ASSERT_EQ(made.size(), 1) << dialog_->message().toStdString();
    set_title("Changed since");
    dialog_->choose_restore_file = [&] {
        return folder_.filePath(made.front() + QStringLiteral("/leadline-records.json"));
    };
    when_asked("restore_dialog", "restore_accept");
    click_and_wait("backups_from_file");
    EXPECT_EQ(document_.session().title, "Morning") << dialog_->message().toStdString();
}

TEST_F(Copies, ClosingTheDialogStopsTheWork) {
    click("backups_make");
    EXPECT_TRUE(dialog_->working());
    QSignalSpy finished(dialog_.get(), &BackupsDialog::finished_work);
    QTest::mouseClick(child<QPushButton>(*dialog_, "backups_stop"), Qt::LeftButton);
    ASSERT_TRUE(finished.wait(patience_ms));
    EXPECT_FALSE(dialog_->working());
    // Stopped in time or not: no half of a copy.
    for (const RecordCopy& copy : list_copies(path())) {
        EXPECT_TRUE(check_records_file(copy.path, CheckDepth::thorough).has_value());
    }
}

TEST_F(Copies, RecordsThatCannotBeOpenedAreReplacedByACopy) {
    click_and_wait("backups_make");
    set_title("Lost with the damage");
    dialog_.reset();
    keeper_.reset();
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.write(QByteArray(8192, 'x'));
    file.close();
    const auto damaged = Database::open(path());
    ASSERT_FALSE(damaged.has_value());
    EXPECT_EQ(damaged.error().code, ErrorCode::database_damaged);
    EXPECT_THAT(words(damaged.error()).toStdString(), HasSubstr("Copies of the records"));

    ASSERT_TRUE(document_.open(SessionFile{document_.session(), std::nullopt}).has_value());
    start(nullptr);
    EXPECT_FALSE(child<QPushButton>(*dialog_, "backups_make")->isEnabled());
    when_asked("restore_dialog", "restore_accept");
    click_and_wait("backups_restore");
    EXPECT_TRUE(keeper_->has_database()) << dialog_->message().toStdString();
    EXPECT_EQ(document_.session().title, "Morning");
    EXPECT_TRUE(keeper_->is_kept());
}

class Timer : public Copies {
protected:
    void look(CopyTimer& timer) {
        QSignalSpy looked(&timer, &CopyTimer::looked);
        timer.look();
        if (looked.isEmpty()) {
            ASSERT_TRUE(looked.wait(patience_ms));
        }
    }
    CopyTime now_ = current_time();
};

TEST_F(Timer, MakesACopyAtStartAndTheNextOnAnotherDayOfChanges) {
    CopyTimer timer(path(), nullptr, [&] { return now_; });
    QSignalSpy looked(&timer, &CopyTimer::looked);
    QSignalSpy failed(&timer, &CopyTimer::failed);
    timer.start();
    ASSERT_TRUE(looked.wait(patience_ms));
    EXPECT_THAT(list_copies(path()), SizeIs(1));
    now_ += 1h;
    look(timer);
    EXPECT_THAT(list_copies(path()), SizeIs(1)) << "not due";
    now_ += 20h;
    look(timer);
    EXPECT_THAT(list_copies(path()), SizeIs(1)) << "nothing has changed";
    set_title("Changed");
    now_ += 21h;
    look(timer);
    EXPECT_THAT(list_copies(path()), SizeIs(2));
    EXPECT_EQ(failed.count(), 0);
}

TEST_F(Timer, SaysOnceThatNoCopyCanBeMade) {
    QFile in_the_way(copies_folder(path()));
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    in_the_way.close();
    CopyTimer timer(path(), nullptr, [&] { return now_; });
    QSignalSpy failed(&timer, &CopyTimer::failed);
    look(timer);
    look(timer);
    ASSERT_EQ(failed.count(), 1);
    EXPECT_THAT(failed.front().front().toString().toStdString(),
                HasSubstr("No copy of the records was made"));
    // Records and window are none the worse.
    set_title("Still saved");
    EXPECT_EQ(keeper_->sessions()->front().title, "Still saved");
    ASSERT_TRUE(in_the_way.remove());
    look(timer);
    EXPECT_THAT(list_copies(path()), SizeIs(1));
}

TEST_F(Timer, FindsDamageAndMakesNoCopyOfIt) {
    dialog_.reset();
    keeper_.reset();
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    constexpr qint64 page = 4096;
    ASSERT_TRUE(file.seek(3 * page));
    file.write(QByteArray(100, 'x'));
    file.close();
    CopyTimer timer(path(), nullptr, [&] { return now_; });
    QSignalSpy failed(&timer, &CopyTimer::failed);
    look(timer);
    ASSERT_EQ(failed.count(), 1);
    EXPECT_THAT(failed.front().front().toString().toStdString(), HasSubstr("damaged"));
    EXPECT_THAT(list_copies(path()), IsEmpty());
}

}  // namespace
}  // namespace leadline::testing
