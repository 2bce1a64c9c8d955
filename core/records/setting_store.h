// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "core/physics/result.h"
#include "core/records/database.h"

namespace leadline {

/// Small choices of the user: units, card size, last session.
class SettingStore {
public:
    explicit SettingStore(Database& database) : database_(database) {}
    Result<std::optional<QString>> get(const QString& name);
    Result<Done> put(const QString& name, const QString& value);

private:
    Database& database_;
};

}  // namespace leadline
