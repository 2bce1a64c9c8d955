// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>

#include "core/files/rule_file.h"
#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "core/planning/plan.h"

// What one keystroke costs: the whole plan of a session, all rule sets at hand.
//
//   cmake --preset release -DLEADLINE_BENCH=ON && cmake --build --preset release
//   build/release/tests/bench/leadline_bench

namespace {

using namespace leadline;

std::string read(const std::string& path) {
    return read_text_file(std::string(LEADLINE_SOURCE_DIR) + "/" + path).value_or("");
}

Session sample(const std::string& name) {
    const auto file = read_session(read("sample-sessions/" + name + ".json"),
                                   read("resources/schema/session.schema.json"));
    if (!file) std::abort();
    return file->session;
}

RuleBook rules() {
    RuleBook book;
    const std::string schema = read("resources/schema/rules.schema.json");
    for (const auto& entry : std::filesystem::directory_iterator(
             std::string(LEADLINE_SOURCE_DIR) + "/resources/rules")) {
        if (entry.path().extension() != ".json") continue;
        const auto set = read_rule_set(read_text_file(entry.path()).value_or(""), schema);
        if (!set) std::abort();
        book.sets.push_back(*set);
    }
    return book;
}

void plan_of_four(benchmark::State& state) {
    const Session session = sample("salt-cove");
    const RuleBook book = rules();
    for (auto _ : state) benchmark::DoNotOptimize(plan(session, book));
}
BENCHMARK(plan_of_four)->Unit(benchmark::kMicrosecond);

void plan_of_eight(benchmark::State& state) {
    const Session session = sample("harbour-morning");
    const RuleBook book = rules();
    for (auto _ : state) benchmark::DoNotOptimize(plan(session, book));
}
BENCHMARK(plan_of_eight)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
