// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/planning/briefing.h"
#include "core/planning/random_numbers.h"

namespace leadline {

inline constexpr int signal_choice_count = 4;

/// What a check still tells on a day: signals are forgotten, so that one of another day, or of none,
/// counts as not asked (common practice, no source; the safe side is to ask again).
[[nodiscard]] BriefingCheck check_on(const BriefingCheck& check, const Date& day);

/// The short check of hand signals: each is shown with four captions to choose from, and comes
/// again until it was told right. A plain value; the same seed asks the same.
class SignalCheck {
public:
    /// @param asked  the signals to be told, each once and at least four, in any order
    /// @param seed   of the order of questions and choices
    SignalCheck(std::vector<HandSignal> asked, std::uint64_t seed);

    /// The signal to be told now; none: all are known.
    [[nodiscard]] std::optional<HandSignal> question() const;
    /// What to choose from: the right one and three others of those asked, in random order.
    [[nodiscard]] const std::array<HandSignal, signal_choice_count>& choices() const {
        return choices_;
    }
    /// Takes an answer, and goes on to the next question. A signal told wrong comes again after the
    /// others.
    /// @returns whether it was right; false when there is no question
    bool answer(HandSignal chosen);

    [[nodiscard]] const std::vector<HandSignal>& known() const { return known_; }
    [[nodiscard]] int count() const { return static_cast<int>(asked_.size()); }
    [[nodiscard]] bool done() const { return open_.empty(); }

private:
    void draw_choices();
    void shuffle(std::vector<HandSignal>& of);
    std::vector<HandSignal> asked_;
    std::vector<HandSignal> open_;   ///< still to be told, the present one first
    std::vector<HandSignal> known_;  ///< in the order in which they were told
    std::array<HandSignal, signal_choice_count> choices_{};
    RandomNumbers random_;
};

}  // namespace leadline
