// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/site_rows.h"

#include "core/records/fold.h"

namespace leadline {

namespace {

std::optional<Meters> meters(const std::optional<Depth>& depth) {
    return depth ? std::optional<Meters>(depth->meters()) : std::nullopt;
}

std::optional<Depth> depth(const std::optional<Meters>& below_surface) {
    return below_surface ? std::optional<Depth>(Depth(*below_surface)) : std::nullopt;
}

}  // namespace

Site read_site(Row& row) {
    Site site;
    site.name = row.text();
    site.altitude = Altitude(row.quantity<Meters>());
    site.latitude = row.quantity<Degrees>();
    site.salinity = PracticalSalinity{row.real()};
    site.bottom_depth = depth(row.optional_quantity<Meters>());
    site.entry = row.choice<Entry>();
    site.meeting_place = row.text();
    site.emergency_line = row.text();
    site.emergency_plan = row.text();
    return site;
}

Result<Done> write_session_site(const QSqlDatabase& database, SessionRow row, const Site& site) {
    return Statement(database,
                     u"INSERT INTO session_sites (session_id, name, altitude_m, latitude_deg, "
                     "salinity, bottom_depth_m, entry, meeting_place, emergency_line, "
                     "emergency_plan) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_qs)
        .run(row.value, site.name, site.altitude.meters(), site.latitude, site.salinity.value,
             meters(site.bottom_depth), site.entry, site.meeting_place, site.emergency_line,
             site.emergency_plan);
}

Result<Site> read_session_site(const QSqlDatabase& database, SessionRow row) {
    const auto site =
        Statement(database, u"SELECT name, altitude_m, latitude_deg, salinity, bottom_depth_m, "
                            "entry, meeting_place, emergency_line, emergency_plan "
                            "FROM session_sites WHERE session_id = ?"_qs)
            .first(read_site, row.value);
    if (!site) return site.error();
    return site->value_or(Site{});
}

Result<Done> write_known_site(const QSqlDatabase& database, const Site& site) {
    return Statement(database,
                     u"INSERT OR REPLACE INTO sites (name, folded_name, altitude_m, latitude_deg, "
                     "salinity, bottom_depth_m, entry, meeting_place, emergency_line, "
                     "emergency_plan) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"_qs)
        .run(site.name, folded(QString::fromStdString(site.name)), site.altitude.meters(),
             site.latitude, site.salinity.value, meters(site.bottom_depth), site.entry,
             site.meeting_place, site.emergency_line, site.emergency_plan);
}

Result<Done> keep_site_of(const QSqlDatabase& database, const Session& session) {
    if (session.site.name.empty()) return Done{};
    const auto later =
        Statement(database, u"SELECT count(*) FROM session_sites t "
                            "JOIN sessions s ON s.id = t.session_id WHERE t.name = ? "
                            "AND (s.date, s.dive_time_min) > (?, ?)"_qs)
            .first([](Row& row) { return row.number(); }, session.site.name, session.date,
                   session.dive_time);
    if (!later) return later.error();
    return later->value_or(0) > 0 ? Done{} : write_known_site(database, session.site);
}

}  // namespace leadline
