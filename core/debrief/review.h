// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/debrief/dive_log.h"
#include "core/planning/plan.h"

namespace leadline {

/// Whose depths the RMV was worked out with.
enum class DepthSource { own_samples, group_samples, planned_profile };

/// Planned against actual for one guest.
struct DiverReview {
    GuestId guest;
    GroupId group;
    DepthSource depth_source = DepthSource::own_samples;
    Minutes duration{};
    Minutes planned_duration{};
    Depth deepest{};
    Depth mean_depth{};
    Depth planned_deepest{};
    Bars start_pressure{};
    Bars end_pressure{};
    Bars planned_end_pressure{};
    Liters used_volume{};          ///< free air
    Liters planned_used_volume{};
    LitersPerMinute planned_rmv{};  ///< mean over the planned dive, phase factors included
    /// Air used, over the pressure integrated over time. None: no cylinder known, or no time or no
    /// air logged.
    std::optional<LitersPerMinute> actual_rmv;
    MetersPerMinute fastest_ascent{};  ///< over any 10 s or longer span of the samples; 0 without
    Minutes fastest_ascent_at{};       ///< time of the sample at which that span ends
    bool entered = false;  ///< time or air has been logged: more than a log just started holds
    bool ears_troubled = false;
};

struct GroupReview {
    GroupId group;
    std::optional<GuestId> planned_limiting_guest;
    std::optional<GuestId> lowest_guest;  ///< with the least pressure at the end, of those entered
};

struct Review {
    std::vector<DiverReview> divers;
    std::vector<GroupReview> groups;
    std::vector<Finding> findings;
};

/// What the log says against the plan. Pure.
/// @returns the review, or the error of check(log, session)
Result<Review> review(const Session& session, const Plan& plan, const DiveLog& log,
                      const RuleBook& rules);

}  // namespace leadline
