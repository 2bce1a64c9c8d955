// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// A wet suit of foam neoprene.
struct Suit {
    double thickness_mm = 0.0;  ///< of the foam as sold, 0 (bare skin) to 10
    bool hood = false;
    bool shorty = false;  ///< ends above elbows and knees
    friend bool operator==(const Suit&, const Suit&) = default;
};

/// The suit that a label tells of: "5 mm M", "3mm shorty L", "7 mm hood", "2,5 mm". Of several
/// thicknesses ("5/3 mm") the thinnest counts: less warmth is the safe side, and as a suit has its
/// thin parts at the limbs, it also means a little less lead, to be found at the surface check.
/// @returns none without a number from 0.5 to 10 before "mm", and for a dry suit ("dry" without
///          "semi"), which none of this describes
std::optional<Suit> read_suit_label(std::string_view label);

/// Density of the foam at the surface: 150 to 250 kg/m3, the middle is used where nothing is
/// known.
/// @source  trade values, from memory
inline constexpr KilogramsPerCubicMeter foam_density{200.0};
inline constexpr KilogramsPerCubicMeter light_foam_density{150.0};
inline constexpr KilogramsPerCubicMeter heavy_foam_density{250.0};

/// Foam under pressure.
struct FoamState {
    double thickness_ratio = 1.0;  ///< to the thickness at one standard atmosphere
    double conductivity = 0.0;     ///< W/(m K)
};

/// Foam neoprene under a pressure. Its gas cells shrink as an ideal gas at constant temperature,
/// the rubber (1230 kg/m3) not at all:
///
///     thickness ratio  r = (1 - g) + g p0/p,   g = 1 - density/1230,   p0 = 101.325 kPa
///     conductivity     k = ks (2 ks + kg - 2 f (ks - kg)) / (2 ks + kg + f (ks - kg)),
///                      gas fraction f = g (p0/p) / r, ks = 0.19 (rubber), kg = 0.026 (gas)
///
/// The cell walls' own stiffness is left out, which squeezes a little too much: the safe side for
/// warmth. Below one atmosphere (a mountain lake) the foam is taken as it was made: it is not
/// known how much the rubber lets it swell.
///
/// @param density   120 to 300 kg/m3 at one standard atmosphere
/// @param absolute  40 to 1000 kPa
/// @returns the foam's state; ErrorCode::out_of_range naming the input otherwise
/// @source  Boyle's law; Maxwell's relation for spheres dispersed in a solid (Treatise on
///          electricity and magnetism, 1873, art. 314; Eucken 1932), as Bardy & Mollendorf,
///          HT2008-56227 (2008), hold by statement that conductivity rises as the gas fraction
///          falls. Rubber: handbook values, from memory
/// @tests   tests/reference/suit.csv: conductivity at the surface, thickness and heat loss at 15 m
Result<FoamState> squeezed_foam(KilogramsPerCubicMeter density, Pascals absolute);

/// How much of a foam's insulation is left when worn: water flushes through, the suit stretches
/// over the body. The middle is fitted: it gives the worn suits of Arieli et al. 1997 their
/// 0.055 m2K/W over the whole body if these were 5 mm thick (their thickness is not known); the
/// ends are common practice, no source.
inline constexpr double poor_fit = 0.60;
inline constexpr double usual_fit = 0.75;
inline constexpr double good_fit = 0.90;

/// Insulation [m2K/W] of a suit as worn, where it covers: fit x thickness / conductivity. A shorty
/// counts half (assumption, no source: the bare limbs drain the rest).
///
/// @param fit       0.3 to 1
/// @param absolute  40 to 1000 kPa
/// @source  conduction through a layer; see squeezed_foam()
/// @tests   tests/reference/suit.csv
Result<double> suit_insulation(const Suit& suit, double fit, Pascals absolute);

/// 1 clo = 0.155 m2K/W.
/// @source  Gagge, Burton & Bazett, Science 94 (1941) 428-430; ISO 9920 (from memory)
inline constexpr double square_meter_kelvins_per_watt_of_clo = 0.155;

/// Share of the body's surface that the suit's foam covers: 0.81 (all but head, hands and feet),
/// 0.05 more with a hood; a shorty 0.515 (trunk, half the arms, half the thighs).
/// @source  Hardy & DuBois, The technic of measuring radiation and convection, J. Nutr. 15 (1938)
///          461-475: head 7, arms 14, hands 5, trunk 35, thighs 19, legs 13, feet 7 % (from
///          memory)
double suit_coverage(const Suit& suit);

/// Mass and volume of a suit's foam.
struct SuitBulk {
    Kilograms mass{};
    Liters volume{};  ///< under the pressure asked for
};

/// @param body_surface  0.3 to 4.5 m2
/// @param density       120 to 300 kg/m3 at one standard atmosphere
/// @param absolute      40 to 1000 kPa
/// @source  geometry; see squeezed_foam()
Result<SuitBulk> suit_bulk(const Suit& suit, SquareMeters body_surface,
                           KilogramsPerCubicMeter density, Pascals absolute);

}  // namespace leadline
