// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/debrief/review.h"

#include <algorithm>

#include "core/physics/air.h"
#include "core/physics/atmosphere.h"
#include "core/planning/rules.h"

namespace leadline {
namespace {

/// Depth reads to about half a metre; less than that over the plan is no news. Common practice.
constexpr double depth_slack_m = 0.5;
/// Minutes over the plan that are worth a word. Common practice.
constexpr double duration_slack_min = 5.0;
/// Spans shorter than this tell the noise of the gauge rather than the diver's speed. Common
/// practice, no source.
constexpr double shortest_speed_span_min = 10.0 / 60.0;

/// A track to work out pressure over time with: corners in minutes and metres.
struct Track {
    std::vector<DepthSample> samples;
    DepthSource source = DepthSource::own_samples;
};

bool usable(const LogEntry& diver) { return diver.samples.size() >= 2; }

/// The diver's own track, else that of somebody in the same group, else the plan's.
Track track_of(const LogEntry& diver, const Guest& guest, const Session& session,
               const DiveLog& log) {
    if (usable(diver)) return {diver.samples, DepthSource::own_samples};
    for (const LogEntry& other : log.divers) {
        if (guest.group.empty()) break;  // guests in no group were not together
        const Guest* companion = find_guest(session, other.guest);
        if (companion != nullptr && companion->group == guest.group && usable(other)) {
            return {other.samples, DepthSource::group_samples};
        }
    }
    Track track{{}, DepthSource::planned_profile};
    for (const ProfilePoint& point : session.profile.points) {
        track.samples.push_back({point.time, point.depth});
    }
    return track;
}

/// Mean over time of a quantity of depth along the track, by the trapezoid rule: exact for depth,
/// and within the curvature of the water's compression (below 1e-5) for pressure.
template <typename Function>
double time_mean(const Track& track, const Function& quantity) {
    double sum = 0.0;
    for (std::size_t i = 1; i < track.samples.size(); ++i) {
        const DepthSample& from = track.samples[i - 1];
        const DepthSample& to = track.samples[i];
        sum += (to.time - from.time).value() * (quantity(from.depth) + quantity(to.depth)) / 2.0;
    }
    const double minutes = (track.samples.back().time - track.samples.front().time).value();
    return sum / minutes;
}

/// The fastest way up over a span that is long enough, and when it ended.
struct Rise {
    double meters_per_minute = 0.0;
    Minutes ends_at{};
};

Rise fastest_rise(const std::vector<DepthSample>& samples) {
    Rise fastest;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        // A span that holds two long enough ones is never faster than the faster of them, so it is
        // enough to look on until the second could begin.
        double enough = longest_profile.value() * 2.0;
        for (std::size_t j = i + 1; j < samples.size(); ++j) {
            const double minutes = (samples[j].time - samples[i].time).value();
            if (minutes < shortest_speed_span_min - 1e-9) continue;
            if (minutes > enough) break;
            enough = std::min(enough, minutes + shortest_speed_span_min);
            const double speed = (samples[i].depth - samples[j].depth).value() / minutes;
            if (speed > fastest.meters_per_minute) fastest = {speed, samples[j].time};
        }
    }
    return fastest;
}

/// The water column the plan was made with.
Result<WaterColumn> column_of(const Session& session, const Plan& plan) {
    return WaterColumn::make(plan.environment.surface_pressure, plan.environment.gravity,
                             session.site.salinity, session.conditions.water_temperature);
}

class Reviewer {
public:
    Reviewer(const Session& session, const Plan& plan, const DiveLog& log, const RuleBook& rules,
             const WaterColumn& water)
        : session_(session), plan_(plan), log_(log), rules_(rules), water_(water) {}

    Review run() {
        for (const Guest& guest : session_.guests) {
            if (const LogEntry* diver = find_log(log_, guest.id)) {
                review_.divers.push_back(diver_review(guest, *diver));
                judge(review_.divers.back());
            } else {
                add(FindingCode::log_missing, Severity::caution, guest.id, {});
            }
        }
        for (const Group& group : session_.groups) review_groups(group);
        if (log_.heads_out != log_.heads_in) {
            add(FindingCode::head_count_open, Severity::stop, {}, {log_.heads_in, log_.heads_out});
        }
        std::stable_sort(
            review_.findings.begin(), review_.findings.end(),
            [](const Finding& a, const Finding& b) { return a.severity < b.severity; });
        return std::move(review_);
    }

private:
    DiverReview diver_review(const Guest& guest, const LogEntry& diver) const {
        DiverReview result;
        result.guest = guest.id;
        result.group = guest.group;
        result.duration = diver.duration;
        result.planned_duration = duration(session_.profile);
        result.planned_deepest = plan_.environment.deepest;
        result.start_pressure = diver.start_pressure;
        result.end_pressure = diver.end_pressure;
        result.ears_troubled = diver.ears_troubled;
        result.entered = diver.duration.value() > 0.0 || diver.end_pressure < diver.start_pressure;

        const Track track = track_of(diver, guest, session_, log_);
        result.depth_source = track.source;
        for (const DepthSample& sample : track.samples) {
            result.deepest = std::max(result.deepest, sample.depth);
        }
        result.mean_depth = Depth(
            Meters(time_mean(track, [](Depth depth) { return depth.meters().value(); })));
        if (track.source == DepthSource::own_samples) {
            const Rise rise = fastest_rise(track.samples);
            result.fastest_ascent = MetersPerMinute(rise.meters_per_minute);
            result.fastest_ascent_at = rise.ends_at;
        }
        if (const GuestGas* gas = find_gas(plan_, guest.id)) {
            result.planned_end_pressure = gas->end_pressure;
            result.planned_used_volume = gas->used_volume;
            result.planned_rmv = planned_mean_rmv(gas->used);
        }
        measure_air(guest, diver, track, result);
        return result;
    }

    [[nodiscard]] double bar_at(Depth depth) const {
        return Bars(water_.absolute_pressure(depth)).value();
    }

    /// RMV that breathes an amount over pressure integrated over time.
    [[nodiscard]] LitersPerMinute rmv_of(Moles used, double bar_minutes) const {
        const double z = air_compressibility(plan_.environment.bottom_pressure,
                                             water_.temperature()).value_or(1.0);
        const double cubic_meter_pascals =
            used.value() * z * molar_gas_constant * water_.temperature().value();
        return LitersPerMinute(cubic_meter_pascals / (bar_minutes * 1e5) * 1e3);
    }

    [[nodiscard]] LitersPerMinute planned_mean_rmv(Moles used) const {
        Track planned;
        for (const ProfilePoint& point : session_.profile.points) {
            planned.samples.push_back({point.time, point.depth});
        }
        const double bar = time_mean(planned, [&](Depth depth) { return bar_at(depth); });
        return rmv_of(used, bar * duration(session_.profile).value());
    }

    void measure_air(const Guest& guest, const LogEntry& diver, const Track& track,
                     DiverReview& result) const {
        if (!guest.kit.cylinder || diver.duration.value() <= 0.0) return;
        const CylinderType* type = find_cylinder_type(guest.kit.cylinder->type);
        if (type == nullptr) return;
        const auto content = [&](Bars gauge) {
            return content_at_gauge(*type, gauge, water_.temperature(), water_.surface_pressure());
        };
        const Moles used = content(diver.start_pressure) - content(diver.end_pressure);
        result.used_volume = free_air_volume(used);
        if (used.value() <= 0.0) return;
        const double bar = time_mean(track, [&](Depth depth) { return bar_at(depth); });
        result.actual_rmv = rmv_of(used, bar * diver.duration.value());
    }

    void judge(const DiverReview& diver) {
        if (diver.depth_source == DepthSource::own_samples) judge_depths(diver);
        if (diver.entered && diver.end_pressure < plan_.limits.reserve) {
            add(FindingCode::logged_below_reserve, Severity::stop, diver.guest,
                {diver.end_pressure, plan_.limits.reserve}, plan_.limits.reserve_rule);
        }
        if (diver.duration.value() > diver.planned_duration.value() + duration_slack_min) {
            add(FindingCode::logged_longer, Severity::note, diver.guest,
                {diver.duration, diver.planned_duration});
        }
    }

    void judge_depths(const DiverReview& diver) {
        const Guest* guest = find_guest(session_, diver.guest);
        const std::optional<int> age =
            guest != nullptr && guest->birth_date
                ? std::optional(age_in_years(*guest->birth_date, session_.date))
                : std::nullopt;
        const auto depth_limit =
            strictest_for_age(rules_, session_.rule_sets, RuleKind::max_depth_m, age);
        const double deepest = diver.deepest.meters().value();
        if (depth_limit && deepest > depth_limit->value + 1e-6) {
            add(FindingCode::logged_depth_over_limit, Severity::stop, diver.guest,
                {diver.deepest, Depth(Meters(depth_limit->value))}, depth_limit);
        } else if (deepest > diver.planned_deepest.meters().value() + depth_slack_m) {
            add(FindingCode::logged_too_deep, Severity::caution, diver.guest,
                {diver.deepest, diver.planned_deepest});
        }
        const auto& rate = plan_.limits.max_ascent_rate;
        if (rate && diver.fastest_ascent.value() > rate->value + 1e-6) {
            add(FindingCode::ascent_too_fast, Severity::stop, diver.guest,
                {diver.fastest_ascent, MetersPerMinute(rate->value)}, rate);
        }
    }

    void review_groups(const Group& group) {
        GroupReview result;
        result.group = group.id;
        if (const GroupGas* gas = find_gas(plan_, group.id)) {
            result.planned_limiting_guest = gas->limiting_guest;
        }
        const DiverReview* lowest = nullptr;
        for (const DiverReview& diver : review_.divers) {
            if (diver.group != group.id || !diver.entered) continue;
            if (lowest == nullptr || diver.end_pressure < lowest->end_pressure) lowest = &diver;
        }
        if (lowest != nullptr) result.lowest_guest = lowest->guest;
        review_.groups.push_back(result);
    }

    void add(FindingCode code, Severity severity, Subject subject, std::vector<FindingValue> values,
             const std::optional<Limit>& limit = std::nullopt) {
        Finding finding;
        finding.code = code;
        finding.severity = severity;
        finding.subject = std::move(subject);
        finding.values = std::move(values);
        if (limit) {
            finding.rule_set = limit->rule_set;
            finding.source = limit->source;
        }
        review_.findings.push_back(std::move(finding));
    }

    const Session& session_;
    const Plan& plan_;
    const DiveLog& log_;
    const RuleBook& rules_;
    const WaterColumn& water_;
    Review review_;
};

}  // namespace

Result<Review> review(const Session& session, const Plan& plan, const DiveLog& log,
                      const RuleBook& rules) {
    if (const Result<Done> checked = check(log, session); !checked) return checked.error();
    const Result<WaterColumn> water = column_of(session, plan);
    if (!water) return water.error();
    return Reviewer(session, plan, log, rules, *water).run();
}

}  // namespace leadline
