// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/range.h"
#include "core/planning/forecast.h"
#include "core/planning/random_numbers.h"

namespace leadline {
namespace {

constexpr int most_runs = 1'000'000;

/// Values at some ranks of a list, by counting into bins and sorting only the bin that holds the
/// rank: several times as fast as selecting in the whole list.
class RankFinder {
public:
    explicit RankFinder(const std::vector<double>& values) : values_(values), counts_(bins, 0) {
        const auto [least, most] = std::minmax_element(values.begin(), values.end());
        least_ = *least;
        scale_ = *most > *least ? bins / (*most - *least) : 0.0;
        for (const double value : values) ++counts_[bin(value)];
    }
    [[nodiscard]] double at(double share) const {
        auto rank = static_cast<std::size_t>(
            std::lround(share * static_cast<double>(values_.size() - 1)));
        std::size_t wanted = 0;
        while (rank >= counts_[wanted]) rank -= counts_[wanted++];
        std::vector<double> inside;
        for (const double value : values_) {
            if (bin(value) == wanted) inside.push_back(value);
        }
        const auto nth = inside.begin() + static_cast<std::ptrdiff_t>(rank);
        std::nth_element(inside.begin(), nth, inside.end());
        return *nth;
    }

private:
    static constexpr std::size_t bins = 1024;
    [[nodiscard]] std::size_t bin(double value) const {
        return std::min(bins - 1, static_cast<std::size_t>((value - least_) * scale_));
    }
    const std::vector<double>& values_;
    std::vector<std::size_t> counts_;
    double least_ = 0.0;
    double scale_ = 0.0;
};

std::optional<Error> refusal(const LogGroup& group, const RunSetup& setup) {
    const std::size_t count = group.breathers.size();
    if (count < 1 || count > 100) {
        return Error{ErrorCode::bad_count, "breathers", std::to_string(count), "1 to 100"};
    }
    if (setup.load_per_liter.size() != count) {
        return Error{ErrorCode::bad_count, "load_per_liter",
                     std::to_string(setup.load_per_liter.size()), std::to_string(count)};
    }
    if (auto error = outside_range("runs", setup.runs, 1, most_runs, "")) return error;
    if (auto error = outside_range("planned_load", setup.planned_load, 1e-6, 1e6, "bar min")) {
        return error;
    }
    if (auto error = outside_range("shared_sigma", group.shared_sigma, 0.0, 2.0, "")) return error;
    for (const LogBreather& one : group.breathers) {
        if (auto error = outside_range("ln_load", one.ln_load, -60.0, 60.0, "")) return error;
        if (auto error = outside_range("own_sigma", one.own_sigma, 0.01, 2.0, "")) return error;
    }
    for (const double change : setup.load_per_liter) {
        if (auto error = outside_range("load_per_liter", change, 0.0, 1e6, "bar min/L")) {
            return error;
        }
    }
    const FreeFlow& flow = setup.free_flow;
    if (auto error = outside_range("free_flow", flow.liters_per_minute, 0.0, 1e4, "L/min")) {
        return error;
    }
    if (auto error = outside_range("free_flow", flow.least_minutes, 0.0, 60.0, "min")) return error;
    return outside_range("free_flow", flow.most_minutes, flow.least_minutes, 60.0, "min");
}

/// Runs are made in blocks, one guest after the other over the whole block: loops without branches,
/// which the compiler turns into vector instructions.
constexpr std::size_t block = 64;
constexpr std::size_t flow_steps = 64;

/// ln of what is left of a guest's load after each free flow, less the ln of the whole.
using FlowTable = std::array<double, flow_steps>;

std::vector<FlowTable> flow_tables(const LogGroup& group, const RunSetup& setup) {
    std::vector<FlowTable> tables(group.breathers.size());
    const FreeFlow& flow = setup.free_flow;
    for (std::size_t i = 0; i < tables.size(); ++i) {
        const double load = std::exp(group.breathers[i].ln_load);
        for (std::size_t step = 0; step < flow_steps; ++step) {
            const double minutes = flow.least_minutes + (static_cast<double>(step) + 0.5) / flow_steps *
                                                            (flow.most_minutes - flow.least_minutes);
            const double lost = minutes * flow.liters_per_minute * setup.load_per_liter[i];
            // All gone: a load that no dive is short enough for.
            tables[i][step] = lost < load ? std::log1p(-lost / load) : -1e3;
        }
    }
    return tables;
}

/// The runs of one block.
struct Block {
    std::array<double, block> shared{};
    std::array<double, block> least{};       ///< ln load of the first
    std::array<double, block> first{};       ///< index of the first
    std::array<double, block> short_of_air{};///< how many do not last
    std::vector<std::array<double, block>> ln_load;

    explicit Block(std::size_t guests) : ln_load(guests) {}

    void draw(const LogGroup& group, double ln_planned, RandomNumbers& random) {
        random.fill_normal(shared);
        for (double& value : shared) value *= group.shared_sigma;
        least.fill(1e300);
        short_of_air.fill(0.0);
        for (std::size_t i = 0; i < group.breathers.size(); ++i) {
            random.fill_normal(ln_load[i]);
            add_guest(ln_load[i], group.breathers[i], static_cast<double>(i), ln_planned);
        }
    }

private:
    void add_guest(std::array<double, block>& own, const LogBreather& one, double index,
                   double ln_planned) {
        for (std::size_t run = 0; run < block; ++run) {
            const double load = one.ln_load - shared[run] - one.own_sigma * own[run];
            own[run] = load;
            first[run] = load < least[run] ? index : first[run];
            least[run] = load < least[run] ? load : least[run];
            short_of_air[run] += load < ln_planned ? 1.0 : 0.0;
        }
    }
};

/// Counts over the runs.
struct Counts {
    int completed = 0;
    int completed_after_flow = 0;
    std::vector<int> first;
    std::vector<double> ln_loads;  ///< of the first in each run
};

Counts count_runs(const LogGroup& group, const RunSetup& setup) {
    const std::size_t guests = group.breathers.size();
    const double ln_planned = std::log(setup.planned_load);
    const std::vector<FlowTable> tables = flow_tables(group, setup);
    RandomNumbers random(setup.seed);
    Block runs(guests);
    Counts counts;
    counts.first.assign(guests, 0);
    counts.ln_loads.reserve(static_cast<std::size_t>(setup.runs));
    for (int done = 0; done < setup.runs; done += static_cast<int>(block)) {
        runs.draw(group, ln_planned, random);
        const auto now = std::min(block, static_cast<std::size_t>(setup.runs - done));
        for (std::size_t run = 0; run < now; ++run) {
            counts.ln_loads.push_back(runs.least[run]);
            ++counts.first[static_cast<std::size_t>(runs.first[run])];
            counts.completed += runs.short_of_air[run] < 0.5 ? 1 : 0;
            const std::uint64_t bits = random.bits();
            const auto victim = static_cast<std::size_t>(((bits >> 32U) * guests) >> 32U);
            const std::size_t step = bits % flow_steps;
            const double load = runs.ln_load[victim][run];
            const double others = runs.short_of_air[run] - (load < ln_planned ? 1.0 : 0.0);
            const bool lasts = load + tables[victim][step] >= ln_planned;
            counts.completed_after_flow += static_cast<int>(lasts) & static_cast<int>(others < 0.5);
        }
    }
    return counts;
}

}  // namespace

Result<RunSummary> run_dives(const LogGroup& group, const RunSetup& setup) {
    if (const auto error = refusal(group, setup)) return *error;
    const Counts counts = count_runs(group, setup);
    RunSummary summary;
    summary.runs = setup.runs;
    const double runs = setup.runs;
    summary.completes = counts.completed / runs;
    summary.completes_error = std::sqrt(summary.completes * (1.0 - summary.completes) / runs);
    summary.completes_after_free_flow = counts.completed_after_flow / runs;
    const RankFinder ranks(counts.ln_loads);
    summary.early_load = std::exp(ranks.at(0.1));
    summary.middle_load = std::exp(ranks.at(0.5));
    summary.late_load = std::exp(ranks.at(0.9));
    for (const int times : counts.first) summary.first.push_back(times / runs);
    return summary;
}

}  // namespace leadline
