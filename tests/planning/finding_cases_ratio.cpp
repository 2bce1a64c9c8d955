// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

using Change = std::function<void(Scene&)>;

FindingCase ratio(const std::string& what, Severity severity, Change broken, Change neighbour) {
    return {FindingCode::ratio_exceeded, what,     severity,
            blue_group,                  std::move(broken), std::move(neighbour)};
}

void add_assistant(Scene& scene) {
    StaffMember helper;
    helper.id = StaffId("staff-2");
    helper.name = "Pell Dorn";
    helper.role = StaffRole::assistant;
    scene.session.staff.push_back(helper);
    scene.session.groups.front().assistant = helper.id;
}

FindingCase plain() {
    return ratio("Plain", Severity::stop, [](Scene& scene) { fill_group(scene, 5); },
                 [](Scene& scene) { fill_group(scene, 4); });
}

FindingCase with_assistant() {
    return ratio(
        "WithAssistant", Severity::stop,
        [](Scene& scene) {
            add_assistant(scene);
            fill_group(scene, 7);
        },
        [](Scene& scene) {
            add_assistant(scene);
            fill_group(scene, 6);
        });
}

FindingCase instructor_twice() {
    // One person is one pair of hands: the instructor cannot be the assistant too.
    return ratio(
        "InstructorTwice", Severity::stop,
        [](Scene& scene) {
            scene.session.groups.front().assistant = first_instructor;
            fill_group(scene, 5);
        },
        [](Scene& scene) {
            scene.session.groups.front().assistant = first_instructor;
            fill_group(scene, 4);
        });
}

FindingCase companions() {
    return ratio(
        "Companions", Severity::stop,
        [](Scene& scene) {
            fill_group(scene, 5);
            guest_of(scene).certified = true;
        },
        [](Scene& scene) {
            fill_group(scene, 5);
            guest_of(scene).certified = true;
            rule_of(scene.rules, RuleKind::companions_use_places).value = 0.0;
        });
}

/// Three guests where two are allowed under the circumstance, and three without it.
FindingCase lowered(const std::string& what, const Change& circumstance, const Change& almost) {
    return ratio(
        what, Severity::caution,
        [circumstance](Scene& scene) {
            fill_group(scene, 3);
            circumstance(scene);
        },
        [almost](Scene& scene) {
            fill_group(scene, 3);
            almost(scene);
        });
}

FindingCase visibility() {
    return lowered(
        "Visibility", [](Scene& scene) { scene.session.conditions.visibility = Meters(5.9); },
        [](Scene& scene) { scene.session.conditions.visibility = Meters(6.0); });
}

FindingCase current() {
    return lowered(
        "Current", [](Scene& scene) { scene.session.conditions.current = Current::slight; },
        [](Scene& scene) { scene.session.conditions.current = Current::none; });
}

FindingCase waves() {
    return lowered(
        "Waves", [](Scene& scene) { scene.session.conditions.wave_height = Meters(0.6); },
        [](Scene& scene) { scene.session.conditions.wave_height = Meters(0.5); });
}

FindingCase children() {
    const auto born = [](Date birth) {
        return [birth](Scene& scene) {
            guest_of(scene).birth_date = birth;
            guest_of(scene).guardian_consent = true;
        };
    };
    return lowered("Children", born(day(2012, 7, 5)), born(day(2012, 7, 4)));
}

FindingCase language() {
    return lowered(
        "Language", [](Scene& scene) { guest_of(scene).language = "it"; },
        [](Scene& scene) { guest_of(scene).language = "en-US"; });
}

FindingCase nervous() {
    return lowered(
        "Nervous", [](Scene& scene) { guest_of(scene).breathing = BreathingClass::nervous; },
        [](Scene& scene) { guest_of(scene).breathing = BreathingClass::calm; });
}

FindingCase two_rules_of_a_set() {
    // A set that names the ratio twice means the stricter.
    const auto with = [](double places) {
        return [places](Scene& scene) {
            fill_group(scene, 3);
            choose_another_set(scene, "twice",
                               {make_rule(RuleKind::guests_per_instructor, places),
                                make_rule(RuleKind::guests_per_instructor, 8.0)});
        };
    };
    return ratio("TwoRulesOfASet", Severity::stop, with(2.0), with(3.0));
}

}  // namespace

std::vector<FindingCase> ratio_cases() {
    return {plain(),   with_assistant(), instructor_twice(), companions(), visibility(),
            current(), waves(),          children(),         language(),   nervous(),
            two_rules_of_a_set()};
}

}  // namespace leadline
