// SPDX-License-Identifier: GPL-3.0-or-later
// Staff: who is within the limits, what is left without a stop, and when they may fly.
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QToolButton>

#include "figure_panel_fixture.h"
#include "site_gas_walk.h"
#include "ui/gas/staff_exposure_model.h"
#include "ui/gas/staff_exposure_panel.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;
using StaffColumn = StaffExposureModel::Column;

class StaffExposureTest : public FigurePanelTest<StaffExposurePanel> {
protected:
    StaffExposureTest() : FigurePanelTest("exposure_table") {}
    const StaffMember& member(std::size_t index) const { return document_.session().staff[index]; }
    const StaffExposure& exposure(std::size_t index) const {
        return document_.plan().exposures[index];
    }
    /// So many dives of one person this day, each of 20 min to 8 m, the last 40 min before this
    /// one.
    static void give_dives(Session& session, std::size_t index, int count) {
        session.staff[index].earlier_dives.clear();
        for (int i = 0; i < count; ++i) {
            EarlierDive dive;
            dive.date = session.date;
            dive.start.minutes_after_midnight =
                session.dive_time.minutes_after_midnight - 60 * (i + 1);
            dive.deepest = Depth(Meters(8.0));
            dive.duration = Minutes(20.0);
            session.staff[index].earlier_dives.push_back(dive);
        }
    }
};

TEST_F(StaffExposureTest, WithinTheLimitsIsSaidByName) {
    const std::string answer = said("exposure_answer");
    EXPECT_THAT(answer, HasSubstr("Within the limits: " + member(0).name));
    EXPECT_EQ(shown(0, StaffColumn::name_column), member(0).name);
    EXPECT_EQ(shown(0, StaffColumn::verdict_column), "Within limits");
    EXPECT_EQ(shown(0, StaffColumn::dives_column), std::to_string(exposure(0).dives_today));
    EXPECT_EQ(shown(0, StaffColumn::ascents_column), std::to_string(exposure(0).ascents_today));
    EXPECT_EQ(shown(0, StaffColumn::days_column), std::to_string(exposure(0).days_in_a_row));
    ASSERT_TRUE(exposure(0).surface_interval.has_value());
    EXPECT_EQ(shown(0, StaffColumn::interval_column),
              long_time_text(*exposure(0).surface_interval).toStdString());
}

TEST_F(StaffExposureTest, TimesAreRoundedDownAndTheLoadUp) {
    EXPECT_EQ(long_time_text(Minutes(52.9)).toStdString(), "52\u00A0min");
    EXPECT_EQ(long_time_text(Minutes(60.0)).toStdString(),
              "1\u00A0h\u00A0"
              "0\u00A0min");
    EXPECT_EQ(long_time_text(Minutes(1439.0)).toStdString(),
              "23\u00A0h\u00A0"
              "59\u00A0min");
    EXPECT_EQ(long_time_text(Minutes(1680.0)).toStdString(), "28\u00A0h");
    EXPECT_EQ(long_time_text(Minutes(4319.0)).toStdString(),
              "2\u00A0"
              "days");
    StaffExposure one;
    EXPECT_EQ(no_stop_text(one).toStdString(), "over 24\u00A0h");
    EXPECT_EQ(surface_interval_text(one).toStdString(), "No record");
    EXPECT_EQ(no_fly_text(one).toStdString(), "–");
    one.no_stop_left = Minutes(143.9);
    one.highest_saturation = 0.331;
    one.no_fly = Hours(24.0);
    EXPECT_EQ(no_stop_text(one).toStdString(), "143\u00A0min");
    EXPECT_EQ(tissue_share_text(one).toStdString(), "34\u00A0%");
    EXPECT_EQ(no_fly_text(one).toStdString(), "24\u00A0h");
}

TEST_F(StaffExposureTest, ADiveTooManyIsSaidWithWordShapeAndLimit) {
    change([](Session& session) { give_dives(session, 0, 5); });
    ASSERT_NE(open_finding(document_.plan(), FindingCode::staff_dives_over_limit, member(0).id),
              nullptr);
    EXPECT_THAT(said("exposure_answer"), StartsWith("Care – " + member(0).name + ": "));
    EXPECT_THAT(said("exposure_answer"), HasSubstr("dive number 6 today; at most 4"));
    EXPECT_EQ(shown(0, StaffColumn::dives_column), "6, at most 4");
    EXPECT_EQ(shown(0, StaffColumn::verdict_column), "Care: over a limit");
    for (const int column : {StaffColumn::dives_column, StaffColumn::verdict_column}) {
        EXPECT_FALSE(cell(0, column).data(Qt::DecorationRole).isNull()) << column;
        EXPECT_THAT(cell(0, column).data(Qt::AccessibleTextRole).toString().toStdString(),
                    HasSubstr("somebody else lead"));
    }
    EXPECT_TRUE(cell(0, StaffColumn::days_column).data(Qt::DecorationRole).isNull());
    EXPECT_THAT(said("exposure_answer"), HasSubstr("Within the limits: " + member(1).name));
}

TEST_F(StaffExposureTest, AStopThatWouldBeNeededComesFirst) {
    change([](Session& session) {
        EarlierDive dive;
        dive.date = session.date;
        dive.start.minutes_after_midnight = session.dive_time.minutes_after_midnight - 130;
        dive.deepest = Depth(Meters(40.0));
        dive.duration = Minutes(120.0);
        session.staff[1].earlier_dives = {dive};
        give_dives(session, 0, 5);
    });
    ASSERT_TRUE(exposure(1).needs_stop);
    EXPECT_THAT(said("exposure_answer"), StartsWith("Stop – " + member(1).name + ": "));
    EXPECT_EQ(shown(1, StaffColumn::verdict_column), "Stop: needs a stop");
    EXPECT_FALSE(cell(1, StaffColumn::no_stop_column).data(Qt::DecorationRole).isNull());
    table_->sortByColumn(StaffColumn::verdict_column, Qt::AscendingOrder);
    EXPECT_EQ(shown(0, StaffColumn::name_column), member(1).name);
}

TEST_F(StaffExposureTest, ADecisionToGoAheadIsToldAsOne) {
    change([](Session& session) { give_dives(session, 0, 5); });
    const Finding* finding =
        open_finding(document_.plan(), FindingCode::staff_dives_over_limit, member(0).id);
    ASSERT_NE(finding, nullptr);
    const std::string key_of_it = key(*finding);
    change([&](Session& session) {
        session.overrules.push_back({key_of_it, "only a pool", "Katharina"});
    });
    EXPECT_THAT(said("exposure_answer"), HasSubstr("Set aside: only a pool"));
    EXPECT_EQ(shown(0, StaffColumn::verdict_column), "Over a limit, set aside");
    EXPECT_TRUE(cell(0, StaffColumn::dives_column).data(Qt::DecorationRole).isNull());
}

TEST_F(StaffExposureTest, WhoStaysAshoreAndWhoHasNoDiveOnRecordIsSaid) {
    change([](Session& session) {
        StaffMember added;
        added.id = next_staff_id(session);
        added.name = "Shore Watch";
        session.staff.push_back(added);
    });
    ASSERT_FALSE(exposure(2).dives_now);
    EXPECT_THAT(said("exposure_answer"), HasSubstr("Does not dive in this session: Shore Watch."));
    EXPECT_THAT(said("exposure_answer"),
                HasSubstr("Taken as rested, as no earlier dive is on record: Shore Watch."));
    EXPECT_THAT(said("exposure_answer"), HasSubstr("Roster tab, Groups and staff"));
    EXPECT_EQ(shown(2, StaffColumn::verdict_column), "Does not dive now");
    EXPECT_EQ(shown(2, StaffColumn::planned_column), "–");
    EXPECT_EQ(shown(2, StaffColumn::interval_column), "No record");
}

TEST_F(StaffExposureTest, HoursBeforeFlyingCarryTheirSource) {
    ASSERT_FALSE(exposure(0).no_fly_source.empty());
    EXPECT_THAT(cell(0, StaffColumn::no_fly_column).data(Qt::ToolTipRole).toString().toStdString(),
                HasSubstr(exposure(0).no_fly_source));
}

TEST_F(StaffExposureTest, WhatChangedWhileHiddenIsThereWhenShownAgain) {
    panel_->hide();
    change([](Session& session) { give_dives(session, 0, 3); });
    panel_->show();
    EXPECT_EQ(shown(0, StaffColumn::dives_column), "4");
    EXPECT_THAT(said("exposure_answer"), HasSubstr("Within the limits: " + member(0).name));
}

TEST_F(StaffExposureTest, ThePlainSafetyLineStandsThere) {
    const std::string safety = child<QLabel>(*panel_, "exposure_safety")->text().toStdString();
    EXPECT_THAT(safety, HasSubstr("own computer, a physician and the makers"));
    EXPECT_THAT(safety, HasSubstr("ZH-L16C with gradient factors 30/70, common practice"));
}

TEST_F(StaffExposureTest, AClickOnAHeadingSortsByTheNumber) {
    change([](Session& session) {
        give_dives(session, 0, 4);
        give_dives(session, 1, 2);
    });
    const auto click = [&](int column) {
        QHeaderView* header = table_->horizontalHeader();
        QTest::mouseClick(
            header->viewport(), Qt::LeftButton, {},
            QPoint(header->sectionViewportPosition(column) + 8, header->height() / 2));
    };
    click(StaffColumn::dives_column);
    const std::string once = shown(0, StaffColumn::name_column);
    click(StaffColumn::dives_column);
    EXPECT_NE(shown(0, StaffColumn::name_column), once);
    for (int column = 0; column < StaffColumn::column_count; ++column) {
        EXPECT_TRUE(cell(0, column).data(IdRowModel::sort_role).isValid()) << column;
    }
}

TEST_F(StaffExposureTest, WhyIsOpenedByKeyAndFollowsTheChosenOne) {
    auto* why = child<QToolButton>(*panel_, "exposure_why");
    table_->setFocus();
    QTest::keyClick(table_, Qt::Key_Home, Qt::ControlModifier);
    QTest::keyClick(table_, Qt::Key_Tab);
    ASSERT_TRUE(why->hasFocus()) << "Tab leaves the table";
    QTest::keyClick(why, Qt::Key_Space);
    EXPECT_THAT(said("exposure_reason"), StartsWith(member(0).name + ": going straight up"));
    EXPECT_THAT(said("exposure_reason"), HasSubstr("At most 4 dives a day"));
    EXPECT_THAT(said("exposure_reason"), HasSubstr("Tauchmedizin"));
    table_->setFocus();
    QTest::keyClick(table_, Qt::Key_Down);
    EXPECT_THAT(said("exposure_reason"), StartsWith(member(1).name + ": "));
    document_.set_units(UnitSystem::imperial);
    EXPECT_THAT(said("exposure_reason"), HasSubstr("ft/min"));
    EXPECT_THAT(said("exposure_reason"), Not(HasSubstr("m/min")));
}

TEST_F(StaffExposureTest, TheModelKeepsItsPromises) {
    StaffExposureModel model(document_);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QObject::connect(&document_, &SessionDocument::changed, &model, &StaffExposureModel::refresh);
    const int before = model.rowCount();
    change([](Session& session) {
        StaffMember added;
        added.id = next_staff_id(session);
        added.name = std::string(120, 'W');
        session.staff.push_back(added);
    });
    EXPECT_EQ(model.rowCount(), before + 1);
    EXPECT_LT(table_->columnWidth(StaffColumn::name_column), 400);
    EXPECT_LE(panel_->minimumSizeHint().width(), 853);
    change([](Session& session) { std::swap(session.staff.front(), session.staff.back()); });
    EXPECT_EQ(model.row_of(member(0).id.text), 0);
    open("harbour-morning");
    EXPECT_EQ(model.rowCount(), static_cast<int>(document_.session().staff.size()));
}

TEST_F(StaffExposureTest, NobodyYetIsSaidAndHowDivesAreEntered) {
    change([](Session& session) {
        session.staff.clear();
        session.leader = StaffId();
        for (Group& group : session.groups) {
            group.instructor = StaffId();
            group.assistant = StaffId();
        }
    });
    auto* empty = child<QLabel>(*panel_, "exposure_empty");
    EXPECT_FALSE(empty->isHidden());
    EXPECT_THAT(empty->text().toStdString(), HasSubstr("Roster tab"));
    EXPECT_THAT(empty->text().toStdString(), HasSubstr("the button in the column Dives"));
    EXPECT_FALSE(table_->isVisible());
}

TEST_F(StaffExposureTest, EveryColumnExplainsItself) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        document_.set_units(units);
        for (int column = 0; column < StaffColumn::column_count; ++column) {
            const QVariant help =
                table_->model()->headerData(column, Qt::Horizontal, Qt::ToolTipRole);
            EXPECT_GT(help.toString().size(), 24) << column;
        }
    }
    EXPECT_THAT(table_->model()
                    ->headerData(StaffColumn::no_stop_column, Qt::Horizontal, Qt::ToolTipRole)
                    .toString()
                    .toStdString(),
                HasSubstr("\u00A0"
                          "ft"));
}

TEST_F(StaffExposureTest, EveryControlHasANameForEyesEarsAndScripts) {
    EXPECT_EQ(nameless_controls(*panel_).join(u' ').toStdString(), "");
    EXPECT_EQ(unnamed_controls(*panel_).join(u' ').toStdString(), "");
    EXPECT_EQ(tab_order(*panel_, *table_).join(u' ').toStdString(), "exposure_table exposure_why");
}

}  // namespace
}  // namespace leadline::testing
