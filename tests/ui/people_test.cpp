// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QRadioButton>
#include <QScreen>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>

#include "core/records/backup.h"
#include "core/records/guest_dossier.h"
#include "core/records/person_removal.h"
#include "core/records/side_connection.h"
#include "core/records/statement.h"
#include "cut_off_texts.h"
#include "ui/shell/duplicates_dialog.h"
#include "ui/shell/main_window.h"
#include "ui/shell/people_dialog.h"
#include "ui/shell/people_model.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/sessions_dialog.h"
#include "ui/shell/sessions_model.h"
#include "ui/widgets/screen_room.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// Records in a folder that vanishes.
class PeopleUi : public DocumentTest {
protected:
    void SetUp() override {
        Result<std::unique_ptr<Database>> database =
            Database::open(folder_.filePath(QStringLiteral("records.sqlite")));
        ASSERT_TRUE(database.has_value());
        keeper_ = std::make_unique<RecordKeeper>(document_, std::move(database).value());
    }

    static Guest guest(const std::string& name, std::optional<Date> born) {
        Guest guest;
        guest.id = GuestId("guest-1");
        guest.name = name;
        guest.birth_date = born;
        return guest;
    }
    SessionRow add(int year, const std::vector<Guest>& guests) {
        SessionFile file = sample("salt-cove");
        file.log.reset();
        Session& session = file.session;
        session.date = day(year, 7, 4);
        session.title = "Session of " + std::to_string(year);
        session.overrules.clear();
        session.guests = guests;
        for (StaffMember& member : session.staff) member.earlier_dives.clear();
        int number = 0;
        for (Guest& one : session.guests) one.id = GuestId("guest-" + std::to_string(++number));
        const Result<SessionRow> row = SessionStore(*keeper_->database()).insert(file);
        EXPECT_TRUE(row.has_value()) << (row ? "" : words(row.error()).toStdString());
        return row.value_or({});
    }
    void add_three() {
        Guest vera = guest("Vera Onnig", day(1990, 2, 3));
        vera.phone = "+43 664 1234567";
        vera.note = "Likes to go last";
        vera.screening.outcome = ScreeningOutcome::physician_required;
        vera.screening.checked_on = day(2024, 7, 1);
        Guest wera = guest("Wera Onnig", day(1990, 2, 3));
        wera.email = "wera@post.example";
        add(2024, {vera, guest("Ilja Torsk", day(1980, 5, 6))});
        row_ = add(2026, {wera, guest("Berta Sol", std::nullopt)});
    }

    /// The dialog as it opens on a day.
    PeopleDialog& open_people(Date today = day(2026, 8, 1)) {
        people_ = std::make_unique<PeopleDialog>(*keeper_, UnitSystem::metric, nullptr);
        people_->today = [today] { return today; };
        people_->show();
        return *people_;
    }
    QTableView* table() { return child<QTableView>(*people_, "people_table"); }
    QString details() { return child<QLabel>(*people_, "people_details")->text(); }
    QString said() { return child<QLabel>(*people_, "people_said")->text(); }
    QString count() { return child<QLabel>(*people_, "people_count")->text(); }
    QPushButton* button(const char* name) { return child<QPushButton>(*people_, name); }
    void click(const char* name) { QTest::mouseClick(button(name), Qt::LeftButton); }
    QStringList names() {
        QStringList names;
        for (int row = 0; row < table()->model()->rowCount(); ++row) {
            names += table()->model()->index(row, 0).data().toString();
        }
        return names;
    }
    void type(const QString& text) {
        auto* line = child<QLineEdit>(*people_, "people_search");
        line->selectAll();
        QTest::keyClicks(line, text);
    }
    void select(const std::vector<int>& rows) {
        table()->clearSelection();
        for (const int row : rows) {
            table()->selectionModel()->select(
                table()->model()->index(row, 0),
                QItemSelectionModel::Select | QItemSelectionModel::Rows);
        }
    }
    /// Does something in the dialog that the next click opens.
    template <typename Act>
    void in_next_dialog(const char* name, Act act) {
        auto* timer = new QTimer(people_.get());
        QObject::connect(timer, &QTimer::timeout, people_.get(), [this, name, act, timer] {
            QWidget* dialog = QApplication::activeModalWidget();
            if (dialog == nullptr || dialog->objectName() != QString::fromUtf8(name)) return;
            timer->stop();
            ++dialogs_;
            act(*dialog);
        });
        timer->start(5);
    }

    QTemporaryDir folder_;
    std::unique_ptr<RecordKeeper> keeper_;
    std::unique_ptr<PeopleDialog> people_;
    SessionRow row_;
    int dialogs_ = 0;
};

TEST_F(PeopleUi, ListsAllByNameAndFindsWhileTyping) {
    add_three();
    open_people();
    EXPECT_EQ(names(), (QStringList{QStringLiteral("Berta Sol"), QStringLiteral("Ilja Torsk"),
                                    QStringLiteral("Vera Onnig"), QStringLiteral("Wera Onnig")}));
    EXPECT_EQ(count().toStdString(), "4 guests");
    type(QStringLiteral("onnig"));
    EXPECT_EQ(count().toStdString(), "2 found");
    type(QStringLiteral("664"));
    EXPECT_EQ(names(), QStringList{QStringLiteral("Vera Onnig")});
    type(QStringLiteral("nobody of that name"));
    EXPECT_EQ(count().toStdString(), "Nobody found");
    EXPECT_FALSE(button("people_remove")->isEnabled());
}

TEST_F(PeopleUi, ShowsWhatIsKnownOfTheSelectedOne) {
    add_three();
    open_people();
    type(QStringLiteral("wera"));
    table()->setFocus();
    QTest::keyClick(table(), Qt::Key_Home);
    select({0});
    EXPECT_THAT(details().toStdString(), HasSubstr("wera@post.example"));
    const QModelIndex index = table()->model()->index(0, PeopleModel::last_column);
    EXPECT_EQ(index.data().toString(), QStringLiteral("4 July 2026"));
    EXPECT_FALSE(button("people_merge")->isEnabled());
    EXPECT_TRUE(button("people_write")->isEnabled());
}

TEST_F(PeopleUi, MergesTwoAndTakesItBack) {
    add_three();
    open_people();
    select({2, 3});
    in_next_dialog("duplicates_dialog", [&](QWidget& dialog) {
        EXPECT_TRUE(child<QRadioButton>(dialog, "duplicates_keep_2")->isChecked())
            << "the one seen last";
        QTest::mouseClick(child<QPushButton>(dialog, "duplicates_merge"), Qt::LeftButton);
        EXPECT_THAT(child<QLabel>(dialog, "duplicates_said")->text().toStdString(),
                    HasSubstr("Merged"));
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    click("people_merge");
    EXPECT_EQ(dialogs_, 1);
    EXPECT_EQ(names().size(), 3);
    select({2});
    EXPECT_THAT(details().toStdString(), HasSubstr("Merged into this guest: Vera Onnig"));
    click("people_unmerge");
    EXPECT_EQ(names().size(), 4);
    EXPECT_THAT(said().toStdString(), HasSubstr("Vera Onnig"));
}

TEST_F(PeopleUi, OffersDuplicatesAndRemembersWhoIsTwo) {
    add_three();
    open_people();
    in_next_dialog("duplicates_dialog", [&](QWidget& dialog) {
        EXPECT_THAT(child<QLabel>(dialog, "duplicates_why")->text().toStdString(),
                    HasSubstr("names one letter apart, same birth date"));
        QTest::mouseClick(child<QPushButton>(dialog, "duplicates_apart"), Qt::LeftButton);
        EXPECT_THAT(child<QLabel>(dialog, "duplicates_which")->text().toStdString(),
                    HasSubstr("last pair"));
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    click("people_duplicates");
    in_next_dialog("duplicates_dialog", [&](QWidget& dialog) {
        EXPECT_THAT(child<QLabel>(dialog, "duplicates_which")->text().toStdString(),
                    HasSubstr("Nobody"));
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    click("people_duplicates");
    EXPECT_EQ(dialogs_, 2);
    EXPECT_EQ(names().size(), 4);
}

TEST_F(PeopleUi, AMergeIsTakenBackWithinTheDialogToo) {
    add_three();
    open_people();
    in_next_dialog("duplicates_dialog", [&](QWidget& dialog) {
        QTest::mouseClick(child<QPushButton>(dialog, "duplicates_merge"), Qt::LeftButton);
        EXPECT_EQ(names().size(), 3);
        QTest::mouseClick(child<QPushButton>(dialog, "duplicates_back"), Qt::LeftButton);
        EXPECT_EQ(names().size(), 4);
        EXPECT_THAT(child<QLabel>(dialog, "duplicates_which")->text().toStdString(),
                    HasSubstr("Pair 1 of 1"));
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    click("people_duplicates");
    EXPECT_EQ(dialogs_, 1);
}

TEST_F(PeopleUi, TheWindowTakesNoMoreThanTheScreen) {
    open_people();
    const QSize room = people_->screen()->availableSize();
    ASSERT_LT(room.width(), 860) << "else this shows nothing";
    EXPECT_LE(people_->width(), room.width());
    EXPECT_LE(people_->height(), room.height());
    EXPECT_EQ(within_screen(*people_, {300, 200}), QSize(300, 200));
}

TEST_F(PeopleUi, RemovingWantsATickAndReloadsTheOpenSession) {
    add_three();
    ASSERT_TRUE(keeper_->open_row(row_).has_value());
    open_people();
    select({3});
    in_next_dialog("removal_dialog", [&](QWidget& dialog) {
        auto* remove = child<QPushButton>(dialog, "removal_remove");
        EXPECT_FALSE(remove->isEnabled());
        CutOffTexts texts;
        texts.judge_all(dialog);
        EXPECT_TRUE(texts.found().isEmpty()) << texts.found().join(u'\n').toStdString();
        EXPECT_LE(dialog.height(), dialog.screen()->availableSize().height());
        EXPECT_THAT(child<QLabel>(dialog, "removal_stays")->text().toStdString(),
                    HasSubstr("Sessions: 1"));
        EXPECT_NE(dialog.findChild<QLabel*>(QStringLiteral("removal_warning")), nullptr)
            << "less than a year ago";
        QTest::keyClick(child<QCheckBox>(dialog, "removal_sure"), Qt::Key_Space);
        EXPECT_TRUE(remove->isEnabled());
        QTest::mouseClick(remove, Qt::LeftButton);
    });
    click("people_remove");
    EXPECT_EQ(dialogs_, 1);
    EXPECT_THAT(said().toStdString(), HasSubstr("Removed."));
    EXPECT_EQ(names().size(), 3);
    EXPECT_EQ(document_.session().guests[0].name, "Guest removed");
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.title = "Changed after";
    }).has_value());
    EXPECT_EQ(SessionStore(*keeper_->database()).load(row_)->session.guests[0].name,
              "Guest removed");
}

TEST_F(PeopleUi, NobodyIsRemovedWhileTheOpenSessionIsNotSaved) {
    add_three();
    ASSERT_TRUE(keeper_->open_row(row_).has_value());
    open_people();
    select({3});
    ASSERT_TRUE(execute(keeper_->database()->connection(), QStringLiteral("PRAGMA busy_timeout = 20"))
                    .has_value());
    {
        const auto other = SideConnection::open(keeper_->database_path(),
                                                SideConnection::Access::read_write);
        ASSERT_TRUE(other.has_value());
        ASSERT_TRUE(
            execute((*other)->database(), QStringLiteral("BEGIN IMMEDIATE")).has_value());
        ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
            session.title = "Not yet saved";
        }).has_value());
        ASSERT_TRUE(keeper_->has_unsaved());
        click("people_remove");
        EXPECT_THAT(said().toStdString(), HasSubstr("Nobody is removed"));
        EXPECT_EQ(document_.session().title, "Not yet saved");
    }
    in_next_dialog("removal_dialog",
                   [&](QWidget& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); });
    click("people_remove");
    EXPECT_EQ(dialogs_, 1) << "saved now";
    EXPECT_FALSE(keeper_->has_unsaved());
}

TEST_F(PeopleUi, ASessionThatCannotBeReadAnewIsNotKeptAnyMore) {
    add_three();
    ASSERT_TRUE(keeper_->open_row(row_).has_value());
    ASSERT_TRUE(SessionStore(*keeper_->database()).remove(row_).has_value());
    const QSignalSpy told(keeper_.get(), &RecordKeeper::save_failed);
    const QSignalSpy kept(keeper_.get(), &RecordKeeper::kept_changed);
    keeper_->reload();
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(kept.count(), 1);
    EXPECT_FALSE(keeper_->is_kept());
    EXPECT_FALSE(keeper_->current_row().has_value());
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.title = "Changed after";
    }).has_value());
    EXPECT_EQ(keeper_->session_count(), 1) << "nothing is written any more";
}

TEST_F(PeopleUi, RemovingTellsOfTheCopiesThatMayHoldTheGuest) {
    add_three();
    ASSERT_TRUE(make_copy(keeper_->database_path(), CopyKind::by_hand, current_time()).has_value());
    open_people();
    select({0});
    in_next_dialog("removal_dialog", [&](QWidget& dialog) {
        EXPECT_THAT(child<QLabel>(dialog, "removal_backups")->text().toStdString(),
                    HasSubstr("1 copy in Records > Copies of the records"));
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    click("people_remove");
    EXPECT_EQ(dialogs_, 1);
}

TEST_F(PeopleUi, APairOfSomebodyMergedMeanwhileIsPassedOver) {
    add_three();
    const auto row_of = [&](const QString& name) {
        return GuestStore(*keeper_->database()).find(name).value_or({}).at(0).row;
    };
    const qint64 berta = row_of(QStringLiteral("berta"));
    const qint64 ilja = row_of(QStringLiteral("ilja"));
    const qint64 vera = row_of(QStringLiteral("vera"));
    const qint64 wera = row_of(QStringLiteral("wera"));
    std::vector<DuplicatePair> pairs(3);
    pairs[0].first = vera;
    pairs[0].second = wera;
    pairs[1].first = vera;
    pairs[1].second = ilja;
    pairs[2].first = wera;
    pairs[2].second = ilja;
    pairs.push_back(pairs[2]);
    pairs[3].first = berta;
    DuplicatesDialog dialog(*keeper_->database(), pairs, nullptr, nullptr);
    dialog.show();
    child<QRadioButton>(dialog, "duplicates_keep_2")->setChecked(true);
    QTest::mouseClick(child<QPushButton>(dialog, "duplicates_merge"), Qt::LeftButton);
    auto* which = child<QLabel>(dialog, "duplicates_which");
    EXPECT_EQ(which->text().toStdString(), "Pair 3 of 4") << "Vera is Wera now";
    ASSERT_TRUE(PersonRemoval(*keeper_->database()).remove(berta, KeptKind::identity).has_value());
    QTest::mouseClick(child<QPushButton>(dialog, "duplicates_later"), Qt::LeftButton);
    EXPECT_EQ(which->text().toStdString(), "That was the last pair.") << "Berta was removed";
}

TEST_F(PeopleUi, CancelRemovesNothing) {
    add_three();
    open_people();
    select({0});
    in_next_dialog("removal_dialog",
                   [&](QWidget& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    click("people_remove");
    EXPECT_EQ(dialogs_, 1);
    EXPECT_EQ(names().size(), 4);
    EXPECT_EQ(said(), QString());
}

TEST_F(PeopleUi, OnlyContactsGoWhereThatIsChosen) {
    add_three();
    open_people();
    select({2});
    in_next_dialog("removal_dialog", [&](QWidget& dialog) {
        QTest::mouseClick(child<QRadioButton>(dialog, "removal_contacts"), Qt::LeftButton,
                          {}, QPoint(8, 8));
        EXPECT_THAT(child<QLabel>(dialog, "removal_goes")->text().toStdString(),
                    HasSubstr("addresses: 1"));
        child<QCheckBox>(dialog, "removal_sure")->setChecked(true);
        QTest::mouseClick(child<QPushButton>(dialog, "removal_remove"), Qt::LeftButton);
    });
    click("people_remove");
    EXPECT_EQ(names().size(), 4);
    type(QStringLiteral("664"));
    EXPECT_EQ(count().toStdString(), "Nobody found");
}

TEST_F(PeopleUi, WritesAllOfOneGuestAndNothingOfOthers) {
    add_three();
    open_people();
    select({2});
    const QString page = folder_.filePath(QStringLiteral("guest.html"));
    people_->choose_path = [&](const QString& suggested) {
        EXPECT_EQ(suggested, QStringLiteral("guest-vera-onnig.html"));
        return page;
    };
    click("people_write");
    QFile file(page);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_FALSE(file.permissions() & (QFileDevice::ReadGroup | QFileDevice::ReadOther));
    const std::string text = file.readAll().toStdString();
    EXPECT_THAT(text, HasSubstr("Vera Onnig"));
    EXPECT_THAT(text, HasSubstr("+43 664 1234567"));
    EXPECT_THAT(text, HasSubstr("Likes to go last"));
    EXPECT_THAT(text, HasSubstr("Session of 2024"));
    EXPECT_THAT(text, Not(HasSubstr("Torsk")));
    EXPECT_THAT(text, Not(HasSubstr("Session of 2026")));

    const QString data = folder_.filePath(QStringLiteral("guest.json"));
    people_->choose_path = [&](const QString&) { return data; };
    click("people_write");
    QFile json(data);
    ASSERT_TRUE(json.open(QIODevice::ReadOnly));
    const QByteArray bytes = json.readAll();
    EXPECT_FALSE(bytes.contains("Torsk"));
    const QJsonObject object = QJsonDocument::fromJson(bytes).object();
    EXPECT_EQ(object[QStringLiteral("person")][QStringLiteral("name")].toString(),
              QStringLiteral("Vera Onnig"));
    ASSERT_EQ(object[QStringLiteral("sessions")].toArray().size(), 1);
}

TEST_F(PeopleUi, AFileThatCannotBeWrittenIsToldAndNothingElseHappens) {
    add_three();
    open_people();
    select({2});
    people_->choose_path = [&](const QString&) {
        return folder_.filePath(QStringLiteral("none/guest.html"));
    };
    click("people_write");
    EXPECT_THAT(said().toStdString(), HasSubstr("cannot be written"));
    people_->choose_path = [](const QString&) { return QString(); };
    click("people_write");
}

TEST_F(PeopleUi, SealedRecordsAreIncludedOnlyThroughTheReader) {
    GuestDossier dossier;
    dossier.person = guest("Vera <Onnig>", day(1990, 2, 3));
    dossier.sealed_records = 2;
    const QString locked = guest_page(dossier, std::nullopt, day(2026, 7, 4), UnitSystem::metric);
    EXPECT_THAT(locked.toStdString(), HasSubstr("open the vault to include"));
    EXPECT_THAT(locked.toStdString(), HasSubstr("Vera &lt;Onnig&gt;"));
    const std::vector<SealedText> opened{
        {QStringLiteral("Screening"), QStringLiteral("2026-07-04"), QStringLiteral("lungs: no")}};
    EXPECT_THAT(guest_page(dossier, opened, day(2026, 7, 4), UnitSystem::metric).toStdString(),
                HasSubstr("lungs: no"));
    EXPECT_TRUE(guest_json(dossier, std::nullopt, day(2026, 7, 4)).contains("open the vault"));
    EXPECT_TRUE(guest_json(dossier, opened, day(2026, 7, 4)).contains("lungs: no"));
}

TEST_F(PeopleUi, SaysOnceAMonthWhoIsDue) {
    add_three();
    open_people(day(2027, 1, 1));
    auto* strip = child<QWidget>(*people_, "people_due");
    ASSERT_TRUE(QTest::qWaitFor([&] { return strip->isVisible(); }));
    EXPECT_THAT(child<QLabel>(*people_, "people_due_text")->text().toStdString(),
                HasSubstr("Nothing is erased"));
    click("people_due_show");
    EXPECT_EQ(names(), QStringList{QStringLiteral("Vera Onnig")})
        << "the other of that session has neither health answers nor a phone number";
    EXPECT_THAT(details().toStdString(), HasSubstr("health answers, phone and e-mail"));
    EXPECT_FALSE(strip->isVisible());
    EXPECT_EQ(keeper_->setting(QStringLiteral("due_looked_at")), QStringLiteral("2027-01-01"));
    people_->hide();

    // Not again within the month.
    open_people(day(2027, 1, 31));
    QTest::qWait(50);
    EXPECT_FALSE(child<QWidget>(*people_, "people_due")->isVisible());
    open_people(day(2027, 2, 1));
    auto* again = child<QWidget>(*people_, "people_due");
    EXPECT_TRUE(QTest::qWaitFor([&] { return again->isVisible(); }));
    type(QStringLiteral("v"));
    EXPECT_EQ(GuestStore(*keeper_->database()).count().value_or(0), 4) << "nobody was erased";
}

TEST_F(PeopleUi, ClosingWhileItStillLooksIsFine) {
    add_three();
    open_people(day(2027, 1, 1));
    people_.reset();
}

TEST_F(PeopleUi, TheModelKeepsTheRulesOfModels) {
    add_three();
    PeopleModel model(*keeper_->database());
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 4);
    model.search(QStringLiteral("onnig"));
    EXPECT_EQ(model.rowCount(), 2);
    model.list({3, 1});
    EXPECT_EQ(model.rowCount(), 2);
    model.reload();
    model.search(QString());
    EXPECT_EQ(model.rowCount(), 4);
    SessionsModel sessions(*keeper_);
    const QAbstractItemModelTester sessions_tester(
        &sessions, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(sessions.rowCount(), 2);
    sessions.reload();
    EXPECT_EQ(sessions.index(0, SessionsModel::title_column).data().toString(),
              QStringLiteral("Session of 2026"));
}

TEST_F(PeopleUi, OpensFromTheMenuByKey) {
    add_three();
    MainWindow window(document_, *keeper_);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    bool seen = false;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, &window, [&] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (dialog == nullptr) return;
        timer.stop();
        seen = dialog->objectName() == QStringLiteral("people_dialog");
        QTest::keyClick(dialog, Qt::Key_Escape);
    });
    timer.start(5);
    QTest::keyClick(&window, Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(seen);
}

TEST_F(PeopleUi, TheSessionsDialogListsNewestFirstAndDeletesAfterAsking) {
    add_three();
    SessionsDialog dialog(*keeper_, nullptr);
    dialog.show();
    auto* sessions = child<QTableView>(dialog, "sessions_table");
    ASSERT_EQ(sessions->model()->rowCount(), 2);
    EXPECT_EQ(sessions->currentIndex().row(), 0);
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, &dialog, [&timer] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        if (box == nullptr) return;
        timer.stop();
        QTest::mouseClick(box->button(QMessageBox::Yes), Qt::LeftButton);
    });
    timer.start(5);
    QTest::mouseClick(child<QPushButton>(dialog, "sessions_delete"), Qt::LeftButton);
    ASSERT_EQ(sessions->model()->rowCount(), 1);
    QTest::mouseClick(child<QPushButton>(dialog, "sessions_open"), Qt::LeftButton);
    ASSERT_TRUE(dialog.chosen().has_value());
    EXPECT_NE(*dialog.chosen(), row_);
}

}  // namespace
}  // namespace leadline::testing
