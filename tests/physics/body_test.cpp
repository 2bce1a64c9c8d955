// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/body/ears.h"
#include "core/body/lungs.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

double locking_depth() {
    const ClearingLadder ladder =
        must(clearing_ladder(table_sea(), Meters(0.5), Depth(Meters(6.0)), MetersPerMinute(5.0)));
    return ladder.locks_at.meters().value();
}

bool check_threshold(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "locking_mmhg") {
        expect_near(row, eustachian_tube_locking.value() / mmhg);
    } else if (check == "lung_mmhg") {
        expect_near(row, lung_tearing_lowest.value() / mmhg);
    } else if (check == "drum_lowest_kpa") {
        expect_near(row, eardrum_rupture_lowest.value() / 1e3);
    } else if (check == "scarred_lowest_kpa") {
        expect_near(row, scarred_eardrum_rupture_lowest.value() / 1e3);
    } else {
        return false;
    }
    return true;
}

bool check_depth(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "locks_at_m") {
        expect_near(row, locking_depth());
        return true;
    }
    if (check == "locks_at_most_m") {
        expect_at_most(row, locking_depth());
        return true;
    }
    const double input = row.number("input");
    const auto ascent = [input] {
        return held_breath_danger_ascent(table_sea(), Depth(Meters(input))).value();
    };
    if (check == "water_height_of_mmhg") {
        expect_near(row, table_sea().water_height(millimeters_of_mercury(input)).value());
    } else if (check == "water_height_of_kpa") {
        expect_near(row, table_sea().water_height(Pascals(input * 1e3)).value());
    } else if (check == "danger_ascent_m") {
        expect_near(row, ascent());
    } else if (check == "danger_ascent_at_most_m") {
        expect_at_most(row, ascent());
    } else {
        return false;
    }
    return true;
}

class EarsLungs : public RowTest {};

TEST_P(EarsLungs, AgreesWithTheTable) {
    if (!check_threshold(GetParam()) && !check_depth(GetParam())) {
        fail_unknown_check(GetParam());
    }
}

LEADLINE_REFERENCE_TABLE(EarsLungs, "ears_lungs");

}  // namespace
}  // namespace leadline
