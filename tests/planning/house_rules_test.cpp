// SPDX-License-Identifier: GPL-3.0-or-later
// The house rules as they stand in resources/rules, judged through plan(). Facts of the trade that
// are common practice without a source to check against: an introductory dive stays at about 8 m and
// never goes beyond 12 m, and low on air is signalled at about 50 bar.
#include "core/files/rule_file.h"
#include "core/files/text_file.h"
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

RuleSet house_rules() {
    const std::string resources = LEADLINE_SOURCE_DIR "/resources/";
    const std::string schema = must(read_text_file(resources + "schema/rules.schema.json"));
    return must(read_rule_set(must(read_text_file(resources + "rules/house.json")), schema));
}

Scene house_scene() {
    Scene scene = sound_scene();
    scene.rules.sets = {house_rules()};
    scene.session.rule_sets = {RuleSetId("house")};
    return scene;
}

Severity severity_of(const Scene& scene, FindingCode code) {
    const std::vector<Finding> found = findings_of(scene);
    const Finding* finding = find(found, code);
    EXPECT_NE(finding, nullptr) << name(code) << " is not in " << names_of(found);
    return finding != nullptr ? finding->severity : Severity::note;
}

TEST(HouseRules, HaveNothingToSayAboutASoundDive) {
    EXPECT_EQ(names_of(findings_of(house_scene())), "");
}

TEST(HouseRules, CallForCareBeyondEightMetresAndStopBeyondTwelve) {
    Scene scene = house_scene();
    set_depth(scene, 8.1);
    EXPECT_EQ(severity_of(scene, FindingCode::depth_over_usual), Severity::caution);
    set_depth(scene, 12.0);
    EXPECT_EQ(find(findings_of(scene), FindingCode::depth_over_limit), nullptr);
    set_depth(scene, 12.1);
    EXPECT_EQ(severity_of(scene, FindingCode::depth_over_limit), Severity::stop);
}

TEST(HouseRules, SignalLowOnAirAtFiftyBar) {
    const Plan plan = plan_of(house_scene());
    EXPECT_EQ(plan.limits.reserve.value(), 50.0);
    EXPECT_EQ(plan.guests.front().signal_pressure.value(), 50.0);
}

TEST(HouseRules, CallForCareBeyondFourDivesOfAnInstructor) {
    Scene scene = house_scene();
    for (int i = 0; i < 4; ++i) {
        EXPECT_EQ(find(findings_of(scene), FindingCode::staff_dives_over_limit), nullptr) << i;
        EarlierDive dive;
        dive.date = scene.session.date;
        dive.start = TimeOfDay{6 * 60 + 40 * i};
        dive.deepest = meters(4.0);
        dive.duration = Minutes(20.0);
        scene.session.staff.front().earlier_dives.push_back(dive);
    }
    EXPECT_EQ(severity_of(scene, FindingCode::staff_dives_over_limit), Severity::caution);
}

TEST(HouseRules, AdviseInCoolWaterAndStopInCold) {
    // Two values of one kind in one set: 18 C as advice, 12 C as a limit.
    Scene scene = house_scene();
    scene.session.conditions.water_temperature = celsius(18.0);
    EXPECT_EQ(find(findings_of(scene), FindingCode::water_too_cold), nullptr);
    scene.session.conditions.water_temperature = celsius(17.0);
    EXPECT_EQ(severity_of(scene, FindingCode::water_too_cold), Severity::caution);
    scene.session.conditions.water_temperature = celsius(11.0);
    EXPECT_EQ(severity_of(scene, FindingCode::water_too_cold), Severity::stop);
}

}  // namespace
}  // namespace leadline
