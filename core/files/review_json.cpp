// SPDX-License-Identifier: GPL-3.0-or-later
#include <utility>

#include "core/files/finding_json.h"
#include "core/files/plan_json.h"

namespace leadline {
namespace {

using nlohmann::ordered_json;

constexpr int review_json_version = 1;

const char* name_of(DepthSource source) {
    switch (source) {
        case DepthSource::own_samples: return "own_samples";
        case DepthSource::group_samples: return "group_samples";
        case DepthSource::planned_profile: return "planned_profile";
    }
    return "";
}

ordered_json diver_json(const Session& session, const DiverReview& diver) {
    const Guest* guest = find_guest(session, diver.guest);
    ordered_json to = ordered_json::object();
    to["guest"] = diver.guest.text;
    to["name"] = guest != nullptr ? guest->name : "";
    to["group"] = diver.group.text;
    to["depth_source"] = name_of(diver.depth_source);
    put_result(to, "duration_min", diver.duration.value());
    put_result(to, "planned_duration_min", diver.planned_duration.value());
    put_result(to, "deepest_m", diver.deepest.meters().value());
    put_result(to, "planned_deepest_m", diver.planned_deepest.meters().value());
    put_result(to, "mean_depth_m", diver.mean_depth.meters().value());
    put_result(to, "start_pressure_bar", diver.start_pressure.value());
    put_result(to, "end_pressure_bar", diver.end_pressure.value());
    put_result(to, "planned_end_pressure_bar", diver.planned_end_pressure.value());
    put_result(to, "used_free_air_l", diver.used_volume.value());
    put_result(to, "planned_used_free_air_l", diver.planned_used_volume.value());
    put_result(to, "planned_rmv_l_per_min", diver.planned_rmv.value());
    put_result(to, "actual_rmv_l_per_min", diver.actual_rmv);
    put_result(to, "fastest_ascent_m_per_min", diver.fastest_ascent.value());
    to["ears_troubled"] = diver.ears_troubled;
    return to;
}

ordered_json group_json(const GroupReview& group) {
    ordered_json to = ordered_json::object();
    to["id"] = group.group.text;
    if (group.planned_limiting_guest) {
        to["planned_limiting_guest"] = group.planned_limiting_guest->text;
    }
    if (group.lowest_guest) to["lowest_guest"] = group.lowest_guest->text;
    return to;
}

}  // namespace

std::string review_to_json(const Session& session, const Review& review,
                           const FindingSpeaker& speak) {
    ordered_json document = ordered_json::object();
    document["leadline_review"] = review_json_version;
    document["session"] = session_head_json(session);
    ordered_json divers = ordered_json::array();
    for (const DiverReview& diver : review.divers) divers.push_back(diver_json(session, diver));
    document["divers"] = std::move(divers);
    ordered_json groups = ordered_json::array();
    for (const GroupReview& group : review.groups) groups.push_back(group_json(group));
    document["groups"] = std::move(groups);
    document["findings"] = findings_json(review.findings, speak);
    return document.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace leadline
