// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/scene.h"

#include <algorithm>

namespace leadline {
namespace {

Guest sound_guest(const GuestId& id, const std::string& name, Date birth) {
    Guest guest;
    guest.id = id;
    guest.name = name;
    guest.birth_date = birth;
    guest.screening.outcome = ScreeningOutcome::clear;
    guest.screening.checked_on = day(2026, 7, 3);
    guest.screening.edition = present_edition;
    guest.screening.checked_by = "Ruta Hale";
    guest.screening.today = TodayOutcome::clear;
    guest.screening.signature = SignatureKind::on_paper;
    guest.kit.suit = "5 mm M";
    guest.kit.bcd = "M";
    guest.kit.fins = "40-41";
    guest.kit.mask = "standard";
    guest.kit.regulator = "R1";
    guest.kit.lead = Kilograms(5.0);
    guest.kit.cylinder = Cylinder{CylinderTypeId("steel-12"), Bars(200.0), celsius(20.0)};
    guest.group = blue_group;
    return guest;
}

Profile sound_profile() {
    const auto point = [](double minutes, double depth, Phase phase) {
        return ProfilePoint{Minutes(minutes), meters(depth), phase};
    };
    return {{point(0, 0, Phase::surface), point(3, 0, Phase::surface), point(5, 8, Phase::descent),
             point(13, 8, Phase::skills), point(28, 8, Phase::tour), point(30, 0, Phase::ascent)}};
}

Session sound_session() {
    Session session;
    session.title = "Morning";
    session.date = day(2026, 7, 4);
    session.meeting_time = TimeOfDay{9 * 60};
    session.dive_time = TimeOfDay{10 * 60 + 30};
    session.leader = first_instructor;
    session.site.name = "Pebble Cove";
    session.site.latitude = Degrees(36.0);
    session.site.salinity = PracticalSalinity{38.0};
    session.site.bottom_depth = meters(10.0);
    session.site.emergency_line = "112";
    session.conditions.water_temperature = celsius(24.0);
    session.conditions.air_temperature = celsius(28.0);
    session.conditions.visibility = Meters(12.0);
    session.conditions.wave_height = Meters(0.2);
    session.profile = sound_profile();
    StaffMember instructor;
    instructor.id = first_instructor;
    instructor.name = "Ruta Hale";
    instructor.languages = {"en"};
    instructor.cylinder = Cylinder{CylinderTypeId("steel-12"), Bars(200.0), celsius(20.0)};
    session.staff = {instructor};
    session.groups = {Group{blue_group, "Blue", first_instructor, {}}};
    session.guests = {sound_guest(first_guest, "Mira Tolin", day(1990, 3, 1)),
                      sound_guest(second_guest, "Oke Brandal", day(1985, 11, 30))};
    session.rule_sets = {RuleSetId("test-rules")};
    return session;
}

Rule with_threshold(RuleKind kind, double value, double threshold) {
    Rule rule = make_rule(kind, value, Severity::caution);
    rule.threshold = threshold;
    return rule;
}

}  // namespace

Rule make_rule(RuleKind kind, double value, Severity severity) {
    Rule rule;
    rule.kind = kind;
    rule.value = value;
    rule.severity = severity;
    rule.source = "made up for tests";
    return rule;
}

RuleBook test_rules() {
    RuleSet set;
    set.id = RuleSetId("test-rules");
    set.title = "Test rules";
    set.rules = {
        make_rule(RuleKind::max_depth_m, 12.0),
        make_rule(RuleKind::usual_depth_m, 8.0, Severity::caution),
        make_rule(RuleKind::max_bottom_depth_m, 20.0, Severity::caution),
        make_rule(RuleKind::least_age_years, 10.0),
        make_rule(RuleKind::consent_below_age_years, 18.0),
        make_rule(RuleKind::guests_per_instructor, 4.0),
        make_rule(RuleKind::guests_with_assistant, 6.0),
        make_rule(RuleKind::companions_use_places, 1.0),
        with_threshold(RuleKind::places_in_poor_visibility, 2.0, 6.0),
        with_threshold(RuleKind::places_in_current, 2.0, 1.0),
        with_threshold(RuleKind::places_in_waves, 2.0, 0.5),
        with_threshold(RuleKind::places_with_children, 2.0, 14.0),
        make_rule(RuleKind::places_without_common_language, 2.0, Severity::caution),
        make_rule(RuleKind::places_with_nervous_guest, 2.0, Severity::caution),
        make_rule(RuleKind::min_water_temperature_c, 10.0),
        with_threshold(RuleKind::max_minutes, 25.0, 15.0),
        make_rule(RuleKind::reserve_pressure_bar, 50.0),
        make_rule(RuleKind::max_ascent_rate_m_per_min, 9.0),
        make_rule(RuleKind::max_descent_rate_m_per_min, 18.0),
        make_rule(RuleKind::min_visibility_m, 3.0),
        make_rule(RuleKind::max_wave_height_m, 1.0),
        make_rule(RuleKind::max_current, 1.0),
        make_rule(RuleKind::clearing_step_m, 0.5),
        make_rule(RuleKind::staff_dives_per_day, 4.0, Severity::caution),
        make_rule(RuleKind::staff_ascents_per_day, 10.0, Severity::caution),
        make_rule(RuleKind::staff_days_in_a_row, 6.0, Severity::caution),
        make_rule(RuleKind::no_fly_hours, 24.0),
        make_rule(RuleKind::screening_valid_months, 12.0),
    };
    return {{set}};
}

Rule& rule_of(RuleBook& book, RuleKind kind) {
    auto& rules = book.sets.front().rules;
    return *std::find_if(rules.begin(), rules.end(),
                         [&](const Rule& rule) { return rule.kind == kind; });
}

void remove_rules(RuleBook& book, RuleKind kind) {
    for (RuleSet& set : book.sets) {
        std::erase_if(set.rules, [&](const Rule& rule) { return rule.kind == kind; });
    }
}

void choose_another_set(Scene& scene, const std::string& id, std::vector<Rule> rules) {
    RuleSet set;
    set.id = RuleSetId(id);
    set.title = "Set " + id;
    set.rules = std::move(rules);
    scene.rules.sets.push_back(std::move(set));
    scene.session.rule_sets.emplace_back(id);
}

Scene sound_scene() { return {sound_session(), test_rules(), std::nullopt}; }

Scene sound_scene_with_log() {
    Scene scene = sound_scene();
    scene.log = log_as_planned(scene.session, plan_of(scene));
    return scene;
}

std::vector<DepthSample> samples_of(const Profile& profile) {
    std::vector<DepthSample> samples;
    for (const ProfilePoint& point : profile.points) samples.push_back({point.time, point.depth});
    return samples;
}

DiveLog log_as_planned(const Session& session, const Plan& plan) {
    DiveLog log;
    log.time_in = session.dive_time;
    log.time_out = TimeOfDay{session.dive_time.minutes_after_midnight + 40};
    log.heads_in = 3;
    log.heads_out = 3;
    for (const GuestGas& gas : plan.guests) {
        LogEntry diver;
        diver.guest = gas.guest;
        diver.start_pressure = gas.start_pressure;
        diver.end_pressure = gas.end_pressure;
        diver.duration = duration(session.profile);
        diver.samples = samples_of(session.profile);
        log.divers.push_back(diver);
    }
    return log;
}

WaterColumn water_of(const Session& session) {
    return WaterColumn::make(atmosphere, MetersPerSecondSquared(9.80665), session.site.salinity,
                             session.conditions.water_temperature)
        .value();
}

Plan plan_of(const Scene& scene) { return must(plan(scene.session, scene.rules)); }

Review review_of(const Scene& scene) {
    return must(review(scene.session, plan_of(scene), scene.log.value(), scene.rules));
}

std::vector<Finding> findings_of(const Scene& scene) {
    std::vector<Finding> findings = plan_of(scene).findings;
    if (scene.log) {
        const std::vector<Finding> more = review_of(scene).findings;
        findings.insert(findings.end(), more.begin(), more.end());
    }
    return findings;
}

const Finding* find(const std::vector<Finding>& findings, FindingCode code) {
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const Finding& one) { return one.code == code; });
    return found == findings.end() ? nullptr : &*found;
}

const Finding* find(const std::vector<Finding>& findings, FindingCode code,
                    const Subject& subject) {
    const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding& one) {
        return one.code == code && one.subject == subject;
    });
    return found == findings.end() ? nullptr : &*found;
}

std::string names_of(const std::vector<Finding>& findings) {
    std::string names;
    for (const Finding& finding : findings) names += (names.empty() ? "" : ", ") + key(finding);
    return names;
}

Date day(int year, unsigned month, unsigned day_of_month) {
    return {std::chrono::year(year), std::chrono::month(month), std::chrono::day(day_of_month)};
}

Depth meters(double value) { return Depth(Meters(value)); }

Kelvins celsius(double value) { return Celsius(value); }

}  // namespace leadline
