// SPDX-License-Identifier: GPL-3.0-or-later
// The dive drawn, dragged, walked through by keyboard and typed into its table.
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QAbstractSpinBox>
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QUndoStack>

#include "ui/site/profile_model.h"
#include "ui/site/profile_panel.h"
#include "ui/site/profile_view.h"
#include "ui/widgets/quantity_box.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

class ProfilePanelTest : public DocumentTest {
protected:
    void SetUp() override {
        open("salt-cove");
        panel_ = std::make_unique<ProfilePanel>(document_);
        panel_->resize(1000, 480);
        panel_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
        view_ = child<ProfileView>(*panel_, "profile_view");
        table_ = child<QTableView>(*panel_, "corner_table");
    }
    QPoint corner(std::size_t index) const {
        return view_->scene().scale.at(profile().points[index]).toPoint();
    }
    const Profile& profile() const { return document_.session().profile; }
    int steps() const { return document_.undo_stack()->index(); }
    void drag(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers keys = {}) {
        QTest::mousePress(view_, Qt::LeftButton, keys, from);
        const int parts = 5;
        for (int i = 1; i <= parts; ++i) {
            const QPoint at = from + (to - from) * i / parts;
            QMouseEvent move(QEvent::MouseMove, at, view_->mapToGlobal(at), Qt::LeftButton,
                             Qt::LeftButton, keys);
            QCoreApplication::sendEvent(view_, &move);
        }
        QTest::mouseRelease(view_, Qt::LeftButton, keys, to);
    }
    void type_into(const QModelIndex& index, const char* text) {
        table_->setCurrentIndex(index);
        table_->edit(index);
        auto* editor = table_->findChild<QAbstractSpinBox*>();
        ASSERT_NE(editor, nullptr);
        editor->selectAll();
        QTest::keyClicks(editor, QString::fromUtf8(text));
        QTest::keyClick(editor, Qt::Key_Return);
        EXPECT_TRUE(QTest::qWaitFor(
            [&] { return table_->findChild<QAbstractSpinBox*>() == nullptr; }));
    }

    std::unique_ptr<ProfilePanel> panel_;
    ProfileView* view_ = nullptr;
    QTableView* table_ = nullptr;
};

TEST_F(ProfilePanelTest, DraggingACornerChangesTheDiveInOneStep) {
    const Profile before = profile();
    const std::size_t index = 4;
    const Depth wanted(before.points[index].depth.meters() - Meters(2.0));
    QPoint to = corner(index);
    to.setY(static_cast<int>(std::lround(view_->scene().scale.y(wanted))));
    drag(corner(index), to);
    EXPECT_NEAR(profile().points[index].depth.meters().value(), wanted.meters().value(), 1e-9);
    EXPECT_EQ(profile().points[index].time.value(), before.points[index].time.value())
        << "a pull straight down leaves the time alone";
    EXPECT_EQ(steps(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(profile(), before);
}

TEST_F(ProfilePanelTest, DraggingSnapsToHalvesAndWithShiftToTenths) {
    drag(corner(4), corner(4) + QPoint(0, -37));
    const double halves = profile().points[4].depth.meters().value() * 2.0;
    EXPECT_NEAR(halves, std::round(halves), 1e-9);
    drag(corner(4), corner(4) + QPoint(0, -7), Qt::ShiftModifier);
    const double tenths = profile().points[4].depth.meters().value() * 10.0;
    EXPECT_NEAR(tenths, std::round(tenths), 1e-9);
    EXPECT_EQ(steps(), 2) << "two drags are two steps";
}

TEST_F(ProfilePanelTest, DraggingInTimeTakesTheLaterCornersAlongUnlessTold) {
    const Profile before = profile();
    drag(corner(3), corner(3) + QPoint(60, 0));
    const double moved = (profile().points[3].time - before.points[3].time).value();
    EXPECT_GT(moved, 0.9);
    EXPECT_NEAR((duration(profile()) - duration(before)).value(), moved, 1e-9);
    document_.undo_stack()->undo();
    child<QCheckBox>(*panel_, "corner_follow")->click();
    drag(corner(3), corner(3) + QPoint(30, 0));
    EXPECT_NE(profile().points[3].time.value(), before.points[3].time.value());
    EXPECT_EQ(duration(profile()).value(), duration(before).value());
}

TEST_F(ProfilePanelTest, DraggingALegMovesBothItsEnds) {
    const Profile before = profile();
    const QPoint middle = (corner(4) + corner(5)) / 2;
    drag(middle, middle + QPoint(0, -40));
    const double up = (before.points[4].depth - profile().points[4].depth).value();
    EXPECT_GT(up, 0.4);
    EXPECT_NEAR((before.points[5].depth - profile().points[5].depth).value(), up, 1e-9);
    EXPECT_EQ(steps(), 1);
}

TEST_F(ProfilePanelTest, ADragThatComesBackIsNoStep) {
    const Profile before = profile();
    const QPoint from = corner(4);
    QTest::mousePress(view_, Qt::LeftButton, {}, from);
    for (const QPoint& at : {from + QPoint(0, -60), from}) {
        QMouseEvent move(QEvent::MouseMove, at, view_->mapToGlobal(at), Qt::LeftButton,
                         Qt::LeftButton, {});
        QCoreApplication::sendEvent(view_, &move);
    }
    QTest::mouseRelease(view_, Qt::LeftButton, {}, from);
    EXPECT_EQ(profile(), before);
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(ProfilePanelTest, EscapeTakesADragBack) {
    const Profile before = profile();
    const QPoint from = corner(4);
    QTest::mousePress(view_, Qt::LeftButton, {}, from);
    const QPoint to = from + QPoint(0, -60);
    QMouseEvent move(QEvent::MouseMove, to, view_->mapToGlobal(to), Qt::LeftButton,
                     Qt::LeftButton, {});
    QCoreApplication::sendEvent(view_, &move);
    ASSERT_NE(profile(), before);
    QTest::keyClick(view_, Qt::Key_Escape);
    EXPECT_EQ(profile(), before);
}

TEST_F(ProfilePanelTest, TheKeyboardWalksFromCornerToCornerAndOut) {
    view_->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(view_->hasFocus());
    const int corners = static_cast<int>(profile().points.size()) - 1;
    for (int i = 1; i <= corners; ++i) {
        EXPECT_EQ(view_->selected_corner(), i);
        EXPECT_TRUE(view_->hasFocus());
        QTest::keyClick(view_, Qt::Key_Tab);
    }
    EXPECT_FALSE(view_->hasFocus()) << "Tab leaves the drawing after the last corner";
}

TEST_F(ProfilePanelTest, ArrowsMoveTheChosenCornerInOneStep) {
    const Profile before = profile();
    view_->setFocus(Qt::TabFocusReason);
    view_->select_corner(4);
    QTest::keyClick(view_, Qt::Key_Up);
    QTest::keyClick(view_, Qt::Key_Up);
    EXPECT_NEAR((before.points[4].depth - profile().points[4].depth).value(), 1.0, 1e-9);
    QTest::keyClick(view_, Qt::Key_Right);
    EXPECT_NEAR((profile().points[4].time - before.points[4].time).value(), 0.5, 1e-9);
    QTest::keyClick(view_, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_NEAR((before.points[4].depth - profile().points[4].depth).value(), 0.9, 1e-9);
    EXPECT_EQ(steps(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(profile(), before);
}

TEST_F(ProfilePanelTest, InsertAddsACornerAndDeleteRemovesIt) {
    const Profile before = profile();
    view_->setFocus(Qt::TabFocusReason);
    view_->select_corner(4);
    QTest::keyClick(view_, Qt::Key_Insert);
    ASSERT_EQ(profile().points.size(), before.points.size() + 1);
    EXPECT_EQ(view_->selected_corner(), 5);
    EXPECT_EQ(table_->currentIndex().row(), 5);
    QTest::keyClick(view_, Qt::Key_Delete);
    EXPECT_EQ(profile(), before);
    EXPECT_EQ(steps(), 2);
}

TEST_F(ProfilePanelTest, ADoubleClickAddsACornerOnTheLeg) {
    const std::size_t before = profile().points.size();
    const QPoint middle = (corner(4) + corner(5)) / 2;
    QTest::mouseDClick(view_, Qt::LeftButton, {}, middle);
    EXPECT_EQ(profile().points.size(), before + 1);
}

TEST_F(ProfilePanelTest, TheDrawingTellsTheChosenCornerToAScreenReader) {
    view_->select_corner(4);
    const std::string words = view_->accessibleDescription().toStdString();
    EXPECT_THAT(words, ::testing::HasSubstr("Corner 4 of 6"));
    EXPECT_THAT(words, ::testing::HasSubstr("8.0"));
    EXPECT_THAT(words, ::testing::HasSubstr("absolute"));
}

TEST_F(ProfilePanelTest, NumbersTypedInTheTableMoveTheCorner) {
    const Profile before = profile();
    type_into(table_->model()->index(4, ProfileModel::depth_column), "6.5");
    EXPECT_NEAR(profile().points[4].depth.meters().value(), 6.5, 1e-9);
    EXPECT_EQ(steps(), 1);
    type_into(table_->model()->index(5, ProfileModel::time_column), "40");
    EXPECT_NEAR(profile().points[5].time.value(), 40.0, 1e-9);
    EXPECT_NEAR((duration(profile()) - profile().points[5].time).value(),
                (duration(before) - before.points[5].time).value(), 1e-9);
}

TEST_F(ProfilePanelTest, ATimeThatDoesNotGrowIsRefusedWithItsReason) {
    const Profile before = profile();
    auto* refusal = child<QLabel>(*panel_, "profile_refusal");
    EXPECT_TRUE(refusal->isHidden());
    type_into(table_->model()->index(4, ProfileModel::time_column), "2");
    EXPECT_EQ(profile(), before);
    EXPECT_EQ(document_.undo_stack()->count(), 0);
    ASSERT_FALSE(refusal->isHidden());
    EXPECT_THAT(refusal->text().toStdString(), ::testing::HasSubstr("Corner 4"));
    EXPECT_THAT(refusal->text().toStdString(), ::testing::HasSubstr("Times must grow"));
    type_into(table_->model()->index(4, ProfileModel::depth_column), "7");
    EXPECT_TRUE(refusal->isHidden()) << "the next good edit takes the message away";
}

TEST_F(ProfilePanelTest, WithoutTheLaterCornersAlongALateTimeIsRefusedToo) {
    const Profile before = profile();
    child<QCheckBox>(*panel_, "corner_follow")->click();
    type_into(table_->model()->index(3, ProfileModel::time_column), "100");
    EXPECT_EQ(profile(), before);
    EXPECT_FALSE(child<QLabel>(*panel_, "profile_refusal")->isHidden());
}

TEST_F(ProfilePanelTest, ThePhaseIsChosenFromAList) {
    const QModelIndex index = table_->model()->index(5, ProfileModel::phase_column);
    ASSERT_TRUE(table_->model()->setData(index, static_cast<int>(Phase::skills), Qt::EditRole));
    EXPECT_EQ(profile().points[5].phase, Phase::skills);
    EXPECT_FALSE(table_->model()->setData(index, 77, Qt::EditRole));
}

TEST_F(ProfilePanelTest, StartAndSurfaceCannotBeTypedOver) {
    const QAbstractItemModel& model = *table_->model();
    const int last = model.rowCount() - 1;
    EXPECT_FALSE(model.flags(model.index(0, ProfileModel::time_column)) & Qt::ItemIsEditable);
    EXPECT_FALSE(model.flags(model.index(0, ProfileModel::depth_column)) & Qt::ItemIsEditable);
    EXPECT_FALSE(model.flags(model.index(last, ProfileModel::depth_column)) & Qt::ItemIsEditable);
    EXPECT_TRUE(model.flags(model.index(last, ProfileModel::time_column)) & Qt::ItemIsEditable);
}

TEST_F(ProfilePanelTest, TheTablesModelKeepsItsPromises) {
    ProfileModel model(document_);
    QAbstractItemModelTester tester(&model,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    view_->select_corner(4);
    view_->add_corner_after_selected();
    EXPECT_EQ(model.rowCount(), static_cast<int>(profile().points.size()));
    document_.undo_stack()->undo();
    EXPECT_EQ(model.rowCount(), static_cast<int>(profile().points.size()));
    open("mountain-lake");
    EXPECT_EQ(model.rowCount(), static_cast<int>(profile().points.size()));
}

TEST_F(ProfilePanelTest, ButtonsAddAndRemoveWhatIsChosen) {
    auto* add = child<QPushButton>(*panel_, "corner_add");
    auto* remove = child<QPushButton>(*panel_, "corner_remove");
    EXPECT_FALSE(remove->isEnabled());
    table_->setCurrentIndex(table_->model()->index(3, 0));
    EXPECT_EQ(view_->selected_corner(), 3);
    EXPECT_TRUE(remove->isEnabled());
    const std::size_t before = profile().points.size();
    add->click();
    EXPECT_EQ(profile().points.size(), before + 1);
    remove->click();
    EXPECT_EQ(profile().points.size(), before);
}

TEST_F(ProfilePanelTest, FourNumbersDrawThePlainDive) {
    auto* draw = child<QPushButton>(*panel_, "quick_draw");
    auto* deepest_box = child<QuantityBox>(*panel_, "quick_deepest");
    ASSERT_TRUE(draw->isEnabled()) << "the sample was drawn by hand";
    draw->click();
    EXPECT_TRUE(is_plain_dive(profile()));
    EXPECT_FALSE(draw->isEnabled());
    // From here on the dive follows its numbers at once.
    deepest_box->setFocus();
    deepest_box->selectAll();
    QTest::keyClicks(deepest_box, QStringLiteral("6"));
    QTest::keyClick(deepest_box, Qt::Key_Return);
    EXPECT_NEAR(deepest(profile()).meters().value(), 6.0, 1e-9);
    EXPECT_TRUE(is_plain_dive(profile()));
}

TEST_F(ProfilePanelTest, AHandDrawnDiveWaitsForTheButton) {
    const Profile before = profile();
    auto* tour = child<QuantityBox>(*panel_, "quick_tour");
    tour->setFocus();
    tour->selectAll();
    QTest::keyClicks(tour, QStringLiteral("10"));
    QTest::keyClick(tour, Qt::Key_Return);
    EXPECT_EQ(profile(), before);
    child<QPushButton>(*panel_, "quick_draw")->click();
    EXPECT_NEAR(plain_dive_of(profile()).tour.value(), 10.0, 1e-9);
}

TEST_F(ProfilePanelTest, ADiveThatCannotBeDrawnIsRefusedAndTheBoxesGoBack) {
    child<QPushButton>(*panel_, "quick_draw")->click();
    const Profile before = profile();
    auto* tour = child<QuantityBox>(*panel_, "quick_tour");
    tour->setFocus();
    tour->selectAll();
    QTest::keyClicks(tour, QStringLiteral("239"));
    QTest::keyClick(tour, Qt::Key_Return);
    EXPECT_EQ(profile(), before);
    EXPECT_FALSE(child<QLabel>(*panel_, "profile_refusal")->isHidden());
    EXPECT_NEAR(tour->metric_value().value_or(0.0), plain_dive_of(before).tour.value(), 1e-9);
}

TEST_F(ProfilePanelTest, ANewSessionStartsWithNothingChosen) {
    view_->select_corner(6);
    open("mountain-lake");
    EXPECT_EQ(view_->selected_corner(), -1);
}

}  // namespace
}  // namespace leadline::testing
