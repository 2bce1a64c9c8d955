// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/physics/result.h"
#include "core/planning/session.h"
#include "core/records/database.h"

namespace leadline {

/// Sites by name. Saving a session keeps its site here, so that the next session there starts with
/// it.
class SiteStore {
public:
    explicit SiteStore(Database& database) : database_(database) {}
    Result<std::vector<Site>> list();
    Result<Done> put(const Site& site);

private:
    Database& database_;
};

}  // namespace leadline
