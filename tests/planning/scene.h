// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

#include "core/debrief/review.h"
#include "core/planning/plan.h"
#include "tests/must.h"

namespace leadline {

/// A session, the rules it is judged by, and what happened.
struct Scene {
    Session session;
    RuleBook rules;
    std::optional<DiveLog> log;
};

/// Two adult guests, one instructor, everything answered, issued and within limits: plan() finds
/// nothing to say. Tests break one thing at a time.
Scene sound_scene();
/// The sound scene with a log in which everything went as planned: review() finds nothing either.
Scene sound_scene_with_log();

/// One set, "test-rules", with a value of every kind.
RuleBook test_rules();
Rule make_rule(RuleKind kind, double value, Severity severity = Severity::stop);
/// The first rule of a kind of the book's first set.
Rule& rule_of(RuleBook& book, RuleKind kind);
void remove_rules(RuleBook& book, RuleKind kind);
/// A second set that the session chooses too.
void choose_another_set(Scene& scene, const std::string& id, std::vector<Rule> rules);

/// A log made from the plan: everybody came up at the planned minute with the planned pressure.
DiveLog log_as_planned(const Session& session, const Plan& plan);
/// Samples at the profile's corners.
std::vector<DepthSample> samples_of(const Profile& profile);

inline constexpr Pascals atmosphere{101325.0};
/// The water of a session's place at sea level.
WaterColumn water_of(const Session& session);

Plan plan_of(const Scene& scene);
/// Needs a log.
Review review_of(const Scene& scene);
/// Findings of the plan and, with a log, of the review.
std::vector<Finding> findings_of(const Scene& scene);

/// The first finding with the code (about the subject), or nullptr.
const Finding* find(const std::vector<Finding>& findings, FindingCode code);
const Finding* find(const std::vector<Finding>& findings, FindingCode code, const Subject& subject);
/// Names of the findings, for messages: "depth_over_limit, kit_missing:guest-1".
std::string names_of(const std::vector<Finding>& findings);

Date day(int year, unsigned month, unsigned day_of_month);
Depth meters(double value);
Kelvins celsius(double value);

inline const GuestId first_guest{"guest-1"};
inline const GuestId second_guest{"guest-2"};
inline const GroupId blue_group{"blue"};
inline const StaffId first_instructor{"staff-1"};

}  // namespace leadline
