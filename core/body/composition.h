// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/quantities.h"
#include "core/physics/result.h"

namespace leadline {

/// A quantity of a person as a band: the true value is expected between low and high.
struct Band {
    double low = 0.0;
    double middle = 0.0;
    double high = 0.0;
};

/// Age taken for a guest whose birth date is not known: an adult of 35 years.
inline constexpr int assumed_adult_years = 35;
/// Age where only that it is a child is known: common practice, no source.
inline constexpr int assumed_child_years = 12;
/// Up to this age the children's equations hold.
inline constexpr int last_child_years = 15;

/// Surface of the body, A = 0.007184 W^0.425 H^0.725 (kg, cm, m2).
///
/// @param mass    15 to 250 kg
/// @param height  0.8 to 2.5 m
/// @returns surface; ErrorCode::out_of_range naming the input otherwise
/// @validity  within about 5 % for adults of usual build; for small children it is up to 8 % low
///            (from memory)
/// @source    DuBois & DuBois, A formula to estimate the approximate surface area if height and
///            weight be known, Arch. Intern. Med. 17 (1916) 863-871 (from memory)
/// @tests     tests/reference/composition.csv
Result<SquareMeters> body_surface(Kilograms mass, Meters height);

/// Body mass index, W / H^2 [kg/m2]. Ranges as for body_surface().
Result<double> body_mass_index(Kilograms mass, Meters height);

/// Fat as a fraction of body mass, from body mass index and age:
/// adults (from 16 years) 1.20 BMI + 0.23 age - 10.8 sex - 5.4, children (to 15 years)
/// 1.51 BMI - 0.70 age - 3.6 sex + 1.4 [%], with sex 1 for males and 0 for females.
///
/// Sex is not known here: `middle` lies half-way between the sexes; `low` and `high` are the
/// leaner and the fatter sex, less and plus the equation's standard error of 4 % of body mass. The
/// ends are bounded by what a living body has: 3 % (essential fat) and 60 %.
///
/// @param age  5 to 90 years
/// @returns the band; ErrorCode::out_of_range naming the input, the body mass index (12 to 45
///          kg/m2) or the fat (when even `middle` lies outside 3 to 60 %) otherwise
/// @validity  made from 7 to 83 years and 13.9 to 40.9 kg/m2; a little extrapolated here. Too fat
///            for muscular people
/// @source    Deurenberg, Weststrate & Seidell, Body mass index as a measure of body fatness: age-
///            and sex-specific prediction formulas, Br. J. Nutr. 65 (1991) 105-114 (from memory)
/// @tests     tests/reference/composition.csv
Result<Band> fat_fraction(Kilograms mass, Meters height, int age);

/// Density of the body's tissue, without the gas in the lungs, from its fat:
/// D = 495 / (%fat + 450) g/cm3.
///
/// @param fat  fraction of body mass, 0 to 0.7
/// @validity  fat of 0.9 and lean tissue of 1.1 g/cm3; the lean tissue of children is about 1 %
///            lighter (from memory), which would add some 0.3 kg of buoyancy to a child of 35 kg
/// @source    Siri, Body composition from fluid spaces and density, in Techniques for measuring
///            body composition, National Academy of Sciences 1961, inverted
/// @tests     tests/reference/composition.csv
Result<KilogramsPerCubicMeter> tissue_density(double fat);

/// Gas in the lungs half full (residual volume and half the vital capacity) [L], as a band: adults
/// by height and age, half-way between the sexes, and the smaller and bigger sex at the ends;
/// children by height, 15 % either side.
///
///     adults    TLC = 7.99 H - 7.08 (male), 6.60 H - 5.79 (female);
///               RV = 1.31 H + 0.022 age - 1.23 (male), 1.81 H + 0.016 age - 2.00 (female);
///               gas = (TLC + RV) / 2
///     children  VC = 2.35 L (H / 1.40 m)^3.1, RV = 0.3 VC
///
/// @param height  0.8 to 2.5 m to the age of 15, 1.3 to 2.5 m above
/// @param age     5 to 90 years
/// @source  adults: Quanjer et al., Lung volumes and forced ventilatory flows, Eur. Respir. J. 6
///          suppl. 16 (1993) 5-40 (from memory; made for 1.55 to 1.95 m). Children: a power law
///          through 2.35 L at 1.40 m and 3.6 L at 1.60 m, from memory of spirometric tables, no
///          source
/// @tests   tests/reference/composition.csv
Result<Band> half_full_lungs_liters(Meters height, int age);

}  // namespace leadline
