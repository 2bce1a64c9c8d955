// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAction>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>

#include "ui/sheet/briefing_tab.h"
#include "ui/shell/main_window.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;

/// All that a table shows.
QString table_text(const QTableView& table) {
    QStringList cells;
    const QAbstractItemModel& model = *table.model();
    for (int row = 0; row < model.rowCount(); ++row) {
        for (int column = 0; column < model.columnCount(); ++column) {
            cells << model.index(row, column).data().toString();
        }
    }
    return cells.join(u'|');
}

/// The whole job, by clicks and keys, in one sitting.
TEST(Workflow, FromASampleOverAnEditedPlanToPrintedCardsAndTheReviewedLog) {
    SessionDocument document(rules());
    Result<std::unique_ptr<Database>> database = Database::open(QStringLiteral(":memory:"));
    ASSERT_TRUE(database.has_value());
    RecordKeeper keeper(document, std::move(database).value());
    MainWindow window(document, keeper);
    window.resize(1280, 800);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    const auto child = [&](const char* name) {
        auto* found = window.findChild<QWidget*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    };

    // Open a sample.
    window.choose_open_path = [] { return sample_path("salt-cove"); };
    window.findChild<QAction*>(QStringLiteral("action_open"))->trigger();
    ASSERT_EQ(document.session().guests.size(), 4U);

    // Add a guest: type the name; the plan has a fifth guest at once.
    window.show_tab(MainWindow::roster_tab);
    QTest::mouseClick(child("add_guest"), Qt::LeftButton);
    ASSERT_EQ(document.session().guests.size(), 5U);
    auto* name = qobject_cast<QLineEdit*>(child("name_edit"));
    ASSERT_NE(name, nullptr);
    name->setFocus();
    name->selectAll();
    QTest::keyClicks(name, QStringLiteral("Ragnhild"));
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(document.session().guests.back().name, "Ragnhild");
    EXPECT_EQ(document.plan().guests.size(), 5U);

    // Change the depth; the Gas tab's numbers follow.
    auto* gas_table = qobject_cast<QTableView*>(child("gas_table"));
    ASSERT_NE(gas_table, nullptr);
    const QString before = table_text(*gas_table);
    EXPECT_TRUE(before.contains(QStringLiteral("Ragnhild")));
    window.show_tab(MainWindow::site_tab);
    auto* deepest = qobject_cast<QAbstractSpinBox*>(child("quick_deepest"));
    ASSERT_NE(deepest, nullptr);
    deepest->setFocus();
    deepest->selectAll();
    QTest::keyClicks(deepest, QStringLiteral("6"));
    QTest::keyClick(deepest, Qt::Key_Return);
    QTest::mouseClick(child("quick_draw"), Qt::LeftButton);
    EXPECT_NEAR(document.plan().environment.deepest.meters().value(), 6.0, 1e-9);
    window.show_tab(MainWindow::gas_tab);
    EXPECT_NE(table_text(*gas_table), before);

    // Save the cards: four are ready; the new guest is refused, having no screening yet.
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("cards.pdf"));
    window.briefing()->set_pdf_path_chooser([&] { return path; });
    window.show_tab(MainWindow::briefing_tab);
    QTest::mouseClick(child("briefing_save_pdf"), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.briefing()->status().isEmpty(); }, 60'000));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished(60'000));
    const QString printed = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_TRUE(printed.contains(QStringLiteral("Okonkwo")));
    EXPECT_FALSE(printed.contains(QStringLiteral("Ragnhild")));

    // Undo takes the depth and the guest back.
    while (document.session().guests.size() > 4) {
        window.findChild<QAction*>(QStringLiteral("action_undo"))->trigger();
    }
    EXPECT_EQ(document.session(), sample("salt-cove").session);

    // Open the finished dive and see what everybody really breathed.
    window.choose_open_path = [] { return sample_path("finished-dive"); };
    window.findChild<QAction*>(QStringLiteral("action_open"))->trigger();
    window.show_tab(MainWindow::debrief_tab);
    auto* log_table = qobject_cast<QTableView*>(child("debrief_table"));
    ASSERT_NE(log_table, nullptr);
    ASSERT_TRUE(document.review().has_value());
    const LitersPerMinute rmv = document.review()->divers.front().actual_rmv.value();
    EXPECT_THAT(table_text(*log_table).toStdString(),
                HasSubstr(std::to_string(std::lround(rmv.value()))));
}

}  // namespace
}  // namespace leadline::testing
