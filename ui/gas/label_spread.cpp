// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/label_spread.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>

namespace leadline {
namespace {

/// Non-decreasing values nearest to the given ones.
std::vector<double> isotonic(const std::vector<double>& values) {
    struct Block {
        double sum = 0.0;
        std::size_t count = 0;
        [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<Block> blocks;
    for (const double value : values) {
        blocks.push_back({value, 1});
        while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() > blocks.back().mean()) {
            const Block last = blocks.back();
            blocks.pop_back();
            blocks.back().sum += last.sum;
            blocks.back().count += last.count;
        }
    }
    std::vector<double> result;
    result.reserve(values.size());
    for (const Block& block : blocks) result.insert(result.end(), block.count, block.mean());
    return result;
}

}  // namespace

std::vector<std::optional<double>> spread_labels(const std::vector<WantedLabel>& wanted,
                                                 double height, double top, double bottom) {
    std::vector<std::size_t> kept(wanted.size());
    std::iota(kept.begin(), kept.end(), std::size_t{0});
    const double room = std::floor(std::max(0.0, bottom - top) / height + 1e-9);
    std::stable_sort(kept.begin(), kept.end(), [&](std::size_t a, std::size_t b) {
        return wanted[a].rank < wanted[b].rank;
    });
    if (static_cast<double>(kept.size()) > room) kept.resize(static_cast<std::size_t>(room));
    std::stable_sort(kept.begin(), kept.end(), [&](std::size_t a, std::size_t b) {
        return wanted[a].center < wanted[b].center;
    });
    // Taking i heights off the i-th turns "at least one height apart" into "non-decreasing".
    std::vector<double> lowered;
    lowered.reserve(kept.size());
    for (std::size_t i = 0; i < kept.size(); ++i) {
        lowered.push_back(wanted[kept[i]].center - static_cast<double>(i) * height);
    }
    const std::vector<double> placed = isotonic(lowered);
    const double least = top + height / 2.0;
    const double most =
        bottom - height / 2.0 - (static_cast<double>(kept.size()) - 1.0) * height;
    std::vector<std::optional<double>> result(wanted.size());
    for (std::size_t i = 0; i < kept.size(); ++i) {
        const double held = std::clamp(placed[i], least, std::max(least, most));
        result[kept[i]] = held + static_cast<double>(i) * height;
    }
    return result;
}

}  // namespace leadline
