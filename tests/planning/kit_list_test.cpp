// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/kit_list.h"

#include <gmock/gmock.h>

#include "core/planning/air_order.h"
#include "tests/planning/scene.h"

namespace leadline {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Guest guest_with(const char* id, const char* suit, const char* group = "blue") {
    Guest guest;
    guest.id = GuestId(id);
    guest.name = id;
    guest.group = GroupId(group);
    guest.kit = {suit, "M", "40-41", "standard", id, Kilograms(4.5),
                 Cylinder{CylinderTypeId("steel-12"), Bars(200.0), Kelvins(293.15)}};
    return guest;
}

Session session_of(std::vector<Guest> guests) {
    Session session;
    session.groups = {Group{GroupId("blue"), "Blue", StaffId("a"), StaffId("b")},
                      Group{GroupId("red"), "Red", StaffId("c"), StaffId()}};
    for (const char* id : {"a", "b", "c", "d"}) {
        StaffMember member;
        member.id = StaffId(id);
        member.cylinder = Cylinder{CylinderTypeId("steel-15"), Bars(200.0), Kelvins(293.15)};
        session.staff.push_back(member);
    }
    session.guests = std::move(guests);
    return session;
}

TEST(KitTotals, CountsEveryKindByItsLabel) {
    Session session = session_of({guest_with("1", "7 mm M"), guest_with("2", "5 mm M"),
                                  guest_with("3", " 5 mm M ", "red")});
    session.guests[0].kit.bcd = "S";
    const KitTotals all = kit_totals(session);
    EXPECT_THAT(counts_of(all, KitItem::suit),
                ElementsAre(KitCount{"5 mm M", 2}, KitCount{"7 mm M", 1}));
    EXPECT_THAT(counts_of(all, KitItem::bcd), ElementsAre(KitCount{"M", 2}, KitCount{"S", 1}));
    EXPECT_THAT(counts_of(all, KitItem::regulator).size(), 3U);
    // The cylinders of the three of the staff who go along count; the one without a group's does not.
    EXPECT_THAT(counts_of(all, KitItem::cylinder),
                ElementsAre(KitCount{"steel-12", 3}, KitCount{"steel-15", 3}));
    EXPECT_DOUBLE_EQ(all.lead.value(), 13.5);
    EXPECT_EQ(all.guests_with_lead, 3);
    EXPECT_THAT(all.gaps, IsEmpty());
}

TEST(KitTotals, OfOneGroupLeavesTheOthersOut) {
    const KitTotals red = kit_totals(
        session_of({guest_with("1", "7 mm M"), guest_with("3", "5 mm M", "red")}), GroupId("red"));
    EXPECT_THAT(counts_of(red, KitItem::suit), ElementsAre(KitCount{"5 mm M", 1}));
    EXPECT_THAT(counts_of(red, KitItem::cylinder),
                ElementsAre(KitCount{"steel-12", 1}, KitCount{"steel-15", 1}));
    EXPECT_DOUBLE_EQ(red.lead.value(), 4.5);
}

TEST(KitTotals, NamesWhatIsMissing) {
    Session session = session_of({guest_with("1", ""), guest_with("2", "5 mm M")});
    session.guests[0].kit.mask = "  ";
    session.guests[0].kit.lead.reset();
    session.guests[0].kit.cylinder.reset();
    const KitTotals totals = kit_totals(session);
    EXPECT_THAT(totals.gaps, ElementsAre(KitGap{GuestId("1"),
                                                {KitItem::suit, KitItem::mask, KitItem::lead,
                                                 KitItem::cylinder}}));
    EXPECT_EQ(totals.guests_with_lead, 1);
    EXPECT_DOUBLE_EQ(totals.lead.value(), 4.5);
}

TEST(KitTotals, OfNobodyIsNothing) {
    const KitTotals totals = kit_totals(Session{});
    for (const auto& counts : totals.counts) EXPECT_THAT(counts, IsEmpty());
    EXPECT_EQ(totals.lead.value(), 0.0);
}

TEST(OrderOfLowOnAir, PutsTheGroupsLimitingGuestFirst) {
    Scene scene = sound_scene();
    scene.session.guests[1].breathing = BreathingClass::nervous;
    Plan planned = plan_of(scene);
    EXPECT_THAT(order_of_low_on_air(planned, blue_group),
                ElementsAre(second_guest, first_guest));
    EXPECT_EQ(find_gas(planned, blue_group)->limiting_guest, second_guest);
    scene.session.guests[0].breathing = BreathingClass::nervous;
    scene.session.guests[1].breathing = BreathingClass::calm;
    planned = plan_of(scene);
    EXPECT_THAT(order_of_low_on_air(planned, blue_group),
                ElementsAre(first_guest, second_guest));
    EXPECT_EQ(find_gas(planned, blue_group)->limiting_guest, first_guest);
}

/// A plan that says of five guests no more than what their order follows from.
Plan plan_of_five() {
    Plan made;
    GroupForecast forecast;
    forecast.group = blue_group;
    const auto add = [&](const char* id, std::optional<Minutes> median, double load) {
        GuestGas gas;
        gas.guest = GuestId(id);
        gas.group = blue_group;
        gas.has_cylinder = true;
        gas.load_to_reserve = BarMinutes(load);
        made.guests.push_back(gas);
        GuestForecast one;
        one.guest = gas.guest;
        one.reserve.middle = median;
        forecast.guests.push_back(one);
    };
    // None: later than the forecast looks.
    add("late", std::nullopt, 90.0);
    add("slow", Minutes(40.0), 50.0);
    add("latest", std::nullopt, 95.0);
    add("soon", Minutes(30.0), 60.0);
    add("likely", Minutes(35.0), 70.0);
    forecast.likely_first = GuestId("likely");
    made.forecasts.push_back(forecast);
    return made;
}

TEST(OrderOfLowOnAir, FollowsTheForecastThenTheMedianThenTheLoad) {
    Plan planned = plan_of_five();
    EXPECT_THAT(order_of_low_on_air(planned, blue_group),
                ElementsAre(GuestId("likely"), GuestId("soon"), GuestId("slow"), GuestId("late"),
                            GuestId("latest")));
    // Equals stay in roster order; guests of others are left out.
    planned.guests[2].load_to_reserve = planned.guests[0].load_to_reserve;
    planned.guests[3].group = GroupId("red");
    EXPECT_THAT(order_of_low_on_air(planned, blue_group),
                ElementsAre(GuestId("likely"), GuestId("slow"), GuestId("late"), GuestId("latest")));
    std::swap(planned.guests[0], planned.guests[2]);
    EXPECT_THAT(order_of_low_on_air(planned, blue_group),
                ElementsAre(GuestId("likely"), GuestId("slow"), GuestId("latest"), GuestId("late")));
}

TEST(OrderOfLowOnAir, LeavesOutWhoHasNoCylinder) {
    Scene scene = sound_scene();
    scene.session.guests[0].kit.cylinder.reset();
    EXPECT_THAT(order_of_low_on_air(plan_of(scene), blue_group), ElementsAre(second_guest));
    EXPECT_THAT(order_of_low_on_air(plan_of(scene), GroupId("none")), IsEmpty());
}

TEST(EnvironmentBalloons, AgreeWithTheBreathOfTheCard) {
    const Plan planned = plan_of(sound_scene());
    bool found = false;
    for (const BalloonAt& balloon : planned.environment.balloons) {
        if (balloon.depth != planned.environment.deepest) continue;
        found = true;
        EXPECT_EQ(balloon.swells_to, planned.environment.breath_expansion_from_deepest);
        EXPECT_EQ(balloon.pressure.value(), planned.environment.bottom_pressure.value());
    }
    EXPECT_TRUE(found);
}

}  // namespace
}  // namespace leadline
