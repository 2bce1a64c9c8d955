// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/suit.h"

#include <algorithm>
#include <cctype>
#include <string>

#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double standard_atmosphere = 101325.0;  // Pa
constexpr double rubber_density = 1230.0;         // kg/m3
constexpr double rubber_conductivity = 0.19;      // W/(m K)
constexpr double gas_conductivity = 0.026;        // W/(m K), air
constexpr double thinnest_label = 0.5;            // mm
constexpr double thickest = 10.0;                 // mm

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string lower(std::string_view text) {
    std::string result(text);
    for (char& c : result) {
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    return result;
}

bool holds(const std::string& text, std::string_view word) {
    return text.find(word) != std::string::npos;
}

/// Reads plain numbers ("5", "2.5", "2,5") backwards from the end of a text, as long as a slash
/// stands between them, and gives the smallest.
class BackwardNumbers {
public:
    explicit BackwardNumbers(std::string_view text) : text_(text) {}

    std::optional<double> smallest() {
        std::optional<double> found;
        do {
            skip_spaces();
            const std::optional<double> number = take_number();
            if (!number) return std::nullopt;
            found = std::min(found.value_or(*number), *number);
            skip_spaces();
        } while (take_slash());
        return found;
    }

private:
    void skip_spaces() {
        while (!text_.empty() && text_.back() == ' ') text_.remove_suffix(1);
    }

    bool take_slash() {
        if (text_.empty() || text_.back() != '/') return false;
        text_.remove_suffix(1);
        return true;
    }

    std::optional<double> take_number() {
        double value = 0.0;
        double place = 1.0;
        bool any = false;
        bool after_point = false;
        while (!text_.empty()) {
            const char c = text_.back();
            if (is_digit(c)) {
                value += place * (c - '0');
                place *= 10.0;
                any = true;
            } else if ((c == '.' || c == ',') && any && !after_point) {
                value /= place;
                place = 1.0;
                after_point = true;
            } else {
                break;
            }
            if (place > 1e6) return std::nullopt;
            text_.remove_suffix(1);
        }
        return any ? std::optional(value) : std::nullopt;
    }

    std::string_view text_;
};

std::optional<double> labelled_thickness(const std::string& label) {
    for (std::size_t at = label.find("mm"); at != std::string::npos;
         at = label.find("mm", at + 1)) {
        const auto number = BackwardNumbers(std::string_view(label).substr(0, at)).smallest();
        if (number && *number >= thinnest_label && *number <= thickest) return number;
    }
    return std::nullopt;
}

std::optional<Error> outside_suit(const Suit& suit) {
    return outside_range("suit thickness", suit.thickness_mm, 0.0, thickest, "mm");
}

}  // namespace

std::optional<Suit> read_suit_label(std::string_view label) {
    const std::string text = lower(label);
    if (holds(text, "dry") && !holds(text, "semi")) return std::nullopt;
    const std::optional<double> thickness = labelled_thickness(text);
    if (!thickness) return std::nullopt;
    const bool no_hood = holds(text, "no hood") || holds(text, "without hood");
    return Suit{*thickness, holds(text, "hood") && !no_hood, holds(text, "short")};
}

Result<FoamState> squeezed_foam(KilogramsPerCubicMeter density, Pascals absolute) {
    if (auto error = outside_range("foam density", density.value(), 120.0, 300.0, "kg/m3")) {
        return *error;
    }
    if (auto error = outside_range("pressure", absolute.value(), 40e3, 1e6, "Pa")) return *error;
    const double gas_made = 1.0 - density.value() / rubber_density;
    const double gas_left = gas_made * std::min(1.0, standard_atmosphere / absolute.value());
    const double ratio = 1.0 - gas_made + gas_left;
    const double fraction = gas_left / ratio;
    const double sum = 2.0 * rubber_conductivity + gas_conductivity;
    const double difference = rubber_conductivity - gas_conductivity;
    return FoamState{ratio, rubber_conductivity * (sum - 2.0 * fraction * difference) /
                                (sum + fraction * difference)};
}

Result<double> suit_insulation(const Suit& suit, double fit, Pascals absolute) {
    if (auto error = outside_suit(suit)) return *error;
    if (auto error = outside_range("fit of the suit", fit, 0.3, 1.0, "")) return *error;
    const Result<FoamState> foam = squeezed_foam(foam_density, absolute);
    if (!foam) return foam.error();
    const double thickness = suit.thickness_mm / 1e3 * foam->thickness_ratio;
    return (suit.shorty ? 0.5 : 1.0) * fit * thickness / foam->conductivity;
}

double suit_coverage(const Suit& suit) {
    return (suit.shorty ? 0.515 : 0.81) + (suit.hood ? 0.05 : 0.0);
}

Result<SuitBulk> suit_bulk(const Suit& suit, SquareMeters body_surface,
                           KilogramsPerCubicMeter density, Pascals absolute) {
    if (auto error = outside_suit(suit)) return *error;
    if (auto error = outside_range("body surface", body_surface.value(), 0.3, 4.5, "m2")) {
        return *error;
    }
    const Result<FoamState> foam = squeezed_foam(density, absolute);
    if (!foam) return foam.error();
    // m2 times mm is litres.
    const double liters = body_surface.value() * suit_coverage(suit) * suit.thickness_mm;
    return SuitBulk{Kilograms(liters / 1e3 * density.value()),
                    Liters(liters * foam->thickness_ratio)};
}

}  // namespace leadline
