// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/warmth.h"

#include <algorithm>
#include <cmath>

#include "core/physics/range.h"

namespace leadline {
namespace {

constexpr double seconds_per_minute = 60.0;
constexpr double reference_mass = 80.0;               // kg
constexpr double joules_per_liter_oxygen = 20.1e3;
constexpr double gas_constant = 8.314462618;          // J/(mol K)
constexpr double molar_mass_air = 0.02896546;         // kg/mol
constexpr double molar_mass_water = 0.018015;         // kg/mol
constexpr double air_heat_capacity = 1007.0;          // J/(kg K)
constexpr double breathed_out = 307.15;               // K, 34 C
constexpr double vapour_pressure = 5320.0;            // Pa, saturated at 34 C
constexpr double latent_heat = 2.42e6;                // J/kg at 34 C
constexpr double fat_density = 900.0;                 // kg/m3
constexpr double fat_under_skin = 0.7;
constexpr double fat_conductivity = 0.21;             // W/(m K)
constexpr double open_muscle = 0.012;                 // m2K/W
constexpr double closing_muscle = 0.058;              // m2K/W
constexpr double outward_share = 0.5;                 // of fat and open muscle, beyond the shell
constexpr double resting_flux = 58.0;                 // W/m2, 1 met
constexpr double flux_scale = 60.0;                   // W/m2
constexpr double skin_closed = 303.15;                // K
constexpr double water_film = 1.0 / 230.0;            // m2K/W
constexpr double suited_share = 0.81;
constexpr double head_share = 0.05;
constexpr double limb_end_share = 0.14;
constexpr double head_tissue = 0.02;                  // m2K/W
constexpr double limb_end_tissue = 0.10;              // m2K/W

std::optional<Error> outside_mass(Kilograms mass) {
    return outside_range("body mass", mass.value(), 15.0, 250.0, "kg");
}

std::optional<Error> outside_pressure(Pascals absolute) {
    return outside_range("pressure", absolute.value(), 40e3, 1e6, "Pa");
}

std::optional<Error> outside_heat(double watts) {
    return outside_range("metabolic heat", watts, 0.0, 2000.0, "W");
}

std::optional<Error> outside_water(Kelvins water) {
    return outside_range("water temperature", water.value(), 271.15, 313.15, "K");
}

std::optional<Error> outside_ventilation(LitersPerMinute ventilation) {
    return outside_range("ventilation", ventilation.value(), 0.0, 150.0, "L/min");
}

std::optional<Error> outside_body(const HeatBody& body) {
    if (auto error = outside_mass(body.mass)) return error;
    if (auto error = outside_range("body surface", body.surface.value(), 0.3, 4.5, "m2")) {
        return error;
    }
    return outside_range("body fat", body.fat, 0.0, 0.7, "");
}

std::optional<Error> outside_leg(const HeatLeg& leg) {
    if (auto error = outside_range("duration", leg.duration.value(), 0.0, 1440.0, "min")) {
        return error;
    }
    if (auto error = outside_pressure(leg.from)) return error;
    if (auto error = outside_pressure(leg.to)) return error;
    return outside_heat(leg.metabolic_watts);
}

double fat_insulation(const HeatBody& body) {
    const double thickness =
        fat_under_skin * body.fat * body.mass.value() / fat_density / body.surface.value();
    return thickness / fat_conductivity;
}

/// Share of the muscle's insulation that work leaves.
double still_share(const HeatBody& body, double watts) {
    const double flux = watts / body.surface.value();
    return std::exp(-std::max(0.0, flux - resting_flux) / flux_scale);
}

double closed_share(double skin) {
    const double open = resting_skin.value();
    constexpr double per_kelvin = 1.0 / (resting_skin.value() - skin_closed);
    return std::clamp((open - skin) * per_kelvin, 0.0, 1.0);
}

/// Breathing loss = dry + wet: watts for a pascal of ambient pressure, and watts whatever the
/// pressure.
struct BreathLoss {
    double watts_per_pascal = 0.0;
    double watts_of_vapour = 0.0;
};

BreathLoss breath_loss(double liters_per_minute, double water) {
    const double cubic_meters = liters_per_minute / 1e3 / seconds_per_minute;  // m3/s
    const double moles_per_pascal = cubic_meters / (gas_constant * water);     // mol/(s Pa)
    return {moles_per_pascal * molar_mass_air * air_heat_capacity * (breathed_out - water),
            moles_per_pascal * molar_mass_water * vapour_pressure * latent_heat};
}

/// One diver's way through the legs.
class Cooling {
public:
    Cooling(const HeatBody& body, const HeatPlace& place)
        : body_(body),
          place_(place),
          surface_(body.surface.value()),
          core_capacity_((1.0 - shell_share) * body_heat_capacity * body.mass.value()),
          shell_capacity_(shell_share * body_heat_capacity * body.mass.value()),
          per_mass_(1.0 / body.mass.value()),
          fixed_(fat_insulation(body) + open_muscle),
          breath_(breath_loss(place.ventilation.value(), place.water.value())),
          water_(place.water.value()),
          shell_(resting_shell(body).value()) {}

    /// @returns an error of the suit's insulation (a range checked there)
    Result<Done> walk(const HeatLeg& leg, bool stop_at_limit, double longest_step) {
        const double minutes = leg.duration.value();
        if (minutes <= 0.0) return Done{};
        const int steps = std::max(1, static_cast<int>(std::ceil(minutes / longest_step - 1e-9)));
        const double dt = minutes / steps;
        const double from = leg.from.value();
        const double slope = (leg.to.value() - from) / steps;
        // What stays the same over the leg is worked out once: a session of eight runs this for
        // thousands of steps on every keystroke.
        const Step step_of_leg{dt,
                               dt * seconds_per_minute,
                               core_capacity_ / (dt * seconds_per_minute),
                               shell_capacity_ / (dt * seconds_per_minute),
                               leg.metabolic_watts,
                               closing_muscle * still_share(body_, leg.metabolic_watts)};
        for (int i = 0; i < steps; ++i) {
            const double pressure = from + slope * (i + 0.5);
            if (const Result<Done> set = take_suit(pressure); !set) return set.error();
            step(step_of_leg, pressure);
            if (stop_at_limit && run_.limit_reached) break;
        }
        return Done{};
    }

    [[nodiscard]] bool at_limit() const { return run_.limit_reached.has_value(); }

    [[nodiscard]] HeatRun result() const {
        HeatRun run = run_;
        run.lasted = Minutes(at_limit() && stopped_ ? run_.limit_reached->value() : time_);
        run.core = Kelvins(core_);
        run.shell = Kelvins(shell_);
        return run;
    }

    void stop() { stopped_ = true; }

private:
    struct Step {
        double minutes;
        double seconds;
        double core_capacity;   // W/K: heat capacity over the time of the step
        double shell_capacity;  // W/K
        double made;            // W
        double closing;         // m2K/W, muscle insulation that closed vessels add
    };

    /// The suit changes only with depth; at a constant one it is worked out once.
    Result<Done> take_suit(double pressure) {
        if (pressure == suit_pressure_) return Done{};
        const Result<double> outer = outer_insulation(place_.suit, place_.fit, Pascals(pressure));
        if (!outer) return outer.error();
        const double outward = outward_share * fixed_ + *outer;
        to_water_ = surface_ / outward;
        skin_share_ = *outer / outward;
        suit_pressure_ = pressure;
        return Done{};
    }

    void step(const Step& of, double pressure) {
        const double middle = shell_ + 0.5 * of.minutes * shell_rate_;  // by the last step's rate
        const double skin = water_ + skin_share_ * (middle - water_);
        const double tissue = (1.0 - outward_share) * fixed_ + of.closing * closed_share(skin);
        const double breath = breath_.watts_per_pascal * pressure + breath_.watts_of_vapour;
        // The trapezoidal rule for both nodes: two equations for the new temperatures.
        const double h = 0.5 * surface_ / tissue;  // W/K
        const double g = 0.5 * to_water_;
        const double core_side = of.core_capacity + h;
        const double shell_side = of.shell_capacity + h + g;
        const double right_core = (of.core_capacity - h) * core_ + h * shell_ + of.made - breath;
        const double right_shell =
            h * core_ + (of.shell_capacity - h - g) * shell_ + 2.0 * g * water_;
        const double inverse = 1.0 / (core_side * shell_side - h * h);
        double core = (right_core * shell_side + h * right_shell) * inverse;
        double shell = (core_side * right_shell + h * right_core) * inverse;
        const double out = g * (shell_ + shell - 2.0 * water_) + breath;
        run_.breath_watts = breath;
        run_.loss_watts = to_water_ * (shell - water_) + breath;
        run_.produced_joules += of.made * of.seconds;
        run_.lost_joules += out * of.seconds;
        open_vessels(core, shell);
        shell_rate_ = (shell - shell_) / of.minutes;
        note_limits(of.minutes, core);
        core_ = core;
        shell_ = shell;
        time_ += of.minutes;
    }

    /// A core above its resting temperature opens the vessels: what it has too much goes to the shell,
    /// and from there to the water. Without that a working diver would store heat that nobody stores.
    void open_vessels(double& core, double& shell) const {
        if (core <= resting_core.value()) return;
        const double warmed =
            shell + (core - resting_core.value()) * core_capacity_ / shell_capacity_;
        if (warmed <= resting_core.value()) {
            shell = warmed;
            core = resting_core.value();
            return;
        }
        const double mean = (core * core_capacity_ + shell * shell_capacity_) /
                            (core_capacity_ + shell_capacity_);
        core = mean;
        shell = mean;
    }

    /// Limits passed within the step, by the straight line between its ends.
    void note_limits(double dt, double core) {
        const double debt = (run_.lost_joules - run_.produced_joules) * per_mass_;
        const auto time_at = [&](double limit, double before, double after) {
            return Minutes(time_ + dt * (limit - before) / (after - before));
        };
        if (!run_.chilled && debt >= chill_debt) {
            run_.chilled = time_at(chill_debt, debt_, debt);
        }
        if (!run_.limit_reached) {
            if (core <= least_core.value()) {
                run_.limit_reached = time_at(least_core.value(), core_, core);
                run_.limit = WarmthLimit::core;
            }
            if (debt >= heat_debt_limit) {
                const Minutes reached = time_at(heat_debt_limit, debt_, debt);
                if (!run_.limit_reached || reached < *run_.limit_reached) {
                    run_.limit_reached = reached;
                    run_.limit = WarmthLimit::heat_debt;
                }
            }
        }
        debt_ = debt;
    }

    const HeatBody& body_;
    const HeatPlace& place_;
    double surface_;
    double core_capacity_;   // J/K
    double shell_capacity_;  // J/K
    double per_mass_;        // 1/kg
    double fixed_;           // m2K/W, tissue insulation that does not change
    BreathLoss breath_;
    double water_;           // K
    double core_ = resting_core.value();
    double shell_;
    double shell_rate_ = 0.0;       // K/min
    double to_water_ = 0.0;         // W/K, from the shell
    double skin_share_ = 1.0;       // of the difference between shell and water
    double suit_pressure_ = -1.0;   // Pa
    double debt_ = 0.0;             // J/kg
    double time_ = 0.0;             // min
    bool stopped_ = false;
    HeatRun run_;
};

}  // namespace

Kelvins resting_shell(const HeatBody& body) {
    const double inner = (1.0 - outward_share) * (fat_insulation(body) + open_muscle);
    return Kelvins(resting_core.value() - resting_flux * inner);
}

Result<double> metabolic_watts(Kilograms mass, double oxygen_of_80) {
    if (auto error = outside_mass(mass)) return *error;
    if (auto error = outside_range("oxygen uptake", oxygen_of_80, 0.2, 4.0, "L/min")) {
        return *error;
    }
    return oxygen_of_80 * joules_per_liter_oxygen / seconds_per_minute *
           std::pow(mass.value() / reference_mass, 0.75);
}

Result<double> breath_loss_watts(LitersPerMinute ventilation, Pascals absolute, Kelvins water) {
    if (auto error = outside_ventilation(ventilation)) return *error;
    if (auto error = outside_pressure(absolute)) return *error;
    if (auto error = outside_water(water)) return *error;
    const BreathLoss loss = breath_loss(ventilation.value(), water.value());
    return loss.watts_per_pascal * absolute.value() + loss.watts_of_vapour;
}

Result<double> tissue_insulation(const HeatBody& body, double watts, Kelvins skin) {
    if (auto error = outside_body(body)) return *error;
    if (auto error = outside_heat(watts)) return *error;
    if (auto error = outside_range("skin temperature", skin.value(), 263.15, 318.15, "K")) {
        return *error;
    }
    return fat_insulation(body) + open_muscle +
           closing_muscle * closed_share(skin.value()) * still_share(body, watts);
}

Result<double> outer_insulation(const Suit& suit, double fit, Pascals absolute) {
    const Result<double> layer = suit_insulation(suit, fit, absolute);
    if (!layer) return layer.error();
    const double head = head_tissue + water_film + (suit.hood ? *layer : 0.0);
    const double conductance = suited_share / (*layer + water_film) + head_share / head +
                               limb_end_share / (limb_end_tissue + water_film);
    return 1.0 / conductance;
}

Result<ImmersedDiver> ImmersedDiver::make(const HeatBody& body, const HeatPlace& place) {
    if (auto error = outside_body(body)) return *error;
    if (auto error = outside_ventilation(place.ventilation)) return *error;
    if (auto error = outside_water(place.water)) return *error;
    const Result<double> outer = outer_insulation(place.suit, place.fit, Pascals(101325.0));
    if (!outer) return outer.error();
    return ImmersedDiver(body, place);
}

Result<HeatRun> ImmersedDiver::run(std::span<const HeatLeg> legs, bool stop_at_limit,
                                   Minutes longest_step) const {
    if (auto error = outside_range("step", longest_step.value(), 0.01, 5.0, "min")) return *error;
    for (const HeatLeg& leg : legs) {
        if (auto error = outside_leg(leg)) return *error;
    }
    Cooling cooling(body_, place_);
    for (const HeatLeg& leg : legs) {
        if (const Result<Done> done = cooling.walk(leg, stop_at_limit, longest_step.value());
            !done) {
            return done.error();
        }
        if (stop_at_limit && cooling.at_limit()) {
            cooling.stop();
            break;
        }
    }
    return cooling.result();
}

}  // namespace leadline
