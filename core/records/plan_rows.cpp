// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/plan_rows.h"

#include <utility>

#include "core/records/statement.h"

namespace leadline {

Result<Done> write_conditions(const QSqlDatabase& database, SessionRow row,
                              const Conditions& conditions) {
    return Statement(database,
                     u"INSERT INTO conditions (session_id, water_temperature_k, "
                     "air_temperature_k, barometer_pa, visibility_m, current, wave_height_m) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?)"_qs)
        .run(row.value, conditions.water_temperature, conditions.air_temperature,
             conditions.barometer, conditions.visibility, conditions.current,
             conditions.wave_height);
}

Result<Conditions> read_conditions(const QSqlDatabase& database, SessionRow row) {
    const auto read = [](Row& found) {
        Conditions conditions;
        conditions.water_temperature = found.quantity<Kelvins>();
        conditions.air_temperature = found.quantity<Kelvins>();
        conditions.barometer = found.optional_quantity<Pascals>();
        conditions.visibility = found.optional_quantity<Meters>();
        conditions.current = found.choice<Current>();
        conditions.wave_height = found.optional_quantity<Meters>();
        return conditions;
    };
    const auto conditions =
        Statement(database, u"SELECT water_temperature_k, air_temperature_k, barometer_pa, "
                            "visibility_m, current, wave_height_m "
                            "FROM conditions WHERE session_id = ?"_qs)
            .first(read, row.value);
    if (!conditions) return conditions.error();
    return conditions->value_or(Conditions{});
}

Result<Done> write_profile(const QSqlDatabase& database, SessionRow row, const Profile& profile) {
    Statement insert(database, u"INSERT INTO profile_points (session_id, position, time_min, "
                               "depth_m, phase) VALUES (?, ?, ?, ?, ?)"_qs);
    int position = 0;
    for (const ProfilePoint& point : profile.points) {
        const Result<Done> done =
            insert.run(row.value, position++, point.time, point.depth.meters(), point.phase);
        if (!done) return done;
    }
    return Done{};
}

Result<Profile> read_profile(const QSqlDatabase& database, SessionRow row) {
    const auto read = [](Row& found) {
        ProfilePoint point;
        point.time = found.quantity<Minutes>();
        point.depth = Depth(found.quantity<Meters>());
        point.phase = found.choice<Phase>();
        return point;
    };
    auto points = Statement(database, u"SELECT time_min, depth_m, phase FROM profile_points "
                                      "WHERE session_id = ? ORDER BY position"_qs)
                      .all(read, row.value);
    if (!points) return points.error();
    return Profile{std::move(*points)};
}

Result<Done> write_rule_sets(const QSqlDatabase& database, SessionRow row,
                             const std::vector<RuleSetId>& rule_sets) {
    Statement insert(database, u"INSERT INTO session_rule_sets (session_id, position, "
                               "rule_set_id) VALUES (?, ?, ?)"_qs);
    int position = 0;
    for (const RuleSetId& rule_set : rule_sets) {
        const Result<Done> done = insert.run(row.value, position++, rule_set);
        if (!done) return done;
    }
    return Done{};
}

Result<std::vector<RuleSetId>> read_rule_sets(const QSqlDatabase& database, SessionRow row) {
    return Statement(database, u"SELECT rule_set_id FROM session_rule_sets "
                               "WHERE session_id = ? ORDER BY position"_qs)
        .all([](Row& found) { return RuleSetId(found.text()); }, row.value);
}

Result<Done> write_overrules(const QSqlDatabase& database, SessionRow row,
                             const std::vector<Overrule>& overrules) {
    Statement insert(database, u"INSERT INTO overrules (session_id, position, finding, reason, "
                               "decided_by) VALUES (?, ?, ?, ?, ?)"_qs);
    int position = 0;
    for (const Overrule& overrule : overrules) {
        const Result<Done> done =
            insert.run(row.value, position++, overrule.finding, overrule.reason, overrule.by);
        if (!done) return done;
    }
    return Done{};
}

Result<std::vector<Overrule>> read_overrules(const QSqlDatabase& database, SessionRow row) {
    return Statement(database, u"SELECT finding, reason, decided_by FROM overrules "
                               "WHERE session_id = ? ORDER BY position"_qs)
        .all([](Row& found) { return Overrule{found.text(), found.text(), found.text()}; },
             row.value);
}

}  // namespace leadline
