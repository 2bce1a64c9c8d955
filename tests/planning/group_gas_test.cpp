// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/gas_plan.h"

#include <cmath>

#include "tests/planning/scene.h"

namespace leadline {
namespace {

GroupGas blue(const Scene& scene) { return plan_of(scene).groups.front(); }

TEST(LimitingGuest, IsTheHeavierBreather) {
    Scene scene = sound_scene();
    scene.session.guests[1].measured_rmv = LitersPerMinute(26.0);
    EXPECT_EQ(blue(scene).limiting_guest, second_guest);
    scene.session.guests[0].measured_rmv = LitersPerMinute(27.0);
    EXPECT_EQ(blue(scene).limiting_guest, first_guest);
}

TEST(LimitingGuest, IsTheSmallerCylinderOfEqualBreathers) {
    Scene scene = sound_scene();
    scene.session.guests[1].kit.cylinder->type = CylinderTypeId("steel-10");
    EXPECT_EQ(blue(scene).limiting_guest, second_guest);
}

TEST(LimitingGuest, WeighsBreathAgainstCylinder) {
    Scene scene = sound_scene();
    scene.session.guests[1].measured_rmv = LitersPerMinute(30.0);
    scene.session.guests[1].kit.cylinder->type = CylinderTypeId("steel-18");
    EXPECT_EQ(blue(scene).limiting_guest, first_guest);
    scene.session.guests[1].measured_rmv = LitersPerMinute(40.0);
    EXPECT_EQ(blue(scene).limiting_guest, second_guest);
}

TEST(LimitingGuest, IsTheFirstOfTwoAlike) { EXPECT_EQ(blue(sound_scene()).limiting_guest, first_guest); }

TEST(LimitingGuest, IsNobodyWithoutCylinders) {
    Scene scene = sound_scene();
    for (Guest& guest : scene.session.guests) guest.kit.cylinder.reset();
    const GroupGas gas = blue(scene);
    EXPECT_FALSE(gas.limiting_guest);
    EXPECT_FALSE(gas.reserve_reached);
    EXPECT_FALSE(gas.cut_short);
    EXPECT_EQ(gas.ends_at.value(), 30.0);
}

TEST(LimitingGuest, IsSoughtInTheGroupOnly) {
    Scene scene = sound_scene();
    scene.session.groups.push_back(Group{GroupId("red"), "Red", first_instructor, {}});
    scene.session.guests[1].group = GroupId("red");
    scene.session.guests[1].measured_rmv = LitersPerMinute(50.0);
    const Plan plan = plan_of(scene);
    EXPECT_EQ(find_gas(plan, blue_group)->limiting_guest, first_guest);
    EXPECT_EQ(find_gas(plan, GroupId("red"))->limiting_guest, second_guest);
    EXPECT_EQ(find_gas(plan, GroupId("green")), nullptr);
}

TEST(CutShort, EndsTheDiveWhenTheFirstMeetsTheReserve) {
    Scene scene = sound_scene();
    EXPECT_FALSE(blue(scene).cut_short);
    EXPECT_EQ(blue(scene).ends_at.value(), 30.0);

    scene.session.guests[1].measured_rmv = LitersPerMinute(50.0);
    const Plan plan = plan_of(scene);
    const GroupGas& gas = plan.groups.front();
    EXPECT_TRUE(gas.cut_short);
    EXPECT_LT(gas.ends_at.value(), 28.0);
    // During the tour staying and diving are the same: so are the two times.
    ASSERT_TRUE(gas.reserve_reached);
    EXPECT_NEAR(gas.ends_at.value(), gas.reserve_reached->value(), 1e-9);
    EXPECT_NEAR(gas.reserve_reached->value(), plan.guests[1].minutes_to_reserve->value(), 1e-12);
}

TEST(CutShort, HappensExactlyWhenSomebodyEndsBelowTheReserve) {
    Scene scene = sound_scene();
    for (double rmv = 20.0; rmv < 50.0; rmv += 0.5) {
        scene.session.guests[1].measured_rmv = LitersPerMinute(rmv);
        const Plan plan = plan_of(scene);
        EXPECT_EQ(plan.groups.front().cut_short, plan.guests[1].end_pressure.value() < 50.0) << rmv;
    }
}

TEST(CutShort, IsAtTheStartForACylinderBelowTheReserve) {
    Scene scene = sound_scene();
    scene.session.guests[1].kit.cylinder->fill_pressure = Bars(30.0);
    EXPECT_TRUE(blue(scene).cut_short);
    EXPECT_EQ(blue(scene).ends_at.value(), 0.0);
}

TEST(InstructorGas, CountsTheInstructorsOwnBreathUpToTheAscent) {
    Scene scene = sound_scene();
    // A guest who breathes like an instructor from the same cylinder has the same left at 28 min.
    scene.session.guests[0].measured_rmv = planning_staff_rmv;
    const Plan plan = plan_of(scene);
    const GroupGas& gas = plan.groups.front();
    ASSERT_TRUE(gas.instructor_at_ascent);
    ASSERT_TRUE(gas.instructor_minimum_gas);
    double guest_at_ascent = 0.0;
    for (const PressurePoint& point : plan.guests[0].curve) {
        if (std::abs(point.time.value() - 28.0) < 1e-9) guest_at_ascent = point.gauge.value();
    }
    EXPECT_NEAR(gas.instructor_at_ascent->value(), guest_at_ascent, 1e-9);
    EXPECT_NEAR(gas.instructor_minimum_gas->value(),
                (plan.guests[0].minimum_gas + gauge_error).value(), 1e-9);
}

TEST(InstructorGas, IsUnknownWithoutACylinderOrAnInstructor) {
    Scene scene = sound_scene();
    scene.session.staff.front().cylinder.reset();
    EXPECT_FALSE(blue(scene).instructor_at_ascent);
    EXPECT_FALSE(blue(scene).instructor_minimum_gas);
    scene = sound_scene();
    scene.session.groups.front().instructor = StaffId();
    EXPECT_FALSE(blue(scene).instructor_at_ascent);
}

TEST(BreathedAmount, AndLoadAreEachOthersInverse) {
    const Scene scene = sound_scene();
    const Plan plan = plan_of(scene);
    const WaterColumn water =
        WaterColumn::make(plan.environment.surface_pressure, plan.environment.gravity,
                          scene.session.site.salinity, scene.session.conditions.water_temperature)
            .value();
    const Profile& profile = scene.session.profile;
    const GasContext context{water, profile, scene.session.conditions,
                             BreathingCurve::along(profile, water),
                             BreathingCurve::held_at_depth(profile, water), Bars(50.0),
                             MetersPerMinute(9.0)};
    for (const double load : {0.0, 1.0, 54.3, 400.0}) {
        const LitersPerMinute rmv(23.0);
        const Moles amount = moles_breathed(context, rmv, BarMinutes(load));
        EXPECT_NEAR(load_for(context, rmv, amount).value(), load, 1e-9);
    }
    EXPECT_NEAR(moles_breathed(context, LitersPerMinute(25.0), context.dive.total()).value(),
                plan.guests[0].used.value(), 1e-9);
}

}  // namespace
}  // namespace leadline
