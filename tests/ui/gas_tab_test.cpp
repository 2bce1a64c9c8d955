// SPDX-License-Identifier: GPL-3.0-or-later
// The Gas tab: its sentences, its table, and that an edit elsewhere reaches it at once.
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QListView>
#include <QLocale>
#include <QTabBar>
#include <QTableView>
#include <QToolButton>
#include <QUndoStack>

#include "core/body/breathing.h"
#include "gas_crowd.h"
#include "site_gas_walk.h"
#include "ui/gas/gas_tab.h"
#include "ui/gas/gas_words.h"
#include "ui/gas/guest_body_panel.h"
#include "ui/gas/guest_gas_edit.h"
#include "ui/gas/guest_gas_model.h"
#include "ui/gas/pressure_chart.h"
#include "ui/gas/staff_exposure_panel.h"
#include "ui/site/site_tab.h"
#include "ui/widgets/quantity_box.h"
#include "ui/words/lever_words.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using Column = GuestGasModel::Column;

class GasTabTest : public DocumentTest {
protected:
    void SetUp() override { start("salt-cove"); }
    void start(const char* sample_name) {
        open(sample_name);
        tab_ = std::make_unique<GasTab>(document_);
        tab_->resize(1200, 760);
        tab_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(tab_.get()));
        table_ = child<QTableView>(*tab_, "gas_table");
        chart_ = child<PressureChart>(*tab_, "gas_chart");
    }
    void change(const std::function<void(Session&)>& edit) {
        ASSERT_TRUE(document_.edit(QStringLiteral("test"), edit).has_value());
    }
    int row_of(const GuestId& id) const {
        for (int row = 0; row < table_->model()->rowCount(); ++row) {
            if (cell(row, Column::name_column).data(GuestGasModel::guest_role).toString() ==
                QString::fromStdString(id.text)) {
                return row;
            }
        }
        return -1;
    }
    QModelIndex cell(int row, int column) const { return table_->model()->index(row, column); }
    std::string shown(int row, int column) const {
        return cell(row, column).data().toString().toStdString();
    }
    const Guest& guest(std::size_t index) const { return document_.session().guests[index]; }
    std::string answer(int line = 1) {
        return child<QLabel>(*tab_, ("gas_answer_" + std::to_string(line)).c_str())
            ->text()
            .toStdString();
    }
    template <typename Editor>
    Editor* open_editor(int row, int column) {
        table_->setCurrentIndex(cell(row, column));
        table_->edit(cell(row, column));
        auto* editor = table_->findChild<Editor*>();
        EXPECT_NE(editor, nullptr);
        return editor;
    }
    void type_into(int row, int column, const char* text) {
        auto* editor = open_editor<QuantityBox>(row, column);
        ASSERT_NE(editor, nullptr);
        editor->selectAll();
        if (*text == '\0') QTest::keyClick(editor, Qt::Key_Delete);
        QTest::keyClicks(editor, QString::fromUtf8(text));
        QTest::keyClick(editor, Qt::Key_Return);
        EXPECT_TRUE(
            QTest::qWaitFor([&] { return table_->findChild<QuantityBox*>() == nullptr; }));
    }

    std::unique_ptr<GasTab> tab_;
    QTableView* table_ = nullptr;
    PressureChart* chart_ = nullptr;
};

TEST_F(GasTabTest, TheAnswerNamesTheLikelyFirstTheBandAndTheChance) {
    const GroupForecast& forecast = document_.plan().forecasts.front();
    const Guest* first = find_guest(document_.session(), forecast.likely_first);
    const auto whole = [](const std::optional<Minutes>& time) {
        return std::to_string(static_cast<int>(std::floor(time->value())));
    };
    const TimeBand& band = forecast.first_at_reserve;
    ASSERT_TRUE(band.early && band.middle && band.late);
    const std::string said = answer();
    EXPECT_THAT(said, ::testing::StartsWith(document_.session().groups.front().name + ": "));
    EXPECT_THAT(said, ::testing::HasSubstr(first->name + " is likely first at 50"));
    EXPECT_THAT(said, ::testing::HasSubstr("(" + whole(band.early) + " to " + whole(band.late) +
                                           ")"));
    EXPECT_THAT(said, ::testing::HasSubstr("after about " + whole(band.middle)));
    EXPECT_THAT(said, ::testing::HasSubstr("All last the planned 35"));
    EXPECT_THAT(said, ::testing::HasSubstr(chance_text(forecast.completes).toStdString()));
}

TEST_F(GasTabTest, OneGuestIsNotTheFirstOfAnybody) {
    change([](Session& session) {
        session.guests.erase(session.guests.begin() + 1, session.guests.end());
    });
    EXPECT_THAT(answer(), ::testing::HasSubstr(guest(0).name + " is at 50"));
    EXPECT_THAT(answer(), ::testing::HasSubstr("The air lasts the planned"));
    EXPECT_EQ(shown(0, Column::ends_dive_column), "over 99 of 100");
    EXPECT_THAT(shown(0, Column::minutes_column),
                ::testing::Not(::testing::HasSubstr("first")));
    EXPECT_EQ(chart_->lanes().size(), 1U);
}

TEST_F(GasTabTest, WhatMayGoWrongIsOneClickAway) {
    auto* button = child<QToolButton>(*tab_, "gas_show_trouble");
    auto* first = tab_->findChild<QWidget*>(QStringLiteral("gas_trouble"));
    EXPECT_FALSE(first->isVisible());
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(first->isVisible());
    const GroupForecast& forecast = document_.plan().forecasts.front();
    const std::string air = child<QLabel>(*tab_, "gas_trouble_1")->text().toStdString();
    EXPECT_THAT(air, ::testing::HasSubstr("20"));
    EXPECT_THAT(air, ::testing::HasSubstr(
                         chance_text(forecast.completes_after_loss).toStdString()));
    EXPECT_THAT(air, ::testing::HasSubstr(
                         chance_text(forecast.completes_after_free_flow).toStdString()));
    const std::string two = child<QLabel>(*tab_, "gas_trouble_2")->text().toStdString();
    ASSERT_TRUE(forecast.sharing_lasts.has_value());
    EXPECT_THAT(two, ::testing::HasSubstr("both reach the surface"));
    EXPECT_THAT(two, ::testing::HasSubstr(chance_text(*forecast.sharing_lasts).toStdString()));
    change([](Session& session) {
        for (StaffMember& member : session.staff) member.cylinder.reset();
    });
    EXPECT_THAT(child<QLabel>(*tab_, "gas_trouble_2")->text().toStdString(),
                ::testing::HasSubstr("no cylinder is known"));
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_FALSE(first->isVisible());
}

TEST_F(GasTabTest, TheReasonsShowTheRunsBesideTheClosedForm) {
    QTest::mouseClick(child<QToolButton>(*tab_, "gas_show_reasons"), Qt::LeftButton);
    std::string all;
    for (int i = 1; i <= 4; ++i) {
        all += child<QLabel>(*tab_, ("gas_reason_" + std::to_string(i)).c_str())
                   ->text()
                   .toStdString();
    }
    const RunSummary& runs = document_.plan().forecasts.front().runs;
    const auto tenth = [](double share) {
        return QLocale().toString(share * 100.0, 'f', 1).toStdString();
    };
    EXPECT_THAT(all, ::testing::HasSubstr(QLocale().toString(runs.runs).toStdString() + " runs"));
    EXPECT_THAT(all, ::testing::HasSubstr(
                         tenth(document_.plan().forecasts.front().completes) + " of 100"));
    EXPECT_THAT(all, ::testing::HasSubstr(tenth(runs.completes) + " ± "));
    EXPECT_THAT(all, ::testing::HasSubstr("standard error"));
    EXPECT_THAT(all, ::testing::HasSubstr("lognormal"));
    EXPECT_THAT(all, ::testing::HasSubstr("common practice, no source"));
    EXPECT_THAT(all, ::testing::HasSubstr("the gauge and the guest's sign decide"));
}

TEST_F(GasTabTest, ThePagesChangeByKeyAndByClick) {
    auto* pages = child<QTabBar>(*tab_, "gas_pages");
    ASSERT_EQ(pages->count(), 3);
    EXPECT_EQ(pages->currentIndex(), 0);
    EXPECT_TRUE(table_->isVisible());
    pages->setFocus();
    QTest::keyClick(pages, Qt::Key_Right);
    EXPECT_EQ(pages->currentIndex(), 1);
    EXPECT_FALSE(table_->isVisible());
    EXPECT_TRUE(tab_->findChild<GuestBodyPanel*>()->isVisible());
    QTest::mouseClick(pages, Qt::LeftButton, {}, pages->tabRect(2).center());
    EXPECT_TRUE(tab_->findChild<StaffExposurePanel*>()->isVisible());
    tab_->show_subject(guest(0).id);
    EXPECT_EQ(pages->currentIndex(), 0) << "a guest's air, nothing else being the matter";
    EXPECT_TRUE(table_->hasFocus());
}

TEST_F(GasTabTest, CoolingIsShownAsReadAndInTheWater) {
    change([](Session& session) {
        session.guests[0].kit.cylinder->fill_pressure = Bars(200.0);
        session.guests[0].kit.cylinder->fill_temperature = Celsius(45.0);
    });
    const GuestGas* gas = find_gas(document_.plan(), guest(0).id);
    ASSERT_GT(gas->lost_by_cooling.value(), 1.0);
    const std::string wet =
        std::to_string(static_cast<int>(std::floor(gas->start_pressure.value())));
    EXPECT_EQ(shown(row_of(guest(0).id), Column::start_column), "200 → " + wet + "\u00a0bar");
}

TEST_F(GasTabTest, ALeverIsAppliedWhereItIsShownAndTheTableFollows) {
    auto* bars = child<QListView>(*tab_, "lever_list");
    ASSERT_TRUE(bars->isVisible());
    const Session before = document_.session();
    const std::string said = answer();
    QTest::mouseClick(bars->viewport(), Qt::LeftButton, {},
                      bars->visualRect(bars->model()->index(0, 0)).center());
    EXPECT_NE(document_.session(), before);
    EXPECT_NE(answer(), said);
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.session(), before);
    EXPECT_EQ(answer(), said);
}

TEST_F(GasTabTest, TwelveGuestsInThreeGroupsEachHaveAnAnswerAndABand) {
    ASSERT_TRUE(document_.open(SessionFile{crowd(document_.session()), {}}));
    for (int i = 0; i < 3; ++i) {
        const Group& group = document_.session().groups[static_cast<std::size_t>(i)];
        EXPECT_THAT(answer(i + 1),
                    ::testing::HasSubstr(group_label(document_.session(), group.id).toStdString()));
    }
    EXPECT_THAT(answer(3), ::testing::HasSubstr("Group 3"));
    int named = 0;
    for (const PressureChart::Lane& lane : chart_->lanes()) named += lane.text.isEmpty() ? 0 : 1;
    EXPECT_GE(named, 3) << "the first of each group at least";
}

TEST_F(GasTabTest, AirThatDoesNotLastIsSaidWithTheWord) {
    change([](Session& session) {
        session.guests[1].kit.cylinder->fill_pressure = Bars(90.0);
    });
    const std::string said = answer();
    EXPECT_THAT(said, ::testing::StartsWith("Stop"));
    EXPECT_THAT(said, ::testing::HasSubstr("does not last"));
    EXPECT_THAT(said, ::testing::HasSubstr(guest(1).name));
    const int row = row_of(guest(1).id);
    EXPECT_FALSE(cell(row, Column::end_column).data(Qt::DecorationRole).isNull());
    EXPECT_THAT(shown(row, Column::minutes_column), ::testing::StartsWith("first"));
}

TEST_F(GasTabTest, MinutesAreNeverRoundedUp) {
    EXPECT_EQ(whole_minutes(Minutes(31.97)).left(2).toStdString(), "31");
    EXPECT_EQ(whole_minutes(Minutes(32.0)).left(2).toStdString(), "32");
}

TEST_F(GasTabTest, ChangingTheDepthOnTheSiteTabChangesTheNumbersAtOnce) {
    SiteTab site(document_);
    site.show();
    const int row = row_of(guest(0).id);
    const std::string minutes = shown(row, Column::minutes_column);
    const std::string end = shown(row, Column::end_column);
    auto* draw = site.findChild<QWidget*>(QStringLiteral("quick_draw"));
    QTest::mouseClick(draw, Qt::LeftButton);
    auto* box = site.findChild<QuantityBox*>(QStringLiteral("quick_deepest"));
    box->setFocus();
    box->selectAll();
    QTest::keyClicks(box, QStringLiteral("12"));
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_NEAR(deepest(document_.session().profile).meters().value(), 12.0, 1e-9);
    EXPECT_NE(shown(row, Column::minutes_column), minutes);
    EXPECT_NE(shown(row, Column::end_column), end);
    EXPECT_THAT(shown(row, Column::end_column),
                ::testing::StartsWith(std::to_string(static_cast<int>(
                    std::floor(find_gas(document_.plan(), guest(0).id)->end_pressure.value())))));
}

TEST_F(GasTabTest, AMeasuredRmvIsTypedInAndEmptiedAgain) {
    const int row = row_of(guest(1).id);
    EXPECT_THAT(shown(row, Column::rmv_column), ::testing::HasSubstr("by class"));
    type_into(row, Column::rmv_column, "31");
    ASSERT_TRUE(guest(1).measured_rmv.has_value());
    EXPECT_NEAR(guest(1).measured_rmv->value(), 31.0, 1e-9);
    EXPECT_THAT(shown(row, Column::rmv_column), ::testing::HasSubstr("measured"));
    type_into(row, Column::rmv_column, "");
    EXPECT_FALSE(guest(1).measured_rmv.has_value());
}

TEST_F(GasTabTest, TheClassOfBreathingIsChosenFromAList) {
    const int row = row_of(guest(1).id);
    auto* list = open_editor<QComboBox>(row, Column::breathing_column);
    ASSERT_NE(list, nullptr);
    list->setCurrentIndex(list->findData(static_cast<int>(BreathingClass::nervous)));
    QTest::keyClick(list, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return guest(1).breathing == BreathingClass::nervous; }));
    const GuestGas* gas = find_gas(document_.plan(), guest(1).id);
    EXPECT_GE(gas->rmv.value(), planning_rmv(BreathingClass::nervous).value());
    EXPECT_THAT(shown(row, Column::rmv_column),
                ::testing::StartsWith(text(gas->rmv, UnitSystem::metric).toStdString()));
}

TEST_F(GasTabTest, APressureOverTheWorkingPressureIsRefusedWithItsReason) {
    const int row = row_of(guest(0).id);
    const Session before = document_.session();
    type_into(row, Column::fill_column, "299");
    EXPECT_EQ(document_.session(), before);
    auto* refusal = child<QLabel>(*tab_, "gas_refusal_1");
    ASSERT_FALSE(refusal->isHidden());
    EXPECT_THAT(refusal->text().toStdString(), ::testing::HasSubstr(guest(0).name));
    EXPECT_THAT(refusal->text().toStdString(), ::testing::HasSubstr("working pressure"));
    type_into(row, Column::fill_column, "201");
    EXPECT_TRUE(refusal->isHidden());
    EXPECT_NEAR(guest(0).kit.cylinder->fill_pressure.value(), 201.0, 1e-9);
}

TEST_F(GasTabTest, ACylinderIsTakenBackAndHandedOutAgain) {
    const int row = row_of(guest(2).id);
    QAbstractItemModel& model = *table_->model();
    ASSERT_TRUE(model.setData(cell(row, Column::cylinder_column), QString(), Qt::EditRole));
    EXPECT_FALSE(guest(2).kit.cylinder.has_value());
    EXPECT_EQ(shown(row, Column::minutes_column), "–");
    EXPECT_FALSE(model.flags(cell(row, Column::fill_column)) & Qt::ItemIsEditable);
    ASSERT_TRUE(model.setData(cell(row, Column::cylinder_column), QStringLiteral("steel-15"),
                              Qt::EditRole));
    ASSERT_TRUE(guest(2).kit.cylinder.has_value());
    EXPECT_EQ(guest(2).kit.cylinder->type, CylinderTypeId("steel-15"));
    EXPECT_EQ(shown(row, Column::fill_column), "Not read");
    EXPECT_EQ(document_.undo_stack()->count(), 2);
}

TEST(GuestGasEditTest, AnotherCylinderKeepsItsReadingButNeverOverfills) {
    Guest guest;
    set_cylinder_type(guest, "steel-12-300", Kelvins(300.0));
    ASSERT_TRUE(guest.kit.cylinder.has_value());
    EXPECT_EQ(guest.kit.cylinder->fill_temperature.value(), 300.0);
    EXPECT_EQ(guest.kit.cylinder->fill_pressure.value(), 0.0) << "no reading is made up";
    guest.kit.cylinder->fill_pressure = Bars(205.0);
    set_cylinder_type(guest, "steel-15", Kelvins(280.0));
    EXPECT_EQ(guest.kit.cylinder->fill_pressure.value(), 205.0);
    guest.kit.cylinder->fill_pressure = Bars(220.0);
    set_cylinder_type(guest, "aluminium-11", Kelvins(280.0));
    EXPECT_EQ(guest.kit.cylinder->fill_pressure.value(), 0.0);
    EXPECT_EQ(guest.kit.cylinder->fill_temperature.value(), 300.0) << "read once, not again";
    set_cylinder_type(guest, "no such cylinder", Kelvins(280.0));
    EXPECT_FALSE(guest.kit.cylinder.has_value());
}

TEST_F(GasTabTest, TheModelKeepsItsPromises) {
    GuestGasModel model(document_);
    QAbstractItemModelTester tester(&model,
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    const int before = model.rowCount();
    change([](Session& session) {
        Guest added = session.guests.front();
        added.id = next_guest_id(session);
        added.name = "Late Comer";
        session.guests.push_back(added);
    });
    EXPECT_EQ(model.rowCount(), before + 1);
    change([](Session& session) { session.guests.erase(session.guests.begin()); });
    EXPECT_EQ(model.rowCount(), before);
    change([](Session& session) {
        std::swap(session.guests.front(), session.guests.back());
    });
    EXPECT_EQ(model.row_of(guest(0).id), 0);
    open("harbour-morning");
    EXPECT_EQ(model.rowCount(), static_cast<int>(document_.session().guests.size()));
}

TEST_F(GasTabTest, SortingGoesByTheNumberNotByTheWord) {
    change([](Session& session) {
        session.guests[0].kit.cylinder->fill_pressure = Bars(95.0);
        session.guests[1].kit.cylinder->fill_pressure = Bars(105.0);
    });
    table_->sortByColumn(Column::fill_column, Qt::AscendingOrder);
    EXPECT_EQ(row_of(guest(0).id), 0);
    EXPECT_EQ(row_of(guest(1).id), 1);
    table_->sortByColumn(Column::fill_column, Qt::DescendingOrder);
    EXPECT_EQ(row_of(guest(0).id), table_->model()->rowCount() - 1);
}

TEST_F(GasTabTest, ASelectionStaysThroughAnEdit) {
    const int row = row_of(guest(2).id);
    table_->setCurrentIndex(cell(row, Column::end_column));
    change([](Session& session) { session.guests[2].breathing = BreathingClass::nervous; });
    EXPECT_EQ(table_->currentIndex().column(), Column::end_column);
    EXPECT_EQ(table_->currentIndex().data(GuestGasModel::guest_role).toString().toStdString(),
              guest(2).id.text);
}

TEST_F(GasTabTest, TableAndChartShowTheSameGuest) {
    const int row = row_of(guest(3).id);
    table_->setCurrentIndex(cell(row, 0));
    const auto strong = [&](const GuestId& id) {
        return std::any_of(chart_->labels().begin(), chart_->labels().end(),
                           [&](const PressureChart::Label& label) {
                               return label.guest == id && label.strong;
                           });
    };
    EXPECT_TRUE(strong(guest(3).id));
    Q_EMIT chart_->guest_chosen(guest(1).id);
    EXPECT_EQ(table_->currentIndex().data(GuestGasModel::guest_role).toString().toStdString(),
              guest(1).id.text);
    EXPECT_TRUE(strong(guest(1).id));
}

TEST_F(GasTabTest, GroupsAreShownOneByOneOrTogether) {
    start("harbour-morning");
    auto* groups = child<QComboBox>(*tab_, "gas_group");
    const auto& session = document_.session();
    ASSERT_EQ(groups->count(), static_cast<int>(session.groups.size()) + 1);
    EXPECT_EQ(table_->model()->rowCount(), static_cast<int>(session.guests.size()));
    Q_EMIT groups->activated(2);
    EXPECT_EQ(tab_->chosen_group(), session.groups[1].id);
    EXPECT_EQ(groups->currentIndex(), 2);
    const auto members = guests_in(session, session.groups[1].id);
    EXPECT_EQ(table_->model()->rowCount(), static_cast<int>(members.size()));
    EXPECT_EQ(chart_->labels().size(), members.size());
    EXPECT_THAT(answer(), ::testing::HasSubstr(session.groups[1].name));
    EXPECT_TRUE(table_->isColumnHidden(Column::group_column));
    change([](Session& edited) {
        const GroupId gone = edited.groups[1].id;
        edited.groups.erase(edited.groups.begin() + 1);
        for (Guest& member : edited.guests) {
            if (member.group == gone) member.group = GroupId();
        }
    });
    EXPECT_EQ(tab_->chosen_group(), GroupId()) << "a group that has gone leaves all";
}

TEST_F(GasTabTest, TheChartCatchesUpWhenTheTabIsShownAgain) {
    const std::size_t before = chart_->labels().size();
    tab_->hide();
    change([](Session& session) { session.guests[0].kit.cylinder.reset(); });
    tab_->show();
    EXPECT_EQ(chart_->labels().size(), before - 1);
}

TEST_F(GasTabTest, ASubjectIsBroughtIntoView) {
    start("harbour-morning");
    const Session& session = document_.session();
    tab_->show_subject(session.groups[0].id);
    EXPECT_EQ(tab_->chosen_group(), session.groups[0].id);
    const Guest* other = nullptr;
    for (const Guest& candidate : session.guests) {
        if (candidate.group == session.groups[1].id) other = &candidate;
    }
    ASSERT_NE(other, nullptr);
    tab_->show_subject(other->id);
    EXPECT_EQ(table_->currentIndex().data(GuestGasModel::guest_role).toString().toStdString(),
              other->id.text);
    tab_->show_subject(session.groups[1].instructor);
    EXPECT_EQ(tab_->chosen_group(), session.groups[1].id);
}

TEST_F(GasTabTest, ASubjectComesOnThePageOfItsFinding) {
    auto* pages = child<QTabBar>(*tab_, "gas_pages");
    const auto has = [&](FindingCode code, const Subject& subject) {
        return open_finding(document_.plan(), code, subject) != nullptr;
    };
    change([](Session& session) {
        session.conditions.water_temperature = Celsius(10.0);
        session.guests[0].kit.suit = "3 mm M";
    });
    ASSERT_TRUE(has(FindingCode::cold_before_end, guest(0).id));
    tab_->show_subject(guest(0).id);
    EXPECT_EQ(pages->currentIndex(), 1);
    change([](Session& session) { session.guests[0].kit.cylinder.reset(); });
    tab_->show_subject(document_.session().groups.front().id);
    EXPECT_EQ(pages->currentIndex(), 0);
    const StaffId instructor = document_.session().groups.front().instructor;
    change([&](Session& session) {
        for (StaffMember& member : session.staff) {
            if (member.id == instructor) member.extra_ascents = 20;
        }
    });
    ASSERT_TRUE(has(FindingCode::staff_ascents_over_limit, instructor));
    tab_->show_subject(instructor);
    EXPECT_EQ(pages->currentIndex(), 2);
}

TEST_F(GasTabTest, TheInstructorsAirIsCompared) {
    const std::string line = child<QLabel>(*tab_, "gas_instructor_1")->text().toStdString();
    const StaffMember* instructor =
        find_staff(document_.session(), document_.session().groups.front().instructor);
    EXPECT_THAT(line, ::testing::HasSubstr(instructor->name));
    EXPECT_THAT(line, ::testing::HasSubstr("to bring a guest up"));
    const StaffId id = instructor->id;
    change([&](Session& session) {
        for (StaffMember& member : session.staff) {
            if (member.id == id) member.cylinder->fill_pressure = Bars(60.0);
        }
    });
    EXPECT_THAT(child<QLabel>(*tab_, "gas_instructor_1")->text().toStdString(),
                ::testing::StartsWith("Stop"));
}

TEST_F(GasTabTest, EveryColumnExplainsItselfInTheUnitsShown) {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        document_.set_units(units);
        for (int column = 0; column < Column::column_count; ++column) {
            const std::string help = table_->model()
                                         ->headerData(column, Qt::Horizontal, Qt::ToolTipRole)
                                         .toString()
                                         .toStdString();
            EXPECT_GT(help.size(), 12U) << column;
            if (units == UnitSystem::imperial) {
                EXPECT_THAT(help, ::testing::Not(::testing::HasSubstr("L/min")));
            }
        }
    }
    EXPECT_THAT(shown(0, Column::end_column), ::testing::EndsWith("psi"));
}

TEST_F(GasTabTest, NobodyYetIsSaidAndWhatToDo) {
    change([](Session& session) { session.guests.clear(); });
    EXPECT_FALSE(child<QLabel>(*tab_, "gas_empty")->isHidden());
    EXPECT_FALSE(table_->isVisible());
    change([](Session& session) {
        Guest added;
        added.id = GuestId("guest-1");
        added.name = "Ana";
        session.guests.push_back(added);
    });
    EXPECT_TRUE(child<QLabel>(*tab_, "gas_empty")->isHidden());
    EXPECT_TRUE(table_->isVisible());
    EXPECT_FALSE(chart_->isVisible()) << "without a cylinder there is no line to draw";
    EXPECT_EQ(shown(0, Column::cylinder_column), "None yet");
}

TEST_F(GasTabTest, ThePlainSafetyLineStandsThere) {
    EXPECT_THAT(child<QLabel>(*tab_, "gas_safety")->text().toStdString(),
                ::testing::HasSubstr("the gauge, the guest's signal and the instructor decide"));
}

TEST_F(GasTabTest, TabGoesFromTheGroupDownToTheTable) {
    start("harbour-morning");
    const QStringList order = tab_order(*tab_, *child<QWidget>(*tab_, "gas_group"));
    EXPECT_EQ(order.mid(0, 8).join(u' ').toStdString(),
              "gas_group gas_show_trouble gas_show_reasons gas_pages gas_chart lever_list "
              "lever_undo gas_table");
}

TEST_F(GasTabTest, EveryControlHasANameForEyesEarsAndScripts) {
    start("harbour-morning");
    EXPECT_EQ(nameless_controls(*tab_).join(u' ').toStdString(), "");
    EXPECT_EQ(unnamed_controls(*tab_).join(u' ').toStdString(), "");
}

}  // namespace
}  // namespace leadline::testing
