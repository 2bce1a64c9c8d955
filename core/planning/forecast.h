// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/body/breathing_spread.h"
#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/planning/ids.h"

namespace leadline {

/// A time as a band: 10, 50 and 90 of 100 dives come to it by then. No value: later than 240 min.
struct TimeBand {
    std::optional<Minutes> early;   ///< 10 %
    std::optional<Minutes> middle;  ///< the median
    std::optional<Minutes> late;    ///< 90 %
};

/// One guest in the forecast: ln of the load until the air is down to a pressure is normal, with
/// mean `ln_load` and the spread of the guest's breathing.
struct LogBreather {
    double ln_load = 0.0;    ///< ln of the load [bar min] for the median RMV, -60 to 60
    double own_sigma = 0.0;  ///< 0.01 to 2
};

/// A group's breathers and what they share.
struct LogGroup {
    std::vector<LogBreather> breathers;  ///< 1 to 100
    double shared_sigma = 0.0;           ///< 0 to 2
};

// In closed form but for one integral over the shared factor, taken by the trapezoidal rule, which
// converges exponentially for such integrands (Trefethen & Weideman, The exponentially convergent
// trapezoidal rule, SIAM Review 56 (2014) 385-458; from memory).

/// Chance that everybody of the group lasts for a load: the survival function of the smallest of the
/// lognormal loads, P = integral phi(s) product Phi((ln_load_i - sigma_s s - ln load) / sigma_i) ds.
/// @source  order statistics of independent variables given s (David & Nagaraja, Order Statistics, 3rd
///          ed. 2003, section 5.2; from memory)
/// @tests   tests/reference/first_of_lognormals.csv (scipy), and the runs below
/// @param load_bar_minutes  0 to 1e6
/// @returns the chance; out_of_range or bad_count naming the input otherwise
Result<double> chance_all_last(const LogGroup& group, double load_bar_minutes);

/// The load [bar min] by which the first of the group is down in `share` of the dives: the inverse of
/// the above by bracketed root finding (boost::math::tools::toms748_solve).
/// @param share  0.001 to 0.999
Result<double> first_load_quantile(const LogGroup& group, double share);

/// Chance that each of the group is the first. The sum is 1; the shared factor cancels.
Result<std::vector<double>> chances_to_be_first(const LogGroup& group);

/// A regulator that free-flows until it is stopped: air lost at a constant rate (the first stage
/// limits it, not the depth) for a time drawn evenly between two bounds.
struct FreeFlow {
    double least_minutes = 0.0;
    double most_minutes = 0.0;
    double liters_per_minute = 0.0;  ///< free air
};

/// Everything the runs need beside the group.
struct RunSetup {
    double planned_load = 0.0;  ///< of the whole planned dive [bar min], above 0
    int runs = 0;               ///< 1 to 1 000 000
    std::uint64_t seed = 0;
    /// One for each breather: by how much the load to the reserve shrinks for each litre of free air
    /// lost, at the median RMV [bar min/L].
    std::vector<double> load_per_liter;
    FreeFlow free_flow;
};

/// What the runs say: a witness of the closed forms, and what has none.
struct RunSummary {
    int runs = 0;
    double completes = 0.0;        ///< share of runs in which all last for the planned load
    double completes_error = 0.0;  ///< standard error of that share
    double early_load = 0.0;       ///< 10 % quantile of the first's load [bar min]
    double middle_load = 0.0;
    double late_load = 0.0;
    std::vector<double> first;     ///< share of runs in which each is the first
    /// Share of runs in which all last although one of them, drawn at random, had a free flow.
    double completes_after_free_flow = 0.0;
};

/// Runs of the dive with random breathing. The same seed gives the same answer every time and however
/// many threads the program has: one source of random numbers, one order of draws. On another machine a
/// run on the very edge may fall to the other side, where its mathematical library rounds otherwise. The time of
/// a free flow is drawn from 64 even steps. See random_numbers.h for the source.
/// @returns the summary; out_of_range or bad_count naming the input otherwise
Result<RunSummary> run_dives(const LogGroup& group, const RunSetup& setup);

/// A guest's air fails at a moment at depth, and guest and instructor go up on the instructor's
/// cylinder.
struct SharedAscent {
    double shared_sigma = 0.0;       ///< 0 to 2
    double instructor_sigma = 0.0;   ///< of the instructor's own ln RMV, 0 to 2
    double stressed_sigma = 0.0;     ///< of the ln RMV of the two, stressed, 0.001 to 2
    double usable_liter_bars = 0.0;  ///< in the instructor's cylinder, as RMV times load; 0 to 1e6
    double instructor_rmv = 0.0;     ///< median [L/min], above 0 to 1000
    double stressed_rmv = 0.0;       ///< median of both together [L/min], above 0 to 1000
    /// Moments of equal chance: load of the dive up to each [bar min], and from there to the surface,
    /// sorting out included (above 0).
    std::vector<double> load_before;
    std::vector<double> load_up;
};

/// Chance that both reach the surface: P(r_i X L_before + r_s Y L_up <= usable), X and Y lognormal,
/// averaged over the moments; one integral, over ln X, by the trapezoidal rule.
/// @returns the chance; out_of_range or bad_count naming the input otherwise
/// @tests   against runs of the same, tests/planning/forecast_test.cpp
Result<double> chance_shared_ascent(const SharedAscent& ascent);

}  // namespace leadline
