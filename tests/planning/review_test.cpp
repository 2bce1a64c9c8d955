// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/debrief/review.h"

#include <algorithm>

#include "tests/planning/finding_cases.h"
#include "tests/reference_table.h"

namespace leadline {
namespace {

DiverReview first_review(const Scene& scene) { return review_of(scene).divers.at(0); }

std::vector<DepthSample> samples(std::initializer_list<std::pair<double, double>> points) {
    std::vector<DepthSample> list;
    for (const auto& [seconds, depth] : points) {
        list.push_back({Minutes(seconds / 60.0), meters(depth)});
    }
    return list;
}

TEST(ActualRmv, RecoversThePlannedOneFromALogMadeFromThePlan) {
    Scene scene = sound_scene();
    for (const double rmv : {8.0, 17.5, 25.0, 31.0}) {
        guest_of(scene).measured_rmv = LitersPerMinute(rmv);
        scene.log = log_as_planned(scene.session, plan_of(scene));
        const DiverReview diver = first_review(scene);
        ASSERT_TRUE(diver.actual_rmv);
        EXPECT_NEAR(diver.actual_rmv->value(), diver.planned_rmv.value(), 1e-6);
        EXPECT_NEAR(diver.used_volume.value(), diver.planned_used_volume.value(), 1e-3);
        // The phase factors lie between 1 and 1.2.
        EXPECT_GT(diver.planned_rmv.value(), rmv);
        EXPECT_LT(diver.planned_rmv.value(), 1.2 * rmv);
    }
}

TEST(ActualRmv, IsThatOfTheGuestWhereNoPhaseAsksForMore) {
    Scene scene = sound_scene();
    scene.session.profile = {{{Minutes(0), meters(0), Phase::tour},
                              {Minutes(2), meters(8), Phase::tour},
                              {Minutes(20), meters(5), Phase::tour},
                              {Minutes(22), meters(0), Phase::ascent}}};
    guest_of(scene).measured_rmv = LitersPerMinute(23.0);
    scene.log = log_as_planned(scene.session, plan_of(scene));
    const DiverReview diver = first_review(scene);
    EXPECT_NEAR(diver.planned_rmv.value(), 23.0, 1e-6);
    EXPECT_NEAR(diver.actual_rmv.value().value(), 23.0, 1e-6);
}

double published_z(const std::string& id) {
    for (const ReferenceRow& row : load_reference("air_compressibility")) {
        if (row.text("id") == id) return row.number("expected");
    }
    ADD_FAILURE() << "no row " << id;
    return 1.0;
}

TEST(ActualRmv, AgreesWithASumByHandAndAPublishedTable) {
    // Half an hour at a steady 10 m in the sea of the sound scene (1025 kg/m3, 9.798 m/s2) at 300 K,
    // 12 L from 200 to 80 bar absolute: p / Z before and after, over minutes and ambient pressure.
    // The table is good to 0.002 in Z, which makes 0.6 % of the difference.
    Scene scene = sound_scene();
    scene.session.conditions.barometer = Pascals(101325.0);
    scene.session.conditions.water_temperature = Kelvins(300.0);
    scene.log = log_as_planned(scene.session, plan_of(scene));
    logged(scene).samples = samples({{0, 10}, {1800, 10}});
    logged(scene).start_pressure = Bars(200.0 - 1.01325);
    logged(scene).end_pressure = Bars(80.0 - 1.01325);
    logged(scene).duration = Minutes(30.0);
    const double breathed =
        12.0 * (200.0 / published_z("perry_300K_200bar") - 80.0 / published_z("perry_300K_80bar"));
    const double ambient = 1.01325 + 1025.0 * 9.798 * 10.0 / 1e5;
    const double by_hand = breathed / (30.0 * ambient);
    EXPECT_NEAR(first_review(scene).actual_rmv.value().value(), by_hand, 0.006 * by_hand);
}

TEST(ActualRmv, GrowsWithAirAndFallsWithTimeAndDepth) {
    Scene scene = sound_scene_with_log();
    const double usual = first_review(scene).actual_rmv.value().value();
    logged(scene).end_pressure -= Bars(10.0);
    EXPECT_GT(first_review(scene).actual_rmv->value(), usual);
    logged(scene).end_pressure += Bars(10.0);
    logged(scene).duration += Minutes(5.0);
    EXPECT_NEAR(first_review(scene).actual_rmv->value(), usual * 30.0 / 35.0, 1e-6);
    logged(scene).duration -= Minutes(5.0);
    for (DepthSample& sample : logged(scene).samples) {
        sample.depth = meters(sample.depth.meters().value() * 1.3);
    }
    EXPECT_LT(first_review(scene).actual_rmv->value(), usual);
}

TEST(ActualRmv, IsUnknownWithoutCylinderTimeOrAir) {
    Scene scene = sound_scene_with_log();
    logged(scene).duration = Minutes(0.0);
    EXPECT_FALSE(first_review(scene).actual_rmv);
    scene = sound_scene_with_log();
    logged(scene).end_pressure = logged(scene).start_pressure;
    EXPECT_FALSE(first_review(scene).actual_rmv);
    EXPECT_EQ(first_review(scene).used_volume.value(), 0.0);
    scene = sound_scene_with_log();
    guest_of(scene).kit.cylinder.reset();
    EXPECT_FALSE(first_review(scene).actual_rmv);
}

TEST(DepthSources, AreOwnThenTheGroupsThenThePlans) {
    Scene scene = sound_scene_with_log();
    EXPECT_EQ(first_review(scene).depth_source, DepthSource::own_samples);
    scene.log->divers[1].samples = samples({{0, 0}, {60, 5}, {1800, 5}});
    logged(scene).samples = samples({{0, 3}});  // a single depth is no track
    EXPECT_EQ(first_review(scene).depth_source, DepthSource::group_samples);
    EXPECT_EQ(first_review(scene).deepest.meters().value(), 5.0);
    scene.log->divers[1].samples.clear();
    EXPECT_EQ(first_review(scene).depth_source, DepthSource::planned_profile);
    EXPECT_EQ(first_review(scene).deepest.meters().value(), 8.0);
    EXPECT_NEAR(first_review(scene).mean_depth.meters().value(),
                mean_depth(scene.session.profile).meters().value(), 1e-12);
    ASSERT_TRUE(first_review(scene).actual_rmv);
}

TEST(DepthSources, AreNotSharedWithAnotherGroupOrWithNone) {
    Scene scene = sound_scene_with_log();
    logged(scene).samples.clear();
    scene.session.groups.push_back(Group{GroupId("red"), "Red", first_instructor, {}});
    guest_of(scene, 1).group = GroupId("red");
    EXPECT_EQ(first_review(scene).depth_source, DepthSource::planned_profile);
    guest_of(scene, 0).group = GroupId();
    guest_of(scene, 1).group = GroupId();
    EXPECT_EQ(first_review(scene).depth_source, DepthSource::planned_profile);
}

TEST(DepthSources, OfOthersAreNotHeldAgainstTheGuest) {
    Scene scene = sound_scene_with_log();
    logged(scene).samples.clear();
    for (DepthSample& sample : scene.log->divers[1].samples) {
        sample.depth = meters(sample.depth.meters().value() * 2.0);  // 16 m
    }
    const Review result = review_of(scene);
    EXPECT_EQ(find(result.findings, FindingCode::logged_depth_over_limit, first_guest), nullptr);
    EXPECT_NE(find(result.findings, FindingCode::logged_depth_over_limit, second_guest), nullptr);
    EXPECT_EQ(result.divers[0].fastest_ascent.value(), 0.0);
}

TEST(LoggedDepths, GiveDeepestAndMean) {
    Scene scene = sound_scene_with_log();
    logged(scene).samples = samples({{0, 0}, {120, 6}, {1200, 10}, {1320, 0}});
    const DiverReview diver = first_review(scene);
    EXPECT_EQ(diver.deepest.meters().value(), 10.0);
    EXPECT_NEAR(diver.mean_depth.meters().value(), (2 * 3.0 + 18 * 8.0 + 2 * 5.0) / 22.0, 1e-12);
    EXPECT_EQ(diver.planned_deepest.meters().value(), 8.0);
}

TEST(AscentSpeed, IsReadFromTheSamples) {
    Scene scene = sound_scene_with_log();
    const auto speed = [&](std::initializer_list<std::pair<double, double>> points) {
        logged(scene).samples = samples(points);
        return first_review(scene).fastest_ascent.value();
    };
    EXPECT_NEAR(speed({{0, 10}, {60, 4}, {120, 0}}), 6.0, 1e-9);
    EXPECT_NEAR(speed({{0, 10}, {10, 8}, {20, 7.5}, {30, 7}}), 12.0, 1e-9);
    EXPECT_EQ(speed({{0, 0}, {60, 4}, {120, 8}}), 0.0);
}

TEST(AscentSpeed, DoesNotTakeANoisyGaugeForARace) {
    Scene scene = sound_scene_with_log();
    // Half a metre of noise from one second to the next, and level on the whole.
    std::vector<DepthSample> noisy;
    for (int second = 0; second <= 600; ++second) {
        noisy.push_back({Minutes(second / 60.0), meters(8.0 + (second % 2 == 0 ? 0.25 : -0.25))});
    }
    logged(scene).samples = noisy;
    EXPECT_LE(first_review(scene).fastest_ascent.value(), 3.0 + 1e-9);
}

TEST(AscentSpeed, LooksAtEverySpanOfTenSecondsOrMore) {
    Scene scene = sound_scene_with_log();
    // The race is over within 12 s; no two samples are just 10 s apart across it but the first two.
    logged(scene).samples = samples({{0, 10}, {10, 9}, {12, 5}, {40, 5}});
    EXPECT_NEAR(first_review(scene).fastest_ascent.value(), 25.0, 1e-9);
    EXPECT_NEAR(first_review(scene).fastest_ascent_at.value(), 12.0 / 60.0, 1e-12);
}

TEST(AscentSpeed, IsThatOfAllSpansTried) {
    // Against the plain search over all pairs, on a random walk of uneven steps.
    Scene scene = sound_scene_with_log();
    std::vector<DepthSample> walk;
    double time = 0.0;
    double depth = 10.0;
    std::uint64_t state = 12345;
    const auto next = [&] {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(state >> 40U) / static_cast<double>(1U << 24U);
    };
    for (int i = 0; i < 400; ++i) {
        time += 0.5 + 8.0 * next();
        depth = std::clamp(depth + 3.0 * (next() - 0.5), 0.0, 20.0);
        walk.push_back({Minutes(time / 60.0), meters(depth)});
    }
    double fastest = 0.0;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        for (std::size_t j = i + 1; j < walk.size(); ++j) {
            const double minutes = (walk[j].time - walk[i].time).value();
            if (minutes < 10.0 / 60.0) continue;
            fastest = std::max(fastest, (walk[i].depth - walk[j].depth).value() / minutes);
        }
    }
    logged(scene).samples = walk;
    EXPECT_NEAR(first_review(scene).fastest_ascent.value(), fastest, 1e-9);
}

TEST(ReviewFigures, ComeFromLogAndPlan) {
    Scene scene = sound_scene_with_log();
    logged(scene).ears_troubled = true;
    logged(scene).duration = Minutes(33.0);
    const Plan plan = plan_of(scene);
    const DiverReview diver = first_review(scene);
    EXPECT_EQ(diver.guest, first_guest);
    EXPECT_EQ(diver.group, blue_group);
    EXPECT_TRUE(diver.ears_troubled);
    EXPECT_EQ(diver.duration.value(), 33.0);
    EXPECT_EQ(diver.planned_duration.value(), 30.0);
    EXPECT_EQ(diver.start_pressure.value(), logged(scene).start_pressure.value());
    EXPECT_EQ(diver.end_pressure.value(), logged(scene).end_pressure.value());
    EXPECT_EQ(diver.planned_end_pressure.value(), plan.guests[0].end_pressure.value());
    EXPECT_EQ(diver.planned_used_volume.value(), plan.guests[0].used_volume.value());
}

TEST(ReviewOfGroups, NamesPlannedAndActualLowest) {
    Scene scene = sound_scene();
    guest_of(scene, 1).measured_rmv = LitersPerMinute(28.0);
    scene.log = log_as_planned(scene.session, plan_of(scene));
    Review result = review_of(scene);
    ASSERT_EQ(result.groups.size(), 1U);
    EXPECT_EQ(result.groups[0].planned_limiting_guest, second_guest);
    EXPECT_EQ(result.groups[0].lowest_guest, second_guest);
    scene.log->divers[0].end_pressure = Bars(51.0);
    EXPECT_EQ(review_of(scene).groups[0].lowest_guest, first_guest);
    scene.log->divers.clear();
    EXPECT_FALSE(review_of(scene).groups[0].lowest_guest);
}

TEST(ReviewOfGroups, WaitsForWhatIsNotYetEntered) {
    // A log just started: planned start pressures, nothing breathed, no time.
    Scene scene = sound_scene_with_log();
    for (LogEntry& diver : scene.log->divers) {
        diver.end_pressure = diver.start_pressure;
        diver.duration = Minutes(0.0);
    }
    EXPECT_FALSE(first_review(scene).entered);
    EXPECT_FALSE(review_of(scene).groups[0].lowest_guest);
    scene.log->divers[0].start_pressure = scene.log->divers[0].end_pressure = Bars(0.0);
    EXPECT_EQ(names_of(review_of(scene).findings), "") << "no cylinder known is no empty cylinder";
    scene.log->divers[1].end_pressure = Bars(90.0);
    EXPECT_TRUE(review_of(scene).divers[1].entered);
    EXPECT_EQ(review_of(scene).groups[0].lowest_guest, second_guest);
    scene.log->divers[0].duration = Minutes(30.0);
    EXPECT_EQ(review_of(scene).groups[0].lowest_guest, first_guest);
}

TEST(ReviewFindings, CarryNumbersAndComeGravestFirst) {
    Scene scene = sound_scene_with_log();
    logged(scene).duration = Minutes(40.0);
    logged(scene).end_pressure = Bars(30.0);
    for (DepthSample& sample : logged(scene).samples) {
        if (sample.depth.meters().value() > 0.0) sample.depth = meters(9.0);
    }
    const std::vector<Finding> found = review_of(scene).findings;
    EXPECT_EQ(names_of(found),
              "logged_below_reserve:guest-1, logged_too_deep:guest-1, logged_longer:guest-1");
    EXPECT_EQ(std::get<Bars>(found[0].values.at(0)).value(), 30.0);
    EXPECT_EQ(std::get<Bars>(found[0].values.at(1)).value(), 50.0);
    EXPECT_EQ(found[0].rule_set, "Test rules");
    EXPECT_EQ(std::get<Depth>(found[1].values.at(0)).meters().value(), 9.0);
    EXPECT_EQ(std::get<Minutes>(found[2].values.at(1)).value(), 30.0);
}

TEST(ReviewFindings, CountHeadsBothWays) {
    Scene scene = sound_scene_with_log();
    scene.log->heads_out = 4;  // a wrong count is no count
    const std::vector<Finding> found = review_of(scene).findings;
    const Finding* open = find(found, FindingCode::head_count_open);
    ASSERT_NE(open, nullptr);
    EXPECT_EQ(std::get<int>(open->values.at(0)), 3);
    EXPECT_EQ(std::get<int>(open->values.at(1)), 4);
}

TEST(ReviewOfNothing, IsAllMissing) {
    Scene scene = sound_scene();
    scene.log = DiveLog{};
    const Review result = review_of(scene);
    EXPECT_TRUE(result.divers.empty());
    EXPECT_EQ(names_of(result.findings), "log_missing:guest-1, log_missing:guest-2");
}

}  // namespace
}  // namespace leadline
