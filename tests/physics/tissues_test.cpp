// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/tissues.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <iostream>
#include <limits>
#include <random>
#include <sstream>
#include <stdexcept>
#include <string>

#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr Pascals sea_level{atmosphere_pa};

/// The tables count 10 m of sea as one bar.
Pascals at_msw(double depth) { return sea_level + Pascals(depth * 1e4); }
/// 33 feet of sea water make one atmosphere.
Pascals at_fsw(double depth) { return sea_level + Pascals(depth * atmosphere_pa / 33.0); }

TissueLoads rested() { return must(tissues_at_rest(sea_level)); }

std::size_t index_of(const std::string& name) {
    if (name == "1b") return 1;
    const int number = std::stoi(name);
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        if (zh_l16c[i].number == number) return i;
    }
    throw std::runtime_error("no compartment " + name);
}

std::size_t index_of_half_time(double minutes) {
    const auto found = std::find_if(zh_l16c.begin(), zh_l16c.end(), [&](const Compartment& one) {
        return one.half_time == minutes;
    });
    if (found == zh_l16c.end()) throw std::runtime_error("no compartment of this half-time");
    return static_cast<std::size_t>(found - zh_l16c.begin());
}

bool check_coefficient(const ReferenceRow& row) {
    if (!row.has("compartment")) return false;
    const Compartment& tissue = zh_l16c[index_of(row.text("compartment"))];
    const std::string& check = row.text("check");
    if (check == "half_time") {
        expect_near(row, tissue.half_time);
    } else if (check == "a") {
        expect_near(row, tissue.a);
    } else if (check == "b") {
        expect_near(row, tissue.b);
    } else if (check == "a_at_most") {
        expect_at_most(row, tissue.a);
    } else {
        return false;
    }
    return true;
}

bool check_pressure(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check != "constant" && check != "descent" && check != "ascent") return false;
    TissueLoads loads = rested();
    // The table's starting pressure is the model's own for a body at rest.
    EXPECT_NEAR(loads.nitrogen[0], row.number("start_bar"), 1e-8);
    const Pascals deep = at_msw(row.number("depth_m"));
    const Minutes minutes(row.number("minutes"));
    if (check == "descent") {
        EXPECT_NEAR(row.number("depth_m") / row.number("rate_m_per_min"), minutes.value(), 1e-9);
        loads = must(after_leg(loads, sea_level, deep, minutes));
    } else {
        loads = must(after_leg(loads, deep, deep, minutes));
    }
    if (check == "ascent") {
        const Minutes up(row.number("depth_m") / row.number("rate_m_per_min"));
        loads = must(after_leg(loads, deep, sea_level, up));
    }
    expect_near(row, loads.nitrogen[index_of_half_time(row.number("half_time_min"))]);
    return true;
}

class Tissues : public RowTest {};
TEST_P(Tissues, AgreeWithTheTable) {
    if (!check_coefficient(GetParam()) && !check_pressure(GetParam())) {
        fail_unknown_check(GetParam());
    }
}
LEADLINE_REFERENCE_TABLE(Tissues, "tissues");

NoStop limit_of(const ReferenceRow& row, double factor) {
    const double depth = row.number("depth");
    const Pascals ambient = row.text("depth_unit") == "fsw" ? at_fsw(depth) : at_msw(depth);
    return must(no_stop_time(rested(), ambient, sea_level, factor));
}

class NoStopLimits : public RowTest {};
TEST_P(NoStopLimits, AreOnTheSafeSideOfTheTable) {
    const ReferenceRow& row = GetParam();
    if (row.text("check") == "raw") {
        const NoStop ours = limit_of(row, 1.0);
        ASSERT_TRUE(ours.time);
        expect_near(row, ours.time->value());
        EXPECT_EQ(ours.leading, row.number("leading"));
        return;
    }
    const NoStop ours = limit_of(row, house_gradient_factors.high);
    if (row.text("check") == "at_most") {
        ASSERT_TRUE(ours.time) << "more than 24 h";
        expect_at_most(row, ours.time->value());
        RecordProperty("minutes", std::to_string(ours.time->value()));
    } else if (row.text("check") == "no_limit") {
        EXPECT_FALSE(ours.time) << ours.time->value() << " min where the table has no limit";
    } else {
        fail_unknown_check(row);
    }
}
LEADLINE_REFERENCE_TABLE(NoStopLimits, "no_stop_limits");

std::string minutes_text(const NoStop& limit) {
    if (!limit.time) return "over 24 h";
    std::ostringstream text;
    text << std::fixed << std::setprecision(1) << limit.time->value();
    return text.str();
}

TEST(NoStopComparison, IsPrinted) {
    std::ostringstream out;
    out << "no-stop minutes: table and depth | table | 30/70 | compartment | 100/100\n";
    int rows = 0;
    for (const ReferenceRow& row : load_reference("no_stop_limits")) {
        if (row.text("check") == "raw") continue;
        const NoStop ours = limit_of(row, house_gradient_factors.high);
        out << std::setw(16) << row.text("table") << std::setw(5) << row.text("depth") << " "
            << row.text("depth_unit") << " | " << std::setw(8)
            << (row.has("expected") ? row.text("expected") : "no limit") << " | " << std::setw(9)
            << minutes_text(ours) << " | " << std::setw(2) << ours.leading << " | "
            << minutes_text(limit_of(row, 1.0)) << "\n";
        ++rows;
    }
    std::cout << out.str();
    EXPECT_EQ(rows, 38);
}

/// dp/dt = k (pI - p) by the classical Runge-Kutta method in small steps.
double runge_kutta(double load, double from, double to, double minutes, double half_time) {
    constexpr int steps = 20'000;
    const double k = std::log(2.0) / half_time;
    const double h = minutes / steps;
    const auto inspired = [&](double t) {
        return (from + (to - from) * t / minutes - 0.0627) * 0.7902;
    };
    const auto slope = [&](double t, double p) { return k * (inspired(t) - p); };
    for (int i = 0; i < steps; ++i) {
        const double t = h * i;
        const double k1 = slope(t, load);
        const double k2 = slope(t + h / 2.0, load + h * k1 / 2.0);
        const double k3 = slope(t + h / 2.0, load + h * k2 / 2.0);
        const double k4 = slope(t + h, load + h * k3);
        load += h * (k1 + 2.0 * k2 + 2.0 * k3 + k4) / 6.0;
    }
    return load;
}

struct LegCase {
    const char* name;
    double from_bar;
    double to_bar;
    double minutes;
};
class LegAgainstIntegration : public testing::TestWithParam<LegCase> {};
TEST_P(LegAgainstIntegration, AgreesForEveryCompartment) {
    const LegCase& leg = GetParam();
    const TissueLoads start = must(
        after_leg(rested(), Pascals(Bars(2.5)), Pascals(Bars(2.5)), Minutes(17.0)));
    const TissueLoads end = must(after_leg(start, Pascals(Bars(leg.from_bar)),
                                           Pascals(Bars(leg.to_bar)), Minutes(leg.minutes)));
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        EXPECT_NEAR(end.nitrogen[i],
                    runge_kutta(start.nitrogen[i], leg.from_bar, leg.to_bar, leg.minutes,
                                zh_l16c[i].half_time),
                    1e-10)
            << "compartment " << zh_l16c[i].number;
    }
}
INSTANTIATE_TEST_SUITE_P(
    legs, LegAgainstIntegration,
    testing::Values(LegCase{"down", 1.013, 5.0, 1.5}, LegCase{"up", 4.2, 1.013, 3.6},
                    LegCase{"stay", 2.2, 2.2, 35.0}, LegCase{"second", 1.013, 1.2, 1.0 / 60.0},
                    LegCase{"interval", 0.8, 0.8, 180.0}, LegCase{"drive_up", 1.013, 0.75, 90.0}),
    [](const auto& tested) { return std::string(tested.param.name); });

TEST(TissueLegs, OfNoTimeChangeNothing) {
    const TissueLoads loads = rested();
    EXPECT_EQ(must(after_leg(loads, sea_level, at_msw(40.0), Minutes(0.0))), loads);
}

TEST(TissueLegs, AtRestStayAtRest) {
    const TissueLoads loads = must(after_leg(rested(), sea_level, sea_level, Minutes(10'000.0)));
    for (const double load : loads.nitrogen) EXPECT_NEAR(load, rested().nitrogen[0], 1e-12);
}

TEST(Tissues1And1b, AreEachTheStricterSomewhere) {
    const auto alone = [](std::size_t kept, double depth) {
        // The other compartment is emptied and so needs longer.
        TissueLoads loads = rested();
        loads.nitrogen[1 - kept] = 0.0;
        return must(no_stop_time(loads, at_msw(depth), sea_level, 0.7));
    };
    const auto minutes = [](const Compartment& tissue, double depth) {
        const double inspired = (Bars(at_msw(depth)).value() - 0.0627) * 0.7902;
        const double surface = Bars(sea_level).value();
        const double limit = surface + 0.7 * (tissue.a + surface / tissue.b - surface);
        return tissue.half_time *
               std::log2((inspired - rested().nitrogen[0]) / (inspired - limit));
    };
    EXPECT_LT(minutes(zh_l16c[1], 30.0), minutes(zh_l16c[0], 30.0));
    EXPECT_LT(minutes(zh_l16c[0], 40.0), minutes(zh_l16c[1], 40.0));
    // And the model takes the stricter: at 55 m it is compartment 1.
    EXPECT_NEAR(alone(0, 55.0).time.value().value(), minutes(zh_l16c[0], 55.0), 1e-9);
    EXPECT_NEAR(must(no_stop_time(rested(), at_msw(55.0), sea_level, 0.7)).time.value().value(),
                minutes(zh_l16c[0], 55.0), 1e-9);
}

TEST(Compartment4, TheGreaterBIsTheSafeSide) {
    const auto limit = [](double b) { return 0.7562 + 1.01325 / b; };
    EXPECT_LT(limit(0.7825), limit(0.7725));
    const auto ceiling = [](double b) { return (2.4 - 0.7562) * b; };
    EXPECT_GT(ceiling(0.7825), ceiling(0.7725));
    EXPECT_EQ(zh_l16c[index_of("4")].b, 0.7825);
}

TEST(NoStopTime, EndsWhereTheSurfaceAllowsJustThat) {
    for (const double depth : {9.0, 15.0, 30.0, 55.0}) {
        const NoStop limit =
            must(no_stop_time(rested(), at_msw(depth), sea_level, house_gradient_factors.high));
        const TissueLoads loads =
            must(after_leg(rested(), at_msw(depth), at_msw(depth), limit.time.value()));
        const Saturation there =
            must(surfacing_saturation(loads, sea_level, house_gradient_factors.high));
        EXPECT_NEAR(there.share, 1.0, 1e-9) << depth;
        EXPECT_EQ(there.leading, limit.leading) << depth;
        EXPECT_NEAR(must(allowed_pressure(loads, house_gradient_factors.high)).value(),
                    sea_level.value(), 1e-3);
    }
}

TEST(HouseGradientFactors, Of80WouldPassTheTable) {
    // Why 70: with 80 at the surface 9 m would be longer than the 300 min of DCIEM 1992 (from
    // memory).
    const NoStop with_80 = must(no_stop_time(rested(), at_msw(9.0), sea_level, 0.80));
    EXPECT_GT(with_80.time.value().value(), 300.0);
}

TEST(NoStopTime, IsZeroWhenTheLimitIsPassedAndNoneWhenItIsFar) {
    const TissueLoads full =
        must(after_leg(rested(), at_msw(40.0), at_msw(40.0), Minutes(60.0)));
    EXPECT_EQ(must(no_stop_time(full, at_msw(10.0), sea_level, 0.7)).time.value().value(), 0.0);
    const NoStop shallow = must(no_stop_time(rested(), at_msw(2.0), sea_level, 0.7));
    EXPECT_FALSE(shallow.time);
    EXPECT_EQ(shallow.leading, 0);
}

TEST(Ceiling, IsTheSurfaceUntilTheHighFactorForbidsAndThenTheLowOnes) {
    const TissueLoads easy = must(after_leg(rested(), at_msw(18.0), at_msw(18.0), Minutes(20.0)));
    EXPECT_EQ(must(ceiling_pressure(easy, sea_level, house_gradient_factors)).value(),
              sea_level.value());
    const TissueLoads loaded =
        must(after_leg(rested(), at_msw(30.0), at_msw(30.0), Minutes(40.0)));
    const double first = must(ceiling_pressure(loaded, sea_level, house_gradient_factors)).value();
    EXPECT_EQ(first, must(allowed_pressure(loaded, 0.30)).value());
    EXPECT_GT(first, must(allowed_pressure(loaded, 0.70)).value());
    EXPECT_GT(must(allowed_pressure(loaded, 0.70)).value(), sea_level.value());
    // The model's own limit: (p - a) b.
    double own = 0.0;
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        own = std::max(own, (loaded.nitrogen[i] - zh_l16c[i].a) * zh_l16c[i].b);
    }
    EXPECT_NEAR(Bars(must(allowed_pressure(loaded, 1.0))).value(), own, 1e-12);
}

TEST(NoStopProperties, HoldForManyStates) {
    std::mt19937_64 random(7);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    const auto minutes = [](const TissueLoads& loads, Pascals ambient, Pascals surface) {
        const NoStop limit = must(no_stop_time(loads, ambient, surface, 0.7));
        return limit.time ? limit.time->value() : std::numeric_limits<double>::infinity();
    };
    for (int i = 0; i < 2000; ++i) {
        const Pascals first = at_msw(between(3.0, 50.0));
        const TissueLoads loads =
            must(after_leg(rested(), first, first, Minutes(between(1.0, 60.0))));
        const double depth = between(3.0, 50.0);
        const double now = minutes(loads, at_msw(depth), sea_level);
        EXPECT_LE(minutes(loads, at_msw(depth + between(0.0, 9.0)), sea_level), now);
        EXPECT_LE(now, minutes(rested(), at_msw(depth), sea_level));
        const double wait = between(0.0, 300.0);
        const TissueLoads later = must(after_leg(loads, sea_level, sea_level, Minutes(wait)));
        const TissueLoads latest =
            must(after_leg(loads, sea_level, sea_level, Minutes(wait + between(0.0, 300.0))));
        EXPECT_LE(now, minutes(later, at_msw(depth), sea_level));
        EXPECT_LE(minutes(later, at_msw(depth), sea_level),
                  minutes(latest, at_msw(depth), sea_level) + 1e-9);
        // Altitude: the same depth of water under less air, the body in balance with it or not.
        const Pascals high(between(55e3, atmosphere_pa));
        const Pascals there = high + Pascals(depth * 1e4);
        EXPECT_LE(minutes(must(tissues_at_rest(high)), there, high),
                  minutes(rested(), at_msw(depth), sea_level) + 1e-9);
        EXPECT_LE(minutes(rested(), there, high),
                  minutes(must(tissues_at_rest(high)), there, high));
    }
}

TEST(SurfaceInterval, GasLeavesFasterWhereTheAirIsThinner) {
    const TissueLoads loads = must(after_leg(rested(), at_msw(18.0), at_msw(18.0), Minutes(40.0)));
    const Pascals lake(80e3);
    const TissueLoads there = must(after_leg(loads, lake, lake, Minutes(120.0)));
    const TissueLoads below = must(after_leg(loads, sea_level, sea_level, Minutes(120.0)));
    for (std::size_t i = 0; i < zh_l16c.size(); ++i) {
        EXPECT_LT(there.nitrogen[i], below.nitrogen[i]);
        // But it comes nearer to its limit there.
    }
    EXPECT_GT(must(surfacing_saturation(there, lake, 0.7)).share,
              must(surfacing_saturation(below, sea_level, 0.7)).share);
}

void expect_refused(const std::optional<Error>& error, const char* place) {
    ASSERT_TRUE(error) << place;
    EXPECT_EQ(error->code, ErrorCode::out_of_range);
    EXPECT_EQ(error->place, place);
    EXPECT_FALSE(error->allowed.empty());
}
TEST(TissueRefusals, NameTheInput) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const Pascals ok(2e5);
    for (const double bad : {nan, 49.9e3, 110.1e3, -1.0, 1e308}) {
        expect_refused(error_of(tissues_at_rest(Pascals(bad))), "surface");
        expect_refused(error_of(surfacing_saturation(rested(), Pascals(bad), 0.7)), "surface");
        expect_refused(error_of(no_stop_time(rested(), ok, Pascals(bad), 0.7)), "surface");
        expect_refused(error_of(ceiling_pressure(rested(), Pascals(bad), {0.3, 0.7})), "surface");
    }
    for (const double bad : {nan, 49.9e3, 800.1e3, -1.0, 1e308}) {
        expect_refused(error_of(TissueLeg::make(Pascals(bad), ok, Minutes(1.0))), "from");
        expect_refused(error_of(TissueLeg::make(ok, Pascals(bad), Minutes(1.0))), "to");
        expect_refused(error_of(no_stop_time(rested(), Pascals(bad), sea_level, 0.7)), "ambient");
    }
    for (const double bad : {nan, -0.001, 20160.1, 1e308}) {
        expect_refused(error_of(after_leg(rested(), ok, ok, Minutes(bad))), "time");
    }
    for (const double bad : {nan, 0.09, 1.01}) {
        expect_refused(error_of(allowed_pressure(rested(), bad)), "factor");
        expect_refused(error_of(surfacing_saturation(rested(), sea_level, bad)), "high");
        expect_refused(error_of(no_stop_time(rested(), ok, sea_level, bad)), "high");
        expect_refused(error_of(ceiling_pressure(rested(), sea_level, {0.3, bad})), "high");
        expect_refused(error_of(ceiling_pressure(rested(), sea_level, {bad, 0.7})), "low");
    }
    expect_refused(error_of(ceiling_pressure(rested(), sea_level, {0.8, 0.7})), "low");
    for (const double bad : {nan, -0.001, 6.51}) {
        TissueLoads loads = rested();
        loads.nitrogen[3] = bad;
        expect_refused(error_of(after_leg(loads, ok, ok, Minutes(1.0))), "loads/3");
        expect_refused(error_of(allowed_pressure(loads, 0.7)), "loads/3");
        expect_refused(error_of(surfacing_saturation(loads, sea_level, 0.7)), "loads/3");
        expect_refused(error_of(no_stop_time(loads, ok, sea_level, 0.7)), "loads/3");
        expect_refused(error_of(ceiling_pressure(loads, sea_level, {0.3, 0.7})), "loads/3");
    }
}

TEST(TissueRefusals, EndsOfTheRangesAreInside) {
    EXPECT_TRUE(tissues_at_rest(Pascals(50e3)));
    EXPECT_TRUE(tissues_at_rest(Pascals(110e3)));
    EXPECT_TRUE(TissueLeg::make(Pascals(50e3), Pascals(800e3), Minutes(20160.0)));
    const TissueLoads most =
        must(after_leg(rested(), Pascals(800e3), Pascals(800e3), Minutes(20160.0)));
    EXPECT_TRUE(no_stop_time(most, Pascals(800e3), Pascals(50e3), 0.1));
}

}  // namespace
}  // namespace leadline
