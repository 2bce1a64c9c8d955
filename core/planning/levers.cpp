// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/levers.h"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "core/body/suit.h"
#include "core/physics/number_text.h"

namespace leadline {
namespace {

constexpr double shallower_by = 1.0;         // m
constexpr double shallowest = 2.0;           // m: less is hardly a dive
constexpr double skills_off = 3.0;           // min
constexpr double skills_kept = 3.0;          // min
constexpr double least_gain_minutes = 0.05;  // below that nobody would notice
constexpr double least_gain_chance = 0.001;
constexpr double noticeable_chance = 0.01;

/// A group's breathers as the plan has them, but for one guest left out.
LogGroup breathers_without(const std::vector<GuestGas>& guests, const GroupId& group,
                           const GuestId& left_out) {
    LogGroup log;
    log.shared_sigma = shared_breathing_sigma;
    for (const GuestGas& gas : guests) {
        if (gas.group != group || !gas.has_cylinder || gas.guest == left_out) continue;
        log.breathers.push_back(breather(gas.breathing, gas.load_to_reserve));
    }
    return log;
}

/// A guest of a changed session.
void add_breather(LogGroup& log, const GasContext& context, const Guest& guest) {
    const GuestLoads loads = guest_loads(context, guest);
    if (loads.type == nullptr) return;
    log.breathers.push_back(breather(loads.breathing, loads.to_reserve));
}

void add_breather(LogGroup& log, const GuestGas* gas) {
    if (gas == nullptr || !gas->has_cylinder) return;
    log.breathers.push_back(breather(gas->breathing, gas->load_to_reserve));
}

/// The outlook of a group on another profile.
GroupOutlook outlook_on(const Profile& profile, const Session& session, const GasContext& context,
                        const GroupId& group) {
    const GasContext changed{context.water,
                             profile,
                             context.conditions,
                             BreathingCurve::along(profile, context.water),
                             BreathingCurve::held_at_depth(profile, context.water),
                             context.reserve,
                             context.ascent_rate};
    LogGroup log;
    log.shared_sigma = shared_breathing_sigma;
    for (const Guest* guest : guests_in(session, group)) add_breather(log, changed, *guest);
    return outlook(changed, log);
}

/// Minutes of the profile's skills legs.
double skills_minutes(const Profile& profile) {
    double minutes = 0.0;
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        if (profile.points[i].phase != Phase::skills) continue;
        minutes += (profile.points[i].time - profile.points[i - 1].time).value();
    }
    return minutes;
}

Profile less_deep(Profile profile, Depth limit) {
    for (ProfilePoint& point : profile.points) point.depth = std::min(point.depth, limit);
    return profile;
}

/// Takes the same share off every skills leg and moves what follows forward.
Profile with_less_skills(Profile profile, Minutes off) {
    const double share = off.value() / skills_minutes(profile);
    const std::vector<ProfilePoint> before = profile.points;
    double earlier = 0.0;
    for (std::size_t i = 1; i < before.size(); ++i) {
        if (before[i].phase == Phase::skills) {
            earlier += share * (before[i].time - before[i - 1].time).value();
        }
        profile.points[i].time = before[i].time - Minutes(earlier);
    }
    return profile;
}

/// A kind's count in stock less what is handed out; none: the stock is not on record.
std::optional<int> free_cylinders(const Session& session, const CylinderTypeId& type) {
    if (session.stock.cylinders.empty()) return std::nullopt;
    int count = 0;
    for (const CylinderStock& line : session.stock.cylinders) {
        if (line.type == type) count += line.count;
    }
    const auto uses = [&](const std::optional<Cylinder>& cylinder) {
        return cylinder && cylinder->type == type;
    };
    for (const Guest& guest : session.guests) count -= uses(guest.kit.cylinder) ? 1 : 0;
    for (const StaffMember& member : session.staff) count -= uses(member.cylinder) ? 1 : 0;
    return count;
}

std::optional<int> free_suits(const Session& session, const std::string& suit) {
    if (session.stock.suits.empty()) return std::nullopt;
    int count = 0;
    for (const SuitStock& line : session.stock.suits) {
        if (line.suit == suit) count += line.count;
    }
    for (const Guest& guest : session.guests) count -= guest.kit.suit == suit ? 1 : 0;
    return count;
}

std::optional<Lever> cylinder_lever(const Session& session, const Guest& guest) {
    if (!guest.kit.cylinder) return std::nullopt;
    const CylinderType* now = find_cylinder_type(guest.kit.cylinder->type);
    if (now == nullptr) return std::nullopt;
    const CylinderType* next = nullptr;
    for (const CylinderType& type : cylinder_types()) {
        // The reading stays what it is, so the room inside is what counts.
        if (type.water_capacity <= now->water_capacity) continue;
        if (free_cylinders(session, type.id).value_or(1) < 1) continue;
        if (next == nullptr || type.water_capacity < next->water_capacity) next = &type;
    }
    if (next == nullptr) return std::nullopt;
    Lever lever;
    lever.kind = LeverKind::bigger_cylinder;
    lever.guest = guest.id;
    lever.cylinder = next->id;
    lever.stock_known = !session.stock.cylinders.empty();
    return lever;
}

/// The label with its first number replaced: "5 mm M" -> "7 mm M".
std::string with_thickness(const std::string& label, double millimeters) {
    const auto digit = [](char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; };
    const auto first = std::find_if(label.begin(), label.end(), digit);
    const auto last = std::find_if(
        first, label.end(), [&](char c) { return !digit(c) && c != '.' && c != '/'; });
    return std::string(label.begin(), first) + number_text(millimeters) +
           std::string(last, label.end());
}

std::optional<Lever> suit_lever(const Session& session, const Guest& guest) {
    const std::optional<Suit> now = read_suit_label(guest.kit.suit);
    const double wanted = usual_suit_millimeters(session.conditions.water_temperature);
    // Millimetres tell the warmth of suits of one cut only.
    if (!now || now->shorty || now->thickness_mm >= wanted) return std::nullopt;
    Lever lever;
    lever.kind = LeverKind::warmer_suit;
    lever.guest = guest.id;
    lever.stock_known = !session.stock.suits.empty();
    if (!lever.stock_known) {
        lever.suit = with_thickness(guest.kit.suit, wanted);
        return lever;
    }
    double thickest = now->thickness_mm;
    for (const SuitStock& line : session.stock.suits) {
        const std::optional<Suit> suit = read_suit_label(line.suit);
        if (!suit || suit->shorty || suit->thickness_mm <= thickest) continue;
        if (free_suits(session, line.suit).value_or(0) < 1) continue;
        thickest = suit->thickness_mm;
        lever.suit = line.suit;
    }
    if (lever.suit.empty()) return std::nullopt;
    return lever;
}

/// What a search for levers looks at.
struct Search {
    const Session& session;
    const GasContext& context;
    const std::vector<GuestGas>& guests;
    const GroupForecast& forecast;

    [[nodiscard]] const GuestGas* gas(const GuestId& id) const {
        const auto found = std::find_if(guests.begin(), guests.end(),
                                        [&](const GuestGas& one) { return one.guest == id; });
        return found == guests.end() ? nullptr : &*found;
    }
    /// Chance that a group with these breathers lasts; certain without any.
    [[nodiscard]] double chance(const LogGroup& log) const {
        if (log.breathers.empty()) return 1.0;
        return chance_all_last(log, context.dive.total().value()).value_or(0.0);
    }
};

/// The group's outlook with the lever's guest changed, exchanged or gone.
GroupOutlook outlook_with(const Search& search, const Lever& lever) {
    LogGroup log = breathers_without(search.guests, search.forecast.group, lever.guest);
    if (lever.kind == LeverKind::swap_guests) {
        add_breather(log, search.gas(lever.other_guest));
    } else if (lever.kind != LeverKind::one_guest_fewer) {
        const Session changed = with_lever(search.session, lever);
        if (const Guest* guest = find_guest(changed, lever.guest)) {
            add_breather(log, search.context, *guest);
        }
    }
    return outlook(search.context, log);
}

/// A change that costs minutes must do something for the chance that people would notice.
bool helps(const Lever& lever) {
    if (lever.gain && lever.gain->value() >= least_gain_minutes) return true;
    const bool costs = lever.gain && lever.gain->value() < 0.0;
    return lever.gain_completes >= (costs ? noticeable_chance : least_gain_chance);
}

/// Weighs a lever against the group's present outlook and keeps it if it helps.
void consider(const Search& search, std::vector<Lever>& levers, Lever lever) {
    lever.group = search.forecast.group;
    GroupOutlook after;
    if (lever.kind == LeverKind::shallower || lever.kind == LeverKind::shorter_skills) {
        const Profile profile = with_lever(search.session, lever).profile;
        // Legs of a few seconds can become too short for a profile.
        if (!check(profile)) return;
        after = outlook_on(profile, search.session, search.context, lever.group);
    } else {
        after = outlook_with(search, lever);
    }
    const std::optional<Minutes>& before = search.forecast.first_at_reserve.middle;
    lever.gain_is_least = before && !after.first_at_reserve;
    if (before) lever.gain = after.first_at_reserve.value_or(longest_profile) - *before;
    lever.completes = after.completes;
    lever.gain_completes = after.completes - search.forecast.completes;
    if (helps(lever)) levers.push_back(std::move(lever));
}

/// The swap that leaves the smaller of the two groups' chances greatest; none when no swap betters it.
std::optional<Lever> best_swap(const Search& search, const Guest& guest) {
    const GuestId nobody;
    const LogGroup rest = breathers_without(search.guests, search.forecast.group, guest.id);
    std::optional<Lever> best;
    double most_gained = least_gain_chance;
    for (const Group& group : search.session.groups) {
        if (group.id == search.forecast.group) continue;
        const double now = search.chance(breathers_without(search.guests, group.id, nobody));
        const double worse_now = std::min(search.forecast.completes, now);
        for (const Guest* other : guests_in(search.session, group.id)) {
            LogGroup here = rest;
            add_breather(here, search.gas(other->id));
            LogGroup there = breathers_without(search.guests, group.id, other->id);
            add_breather(there, search.gas(guest.id));
            const double there_chance = search.chance(there);
            const double gained = std::min(search.chance(here), there_chance) - worse_now;
            if (gained <= most_gained) continue;
            most_gained = gained;
            Lever lever;
            lever.kind = LeverKind::swap_guests;
            lever.guest = guest.id;
            lever.other_guest = other->id;
            lever.other_group_change = there_chance - now;
            best = lever;
        }
    }
    return best;
}

}  // namespace

std::vector<Lever> find_levers(const Session& session, const GasContext& context,
                               const std::vector<GuestGas>& guests,
                               const GroupForecast& forecast) {
    std::vector<Lever> levers;
    const Guest* first = find_guest(session, forecast.likely_first);
    if (first == nullptr) return levers;
    const Search search{session, context, guests, forecast};

    const double depth = deepest(session.profile).meters().value();
    if (depth > shallowest) {
        Lever lever;
        lever.kind = LeverKind::shallower;
        lever.deepest = Depth(Meters(std::max(shallowest, depth - shallower_by)));
        consider(search, levers, lever);
    }
    const double off = std::min(skills_off, skills_minutes(session.profile) - skills_kept);
    if (off >= 0.5) {
        Lever lever;
        lever.kind = LeverKind::shorter_skills;
        lever.minutes_off = Minutes(off);
        consider(search, levers, lever);
    }
    if (const auto lever = cylinder_lever(session, *first)) consider(search, levers, *lever);
    if (const auto lever = suit_lever(session, *first)) consider(search, levers, *lever);
    if (const auto lever = best_swap(search, *first)) {
        consider(search, levers, *lever);
    }
    if (forecast.guests.size() > 1) {
        Lever lever;
        lever.kind = LeverKind::one_guest_fewer;
        lever.guest = first->id;
        consider(search, levers, lever);
    }
    std::stable_sort(levers.begin(), levers.end(), [](const Lever& a, const Lever& b) {
        const double gain_a = a.gain ? a.gain->value() : 0.0;
        const double gain_b = b.gain ? b.gain->value() : 0.0;
        if (gain_a != gain_b) return gain_a > gain_b;
        return a.gain_completes > b.gain_completes;
    });
    return levers;
}

Session with_lever(const Session& session, const Lever& lever) {
    Session changed = session;
    Guest* guest = find_guest(changed, lever.guest);
    switch (lever.kind) {
        case LeverKind::shallower:
            changed.profile = less_deep(changed.profile, lever.deepest);
            break;
        case LeverKind::shorter_skills:
            if (skills_minutes(changed.profile) > lever.minutes_off.value()) {
                changed.profile = with_less_skills(changed.profile, lever.minutes_off);
            }
            break;
        case LeverKind::bigger_cylinder:
            if (guest != nullptr && guest->kit.cylinder) {
                const CylinderType* type = find_cylinder_type(lever.cylinder);
                Cylinder& cylinder = *guest->kit.cylinder;
                cylinder.type = lever.cylinder;
                if (type != nullptr) {
                    cylinder.fill_pressure = std::min(cylinder.fill_pressure, type->working_pressure);
                }
            }
            break;
        case LeverKind::warmer_suit:
            if (guest != nullptr) guest->kit.suit = lever.suit;
            break;
        case LeverKind::swap_guests:
            if (Guest* other = find_guest(changed, lever.other_guest); guest && other) {
                std::swap(guest->group, other->group);
            }
            break;
        case LeverKind::one_guest_fewer:
            if (guest != nullptr) guest->group = GroupId();
            break;
    }
    return changed;
}

}  // namespace leadline
