// SPDX-License-Identifier: GPL-3.0-or-later
// Warmth and lead: the sentences, the table, and what is said when something is missing.
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QTableView>
#include <QToolButton>

#include "figure_panel_fixture.h"
#include "site_gas_walk.h"
#include "ui/gas/guest_body_model.h"
#include "ui/gas/guest_body_panel.h"
#include "ui/gas/short_names.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;
using BodyColumn = GuestBodyModel::Column;

class GuestBodyTest : public FigurePanelTest<GuestBodyPanel> {
protected:
    GuestBodyTest() : FigurePanelTest("body_table") {}
    int row_of(const GuestId& id) const {
        for (int row = 0; row < table_->model()->rowCount(); ++row) {
            if (cell(row, 0).data(IdRowModel::id_role).toString().toStdString() == id.text) {
                return row;
            }
        }
        return -1;
    }
    const Guest& guest(std::size_t index) const { return document_.session().guests[index]; }
    const GuestWarmth& warmth(std::size_t index) const { return document_.plan().warmth[index]; }
    const GuestLead& lead(std::size_t index) const { return document_.plan().lead[index]; }
};

TEST_F(GuestBodyTest, TheFirstLineNamesWhoGetsColdFirstWhenAndThePlan) {
    std::size_t first = 0;
    for (std::size_t i = 0; i < document_.plan().warmth.size(); ++i) {
        ASSERT_EQ(warmth(i).gap, WarmthGap::none) << guest(i).name;
        const double best = warmth(first).middle ? warmth(first).middle->value() : 1e9;
        if (warmth(i).middle && warmth(i).middle->value() < best) first = i;
    }
    ASSERT_TRUE(warmth(first).middle.has_value()) << "a cold lake";
    const std::string answer = child<QLabel>(*panel_, "body_answer_1")->text().toStdString();
    EXPECT_THAT(answer, HasSubstr("First to get too cold: " + guest(first).name));
    EXPECT_THAT(answer, HasSubstr(too_cold_text(warmth(first)).toStdString()));
    EXPECT_THAT(answer,
                HasSubstr("Planned: " + text(duration(document_.session().profile)).toStdString()));
    const int row = row_of(guest(first).id);
    EXPECT_THAT(
        cell(row, BodyColumn::name_column).data(Qt::AccessibleTextRole).toString().toStdString(),
        HasSubstr("likely cold first"));
    EXPECT_TRUE(cell(row, BodyColumn::name_column).data(Qt::FontRole).value<QFont>().bold());
}

TEST_F(GuestBodyTest, MinutesAreRoundedDownWithTheirBand) {
    GuestWarmth one;
    one.low = Minutes(24.9);
    one.middle = Minutes(38.99);
    one.high = Minutes(55.5);
    one.chilled = Minutes(21.9);
    EXPECT_EQ(too_cold_text(one).toStdString(), "38\u00A0min (24 to 55)");
    EXPECT_EQ(feels_cold_text(one).toStdString(), "21\u00A0min");
    one.high.reset();
    EXPECT_EQ(too_cold_text(one).toStdString(), "38\u00A0min (24 to over 240)");
    one.middle.reset();
    EXPECT_EQ(too_cold_text(one).toStdString(), "over 240\u00A0min (from 24)");
    one.low.reset();
    EXPECT_EQ(too_cold_text(one).toStdString(), "over 240\u00A0min");
}

TEST_F(GuestBodyTest, WhoMayBeTooColdBeforeTheEndIsSaidWithTheWord) {
    change([](Session& session) {
        session.conditions.water_temperature = Kelvins(273.15 + 6.0);
        for (Guest& guest : session.guests) guest.kit.suit = "3 mm shorty M";
    });
    std::size_t findings = 0;
    for (const Finding& finding : document_.plan().findings) {
        if (finding.code == FindingCode::cold_before_end) ++findings;
    }
    ASSERT_EQ(findings, document_.session().guests.size());
    const std::string answer = child<QLabel>(*panel_, "body_answer_1")->text().toStdString();
    EXPECT_THAT(answer, StartsWith("Care – First to get too cold"));
    EXPECT_THAT(answer, HasSubstr("Perhaps too cold before the end, too: "));
    EXPECT_THAT(shown(0, BodyColumn::note_column), HasSubstr("May be too cold before the end"));
    EXPECT_FALSE(cell(0, BodyColumn::note_column).data(Qt::DecorationRole).isNull());
}

TEST_F(GuestBodyTest, WarmWaterLetsNobodyGetTooCold) {
    change([](Session& session) { session.conditions.water_temperature = Kelvins(273.15 + 33.0); });
    for (std::size_t i = 0; i < document_.plan().warmth.size(); ++i) {
        ASSERT_FALSE(warmth(i).low.has_value());
    }
    EXPECT_THAT(child<QLabel>(*panel_, "body_answer_1")->text().toStdString(),
                HasSubstr("Nobody is likely to get "));
    EXPECT_THAT(shown(0, BodyColumn::too_cold_column), HasSubstr("over 240"));
}

TEST_F(GuestBodyTest, FloatingAndSinkingAreWordsWithANumber) {
    EXPECT_EQ(lift_text(Kilograms(-2.1), UnitSystem::metric).toStdString(), "sinks 2.1\u00A0kg");
    EXPECT_EQ(lift_text(Kilograms(0.4), UnitSystem::metric).toStdString(), "floats 0.4\u00A0kg");
    EXPECT_EQ(lift_text(Kilograms(-0.04), UnitSystem::metric).toStdString(), "neutral");
    EXPECT_EQ(lift_text(Kilograms(-0.06), UnitSystem::metric).toStdString(), "sinks 0.1\u00A0kg");
    EXPECT_EQ(lift_text(Kilograms(-2.1), UnitSystem::imperial).toStdString(), "sinks 5\u00A0lb");
    EXPECT_EQ(lift_text(Kilograms(0.2), UnitSystem::imperial).toStdString(), "neutral");
}

TEST_F(GuestBodyTest, LeadIsARangeAndAPlaceToStart) {
    for (std::size_t i = 0; i < document_.plan().lead.size(); ++i) {
        ASSERT_EQ(lead(i).gap, LeadGap::none) << guest(i).name;
        const int row = row_of(guest(i).id);
        EXPECT_THAT(shown(row, BodyColumn::try_column),
                    StartsWith(text(lead(i).middle, UnitSystem::metric).toStdString() + " ("));
        EXPECT_EQ(shown(row, BodyColumn::depth_column),
                  lift_text(lead(i).at_depth_start, UnitSystem::metric).toStdString());
    }
    GuestLead one;
    one.low = Kilograms(4.5);
    one.middle = Kilograms(6.0);
    one.high = Kilograms(8.0);
    EXPECT_EQ(lead_text(one, UnitSystem::metric).toStdString(), "6\u00A0kg (4.5 to 8)");
    EXPECT_EQ(lead_text(one, UnitSystem::imperial).toStdString(), "13\u00A0lb (10 to 18)");
    const std::string safety = child<QLabel>(*panel_, "body_safety")->text().toStdString();
    EXPECT_THAT(safety, HasSubstr("check it at the surface"));
    EXPECT_THAT(safety, HasSubstr("Shivering or the sign “cold” ends the dive"));
}

TEST_F(GuestBodyTest, AGuestTooHeavyForTheBcdIsNamedAboveTheTable) {
    change([](Session& session) {
        session.guests[0].kit.lead = Kilograms(25.0);
        session.guests[0].kit.bcd = "XS";
    });
    ASSERT_TRUE(lead(0).bcd_cannot_hold_up);
    const int row = row_of(guest(0).id);
    EXPECT_THAT(said("body_answer"), HasSubstr("Care – " + guest(0).name));
    EXPECT_THAT(shown(row, BodyColumn::note_column), StartsWith("The BCD may not hold this guest up"));
    EXPECT_THAT(shown(row, BodyColumn::note_column), Not(HasSubstr("Carries more")))
        << "not the same thing twice";
    EXPECT_THAT(cell(row, BodyColumn::note_column).data(Qt::ToolTipRole).toString().toStdString(),
                HasSubstr("Take off lead"));
}

TEST_F(GuestBodyTest, AGuestTooLightIsNamedToo) {
    change([](Session& session) { session.guests[0].kit.lead = Kilograms(0.0); });
    ASSERT_TRUE(lead(0).cannot_stay_down);
    const std::string note = shown(row_of(guest(0).id), BodyColumn::note_column);
    EXPECT_THAT(note, HasSubstr("May not stay down near the end"));
    EXPECT_THAT(said("body_answer"),
                HasSubstr("May not stay down with a nearly empty cylinder: " + guest(0).name));
}

TEST_F(GuestBodyTest, LeadThatIsNotExpectedIsSaidWithItsSide) {
    int told = 0;
    for (const double sign : {-1.0, 1.0}) {
        const Kilograms edge = sign < 0.0 ? lead(1).low : lead(1).high;
        change([&](Session& session) {
            session.guests[1].kit.bcd = "XL";
            session.guests[1].kit.lead = edge + Kilograms(0.5 * sign);
        });
        const std::string note = shown(row_of(guest(1).id), BodyColumn::note_column);
        if (lead(1).cannot_stay_down || lead(1).bcd_cannot_hold_up) continue;
        ++told;
        EXPECT_THAT(note, HasSubstr(sign < 0.0 ? "Carries less lead than expected"
                                               : "Carries more lead than expected"));
    }
    EXPECT_GT(told, 0);
}

TEST_F(GuestBodyTest, WhatIsMissingIsSaidWithWhereItIsEntered) {
    change([](Session& session) {
        session.guests[0].body_mass.reset();
        session.guests[1].body_height.reset();
        session.guests[2].kit.suit = "rash vest";
        session.guests[3].kit.cylinder.reset();
        session.guests[3].kit.bcd.clear();
    });
    EXPECT_EQ(shown(row_of(guest(0).id), BodyColumn::note_column), "Weight is missing: Roster, Kit");
    EXPECT_EQ(shown(row_of(guest(1).id), BodyColumn::note_column), "Height is missing: Roster, Kit");
    EXPECT_THAT(shown(row_of(guest(2).id), BodyColumn::note_column),
                StartsWith("Suit in mm is missing"));
    EXPECT_THAT(shown(row_of(guest(3).id), BodyColumn::note_column), HasSubstr("Cylinder is missing"));
    EXPECT_EQ(shown(row_of(guest(0).id), BodyColumn::too_cold_column), "–");
    EXPECT_EQ(shown(row_of(guest(0).id), BodyColumn::try_column), "–");
    EXPECT_NE(shown(row_of(guest(3).id), BodyColumn::too_cold_column), "–") << "needs no cylinder";
    EXPECT_THAT(said("body_answer"),
                HasSubstr("Weight is missing: Roster, Kit (" + guest(0).name + ")."));
    change(
        [](Session& session) { session.guests[3].kit.cylinder = session.guests[2].kit.cylinder; });
    EXPECT_THAT(shown(row_of(guest(3).id), BodyColumn::note_column), HasSubstr("BCD is missing"));
}

TEST_F(GuestBodyTest, ADecisionToGoAheadIsToldAsOne) {
    change([](Session& session) { session.guests[0].kit.lead = Kilograms(0.0); });
    const Finding* finding =
        open_finding(document_.plan(), FindingCode::cannot_stay_down, guest(0).id);
    ASSERT_NE(finding, nullptr);
    const std::string key_of_it = key(*finding);
    change([&](Session& session) {
        session.overrules.push_back({key_of_it, "holds a stone", "Katharina"});
    });
    const int row = row_of(guest(0).id);
    EXPECT_THAT(shown(row, BodyColumn::note_column), HasSubstr("(set aside)"));
    EXPECT_THAT(cell(row, BodyColumn::note_column).data(Qt::ToolTipRole).toString().toStdString(),
                HasSubstr("Set aside: holds a stone"));
}

TEST_F(GuestBodyTest, UnitsAreThoseOfTheDocumentEverywhere) {
    document_.set_units(UnitSystem::imperial);
    child<QToolButton>(*panel_, "body_why")->click();
    table_->setCurrentIndex(cell(0, 0));
    for (int row = 0; row < table_->model()->rowCount(); ++row) {
        for (const int column : {BodyColumn::try_column, BodyColumn::carried_column}) {
            EXPECT_THAT(shown(row, column), HasSubstr("\u00A0lb")) << row << ' ' << column;
        }
    }
    EXPECT_THAT(said("body_reason"), HasSubstr("97\u00A0°F"));
    EXPECT_THAT(said("body_reason"), Not(HasSubstr("\u00A0kg")));
    EXPECT_THAT(said("body_answer"), Not(HasSubstr("\u00A0kg")));
}

TEST_F(GuestBodyTest, AClickOnAHeadingSortsByTheNumber) {
    change([](Session& session) {
        session.guests[0].kit.lead = Kilograms(10.0);
        session.guests[1].kit.lead = Kilograms(9.0);
        session.guests[2].kit.lead.reset();
        session.guests[3].kit.lead = Kilograms(1.0);
    });
    QHeaderView* header = table_->horizontalHeader();
    const QPoint place(header->sectionViewportPosition(BodyColumn::carried_column) + 12,
                       header->height() / 2);
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {}, place);
    const auto order = [&] {
        std::vector<int> rows;
        for (std::size_t i = 0; i < 4; ++i) rows.push_back(row_of(guest(i).id));
        return rows;
    };
    const std::vector<int> once = order();
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {}, place);
    const std::vector<int> twice = order();
    const std::vector<int> up{3, 2, 0, 1};
    const std::vector<int> down{0, 1, 3, 2};
    EXPECT_TRUE((once == up && twice == down) || (once == down && twice == up));
    for (int column = 0; column < BodyColumn::column_count; ++column) {
        EXPECT_TRUE(cell(0, column).data(IdRowModel::sort_role).isValid()) << column;
    }
}

TEST_F(GuestBodyTest, WhyIsOpenedByKeyAndFollowsTheChosenGuest) {
    auto* why = child<QToolButton>(*panel_, "body_why");
    auto* reasons = child<QWidget>(*panel_, "body_reason");
    EXPECT_TRUE(reasons->isHidden());
    table_->setFocus();
    QTest::keyClick(table_, Qt::Key_Home, Qt::ControlModifier);
    QTest::keyClick(table_, Qt::Key_Tab);
    ASSERT_TRUE(why->hasFocus()) << "Tab leaves the table";
    QTest::keyClick(why, Qt::Key_Space);
    EXPECT_FALSE(reasons->isHidden());
    EXPECT_THAT(said("body_reason"), StartsWith(guest(0).name + ": Suit 7.0 mm: "));
    EXPECT_THAT(said("body_reason"), HasSubstr("ISO 9886:2004, from memory"));
    EXPECT_THAT(said("body_reason"), HasSubstr("Archimedes"));
    table_->setFocus();
    QTest::keyClick(table_, Qt::Key_Down);
    EXPECT_THAT(said("body_reason"), StartsWith(guest(1).name + ": "));
    why->setFocus();
    QTest::keyClick(why, Qt::Key_Space);
    EXPECT_TRUE(reasons->isHidden());
}

TEST_F(GuestBodyTest, WhatChangedWhileHiddenIsThereWhenShownAgain) {
    panel_->hide();
    const GuestId gone = guest(0).id;
    change([](Session& session) {
        session.guests.erase(session.guests.begin());
        session.guests[0].kit.lead = Kilograms(9.5);
    });
    panel_->show();
    EXPECT_EQ(row_of(gone), -1);
    EXPECT_EQ(table_->model()->rowCount(), static_cast<int>(document_.session().guests.size()));
    EXPECT_EQ(shown(row_of(guest(0).id), BodyColumn::carried_column), "9.5\u00A0kg");
}

TEST_F(GuestBodyTest, ASelectionStaysThroughAnEdit) {
    table_->setCurrentIndex(cell(row_of(guest(2).id), BodyColumn::depth_column));
    change([](Session& session) { session.guests[2].body_mass = Kilograms(45.0); });
    EXPECT_EQ(table_->currentIndex().column(), BodyColumn::depth_column);
    EXPECT_EQ(table_->currentIndex().data(IdRowModel::id_role).toString().toStdString(),
              guest(2).id.text);
}

TEST_F(GuestBodyTest, TheModelKeepsItsPromises) {
    GuestBodyModel model(document_);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QObject::connect(&document_, &SessionDocument::changed, &model, &GuestBodyModel::refresh);
    const int before = model.rowCount();
    change([](Session& session) {
        Guest added = session.guests.front();
        added.id = next_guest_id(session);
        session.guests.push_back(added);
    });
    EXPECT_EQ(model.rowCount(), before + 1);
    change([](Session& session) { session.guests.erase(session.guests.begin()); });
    EXPECT_EQ(model.rowCount(), before);
    change([](Session& session) { std::swap(session.guests.front(), session.guests.back()); });
    EXPECT_EQ(model.row_of(guest(0).id.text), 0);
    open("harbour-morning");
    EXPECT_EQ(model.rowCount(), static_cast<int>(document_.session().guests.size()));
}

TEST_F(GuestBodyTest, AGroupOfTwelveShowsEveryRowAndALongNameIsCut) {
    change([](Session& session) {
        while (session.guests.size() < 12) {
            Guest added = session.guests[session.guests.size() % 4];
            added.id = next_guest_id(session);
            added.name = std::string(120, 'W');
            session.guests.push_back(added);
        }
    });
    ASSERT_EQ(table_->model()->rowCount(), 12);
    const auto all_rows_visible = [&] {
        const QRect last = table_->visualRect(cell(11, 0));
        return last.isValid() && last.bottom() <= table_->viewport()->height();
    };
    panel_->resize(1240, 1400);
    EXPECT_TRUE(QTest::qWaitFor(all_rows_visible));
    EXPECT_LT(table_->columnWidth(BodyColumn::name_column), 400);
    EXPECT_THAT(cell(11, 0).data(Qt::ToolTipRole).toString().toStdString(),
                HasSubstr(std::string(120, 'W')));
    change([](Session& session) {
        for (Guest& guest : session.guests) guest.body_mass.reset();
    });
    EXPECT_LE(panel_->minimumSizeHint().width(), 853) << "sentences with such names still wrap";
    EXPECT_THAT(said("body_answer"), HasSubstr("(all guests)"));
}

TEST_F(GuestBodyTest, ANameIsWholeWhereThereIsRoom) {
    change([](Session& session) { session.guests[0].name = "Wilhelmina Oberhofer Castellani"; });
    panel_->resize(700, 760);
    const auto fits = [&] {
        return table_->columnWidth(0) >= table_->sizeHintForIndex(cell(0, 0)).width();
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return !fits(); }));
    panel_->resize(1600, 760);
    EXPECT_TRUE(QTest::qWaitFor(fits));
    EXPECT_LT(table_->width(), 1600) << "no wider than its columns";
    EXPECT_EQ(table_->horizontalScrollBar()->maximum(), 0);
}

TEST_F(GuestBodyTest, GroupsAreAnsweredOneByOne) {
    start("harbour-morning");
    for (const Group& group : document_.session().groups) {
        EXPECT_THAT(said("body_answer"), HasSubstr(group.name + ": "));
    }
    EXPECT_FALSE(table_->isColumnHidden(BodyColumn::group_column));
    start("mountain-lake");
    EXPECT_TRUE(table_->isColumnHidden(BodyColumn::group_column));
}

TEST_F(GuestBodyTest, NobodyYetIsSaidAndWhatToDo) {
    change([](Session& session) { session.guests.clear(); });
    EXPECT_FALSE(child<QLabel>(*panel_, "body_empty")->isHidden());
    EXPECT_FALSE(table_->isVisible());
    change([](Session& session) {
        Guest added;
        added.id = GuestId("guest-1");
        added.name = "Ana";
        session.guests.push_back(added);
    });
    EXPECT_TRUE(child<QLabel>(*panel_, "body_empty")->isHidden());
    EXPECT_EQ(shown(0, BodyColumn::note_column), "Weight is missing: Roster, Kit");
}

TEST_F(GuestBodyTest, EveryColumnExplainsItself) {
    for (int column = 0; column < BodyColumn::column_count; ++column) {
        const QVariant help = table_->model()->headerData(column, Qt::Horizontal, Qt::ToolTipRole);
        EXPECT_GT(help.toString().size(), 24) << column;
        const QString spoken = cell(0, column).data(Qt::AccessibleTextRole).toString();
        EXPECT_TRUE(spoken.contains(QStringLiteral(": "))) << column;
    }
}

TEST_F(GuestBodyTest, EveryControlHasANameForEyesEarsAndScripts) {
    EXPECT_EQ(nameless_controls(*panel_).join(u' ').toStdString(), "");
    EXPECT_EQ(unnamed_controls(*panel_).join(u' ').toStdString(), "");
    EXPECT_EQ(tab_order(*panel_, *table_).join(u' ').toStdString(), "body_table body_why");
}

TEST(ShortNamesTest, NamesInSentencesAreCutAndCounted) {
    EXPECT_EQ(short_name(QStringLiteral("Ana")).toStdString(), "Ana");
    EXPECT_EQ(short_name(QString(120, u'W')).size(), 40);
    const QStringList seven{QStringLiteral("A"), QStringLiteral("B"), QStringLiteral("C"),
                            QStringLiteral("D"), QStringLiteral("E"), QStringLiteral("F"),
                            QStringLiteral("G")};
    EXPECT_EQ(few_names(seven).toStdString(), "A, B, C, D, E and 2 more");
    EXPECT_EQ(few_names(seven.mid(0, 2)).toStdString(), "A, B");
}

}  // namespace
}  // namespace leadline::testing
