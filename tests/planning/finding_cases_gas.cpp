// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

FindingCase ends_below_reserve() {
    // The neighbour breathes so that just the reserve is left, found by halving.
    const auto breathe = [](double offset) {
        return [offset](Scene& scene) {
            double low = 20.0;
            double high = 50.0;
            for (int i = 0; i < 60; ++i) {
                guest_of(scene).measured_rmv = LitersPerMinute((low + high) / 2.0);
                const bool enough = plan_of(scene).guests.front().end_pressure.value() >= 50.0;
                (enough ? low : high) = guest_of(scene).measured_rmv->value();
            }
            guest_of(scene).measured_rmv = LitersPerMinute(low + offset);
        };
    };
    return {FindingCode::ends_below_reserve, "Reserve", Severity::stop, first_guest, breathe(0.001),
            breathe(0.0)};
}

FindingCase reserve_as_a_caution() {
    const auto with_reserve = [](double bar) {
        return [bar](Scene& scene) {
            choose_another_set(scene, "careful",
                               {make_rule(RuleKind::reserve_pressure_bar, bar, Severity::caution)});
        };
    };
    // About 85 bar are left.
    return {FindingCode::ends_below_reserve, "CarefulReserve", Severity::caution, first_guest,
            with_reserve(100.0), with_reserve(70.0)};
}

FindingCase broken_reserve_under_a_stricter_advice() {
    // 60 bar as an advice must not turn a breach of the 50 bar into an advice.
    return {FindingCode::ends_below_reserve, "ReserveUnderAnAdvice", Severity::stop, first_guest,
            [](Scene& scene) {
                choose_another_set(
                    scene, "careful",
                    {make_rule(RuleKind::reserve_pressure_bar, 60.0, Severity::caution)});
                guest_of(scene).measured_rmv = LitersPerMinute(40.0);
            },
            [](Scene& scene) {
                choose_another_set(
                    scene, "careful",
                    {make_rule(RuleKind::reserve_pressure_bar, 60.0, Severity::caution)});
            }};
}

FindingCase reserve_without_a_rule() {
    const auto breathe = [](double rmv) {
        return [rmv](Scene& scene) {
            scene.session.rule_sets.clear();
            guest_of(scene).measured_rmv = LitersPerMinute(rmv);
        };
    };
    return {FindingCode::ends_below_reserve, "ReserveWithoutARule", Severity::stop, first_guest,
            breathe(40.0), breathe(25.0)};
}

FindingCase minimum_gas_above_reserve() {
    // At 8 m about 30 bar of 12 L and 50 bar of 6 L are needed to bring somebody up.
    const auto at = [](double depth) {
        return [depth](Scene& scene) {
            set_depth(scene, depth);
            guest_of(scene).kit.cylinder->type = CylinderTypeId("steel-6");
        };
    };
    return {FindingCode::minimum_gas_above_reserve, "MinimumGas", Severity::caution, first_guest,
            at(9.0), at(5.0)};
}

FindingCase cylinder_missing() {
    return {FindingCode::cylinder_missing, "Cylinder", Severity::stop, first_guest,
            [](Scene& scene) { guest_of(scene).kit.cylinder.reset(); }, [](Scene&) {}};
}

FindingCase staff_cylinder_missing() {
    return {FindingCode::staff_cylinder_missing, "StaffCylinder", Severity::caution,
            first_instructor, [](Scene& scene) { scene.session.staff.front().cylinder.reset(); },
            [](Scene& scene) {
                // Not needed by somebody who stays ashore.
                scene.session.staff.front().cylinder.reset();
                scene.session.guests.clear();
            }};
}

FindingCase staff_gas_below_minimum() {
    const auto fill = [](double bar) {
        return [bar](Scene& scene) { scene.session.staff.front().cylinder->fill_pressure = Bars(bar); };
    };
    return {FindingCode::staff_gas_below_minimum, "StaffGas", Severity::stop, first_instructor,
            fill(100.0), fill(140.0)};
}

FindingCase group_unlikely_to_finish() {
    // The planned dive uses up most of 12 L at 200 bar at about 36 L/min.
    const auto all_breathe = [](double liters_per_minute) {
        return [liters_per_minute](Scene& scene) {
            for (Guest& guest : scene.session.guests) {
                guest.measured_rmv = LitersPerMinute(liters_per_minute);
            }
        };
    };
    return {FindingCode::group_unlikely_to_finish, "Chance", Severity::caution, blue_group,
            all_breathe(38.0), all_breathe(25.0)};
}

FindingCase sharing_may_not_last() {
    const auto fill = [](double bar) {
        return [bar](Scene& scene) { scene.session.staff.front().cylinder->fill_pressure = Bars(bar); };
    };
    return {FindingCode::sharing_may_not_last, "Sharing", Severity::caution, first_instructor,
            fill(80.0), fill(200.0)};
}

}  // namespace

std::vector<FindingCase> gas_cases() {
    return {ends_below_reserve(),
            reserve_as_a_caution(),
            broken_reserve_under_a_stricter_advice(),
            reserve_without_a_rule(),
            minimum_gas_above_reserve(),
            cylinder_missing(),
            staff_cylinder_missing(),
            staff_gas_below_minimum(),
            group_unlikely_to_finish(),
            sharing_may_not_last()};
}

}  // namespace leadline
