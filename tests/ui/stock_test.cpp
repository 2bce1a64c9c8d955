// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/stock_dialog.h"

#include <QAbstractItemModelTester>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/lead_sizes.h"
#include "ui/roster/suit_stock_model.h"

namespace leadline::testing {
namespace {

class StockTest : public RosterTest {
protected:
    void open_dialog(const Session& session) {
        open(session);
        click("open_stock");
        dialog_ = tab_->findChild<StockDialog*>();
        ASSERT_NE(dialog_, nullptr);
        ASSERT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == dialog_; }));
        table_ = child<QTableView>("suit_stock_table");
    }
    const Stock& stock() { return document_.session().stock; }
    std::string message() { return child<QLabel>("stock_message")->text().toStdString(); }
    bool says(const char* words) { return message().find(words) != std::string::npos; }
    void press_button(const char* name) {
        auto* button = child<QPushButton>(name);
        EXPECT_TRUE(button->isEnabled()) << name;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void fill(const char* text) {
        QWidget* box = QApplication::focusWidget();
        ASSERT_NE(box, nullptr);
        ASSERT_EQ(focus_name(), "suit_stock_editor");
        for (const QChar letter : QString::fromUtf8(text)) type_letter(box, letter);
        QTest::keyClick(box, Qt::Key_Tab);
    }

    StockDialog* dialog_ = nullptr;
    QTableView* table_ = nullptr;
};

TEST_F(StockTest, IsTypedByKeysAndTakenOverAsOneStep) {
    open_dialog(staffed_session());
    enter("stock_steel_12", "14");
    enter("stock_aluminium_11", "0");
    child<QPushButton>("suit_stock_add")->setFocus();
    press(Qt::Key_Space);
    fill(" 7 mm  L ");
    fill("3");
    enter("lead_pieces_edit", "2 0.5, 1");
    EXPECT_EQ(child<QLabel>("lead_pieces_words")->text(),
              QStringLiteral("2\u00a0kg · 0.5\u00a0kg · 1\u00a0kg"));
    EXPECT_EQ(stock(), Stock{}) << "nothing is taken over before OK";
    press_button("stock_ok");
    const Stock expected{{{CylinderTypeId("aluminium-11"), 0}, {CylinderTypeId("steel-12"), 14}},
                         {{"7 mm L", 3}},
                         {Kilograms(2.0), Kilograms(0.5), Kilograms(1.0)}};
    EXPECT_EQ(stock(), expected);
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(stock(), Stock{});
}

TEST_F(StockTest, ShowsWhatIsRecordedAndLeavesItAlone) {
    Session session = staffed_session();
    session.stock = {{{CylinderTypeId("steel-8"), 2}, {CylinderTypeId("steel-12"), 7}},
                     {{"5 mm M", 4}},
                     {Kilograms(1.0), Kilograms(1.0 / 3.0)}};
    open_dialog(session);
    EXPECT_EQ(child<QSpinBox>("stock_steel_12")->value(), 7);
    EXPECT_EQ(child<QSpinBox>("stock_steel_15")->text().toStdString(), "–");
    press_button("stock_ok");
    EXPECT_EQ(stock(), session.stock);
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(StockTest, AnEmptiedNumberIsNotRecorded) {
    Session session = staffed_session();
    session.stock.cylinders = {{CylinderTypeId("steel-12"), 7}};
    open_dialog(session);
    auto* box = child<QSpinBox>("stock_steel_12");
    box->setFocus();
    QTest::keyClick(box, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(box, Qt::Key_Backspace);
    QTest::keyClick(box, Qt::Key_Tab);
    EXPECT_EQ(box->text().toStdString(), "–");
    press_button("stock_ok");
    EXPECT_TRUE(stock().cylinders.empty());
}

TEST_F(StockTest, SuitsHandedOutAreAddedWithTheirNumber) {
    open_dialog(session_with({"Ana", "Bo"}));
    press_button("suit_stock_add_issued");
    ASSERT_EQ(table_->model()->rowCount(), 1);
    EXPECT_FALSE(child<QPushButton>("suit_stock_add_issued")->isEnabled());
    press_button("stock_ok");
    EXPECT_EQ(stock().suits, (std::vector<SuitStock>{{"5 mm M", 2}}));
}

TEST_F(StockTest, ALabelTwiceIsRefusedInWords) {
    Session session = staffed_session();
    session.stock.suits = {{"5 mm M", 4}, {"5 mm L", 2}};
    open_dialog(session);
    table_->setCurrentIndex(table_->model()->index(1, 0));
    table_->setFocus();
    press(Qt::Key_F2);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_A, Qt::ControlModifier);
    fill("5 mm M");
    EXPECT_TRUE(says("5 mm M")) << message();
    press_button("stock_ok");
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(stock().suits[1].suit, "5 mm L");
}

TEST_F(StockTest, SizesThatAreNoneAreRefusedInWords) {
    open_dialog(staffed_session());
    enter("lead_pieces_edit", "1 two");
    EXPECT_TRUE(says("1 two"));
    press_button("stock_ok");
    EXPECT_TRUE(dialog_->isVisible());
    EXPECT_EQ(focus_name(), "lead_pieces_edit");
    enter("lead_pieces_edit", "11");
    EXPECT_TRUE(says("0.1 to 10")) << message();
    enter("lead_pieces_edit", "1 1");
    EXPECT_TRUE(says("twice")) << message();
    enter("lead_pieces_edit", "1");
    EXPECT_TRUE(message().empty());
}

TEST_F(StockTest, ARowWithoutALabelIsNotFilledIn) {
    open_dialog(staffed_session());
    press_button("suit_stock_add");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(dialog_->isVisible());
    press_button("stock_ok");
    EXPECT_EQ(stock(), Stock{});
}

TEST_F(StockTest, EveryControlHasANameToBeReadOut) {
    open_dialog(session_with({"Ana"}));
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

TEST_F(RosterTest, DivesMadeBeforeAreAskedOnThePersonPage) {
    open(session_with({"Ana"}));
    EXPECT_EQ(child<QSpinBox>("dives_before_box")->text().toStdString(), "–");
    enter("dives_before_box", "3");
    EXPECT_EQ(guest(0).dives_before, 3);
    enter("dives_before_box", "0");
    EXPECT_EQ(guest(0).dives_before, 0) << "none is an answer";
    document_.undo_stack()->undo();
    EXPECT_EQ(guest(0).dives_before, std::nullopt);
}

TEST(LeadSizes, AreReadAsPeopleTypeThem) {
    const auto read = [](const char* text, UnitSystem units = UnitSystem::metric) {
        std::vector<double> sizes;
        const auto found = read_lead_sizes(QString::fromUtf8(text), units);
        if (!found) return std::vector<double>{-1.0};
        for (const Kilograms size : *found) sizes.push_back(size.value());
        return sizes;
    };
    using Sizes = std::vector<double>;
    EXPECT_EQ(read(""), Sizes{});
    EXPECT_EQ(read(" 0.5  1 2 "), (Sizes{0.5, 1.0, 2.0}));
    EXPECT_EQ(read("0,5; 1;2"), (Sizes{0.5, 1.0, 2.0}));
    EXPECT_EQ(read("1, 2, 3"), (Sizes{1.0, 2.0, 3.0}));
    EXPECT_EQ(read("1,2,3"), (Sizes{1.0, 2.0, 3.0}));
    EXPECT_EQ(read("0.5,1"), (Sizes{0.5, 1.0}));
    EXPECT_EQ(read("2", UnitSystem::imperial), Sizes{0.90718474});
    for (const char* wrong : {"x", "1 kg", "nan", "inf", "1..2"}) {
        EXPECT_EQ(read(wrong), Sizes{-1.0}) << wrong;
    }
}

TEST(LeadSizes, ComeBackAsTheyWereTyped) {
    const auto pounds = read_lead_sizes(QStringLiteral("1 2 3"), UnitSystem::imperial);
    ASSERT_TRUE(pounds.has_value());
    EXPECT_EQ(lead_sizes_text(*pounds, UnitSystem::imperial), QStringLiteral("1  2  3"));
    EXPECT_EQ(lead_sizes_text({Kilograms(2.0), Kilograms(0.5)}, UnitSystem::metric),
              QStringLiteral("0.5  2"));
}

TEST(LeadSizes, AreShownWithTheDecimalSignOfTheLocaleAndReadBack) {
    QLocale::setDefault(QLocale(QStringLiteral("fr")));
    const QString shown =
        lead_sizes_text({Kilograms(1.25), Kilograms(0.5), Kilograms(2.0)}, UnitSystem::metric);
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(shown, QStringLiteral("0,5  1,25  2"));
    EXPECT_EQ(read_lead_sizes(shown, UnitSystem::metric),
              (std::vector{Kilograms(0.5), Kilograms(1.25), Kilograms(2.0)}));
}

TEST(SuitStockModelTest, IsASoundModel) {
    SuitStockModel model(session_with({"Ana"}));
    QAbstractItemModelTester tester(&model,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.add({"3 mm S", 2});
    EXPECT_EQ(model.add_issued(), 1);
    EXPECT_EQ(model.add_issued(), 0);
    EXPECT_EQ(model.index(1, 2).data().toInt(), 1);
    EXPECT_FALSE(model.setData(model.index(1, 2), 5, Qt::EditRole));
    model.set_wrong(model.index(1, 0), QStringLiteral("twice"));
    model.remove(1);
    EXPECT_EQ(model.rowCount(), 1);
}

}  // namespace
}  // namespace leadline::testing
