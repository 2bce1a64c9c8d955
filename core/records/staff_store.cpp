// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/staff_store.h"

#include <QString>
#include <algorithm>
#include <chrono>
#include <optional>

#include "core/physics/range.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

constexpr double shortest_min = 1.0;
constexpr double longest_min = 240.0;

/// The staff of a name `?` who lead or assist the group `p`, as a condition.
const QString leads_group =
    u"EXISTS (SELECT 1 FROM staff m WHERE m.session_id = p.session_id "
    "AND m.staff_id IN (p.instructor, p.assistant) AND trim(m.name, char(9, 10, 13, 32)) = ?)"_qs;

QString dives_sql() {
    return u"SELECT s.date, l.time_in_min, l.time_out_min, "
           "coalesce(nullif((SELECT max(x.depth_m) FROM log_samples x "
           "  JOIN session_guests g ON g.session_id = x.session_id AND g.guest_id = x.guest_id "
           "  JOIN session_groups p ON p.session_id = g.session_id AND p.group_id = g.group_id "
           "  WHERE x.session_id = s.id AND %1), 0), "
           "  (SELECT max(c.depth_m) FROM profile_points c WHERE c.session_id = s.id)) "
           "FROM sessions s JOIN logs l ON l.session_id = s.id "
           "WHERE s.date BETWEEN ? AND ? AND EXISTS "
           "  (SELECT 1 FROM session_groups p WHERE p.session_id = s.id AND %1) "
           "ORDER BY s.date, l.time_in_min, s.id"_qs.arg(leads_group);
}

EarlierDive read_dive(Row& row) {
    EarlierDive dive;
    dive.date = row.date();
    dive.start = row.time_of_day();
    const TimeOfDay end = row.time_of_day();
    const int minutes = end.minutes_after_midnight - dive.start.minutes_after_midnight;
    dive.deepest = Depth(row.quantity<Meters>());
    dive.duration = Minutes(std::clamp(double(minutes), shortest_min, longest_min));
    return dive;
}

}  // namespace

Result<std::vector<EarlierDive>> StaffStore::earlier_dives_of(const std::string& name, Date date,
                                                              TimeOfDay time, int days) {
    if (const auto error = outside_range("days", days, 1, earlier_dives_kept_days, "")) {
        return *error;
    }
    if (!date.ok()) return Error{ErrorCode::bad_date, "date", to_text(date), {}};
    const QString wanted = QString::fromStdString(name).trimmed();
    if (wanted.isEmpty()) return std::vector<EarlierDive>();
    const Date first = std::chrono::sys_days(date) - std::chrono::days(days);
    auto dives = Statement(database_.connection(), dives_sql())
                     .all(read_dive, wanted, first, date, wanted);
    if (!dives) return dives;
    const auto begins_too_early_or_is_not_over = [&](const EarlierDive& dive) {
        const int start = dive.start.minutes_after_midnight;
        if (dive.date == first && start < time.minutes_after_midnight) return true;
        return dive.date == date && start + dive.duration.value() > time.minutes_after_midnight;
    };
    std::erase_if(*dives, begins_too_early_or_is_not_over);
    return dives;
}

}  // namespace leadline
