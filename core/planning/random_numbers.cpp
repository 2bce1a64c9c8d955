// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/random_numbers.h"

#include <boost/math/distributions/normal.hpp>

namespace leadline {
namespace {

std::uint64_t splitmix(std::uint64_t& state) {
    state += 0x9e3779b97f4a7c15U;
    std::uint64_t mixed = state;
    mixed = (mixed ^ (mixed >> 30U)) * 0xbf58476d1ce4e5b9U;
    mixed = (mixed ^ (mixed >> 27U)) * 0x94d049bb133111ebU;
    return mixed ^ (mixed >> 31U);
}

double inverse(double share) { return boost::math::quantile(boost::math::normal(), share); }

}  // namespace

RandomNumbers::RandomNumbers(std::uint64_t seed) : table_(&quantiles()) {
    for (std::uint64_t& word : state_) word = splitmix(seed);
}

double RandomNumbers::far_out(std::uint64_t random) {
    // The middle of the smallest step, so that neither 0 nor 1 is met.
    return inverse((static_cast<double>(random >> 12U) + 0.5) * 0x1p-52);
}

const std::array<double, RandomNumbers::shares + 1>& RandomNumbers::quantiles() {
    static const auto table = [] {
        std::array<double, shares + 1> values{};  // the two ends are never read
        for (std::size_t i = 1; i < shares; ++i) {
            values[i] = inverse(static_cast<double>(i) / shares);
        }
        return values;
    }();
    return table;
}

}  // namespace leadline
