// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/booking_import_dialog.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QElapsedTimer>
#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>

#include "core/files/text_file.h"
#include "tests/ui/roster_fixture.h"
#include "ui/roster/booking_model.h"
#include "ui/roster/meaning_header.h"

namespace leadline::testing {
namespace {

class BookingImportTest : public RosterTest {
protected:
    QString file(const char* name, const QByteArray& content) {
        const QString path = folder_.filePath(QString::fromLatin1(name));
        QFile out(path);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(content);
        return path;
    }
    /// Opens the dialog as a user does and waits until the list is understood.
    void open_dialog(const Session& session, const QByteArray& csv) {
        open(session);
        tab_->choose_booking_list = [path = file("list.csv", csv)] { return path; };
        tab_->import_action()->trigger();
        dialog_ = tab_->findChild<BookingImportDialog*>();
        ASSERT_NE(dialog_, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == dialog_; }));
        view_ = child<QTableView>("booking_table");
        wait();
    }
    void wait() { ASSERT_TRUE(QTest::qWaitFor([&] { return dialog_->is_ready(); })); }
    std::string shown(int row, int column) {
        return view_->model()->index(row, column).data().toString().toStdString();
    }
    void go(int row, int column) {
        view_->setFocus();
        view_->setCurrentIndex(view_->model()->index(row, column));
    }
    std::string message() { return text_of("booking_message"); }
    bool says(const char* words) { return message().find(words) != std::string::npos; }
    void press_button(const char* name) {
        auto* button = child<QPushButton>(name);
        EXPECT_TRUE(button->isEnabled()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    std::string add_text() { return child<QPushButton>("booking_add")->text().toStdString(); }
    const std::vector<Guest>& guests() { return document_.session().guests; }

    QTemporaryDir folder_;
    BookingImportDialog* dialog_ = nullptr;
    QTableView* view_ = nullptr;
};

TEST_F(BookingImportTest, AddsAListAsOneStep) {
    open_dialog(session_with({"Ana"}),
                "Name;Birth date;Weight (kg);Language\nMara Lind;24.07.1990;62,5;Swedish\n"
                "Bo Ek;01.02.2014;40;de\n");
    EXPECT_EQ(add_text(), "&Add 2 guests");
    EXPECT_EQ(shown(0, 1), "Mara Lind");
    EXPECT_EQ(shown(0, 4), "Swedish");
    press_button("booking_add");
    ASSERT_EQ(guests().size(), 3U);
    EXPECT_EQ(guests()[1].name, "Mara Lind");
    EXPECT_EQ(guests()[1].birth_date, day(1990, 7, 24));
    EXPECT_EQ(guests()[2].language, "de");
    EXPECT_NE(guests()[1].id, guests()[2].id);
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(guests().size(), 1U);
}

TEST_F(BookingImportTest, AsksForTheOrderOfDatesByKeys) {
    open_dialog(staffed_session(), "Name,Birth date\nMara Lind,03/04/1990\n");
    auto* order = child<QComboBox>("date_order");
    EXPECT_TRUE(order->isVisible());
    EXPECT_FALSE(child<QComboBox>("mass_unit")->isVisible());
    press_button("booking_add");
    EXPECT_TRUE(guests().empty()) << "nothing is guessed";
    EXPECT_EQ(focus_name(), "date_order");
    EXPECT_TRUE(says("03/04/1990")) << message();
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    wait();
    EXPECT_EQ(order->currentIndex(), 2);
    press_button("booking_add");
    ASSERT_EQ(guests().size(), 1U);
    EXPECT_EQ(guests()[0].birth_date, day(1990, 3, 4));
}

TEST_F(BookingImportTest, AddsNothingWhileAnErrorStands) {
    open_dialog(staffed_session(), "Name,Birth date\nMara Lind,1990-07-24\nBo Ek,yesterday\n");
    EXPECT_EQ(shown(1, 0), "Cannot be added");
    EXPECT_EQ(add_text(), "&Add 1 guest") << "not the one that cannot be added";
    press_button("booking_add");
    EXPECT_TRUE(guests().empty());
    EXPECT_EQ(view_->currentIndex(), view_->model()->index(1, 2));
    EXPECT_TRUE(says("yesterday")) << message();
    go(1, 0);
    press(Qt::Key_Space);
    EXPECT_EQ(shown(1, 0), "Leave out");
    EXPECT_EQ(add_text(), "&Add 1 guest");
    press_button("booking_add");
    ASSERT_EQ(guests().size(), 1U);
    EXPECT_EQ(guests()[0].name, "Mara Lind");
}

TEST_F(BookingImportTest, LeavesOutAllRowsWithErrorsAtOnce) {
    open_dialog(staffed_session(), "Name,Birth date\nA B,1990-07-24\nC D,x\nE F,y\n");
    EXPECT_EQ(text_of("booking_summary"), "2 rows with errors");
    press_button("booking_leave_out");
    EXPECT_EQ(add_text(), "&Add 1 guest");
    EXPECT_FALSE(child<QPushButton>("booking_leave_out")->isEnabled());
}

TEST_F(BookingImportTest, LeavesOutWhoIsThereAlreadyUnlessTicked) {
    open_dialog(session_with({"Ana Duarte"}),
                "Name,Birth date\nAna Duarte,1990-05-17\nMara Lind,1990-07-24\n");
    EXPECT_EQ(shown(0, 0), "Same as Ana Duarte in the roster");
    EXPECT_EQ(add_text(), "&Add 1 guest");
    go(0, 0);
    EXPECT_TRUE(says("Tick to add it anyway")) << message();
    press(Qt::Key_Space);
    EXPECT_EQ(shown(0, 0), "Add anyway");
    EXPECT_EQ(add_text(), "&Add 2 guests");
    press(Qt::Key_Space);
    press_button("booking_add");
    EXPECT_EQ(guests().size(), 2U);
}

TEST_F(BookingImportTest, TakesAnotherMeaningForAColumn) {
    open_dialog(staffed_session(), "Who,Fax\nMara Lind,070 123 45 67\n");
    EXPECT_TRUE(text_of("booking_facts").find("No headings") != std::string::npos);
    EXPECT_EQ(view_->model()->rowCount(), 2) << "without headings the first row is a row";
    EXPECT_EQ(add_text(), "&Add 0 guests") << "nothing says what their names are";
    const auto mean = [&](const char* name, BookingField field) {
        child<QComboBox>(name)->setFocus();
        const int wanted = static_cast<int>(field);
        while (child<QComboBox>(name)->currentIndex() < wanted) press(Qt::Key_Down);
        wait();
    };
    mean("meaning_0", BookingField::name);
    mean("meaning_1", BookingField::phone);
    go(0, 0);
    press(Qt::Key_Space);
    press_button("booking_add");
    ASSERT_EQ(guests().size(), 1U);
    EXPECT_EQ(guests()[0].phone, "070 123 45 67");
}

TEST_F(BookingImportTest, GivesAMeaningToOneColumnOnly) {
    open_dialog(staffed_session(), "Name,Phone,Fax\nMara Lind,12345,67890\n");
    auto* header = view_->findChild<MeaningHeader*>();
    ASSERT_NE(header, nullptr);
    auto* other = child<QComboBox>("meaning_2");
    other->setFocus();
    while (other->currentIndex() < static_cast<int>(BookingField::phone)) press(Qt::Key_Down);
    EXPECT_EQ(header->meanings(), (std::vector{BookingField::name, BookingField::unused,
                                               BookingField::phone}))
        << "the name, passed on the way, stays where it was";
    press(Qt::Key_Tab);
    EXPECT_EQ(child<QComboBox>("meaning_1")->currentIndex(), 0);
    wait();
}

TEST_F(BookingImportTest, PutsAnAgeWithoutBirthDateIntoTheNote) {
    open_dialog(staffed_session(), "Name,Age,Note\nMara Lind,9,window seat\n");
    go(0, 2);
    EXPECT_TRUE(says("birth date")) << message();
    press_button("booking_add");
    ASSERT_EQ(guests().size(), 1U);
    EXPECT_EQ(guests()[0].note, "window seat\nAge 9 by the booking list");
}

TEST_F(BookingImportTest, GoesFromMessageToMessage) {
    open_dialog(staffed_session(),
                "Name,Shoe size,Dives\nA B,40,many\nC D,41,3\nE F,7,3\n");
    press_button("booking_next");
    EXPECT_EQ(view_->currentIndex(), view_->model()->index(0, 3));
    press_button("booking_next");
    EXPECT_EQ(view_->currentIndex(), view_->model()->index(2, 2));
    press_button("booking_next");
    EXPECT_EQ(view_->currentIndex(), view_->model()->index(0, 3));
}

TEST_F(BookingImportTest, RefusesMoreGuestsThanASessionHolds) {
    QByteArray csv = "Name,Dives\n";
    for (int i = 0; i < 201; ++i) csv += "Guest " + QByteArray::number(i) + ",1\n";
    open_dialog(staffed_session(), csv);
    press_button("booking_add");
    EXPECT_TRUE(says("200")) << message();
    EXPECT_TRUE(guests().empty());
}

TEST_F(BookingImportTest, SaysWhatIsWrongWithAFile) {
    open(staffed_session());
    for (const auto& [path, words] :
         std::vector<std::pair<QString, const char*>>{
             {file("empty.csv", ""), "no rows"},
             {file("open.csv", "Name\n\"x\n"), "quotation mark"},
             {folder_.filePath(QStringLiteral("none.csv")), "cannot be read"}}) {
        BookingImportDialog dialog(document_, path);
        dialog.show();
        auto* message = dialog.findChild<QLabel*>(QStringLiteral("booking_message"));
        EXPECT_TRUE(QTest::qWaitFor([&] { return !message->text().isEmpty(); }));
        EXPECT_TRUE(message->text().contains(QString::fromLatin1(words)))
            << message->text().toStdString();
        EXPECT_FALSE(dialog.findChild<QPushButton*>(QStringLiteral("booking_add"))->isEnabled());
    }
}

TEST_F(BookingImportTest, MayBeClosedWhileItReads) {
    open(staffed_session());
    {
        BookingImportDialog dialog(document_, file("list.csv", "Name\nA\n"));
        dialog.show();
    }
    QCoreApplication::processEvents();
    EXPECT_TRUE(guests().empty());
}

TEST_F(BookingImportTest, EveryControlHasANameToBeReadOut) {
    open_dialog(staffed_session(), "Name,Birth date,Weight,Height\nA B,03/04/1990,75,95\n");
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

TEST_F(BookingImportTest, EveryChoiceIsReachedByTab) {
    open_dialog(staffed_session(), "Name,Birth date,Weight\nA B,03/04/1990,75\n");
    child<QComboBox>("date_order")->setFocus();
    std::vector<std::string> seen{focus_name()};
    for (int i = 0; i < 5; ++i) {
        press(Qt::Key_Tab);
        seen.push_back(focus_name());
    }
    EXPECT_EQ(seen, (std::vector<std::string>{"date_order", "mass_unit", "meaning_0", "meaning_1",
                                              "meaning_2", "booking_table"}));
}

TEST_F(BookingImportTest, ExportIsWhatImportReads) {
    open(session_with({"Ana Duarte", "=Bo"}));
    const QString path = folder_.filePath(QStringLiteral("out.csv"));
    tab_->choose_guest_file = [path] { return path; };
    tab_->export_action()->trigger();
    const Result<std::string> written = read_text_file(path.toStdString());
    ASSERT_TRUE(written.has_value());
    EXPECT_NE(written->find("\"'=Bo\""), std::string::npos);
    tab_->choose_booking_list = [path] { return path; };
    tab_->import_action()->trigger();
    dialog_ = tab_->findChild<BookingImportDialog*>();
    ASSERT_NE(dialog_, nullptr);
    view_ = child<QTableView>("booking_table");
    wait();
    EXPECT_EQ(shown(1, 0), "Same as =Bo in the roster");
    EXPECT_EQ(add_text(), "&Add 0 guests");
}

/// As many rows and columns as can be read: the window must stay usable.
QByteArray largest_list() {
    QByteArray csv = "Name,Birth date";
    for (int column = 2; column < 200; ++column) csv += ",c" + QByteArray::number(column);
    for (int row = 0; row < 5000; ++row) {
        csv += "\nGuest " + QByteArray::number(row) + ",1990-07-24";
        for (int column = 2; column < 200; ++column) csv += ",abc";
    }
    return csv;
}

TEST_F(BookingImportTest, TheLargestListIsReadOutsideTheWindowsThread) {
    open(staffed_session());
    const QString path = file("large.csv", largest_list());
    QElapsedTimer timer;
    timer.start();
    BookingImportDialog dialog(document_, path);
    RecordProperty("to_open_ms", static_cast<int>(timer.elapsed()));
    dialog.show();
    qint64 longest = 0;
    EXPECT_TRUE(QTest::qWaitFor([&] {
        timer.restart();
        QCoreApplication::processEvents();
        longest = std::max(longest, timer.elapsed());
        return dialog.is_ready();
    }, 60000));
    RecordProperty("longest_pause_ms", static_cast<int>(longest));
    EXPECT_EQ(dialog.findChild<QTableView*>(QStringLiteral("booking_table"))->model()->rowCount(),
              5000);
}

TEST(BookingModelTest, IsASoundModel) {
    BookingModel model(UnitSystem::metric);
    QAbstractItemModelTester tester(&model,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    BookingTable table;
    table.columns.resize(2);
    table.lines = {{2, {"Mara Lind", "75"}}, {3, {""}}};
    model.set_table(std::make_shared<const BookingTable>(table));
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_FALSE(model.is_ticked(0)) << "not understood yet";
    const BookingChoices choices{{BookingField::name, BookingField::mass}, std::nullopt,
                                 MassUnit::pounds, std::nullopt};
    model.set_preview(preview_bookings(table, choices, {}), choices);
    EXPECT_EQ(model.ticked(), 2);
    EXPECT_EQ(model.ticked_with_error(), 1);
    EXPECT_EQ(model.index(0, 2).data().toString(), QStringLiteral("34\u00a0kg"));
    EXPECT_TRUE(model.setData(model.index(1, 0), Qt::Unchecked, Qt::CheckStateRole));
    EXPECT_FALSE(model.setData(model.index(0, 1), QStringLiteral("x"), Qt::EditRole));
    EXPECT_EQ(model.guests().size(), 1U);
    model.set_table(std::make_shared<const BookingTable>());
    EXPECT_EQ(model.rowCount(), 0);
}

}  // namespace
}  // namespace leadline::testing
