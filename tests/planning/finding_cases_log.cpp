// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

void log_depth(Scene& scene, double depth) {
    LogEntry& diver = logged(scene);
    for (const std::size_t corner : {2U, 3U, 4U}) diver.samples[corner].depth = meters(depth);
}

FindingCase logged_too_deep() {
    return {FindingCode::logged_too_deep, "Deeper", Severity::caution, first_guest,
            [](Scene& scene) { log_depth(scene, 8.6); },
            [](Scene& scene) { log_depth(scene, 8.5); }};
}

FindingCase logged_depth_over_limit() {
    return {FindingCode::logged_depth_over_limit, "DepthOverLimit", Severity::stop, first_guest,
            [](Scene& scene) { log_depth(scene, 12.1); },
            [](Scene& scene) { log_depth(scene, 12.0); }};
}

FindingCase logged_over_the_limit_of_an_age() {
    const auto scene_at = [](double depth) {
        return [depth](Scene& scene) {
            logged(scene);
            Rule rule = make_rule(RuleKind::max_depth_m, 9.0);
            rule.to_age = 14;
            choose_another_set(scene, "children", {rule});
            guest_of(scene).birth_date = day(2014, 1, 1);
            guest_of(scene).guardian_consent = true;
            log_depth(scene, depth);
        };
    };
    return {FindingCode::logged_depth_over_limit, "DepthOverTheLimitOfAnAge", Severity::stop,
            first_guest, scene_at(9.1), scene_at(9.0)};
}

FindingCase logged_ascent() {
    return {FindingCode::ascent_too_fast, "LoggedAscent", Severity::stop, first_guest,
            [](Scene& scene) { logged(scene).samples.back().time = Minutes(28.0 + 8.0 / 9.1); },
            [](Scene& scene) { logged(scene).samples.back().time = Minutes(28.0 + 8.0 / 9.0); }};
}

FindingCase logged_below_reserve() {
    return {FindingCode::logged_below_reserve, "BelowReserve", Severity::stop, first_guest,
            [](Scene& scene) { logged(scene).end_pressure = Bars(49.9); },
            [](Scene& scene) { logged(scene).end_pressure = Bars(50.0); }};
}

FindingCase logged_longer() {
    return {FindingCode::logged_longer, "Longer", Severity::note, first_guest,
            [](Scene& scene) { logged(scene).duration = Minutes(35.1); },
            [](Scene& scene) { logged(scene).duration = Minutes(35.0); }};
}

FindingCase log_missing() {
    return {FindingCode::log_missing, "Missing", Severity::caution, first_guest,
            [](Scene& scene) {
                logged(scene);
                scene.log->divers.erase(scene.log->divers.begin());
            },
            [](Scene& scene) { logged(scene); }};
}

FindingCase head_count_open() {
    return {FindingCode::head_count_open, "HeadCount", Severity::stop, {},
            [](Scene& scene) {
                logged(scene);
                scene.log->heads_out = 2;
            },
            [](Scene& scene) { logged(scene); }};
}

}  // namespace

std::vector<FindingCase> log_cases() {
    return {logged_too_deep(),      logged_depth_over_limit(), logged_over_the_limit_of_an_age(),
            logged_ascent(),        logged_below_reserve(),    logged_longer(),
            log_missing(),          head_count_open()};
}

}  // namespace leadline
