// SPDX-License-Identifier: GPL-3.0-or-later
// Labels at the ends of the lines, and choosing a guest in the chart.
#include <gmock/gmock.h>

#include <QChart>
#include <QLineSeries>
#include <QSignalSpy>
#include <cmath>
#include <random>

#include "ui/gas/label_spread.h"
#include "ui/gas/pressure_chart.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

TEST(LabelSpreadTest, LeavesLabelsThatHaveRoomWhereTheyWantToBe) {
    const auto places = spread_labels({{50.0, 0}, {100.0, 0}, {30.0, 0}}, 20.0, 0.0, 200.0);
    EXPECT_EQ(places[0], std::optional<double>(50.0));
    EXPECT_EQ(places[1], std::optional<double>(100.0));
    EXPECT_EQ(places[2], std::optional<double>(30.0));
}

TEST(LabelSpreadTest, SharesTheWayBetweenLabelsThatWantTheSamePlace) {
    const auto places = spread_labels({{100.0, 0}, {100.0, 0}}, 20.0, 0.0, 200.0);
    EXPECT_NEAR(*places[0], 90.0, 1e-9);
    EXPECT_NEAR(*places[1], 110.0, 1e-9);
}

TEST(LabelSpreadTest, NeverOverlapsLeavesTheStripOrTurnsTheOrder) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> where(-20.0, 320.0);
    for (int round = 0; round < 500; ++round) {
        std::vector<WantedLabel> wanted(static_cast<std::size_t>(1 + round % 15));
        for (WantedLabel& label : wanted) label.center = where(random);
        const auto places = spread_labels(wanted, 20.0, 0.0, 300.0);
        for (std::size_t i = 0; i < places.size(); ++i) {
            ASSERT_TRUE(places[i].has_value());
            EXPECT_GE(*places[i], 10.0 - 1e-9);
            EXPECT_LE(*places[i], 290.0 + 1e-9);
            for (std::size_t j = i + 1; j < places.size(); ++j) {
                EXPECT_GE(std::abs(*places[i] - *places[j]), 20.0 - 1e-6);
                EXPECT_TRUE(wanted[i].center >= wanted[j].center || *places[i] < *places[j]);
            }
        }
    }
}

TEST(LabelSpreadTest, LeavesOutTheLeastImportantWhenThereIsNoRoom) {
    const auto places =
        spread_labels({{10.0, 5}, {20.0, 1}, {30.0, 9}, {40.0, 2}}, 20.0, 0.0, 45.0);
    EXPECT_FALSE(places[0].has_value());
    EXPECT_TRUE(places[1].has_value());
    EXPECT_FALSE(places[2].has_value());
    EXPECT_TRUE(places[3].has_value());
    EXPECT_TRUE(spread_labels({}, 20.0, 0.0, 100.0).empty());
}

class PressureChartTest : public DocumentTest {
protected:
    void SetUp() override {
        open("salt-cove");
        chart_.resize(900, 360);
        chart_.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&chart_));
    }
    /// Lines of so many guests who breathe almost alike.
    PressureChart::Content crowd(int guests) const {
        PressureChart::Content content;
        content.planned_end = duration(document_.session().profile);
        content.reserve = document_.plan().limits.reserve;
        const GuestGas& gas = document_.plan().guests.front();
        for (int i = 0; i < guests; ++i) {
            PressureChart::Line line;
            line.guest = GuestId("guest-" + std::to_string(i));
            line.name = QStringLiteral("Guest with quite a long name, number %1").arg(i);
            line.curve = gas.curve;
            for (PressurePoint& point : line.curve) {
                point.gauge = point.gauge - Bars(0.05 * i * point.time.value());
            }
            line.limiting = i == guests - 1;
            content.lines.push_back(line);
        }
        return content;
    }
    void expect_apart() const {
        const auto& labels = chart_.labels();
        for (std::size_t i = 0; i < labels.size(); ++i) {
            EXPECT_TRUE(QRectF(chart_.rect()).contains(labels[i].box))
                << labels[i].text.toStdString();
            for (std::size_t j = i + 1; j < labels.size(); ++j) {
                EXPECT_FALSE(labels[i].box.intersects(labels[j].box))
                    << labels[i].text.toStdString() << " covers "
                    << labels[j].text.toStdString();
            }
        }
    }
    PressureChart chart_;
};

TEST_F(PressureChartTest, LabelsOfTwelveGuestsStandApart) {
    chart_.show_content(crowd(12));
    EXPECT_EQ(chart_.labels().size(), 12U);
    expect_apart();
    chart_.highlight(GuestId("guest-3"));
    expect_apart();
}

TEST_F(PressureChartTest, WithoutRoomTheFirstGuestAndTheChosenOneAreStillNamed) {
    chart_.resize(700, 200);
    chart_.show_content(crowd(40));
    chart_.highlight(GuestId("guest-0"));
    expect_apart();
    const auto named = [&](const char* id) {
        return std::any_of(
            chart_.labels().begin(), chart_.labels().end(),
            [&](const PressureChart::Label& label) { return label.guest == GuestId(id); });
    };
    EXPECT_TRUE(named("guest-39"));
    EXPECT_TRUE(named("guest-0"));
    EXPECT_THAT(chart_.labels().back().text.toStdString(), ::testing::HasSubstr("more"));
}

TEST_F(PressureChartTest, TheFirstGuestsLabelHasTheWord) {
    chart_.show_content(crowd(3));
    for (const PressureChart::Label& label : chart_.labels()) {
        EXPECT_EQ(label.text.endsWith(QStringLiteral(", first")),
                  label.guest == GuestId("guest-2"))
            << label.text.toStdString();
    }
}

TEST_F(PressureChartTest, ItsPlacesAreThoseOfTheDrawnLines) {
    chart_.show_content(crowd(2));
    QTest::qWait(0);
    auto* series = dynamic_cast<QXYSeries*>(chart_.chart()->series().front());
    ASSERT_NE(series, nullptr);
    const QPointF point = series->at(series->count() - 1);
    const QPointF drawn = chart_.chart()->mapToPosition(point, series);
    const QPointF placed = chart_.place_of(Minutes(point.x()), Bars(point.y()));
    EXPECT_NEAR(drawn.x(), placed.x(), 1.0);
    EXPECT_NEAR(drawn.y(), placed.y(), 1.0);
}

TEST_F(PressureChartTest, AClickOnALineOrALabelChoosesTheGuest) {
    chart_.show_content(crowd(2));
    QSignalSpy chosen(&chart_, &PressureChart::guest_chosen);
    const GuestGas& gas = document_.plan().guests.front();
    const PressurePoint& point = gas.curve[gas.curve.size() / 2];
    QTest::mouseClick(chart_.viewport(), Qt::LeftButton, {},
                      chart_.place_of(point.time, point.gauge).toPoint());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].value<GuestId>(), GuestId("guest-0"));
    const PressureChart::Label label = chart_.labels()[1];
    QTest::mouseClick(chart_.viewport(), Qt::LeftButton, {}, label.box.center().toPoint());
    ASSERT_EQ(chosen.count(), 2);
    EXPECT_EQ(chosen[1][0].value<GuestId>(), label.guest);
    QTest::mouseClick(chart_.viewport(), Qt::LeftButton, {},
                      chart_.place_of(Minutes(1.0), Bars(5.0)).toPoint());
    EXPECT_EQ(chosen.count(), 2) << "nobody's line runs there";
}

TEST_F(PressureChartTest, ArrowKeysGoFromGuestToGuest) {
    chart_.show_content(crowd(3));
    QSignalSpy chosen(&chart_, &PressureChart::guest_chosen);
    chart_.setFocus();
    QTest::keyClick(&chart_, Qt::Key_Down);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].value<GuestId>(), GuestId("guest-0"));
    chart_.highlight(GuestId("guest-0"));
    QTest::keyClick(&chart_, Qt::Key_Down);
    ASSERT_EQ(chosen.count(), 2);
    EXPECT_EQ(chosen[1][0].value<GuestId>(), GuestId("guest-1"));
}

TEST_F(PressureChartTest, FewerGuestsLeaveNoOldLinesBehind) {
    chart_.show_content(crowd(6));
    EXPECT_EQ(chart_.chart()->series().size(), 6);
    chart_.show_content(crowd(2));
    EXPECT_EQ(chart_.chart()->series().size(), 2);
    chart_.show_content({});
    EXPECT_TRUE(chart_.chart()->series().isEmpty());
    EXPECT_TRUE(chart_.labels().empty());
}

}  // namespace
}  // namespace leadline::testing
