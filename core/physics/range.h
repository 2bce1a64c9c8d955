// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/physics/number_text.h"
#include "core/physics/result.h"

namespace leadline {

/// An out_of_range error, unless low <= value <= high; NaN and the infinities lie outside any
/// range.
///
/// @param quantity  name of the quantity, goes into `place`: "temperature"
/// @param unit      of the numbers, goes after them: "K" gives "400 K" and "200 to 350 K"
inline std::optional<Error> outside_range(std::string_view quantity, double value, double low,
                                          double high, std::string_view unit) {
    if (value >= low && value <= high) {
        return std::nullopt;
    }
    const std::string suffix = unit.empty() ? std::string() : " " + std::string(unit);
    return Error{ErrorCode::out_of_range, std::string(quantity), number_text(value) + suffix,
                 number_text(low) + " to " + number_text(high) + suffix};
}

}  // namespace leadline
