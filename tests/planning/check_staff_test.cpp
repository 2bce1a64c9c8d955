// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/checks.h"
#include "tests/planning/scene.h"

namespace leadline {
namespace {

/// What check_staff() says about one exposure under the test rules.
std::vector<Finding> said_of(const StaffExposure& exposure, const Scene& scene = sound_scene()) {
    const Environment environment;
    const Limits limits;
    return check_staff({scene.session, scene.rules, environment, limits}, {exposure});
}

StaffExposure at_the_limits() {
    StaffExposure exposure;
    exposure.staff = first_instructor;
    exposure.dives_now = true;
    exposure.dives_today = 4;
    exposure.ascents_today = 10;
    exposure.days_in_a_row = 6;
    exposure.planned_time = Minutes(30.0);
    exposure.no_stop_left = Minutes(45.0);
    exposure.highest_saturation = 0.9;
    return exposure;
}

void expect_one(const StaffExposure& exposure, FindingCode code, int count, int allowed) {
    const std::vector<Finding> found = said_of(exposure);
    ASSERT_EQ(found.size(), 1U) << names_of(found);
    EXPECT_EQ(name(found[0].code), name(code));
    EXPECT_EQ(found[0].severity, Severity::caution);
    EXPECT_EQ(found[0].subject, Subject(first_instructor));
    EXPECT_EQ(std::get<int>(found[0].values.at(0)), count);
    EXPECT_EQ(std::get<int>(found[0].values.at(1)), allowed);
    EXPECT_EQ(found[0].rule_set, "Test rules");
}

TEST(CheckStaff, HasNothingToSayAtTheLimits) {
    EXPECT_EQ(names_of(said_of(at_the_limits())), "");
}

TEST(CheckStaff, CountsDives) {
    StaffExposure exposure = at_the_limits();
    exposure.dives_today = 5;
    expect_one(exposure, FindingCode::staff_dives_over_limit, 5, 4);
}

TEST(CheckStaff, CountsAscents) {
    StaffExposure exposure = at_the_limits();
    exposure.ascents_today = 11;
    expect_one(exposure, FindingCode::staff_ascents_over_limit, 11, 10);
}

TEST(CheckStaff, CountsDays) {
    StaffExposure exposure = at_the_limits();
    exposure.days_in_a_row = 7;
    expect_one(exposure, FindingCode::staff_days_over_limit, 7, 6);
}

TEST(CheckStaff, StopsADiveThatNeedsAStop) {
    StaffExposure exposure = at_the_limits();
    exposure.needs_stop = true;
    exposure.no_stop_left = Minutes(12.5);
    std::vector<Finding> found = said_of(exposure);
    ASSERT_EQ(found.size(), 1U) << names_of(found);
    EXPECT_EQ(found[0].code, FindingCode::staff_needs_stop);
    EXPECT_EQ(found[0].severity, Severity::stop);
    EXPECT_EQ(std::get<Minutes>(found[0].values.at(0)).value(), 30.0);
    EXPECT_EQ(std::get<Minutes>(found[0].values.at(1)).value(), 12.5);
    EXPECT_EQ(key(found[0]), "staff_needs_stop:" + first_instructor.text);
    // Where more than a day was left the number shown is the day.
    exposure.no_stop_left.reset();
    found = said_of(exposure);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(std::get<Minutes>(found[0].values.at(1)).value(), 1440.0);
}

TEST(CheckStaff, IsSilentAboutWhoStaysAshore) {
    StaffExposure exposure = at_the_limits();
    exposure.dives_now = false;
    exposure.dives_today = 9;
    exposure.ascents_today = 50;
    exposure.days_in_a_row = 8;
    EXPECT_EQ(names_of(said_of(exposure)), "");
}

TEST(CheckStaff, TakesTheStrictestOfTheChosenSets) {
    Scene scene = sound_scene();
    choose_another_set(scene, "careful", {make_rule(RuleKind::staff_dives_per_day, 3.0)});
    const std::vector<Finding> found = said_of(at_the_limits(), scene);
    ASSERT_EQ(found.size(), 1U) << names_of(found);
    EXPECT_EQ(found[0].severity, Severity::stop);
    EXPECT_EQ(std::get<int>(found[0].values.at(1)), 3);
}

TEST(CheckStaff, NeedsARuleForTheCounts) {
    Scene scene = sound_scene();
    scene.session.rule_sets.clear();
    StaffExposure exposure = at_the_limits();
    exposure.dives_today = 20;
    EXPECT_EQ(names_of(said_of(exposure, scene)), "");
    exposure.needs_stop = true;
    EXPECT_EQ(said_of(exposure, scene).size(), 1U);
}

}  // namespace
}  // namespace leadline
