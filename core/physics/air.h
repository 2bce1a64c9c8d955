// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// Molar gas constant used with the air equation of state, 8.314 510 J/(mol K), as in the paper
/// (the 2018 SI value is 8.314 462 618; the difference, 6e-6, is without effect here).
inline constexpr double molar_gas_constant = 8.314510;

/// Absolute pressure of dry air at a molar density, by the pseudo-pure-fluid equation of state.
///
/// @param moles_per_cubic_meter  0 to 40 000 mol/m3 (air at 500 bar has about 16 000 at 15 C)
/// @param temperature            100 to 2000 K; below 133 K only for densities outside the region
///                               in which liquid and vapour coexist
/// @returns pressure; ErrorCode::out_of_range naming the input otherwise
/// @validity  the equation holds to 2000 MPa; densities are within 0.1 % up to 70 MPa (from memory)
/// @source  Lemmon, Jacobsen, Penoncello & Friend, Thermodynamic properties of air and mixtures of
///          nitrogen, argon and oxygen from 60 to 2000 K at pressures to 2000 MPa, J. Phys. Chem.
///          Ref. Data 29 (2000) 331-385: reducing values, and the coefficients of table 12. The
///          coefficients were written from memory; they reproduce the densities of table A2 that
///          the tests hold to the printed digit. Those checks bear least on the exponents 1.35,
///          3.25 and 15: another second decimal, or 16 for 15, moves densities by
///          less than 5e-5 between 0 and 27 C up to 300 bar
/// @tests   tests/reference/air_density.csv, tests/reference/air_compressibility.csv
Result<Pascals> air_pressure(double moles_per_cubic_meter, Kelvins temperature);

/// Molar density [mol/m3] of dry air at a pressure: the inverse of air_pressure().
///
/// @param absolute     absolute pressure, 0 to 60 MPa below 350 K (0 to 500 MPa above)
/// @param temperature  200 to 2000 K
Result<double> air_molar_density(Pascals absolute, Kelvins temperature);

/// Compressibility factor Z = p / (rho R T); 1 for an ideal gas, and 1 at zero pressure.
/// Ranges as for air_molar_density().
Result<double> air_compressibility(Pascals absolute, Kelvins temperature);

/// Moles of air in a vessel of a volume at an absolute pressure. Ranges as for
/// air_molar_density(); volume 0 to 1 m3.
Result<Moles> air_content(CubicMeters volume, Pascals absolute, Kelvins temperature);

/// Absolute pressure of an amount of air in a vessel: the inverse of air_content().
///
/// @param content  0 to 40 000 mol for each m3 of `volume`
Result<Pascals> air_vessel_pressure(CubicMeters volume, Moles content, Kelvins temperature);

/// Mass of an amount of dry air, by its molar mass of 28.965 46 g/mol.
/// @source  Picard, Davis, Glaeser & Fujii, Revised formula for the density of moist air
///          (CIPM-2007), Metrologia 45 (2008) 149-155, for 0.04 % of carbon dioxide (from memory).
///          Lemmon et al. 2000 take 28.9586 g/mol, without carbon dioxide: 0.024 % less
inline constexpr Kilograms mass_of_air(Moles amount) {
    return Kilograms(amount.value() * 0.02896546);
}

/// Volume that an amount of air takes as an ideal gas at 1.013 25 bar and 15 C ("free air"), the
/// measure in which contents are shown. 15 C and 1013.25 hPa: ISO 13443:1996 standard reference
/// conditions (from memory).
Liters free_air_volume(Moles amount);

}  // namespace leadline
