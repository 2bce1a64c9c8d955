// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QFile>
#include <QTableView>
#include <QTemporaryDir>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/red_list_dialog.h"

namespace leadline::testing {
namespace {

Session session_on(Date date, const std::string& title) {
    Session session = session_with({"Ana", "Bo <b>", "Cy"});
    session.title = title;
    session.date = date;
    session.meeting_time = TimeOfDay{9 * 60};
    session.guests[0].screening = {};
    session.guests[0].phone = "+00 555 0101";
    session.guests[1].screening.outcome = ScreeningOutcome::physician_required;
    session.guests[1].birth_date = day(2012, 1, 1);
    session.guests[1].email = "bo@example.org";
    return session;
}

std::vector<SessionToCome> two_sessions() {
    return {{SessionRow{7}, session_on(day(2026, 7, 4), "Morning")},
            {SessionRow{9}, session_on(day(2026, 7, 20), "Later")}};
}

std::string cell(const RedListModel& model, int row, RedListColumn column) {
    return model.index(row, static_cast<int>(column)).data().toString().toStdString();
}

TEST(RedList, SaysWhoIsWaitedForWhenAndHowToReachThem) {
    RedListModel model(two_sessions(), rules());
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(model.rowCount(), 4) << "two of three in each session";
    EXPECT_EQ(cell(model, 0, RedListColumn::day), "Sat 4 July 2026, 09:00");
    EXPECT_EQ(cell(model, 0, RedListColumn::guest), "Ana");
    EXPECT_EQ(cell(model, 0, RedListColumn::phone), "+00 555 0101");
    EXPECT_EQ(cell(model, 0, RedListColumn::needs), "health questions");
    EXPECT_EQ(cell(model, 1, RedListColumn::phone), "bo@example.org");
    EXPECT_EQ(cell(model, 1, RedListColumn::needs), "guardian's consent, physician's release");
    EXPECT_EQ(cell(model, 3, RedListColumn::session), "Later");
    EXPECT_EQ(model.session_at(3), SessionRow{9});
    EXPECT_EQ(model.guest_at(3), GuestId("guest-2"));
    EXPECT_THAT(model.html().toStdString(), ::testing::HasSubstr("Bo &lt;b&gt;"));
}

TEST(RedList, TakesNoAccountOfWhatIsOverruled) {
    std::vector<SessionToCome> sessions = two_sessions();
    sessions.resize(1);
    sessions[0].session.overrules = {{"screening_unanswered:guest-1", "own form seen", "Mara"}};
    const RedListModel model(sessions, rules());
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(cell(model, 0, RedListColumn::guest), "Bo <b>");
}

TEST(RedListDialogTest, SaysSoWhenNobodyIsWaitedFor) {
    RedListDialog dialog(std::vector<SessionToCome>{}, rules());
    dialog.show();
    auto* message = dialog.findChild<QLabel*>(QStringLiteral("red_list_message"));
    EXPECT_TRUE(message->isVisible());
    EXPECT_EQ(message->text().toStdString(), "Nobody is waiting for anything.");
    EXPECT_FALSE(dialog.findChild<QWidget*>(QStringLiteral("red_list_table"))->isVisible());
    EXPECT_FALSE(dialog.findChild<QWidget*>(QStringLiteral("red_list_save"))->isEnabled());
}

TEST(RedListDialogTest, SaysWhyItCouldNotBeRead) {
    RedListDialog dialog(Error{ErrorCode::database_locked, "records.sqlite", {}, {}}, rules());
    dialog.show();
    EXPECT_THAT(dialog.findChild<QLabel*>(QStringLiteral("red_list_message"))->text().toStdString(),
                ::testing::HasSubstr("in use by another program"));
}

TEST(RedListDialogTest, OpensTheSessionOfTheRowByKey) {
    RedListDialog dialog(two_sessions(), rules());
    dialog.show();
    auto* table = dialog.findChild<QTableView*>(QStringLiteral("red_list_table"));
    QTest::keyClick(table, Qt::Key_Down);
    QTest::keyClick(table, Qt::Key_Down);
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    ASSERT_TRUE(dialog.chosen_session());
    EXPECT_EQ(*dialog.chosen_session(), SessionRow{9});
    EXPECT_EQ(dialog.chosen_guest(), GuestId("guest-1"));
}

TEST(RedListDialogTest, IsSavedAsAPageAndSaysWhenItIsNot) {
    const QTemporaryDir folder;
    RedListDialog dialog(two_sessions(), rules());
    dialog.show();
    const QString path = folder.filePath(QStringLiteral("list.pdf"));
    dialog.choose_path = [&] { return path; };
    auto* save = dialog.findChild<QWidget*>(QStringLiteral("red_list_save"));
    QTest::mouseClick(save, Qt::LeftButton);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF"));
    dialog.choose_path = [&] { return folder.filePath(QStringLiteral("no/such/list.pdf")); };
    QTest::mouseClick(save, Qt::LeftButton);
    EXPECT_THAT(dialog.findChild<QLabel*>(QStringLiteral("red_list_message"))->text().toStdString(),
                ::testing::HasSubstr("cannot be written"));
}

}  // namespace
}  // namespace leadline::testing
