// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/files/plan_json.h"
#include "core/planning/finding.h"
#include "core/planning/session.h"

namespace leadline {

/// Adds a number of a result, rounded to six decimals. What is not finite is left out: JSON has no
/// word for it, and a reader must not take a stand-in for a number.
inline void put_result(nlohmann::ordered_json& to, const std::string& key, double value) {
    if (std::isfinite(value)) to[key] = std::round(value * 1e6) / 1e6 + 0.0;
}
template <typename Quantity>
void put_result(nlohmann::ordered_json& to, const std::string& key,
                const std::optional<Quantity>& quantity) {
    if (quantity) put_result(to, key, quantity->value());
}

/// Findings in their order, each with its key, code, severity, subject, numbers by name and unit,
/// words, rule set, source and, where it is overruled, the reason.
nlohmann::ordered_json findings_json(const std::vector<Finding>& findings,
                                     const FindingSpeaker& speak);

/// The session that a result belongs to: title, date, time and site.
nlohmann::ordered_json session_head_json(const Session& session);

}  // namespace leadline
