// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

// Nitrogen in the body by Bühlmann's dissolved-gas model, set ZH-L16C. A model of populations: it
// knows nothing of bubbles, cold, work or age, and of going up and down many times only what gas is
// lost on the way. The diver's own computer and a physician prevail.
//
// Source of all of it, where nothing else is named: A. A. Bühlmann, Tauchmedizin, 4th ed. 1995, and
// Bühlmann, Völlm & Nussberger, 5th ed. 2002 (not seen; read through an encyclopedia's copy).

/// One theoretical tissue.
struct Compartment {
    int number = 0;          ///< 1 to 16; 1b counts as 1
    double half_time = 0.0;  ///< [min], of nitrogen
    double a = 0.0;          ///< [bar]
    double b = 0.0;          ///< the allowed nitrogen pressure at ambient p is a + p / b
};

/// Compartments 1, 1b, 2 .. 16.
///
/// Of 1 (4 min) and 1b (5 min) either is usual. Neither is stricter at all depths (without stops,
/// 1b is the stricter at 30 m, 1 at 40 m), so both are kept and the stricter counts: the safe side.
///
/// Compartment 4, b: 0.7725 in the text that was read, as its generating formula gives too; 0.7825
/// in most published lists, from memory. The greater b gives the lower allowed pressure a + p / b,
/// hence the shorter no-stop time and the deeper ceiling: 0.7825 is taken, the safe side.
///
/// @source  half-times and b read, but for b of 4 and all of 1b (from memory); a of 1 to 4 read
///          (the same in the sets A, B and C), a of 5 to 16 and of 1b from memory
/// @tests   tests/reference/tissues.csv
inline constexpr std::array<Compartment, 17> zh_l16c{{
    {1, 4.0, 1.2599, 0.5050},    {1, 5.0, 1.1696, 0.5578},    {2, 8.0, 1.0000, 0.6514},
    {3, 12.5, 0.8618, 0.7222},   {4, 18.5, 0.7562, 0.7825},   {5, 27.0, 0.6200, 0.8125},
    {6, 38.3, 0.5043, 0.8434},   {7, 54.3, 0.4410, 0.8693},   {8, 77.0, 0.4000, 0.8910},
    {9, 109.0, 0.3750, 0.9092},  {10, 146.0, 0.3500, 0.9222}, {11, 187.0, 0.3295, 0.9319},
    {12, 239.0, 0.3065, 0.9403}, {13, 305.0, 0.2835, 0.9477}, {14, 390.0, 0.2610, 0.9544},
    {15, 498.0, 0.2480, 0.9602}, {16, 635.0, 0.2327, 0.9653},
}};

/// Share of nitrogen in air as the model's authors count it (with argon), and the pressure of water
/// vapour in the lungs. Carbon dioxide is left out, so inspired stands for alveolar nitrogen: a
/// little too much, the safe side.
/// @source  the model's usual constants, from memory
inline constexpr double nitrogen_share = 0.7902;
inline constexpr Bars lung_water_vapour{0.0627};

/// Pressure of nitrogen in the lungs at an ambient pressure: (p - 0.0627 bar) 0.7902.
constexpr Bars inspired_nitrogen(Pascals ambient) {
    return (Bars(ambient) - lung_water_vapour) * nitrogen_share;
}

/// How much of the model's allowance the house uses: `low` at the first stop, `high` at the
/// surface.
/// @source  method: E. C. Baker, Understanding M-values, Immersed 3 (1998), from memory
struct GradientFactors {
    double low = 1.0;
    double high = 1.0;
};

/// 30/70: common practice, no source. With 70 at the surface no no-stop time is longer than that of
/// the DCIEM table of 1992 (to 45 m) or of the U.S. Navy's Revision 7 (to 58 m); with 80 that of
/// DCIEM at 9 m would be.
/// @tests  tests/reference/no_stop_limits.csv
inline constexpr GradientFactors house_gradient_factors{0.30, 0.70};

/// Ranges of the functions below.
inline constexpr Pascals least_ambient{50e3};      ///< at 5000 m of altitude there are 54 kPa
inline constexpr Pascals most_surface{110e3};
inline constexpr Pascals most_ambient{800e3};      ///< at 60 m of the densest sea there are 725 kPa
inline constexpr Minutes longest_exposure{20160};  ///< 14 days
inline constexpr Bars most_load{6.5};              ///< more than any pressure in range could give

/// Pressure of nitrogen in each compartment [bar], in the order of `zh_l16c`.
struct TissueLoads {
    std::array<double, zh_l16c.size()> nitrogen{};
    friend bool operator==(const TissueLoads&, const TissueLoads&) = default;
};

/// A body that has been at a surface pressure long enough to be in balance with it.
/// @param surface  50 to 110 kPa
/// @returns the loads; ErrorCode::out_of_range otherwise
Result<TissueLoads> tissues_at_rest(Pascals surface);

/// What a time at constant pressure, or one in which pressure changes evenly, does to any loads.
/// Worked out once and used for many: all that depends on the time is in it.
///
///     p(t) = pI0 + R (t - 1/k) - (pI0 - p0 - R/k) exp(-k t),   k = ln 2 / half-time
///
/// with pI0 the inspired pressure at the start and R its rate of change.
///
/// @source  H. R. Schreiner & P. L. Kelley, A pragmatic view of decompression, in: Underwater
///          Physiology, Proc. 4th Symp., 1971, pp. 205-219 (form of the equation; from memory)
/// @tests   tests/reference/tissues.csv, tests/physics/tissues_test.cpp (against Runge-Kutta)
class TissueLeg {
public:
    /// @param from, to  ambient pressures at start and end, 50 to 800 kPa
    /// @param time      0 to 20160 min
    /// @returns the leg; ErrorCode::out_of_range naming the input otherwise
    static Result<TissueLeg> make(Pascals from, Pascals to, Minutes time);

    /// Loads at the end. Of valid loads (finite, 0 to 6.5 bar) come valid loads: they lie between
    /// the start's and the inspired pressures passed through. (Not checked here.)
    [[nodiscard]] TissueLoads after(const TissueLoads& before) const;

private:
    TissueLeg() = default;
    std::array<double, zh_l16c.size()> kept_{};    ///< exp(-k t)
    std::array<double, zh_l16c.size()> gained_{};  ///< [bar]
};

/// Loads after one leg.
/// @param before          each 0 to 6.5 bar
/// @param from, to, time  see TissueLeg::make(); a surface interval is a leg at surface pressure
/// @returns the loads; ErrorCode::out_of_range naming the input otherwise
Result<TissueLoads> after_leg(const TissueLoads& before, Pascals from, Pascals to, Minutes time);

/// Lowest ambient pressure that the loads allow when a share of the allowance is used:
/// (p - f a) / (f / b - f + 1), the greatest over the compartments.
/// @param loads   each 0 to 6.5 bar
/// @param factor  0.1 to 1; 1: the model's own limit, (p - a) b
/// @returns the pressure, 0 where the loads would allow a vacuum; ErrorCode::out_of_range otherwise
/// @source  Bühlmann (as above); the gradient factor after Baker 1998 (from memory)
Result<Pascals> allowed_pressure(const TissueLoads& loads, double factor);

/// Pressure at which the first stop must be made: the surface's while it may be reached at
/// `factors.high`; otherwise what `factors.low` allows, which is never less.
/// @param loads    each 0 to 6.5 bar
/// @param surface  50 to 110 kPa
/// @param factors  each 0.1 to 1, low not above high
/// @returns the pressure; ErrorCode::out_of_range naming the input otherwise
Result<Pascals> ceiling_pressure(const TissueLoads& loads, Pascals surface,
                                 GradientFactors factors);

/// How near the loads are to what the surface allows.
struct Saturation {
    double share = 0.0;  ///< (load - ambient) / allowed (load - ambient); 0: none above ambient
    int leading = 0;     ///< compartment nearest to its limit, 1 to 16
};

/// Share of the allowance that coming up at once would use; 1 is the limit.
/// @param loads    each 0 to 6.5 bar
/// @param surface  50 to 110 kPa
/// @param high     gradient factor at the surface, 0.1 to 1
/// @returns the greatest share; ErrorCode::out_of_range naming the input otherwise
Result<Saturation> surfacing_saturation(const TissueLoads& loads, Pascals surface, double high);

struct NoStop {
    std::optional<Minutes> time;  ///< 0: over the limit already; none: more than 24 h
    int leading = 0;              ///< compartment that sets the limit; 0: none ever does
};

/// Time that can be spent at an ambient pressure before coming up needs a stop. The way up, on
/// which most loads fall, is left out: the safe side. Per compartment
///
///     t = half-time log2((pI - p0) / (pI - limit)),   limit = ps + f (a + ps / b - ps)
///
/// @param loads    each 0 to 6.5 bar
/// @param ambient  50 to 800 kPa
/// @param surface  50 to 110 kPa
/// @param high     gradient factor at the surface, 0.1 to 1
/// @returns the shortest time; ErrorCode::out_of_range naming the input otherwise
/// @source  Haldane's equation for constant pressure solved for the time; limit as above
/// @tests   tests/reference/no_stop_limits.csv
Result<NoStop> no_stop_time(const TissueLoads& loads, Pascals ambient, Pascals surface,
                            double high);

}  // namespace leadline
