// SPDX-License-Identifier: GPL-3.0-or-later
// What would buy more minutes: its words and rows; a bar makes its change and undo takes it back.
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QUndoStack>

#include "core/planning/levers.h"
#include "gas_crowd.h"
#include "ui/gas/lever_chart.h"
#include "ui/gas/lever_model.h"
#include "ui/words/lever_words.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// With plain spaces where the units stand off by no-break ones.
std::string plain(QString text) {
    return text.replace(QChar(0x00A0), u' ').toStdString();
}

TEST(ChanceTextTest, IsRoundedDownAndNeverCertain) {
    EXPECT_EQ(chance_text(0.83).toStdString(), "83 of 100");
    EXPECT_EQ(chance_text(0.8399).toStdString(), "83 of 100");
    EXPECT_EQ(chance_text(0.99).toStdString(), "99 of 100");
    EXPECT_EQ(chance_text(0.9901).toStdString(), "over 99 of 100");
    EXPECT_EQ(chance_text(1.0).toStdString(), "over 99 of 100");
    EXPECT_EQ(chance_text(0.01).toStdString(), "1 of 100");
    EXPECT_EQ(chance_text(0.0099).toStdString(), "fewer than 1 of 100");
    EXPECT_EQ(chance_text(0.0).toStdString(), "fewer than 1 of 100");
    for (int i = 1; i < 100; ++i) {
        EXPECT_EQ(chance_text(i / 100.0).toStdString(), std::to_string(i) + " of 100");
    }
}

TEST(ChanceTextTest, AChangeNamesBothOrThatThereIsNone) {
    EXPECT_EQ(chance_change_text(0.831, 0.914).toStdString(), "83 → 91 of 100");
    EXPECT_EQ(chance_change_text(0.831, 0.834).toStdString(), "83 of 100, as now");
}

class LeverWordsTest : public DocumentTest {
protected:
    void SetUp() override { open("salt-cove"); }
    LeverText said(const Lever& lever, UnitSystem units = UnitSystem::metric) const {
        return words(lever, document_.plan(), document_.session(), units);
    }
    Lever lever(LeverKind kind) const {
        Lever made;
        made.kind = kind;
        made.group = document_.session().groups.front().id;
        made.guest = document_.session().guests.front().id;
        made.gain = Minutes(4.9);
        made.completes = 0.9;
        return made;
    }
};

TEST_F(LeverWordsTest, GainsAreRoundedDown) {
    Lever made = lever(LeverKind::one_guest_fewer);
    EXPECT_EQ(plain(said(made).gain), "+4 min");
    made.gain = Minutes(0.6);
    EXPECT_EQ(plain(said(made).gain), "under 1 min");
    made.gain = Minutes(0.01);
    EXPECT_EQ(plain(said(made).gain), "0 min");
    made.gain = Minutes(-0.6);
    EXPECT_EQ(plain(said(made).gain), "−1 min") << "a loss is rounded up";
    made.gain.reset();
    EXPECT_EQ(plain(said(made).gain), "–");
    EXPECT_THAT(said(made).sentence.toStdString(), HasSubstr("later than 240"));
}

TEST_F(LeverWordsTest, ABiggerCylinderSaysItsWeightAndWhetherOneIsFree) {
    Lever made = lever(LeverKind::bigger_cylinder);
    made.cylinder = CylinderTypeId("steel-15");
    const Guest& guest = document_.session().guests.front();
    ASSERT_TRUE(guest.kit.cylinder.has_value());
    const double more = find_cylinder_type(made.cylinder)->empty_mass.value() -
                        find_cylinder_type(guest.kit.cylinder->type)->empty_mass.value();
    ASSERT_GT(more, 0.5);
    EXPECT_EQ(plain(said(made).what), "Steel 15 L for " + guest.name);
    EXPECT_THAT(said(made).cost.toStdString(),
                HasSubstr(text(Kilograms(more), UnitSystem::metric).toStdString() + " more"));
    EXPECT_THAT(said(made).cost.toStdString(), HasSubstr("if one is free"));
    EXPECT_THAT(said(made, UnitSystem::imperial).cost.toStdString(), HasSubstr("lb more"));
    made.stock_known = true;
    EXPECT_THAT(said(made).cost.toStdString(), HasSubstr("by the stock list"));
}

TEST_F(LeverWordsTest, EveryKindHasItsPriceInWords) {
    Lever made = lever(LeverKind::shallower);
    made.deepest = Depth(Meters(7.0));
    EXPECT_EQ(plain(said(made).what), "No deeper than 7.0 m");
    EXPECT_EQ(plain(said(made, UnitSystem::imperial).what), "No deeper than 23 ft");
    EXPECT_THAT(said(made).cost.toStdString(), HasSubstr("to see"));
    made = lever(LeverKind::shorter_skills);
    made.minutes_off = Minutes(3.0);
    EXPECT_EQ(plain(said(made).what), "3 min less for skills");
    EXPECT_EQ(plain(said(made).cost), "Less practice; the whole dive is 3 min shorter.");
    made = lever(LeverKind::warmer_suit);
    made.suit = "7 mm M";
    EXPECT_THAT(said(made).what.toStdString(), HasSubstr("7 mm M for "));
    EXPECT_THAT(said(made).cost.toStdString(), HasSubstr("more lead, check at the surface"));
    EXPECT_THAT(said(lever(LeverKind::one_guest_fewer)).cost.toStdString(),
                HasSubstr("another group or another time"));
}

class LeverChartTest : public DocumentTest {
protected:
    void SetUp() override { start("salt-cove"); }
    void start(const char* sample_name) {
        open(sample_name);
        show();
    }
    void start_crowd() {
        ASSERT_TRUE(document_.open(SessionFile{crowd(sample("salt-cove").session), {}}));
        show();
    }
    void show() {
        chart_ = std::make_unique<LeverChart>(document_);
        chart_->resize(520, 420);
        chart_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(chart_.get()));
        list_ = child<QListView>(*chart_, "lever_list");
    }
    QModelIndex row(int at) const { return list_->model()->index(at, 0); }
    QString label(const char* name) const { return child<QLabel>(*chart_, name)->text(); }
    void click(const QModelIndex& index) {
        list_->scrollTo(index);
        QTest::mouseClick(list_->viewport(), Qt::LeftButton, {},
                          list_->visualRect(index).center());
    }

    std::unique_ptr<LeverChart> chart_;
    QListView* list_ = nullptr;
};

TEST_F(LeverChartTest, BarsStandInTheOrderOfThePlan) {
    const Plan& plan = document_.plan();
    ASSERT_GT(plan.levers.size(), 2U);
    ASSERT_EQ(list_->model()->rowCount(), static_cast<int>(plan.levers.size()));
    double before = 2.0;
    for (int i = 0; i < list_->model()->rowCount(); ++i) {
        const Lever& lever = plan.levers[static_cast<std::size_t>(i)];
        EXPECT_EQ(row(i).data(Qt::AccessibleTextRole).toString(),
                  words(lever, plan, document_.session(), UnitSystem::metric).sentence);
        const double share = row(i).data(LeverModel::share_role).toDouble();
        EXPECT_LE(share, before) << "the longest bar on top";
        EXPECT_GE(share, 0.0);
        before = share;
    }
    EXPECT_EQ(row(0).data(LeverModel::share_role).toDouble(), 1.0);
}

TEST_F(LeverChartTest, AClickMakesTheChangeAndUndoGivesBackTheSameSession) {
    const Session before = document_.session();
    for (int i = 0; i < list_->model()->rowCount(); ++i) {
        const Lever lever = document_.plan().levers[static_cast<std::size_t>(i)];
        const QString what = row(i).data().toString();
        click(row(i));
        EXPECT_EQ(document_.session(), with_lever(before, lever)) << what.toStdString();
        EXPECT_EQ(document_.undo_stack()->undoText(), QStringLiteral("Apply: ") + what);
        document_.undo_stack()->undo();
        EXPECT_EQ(document_.session(), before) << what.toStdString();
    }
}

TEST_F(LeverChartTest, EnterAndSpaceDoTheSameAndTheBarsKeepTheKeyboard) {
    const Session before = document_.session();
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space}) {
        chart_->activateWindow();
        list_->setFocus();
        list_->setCurrentIndex(row(0));
        QTest::keyClick(list_, Qt::Key_Down);
        const Lever lever = document_.plan().levers[1];
        QTest::keyClick(list_, key);
        EXPECT_EQ(document_.session(), with_lever(before, lever));
        EXPECT_TRUE(list_->hasFocus());
        EXPECT_TRUE(list_->currentIndex().isValid());
        document_.undo_stack()->undo();
        EXPECT_EQ(document_.session(), before);
    }
}

TEST_F(LeverChartTest, TheKeyboardStandsOnTheFirstBarAtOnce) {
    chart_->activateWindow();
    QWidget elsewhere;
    list_->setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list_->hasFocus(); }));
    EXPECT_EQ(list_->currentIndex().row(), 0);
}

TEST_F(LeverChartTest, TheLineBelowSaysWhatWasDoneAndTakesItBack) {
    auto* undo = child<QPushButton>(*chart_, "lever_undo");
    EXPECT_FALSE(undo->isVisible());
    const Session before = document_.session();
    const QString what = row(0).data().toString();
    click(row(0));
    EXPECT_TRUE(undo->isVisible());
    EXPECT_THAT(label("lever_done").toStdString(), HasSubstr(what.toStdString()));
    QTest::mouseClick(undo, Qt::LeftButton);
    EXPECT_EQ(document_.session(), before);
    EXPECT_FALSE(undo->isVisible());
    EXPECT_TRUE(list_->hasFocus()) << "the button went; the bars have the keyboard";
}

TEST_F(LeverChartTest, AnotherEditEndsTheOfferToTakeItBack) {
    click(row(0));
    auto* undo = child<QPushButton>(*chart_, "lever_undo");
    ASSERT_TRUE(undo->isVisible());
    ASSERT_TRUE(document_.edit(QStringLiteral("test"), [](Session& session) {
        session.title = "Another";
    }));
    EXPECT_FALSE(undo->isVisible());
}

TEST_F(LeverChartTest, AChangeOfNumbersKeepsTheBarThatWasChosen) {
    list_->setCurrentIndex(row(1));
    ASSERT_TRUE(document_.edit(QStringLiteral("test"), [](Session& session) {
        session.conditions.water_temperature = session.conditions.water_temperature - Kelvins(0.1);
    }));
    EXPECT_EQ(list_->currentIndex().row(), 1);
}

TEST_F(LeverChartTest, EachBarIsAnItemThatSaysItsWholeSentence) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(list_);
    ASSERT_NE(face, nullptr);
    EXPECT_EQ(face->text(QAccessible::Name).toStdString(), "What would buy more minutes");
    ASSERT_EQ(face->childCount(), list_->model()->rowCount());
    for (int i = 0; i < face->childCount(); ++i) {
        const std::string name = face->child(i)->text(QAccessible::Name).toStdString();
        EXPECT_THAT(name, HasSubstr(row(i).data().toString().toStdString()));
        EXPECT_THAT(name, HasSubstr(row(i).data(LeverModel::cost_role).toString().toStdString()));
        EXPECT_THAT(name, HasSubstr("of 100"));
    }
}

TEST_F(LeverChartTest, GroupsAreHeadedAndHeadingsCannotBeChosen) {
    start_crowd();
    const auto heading = [&](int at) {
        return row(at).data(LeverModel::heading_role).toBool();
    };
    int headings = 0;
    for (int i = 0; i < list_->model()->rowCount(); ++i) {
        if (!heading(i)) continue;
        ++headings;
        EXPECT_EQ(list_->model()->flags(row(i)) & Qt::ItemIsEnabled, Qt::NoItemFlags);
        const Session before = document_.session();
        click(row(i));
        EXPECT_EQ(document_.session(), before);
    }
    EXPECT_EQ(headings, 3);
    ASSERT_TRUE(heading(0));
    list_->setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list_->hasFocus(); }));
    EXPECT_EQ(list_->currentIndex().row(), 1) << "the first bar, not the heading";
    for (int i = 0; i < list_->model()->rowCount(); ++i) {
        QTest::keyClick(list_, Qt::Key_Down);
        EXPECT_FALSE(heading(list_->currentIndex().row()));
    }
}

TEST_F(LeverChartTest, OneGroupShowsItsOwnBarsOnly) {
    start_crowd();
    const GroupId red = document_.session().groups[1].id;
    chart_->show_group(red);
    const auto& levers = document_.plan().levers;
    const auto wanted = std::count_if(levers.begin(), levers.end(), [&](const Lever& lever) {
        return lever.group == red;
    });
    EXPECT_EQ(list_->model()->rowCount(), wanted);
    for (int i = 0; i < list_->model()->rowCount(); ++i) {
        EXPECT_FALSE(row(i).data(LeverModel::heading_role).toBool());
        EXPECT_THAT(row(i).data(Qt::AccessibleTextRole).toString().toStdString(),
                    ::testing::StartsWith("Red: "));
    }
}

TEST_F(LeverChartTest, ASwapNamesBothAndWhatItDoesToTheOtherGroup) {
    start_crowd();
    const auto& levers = document_.plan().levers;
    const auto swap = std::find_if(levers.begin(), levers.end(), [](const Lever& lever) {
        return lever.kind == LeverKind::swap_guests;
    });
    ASSERT_NE(swap, levers.end());
    const Session& session = document_.session();
    const LeverText said = words(*swap, document_.plan(), session, UnitSystem::metric);
    const Guest* other = find_guest(session, swap->other_guest);
    EXPECT_THAT(said.what.toStdString(), HasSubstr(find_guest(session, swap->guest)->name));
    EXPECT_THAT(said.what.toStdString(), HasSubstr(other->name));
    EXPECT_THAT(said.cost.toStdString(), HasSubstr("came together"));
    EXPECT_THAT(said.cost.toStdString(),
                HasSubstr(group_label(session, other->group).toStdString() + ": "));
}

TEST_F(LeverChartTest, WithoutACylinderOrWithMoreThanEnoughItSaysSo) {
    ASSERT_TRUE(document_.edit(QStringLiteral("test"), [](Session& session) {
        for (Guest& guest : session.guests) guest.kit.cylinder.reset();
    }));
    EXPECT_FALSE(list_->isVisible());
    EXPECT_TRUE(child<QLabel>(*chart_, "lever_empty")->isVisible());
    EXPECT_THAT(label("lever_empty").toStdString(), HasSubstr("has a cylinder"));
    // One guest with the biggest cylinder on a short and shallow dive.
    ASSERT_TRUE(document_.edit(QStringLiteral("test"), [](Session& session) {
        session.guests.erase(session.guests.begin() + 1, session.guests.end());
        Guest& guest = session.guests.front();
        guest.kit.cylinder =
            Cylinder{CylinderTypeId("steel-18"), Bars(230.0), session.conditions.water_temperature};
        session.profile.points = {{Minutes(0.0), Depth(), Phase::surface},
                                  {Minutes(1.0), Depth(Meters(1.5)), Phase::descent},
                                  {Minutes(9.0), Depth(Meters(1.5)), Phase::tour},
                                  {Minutes(10.0), Depth(), Phase::ascent}};
    }));
    ASSERT_TRUE(document_.plan().levers.empty());
    EXPECT_THAT(label("lever_empty").toStdString(), HasSubstr("not what limits this dive"));
}

TEST_F(LeverChartTest, TheModelKeepsItsPromises) {
    LeverModel model(document_);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto edit = [&](const std::function<void(Session&)>& change) {
        ASSERT_TRUE(document_.edit(QStringLiteral("test"), change));
        model.refresh();
    };
    ASSERT_GT(model.rowCount(), 0);
    edit([](Session& session) { session.guests[0].kit.cylinder->fill_pressure = Bars(150.0); });
    edit([](Session& session) { session = crowd(session); });
    EXPECT_TRUE(model.index(0).data(LeverModel::heading_role).toBool());
    model.show_group(document_.session().groups[2].id);
    EXPECT_FALSE(model.index(0).data(LeverModel::heading_role).toBool());
    EXPECT_TRUE(model.apply(model.index(0)));
    EXPECT_FALSE(model.apply({}));
    edit([](Session& session) { session.guests.clear(); });
    EXPECT_EQ(model.rowCount(), 0);
}

}  // namespace
}  // namespace leadline::testing
