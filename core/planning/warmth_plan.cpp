// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/warmth_plan.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/body/breathing.h"
#include "core/body/composition.h"
#include "core/body/warmth.h"
#include "core/planning/body_age.h"

namespace leadline {
namespace {

constexpr Minutes settled{10.0};  // at depth, when the heat loss is read

/// One of the three cases.
struct Case {
    double fit = 0.0;
    double fat = 0.0;
    double still_watts = 0.0;
    double tour_watts = 0.0;
};

/// The planned dive as the heat balance sees it.
class Dive {
public:
    Dive(const Profile& profile, const WaterColumn& water) : profile_(profile) {
        for (const ProfilePoint& point : profile.points) {
            pressures_.push_back(water.absolute_pressure(point.depth));
        }
    }

    /// From the start to corner `last`.
    [[nodiscard]] std::vector<HeatLeg> legs_to(std::size_t last, const Case& which) const {
        std::vector<HeatLeg> legs;
        for (std::size_t i = 1; i <= last; ++i) {
            const bool tour = profile_.points[i].phase == Phase::tour;
            legs.push_back({profile_.points[i].time - profile_.points[i - 1].time,
                            pressures_[i - 1], pressures_[i],
                            tour ? which.tour_watts : which.still_watts});
        }
        return legs;
    }

    [[nodiscard]] std::vector<HeatLeg> whole(const Case& which) const {
        return legs_to(profile_.points.size() - 1, which);
    }

    /// To where the final ascent starts, then staying there until the longest time.
    [[nodiscard]] std::vector<HeatLeg> held(const Case& which) const {
        const std::size_t corner = final_ascent_start(profile_);
        std::vector<HeatLeg> legs = legs_to(corner, which);
        const Minutes rest = longest_profile - profile_.points[corner].time;
        if (rest > Minutes(0.0)) {
            legs.push_back({rest, pressures_[corner], pressures_[corner],
                            has_tour() ? which.tour_watts : which.still_watts});
        }
        return legs;
    }

    /// Until `settled` after the deepest point is reached, but not into the final ascent.
    [[nodiscard]] std::vector<HeatLeg> until_settled(const Case& which) const {
        const std::size_t corner = final_ascent_start(profile_);
        const Depth bottom = deepest(profile_);
        std::size_t first = 0;
        while (profile_.points[first].depth < bottom) ++first;
        const Minutes end = std::min(profile_.points[first].time + settled,
                                     std::max(profile_.points[corner].time,
                                              profile_.points[first].time));
        std::vector<HeatLeg> legs;
        for (const HeatLeg& leg : legs_to(std::max(corner, first), which)) {
            const Minutes left = end - total(legs);
            if (left <= Minutes(0.0)) break;
            legs.push_back(leg);
            if (leg.duration > left) {
                const double share = left.value() / leg.duration.value();
                legs.back().duration = left;
                legs.back().to = leg.from + (leg.to - leg.from) * share;
            }
        }
        return legs;
    }

private:
    [[nodiscard]] bool has_tour() const {
        return std::any_of(profile_.points.begin(), profile_.points.end(),
                           [](const ProfilePoint& point) { return point.phase == Phase::tour; });
    }

    static Minutes total(const std::vector<HeatLeg>& legs) {
        Minutes sum{0.0};
        for (const HeatLeg& leg : legs) sum += leg.duration;
        return sum;
    }

    const Profile& profile_;
    std::vector<Pascals> pressures_;  ///< absolute, one a corner
};

/// What is known of the guest's body and suit.
struct Known {
    HeatBody body;
    Band fat;
    HeatPlace place;
};

WarmthGap first_gap(const Guest& guest, const std::optional<Suit>& suit) {
    if (!guest.body_mass) return WarmthGap::body_mass;
    if (!guest.body_height) return WarmthGap::body_height;
    if (!suit) return WarmthGap::suit;
    return WarmthGap::none;
}

Result<Known> known_of(const Session& session, const Guest& guest, const Suit& suit) {
    const Result<SquareMeters> surface = body_surface(*guest.body_mass, *guest.body_height);
    if (!surface) return surface.error();
    const Result<Band> fat =
        fat_fraction(*guest.body_mass, *guest.body_height, body_age(session, guest));
    if (!fat) return fat.error();
    Known known;
    known.body = {*guest.body_mass, *surface, fat->middle};
    known.fat = *fat;
    known.place = {suit, usual_fit, guest.measured_rmv.value_or(planning_rmv(guest.breathing)),
                   session.conditions.water_temperature};
    return known;
}

Result<std::array<Case, 3>> cases_of(const Known& known) {
    // An end of the band has fit, fat and work all on one side. Each goes only a share of the way to
    // its own end, so that the three together are about as unlikely as one of them alone at its end:
    // independent spreads add as squares (JCGM 100:2008, 5.1.2; that the three weigh about alike:
    // common practice, no source).
    const double share = 1.0 / std::sqrt(3.0);
    const auto band = [share](double low, double middle, double high) {
        return std::array<double, 3>{middle + share * (low - middle), middle,
                                     middle + share * (high - middle)};
    };
    const std::array<double, 3> fits = band(poor_fit, usual_fit, good_fit);
    const std::array<double, 3> still = band(0.55, 0.64, 0.73);
    const std::array<double, 3> tour = band(0.55, 0.95, 1.05);
    const std::array<double, 3> fats = band(known.fat.low, known.fat.middle, known.fat.high);
    std::array<Case, 3> cases;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const Result<double> resting = metabolic_watts(known.body.mass, still[i]);
        if (!resting) return resting.error();
        const Result<double> moving = metabolic_watts(known.body.mass, tour[i]);
        if (!moving) return moving.error();
        cases[i] = {fits[i], fats[i], *resting, *moving};
    }
    return cases;
}

Result<HeatRun> run_case(const Known& known, const Case& which, const std::vector<HeatLeg>& legs,
                         bool stop_at_limit) {
    HeatBody body = known.body;
    body.fat = which.fat;
    HeatPlace place = known.place;
    place.fit = which.fit;
    const Result<ImmersedDiver> diver = ImmersedDiver::make(body, place);
    if (!diver) return diver.error();
    return diver->run(legs, stop_at_limit);
}

/// Earlier first; no minutes count as later than any.
bool earlier(const std::optional<Minutes>& a, const std::optional<Minutes>& b) {
    return a && (!b || *a < *b);
}

Result<Done> set_minutes(const Dive& dive, const Known& known, const std::array<Case, 3>& cases,
                         GuestWarmth& warmth) {
    std::array<std::optional<Minutes>, 3> minutes;
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const Result<HeatRun> run = run_case(known, cases[i], dive.held(cases[i]), true);
        if (!run) return run.error();
        minutes[i] = run->limit_reached;
        if (i == 1) warmth.chilled = run->chilled;
    }
    std::sort(minutes.begin(), minutes.end(), earlier);
    warmth.low = minutes[0];
    warmth.middle = minutes[1];
    warmth.high = minutes[2];
    return Done{};
}

Result<Done> set_numbers(const Dive& dive, const Known& known, const Case& middle,
                         const WaterColumn& water, Depth bottom, GuestWarmth& warmth) {
    const Result<HeatRun> whole = run_case(known, middle, dive.whole(middle), false);
    if (!whole) return whole.error();
    const Result<HeatRun> early = run_case(known, middle, dive.until_settled(middle), false);
    if (!early) return early.error();
    const Suit& suit = known.place.suit;
    const Result<double> above = suit_insulation(suit, usual_fit, water.surface_pressure());
    if (!above) return above.error();
    const Result<double> below =
        suit_insulation(suit, usual_fit, water.absolute_pressure(bottom));
    if (!below) return below.error();
    warmth.suit_millimeters = suit.thickness_mm;
    warmth.suit_clo_at_surface = *above / square_meter_kelvins_per_watt_of_clo;
    warmth.suit_clo_at_depth = *below / square_meter_kelvins_per_watt_of_clo;
    warmth.heat_loss_watts = early->loss_watts;
    warmth.core_fall_kelvin = (resting_core - whole->core).value();
    return Done{};
}

}  // namespace

GuestWarmth plan_guest_warmth(const Session& session, const Guest& guest,
                              const WaterColumn& water) {
    GuestWarmth warmth;
    warmth.guest = guest.id;
    const std::optional<Suit> suit = read_suit_label(guest.kit.suit);
    warmth.gap = first_gap(guest, suit);
    if (warmth.gap != WarmthGap::none) return warmth;

    GuestWarmth outside;
    outside.guest = guest.id;
    outside.gap = WarmthGap::outside_range;
    const Result<Known> known = known_of(session, guest, *suit);
    if (!known) return outside;
    const Result<std::array<Case, 3>> cases = cases_of(*known);
    if (!cases) return outside;
    const Dive dive(session.profile, water);
    if (!set_minutes(dive, *known, *cases, warmth)) return outside;
    if (!set_numbers(dive, *known, (*cases)[1], water, deepest(session.profile), warmth)) {
        return outside;
    }
    return warmth;
}

}  // namespace leadline
