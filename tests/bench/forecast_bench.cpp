// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <cmath>
#include <random>
#include <vector>

#include "core/planning/forecast.h"
#include "core/planning/random_numbers.h"

// What a simulated diver costs: time a diver and run ("per_diver_run"):
//
//   runs_of_a_group        the program's own runs: everything the forecast counts
//   runs_written_plainly   the same dive with the standard library's generator and lognormal
//                          distribution, one exp and one comparison a diver
//   numbers_of_the_library the same count of numbers by Boost.Random's ziggurat
//   only_the_numbers       the same by the program's own source: no run can be cheaper with it
//   machine_limit          the least a run can be made of: the cheapest normal number found (the
//                          program's source without its exact tails) and one multiplication,
//                          subtraction and minimum, nothing counted or kept
//   closed_form            what the screen shows instead: chance, three quantiles, who is first
//
// tests/bench/forecast_numpy.py does the same dive with numpy.

namespace {

using namespace leadline;

constexpr int runs = 20'000;
constexpr double planned_load = 55.0;

LogGroup group_of(std::size_t count) {
    LogGroup group;
    group.shared_sigma = 0.12;
    for (std::size_t i = 0; i < count; ++i) {
        group.breathers.push_back({std::log(70.0 + 3.0 * static_cast<double>(i)), 0.242});
    }
    return group;
}

RunSetup setup_for(std::size_t count) {
    return {planned_load, runs, 1, std::vector<double>(count, 0.04), {10.0 / 60.0, 1.0, 1000.0}};
}

void per_diver_run(benchmark::State& state, std::size_t divers) {
    state.counters["per_diver_run"] = benchmark::Counter(
        static_cast<double>(state.iterations()) * runs * static_cast<double>(divers),
        benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}

void runs_of_a_group(benchmark::State& state) {
    const auto divers = static_cast<std::size_t>(state.range(0));
    const LogGroup group = group_of(divers);
    const RunSetup setup = setup_for(divers);
    for (auto _ : state) benchmark::DoNotOptimize(run_dives(group, setup));
    per_diver_run(state, divers);
}
BENCHMARK(runs_of_a_group)->Arg(4)->Arg(8)->Unit(benchmark::kMicrosecond);

void runs_written_plainly(benchmark::State& state) {
    const auto divers = static_cast<std::size_t>(state.range(0));
    const LogGroup group = group_of(divers);
    for (auto _ : state) {
        std::mt19937 generator(1);
        std::normal_distribution<double> normal;
        int completed = 0;
        for (int run = 0; run < runs; ++run) {
            const double shared = group.shared_sigma * normal(generator);
            double least = 1e300;
            for (const LogBreather& one : group.breathers) {
                std::lognormal_distribution<double> load(one.ln_load - shared, one.own_sigma);
                least = std::min(least, load(generator));
            }
            if (least >= planned_load) ++completed;
        }
        benchmark::DoNotOptimize(completed);
    }
    per_diver_run(state, divers);
}
BENCHMARK(runs_written_plainly)->Arg(8)->Unit(benchmark::kMicrosecond);

void numbers_of_the_library(benchmark::State& state) {
    for (auto _ : state) {
        boost::random::mt19937_64 generator(1);
        boost::random::normal_distribution<double> normal;
        double sum = 0.0;
        for (int i = 0; i < runs * 9; ++i) sum += normal(generator);
        benchmark::DoNotOptimize(sum);
    }
    per_diver_run(state, 9);
}
BENCHMARK(numbers_of_the_library)->Unit(benchmark::kMicrosecond);

void only_the_numbers(benchmark::State& state) {
    std::array<double, 64> numbers{};
    for (auto _ : state) {
        RandomNumbers random(1);
        for (int i = 0; i < runs * 9 / 64; ++i) {
            random.fill_normal(numbers);
            benchmark::DoNotOptimize(numbers);
        }
    }
    per_diver_run(state, 9);
}
BENCHMARK(only_the_numbers)->Unit(benchmark::kMicrosecond);

/// xoshiro256++ (Blackman & Vigna, ACM TOMS 47 (2021) no. 36; from memory).
struct FourWords {
    std::array<std::uint64_t, 4> s{1, 2, 3, 4};
    std::uint64_t operator()() {
        const auto rotated = [](std::uint64_t x, int k) { return (x << k) | (x >> (64 - k)); };
        const std::uint64_t result = rotated(s[0] + s[3], 23) + s[0];
        const std::uint64_t t = s[1] << 17;
        s[2] ^= s[0];
        s[3] ^= s[1];
        s[1] ^= s[2];
        s[0] ^= s[3];
        s[2] ^= t;
        s[3] = rotated(s[3], 45);
        return result;
    }
};

void machine_limit(benchmark::State& state) {
    const auto divers = static_cast<std::size_t>(state.range(0));
    constexpr std::size_t bins = 4096;
    std::vector<double> table(bins + 1);
    const BreathingSpread unit{LitersPerMinute(1.0), 0.0, 1.0, 1.0, 1.0, 1.0};
    for (std::size_t i = 0; i <= bins; ++i) {
        const double share = (static_cast<double>(i) + 0.5) / (bins + 1.0);
        table[i] = std::log(rmv_quantile(unit, share)->value());
    }
    const LogGroup group = group_of(divers);
    const auto normal = [&](FourWords& words) {
        const std::uint64_t bits = words();
        const std::size_t bin = bits >> 52U;
        const double part = static_cast<double>(bits & 0xffffffffffU) * 0x1p-40;
        return table[bin] + (table[bin + 1] - table[bin]) * part;
    };
    for (auto _ : state) {
        FourWords words;
        double sum = 0.0;
        for (int run = 0; run < runs; ++run) {
            const double shared = group.shared_sigma * normal(words);
            double least = 1e300;
            for (const LogBreather& one : group.breathers) {
                least = std::min(least, one.ln_load - shared - one.own_sigma * normal(words));
            }
            sum += least;
        }
        benchmark::DoNotOptimize(sum);
    }
    per_diver_run(state, divers);
}
BENCHMARK(machine_limit)->Arg(8)->Unit(benchmark::kMicrosecond);

void closed_form(benchmark::State& state) {
    const LogGroup group = group_of(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) {
        benchmark::DoNotOptimize(chance_all_last(group, planned_load));
        for (const double share : {0.1, 0.5, 0.9}) {
            benchmark::DoNotOptimize(first_load_quantile(group, share));
        }
        benchmark::DoNotOptimize(chances_to_be_first(group));
    }
}
BENCHMARK(closed_form)->Arg(4)->Arg(8)->Unit(benchmark::kMicrosecond);

}  // namespace
