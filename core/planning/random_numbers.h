// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <span>

namespace leadline {

/// Random numbers in a fixed order for a seed. The bits are the same on every machine; the normal
/// numbers too, but for the last digits that mathematical libraries differ in, as the table is made
/// with one.
///
/// Own code because it is what the forecast spends its time on: Boost.Random's fastest generator and
/// ziggurat take three times as long (tests/bench/forecast_bench.cpp).
///
/// @source  generator xoshiro256++, seeded by splitmix64: Blackman & Vigna, Scrambled linear
///          pseudorandom number generators, ACM TOMS 47 (2021) no. 36 (from memory)
/// @tests   against the normal distribution, tests/planning/random_numbers_test.cpp
class RandomNumbers {
public:
    explicit RandomNumbers(std::uint64_t seed);

    /// 64 random bits.
    std::uint64_t bits() {
        const std::uint64_t result = rotated(state_[0] + state_[3], 23) + state_[0];
        const std::uint64_t shifted = state_[1] << 17U;
        state_[2] ^= state_[0];
        state_[3] ^= state_[1];
        state_[1] ^= state_[2];
        state_[0] ^= state_[3];
        state_[2] ^= shifted;
        state_[3] = rotated(state_[3], 45);
        return result;
    }

    /// A standard normal number by the inverse of its distribution: a table of 4096 equal shares, a
    /// straight line within each; in the 16 outermost of each side, the exact inverse. The line is
    /// within 0.0002 of the inverse.
    double normal() {
        const std::uint64_t random = bits();
        const auto share = static_cast<std::size_t>(random >> 52U);
        if (share - outermost >= shares - 2 * outermost) return far_out(random);
        const double within = static_cast<double>(random & 0xfffffffffffU) * 0x1p-44;
        const std::array<double, shares + 1>& table = *table_;
        return table[share] + (table[share + 1] - table[share]) * within;
    }

    void fill_normal(std::span<double> numbers) {
        for (double& number : numbers) number = normal();
    }

private:
    static constexpr std::size_t shares = 4096;
    static constexpr std::size_t outermost = 16;

    static std::uint64_t rotated(std::uint64_t bits, int by) {
        return (bits << by) | (bits >> (64 - by));
    }
    static double far_out(std::uint64_t random);
    static const std::array<double, shares + 1>& quantiles();

    std::array<std::uint64_t, 4> state_{};
    const std::array<double, shares + 1>* table_;
};

}  // namespace leadline
