// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/physics/water.h"

namespace leadline {

/// Pressure difference across the lung at which it can tear: 70 mmHg, the lower end of 70 to 80.
/// @source  from memory: Schaefer et al., J. Appl. Physiol. 13 (1958) 15; Malhotra & Wright, J.
///          Pathol. Bacteriol. 82 (1961) 198. Case report from 1 m: Benton, Woodfine & Westwood,
///          Aviat. Space Environ. Med. 67 (1996)
inline constexpr Pascals lung_tearing_lowest = millimeters_of_mercury(70.0);

/// Volume at the surface of a breath held from a depth, as a multiple of its volume there:
/// p(depth) / p(surface) (Boyle, constant temperature). The lung cannot follow: it tears.
///
/// @param depth  0 to 60 m
/// @source  Boyle's law; U.S. Navy Diving Manual, chapter 2
/// @tests   tests/reference/gas_laws.csv
double held_breath_expansion(const WaterColumn& water, Depth depth);

/// The ascent from `from`, breath held with full lungs, after which the lung can tear: the height
/// of water that weighs `lung_tearing_lowest`, never more than `from` itself. About 0.9 m in the
/// sea.
Meters held_breath_danger_ascent(const WaterColumn& water, Depth from);

/// What a held breath meets on the way up from a depth.
struct HeldBreathLimit {
    Depth from;
    std::optional<Meters> ascent;  ///< to `lung_tearing_lowest`; none: the surface comes first. Not a
                                   ///< promise: people were hurt coming up from 1 m
    double expansion = 1.0;        ///< at the surface, see held_breath_expansion()
};

/// The limits from every `spacing` of depth, and from the deepest point, for a chart. Full lungs.
///
/// @param deepest  0 to 60 m
/// @param spacing  0.1 to 10 m
/// @returns from 0 m down; ErrorCode::out_of_range naming the input otherwise
/// @source  as lung_tearing_lowest. Cases after 1 m: Benton, Woodfine & Westwood 1996 (read in a
///          summary); after 1 to 2 m: Harvey, Reynolds & Fisher, Aerosp. Med. Hum. Perform. 95
///          (2024) 867-870 (abstract read)
Result<std::vector<HeldBreathLimit>> held_breath_limits(const WaterColumn& water, Depth deepest,
                                                        Meters spacing);

}  // namespace leadline
