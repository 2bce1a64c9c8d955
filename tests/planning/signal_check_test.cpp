// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/signal_check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace leadline {
namespace {

using Choices = std::set<HandSignal>;

Choices choices_of(const SignalCheck& check) {
    return {check.choices().begin(), check.choices().end()};
}

HandSignal wrong_choice(const SignalCheck& check) {
    return *std::find_if(check.choices().begin(), check.choices().end(),
                         [&](HandSignal choice) { return choice != check.question(); });
}

TEST(CheckOn, CountsOnItsOwnDayOnly) {
    const Date day{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(4)};
    const Date next{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(5)};
    BriefingCheck check;
    set_understood(check, HandSignal::up, true);
    set_understood(check, HandSignal::ok, true);
    set_understood(check, HandSignal::up, true);
    EXPECT_EQ(check.understood, (std::vector<HandSignal>{HandSignal::ok, HandSignal::up}));
    EXPECT_EQ(check_on(check, day), BriefingCheck{}) << "of no day: ask again";
    check.checked_on = day;
    EXPECT_EQ(check_on(check, day), check);
    EXPECT_EQ(check_on(check, next), BriefingCheck{});
}

TEST(SignalCheck, OffersTheRightOneAmongFourDifferent) {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        SignalCheck check(signals_to_know(), seed);
        while (!check.done()) {
            const Choices choices = choices_of(check);
            EXPECT_EQ(choices.size(), 4U);
            EXPECT_TRUE(choices.contains(*check.question()));
            EXPECT_TRUE(check.answer(*check.question()));
        }
    }
}

TEST(SignalCheck, EndsWhenEachWasToldRight) {
    SignalCheck check(signals_to_know(), 1);
    EXPECT_EQ(check.count(), static_cast<int>(signals_to_know().size()));
    int questions = 0;
    for (; !check.done(); ++questions) check.answer(*check.question());
    EXPECT_EQ(questions, check.count());
    EXPECT_EQ(std::set<HandSignal>(check.known().begin(), check.known().end()).size(),
              signals_to_know().size());
    EXPECT_FALSE(check.question());
    EXPECT_FALSE(check.answer(HandSignal::ok));
}

TEST(SignalCheck, AsksAgainUntilToldRight) {
    SignalCheck check(signals_to_know(), 7);
    const HandSignal missed = *check.question();
    EXPECT_FALSE(check.answer(wrong_choice(check)));
    EXPECT_NE(check.question(), missed);
    for (int k = 1; k < check.count(); ++k) {
        EXPECT_NE(check.question(), missed) << "before the others";
        check.answer(*check.question());
    }
    // The last one left comes again and again.
    for (int k = 0; k < 3; ++k) {
        ASSERT_EQ(check.question(), missed);
        EXPECT_FALSE(check.answer(wrong_choice(check)));
    }
    EXPECT_TRUE(check.answer(missed));
    EXPECT_TRUE(check.done());
}

TEST(SignalCheck, TheSameSeedAsksTheSameAndAnotherAnother) {
    const auto order = [](std::uint64_t seed) {
        SignalCheck check(signals_to_know(), seed);
        while (!check.done()) check.answer(*check.question());
        return check.known();
    };
    EXPECT_EQ(order(3), order(3));
    std::set<std::vector<HandSignal>> orders;
    for (std::uint64_t seed = 0; seed < 20; ++seed) orders.insert(order(seed));
    EXPECT_GT(orders.size(), 15U);
}

TEST(SignalCheck, EveryOtherStandsBesideTheRightOneAtTimes) {
    std::map<HandSignal, Choices> seen;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        const SignalCheck check(signals_to_know(), seed);
        seen[*check.question()].merge(choices_of(check));
    }
    EXPECT_EQ(seen.size(), signals_to_know().size());
    for (const auto& [question, choices] : seen) {
        EXPECT_EQ(choices.size(), signals_to_know().size()) << static_cast<int>(question);
    }
}

TEST(SignalCheck, TheRightOneStandsInEveryPlace) {
    std::array<int, signal_choice_count> places{};
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        const SignalCheck check(signals_to_know(), seed);
        const auto place =
            std::find(check.choices().begin(), check.choices().end(), *check.question());
        ++places.at(static_cast<std::size_t>(place - check.choices().begin()));
    }
    // 400 throws of a fair die with four sides: 100 each, 60 is 4.6 standard errors away.
    for (const int count : places) EXPECT_GT(count, 60);
}

}  // namespace
}  // namespace leadline
