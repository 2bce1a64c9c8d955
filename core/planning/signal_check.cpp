// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/signal_check.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace leadline {

BriefingCheck check_on(const BriefingCheck& check, const Date& day) {
    return check.checked_on == day ? check : BriefingCheck{};
}

SignalCheck::SignalCheck(std::vector<HandSignal> asked, std::uint64_t seed)
    : asked_(std::move(asked)), open_(asked_), random_(seed) {
    shuffle(open_);
    draw_choices();
}

void SignalCheck::shuffle(std::vector<HandSignal>& of) {
    for (std::size_t left = of.size(); left > 1; --left) {
        std::swap(of[left - 1], of[static_cast<std::size_t>(random_.bits() % left)]);
    }
}

std::optional<HandSignal> SignalCheck::question() const {
    return open_.empty() ? std::nullopt : std::optional<HandSignal>(open_.front());
}

void SignalCheck::draw_choices() {
    if (open_.empty()) return;
    std::vector<HandSignal> others = asked_;
    std::erase(others, open_.front());
    shuffle(others);
    std::vector<HandSignal> drawn{open_.front()};
    for (std::size_t k = 0; k < others.size() && drawn.size() < choices_.size(); ++k) {
        drawn.push_back(others[k]);
    }
    shuffle(drawn);
    std::copy(drawn.begin(), drawn.end(), choices_.begin());
}

bool SignalCheck::answer(HandSignal chosen) {
    if (open_.empty()) return false;
    const HandSignal asked = open_.front();
    open_.erase(open_.begin());
    const bool right = chosen == asked;
    if (right) {
        known_.push_back(asked);
    } else {
        open_.push_back(asked);
    }
    draw_choices();
    return right;
}

}  // namespace leadline
