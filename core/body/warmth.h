// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/body/suit.h"
#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

// A heat balance of an immersed, suited diver in two nodes: core (head and trunk) and shell
// (limbs, and what lies under the skin):
//
//     0.5 m c dTc/dt = M - B - A (Tc - Ts) / Ri
//     0.5 m c dTs/dt = A (Tc - Ts) / Ri - A (Ts - Tw) / Ro
//
// with M metabolic heat, B heat lost by breathing, A the body's surface; Ri and Ro hold the
// tissue's insulation (see tissue_insulation(): half of its fixed part on either side of the
// shell, what closing vessels add on the inner side), and Ro also that of suit and water (see
// outer_insulation()). Shivering, which would make heat, is left out: the safe side. A core above
// 37 C gives what it has too much to the shell at once, as open vessels do (Gagge, Stolwijk & Nishi
// 1971 let the blood flow to the skin grow with the warmth of the core; from memory). Nobody has
// measured novices on such dives: an estimate, and the guest's sign ends the dive.

/// Heat that tissue stores, 3470 J/(kg K), and the shell's share of the body.
/// @source  0.83 kcal/(kg K): Burton, Human calorimetry II, J. Nutr. 9 (1935) 261-280 (from
///          memory). Half: head and trunk are about half of the body (handbook, from memory). With
///          the shell half-way between core and skin this weighs skin 0.25, core 0.75, between the
///          0.2 and 0.35 for skin that are in use for warm and for cool people (Burton: 0.35)
inline constexpr double body_heat_capacity = 3470.0;
inline constexpr double shell_share = 0.5;

/// Temperatures before the dive: core 37 C; skin 33.7 C, at which vessels are open. See resting_shell().
/// @source  Gagge, Stolwijk & Nishi, ASHRAE Trans. 77 (1971) 247-262, neutral skin (from memory)
inline constexpr Kelvins resting_core{310.15};
inline constexpr Kelvins resting_skin{306.85};

/// Limits at which warmth ends; the earliest counts.
/// Core 36.0 C: ISO 9886:2004, the lower limit for work without special watch (from memory); a
/// core of 35 C would be hypothermia. Net loss of 3 kcal for each kg of body mass: Webb, Beckman,
/// Sexton & Vaughan, Proposed thermal limits for divers, ONR contract N00014-72-C-0057, 1976 (from
/// memory).
inline constexpr Kelvins least_core{309.15};
inline constexpr double heat_debt_limit = 3.0 * 4186.8;  ///< J/kg
/// Net loss that people begin to find cold: 144 kJ/m2 of a standard body (75 kg, 1.8 m2), here for
/// each kg so that children, who store less for their surface, come first.
/// @source  ISO 11079:2007, limit of body heat loss of 40 Wh/m2 (from memory); standard body: ISO
///          8996 (75 kg, 1.8 m2; from memory)
inline constexpr double chill_debt = 144e3 * 1.8 / 75.0;  ///< J/kg

/// The person, as far as heat is concerned.
struct HeatBody {
    Kilograms mass{};        ///< 15 to 250 kg
    SquareMeters surface{};  ///< 0.3 to 4.5 m2
    double fat = 0.0;        ///< fraction of mass, 0 to 0.7
};

/// What the person wears and breathes in which water.
struct HeatPlace {
    Suit suit;                      ///< see suit.h
    double fit = usual_fit;         ///< 0.3 to 1
    LitersPerMinute ventilation{};  ///< at ambient pressure, 0 to 150 L/min, of dry air
    Kelvins water{};                ///< -2 to 40 C; the gas breathed has it too
};

/// A time with one level of work and pressures that change along a straight line.
struct HeatLeg {
    Minutes duration{};            ///< 0 to 1440 min
    Pascals from{};                ///< absolute, 40 to 1000 kPa
    Pascals to{};
    double metabolic_watts = 0.0;  ///< 0 to 2000
};

enum class WarmthLimit { none, core, heat_debt };

/// Where a run of legs led to.
struct HeatRun {
    Minutes lasted{};                          ///< the legs, or until the limit was reached
    std::optional<Minutes> limit_reached;
    WarmthLimit limit = WarmthLimit::none;     ///< which was first
    std::optional<Minutes> chilled;            ///< time of `chill_debt`
    Kelvins core{};
    Kelvins shell{};
    double loss_watts = 0.0;      ///< to water and breath, at the end
    double breath_watts = 0.0;    ///< of that, by breathing
    double produced_joules = 0.0;
    double lost_joules = 0.0;
};

/// Temperature of the shell before the dive: vessels open, and the heat of a resting body (58 W/m2, 1
/// met: ISO 8996, from memory) flowing out through the inner half of its own tissue. A lean body's
/// shell is nearer to its core; one shell temperature for all would let the core of a lean child fall
/// in water that warms it.
/// @param body  as ImmersedDiver::make() wants it
Kelvins resting_shell(const HeatBody& body);

/// Heat made by the body at an oxygen uptake that a swimmer of 80 kg would have; people of other
/// mass make it in proportion to m^0.75.
///
/// @param mass          15 to 250 kg
/// @param oxygen_of_80  L/min (STPD), 0.2 to 4; at rest in water 0.64 +/- 0.09, wetsuited and
///                      towed 1.05, finning 1.4 to 1.5
/// @returns watts; ErrorCode::out_of_range naming the input otherwise
/// @source  Knafelc, NEDU report 1-89 (1989); Arieli et al., Eur. J. Appl. Physiol. 76 (1997)
///          69-74. 20.1 kJ for a litre of oxygen (Weir, J. Physiol. 109 (1949) 1-9, at a
///          respiratory quotient of 0.82; from memory). Exponent: Kleiber, Hilgardia 6 (1932)
///          315-353 (from memory). The 80 kg of the swimmers are assumed
/// @tests   tests/reference/warmth.csv
Result<double> metabolic_watts(Kilograms mass, double oxygen_of_80);

/// Heat lost by breathing dry compressed air: warming it from the water's temperature to 34 C, and
/// wetting what is breathed out to saturation at 34 C. The first grows with the gas's density.
///
/// @param ventilation  0 to 150 L/min at ambient pressure and water temperature
/// @param absolute     40 to 1000 kPa
/// @param water        -2 to 40 C
/// @returns watts; ErrorCode::out_of_range naming the input otherwise
/// @source  ideal gas; heat capacity 1007 J/(kg K); saturated vapour at 34 C 5.32 kPa, latent heat
///          2.42 MJ/kg (handbook values, from memory). Breathed out at 34 C: Fanger, Thermal
///          comfort, 1970
/// @tests   tests/reference/warmth.csv
Result<double> breath_loss_watts(LitersPerMinute ventilation, Pascals absolute, Kelvins water);

/// Insulation of the tissue between core and skin [m2K/W]: fat under the skin, and muscle with
/// skin:
///
///     fat     0.7 of all fat spread over the body (900 kg/m3), conductivity 0.21 W/(m K)
///     muscle  0.012 + 0.058 c exp(-(M/A - 58)/60), M/A in W/m2 and no less than 58,
///             c from 0 at a skin of 33.7 C to 1 at 30 C and below
///
/// @param metabolic_watts  0 to 2000
/// @param skin             -10 to 45 C
/// @returns insulation; ErrorCode::out_of_range naming the input otherwise
/// @source  form: Rennie, Tissue heat transfer in water: lessons from the Korean divers, Med. Sci.
///          Sports Exerc. 20 (1988) S177-184: at rest muscle holds most of the insulation, and
///          exercise takes it away (from memory). The numbers are chosen within its figures, and
///          so that the wetsuited swimmers of Arieli et al. 1997 have their 37 % of 0.087 m2K/W
/// @tests   tests/reference/warmth.csv
Result<double> tissue_insulation(const HeatBody& body, double metabolic_watts, Kelvins skin);

/// Insulation [m2K/W] from the mean skin to the water, over the whole body: the suit where it
/// covers, a film of water of 230 W/(m2 K) (still water; Nadel et al., J. Appl. Physiol. 36 (1974)
/// 465-471, from memory), the bare head (0.05 of the surface, own tissue 0.02 m2K/W: its vessels
/// hardly close), and hands, feet and face (0.14 of the surface, own tissue 0.10 m2K/W). The two
/// last resistances are assumptions without a witness; they let a bare head in cool water cost
/// about a tenth of all heat, as Pretorius et al., J. Appl. Physiol. 101 (2006) 669-675, found
/// (from memory).
///
/// Ranges as for suit_insulation().
Result<double> outer_insulation(const Suit& suit, double fit, Pascals absolute);

/// A diver ready to be cooled.
class ImmersedDiver {
public:
    /// @returns the diver; ErrorCode::out_of_range naming the input otherwise
    static Result<ImmersedDiver> make(const HeatBody& body, const HeatPlace& place);

    /// Goes through the legs in steps of the trapezoidal rule (stable at any step; tissue and suit
    /// taken at the middle of a step).
    ///
    /// @param step           0.01 to 5 min; one minute is within 0.1 min of the limit's true time
    /// @param stop_at_limit  end where the first limit is reached
    /// @returns the run; ErrorCode::out_of_range naming the input otherwise
    /// @tests   tests/reference/warmth.csv
    [[nodiscard]] Result<HeatRun> run(std::span<const HeatLeg> legs, bool stop_at_limit,
                                      Minutes step = Minutes(1.0)) const;

private:
    ImmersedDiver(const HeatBody& body, const HeatPlace& place) : body_(body), place_(place) {}
    HeatBody body_;
    HeatPlace place_;
};

}  // namespace leadline
