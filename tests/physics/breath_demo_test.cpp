// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/breath_demo.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/body/balloon.h"
#include "core/body/ear_trial.h"
#include "core/body/lungs.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr double mmhg = 133.322387415;

/// Sea that weighs one atmosphere in 33 feet, under a surface pressure.
WaterColumn handbook_sea_under(double surface_mbar) {
    const WaterColumn sea = handbook_sea();
    return make_column(Pascals(surface_mbar * 100.0), sea.gravity(), sea.salinity(),
                       sea.temperature());
}

class BreathDemoTable : public RowTest {};
TEST_P(BreathDemoTable, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const std::string& check = row.text("check");
    if (check == "pain_mmhg") return expect_near(row, ear_pain_usual.value() / mmhg);
    if (check == "pain_above_mmhg") {
        EXPECT_GT(ear_pain_usual.value() / mmhg, row.number("expected"));
        return;
    }
    const Depth depth(Meters(row.number("depth_m")));
    const Result<BreathDemo> demo =
        breath_demo(handbook_sea_under(row.number("surface_mbar")), depth);
    if (depth > Depth(Meters(60.0))) {
        ASSERT_FALSE(demo);
        EXPECT_EQ(demo.error().code, ErrorCode::out_of_range);
        EXPECT_EQ(demo.error().place, "depth");
        return;
    }
    ASSERT_TRUE(demo);
    if (check == "balloon_volume") {
        expect_near(row, demo->balloon_volume);
    } else if (check == "balloon_width") {
        expect_near(row, demo->balloon_width);
    } else if (check == "pressure_ratio") {
        expect_near(row, demo->pressure_ratio);
    } else if (check == "growth") {
        expect_near(row, demo->held_breath_growth);
    } else {
        fail_unknown_check(row);
    }
}
LEADLINE_REFERENCE_TABLE(BreathDemoTable, "breath_demo");

/// The rows of the gas laws that a tied balloon and a held breath follow.
ReferenceTable boyle_rows() {
    ReferenceTable rows = load_reference("gas_laws");
    std::erase_if(rows, [](const ReferenceRow& row) {
        return row.text("check") != "expansion" && row.text("check") != "bell_volume_ft3";
    });
    return rows;
}

class BreathDemoGasLaws : public RowTest {};
TEST_P(BreathDemoGasLaws, FollowsTheHandbook) {
    const ReferenceRow& row = GetParam();
    const Depth depth(Meters(row.number("depth_fsw") * 0.3048));
    const BreathDemo demo = must(breath_demo(handbook_sea(), depth));
    expect_near(row, row.text("check") == "expansion"
                         ? demo.held_breath_growth
                         : demo.balloon_volume * row.number("volume_ft3"));
}
INSTANTIATE_TEST_SUITE_P(reference, BreathDemoGasLaws, testing::ValuesIn(boyle_rows()), row_name);

TEST(BreathDemo, AtTheSurfaceNothingHasChanged) {
    const BreathDemo demo = must(breath_demo(sea(18.0), Depth()));
    EXPECT_DOUBLE_EQ(demo.pressure_ratio, 1.0);
    EXPECT_DOUBLE_EQ(demo.balloon_volume, 1.0);
    EXPECT_DOUBLE_EQ(demo.balloon_width, 1.0);
    EXPECT_DOUBLE_EQ(demo.held_breath_growth, 1.0);
    EXPECT_DOUBLE_EQ(demo.uncleared.value(), 0.0);
    EXPECT_FALSE(demo.danger_ascent);
}

TEST(BreathDemo, VolumeTimesPressureStaysTheSame) {
    const WaterColumn water = sea(18.0);
    double before = 2.0;
    for (int decimeters = 0; decimeters <= 600; ++decimeters) {
        const BreathDemo demo = must(breath_demo(water, Depth(Meters(decimeters / 10.0))));
        EXPECT_NEAR(demo.balloon_volume * demo.pressure.value(), water.surface_pressure().value(),
                    1e-6);
        EXPECT_NEAR(std::pow(demo.balloon_width, 3.0), demo.balloon_volume, 1e-12);
        EXPECT_NEAR(demo.balloon_volume * demo.held_breath_growth, 1.0, 1e-12);
        // All of the water above, none of the air.
        EXPECT_NEAR(demo.uncleared.value(),
                    demo.pressure.value() - water.surface_pressure().value(), 1e-6);
        EXPECT_LT(demo.balloon_volume, before);
        before = demo.balloon_volume;
    }
}

TEST(BreathDemo, NamesTheAscentThatCanTearALungOnlyWhereThereIsOne) {
    const WaterColumn water = sea(18.0);
    EXPECT_FALSE(must(breath_demo(water, Depth(Meters(0.9)))).danger_ascent);
    const BreathDemo demo = must(breath_demo(water, Depth(Meters(6.0))));
    ASSERT_TRUE(demo.danger_ascent);
    EXPECT_DOUBLE_EQ(demo.danger_ascent->value(),
                     held_breath_danger_ascent(water, Depth(Meters(6.0))).value());
    EXPECT_LT(demo.danger_ascent->value(), 0.95);
}

TEST(BreathDemo, RefusesADepthThatIsNone) {
    for (const double depth : {-0.1, 60.1, std::nan("")}) {
        EXPECT_FALSE(breath_demo(sea(18.0), Depth(Meters(depth)))) << depth;
    }
}

TEST(BreathDemo, TellsTheBalloonsOwnFigures) {
    const WaterColumn water = handbook_sea();
    for (const double deepest : {6.0, 12.0, 40.0}) {
        for (const BalloonAt& balloon : must(balloon_at_depths(water, Depth(Meters(deepest))))) {
            const BreathDemo demo = must(breath_demo(water, balloon.depth));
            EXPECT_EQ(demo.pressure.value(), balloon.pressure.value());
            EXPECT_EQ(demo.balloon_volume, balloon.shrinks_to);
            EXPECT_EQ(demo.held_breath_growth, balloon.swells_to);
        }
    }
}

}  // namespace
}  // namespace leadline
