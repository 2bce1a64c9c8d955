// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVariant>
#include <nlohmann/json.hpp>
#include <string>

#include "core/physics/result.h"

namespace leadline {

/// A value of any column as JSON: numbers with or without a fraction stay what they are, to the last
/// bit; what JSON has no form for is an object that says its kind, {"base64": "..."} or
/// {"real": "-inf"}.
nlohmann::ordered_json json_of(const QVariant& value);

/// The value again. wrong_type at `place` for anything else.
Result<QVariant> value_of_json(const nlohmann::json& value, const std::string& place);

}  // namespace leadline
