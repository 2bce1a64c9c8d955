// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

/// Short shallow dives on the session's morning, the last over 40 min before it.
void dive_before(Scene& scene, int dives, int ascents = 1) {
    auto& earlier = scene.session.staff.front().earlier_dives;
    for (int i = 0; i < dives; ++i) {
        EarlierDive dive;
        dive.date = scene.session.date;
        dive.start = TimeOfDay{scene.session.dive_time.minutes_after_midnight - 60 - 40 * i};
        dive.deepest = meters(4.0);
        dive.duration = Minutes(20.0);
        dive.ascents = ascents;
        earlier.push_back(dive);
    }
}

FindingCase staff_dives_over_limit() {
    return {FindingCode::staff_dives_over_limit, "DivesADay", Severity::caution, first_instructor,
            [](Scene& scene) { dive_before(scene, 4); },
            [](Scene& scene) { dive_before(scene, 3); }};
}

FindingCase staff_ascents_over_limit() {
    const auto extra = [](int ascents) {
        return [ascents](Scene& scene) {
            dive_before(scene, 1, 5);
            scene.session.staff.front().extra_ascents = ascents;
        };
    };
    return {FindingCode::staff_ascents_over_limit, "AscentsADay", Severity::caution,
            first_instructor, extra(5), extra(4)};
}

FindingCase staff_days_over_limit() {
    const auto days = [](int count) {
        return [count](Scene& scene) {
            dive_before(scene, count);
            int before = 0;
            for (EarlierDive& dive : scene.session.staff.front().earlier_dives) {
                dive.date = std::chrono::sys_days(dive.date) - std::chrono::days(++before);
            }
        };
    };
    return {FindingCode::staff_days_over_limit, "DaysInARow", Severity::caution, first_instructor,
            days(6), days(5)};
}

FindingCase staff_needs_stop() {
    // The same dive before an interval of ten minutes, or of three hours.
    const auto deep_dive = [](int minutes_before) {
        return [minutes_before](Scene& scene) {
            set_depth(scene, 18.0);
            dive_before(scene, 1);
            EarlierDive& dive = scene.session.staff.front().earlier_dives.front();
            dive.deepest = meters(22.0);
            dive.duration = Minutes(50.0);
            dive.start.minutes_after_midnight =
                scene.session.dive_time.minutes_after_midnight - 50 - minutes_before;
        };
    };
    return {FindingCode::staff_needs_stop, "NoStopTime", Severity::stop, first_instructor,
            deep_dive(10), deep_dive(180)};
}

}  // namespace

std::vector<FindingCase> staff_cases() {
    return {staff_dives_over_limit(), staff_ascents_over_limit(), staff_days_over_limit(),
            staff_needs_stop()};
}

}  // namespace leadline
