// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/balloon.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/body/lungs.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

/// The rows of the handbook's gas laws that say how much air swells from a depth.
TEST(Balloon, SwellsAndShrinksAsTheHandbookSays) {
    int rows = 0;
    for (const ReferenceRow& row : load_reference("gas_laws")) {
        if (row.text("check") != "expansion") continue;
        ++rows;
        const Depth depth{Feet(row.number("depth_fsw"))};
        const BalloonAt deepest = must(balloon_at_depths(handbook_sea(), depth)).back();
        expect_near(row, deepest.swells_to);
        expect_near(row, 1.0 / deepest.shrinks_to);
        expect_near(row, deepest.taken_up / shown_balloon);
        expect_near(row, shown_balloon / deepest.taken_down);
    }
    EXPECT_GE(rows, 3);
}

std::vector<double> depths(double deepest) {
    std::vector<double> found;
    const auto balloons = must(balloon_at_depths(handbook_sea(), Depth(Meters(deepest))));
    for (const BalloonAt& balloon : balloons) {
        found.push_back(balloon.depth.meters().value());
    }
    return found;
}

TEST(Balloon, StandsAtTheDepthsShownAndTheDeepest) {
    EXPECT_EQ(depths(8.0), (std::vector<double>{0.0, 5.0, 8.0, 10.0}));
    EXPECT_EQ(depths(12.0), (std::vector<double>{0.0, 5.0, 10.0, 12.0}));
    EXPECT_EQ(depths(5.2), (std::vector<double>{0.0, 5.2, 10.0}));
    EXPECT_EQ(depths(0.3), (std::vector<double>{0.0, 5.0, 10.0}));
    EXPECT_EQ(depths(60.0), (std::vector<double>{0.0, 5.0, 10.0, 60.0}));
}

TEST(Balloon, RefusesADepthThatIsNone) {
    EXPECT_TRUE(balloon_at_depths(handbook_sea(), Depth(Meters(0.0))));
    for (const double deepest :
         {-0.1, 60.1, std::nan(""), std::numeric_limits<double>::infinity()}) {
        const auto refused = balloon_at_depths(handbook_sea(), Depth(Meters(deepest)));
        ASSERT_FALSE(refused) << deepest;
        EXPECT_EQ(refused.error().code, ErrorCode::out_of_range);
        EXPECT_EQ(refused.error().place, "deepest");
        EXPECT_EQ(refused.error().allowed, "0 to 60 m");
    }
}

TEST(Balloon, AtTheSurfaceIsAsItWasFilled) {
    const BalloonAt top = must(balloon_at_depths(handbook_sea(), Depth(Meters(8.0)))).front();
    EXPECT_EQ(top.shrinks_to, 1.0);
    EXPECT_EQ(top.swells_to, 1.0);
    EXPECT_EQ(top.taken_down.value(), shown_balloon.value());
}

TEST(Balloon, AgreesWithTheHeldBreath) {
    for (const double depth : {1.0, 5.0, 17.0, 40.0}) {
        for (const BalloonAt& one :
             must(balloon_at_depths(handbook_sea(), Depth(Meters(depth))))) {
            EXPECT_EQ(one.swells_to, held_breath_expansion(handbook_sea(), one.depth));
            EXPECT_EQ(one.pressure.value(),
                      handbook_sea().absolute_pressure(one.depth).value());
        }
    }
}

}  // namespace
}  // namespace leadline
