// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/body/ears.h"
#include "core/body/lungs.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

Depth meters(double value) { return Depth(Meters(value)); }

EarTrace straight(double deepest, double step) {
    return must(ear_trace_by_step(
        table_sea(), must(straight_descent(meters(deepest), MetersPerMinute(6.0))), Meters(step)));
}

/// Depth at which a line first comes to a difference, straight between its points.
double depth_of(const std::vector<EarPoint>& points, double pascals) {
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double before = points[i - 1].difference.value();
        const double here = points[i].difference.value();
        if (here < pascals) continue;
        const double share = (pascals - before) / (here - before);
        const double from = points[i - 1].depth.meters().value();
        return from + share * (points[i].depth.meters().value() - from);
    }
    return std::numeric_limits<double>::quiet_NaN();
}

void expect_in_range(const ReferenceRow& row, double actual) {
    EXPECT_GE(actual, row.number("expected")) << row;
    EXPECT_LE(actual, row.number("expected_to")) << row;
}

bool check_ear(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "opening_least_mmhg") {
        expect_near(row, ear_opening_least.value() / mmhg);
    } else if (check == "opening_most_mmhg") {
        expect_near(row, ear_opening_most.value() / mmhg);
    } else if (check == "opening_usual_m") {
        expect_near(row, ear_opening_usual_descent.value());
    } else if (check == "difference_after_mmhg") {
        expect_in_range(row, straight(10.0, row.number("input")).largest.value() / mmhg);
    } else if (check == "uncleared_locked_m") {
        expect_near(row, straight(row.number("input"), 20.0).locked_at.value().meters().value());
    } else if (check == "uncleared_locked_at_most_m") {
        expect_at_most(row, straight(row.number("input"), 20.0).locked_at.value().meters().value());
    } else if (check == "largest_step_m") {
        expect_in_range(row,
                        must(largest_clearing_step(table_sea(), row.number("input"))).value());
    } else if (check == "uncleared_reaches_kpa") {
        expect_near(row, depth_of(straight(30.0, 0.5).never_cleared, row.number("input") * 1e3));
    } else if (check == "uncleared_reaches_kpa_within") {
        expect_in_range(row,
                        depth_of(straight(30.0, 0.5).never_cleared, row.number("input") * 1e3));
    } else {
        return false;
    }
    return true;
}

bool check_lung(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (!row.has("input")) return false;
    const HeldBreathLimit limit =
        must(held_breath_limits(table_sea(), meters(row.number("input")), Meters(0.5))).back();
    if (check == "held_breath_ascent_m") {
        expect_in_range(row, limit.ascent.value().value());
    } else if (check == "held_breath_none") {
        EXPECT_FALSE(limit.ascent) << row;
    } else if (check == "expansion") {
        expect_near(row, limit.expansion);
    } else {
        return false;
    }
    return true;
}

class EarLungThresholds : public RowTest {};
TEST_P(EarLungThresholds, AgreeWithTheTable) {
    if (!check_ear(GetParam()) && !check_lung(GetParam())) fail_unknown_check(GetParam());
}
LEADLINE_REFERENCE_TABLE(EarLungThresholds, "ear_lung_thresholds");

TEST(EarTraceByStep, IsASawOfEqualTeeth) {
    const EarTrace trace = straight(2.0, 0.5);
    // Start, then before and after each of four clearings, and the end.
    ASSERT_EQ(trace.cleared.size(), 10U);
    const double tooth = 0.5 * 1025.0 * 9.80665;
    for (std::size_t i = 0; i + 1 < trace.cleared.size(); ++i) {
        const bool before_clearing = i % 2 == 1;
        EXPECT_NEAR(trace.cleared[i].difference.value(), before_clearing ? tooth : 0.0, 2.0) << i;
        EXPECT_NEAR(trace.cleared[i].depth.meters().value(),
                    0.5 * static_cast<double>((i + 1) / 2), 1e-9);
        EXPECT_NEAR(trace.cleared[i].time.value(),
                    0.5 * static_cast<double>((i + 1) / 2) / 6.0, 1e-9);
    }
    EXPECT_NEAR(trace.largest.value(), tooth, 2.0);
    EXPECT_FALSE(trace.locked_at);
    ASSERT_EQ(trace.never_cleared.size(), 2U);
    EXPECT_NEAR(trace.never_cleared.back().difference.value(), 4.0 * tooth, 3.0);
}

TEST(EarTraceByStep, AgreesWithTheLadder) {
    for (const double step : {0.3, 0.5, 0.7, 1.0}) {
        const ClearingLadder ladder = must(clearing_ladder(table_sea(), Meters(step), meters(9.3),
                                                           MetersPerMinute(6.0)));
        const EarTrace trace = straight(9.3, step);
        // The ladder's difference is that of its deepest step; the trace's last whole step may end
        // less than a step above the bottom, where water is a hair lighter.
        EXPECT_NEAR(trace.largest.value(), ladder.largest_difference.value(), 0.5);
        EXPECT_LE(trace.largest.value(), ladder.largest_difference.value() + 1e-6);
        EXPECT_NEAR(trace.never_cleared.back().difference.value(),
                    ladder.uncleared_at_bottom.value(), 1e-6);
    }
}

TEST(EarTraceByStep, ALockedEarIsNotOpenedByClearing) {
    const EarTrace trace = straight(6.0, 1.1);  // 1.1 m is beyond the locking at 1.06 m
    ASSERT_TRUE(trace.locked_at);
    EXPECT_NEAR(trace.locked_at->meters().value(), 1.06, 0.005);
    EXPECT_NEAR(trace.largest.value(), trace.never_cleared.back().difference.value(), 1e-9);
    EXPECT_FALSE(straight(6.0, 1.0).locked_at);
}

TEST(EarTraceByInterval, ClearsByTheClock) {
    const auto way = must(straight_descent(meters(6.0), MetersPerMinute(6.0)));
    const EarTrace by_time = must(ear_trace_by_interval(table_sea(), way, Seconds(5.0)));
    const EarTrace by_step = straight(6.0, 0.5);  // 6 m/min for 5 s
    ASSERT_EQ(by_time.cleared.size(), by_step.cleared.size());
    for (std::size_t i = 0; i < by_time.cleared.size(); ++i) {
        EXPECT_NEAR(by_time.cleared[i].difference.value(), by_step.cleared[i].difference.value(),
                    1e-4);
        EXPECT_NEAR(by_time.cleared[i].time.value(), by_step.cleared[i].time.value(), 1e-9);
    }
    // Every 11 s it is 1.1 m: too late.
    EXPECT_TRUE(must(ear_trace_by_interval(table_sea(), way, Seconds(11.0))).locked_at);
}

TEST(EarTrace, GoingUpLetsTheAirOut) {
    // Down to 0.9 m uncleared, up to 0.2 m, down to 0.9 m.
    const std::vector<WayPoint> way = {{Minutes(0.0), meters(0.0)},
                                       {Minutes(1.0), meters(3.0)},
                                       {Minutes(2.0), meters(1.0)},
                                       {Minutes(3.0), meters(1.9)}};
    const EarTrace trace = must(ear_trace_by_step(table_sea(), way, Meters(1.0)));
    const EarPoint& end = trace.cleared.back();
    EXPECT_NEAR(end.difference.value(), 0.9 * 1025.0 * 9.80665, 3.0);  // even at 1 m since
    for (const EarPoint& point : trace.cleared) EXPECT_GE(point.difference.value(), 0.0);
    EXPECT_FALSE(trace.locked_at);
    // Never cleared: even again on the way up only above the surface's pressure, so never.
    EXPECT_NEAR(trace.never_cleared.back().difference.value(), 1.9 * 1025.0 * 9.80665, 3.0);
    // A locked ear is free again once the diver is back up where it was even.
    const std::vector<WayPoint> rescue = {{Minutes(0.0), meters(1.0)},
                                          {Minutes(1.0), meters(4.0)},
                                          {Minutes(2.0), meters(0.5)},
                                          {Minutes(3.0), meters(1.0)}};
    const EarTrace freed = must(ear_trace_by_step(table_sea(), rescue, Meters(2.0)));
    EXPECT_TRUE(freed.locked_at);
    EXPECT_NEAR(freed.cleared.back().difference.value(), 0.5 * 1025.0 * 9.80665, 2.0);
    const auto corner = std::find_if(freed.cleared.begin(), freed.cleared.end(),
                                     [](const EarPoint& point) {
                                         return point.time.value() > 1.0 &&
                                                point.time.value() < 2.0;
                                     });
    ASSERT_NE(corner, freed.cleared.end());
    EXPECT_NEAR(corner->depth.meters().value(), 1.0, 1e-6);
}

TEST(EarTrace, TimesNeverGoBack) {
    for (const double step : {0.1, 0.37, 0.9, 3.0}) {
        const EarTrace trace = straight(40.0, step);
        for (std::size_t i = 1; i < trace.cleared.size(); ++i) {
            EXPECT_GE(trace.cleared[i].time.value(), trace.cleared[i - 1].time.value());
        }
        EXPECT_EQ(trace.cleared.back().depth, meters(40.0));
    }
}

TEST(LargestClearingStep, UsesItsShareAnywhereDownTo60Metres) {
    const WaterColumn water = table_sea();
    for (const double margin : {0.1, 0.5, 1.0}) {
        const Meters step = must(largest_clearing_step(water, margin));
        for (const double depth : {5.0, 30.0, 60.0}) {
            const double difference = (water.absolute_pressure(meters(depth)) -
                                       water.absolute_pressure(Depth(Meters(depth) - step)))
                                          .value();
            EXPECT_LE(difference, margin * eustachian_tube_locking.value() + 1e-6);
            EXPECT_NEAR(difference, margin * eustachian_tube_locking.value(), 10.0);
        }
    }
    EXPECT_GT(must(largest_clearing_step(fresh_water(), 0.5)),
              must(largest_clearing_step(sea(10.0), 0.5)));
}

TEST(HeldBreathLimits, RunFromTheSurfaceToTheDeepestPoint) {
    const auto limits = must(held_breath_limits(table_sea(), meters(8.2), Meters(0.5)));
    ASSERT_EQ(limits.size(), 18U);
    EXPECT_EQ(limits.front().from, meters(0.0));
    EXPECT_EQ(limits.front().expansion, 1.0);
    EXPECT_EQ(limits.back().from, meters(8.2));
    bool reached = false;
    for (std::size_t i = 1; i < limits.size(); ++i) {
        EXPECT_GT(limits[i].from, limits[i - 1].from);
        EXPECT_GT(limits[i].expansion, limits[i - 1].expansion);
        EXPECT_EQ(limits[i].ascent.has_value(), limits[i].from.meters().value() > 0.94);
        if (!limits[i].ascent) continue;
        reached = true;
        EXPECT_LE(limits[i].ascent->value(), limits[i].from.meters().value());
        const Depth torn = Depth(limits[i].from.meters() - *limits[i].ascent);
        EXPECT_NEAR((table_sea().absolute_pressure(limits[i].from) -
                     table_sea().absolute_pressure(torn))
                        .value(),
                    lung_tearing_lowest.value(), 1e-3);
    }
    EXPECT_TRUE(reached);
    EXPECT_EQ(must(held_breath_limits(table_sea(), meters(8.0), Meters(0.5))).size(), 17U);
    EXPECT_EQ(must(held_breath_limits(table_sea(), meters(0.0), Meters(0.5))).size(), 1U);
}

template <typename T>
void expect_refused(const Result<T>& result, const char* place,
                    ErrorCode code = ErrorCode::out_of_range) {
    ASSERT_FALSE(result) << place;
    EXPECT_EQ(result.error().code, code);
    EXPECT_EQ(result.error().place, place);
}

TEST(EarLungRefusals, NameTheInput) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const WaterColumn water = table_sea();
    const auto way = must(straight_descent(meters(6.0), MetersPerMinute(6.0)));
    for (const double bad : {nan, 0.09, 20.1}) {
        expect_refused(ear_trace_by_step(water, way, Meters(bad)), "step");
    }
    for (const double bad : {nan, 0.9, 600.1}) {
        expect_refused(ear_trace_by_interval(water, way, Seconds(bad)), "interval");
    }
    for (const double bad : {nan, 0.09, 1.01}) {
        expect_refused(largest_clearing_step(water, bad), "margin");
    }
    for (const double bad : {nan, 0.0, 60.1}) {
        expect_refused(straight_descent(meters(bad), MetersPerMinute(6.0)), "deepest");
    }
    for (const double bad : {nan, 0.9, 30.1}) {
        expect_refused(straight_descent(meters(6.0), MetersPerMinute(bad)), "rate");
    }
    for (const double bad : {nan, -0.1, 60.1}) {
        expect_refused(held_breath_limits(water, meters(bad), Meters(0.5)), "deepest");
        expect_refused(ear_trace_by_step(
                           water, {{Minutes(0.0), meters(0.0)}, {Minutes(1.0), meters(bad)}},
                           Meters(0.5)),
                       "way/1/depth");
    }
    for (const double bad : {nan, 0.09, 10.1}) {
        expect_refused(held_breath_limits(water, meters(6.0), Meters(bad)), "spacing");
    }
    for (const double bad : {nan, -1.0, 240.1}) {
        expect_refused(ear_trace_by_step(
                           water, {{Minutes(0.0), meters(0.0)}, {Minutes(bad), meters(1.0)}},
                           Meters(0.5)),
                       "way/1/time");
    }
    expect_refused(ear_trace_by_step(
                       water, {{Minutes(1.0), meters(0.0)}, {Minutes(1.0), meters(1.0)}},
                       Meters(0.5)),
                   "way/1/time", ErrorCode::time_not_increasing);
    expect_refused(ear_trace_by_step(water, {{Minutes(0.0), meters(0.0)}}, Meters(0.5)), "way",
                   ErrorCode::bad_count);
    expect_refused(ear_trace_by_interval(water, std::vector<WayPoint>(101), Seconds(5.0)), "way",
                   ErrorCode::bad_count);
}

}  // namespace
}  // namespace leadline
