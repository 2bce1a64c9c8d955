// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/site_store.h"

#include "core/records/site_rows.h"
#include "core/records/statement.h"

namespace leadline {

Result<std::vector<Site>> SiteStore::list() {
    return Statement(database_.connection(),
                     u"SELECT name, altitude_m, latitude_deg, salinity, bottom_depth_m, entry, "
                     "meeting_place, emergency_line, emergency_plan FROM sites "
                     "ORDER BY folded_name, name"_qs)
        .all(read_site);
}

Result<Done> SiteStore::put(const Site& site) {
    if (site.name.empty()) return Error{ErrorCode::bad_text, "name", {}, {}};
    return write_known_site(database_.connection(), site);
}

}  // namespace leadline
