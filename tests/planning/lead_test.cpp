// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/lead.h"

#include <cmath>
#include <limits>

#include "core/physics/air.h"
#include "tests/planning/scene.h"
#include "tests/reference_table.h"

namespace leadline {
namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr Bars reserve{50.0};
/// One guest of middle build in the sea, with pieces of a tenth so that rounding does not hide
/// anything.
Session lead_session() {
    Session session = sound_scene().session;
    session.site.salinity = PracticalSalinity{35.0};
    session.conditions.water_temperature = celsius(15.0);
    session.stock.lead_pieces = {Kilograms(0.1)};
    Guest& guest = session.guests[0];
    guest.body_mass = Kilograms(75.0);
    guest.body_height = Meters(1.75);
    guest.kit.lead.reset();
    return session;
}

GuestLead lead_of(const Session& session) {
    return plan_guest_lead(session, session.guests[0], water_of(session), reserve);
}

Session session_of(const ReferenceRow& row) {
    Session session = lead_session();
    Guest& guest = session.guests[0];
    guest.body_mass = Kilograms(row.number("mass_kg"));
    guest.body_height = Meters(row.number("height_cm") / 100.0);
    guest.kit.suit = row.text("suit");
    return session;
}

double salt_difference(Session session) {
    const double salt = lead_of(session).middle.value();
    session.site.salinity = PracticalSalinity{0.0};
    return salt - lead_of(session).middle.value();
}

/// Everything that hangs in the water but the lead: body, suit, cylinder with its reserve, other
/// kit (its mass is not known to the program: 6 kg, common practice).
double mass_without_lead(const Session& session) {
    const Guest& guest = session.guests[0];
    const CylinderType* type = find_cylinder_type(guest.kit.cylinder->type);
    return guest.body_mass->value() + 1.5 + type->empty_mass.value() + 0.7 + 6.0;
}

void expect_close(const ReferenceRow& row, double actual) {
    EXPECT_NEAR(actual, row.number("expected"), row.number("tolerance")) << row << row.text("why");
    if (row.text("side") == "below") { EXPECT_LT(actual, row.number("expected")) << row; }
    if (row.text("side") == "above") { EXPECT_GT(actual, row.number("expected")) << row; }
}

void check_row(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "bcd_lift") {
        expect_close(row, bcd_lift_of(row.text("suit")).value().value());
        return;
    }
    Session session = session_of(row);
    if (check == "range_holds") {
        const GuestLead lead = lead_of(session);
        ASSERT_EQ(lead.gap, LeadGap::none);
        EXPECT_LE(lead.low.value(), row.number("expected")) << row;
        EXPECT_GE(lead.high.value(), row.number("expected")) << row;
    } else if (check == "salt_difference") {
        expect_close(row, salt_difference(session));
    } else if (check == "aluminium_difference") {
        const double steel = lead_of(session).middle.value();
        session.guests[0].kit.cylinder->type = CylinderTypeId("aluminium-11");
        expect_close(row, lead_of(session).middle.value() - steel);
    } else if (check == "salt_difference_per_100_kg") {
        const double total = mass_without_lead(session) + lead_of(session).middle.value();
        expect_close(row, salt_difference(session) / total * 100.0);
    } else {
        ADD_FAILURE() << "no test for the check " << check;
    }
}

std::string row_name(const testing::TestParamInfo<ReferenceRow>& info) {
    return info.param.text("id");
}

class LeadTable : public testing::TestWithParam<ReferenceRow> {};
TEST_P(LeadTable, AgreesWithTheTable) { check_row(GetParam()); }
INSTANTIATE_TEST_SUITE_P(reference, LeadTable, testing::ValuesIn(load_reference("lead")), row_name);

class CylinderLift : public testing::TestWithParam<ReferenceRow> {};
TEST_P(CylinderLift, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const CylinderType* type = find_cylinder_type(CylinderTypeId(row.text("type")));
    ASSERT_NE(type, nullptr);
    const Moles content =
        content_at_gauge(*type, Bars(row.number("gauge_bar")), celsius(15.0), atmosphere);
    if (row.text("check") == "lift") {
        expect_close(row, must(cylinder_lift(*type, content,
                                             KilogramsPerCubicMeter(row.number("water"))))
                              .value());
    } else {
        ASSERT_EQ(row.text("check"), "air_mass");
        expect_close(row, mass_of_air(content).value());
    }
}
INSTANTIATE_TEST_SUITE_P(reference, CylinderLift,
                         testing::ValuesIn(load_reference("cylinder_buoyancy")), row_name);

TEST(CylinderBuoyancy, IsKnownForEveryKindAndFallsWithItsAir) {
    const KilogramsPerCubicMeter sea(1025.0);
    for (const CylinderType& type : cylinder_types()) {
        EXPECT_GT(must(cylinder_outer_volume(type)), type.water_capacity) << type.id.text;
        const double empty = must(cylinder_lift(type, Moles(0.0), sea)).value();
        EXPECT_LT(std::abs(empty), 6.0) << type.id.text;
        const Moles full = content_at_gauge(type, type.working_pressure, celsius(15.0), atmosphere);
        EXPECT_NEAR(empty - must(cylinder_lift(type, full, sea)).value(),
                    mass_of_air(full).value(), 1e-9);
        EXPECT_LT(must(cylinder_lift(type, full, KilogramsPerCubicMeter(1000.0))).value(),
                  must(cylinder_lift(type, full, sea)).value());
    }
}

TEST(CylinderBuoyancy, IsRefusedOutsideItsRange) {
    CylinderType type = *find_cylinder_type(CylinderTypeId("steel-12"));
    const KilogramsPerCubicMeter sea(1025.0);
    for (const double bad : {-1.0, 1001.0, not_a_number}) {
        EXPECT_EQ(cylinder_lift(type, Moles(bad), sea).error().place, "air content");
    }
    for (const double bad : {0.0, 1101.0, not_a_number}) {
        EXPECT_EQ(cylinder_lift(type, Moles(1.0), KilogramsPerCubicMeter(bad)).error().place,
                  "water density");
    }
    type.empty_mass = Kilograms(0.0);
    EXPECT_EQ(cylinder_outer_volume(type).error().place, "cylinder empty mass");
    EXPECT_EQ(cylinder_lift(type, Moles(1.0), sea).error().place, "cylinder empty mass");
}

TEST(LeadPieces, AddUp) {
    const auto sums = [](std::vector<double> pieces) {
        std::vector<Kilograms> sizes;
        for (const double piece : pieces) sizes.emplace_back(piece);
        std::vector<double> result;
        for (const Kilograms sum : must(sums_of_pieces(sizes))) result.push_back(sum.value());
        return result;
    };
    EXPECT_EQ(sums({10.0}), (std::vector<double>{0.0, 10.0, 20.0}));
    EXPECT_EQ(sums({8.0, 10.0}), (std::vector<double>{0.0, 8.0, 10.0, 16.0, 18.0, 20.0, 24.0}));
    EXPECT_EQ(sums({}).size(), 26U);
    EXPECT_EQ(sums({1.0, 2.0}), sums({}));
    EXPECT_EQ(sums({0.1}).size(), 251U);
    EXPECT_EQ(sums({0.5, 1.0}).back(), 25.0);
}

TEST(LeadPieces, OfNoSuchSizeAreRefused) {
    for (const double bad : {0.0, 0.09, 10.1, -1.0, not_a_number}) {
        const auto sums = sums_of_pieces({Kilograms(1.0), Kilograms(bad)});
        ASSERT_FALSE(sums) << bad;
        EXPECT_EQ(sums.error().place, "lead piece");
        Session session = lead_session();
        session.stock.lead_pieces = {Kilograms(bad)};
        EXPECT_EQ(lead_of(session).gap, LeadGap::outside_range);
    }
}

TEST(BcdLift, ErrsToTheSmallSide) {
    EXPECT_FALSE(bcd_lift_of(""));
    EXPECT_EQ(bcd_lift_of("M")->value(), 13.0);
    EXPECT_EQ(bcd_lift_of(" m ")->value(), 13.0);
    EXPECT_EQ(bcd_lift_of("M/L")->value(), 13.0);
    EXPECT_EQ(bcd_lift_of("XXL")->value(), 19.0);
    EXPECT_EQ(bcd_lift_of("XS")->value(), 7.0);
    EXPECT_EQ(bcd_lift_of("junior")->value(), 7.0);
    EXPECT_EQ(bcd_lift_of("?")->value(), 7.0);
}

TEST(GuestLeadGap, SaysWhatIsMissing) {
    Session session = lead_session();
    Guest& guest = session.guests[0];
    EXPECT_EQ(lead_of(session).gap, LeadGap::none);
    guest.kit.cylinder.reset();
    EXPECT_EQ(lead_of(session).gap, LeadGap::cylinder);
    guest.kit.suit = "dry suit";
    EXPECT_EQ(lead_of(session).gap, LeadGap::suit);
    guest.body_height.reset();
    EXPECT_EQ(lead_of(session).gap, LeadGap::body_height);
    guest.body_mass.reset();
    EXPECT_EQ(lead_of(session).gap, LeadGap::body_mass);
    EXPECT_EQ(lead_of(session).guest, first_guest);
}

TEST(GuestLeadGap, SaysWhenTheNumbersDoNotReachSoFar) {
    Session session = lead_session();
    session.guests[0].body_mass = Kilograms(180.0);
    EXPECT_EQ(lead_of(session).gap, LeadGap::outside_range);
    session = lead_session();
    session.guests[0].kit.cylinder->type = CylinderTypeId("steel-13");
    EXPECT_EQ(lead_of(session).gap, LeadGap::outside_range);
}

TEST(GuestLeadRange, IsInWholePiecesAndOrdered) {
    Session session = lead_session();
    session.stock.lead_pieces = {Kilograms(1.5), Kilograms(2.0)};
    const GuestLead lead = lead_of(session);
    EXPECT_LE(lead.low, lead.middle);
    EXPECT_LE(lead.middle, lead.high);
    for (const Kilograms one : {lead.low, lead.middle, lead.high}) {
        const double halves = one.value() * 2.0;
        EXPECT_NEAR(halves, std::round(halves), 1e-9);
    }
    session.stock.lead_pieces.clear();
    const GuestLead whole = lead_of(session);
    EXPECT_EQ(whole.low.value(), std::floor(whole.low.value()));
    EXPECT_EQ(whole.high.value(), std::floor(whole.high.value()));
}

TEST(GuestLeadRange, NeverGoesBelowNothing) {
    Session session = lead_session();
    session.guests[0].kit.suit = "0.5 mm";
    session.guests[0].kit.cylinder->type = CylinderTypeId("steel-12-300");
    session.guests[0].body_mass = Kilograms(60.0);
    session.guests[0].body_height = Meters(1.85);
    const GuestLead lead = lead_of(session);
    EXPECT_EQ(lead.gap, LeadGap::none);
    EXPECT_EQ(lead.low.value(), 0.0);
    EXPECT_EQ(lead.middle.value(), 0.0);
}

TEST(GuestLeadRange, MakesTheDiverNeutralAtTheEnd) {
    const GuestLead lead = lead_of(lead_session());
    EXPECT_EQ(lead.carried.value(), lead.middle.value());
    EXPECT_NEAR(lead.at_surface_reserve.value(), 0.0, 0.05);  // half a piece
    // The air down to the reserve: 150 bar of 12 L, about 2.1 kg.
    EXPECT_NEAR((lead.at_surface_reserve - lead.at_surface_start).value(), 2.1, 0.15);
    EXPECT_NEAR((lead.at_depth_reserve - lead.at_depth_start).value(),
                (lead.at_surface_reserve - lead.at_surface_start).value(), 1e-9);
    EXPECT_LT(lead.at_depth_start, lead.at_surface_start);
}

TEST(GuestLeadRange, GrowsWithSuitFatAndALightCylinder) {
    const Session base = lead_session();
    const double middle = lead_of(base).middle.value();
    Session other = base;
    other.guests[0].kit.suit = "7 mm hood";
    EXPECT_GT(lead_of(other).middle.value(), middle + 2.0);
    other = base;
    other.guests[0].kit.cylinder->type = CylinderTypeId("aluminium-11");
    EXPECT_GT(lead_of(other).middle.value(), middle + 1.0);
    other = base;
    other.guests[0].body_mass = Kilograms(95.0);
    EXPECT_GT(lead_of(other).middle.value(), middle);
    other = base;
    other.guests[0].kit.suit = "5 mm shorty";
    EXPECT_LT(lead_of(other).middle.value(), middle);
}

TEST(GuestLeadFlags, AreRaisedByTooMuchAndTooLittle) {
    Session session = lead_session();
    Guest& guest = session.guests[0];
    guest.kit.bcd = "M";
    EXPECT_FALSE(lead_of(session).bcd_cannot_hold_up);
    EXPECT_FALSE(lead_of(session).cannot_stay_down);
    guest.kit.lead = Kilograms(18.0);
    EXPECT_TRUE(lead_of(session).bcd_cannot_hold_up);
    EXPECT_EQ(lead_of(session).carried.value(), 18.0);
    EXPECT_EQ(lead_of(session).bcd_lift.value(), 13.0);
    guest.kit.bcd.clear();
    EXPECT_FALSE(lead_of(session).bcd_cannot_hold_up);  // nothing known
    EXPECT_EQ(lead_of(session).bcd_lift.value(), 0.0);
    guest.kit.lead = Kilograms(0.0);
    EXPECT_TRUE(lead_of(session).cannot_stay_down);
    EXPECT_GT(lead_of(session).at_surface_reserve.value(), 3.0);
}

TEST(GuestLeadFlags, OfAReserveAboveTheFillTakeTheFill) {
    Session session = lead_session();
    session.guests[0].kit.cylinder->fill_pressure = Bars(40.0);
    const GuestLead lead = lead_of(session);
    EXPECT_EQ(lead.at_surface_start.value(), lead.at_surface_reserve.value());
}

}  // namespace
}  // namespace leadline
