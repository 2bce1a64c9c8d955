// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <list>
#include <utility>
#include <vector>

namespace leadline {

/// Rows of a long list, read a page at a time when one of them is looked at. The pages looked at last
/// are kept; the list may be as long as it likes.
template <typename Item>
class PagedRows {
public:
    static constexpr int page_size = 64;
    static constexpr std::size_t pages_kept = 16;
    /// Reads `count` rows from the row `first` on; fewer where the list has become shorter.
    using Fetch = std::function<std::vector<Item>(int first, int count)>;

    void set_fetch(Fetch fetch) { fetch_ = std::move(fetch); }
    void clear() { pages_.clear(); }

    /// The row; nullptr where it is not there any more. Good until the next call.
    const Item* at(int row) {
        if (row < 0 || !fetch_) return nullptr;
        const std::vector<Item>& items = page(row / page_size);
        const auto place = static_cast<std::size_t>(row % page_size);
        return place < items.size() ? &items[place] : nullptr;
    }

private:
    struct Page {
        int number = 0;
        std::vector<Item> items;
    };

    const std::vector<Item>& page(int number) {
        for (auto found = pages_.begin(); found != pages_.end(); ++found) {
            if (found->number != number) continue;
            pages_.splice(pages_.begin(), pages_, found);
            return pages_.front().items;
        }
        pages_.push_front({number, fetch_(number * page_size, page_size)});
        if (pages_.size() > pages_kept) pages_.pop_back();
        return pages_.front().items;
    }

    Fetch fetch_;
    std::list<Page> pages_;  // the last one looked at first
};

}  // namespace leadline
