// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/forecast.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <sstream>

#include "tests/physics/support.h"

namespace leadline {
namespace {

std::vector<double> numbers(const std::string& text) {
    std::istringstream in(text);
    return {std::istream_iterator<double>(in), {}};
}

LogGroup group_of(const std::vector<double>& loads, const std::vector<double>& sigmas,
                  double shared) {
    LogGroup group;
    group.shared_sigma = shared;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        group.breathers.push_back({std::log(loads[i]), sigmas[i]});
    }
    return group;
}

LogGroup group_of(const ReferenceRow& row) {
    return group_of(numbers(row.text("loads")), numbers(row.text("own_sigmas")),
                    row.number("shared_sigma"));
}

class FirstOfLognormals : public RowTest {};

TEST_P(FirstOfLognormals, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const LogGroup group = group_of(row);
    const std::string& check = row.text("check");
    if (check == "all_last") {
        expect_near(row, must(chance_all_last(group, row.number("input"))));
    } else if (check == "quantile") {
        expect_near(row, must(first_load_quantile(group, row.number("input"))));
    } else if (check == "first") {
        expect_near(row, must(chances_to_be_first(group))
                             .at(static_cast<std::size_t>(row.number("input"))));
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(FirstOfLognormals, "first_of_lognormals");

RunSetup setup_of(const LogGroup& group, double planned, int runs, std::uint64_t seed = 7) {
    return {planned, runs, seed, std::vector<double>(group.breathers.size(), 0.03),
            {10.0 / 60.0, 1.0, 1000.0}};
}

const LogGroup& four() {
    static const LogGroup group =
        group_of({70.0, 75.0, 80.0, 62.0}, {0.242, 0.242, 0.275, 0.18}, 0.12);
    return group;
}

/// Standard error of a quantile of n numbers: sqrt(q (1 - q) / n) over the density there, the density
/// from the closed form.
double quantile_error(const LogGroup& group, double share, int runs) {
    const double load = must(first_load_quantile(group, share));
    const double step = 0.01 * load;
    const double density = (must(chance_all_last(group, load - step)) -
                            must(chance_all_last(group, load + step))) /
                           (2.0 * step);
    return std::sqrt(share * (1.0 - share) / runs) / density;
}

TEST(Runs, AgreeWithTheClosedFormsWithinTheirStandardError) {
    constexpr int runs = 200'000;
    for (const double planned : {45.0, 55.0, 65.0}) {
        const RunSummary summary = must(run_dives(four(), setup_of(four(), planned, runs)));
        const double chance = must(chance_all_last(four(), planned));
        EXPECT_NEAR(summary.completes, chance, 4.0 * summary.completes_error) << planned;
        EXPECT_NEAR(summary.completes_error, std::sqrt(chance * (1 - chance) / runs), 1e-4);
        for (const auto& [share, load] : {std::pair{0.1, summary.early_load},
                                          std::pair{0.5, summary.middle_load},
                                          std::pair{0.9, summary.late_load}}) {
            EXPECT_NEAR(load, must(first_load_quantile(four(), share)),
                        4.0 * quantile_error(four(), share, runs))
                << share;
        }
        const std::vector<double> first = must(chances_to_be_first(four()));
        for (std::size_t i = 0; i < first.size(); ++i) {
            EXPECT_NEAR(summary.first[i], first[i],
                        4.0 * std::sqrt(first[i] * (1.0 - first[i]) / runs));
        }
    }
}

TEST(Runs, ErrorShrinksWithTheRootOfTheirNumber) {
    const RunSummary few = must(run_dives(four(), setup_of(four(), 55.0, 1'000)));
    const RunSummary many = must(run_dives(four(), setup_of(four(), 55.0, 100'000)));
    EXPECT_NEAR(few.completes_error / many.completes_error, 10.0, 0.5);
}

TEST(Runs, GiveTheSameForTheSameSeedAndAnotherForAnother) {
    const RunSummary once = must(run_dives(four(), setup_of(four(), 55.0, 5'000, 1)));
    const RunSummary again = must(run_dives(four(), setup_of(four(), 55.0, 5'000, 1)));
    const RunSummary other = must(run_dives(four(), setup_of(four(), 55.0, 5'000, 2)));
    EXPECT_EQ(once.completes, again.completes);
    EXPECT_EQ(once.middle_load, again.middle_load);
    EXPECT_EQ(once.first, again.first);
    EXPECT_NE(once.middle_load, other.middle_load);
}

TEST(Runs, FirstsAddUpToAllRunsWhateverTheirNumber) {
    for (const int runs : {1, 63, 64, 65, 1000}) {
        const RunSummary summary = must(run_dives(four(), setup_of(four(), 55.0, runs)));
        EXPECT_NEAR(std::accumulate(summary.first.begin(), summary.first.end(), 0.0), 1.0, 1e-12);
        EXPECT_EQ(summary.runs, runs);
    }
}

/// The same free flow with the standard library's random numbers and no table.
double plain_free_flow(const LogGroup& group, const RunSetup& setup) {
    std::mt19937_64 random(99);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> minutes(setup.free_flow.least_minutes,
                                                   setup.free_flow.most_minutes);
    std::uniform_int_distribution<std::size_t> anyone(0, group.breathers.size() - 1);
    int lasted = 0;
    for (int run = 0; run < setup.runs; ++run) {
        const double shared = group.shared_sigma * normal(random);
        const std::size_t victim = anyone(random);
        const double lost = minutes(random) * setup.free_flow.liters_per_minute *
                            setup.load_per_liter[victim];
        bool all = true;
        for (std::size_t i = 0; i < group.breathers.size(); ++i) {
            const LogBreather& one = group.breathers[i];
            const double load = std::exp(one.ln_load) - (i == victim ? lost : 0.0);
            const double rate = std::exp(shared + one.own_sigma * normal(random));
            all = all && load >= setup.planned_load * rate;
        }
        if (all) ++lasted;
    }
    return static_cast<double>(lasted) / setup.runs;
}

TEST(FreeFlowRuns, AgreeWithAPlainSimulation) {
    const RunSetup setup = setup_of(four(), 55.0, 100'000);
    const RunSummary summary = must(run_dives(four(), setup));
    const double plain = plain_free_flow(four(), setup);
    EXPECT_NEAR(summary.completes_after_free_flow, plain,
                4.0 * std::sqrt(2.0 * plain * (1.0 - plain) / setup.runs));
    EXPECT_LT(summary.completes_after_free_flow, summary.completes);
}

TEST(FreeFlowRuns, WithNothingLostAreTheOthers) {
    RunSetup setup = setup_of(four(), 55.0, 10'000);
    setup.free_flow.liters_per_minute = 0.0;
    const RunSummary summary = must(run_dives(four(), setup));
    EXPECT_EQ(summary.completes_after_free_flow, summary.completes);
}

TEST(FreeFlowRuns, WithACylinderEmptiedNobodyLasts) {
    RunSetup setup = setup_of(four(), 1.0, 2'000);
    setup.free_flow = {10.0, 10.0, 1000.0};
    EXPECT_EQ(must(run_dives(four(), setup)).completes_after_free_flow, 0.0);
    EXPECT_EQ(must(run_dives(four(), setup)).completes, 1.0);
}

SharedAscent ascent() {
    SharedAscent shared;
    shared.shared_sigma = 0.12;
    shared.instructor_sigma = 0.2;
    shared.stressed_sigma = 0.3;
    shared.usable_liter_bars = 1500.0;
    shared.instructor_rmv = 20.0;
    shared.stressed_rmv = 80.0;
    for (int i = 0; i < 32; ++i) {
        shared.load_before.push_back(5.0 + 1.6 * i);
        shared.load_up.push_back(3.0 + 0.02 * i);
    }
    return shared;
}

double plain_shared_ascent(const SharedAscent& setup, int runs) {
    std::mt19937_64 random(5);
    std::normal_distribution<double> normal;
    std::uniform_int_distribution<std::size_t> moment(0, setup.load_up.size() - 1);
    int lasted = 0;
    for (int run = 0; run < runs; ++run) {
        const std::size_t now = moment(random);
        const double own = std::exp(setup.shared_sigma * normal(random) +
                                    setup.instructor_sigma * normal(random));
        const double stressed = std::exp(setup.stressed_sigma * normal(random));
        const double used = setup.instructor_rmv * own * setup.load_before[now] +
                            setup.stressed_rmv * stressed * setup.load_up[now];
        if (used <= setup.usable_liter_bars) ++lasted;
    }
    return static_cast<double>(lasted) / runs;
}

TEST(SharedAscentChance, AgreesWithAPlainSimulation) {
    SharedAscent setup = ascent();
    for (const double usable : {400.0, 900.0, 1500.0, 2500.0}) {
        setup.usable_liter_bars = usable;
        const double plain = plain_shared_ascent(setup, 200'000);
        EXPECT_NEAR(must(chance_shared_ascent(setup)), plain,
                    4.0 * std::sqrt(plain * (1.0 - plain) / 200'000) + 2e-3)
            << usable;
    }
}

TEST(SharedAscentChance, IsNothingWithoutAirAndCertainWithPlenty) {
    SharedAscent setup = ascent();
    setup.usable_liter_bars = 0.0;
    EXPECT_EQ(must(chance_shared_ascent(setup)), 0.0);
    setup.usable_liter_bars = 1e6;
    EXPECT_NEAR(must(chance_shared_ascent(setup)), 1.0, 1e-12);
}

TEST(ClosedForms, AreEachOthersInverse) {
    for (const double share : {0.001, 0.1, 0.37, 0.5, 0.9, 0.999}) {
        const double load = must(first_load_quantile(four(), share));
        EXPECT_NEAR(must(chance_all_last(four(), load)), 1.0 - share, 1e-7) << share;
    }
}

TEST(ClosedForms, FirstsAddUpToOne) {
    for (const std::size_t count : {1U, 2U, 8U, 40U, 100U}) {
        LogGroup group;
        for (std::size_t i = 0; i < count; ++i) {
            group.breathers.push_back({4.0 + 0.01 * static_cast<double>(i), 0.2});
        }
        const std::vector<double> first = must(chances_to_be_first(group));
        EXPECT_NEAR(std::accumulate(first.begin(), first.end(), 0.0), 1.0, 1e-6) << count;
        EXPECT_TRUE(std::is_sorted(first.rbegin(), first.rend()));
    }
}

TEST(ClosedForms, OneMoreGuestNeverLastsLonger) {
    LogGroup group = four();
    const double before = must(chance_all_last(group, 55.0));
    group.breathers.push_back({std::log(120.0), 0.242});
    EXPECT_LT(must(chance_all_last(group, 55.0)), before);
}

TEST(ClosedForms, AnEmptyCylinderEndsTheDiveAtOnce) {
    LogGroup group = four();
    group.breathers.front().ln_load = -60.0;
    EXPECT_EQ(must(chance_all_last(group, 55.0)), 0.0);
    EXPECT_LT(must(first_load_quantile(group, 0.5)), 1e-9);
    EXPECT_NEAR(must(chances_to_be_first(group)).front(), 1.0, 1e-9);
}

template <typename T>
void expect_refused(const Result<T>& result, ErrorCode code, const std::string& place) {
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().code, code);
    EXPECT_EQ(result.error().place, place);
    EXPECT_FALSE(result.error().allowed.empty());
}

TEST(ForecastRefuses, GroupsThatAreNone) {
    const double nan = std::nan("");
    expect_refused(chance_all_last({}, 55.0), ErrorCode::bad_count, "breathers");
    expect_refused(chances_to_be_first({}), ErrorCode::bad_count, "breathers");
    expect_refused(run_dives({}, setup_of({}, 55.0, 10)), ErrorCode::bad_count, "breathers");
    LogGroup group = four();
    group.shared_sigma = nan;
    expect_refused(chance_all_last(group, 55.0), ErrorCode::out_of_range, "shared_sigma");
    expect_refused(run_dives(group, setup_of(group, 55.0, 10)), ErrorCode::out_of_range,
                   "shared_sigma");
    group = four();
    group.breathers[2].ln_load = nan;
    expect_refused(first_load_quantile(group, 0.5), ErrorCode::out_of_range, "ln_load");
    group.breathers[2].ln_load = 1.0;
    group.breathers[1].own_sigma = 0.0;
    expect_refused(chances_to_be_first(group), ErrorCode::out_of_range, "own_sigma");
    group.breathers.assign(101, {4.0, 0.2});
    expect_refused(chance_all_last(group, 55.0), ErrorCode::bad_count, "breathers");
}

TEST(ForecastRefuses, NumbersOutOfRange) {
    expect_refused(chance_all_last(four(), -1.0), ErrorCode::out_of_range, "load");
    expect_refused(chance_all_last(four(), INFINITY), ErrorCode::out_of_range, "load");
    expect_refused(first_load_quantile(four(), 0.0), ErrorCode::out_of_range, "share");
    expect_refused(first_load_quantile(four(), 1.0), ErrorCode::out_of_range, "share");
    expect_refused(run_dives(four(), setup_of(four(), 0.0, 10)), ErrorCode::out_of_range,
                   "planned_load");
    expect_refused(run_dives(four(), setup_of(four(), 55.0, 0)), ErrorCode::out_of_range, "runs");
    RunSetup setup = setup_of(four(), 55.0, 10);
    setup.load_per_liter.pop_back();
    expect_refused(run_dives(four(), setup), ErrorCode::bad_count, "load_per_liter");
    setup = setup_of(four(), 55.0, 10);
    setup.free_flow.most_minutes = 0.0;
    expect_refused(run_dives(four(), setup), ErrorCode::out_of_range, "free_flow");
    SharedAscent shared = ascent();
    shared.load_up.pop_back();
    expect_refused(chance_shared_ascent(shared), ErrorCode::bad_count, "load_up");
    shared = ascent();
    shared.stressed_rmv = std::nan("");
    expect_refused(chance_shared_ascent(shared), ErrorCode::out_of_range, "rmv");
}

}  // namespace
}  // namespace leadline
