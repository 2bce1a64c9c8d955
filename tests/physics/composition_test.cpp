// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/composition.h"

#include <limits>

#include "tests/physics/support.h"

namespace leadline {
namespace {

Kilograms mass_of(const ReferenceRow& row) { return Kilograms(row.number("mass_kg")); }
Meters height_of(const ReferenceRow& row) { return Meters(row.number("height_cm") / 100.0); }
int age_of(const ReferenceRow& row) { return static_cast<int>(row.number("age")); }

bool check_fat(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (!check.starts_with("fat_")) return false;
    const Band fat = must(fat_fraction(mass_of(row), height_of(row), age_of(row)));
    if (check == "fat_band_holds") {
        EXPECT_LT(fat.low, row.number("expected")) << row;
        EXPECT_GT(fat.high, row.number("expected")) << row;
        return true;
    }
    expect_near(row, check == "fat_low" ? fat.low : check == "fat_high" ? fat.high : fat.middle);
    return true;
}

bool check_lungs(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (!check.starts_with("lungs_")) return false;
    const Band gas = must(half_full_lungs_liters(height_of(row), age_of(row)));
    expect_near(row, check == "lungs_low"    ? gas.low
                     : check == "lungs_high" ? gas.high
                                             : gas.middle);
    return true;
}

class Composition : public RowTest {};

TEST_P(Composition, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    if (check_fat(row) || check_lungs(row)) return;
    if (row.text("check") == "surface") {
        expect_near(row, must(body_surface(mass_of(row), height_of(row))).value());
    } else if (row.text("check") == "tissue_density") {
        expect_near(row, must(tissue_density(row.number("fat"))).value());
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(Composition, "composition");

TEST(CompositionRange, IsRefusedOutsideByName) {
    const auto place = [](const auto& result) {
        EXPECT_FALSE(result);
        return result ? std::string() : result.error().place;
    };
    for (const double bad : {14.9, 250.1, -1.0, not_a_number, infinite}) {
        EXPECT_EQ(place(body_surface(Kilograms(bad), Meters(1.7))), "body mass") << bad;
        EXPECT_EQ(place(fat_fraction(Kilograms(bad), Meters(1.7), 30)), "body mass") << bad;
    }
    for (const double bad : {0.79, 2.51, not_a_number, infinite}) {
        EXPECT_EQ(place(body_mass_index(Kilograms(70.0), Meters(bad))), "body height") << bad;
        EXPECT_EQ(place(half_full_lungs_liters(Meters(bad), 30)), "body height") << bad;
    }
    EXPECT_EQ(place(half_full_lungs_liters(Meters(1.29), 16)), "body height");
    EXPECT_TRUE(half_full_lungs_liters(Meters(1.29), 15));
    for (const int age : {4, 91, -1}) {
        EXPECT_EQ(place(fat_fraction(Kilograms(70.0), Meters(1.7), age)), "age");
        EXPECT_EQ(place(half_full_lungs_liters(Meters(1.7), age)), "age");
    }
    EXPECT_EQ(place(fat_fraction(Kilograms(31.0), Meters(1.7), 30)), "body mass index");
    EXPECT_EQ(place(fat_fraction(Kilograms(140.0), Meters(1.7), 30)), "body mass index");
    EXPECT_EQ(place(fat_fraction(Kilograms(129.0), Meters(1.7), 90)), "body fat");
    for (const double bad : {-0.01, 0.71, not_a_number}) {
        EXPECT_EQ(place(tissue_density(bad)), "body fat");
    }
}

TEST(CompositionBands, AreOrderedAndWithinALivingBody) {
    int known = 0;
    for (double mass = 15.0; mass <= 250.0; mass += 5.0) {
        for (double height = 0.8; height <= 2.5; height += 0.05) {
            for (const int age : {5, 10, 15, 16, 35, 60, 90}) {
                const Result<Band> fat = fat_fraction(Kilograms(mass), Meters(height), age);
                if (!fat) continue;
                ++known;
                EXPECT_LT(fat->low, fat->middle);
                EXPECT_LT(fat->middle, fat->high);
                EXPECT_GE(fat->low, 0.03);
                EXPECT_LE(fat->high, 0.60);
                EXPECT_GT(must(tissue_density(fat->low)), must(tissue_density(fat->high)));
            }
        }
    }
    EXPECT_GT(known, 1000);
    for (double height = 1.3; height <= 2.5; height += 0.1) {
        const Band gas = must(half_full_lungs_liters(Meters(height), 40));
        EXPECT_GT(gas.low, 0.5);
        EXPECT_LT(gas.low, gas.middle);
        EXPECT_LT(gas.middle, gas.high);
    }
}

}  // namespace
}  // namespace leadline
