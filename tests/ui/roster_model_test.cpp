// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractItemModelTester>
#include <QItemSelectionModel>
#include <QSignalSpy>

#include "tests/ui/roster_fixture.h"
#include "ui/roster/guest_filter.h"

namespace leadline::testing {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

class GuestModelTest : public ::testing::Test {
protected:
    void open(const Session& session) {
        SessionFile file;
        file.session = session;
        ASSERT_TRUE(document_.open(file).has_value());
    }
    void SetUp() override {
        filter_.setSourceModel(&model_);
        QObject::connect(&document_, &SessionDocument::changed, &model_, &GuestModel::refresh);
    }
    std::vector<std::string> names() const {
        std::vector<std::string> found;
        for (int row = 0; row < filter_.rowCount(); ++row) {
            found.push_back(filter_.index(row, 0).data().toString().toStdString());
        }
        return found;
    }
    std::string cell(int row, GuestColumn column, int role = Qt::DisplayRole) const {
        return model_.index(row, static_cast<int>(column)).data(role).toString().toStdString();
    }
    using Names = std::vector<std::string>;

    SessionDocument document_{rules()};
    GuestModel model_{document_};
    GuestFilter filter_;
    QAbstractItemModelTester model_tester_{&model_, Mode::Fatal};
};

TEST_F(GuestModelTest, HoldsUnderEveryKindOfChange) {
    const QAbstractItemModelTester filter_tester(&filter_, Mode::Fatal);
    open(session_with({"Ana", "Bo", "Cy", "Di"}));
    EXPECT_EQ(model_.rowCount(), 4);
    const auto drop_two = [](Session& session) {
        session.guests.erase(session.guests.begin() + 1);
        session.guests.erase(session.guests.begin() + 1);
    };
    ASSERT_TRUE(document_.edit(QStringLiteral("drop"), drop_two).has_value());
    EXPECT_EQ(names(), (Names{"Ana", "Di"}));
    document_.undo_stack()->undo();
    EXPECT_EQ(names(), (Names{"Ana", "Bo", "Cy", "Di"}));
    const auto swap = [](Session& session) { std::swap(session.guests[0], session.guests[3]); };
    ASSERT_TRUE(document_.edit(QStringLiteral("swap"), swap).has_value());
    EXPECT_EQ(names(), (Names{"Di", "Bo", "Cy", "Ana"}));
    open(staffed_session());
    EXPECT_EQ(model_.rowCount(), 0);
    open(session_with({"Eva"}));
    EXPECT_EQ(names(), (Names{"Eva"}));
}

TEST_F(GuestModelTest, TellsViewsOnlyOfRowsThatDiffer) {
    open(session_with({"Ana", "Bo", "Cy"}));
    QSignalSpy changed(&model_, &GuestModel::dataChanged);
    QSignalSpy reset(&model_, &GuestModel::modelReset);
    const auto rename = [](Session& session) { session.guests[1].name = "Bob"; };
    ASSERT_TRUE(document_.edit(QStringLiteral("rename"), rename).has_value());
    ASSERT_EQ(changed.count(), 1);
    EXPECT_EQ(changed.first().at(0).toModelIndex().row(), 1);
    EXPECT_EQ(reset.count(), 0);
}

TEST_F(GuestModelTest, AReadyGuestReadsReady) {
    open(session_with({"Ana"}));
    EXPECT_EQ(cell(0, GuestColumn::findings), "Ready");
    EXPECT_EQ(cell(0, GuestColumn::age), "36");
    EXPECT_EQ(cell(0, GuestColumn::group), "Blue");
    EXPECT_EQ(cell(0, GuestColumn::language), "English");
    EXPECT_EQ(cell(0, GuestColumn::screening), "Clear");
    EXPECT_EQ(cell(0, GuestColumn::consent), "–");
    EXPECT_EQ(cell(0, GuestColumn::kit), "Complete");
    EXPECT_TRUE(cell(0, GuestColumn::cylinder).starts_with("200"));
    EXPECT_FALSE(model_.any_consent());
}

TEST_F(GuestModelTest, WhatStandsAgainstAGuestIsSaid) {
    Session session = session_with({"Ana", "Bo", "Cy"});
    session.guests[0].birth_date = day(2012, 7, 5);  // 13, the day before the birthday
    session.guests[1].birth_date.reset();
    session.guests[1].group = GroupId();
    session.guests[1].kit.mask.clear();
    session.guests[1].kit.cylinder.reset();
    session.guests[2].screening.outcome = ScreeningOutcome::physician_required;
    open(session);
    EXPECT_EQ(cell(0, GuestColumn::age), "13");
    EXPECT_EQ(cell(0, GuestColumn::consent), "Missing");
    EXPECT_TRUE(model_.any_consent());
    EXPECT_EQ(cell(1, GuestColumn::age), "?");
    EXPECT_EQ(cell(1, GuestColumn::group), "Not yet");
    EXPECT_EQ(cell(1, GuestColumn::kit), "No mask");
    EXPECT_EQ(cell(1, GuestColumn::cylinder), "None yet");
    EXPECT_EQ(cell(2, GuestColumn::screening), "Physician first");
    EXPECT_TRUE(cell(2, GuestColumn::findings).starts_with("1 stop"));
    EXPECT_FALSE(model_.index(2, static_cast<int>(GuestColumn::screening))
                     .data(Qt::DecorationRole)
                     .isNull())
        << "a word never stands without its shape";
}

TEST_F(GuestModelTest, AStopOfTheGroupStopsItsGuests) {
    Session session = session_with({"Ana"});
    session.groups[0].instructor = StaffId();
    open(session);
    EXPECT_EQ(cell(0, GuestColumn::findings), "Group: stop");
}

TEST_F(GuestModelTest, ANameIsNeverTakenForMarkup) {
    open(session_with({"<img src=x> & Co"}));
    EXPECT_EQ(cell(0, GuestColumn::name), "<img src=x> & Co");
    EXPECT_EQ(cell(0, GuestColumn::name, Qt::ToolTipRole),
              "<qt>&lt;img src=x&gt; &amp; Co</qt>");
}

TEST_F(GuestModelTest, TheSearchIgnoresCaseAndAccents) {
    open(session_with({"Ana Müller", "Łukasz Wójcik", "Zoë van Dijk", "Renée Åkesson"}));
    const auto found = [this](const char* typed) {
        filter_.set_search(QString::fromUtf8(typed));
        return names();
    };
    EXPECT_EQ(found("muller"), Names{"Ana Müller"});
    EXPECT_EQ(found("MÜLL"), Names{"Ana Müller"});
    EXPECT_EQ(found("lukasz woj"), Names{"Łukasz Wójcik"});
    EXPECT_EQ(found("dijk zoe"), Names{"Zoë van Dijk"}) << "words in any order";
    EXPECT_EQ(found("akesson"), Names{"Renée Åkesson"});
    EXPECT_EQ(found("blue").size(), 4U) << "the group is searched as well";
    EXPECT_TRUE(found("nobody").empty());
    EXPECT_EQ(found("  ").size(), 4U);
}

TEST_F(GuestModelTest, TheGuestBeingEditedStaysInSight) {
    open(session_with({"Ana", "Bo"}));
    filter_.set_search(QStringLiteral("bo"));
    filter_.keep(GuestId("guest-2"));
    const auto rename = [](Session& session) { session.guests[1].name = "Quentin"; };
    ASSERT_TRUE(document_.edit(QStringLiteral("rename"), rename).has_value());
    EXPECT_EQ(names(), Names{"Quentin"});
    filter_.set_search(QStringLiteral("bo"));
    EXPECT_TRUE(names().empty()) << "a new search starts anew";
}

TEST_F(GuestModelTest, SortsNumbersAsNumbersAndGroupsInTheirOrder) {
    Session session = session_with({"Ana", "Élodie", "Bo", "Zed"});
    session.guests[0].birth_date = day(1920, 1, 1);  // 106
    session.guests[1].birth_date = day(2017, 1, 1);  // 9
    session.guests[2].birth_date.reset();
    session.guests[0].group = GroupId("group-2");
    session.guests[3].group = GroupId();
    open(session);
    filter_.sort(static_cast<int>(GuestColumn::age));
    EXPECT_EQ(names(), (Names{"Bo", "Élodie", "Zed", "Ana"}));
    filter_.sort(static_cast<int>(GuestColumn::group));
    EXPECT_EQ(names(), (Names{"Zed", "Élodie", "Bo", "Ana"}));
    filter_.sort(static_cast<int>(GuestColumn::name));
    EXPECT_EQ(names(), (Names{"Ana", "Bo", "Élodie", "Zed"}));
    filter_.sort(static_cast<int>(GuestColumn::findings), Qt::DescendingOrder);
    EXPECT_EQ(names().back(), "Ana") << "the only one without a stop";
    filter_.sort(-1);
    EXPECT_EQ(names(), (Names{"Ana", "Élodie", "Bo", "Zed"})) << "the roster's own order";
}

TEST_F(GuestModelTest, KeepsTheSelectionThroughEdits) {
    open(session_with({"Ana", "Bo", "Cy"}));
    QItemSelectionModel selection(&filter_);
    selection.setCurrentIndex(filter_.index(2, 0), QItemSelectionModel::ClearAndSelect |
                                                       QItemSelectionModel::Rows);
    const auto change = [](Session& session) {
        session.guests.erase(session.guests.begin());
        session.guests[0].name = "Bob";
    };
    ASSERT_TRUE(document_.edit(QStringLiteral("change"), change).has_value());
    ASSERT_EQ(selection.selectedRows().size(), 1);
    EXPECT_EQ(selection.selectedRows().front().data().toString().toStdString(), "Cy");
}

TEST_F(GuestModelTest, FortyGuestsAreAllThere) {
    Names wanted;
    for (int i = 0; i < 40; ++i) wanted.push_back("Guest " + std::to_string(i));
    open(session_with(wanted));
    EXPECT_EQ(names(), wanted);
}

}  // namespace
}  // namespace leadline::testing
