// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/suit.h"

#include <limits>

#include "core/body/warmth.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr double sea_density = 1025.0;  // kg/m3
const Pascals surface{atmosphere_pa};

/// Sea water as the depths in the table are meant: 10 m a bar would be a little more.
Pascals pressure_of(const ReferenceRow& row) {
    return Pascals(atmosphere_pa + sea_density * 9.80665 * row.number("depth_m"));
}

bool check_foam(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (!row.has("depth_m")) return false;
    const FoamState made = must(squeezed_foam(foam_density, surface));
    const FoamState deep = must(squeezed_foam(foam_density, pressure_of(row)));
    const double conducts = deep.conductivity / made.conductivity;
    if (check == "conductivity") {
        expect_near(row, deep.conductivity);
    } else if (check == "thickness_ratio") {
        expect_near(row, deep.thickness_ratio);
    } else if (check == "conductivity_ratio") {
        expect_near(row, conducts);
    } else if (check == "loss_ratio") {
        expect_near(row, conducts / deep.thickness_ratio);
    } else {
        return false;
    }
    return true;
}

bool check_worn(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (!row.has("thickness_mm")) return false;
    const Suit suit{row.number("thickness_mm")};
    const Pascals pressure = pressure_of(row);
    const double outer = must(outer_insulation(suit, usual_fit, pressure));
    if (check == "bare_insulation") {
        expect_near(row, must(suit_insulation(suit, 1.0, pressure)));
    } else if (check == "outer_insulation") {
        expect_near(row, outer);
    } else if (check == "outer_clo") {
        expect_near(row, outer / square_meter_kelvins_per_watt_of_clo);
    } else if (check == "lift") {
        const SuitBulk bulk = must(
            suit_bulk(suit, SquareMeters(row.number("surface_m2")), foam_density, pressure));
        expect_near(row, bulk.volume.value() / 1e3 * sea_density - bulk.mass.value());
    } else {
        return false;
    }
    return true;
}

class WetSuit : public RowTest {};

TEST_P(WetSuit, AgreesWithTheTable) {
    if (check_foam(GetParam()) || check_worn(GetParam())) return;
    if (GetParam().text("check") == "coverage") {
        expect_near(GetParam(), suit_coverage(Suit{5.0}));
    } else {
        fail_unknown_check(GetParam());
    }
}

LEADLINE_REFERENCE_TABLE(WetSuit, "suit");

TEST(SuitLabel, IsReadForThicknessHoodAndCut) {
    EXPECT_EQ(read_suit_label("5 mm M"), (Suit{5.0, false, false}));
    EXPECT_EQ(read_suit_label("3mm shorty L"), (Suit{3.0, false, true}));
    EXPECT_EQ(read_suit_label("7 mm hood"), (Suit{7.0, true, false}));
    EXPECT_EQ(read_suit_label("XL 7MM + HOOD"), (Suit{7.0, true, false}));
    EXPECT_EQ(read_suit_label("2,5 mm"), (Suit{2.5, false, false}));
    EXPECT_EQ(read_suit_label("6.5 mm semi-dry L"), (Suit{6.5, false, false}));
    EXPECT_EQ(read_suit_label("M 5mm no hood"), (Suit{5.0, false, false}));
}

TEST(SuitLabel, OfSeveralThicknessesTheThinnestCounts) {
    EXPECT_EQ(read_suit_label("5/3 mm M"), (Suit{3.0, false, false}));
    EXPECT_EQ(read_suit_label("6 / 5 / 4mm"), (Suit{4.0, false, false}));
    EXPECT_EQ(read_suit_label("3/5 mm"), (Suit{3.0, false, false}));
}

TEST(SuitLabel, WithoutAKnownThicknessIsNotASuit) {
    for (const char* label : {"", "M", "mm", "5", "5 m", "lycra", "0 mm", "0.4 mm", "11 mm",
                              "70 mm", "dry suit 4 mm", "trilaminate", "-mm", "5/ mm", "/5x mm",
                              "99999999999 mm", ". mm", "5..mm"}) {
        EXPECT_EQ(read_suit_label(label), std::nullopt) << label;
    }
}

TEST(SuitUnderPressure, IsThinnerAndConductsMoreTheDeeperItIs) {
    double thickness = 1.1;
    double conductivity = 0.0;
    double insulation = 1.0;
    for (double bar = 1.1; bar < 9.9; bar += 0.2) {
        const FoamState foam = must(squeezed_foam(foam_density, Pascals(bar * 1e5)));
        EXPECT_LT(foam.thickness_ratio, thickness);
        EXPECT_GT(foam.conductivity, conductivity);
        const double worn = must(suit_insulation(Suit{5.0}, usual_fit, Pascals(bar * 1e5)));
        EXPECT_LT(worn, insulation);
        thickness = foam.thickness_ratio;
        conductivity = foam.conductivity;
        insulation = worn;
    }
    // Never less than its rubber.
    EXPECT_GT(thickness, foam_density.value() / 1230.0);
    EXPECT_LT(conductivity, 0.19);
}

TEST(SuitUnderPressure, IsTakenAsMadeOnAMountain) {
    const FoamState made = must(squeezed_foam(foam_density, surface));
    EXPECT_EQ(made.thickness_ratio, 1.0);
    EXPECT_EQ(must(squeezed_foam(foam_density, Pascals(60e3))).thickness_ratio, 1.0);
}

TEST(SuitWorn, WarmsMoreThickerFittingOrWhole) {
    const auto worn = [](const Suit& suit, double fit) {
        return must(outer_insulation(suit, fit, Pascals(1.8e5)));
    };
    for (double mm = 0.5; mm < 9.5; mm += 0.5) {
        EXPECT_GT(worn({mm + 0.5}, usual_fit), worn({mm}, usual_fit));
        EXPECT_GT(worn({mm}, good_fit), worn({mm}, usual_fit));
        EXPECT_GT(worn({mm}, usual_fit), worn({mm}, poor_fit));
        EXPECT_GT(worn({mm, true}, usual_fit), worn({mm}, usual_fit));
        EXPECT_GT(worn({mm}, usual_fit), worn({mm, false, true}, usual_fit));
    }
}

TEST(SuitRange, IsRefusedOutsideByName) {
    const auto place = [](const auto& result) {
        EXPECT_FALSE(result);
        return result ? std::string() : result.error().place;
    };
    for (const double bad : {-0.1, 10.1, not_a_number, infinite}) {
        EXPECT_EQ(place(suit_insulation(Suit{bad}, 0.75, surface)), "suit thickness");
        EXPECT_EQ(place(suit_bulk(Suit{bad}, SquareMeters(1.8), foam_density, surface)),
                  "suit thickness");
    }
    for (const double bad : {0.29, 1.01, not_a_number}) {
        EXPECT_EQ(place(suit_insulation(Suit{5.0}, bad, surface)), "fit of the suit");
    }
    for (const double bad : {39e3, 1.01e6, not_a_number, infinite}) {
        EXPECT_EQ(place(squeezed_foam(foam_density, Pascals(bad))), "pressure");
        EXPECT_EQ(place(outer_insulation(Suit{5.0}, 0.75, Pascals(bad))), "pressure");
    }
    for (const double bad : {119.0, 301.0, not_a_number}) {
        EXPECT_EQ(place(squeezed_foam(KilogramsPerCubicMeter(bad), surface)), "foam density");
    }
    for (const double bad : {0.2, 4.6, not_a_number}) {
        EXPECT_EQ(place(suit_bulk(Suit{5.0}, SquareMeters(bad), foam_density, surface)),
                  "body surface");
    }
}

}  // namespace
}  // namespace leadline
