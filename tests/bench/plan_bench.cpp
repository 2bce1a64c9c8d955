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

/// The house plan's measure: everything new after a keystroke for a group of eight, 20 000 runs of the
/// forecast included.
void plan_of_one_group_of_eight(benchmark::State& state) {
    Session session = sample("harbour-morning");
    for (Guest& guest : session.guests) guest.group = session.groups.front().id;
    const RuleBook book = rules();
    for (auto _ : state) benchmark::DoNotOptimize(plan(session, book));
}
BENCHMARK(plan_of_one_group_of_eight)->Unit(benchmark::kMicrosecond);

/// The same without the runs: what the closed forms and the rest cost.
void plan_of_one_group_of_eight_without_runs(benchmark::State& state) {
    Session session = sample("harbour-morning");
    for (Guest& guest : session.guests) guest.group = session.groups.front().id;
    const RuleBook book = rules();
    for (auto _ : state) benchmark::DoNotOptimize(plan(session, book, 1));
}
BENCHMARK(plan_of_one_group_of_eight_without_runs)->Unit(benchmark::kMicrosecond);

/// Forty guests in five groups: a day at a big centre.
void plan_of_forty(benchmark::State& state) {
    Session session = sample("harbour-morning");
    const std::vector<Guest> eight = session.guests;
    session.guests.clear();
    for (int group = 0; group < 5; ++group) {
        const GroupId id("bench-" + std::to_string(group));
        session.groups.push_back(Group{id, "Bench", session.staff.front().id, {}});
        for (Guest guest : eight) {
            guest.id = next_guest_id(session);
            guest.group = id;
            session.guests.push_back(guest);
        }
    }
    const RuleBook book = rules();
    if (!plan(session, book)) std::abort();
    for (auto _ : state) benchmark::DoNotOptimize(plan(session, book));
}
BENCHMARK(plan_of_forty)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
