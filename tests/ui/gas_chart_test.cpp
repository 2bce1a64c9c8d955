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

class ReserveBandsTest : public PressureChartTest {
protected:
    static PressureChart::Band band(const char* id, double early, double middle, double late) {
        return {GuestId(id), QString::fromUtf8(id),
                {Minutes(early), Minutes(middle), Minutes(late)}, false};
    }
};

TEST_F(ReserveBandsTest, StandUnderTheLinesOnTheirTimeAxis) {
    PressureChart::Content content = crowd(2);
    content.bands = {band("guest-0", 20.0, 30.0, 45.0), band("guest-1", 25.0, 35.0, 50.0)};
    chart_.show_content(content);
    ASSERT_EQ(chart_.lanes().size(), 2U);
    const double reserve = chart_.place_of(Minutes(0.0), Bars(0.0)).y();
    for (std::size_t i = 0; i < 2; ++i) {
        const PressureChart::Lane& lane = chart_.lanes()[i];
        const TimeBand& reserved = content.bands[i].reserve;
        EXPECT_GT(lane.bar.top(), reserve);
        EXPECT_LT(lane.bar.bottom(), chart_.height());
        EXPECT_NEAR(lane.bar.left(), chart_.place_of(*reserved.early, Bars(0.0)).x(), 0.5);
        EXPECT_NEAR(lane.bar.right(), chart_.place_of(*reserved.late, Bars(0.0)).x(), 0.5);
        EXPECT_FALSE(lane.open);
        EXPECT_TRUE(QRectF(chart_.rect()).contains(lane.box));
        EXPECT_FALSE(lane.box.intersects(lane.bar));
    }
    EXPECT_THAT(chart_.lanes()[0].text.toStdString(), ::testing::HasSubstr("30"));
    EXPECT_GE(chart_.lanes()[1].bar.top(), chart_.lanes()[0].bar.bottom());
    expect_apart();
}

TEST_F(ReserveBandsTest, ABandBeyondTheAxisIsOpenAndOneBeyondAllPlansIsNotDrawn) {
    PressureChart::Content content = crowd(1);
    content.bands = {band("guest-0", 30.0, 60.0, 200.0)};
    content.bands[0].reserve.late.reset();
    content.bands.push_back({GuestId("guest-1"), QStringLiteral("never"), {}, false});
    chart_.show_content(content);
    ASSERT_EQ(chart_.lanes().size(), 1U);
    EXPECT_TRUE(chart_.lanes()[0].open);
    EXPECT_LT(chart_.lanes()[0].bar.right(), chart_.width());
}

TEST_F(ReserveBandsTest, ManyKeepTheNamesOfTheFirstAndTheChosen) {
    PressureChart::Content content = crowd(12);
    for (int i = 0; i < 30; ++i) {
        content.bands.push_back(band("guest-0", 20.0, 30.0, 40.0));
        content.bands.back().guest = GuestId("guest-" + std::to_string(i));
        content.bands.back().first = i % 10 == 0;
    }
    chart_.show_content(content);
    chart_.highlight(GuestId("guest-7"));
    ASSERT_FALSE(chart_.lanes().empty());
    for (const PressureChart::Lane& lane : chart_.lanes()) {
        const PressureChart::Band& shown = content.bands[lane.band];
        EXPECT_EQ(!lane.text.isEmpty(), shown.first || shown.guest == GuestId("guest-7"));
        EXPECT_LE(lane.bar.bottom(), chart_.height());
    }
    expect_apart();
}

TEST_F(ReserveBandsTest, AClickOnABandChoosesTheGuest) {
    PressureChart::Content content = crowd(2);
    content.bands = {band("guest-1", 20.0, 30.0, 45.0)};
    chart_.show_content(content);
    QSignalSpy chosen(&chart_, &PressureChart::guest_chosen);
    QTest::mouseClick(chart_.viewport(), Qt::LeftButton, {},
                      chart_.lanes()[0].bar.center().toPoint());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].value<GuestId>(), GuestId("guest-1"));
}

}  // namespace
}  // namespace leadline::testing
