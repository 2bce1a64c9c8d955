// SPDX-License-Identifier: GPL-3.0-or-later
// What findings carry, how severities layer, and what overruling does.
#include "core/planning/finding.h"

#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

template <typename T>
double number(const FindingValue& value) {
    return std::get<T>(value).value();
}

double depth_of(const FindingValue& value) { return std::get<Depth>(value).meters().value(); }

Finding finding_in(const Scene& scene, FindingCode code) {
    const std::vector<Finding> found = findings_of(scene);
    const Finding* finding = find(found, code);
    EXPECT_NE(finding, nullptr) << name(code) << " is not in " << names_of(found);
    return finding != nullptr ? *finding : Finding{};
}

TEST(FindingValues, OfDepthNameRuleAndSource) {
    Scene scene = sound_scene();
    rule_of(scene.rules, RuleKind::max_depth_m).source = "a standard, table 1";
    set_depth(scene, 13.0);
    const Finding finding = finding_in(scene, FindingCode::depth_over_limit);
    ASSERT_EQ(finding.values.size(), 2U);
    EXPECT_EQ(depth_of(finding.values[0]), 13.0);
    EXPECT_EQ(depth_of(finding.values[1]), 12.0);
    EXPECT_EQ(finding.rule_set, "Test rules");
    EXPECT_EQ(finding.source, "a standard, table 1");
}

TEST(FindingValues, OfAgeAndRatioAreWholeNumbers) {
    Scene scene = sound_scene();
    guest_of(scene).birth_date = day(2017, 1, 1);
    const Finding young = finding_in(scene, FindingCode::guest_too_young);
    EXPECT_EQ(std::get<int>(young.values.at(0)), 9);
    EXPECT_EQ(std::get<int>(young.values.at(1)), 10);
    fill_group(scene, 5);
    const Finding ratio = finding_in(scene, FindingCode::ratio_exceeded);
    EXPECT_EQ(std::get<int>(ratio.values.at(0)), 5);
    EXPECT_EQ(std::get<int>(ratio.values.at(1)), 4);
    EXPECT_EQ(ratio.reason, RatioReason::plain);
}

TEST(FindingValues, OfTheReserve) {
    Scene scene = sound_scene();
    guest_of(scene).measured_rmv = LitersPerMinute(40.0);
    const Plan plan = plan_of(scene);
    const Finding finding = finding_in(scene, FindingCode::ends_below_reserve);
    ASSERT_EQ(finding.values.size(), 3U);
    EXPECT_EQ(number<Bars>(finding.values[0]), plan.guests.front().end_pressure.value());
    EXPECT_EQ(number<Bars>(finding.values[1]), 50.0);
    EXPECT_EQ(number<Minutes>(finding.values[2]), plan.guests.front().minutes_to_reserve->value());
    EXPECT_EQ(finding.rule_set, "Test rules");
}

TEST(FindingValues, OfTheReserveNameTheRuleThatIsBroken) {
    // 60 bar is advice, 50 bar the rule: at 40 bar it is the rule that speaks.
    Scene scene = sound_scene();
    choose_another_set(scene, "careful",
                       {make_rule(RuleKind::reserve_pressure_bar, 60.0, Severity::caution)});
    guest_of(scene).measured_rmv = LitersPerMinute(40.0);
    const Finding finding = finding_in(scene, FindingCode::ends_below_reserve);
    EXPECT_EQ(number<Bars>(finding.values.at(1)), 50.0);
    EXPECT_EQ(finding.rule_set, "Test rules");
}

TEST(FindingValues, OfKitListWhatIsMissing) {
    Scene scene = sound_scene();
    guest_of(scene).kit.suit.clear();
    guest_of(scene).kit.fins.clear();
    EXPECT_EQ(finding_in(scene, FindingCode::kit_missing).text, "suit,fins");
    EXPECT_EQ(finding_in(scene, FindingCode::kit_missing).severity, Severity::caution);
    guest_of(scene).kit.regulator.clear();
    EXPECT_EQ(finding_in(scene, FindingCode::kit_missing).text, "regulator,suit,fins");
    EXPECT_EQ(finding_in(scene, FindingCode::kit_missing).severity, Severity::stop);
}

TEST(FindingValues, OfScreeningTellDaysAndMonthsAndNoAnswer) {
    Scene scene = sound_scene();
    auto& screening = guest_of(scene).screening;
    screening.checked_on = day(2025, 1, 31);
    const Finding old = finding_in(scene, FindingCode::screening_out_of_date);
    EXPECT_EQ(old.text, "2025-01-31");
    EXPECT_EQ(old.values, std::vector<FindingValue>{12});
    EXPECT_FALSE(old.rule_set.empty());
    screening.checked_on.reset();
    const Finding unknown = finding_in(scene, FindingCode::screening_out_of_date);
    EXPECT_EQ(unknown.text, "");
    EXPECT_TRUE(unknown.values.empty());
    screening.checked_on = day(2026, 7, 5);
    EXPECT_EQ(finding_in(scene, FindingCode::screening_in_future).text, "2026-07-05");
    screening.edition = "Leadline 0";
    EXPECT_EQ(finding_in(scene, FindingCode::screening_edition_older).text, "Leadline 0");
}

TEST(FindingValues, OfTheRatioSayWhichRuleLeavesFewest) {
    const auto reason = [](const std::function<void(Scene&)>& change) {
        Scene scene = sound_scene();
        fill_group(scene, 3);
        change(scene);
        return finding_in(scene, FindingCode::ratio_exceeded).reason;
    };
    EXPECT_EQ(reason([](Scene& s) { s.session.conditions.visibility = Meters(4.0); }),
              RatioReason::visibility);
    EXPECT_EQ(reason([](Scene& s) { s.session.conditions.current = Current::slight; }),
              RatioReason::current);
    EXPECT_EQ(reason([](Scene& s) { s.session.conditions.wave_height = Meters(0.9); }),
              RatioReason::waves);
    EXPECT_EQ(reason([](Scene& s) { guest_of(s).language = "it"; }), RatioReason::language);
    EXPECT_EQ(reason([](Scene& s) { guest_of(s).breathing = BreathingClass::nervous; }),
              RatioReason::nervous);
    EXPECT_EQ(reason([](Scene& s) { guest_of(s).birth_date = day(2014, 1, 1); }),
              RatioReason::children);
}

TEST(SeverityLayers, AStrictCautionNeverHidesABrokenStop) {
    Scene scene = sound_scene();
    choose_another_set(scene, "careful",
                       {make_rule(RuleKind::max_depth_m, 5.0, Severity::caution),
                        make_rule(RuleKind::min_water_temperature_c, 30.0, Severity::caution),
                        make_rule(RuleKind::max_wave_height_m, 0.1, Severity::note)});
    // Within the law, beyond the advice.
    EXPECT_EQ(finding_in(scene, FindingCode::depth_over_limit).severity, Severity::caution);
    EXPECT_EQ(finding_in(scene, FindingCode::water_too_cold).severity, Severity::caution);
    EXPECT_EQ(finding_in(scene, FindingCode::waves_high).severity, Severity::note);
    // Beyond both.
    set_depth(scene, 13.0);
    scene.session.conditions.water_temperature = celsius(8.0);
    scene.session.conditions.wave_height = Meters(2.0);
    const Finding depth = finding_in(scene, FindingCode::depth_over_limit);
    EXPECT_EQ(depth.severity, Severity::stop);
    EXPECT_EQ(depth_of(depth.values[1]), 12.0);
    EXPECT_EQ(depth.rule_set, "Test rules");
    EXPECT_EQ(finding_in(scene, FindingCode::water_too_cold).severity, Severity::stop);
    EXPECT_EQ(finding_in(scene, FindingCode::waves_high).severity, Severity::stop);
}

TEST(SeverityLayers, OfTheRatioAreLookedAtGravestFirst) {
    Scene scene = sound_scene();
    scene.session.conditions.current = Current::slight;  // two places, as advice
    fill_group(scene, 5);                                // four by the rule
    const Finding finding = finding_in(scene, FindingCode::ratio_exceeded);
    EXPECT_EQ(finding.severity, Severity::stop);
    EXPECT_EQ(std::get<int>(finding.values.at(1)), 4);
}

TEST(SeverityLayers, PutStopsFirstAndTheOverruledLast) {
    Scene scene = sound_scene();
    guest_of(scene).kit.cylinder.reset();
    guest_of(scene, 1).kit.fins.clear();
    scene.session.groups.push_back(Group{GroupId("red"), "Red", {}, {}});
    scene.session.site.emergency_line.clear();
    scene.session.overrules = {{"emergency_line_missing", "Radio on board", "Ruta Hale"}};
    const std::vector<Finding> found = plan_of(scene).findings;
    EXPECT_EQ(names_of(found),
              "cylinder_missing:guest-1, kit_missing:guest-2, group_empty:red, "
              "emergency_line_missing");
}

TEST(FindingKeys, NameCodeAndSubject) {
    Finding finding;
    finding.code = FindingCode::ratio_exceeded;
    EXPECT_EQ(key(finding), "ratio_exceeded");
    finding.subject = GroupId("blue");
    EXPECT_EQ(key(finding), "ratio_exceeded:blue");
    finding.subject = GuestId("guest-1");
    EXPECT_EQ(key(finding), "ratio_exceeded:guest-1");
    finding.subject = StaffId("staff-1");
    EXPECT_EQ(key(finding), "ratio_exceeded:staff-1");
    EXPECT_EQ(name(Severity::stop), "stop");
    EXPECT_EQ(name(Severity::caution), "caution");
    EXPECT_EQ(name(Severity::note), "note");
}

TEST(Overrules, TouchOnlyTheFindingTheyName) {
    Scene scene = sound_scene();
    guest_of(scene, 0).kit.fins.clear();
    guest_of(scene, 1).kit.fins.clear();
    scene.session.overrules = {{"kit_missing:guest-1", "Brings her own", "Ruta Hale"}};
    const std::vector<Finding> found = plan_of(scene).findings;
    EXPECT_EQ(find(found, FindingCode::kit_missing, first_guest)->overruled_because,
              "Brings her own");
    EXPECT_FALSE(find(found, FindingCode::kit_missing, second_guest)->overruled_because);
}

TEST(Overrules, OfNothingDoNothing) {
    Scene scene = sound_scene();
    scene.session.overrules = {{"kit_missing:guest-1", "Brings her own", "Ruta Hale"},
                               {"no_such_finding", "why", "who"}};
    EXPECT_EQ(names_of(plan_of(scene).findings), "");
    EXPECT_EQ(plan_of(scene).readiness.overruled, 0);
}

TEST(ReadinessCount, CountsBySeverityAndTheOverruledApart) {
    Scene scene = sound_scene();
    guest_of(scene).kit.cylinder.reset();
    guest_of(scene).birth_date.reset();
    guest_of(scene, 1).kit.fins.clear();
    scene.session.groups.push_back(Group{GroupId("red"), "Red", {}, {}});
    Readiness ready = plan_of(scene).readiness;
    EXPECT_EQ(ready.stops, 2);
    EXPECT_EQ(ready.cautions, 1);
    EXPECT_EQ(ready.notes, 1);
    EXPECT_EQ(ready.overruled, 0);
    EXPECT_FALSE(ready.may_dive());
    scene.session.overrules = {{"cylinder_missing:guest-1", "Own set", "Ruta Hale"},
                               {"birth_date_missing:guest-1", "Passport seen", "Ruta Hale"},
                               {"kit_missing:guest-2", "Own fins", "Ruta Hale"}};
    ready = plan_of(scene).readiness;
    EXPECT_EQ(ready.stops, 0);
    EXPECT_EQ(ready.cautions, 0);
    EXPECT_EQ(ready.notes, 1);
    EXPECT_EQ(ready.overruled, 3);
    EXPECT_TRUE(ready.may_dive());
    EXPECT_TRUE(plan_of(sound_scene()).readiness.may_dive());
}

Finding finding_about(Subject subject, Severity severity) {
    Finding finding;
    finding.severity = severity;
    finding.subject = std::move(subject);
    return finding;
}

bool blocked_by(const Finding& finding) {
    return card_is_blocked({finding}, first_guest, blue_group);
}

TEST(CardBlock, IsAStopOnTheGuestTheGroupOrTheWholeSession) {
    EXPECT_FALSE(card_is_blocked({}, first_guest, blue_group));
    EXPECT_TRUE(blocked_by(finding_about(first_guest, Severity::stop)));
    EXPECT_FALSE(blocked_by(finding_about(second_guest, Severity::stop)));
    EXPECT_TRUE(blocked_by(finding_about(blue_group, Severity::stop)));
    EXPECT_FALSE(blocked_by(finding_about(GroupId("red"), Severity::stop)));
    EXPECT_TRUE(blocked_by(finding_about({}, Severity::stop)));
    // Whose instructor it is cannot be told from the finding: it blocks, the safe side.
    EXPECT_TRUE(blocked_by(finding_about(first_instructor, Severity::stop)));
}

TEST(CardBlock, IsNoCautionAndNothingOverruled) {
    EXPECT_FALSE(blocked_by(finding_about(first_guest, Severity::caution)));
    EXPECT_FALSE(blocked_by(finding_about({}, Severity::note)));
    Finding overruled = finding_about(first_guest, Severity::stop);
    overruled.overruled_because = "seen";
    EXPECT_FALSE(blocked_by(overruled));
}

}  // namespace
}  // namespace leadline
