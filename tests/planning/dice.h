// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <random>

namespace leadline {

/// What tests draw at random, the same each time for the same seed.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : random_(seed) {}
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random_);
    }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    bool once_in(int times) { return whole(1, times) == 1; }
    /// Mostly within the range, now and then beyond it, rarely no number at all.
    double typed(double low, double high) {
        if (once_in(400)) return std::nan("");
        if (once_in(400)) return 1e308;
        if (once_in(150)) return high + between(0.0, high - low);
        if (once_in(20)) return once_in(2) ? low : high;
        return between(low, high);
    }

private:
    std::mt19937_64 random_;
};

}  // namespace leadline
