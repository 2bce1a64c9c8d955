// SPDX-License-Identifier: GPL-3.0-or-later
// What must never give a guest more air, over many states of the rest.
#include <functional>
#include <random>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

/// A session drawn at random within sensible ranges: the rest of the world around one change.
Session drawn_session(std::mt19937_64& random) {
    const auto draw = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    Session session = sound_scene().session;
    session.site.salinity = PracticalSalinity{draw(0.0, 42.0)};
    session.site.altitude = Altitude(Meters(draw(-400.0, 3000.0)));
    session.site.latitude = Degrees(draw(-80.0, 80.0));
    session.conditions.water_temperature = celsius(draw(-1.0, 34.0));
    const double depth = draw(2.0, 30.0);
    for (const std::size_t corner : {2U, 3U, 4U}) {
        session.profile.points[corner].depth = meters(depth);
    }
    Guest& guest = session.guests.front();
    guest.measured_rmv = LitersPerMinute(draw(6.0, 60.0));
    const auto types = cylinder_types();
    const CylinderType& type = types[static_cast<std::size_t>(draw(0.0, 8.999))];
    guest.kit.cylinder = Cylinder{type.id, Bars(draw(80.0, type.working_pressure.value())),
                                  celsius(draw(-15.0, 60.0))};
    return session;
}

/// Plans both and expects that the second has no more air left, on the gauge and in moles.
void expect_never_more(const Session& before, const Session& after) {
    const RuleBook rules = test_rules();
    const GuestGas first = must(plan(before, rules)).guests.front();
    const GuestGas second = must(plan(after, rules)).guests.front();
    EXPECT_LE(second.left.value(), first.left.value() + 1e-9);
    EXPECT_LE(second.end_pressure.value(), first.end_pressure.value() + 1e-7);
    const double longest = longest_profile.value();
    EXPECT_LE(second.minutes_to_reserve.value_or(longest_profile).value(),
              first.minutes_to_reserve.value_or(Minutes(longest + 1.0)).value() + 1e-7);
}

class GasOrder : public testing::Test {
protected:
    void check_change(const std::function<void(Session&, std::mt19937_64&)>& change) {
        std::mt19937_64 random(20260704);
        for (int i = 0; i < 100; ++i) {
            SCOPED_TRACE(i);
            const Session before = drawn_session(random);
            Session after = before;
            change(after, random);
            expect_never_more(before, after);
            if (testing::Test::HasFailure()) return;
        }
    }
    static double draw(std::mt19937_64& random, double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    }
};

TEST_F(GasOrder, DeeperNeverLeavesMore) {
    check_change([](Session& session, std::mt19937_64& random) {
        const double more = draw(random, 0.01, 20.0);
        for (const std::size_t corner : {2U, 3U, 4U}) {
            auto& depth = session.profile.points[corner].depth;
            depth = meters(depth.meters().value() + more);
        }
    });
}

TEST_F(GasOrder, LongerNeverLeavesMore) {
    check_change([](Session& session, std::mt19937_64& random) {
        const double more = draw(random, 0.01, 60.0);
        for (const std::size_t corner : {4U, 5U}) {
            session.profile.points[corner].time += Minutes(more);
        }
    });
}

TEST_F(GasOrder, ColderWaterNeverLeavesMore) {
    check_change([](Session& session, std::mt19937_64& random) {
        auto& water = session.conditions.water_temperature;
        const double celsius_now = Celsius(water).value();
        water = celsius(draw(random, -2.0, celsius_now));
    });
}

TEST_F(GasOrder, AHeavierBreatherNeverHasMoreLeft) {
    check_change([](Session& session, std::mt19937_64& random) {
        auto& rmv = session.guests.front().measured_rmv;
        rmv = LitersPerMinute(rmv->value() + draw(random, 0.01, 35.0));
    });
}

TEST_F(GasOrder, AWarmerFillOfTheSameReadingNeverLeavesMore) {
    check_change([](Session& session, std::mt19937_64& random) {
        auto& temperature = session.guests.front().kit.cylinder->fill_temperature;
        temperature = celsius(draw(random, Celsius(temperature).value(), 70.0));
    });
}

TEST_F(GasOrder, ALowerFillNeverLeavesMore) {
    check_change([](Session& session, std::mt19937_64& random) {
        auto& fill = session.guests.front().kit.cylinder->fill_pressure;
        fill = Bars(fill.value() * draw(random, 0.0, 1.0));
    });
}

TEST_F(GasOrder, SaltierWaterNeverLeavesMore) {
    check_change([](Session& session, std::mt19937_64& random) {
        auto& salinity = session.site.salinity.value;
        salinity = draw(random, salinity, 42.0);
    });
}

TEST(GasOrderByClass, FollowsHowAGuestBreathes) {
    Scene scene = sound_scene();
    const auto left = [&](BreathingClass breathing) {
        scene.session.guests.front().breathing = breathing;
        return plan_of(scene).guests.front().left.value();
    };
    EXPECT_GT(left(BreathingClass::child), left(BreathingClass::calm));
    EXPECT_GT(left(BreathingClass::calm), left(BreathingClass::average));
    EXPECT_GT(left(BreathingClass::average), left(BreathingClass::nervous));
}

}  // namespace
}  // namespace leadline
