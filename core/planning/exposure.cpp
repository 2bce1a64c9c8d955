// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/exposure.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstddef>

#include "core/body/tissues.h"

namespace leadline {
namespace {

constexpr double minutes_a_day = 1440.0;
constexpr Pascals sea_level{101325.0};
constexpr const char* single_source =
    "Flying after recreational diving workshop, DAN, 2002, and UHMS workshop, 1989";
constexpr const char* longer_source =
    "UHMS workshop, 1989 (Flying after recreational diving workshop, DAN, 2002: at least 18 h)";

/// One dive of the past, on a clock of minutes since the civil epoch.
struct PastDive {
    double start = 0.0;
    double minutes = 0.0;
    Depth deepest;
    int ascents = 1;
    bool passed_limit = false;
    [[nodiscard]] double end() const { return start + minutes; }
};

int day_number(Date date) {
    return static_cast<int>(std::chrono::sys_days(date).time_since_epoch().count());
}

double moment(Date date, TimeOfDay time) {
    return minutes_a_day * day_number(date) + time.minutes_after_midnight;
}

/// The value, or the worst valid one for a value that is not valid (or not a number).
template <typename T>
T or_worst(T value, T least, T most) {
    return value >= least && value <= most ? value : most;
}

/// Dives on record, the earliest first, each in full and all over before the session as far as the
/// body goes; see plan_staff_exposure().
std::vector<PastDive> past_dives(const StaffMember& member) {
    std::vector<PastDive> dives;
    dives.reserve(member.earlier_dives.size());
    for (const EarlierDive& dive : member.earlier_dives) {
        const double depth = dive.deepest.meters().value();
        dives.push_back({moment(dive.date, dive.start),
                         or_worst(dive.duration.value(), 1.0, 240.0),
                         Depth(Meters(or_worst(depth, 0.0, 60.0))), or_worst(dive.ascents, 1, 30)});
    }
    std::stable_sort(dives.begin(), dives.end(), [](const PastDive& a, const PastDive& b) {
        return a.start < b.start;
    });
    return dives;
}

/// A leg whose inputs lie in range by the way they were made. Were they ever not, the leg is taken
/// as two weeks at the greatest pressure of the model, so that nothing is promised.
TissueLeg sure_leg(Pascals from, Pascals to, Minutes time) {
    const Result<TissueLeg> leg = TissueLeg::make(from, to, time);
    return leg ? *leg : *TissueLeg::make(most_ambient, most_ambient, longest_exposure);
}

/// From a depth to the surface, a minute there, and back.
struct RoundTrip {
    TissueLeg up;
    TissueLeg rest;
    TissueLeg down;

    static RoundTrip between(Pascals surface, Pascals bottom, Depth depth) {
        return {sure_leg(bottom, surface, depth.meters() / assumed_ascent_rate),
                sure_leg(surface, surface, assumed_surface_time),
                sure_leg(surface, bottom, depth.meters() / assumed_descent_rate)};
    }
    [[nodiscard]] TissueLoads after(const TissueLoads& loads) const {
        return down.after(rest.after(up.after(loads)));
    }
};

/// The diver's tissues as time goes on at one surface pressure.
class Body {
public:
    /// @param judged  surface pressure that going up is judged against: where it is not known at
    ///                which altitude a dive was made, the lower one allows less
    Body(Pascals surface, Pascals judged)
        : surface_(surface), judged_(judged), loads_(tissues_at_rest(surface).value()) {}

    [[nodiscard]] const TissueLoads& loads() const { return loads_; }
    [[nodiscard]] const Saturation& highest() const { return highest_; }

    void move_to(Pascals surface) {
        surface_ = surface;
        judged_ = surface;
        highest_ = {};
        note();
    }
    void rest(double minutes) {
        if (minutes > 0.0) loads_ = sure_leg(surface_, surface_, Minutes(minutes)).after(loads_);
    }
    void pass(const TissueLeg& leg) {
        loads_ = leg.after(loads_);
        note();
    }
    /// Up and down again without credit for the gas lost on the way.
    void excursion(const RoundTrip& trip) {
        note();
        const TissueLoads back = trip.after(loads_);
        for (std::size_t i = 0; i < back.nitrogen.size(); ++i) {
            loads_.nitrogen[i] = std::max(loads_.nitrogen[i], back.nitrogen[i]);
        }
        note();
    }
    void past_dive(PastDive& dive, Pascals gauge);

private:
    /// What going straight up from here would use.
    void note() {
        const Result<Saturation> now =
            surfacing_saturation(loads_, judged_, house_gradient_factors.high);
        const double share = now ? now->share : 2.0;
        if (share > highest_.share || highest_.leading == 0) {
            highest_ = {share, now ? now->leading : 1};
        }
    }

    Pascals surface_;
    Pascals judged_;
    TissueLoads loads_;
    Saturation highest_;
};

void Body::past_dive(PastDive& dive, Pascals gauge) {
    highest_ = {};
    const Pascals bottom = surface_ + gauge;
    const RoundTrip trip = RoundTrip::between(surface_, bottom, dive.deepest);
    // The whole stated time at the deepest point, and the ups and downs on top without credit for the
    // gas lost on the way: more ascents never make a dive look lighter.
    const int times = std::max(1, dive.ascents);
    const TissueLeg stay = sure_leg(bottom, bottom, Minutes(dive.minutes / times));
    for (int i = 0; i < times; ++i) {
        if (i > 0) excursion(trip);
        pass(stay);
    }
    loads_ = trip.up.after(loads_);
    dive.passed_limit = highest_.share > 1.0;
}

/// Takes the body through all dives of the last days up to the session's start.
void live_through(std::vector<PastDive>& dives, Body& body, double start,
                  const WaterColumn& water) {
    const double heavier =
        std::max(1.0, assumed_water_density.value() / water.surface_density().value());
    const double oldest = start - minutes_a_day * exposure_days;
    double clock = oldest;
    for (PastDive& dive : dives) {
        if (dive.start < oldest) continue;
        body.rest(std::min(dive.start, start) - clock);
        body.past_dive(dive, water.gauge_pressure(dive.deepest) * heavier);
        clock = std::max(clock, std::min(dive.start, start)) + dive.minutes;
    }
    body.rest(start - clock);
}

/// The planned dive with its extra ascents, corner by corner.
class PlannedDive {
public:
    PlannedDive(const Profile& profile, const WaterColumn& water, Body& body)
        : profile_(profile), water_(water), body_(body) {}

    void run(int extra_ascents) {
        const auto& points = profile_.points;
        const std::size_t end = final_ascent_start(profile_);
        const double left = leaves_surface().value();
        const double span = points[end].time.value() - left;
        int done = 0;
        for (std::size_t i = 1; i < points.size(); ++i) {
            ProfilePoint at = points[i - 1];
            while (done < extra_ascents) {
                ProfilePoint next;
                next.time = Minutes(left + span * (done + 1) / (extra_ascents + 1));
                if (next.time > points[i].time) break;
                next.depth = depth_at(profile_, next.time);
                leg(at, next);
                excursion(next.depth);
                at = next;
                ++done;
            }
            leg(at, points[i]);
        }
    }

private:
    [[nodiscard]] Minutes leaves_surface() const {
        const auto below = std::find_if(
            profile_.points.begin(), profile_.points.end(),
            [](const ProfilePoint& point) { return point.depth.meters().value() > 0.0; });
        return (below - 1)->time;  // a checked profile starts at the surface and goes below it
    }

    void leg(const ProfilePoint& from, const ProfilePoint& to) {
        body_.pass(sure_leg(water_.absolute_pressure(from.depth),
                            water_.absolute_pressure(to.depth), to.time - from.time));
    }

    void excursion(Depth depth) {
        // Most are from the same depth; the way up and down is then worked out once.
        if (!trip_ || !(depth == trip_from_)) {
            trip_ = RoundTrip::between(water_.surface_pressure(), water_.absolute_pressure(depth),
                                       depth);
            trip_from_ = depth;
        }
        body_.excursion(*trip_);
    }

    const Profile& profile_;
    const WaterColumn& water_;
    Body& body_;
    std::optional<RoundTrip> trip_;
    Depth trip_from_;
};

bool is_in_the_water(const Session& session, const StaffId& id) {
    return !id.empty() &&
           std::any_of(session.groups.begin(), session.groups.end(), [&](const Group& group) {
               return group.instructor == id || group.assistant == id;
           });
}

int surfacings(const Profile& profile) {
    int count = 0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        if (profile.points[i].depth.meters().value() == 0.0 &&
            profile.points[i - 1].depth.meters().value() > 0.0) {
            ++count;
        }
    }
    return count;
}

Profile worst_profile() {
    return {{{Minutes(0.0), Depth(), Phase::surface},
             {Minutes(2.0), deepest_profile, Phase::descent},
             {Minutes(233.0), deepest_profile, Phase::tour},
             {longest_profile, Depth(), Phase::ascent}}};
}

/// Dives, ascents and days. A dive counts for each day it touches, and one said to lie later than
/// the session for its day.
void count_days(const std::vector<PastDive>& dives, int today, int ascents_now,
                StaffExposure& exposure) {
    std::array<bool, exposure_days + 1> dived{};
    dived[0] = exposure.dives_now;
    exposure.dives_today = exposure.dives_now ? 1 : 0;
    exposure.ascents_today = ascents_now;
    for (const PastDive& dive : dives) {
        const int first = std::min(today, static_cast<int>(std::floor(dive.start / minutes_a_day)));
        const int last = std::min(today, static_cast<int>(std::floor(dive.end() / minutes_a_day)));
        for (int day = first; day <= last; ++day) {
            if (today - day <= exposure_days) dived[static_cast<std::size_t>(today - day)] = true;
        }
        if (last == today) {
            ++exposure.dives_today;
            exposure.ascents_today += dive.ascents;
        }
    }
    const auto gap = std::find(dived.begin(), dived.end(), false);
    exposure.days_in_a_row = static_cast<int>(gap - dived.begin());
}

/// Sets the hours before flying from the last dive and those within 48 hours before it.
void set_no_fly(const std::vector<PastDive>& dives, double start, int ascents_now,
                StaffExposure& exposure) {
    if (!exposure.dives_now && dives.empty()) return;
    const double last = exposure.dives_now ? start : dives.back().start;
    int counted = exposure.dives_now ? 1 : 0;
    bool repeated = exposure.dives_now && ascents_now > 1;
    bool stops = exposure.dives_now && exposure.needs_stop;
    for (const PastDive& dive : dives) {
        if (dive.end() < last - Minutes(repeated_within).value()) continue;
        ++counted;
        repeated = repeated || dive.ascents > 1;
        stops = stops || dive.passed_limit;
    }
    repeated = repeated || counted > 1;
    exposure.no_fly = stops ? no_fly_after_stops : repeated ? no_fly_repeated : no_fly_single;
    exposure.no_fly_source = stops || repeated ? longer_source : single_source;
}

}  // namespace

StaffExposure plan_staff_exposure(const Session& session, const StaffMember& member,
                                  const WaterColumn& water) {
    const bool sound = check(session.profile).has_value();
    const Profile worst = sound ? Profile{} : worst_profile();
    const Profile& profile = sound ? session.profile : worst;
    const int extra = or_worst(member.extra_ascents, 0, 20);
    const double start = moment(session.date, session.dive_time);

    StaffExposure exposure;
    exposure.staff = member.id;
    exposure.dives_now = is_in_the_water(session, member.id);
    std::vector<PastDive> dives = past_dives(member);

    Body body(std::max(water.surface_pressure(), sea_level),
              std::min(water.surface_pressure(), sea_level));
    live_through(dives, body, start, water);
    body.move_to(water.surface_pressure());

    if (!dives.empty()) {
        double last_end = dives.front().end();
        for (const PastDive& dive : dives) last_end = std::max(last_end, dive.end());
        exposure.surface_interval = Minutes(std::max(0.0, start - last_end));
    }
    if (const Result<NoStop> left =
            no_stop_time(body.loads(), water.absolute_pressure(deepest(profile)),
                         water.surface_pressure(), house_gradient_factors.high)) {
        exposure.no_stop_left = left->time;
    }
    const int ascents_now = exposure.dives_now ? surfacings(profile) + extra : 0;
    if (exposure.dives_now) {
        exposure.planned_time = duration(profile);
        PlannedDive(profile, water, body).run(extra);
    }
    exposure.highest_saturation = body.highest().share;
    exposure.leading_compartment = body.highest().leading;
    exposure.needs_stop = exposure.dives_now && exposure.highest_saturation > 1.0;
    count_days(dives, day_number(session.date), ascents_now, exposure);
    set_no_fly(dives, start, ascents_now, exposure);
    return exposure;
}

}  // namespace leadline
