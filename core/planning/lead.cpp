// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/lead.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

#include "core/body/composition.h"
#include "core/body/suit.h"
#include "core/physics/range.h"
#include "core/planning/body_age.h"
#include "core/planning/cylinder.h"

namespace leadline {
namespace {

constexpr double lead_density = 11340.0;  // kg/m3
constexpr double old_suit_thickness = 0.8;
constexpr Band other_kit{-1.5, -1.0, -0.5};  // kg of lift
constexpr Depth stop_depth{Meters(3.0)};
constexpr int grams_per_kilogram = 1000;

/// The lift [kg] of everything but lead, at one depth.
struct Lift {
    double middle = 0.0;
    double below = 0.0;  ///< by how much the low case lies under it
    double above = 0.0;
};

/// Parts that vary independently: their squares are added.
Lift sum_of(std::initializer_list<Band> parts) {
    Lift sum;
    double below = 0.0;
    double above = 0.0;
    for (const Band& part : parts) {
        sum.middle += part.middle;
        below += (part.middle - part.low) * (part.middle - part.low);
        above += (part.high - part.middle) * (part.high - part.middle);
    }
    sum.below = std::sqrt(below);
    sum.above = std::sqrt(above);
    return sum;
}

/// A guest's body and kit in a water.
class Diver {
public:
    static Result<Diver> make(const Session& session, const Guest& guest, const Suit& suit,
                              const WaterColumn& water, Bars reserve) {
        Diver diver(water, suit);
        if (const auto done = diver.take_body(guest, body_age(session, guest)); !done) {
            return done.error();
        }
        const Kelvins cold = session.conditions.water_temperature;
        if (const auto done = diver.take_cylinder(*guest.kit.cylinder, cold, reserve); !done) {
            return done.error();
        }
        return diver;
    }

    [[nodiscard]] Result<Lift> at(Depth depth, bool at_reserve) const {
        const Pascals pressure = water_.absolute_pressure(depth);
        Suit old = suit_;
        old.thickness_mm *= old_suit_thickness;
        const Result<double> low = suit_lift(old, heavy_foam_density, pressure);
        if (!low) return low.error();
        const Result<double> middle = suit_lift(suit_, foam_density, pressure);
        if (!middle) return middle.error();
        const Result<double> high = suit_lift(suit_, light_foam_density, pressure);
        if (!high) return high.error();
        const double cylinder = at_reserve ? cylinder_reserve_ : cylinder_start_;
        return sum_of({tissue_, lungs_, Band{*low, *middle, *high}, other_kit,
                       Band{cylinder, cylinder, cylinder}});
    }

    /// What a kilogram of lead pulls down, as lead has a volume too.
    [[nodiscard]] double pull_of_lead() const { return 1.0 - density_ / lead_density; }

private:
    Diver(const WaterColumn& water, const Suit& suit)
        : water_(water), suit_(suit), density_(water.surface_density().value()) {}

    Result<Done> take_body(const Guest& guest, int age) {
        const Kilograms mass = *guest.body_mass;
        const Meters height = *guest.body_height;
        const Result<SquareMeters> surface = body_surface(mass, height);
        if (!surface) return surface.error();
        surface_ = *surface;
        const Result<Band> fat = fat_fraction(mass, height, age);
        if (!fat) return fat.error();
        const Result<Band> lungs = half_full_lungs_liters(height, age);
        if (!lungs) return lungs.error();
        std::array<double, 3> lifts{};
        const std::array<double, 3> fats{fat->low, fat->middle, fat->high};
        for (std::size_t i = 0; i < fats.size(); ++i) {
            const Result<KilogramsPerCubicMeter> tissue = tissue_density(fats[i]);
            if (!tissue) return tissue.error();
            lifts[i] = mass.value() * (density_ / tissue->value() - 1.0);
        }
        tissue_ = {lifts[0], lifts[1], lifts[2]};
        const double per_liter = density_ / 1e3;
        lungs_ = {lungs->low * per_liter, lungs->middle * per_liter, lungs->high * per_liter};
        return Done{};
    }

    Result<Done> take_cylinder(const Cylinder& cylinder, Kelvins cold, Bars reserve) {
        const CylinderType* type = find_cylinder_type(cylinder.type);
        const Pascals surface = water_.surface_pressure();
        const Result<Moles> start = cylinder_content(cylinder, surface);
        if (!start) return start.error();  // an unknown type too
        const Moles kept = std::min(*start, content_at_gauge(*type, reserve, cold, surface));
        const KilogramsPerCubicMeter density(density_);
        const Result<Kilograms> full = cylinder_lift(*type, *start, density);
        if (!full) return full.error();
        const Result<Kilograms> low = cylinder_lift(*type, kept, density);
        if (!low) return low.error();
        cylinder_start_ = full->value();
        cylinder_reserve_ = low->value();
        return Done{};
    }

    [[nodiscard]] Result<double> suit_lift(const Suit& suit, KilogramsPerCubicMeter foam,
                                           Pascals pressure) const {
        const Result<SuitBulk> bulk = suit_bulk(suit, surface_, foam, pressure);
        if (!bulk) return bulk.error();
        return bulk->volume.value() / 1e3 * density_ - bulk->mass.value();
    }

    WaterColumn water_;
    Suit suit_;
    double density_;  // kg/m3
    SquareMeters surface_{};
    Band tissue_;  // lift, kg
    Band lungs_;   // lift, kg
    double cylinder_start_ = 0.0;
    double cylinder_reserve_ = 0.0;
};

LeadGap first_gap(const Guest& guest, const std::optional<Suit>& suit) {
    if (!guest.body_mass) return LeadGap::body_mass;
    if (!guest.body_height) return LeadGap::body_height;
    if (!suit) return LeadGap::suit;
    if (!guest.kit.cylinder) return LeadGap::cylinder;
    return LeadGap::none;
}

Kilograms sum_below(const std::vector<Kilograms>& sums, double wanted) {
    const auto after = std::upper_bound(sums.begin(), sums.end(), Kilograms(wanted));
    return after == sums.begin() ? sums.front() : *(after - 1);
}

Kilograms sum_above(const std::vector<Kilograms>& sums, double wanted) {
    const auto found = std::lower_bound(sums.begin(), sums.end(), Kilograms(wanted));
    return found == sums.end() ? sums.back() : *found;
}

Kilograms nearest_sum(const std::vector<Kilograms>& sums, double wanted) {
    const Kilograms below = sum_below(sums, wanted);
    const Kilograms above = sum_above(sums, wanted);
    return above.value() - wanted < wanted - below.value() ? above : below;
}

/// Fills in all numbers of a guest without a gap.
Result<Done> set_lead(const Diver& diver, const std::vector<Kilograms>& sums, Depth bottom,
                      const Guest& guest, GuestLead& lead) {
    const Result<Lift> end = diver.at(Depth(), true);
    if (!end) return end.error();
    const Result<Lift> start = diver.at(Depth(), false);
    if (!start) return start.error();
    const Result<Lift> deep_start = diver.at(bottom, false);
    if (!deep_start) return deep_start.error();
    const Result<Lift> deep_end = diver.at(bottom, true);
    if (!deep_end) return deep_end.error();
    const Result<Lift> stop = diver.at(stop_depth, true);
    if (!stop) return stop.error();

    const double pull = diver.pull_of_lead();
    if (auto error = outside_range("lead", std::max(0.0, end->middle / pull), 0.0,
                                   most_lead.value(), "kg")) {
        return *error;
    }
    lead.low = sum_below(sums, (end->middle - end->below) / pull);
    lead.middle = nearest_sum(sums, end->middle / pull);
    lead.high = sum_above(sums, (end->middle + end->above) / pull);
    lead.carried = guest.kit.lead.value_or(lead.middle);
    const double down = lead.carried.value() * pull;
    lead.at_surface_start = Kilograms(start->middle - down);
    lead.at_surface_reserve = Kilograms(end->middle - down);
    lead.at_depth_start = Kilograms(deep_start->middle - down);
    lead.at_depth_reserve = Kilograms(deep_end->middle - down);
    if (const std::optional<Kilograms> lift = bcd_lift_of(guest.kit.bcd)) {
        lead.bcd_lift = *lift;
        lead.bcd_cannot_hold_up =
            down - (deep_start->middle - deep_start->below) > lift->value();
    }
    lead.cannot_stay_down = stop->middle - stop->below - down > 0.0;
    return Done{};
}

/// The label's letters and digits, up to the first other character, in capitals: "m/l" gives "M".
std::string size_word(const std::string& label) {
    std::string word;
    for (const char c : label) {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isalnum(byte) != 0) {
            word += static_cast<char>(std::toupper(byte));
        } else if (!word.empty()) {
            break;
        }
    }
    return word;
}

}  // namespace

std::optional<Kilograms> bcd_lift_of(const std::string& label) {
    if (label.empty()) return std::nullopt;
    const std::string size = size_word(label);
    if (size == "S") return Kilograms(10.0);
    if (size == "M" || size == "ML") return Kilograms(13.0);
    if (size == "L") return Kilograms(16.0);
    if (size == "XL" || size == "XXL" || size == "2XL" || size == "3XL") return Kilograms(19.0);
    return Kilograms(7.0);
}

Result<std::vector<Kilograms>> sums_of_pieces(const std::vector<Kilograms>& pieces) {
    const auto most = static_cast<std::size_t>(most_lead.value()) * grams_per_kilogram;
    std::vector<std::size_t> sizes;  // grams
    for (const Kilograms piece : pieces) {
        if (auto error = outside_range("lead piece", piece.value(), 0.1, 10.0, "kg")) return *error;
        sizes.push_back(static_cast<std::size_t>(std::lround(piece.value() * grams_per_kilogram)));
    }
    if (sizes.empty()) sizes.push_back(grams_per_kilogram);
    std::vector<bool> seen(most + 1, false);
    std::vector<std::size_t> sums{0};
    for (const std::size_t size : sizes) {
        // The list grows while it is walked: a size may be added to a sum that holds it already.
        for (std::size_t i = 0; i < sums.size(); ++i) {
            const std::size_t next = sums[i] + size;
            if (next > most || seen[next]) continue;
            seen[next] = true;
            sums.push_back(next);
        }
    }
    std::sort(sums.begin(), sums.end());
    std::vector<Kilograms> result;
    result.reserve(sums.size());
    for (const std::size_t sum : sums) {
        result.emplace_back(static_cast<double>(sum) / grams_per_kilogram);
    }
    return result;
}

GuestLead plan_guest_lead(const Session& session, const Guest& guest, const WaterColumn& water,
                          Bars reserve) {
    GuestLead lead;
    lead.guest = guest.id;
    const std::optional<Suit> suit = read_suit_label(guest.kit.suit);
    lead.gap = first_gap(guest, suit);
    if (lead.gap != LeadGap::none) return lead;

    GuestLead outside;
    outside.guest = guest.id;
    outside.gap = LeadGap::outside_range;
    const Result<std::vector<Kilograms>> sums = sums_of_pieces(session.stock.lead_pieces);
    if (!sums) return outside;
    const Result<Diver> diver = Diver::make(session, guest, *suit, water, reserve);
    if (!diver) return outside;
    if (!set_lead(*diver, *sums, deepest(session.profile), guest, lead)) return outside;
    return lead;
}

}  // namespace leadline
