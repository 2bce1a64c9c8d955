// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

const Subject whole_session{};

FindingCase depth_over_limit() {
    return {FindingCode::depth_over_limit, "Depth", Severity::stop, whole_session,
            [](Scene& scene) { set_depth(scene, 12.1); },
            [](Scene& scene) { set_depth(scene, 12.0); }};
}

FindingCase depth_over_limit_of_an_age() {
    const auto scene_at = [](double depth) {
        return [depth](Scene& scene) {
            Rule rule = make_rule(RuleKind::max_depth_m, 6.0);
            rule.to_age = 14;
            choose_another_set(scene, "children", {rule});
            guest_of(scene).birth_date = day(2014, 1, 1);  // 12 years old
            guest_of(scene).guardian_consent = true;
            set_depth(scene, depth);
        };
    };
    return {FindingCode::depth_over_limit, "DepthOfAnAge", Severity::stop, first_guest,
            scene_at(6.1), scene_at(6.0)};
}

FindingCase depth_over_usual() {
    return {FindingCode::depth_over_usual, "UsualDepth", Severity::caution, whole_session,
            [](Scene& scene) { set_depth(scene, 8.1); },
            [](Scene& scene) { set_depth(scene, 8.0); }};
}

FindingCase usual_depth_below_the_limit() {
    // Beyond the limit the limit speaks alone.
    return {FindingCode::depth_over_usual, "UsualDepthBelowTheLimit", Severity::caution,
            whole_session, [](Scene& scene) { set_depth(scene, 12.0); },
            [](Scene& scene) { set_depth(scene, 12.1); }};
}

FindingCase bottom_below_limit() {
    return {FindingCode::bottom_below_limit, "Bottom", Severity::caution, whole_session,
            [](Scene& scene) { scene.session.site.bottom_depth = meters(20.1); },
            [](Scene& scene) { scene.session.site.bottom_depth = meters(20.0); }};
}

FindingCase water_too_cold() {
    return {FindingCode::water_too_cold, "Cold", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.conditions.water_temperature = celsius(9.9); },
            [](Scene& scene) { scene.session.conditions.water_temperature = celsius(10.0); }};
}

FindingCase water_too_cold_for_an_age() {
    const auto scene_at = [](double water) {
        return [water](Scene& scene) {
            Rule rule = make_rule(RuleKind::min_water_temperature_c, 16.0);
            rule.to_age = 14;
            choose_another_set(scene, "children", {rule});
            guest_of(scene).birth_date = day(2014, 1, 1);
            guest_of(scene).guardian_consent = true;
            scene.session.conditions.water_temperature = celsius(water);
        };
    };
    return {FindingCode::water_too_cold, "ColdForAnAge", Severity::stop, first_guest,
            scene_at(15.9), scene_at(16.0)};
}

FindingCase minutes_in_cold_water() {
    return {FindingCode::minutes_over_limit, "MinutesInColdWater", Severity::caution, whole_session,
            [](Scene& scene) { scene.session.conditions.water_temperature = celsius(14.9); },
            [](Scene& scene) { scene.session.conditions.water_temperature = celsius(15.0); }};
}

FindingCase minutes_over_limit() {
    const auto scene_at = [](double end) {
        return [end](Scene& scene) {
            scene.session.conditions.water_temperature = celsius(14.0);
            scene.session.profile.points[4].time = Minutes(end - 2.0);
            scene.session.profile.points[5].time = Minutes(end);
        };
    };
    return {FindingCode::minutes_over_limit, "Minutes", Severity::caution, whole_session,
            scene_at(25.1), scene_at(25.0)};
}

FindingCase minutes_over_limit_of_an_age() {
    const auto scene_with_limit = [](double minutes) {
        return [minutes](Scene& scene) {
            Rule rule = make_rule(RuleKind::max_minutes, minutes);
            rule.from_age = 8;
            rule.to_age = 14;
            choose_another_set(scene, "children", {rule});
            guest_of(scene).birth_date = day(2014, 1, 1);
            guest_of(scene).guardian_consent = true;
        };
    };
    return {FindingCode::minutes_over_limit, "MinutesOfAnAge", Severity::stop, first_guest,
            scene_with_limit(29.9), scene_with_limit(30.0)};
}

FindingCase visibility_low() {
    return {FindingCode::visibility_low, "Visibility", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.conditions.visibility = Meters(2.9); },
            [](Scene& scene) { scene.session.conditions.visibility = Meters(3.0); }};
}

FindingCase current_strong() {
    return {FindingCode::current_strong, "Current", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.conditions.current = Current::moderate; },
            [](Scene& scene) { scene.session.conditions.current = Current::slight; }};
}

FindingCase waves_high() {
    return {FindingCode::waves_high, "Waves", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.conditions.wave_height = Meters(1.1); },
            [](Scene& scene) { scene.session.conditions.wave_height = Meters(1.0); }};
}

FindingCase ascent_too_fast() {
    // 8 m: at 9 m/min in 53.3 s.
    return {FindingCode::ascent_too_fast, "PlannedAscent", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.profile.points[5].time = Minutes(28.0 + 8.0 / 9.1); },
            [](Scene& scene) { scene.session.profile.points[5].time = Minutes(28.0 + 8.0 / 9.0); }};
}

FindingCase descent_too_fast() {
    return {FindingCode::descent_too_fast, "Descent", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.profile.points[2].time = Minutes(3.0 + 8.0 / 18.1); },
            [](Scene& scene) { scene.session.profile.points[2].time = Minutes(3.0 + 8.0 / 18.0); }};
}

FindingCase ear_step_over_locking() {
    // 80 mmHg are about 1.06 m of sea water.
    return {FindingCode::ear_step_over_locking, "ClearingStep", Severity::stop, whole_session,
            [](Scene& scene) { rule_of(scene.rules, RuleKind::clearing_step_m).value = 1.1; },
            [](Scene& scene) { rule_of(scene.rules, RuleKind::clearing_step_m).value = 1.0; }};
}

FindingCase emergency_line_missing() {
    return {FindingCode::emergency_line_missing, "EmergencyLine", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.site.emergency_line.clear(); },
            [](Scene& scene) { scene.session.site.emergency_line = "VHF 16"; }};
}

FindingCase no_rules_chosen() {
    return {FindingCode::no_rules_chosen, "NoRules", Severity::stop, whole_session,
            [](Scene& scene) { scene.session.rule_sets.clear(); }, [](Scene&) {}};
}

}  // namespace

std::vector<FindingCase> place_cases() {
    return {depth_over_limit(),      depth_over_limit_of_an_age(),   depth_over_usual(),
            usual_depth_below_the_limit(), bottom_below_limit(),     water_too_cold(),
            water_too_cold_for_an_age(),   minutes_in_cold_water(),  minutes_over_limit(),
            minutes_over_limit_of_an_age(), visibility_low(),        current_strong(),
            waves_high(),            ascent_too_fast(),              descent_too_fast(),
            ear_step_over_locking(), emergency_line_missing(), no_rules_chosen()};
}

}  // namespace leadline
