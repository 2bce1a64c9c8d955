// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/log_rows.h"

#include <utility>
#include <vector>

#include "core/records/statement.h"

namespace leadline {

namespace {

Result<Done> write_head(const QSqlDatabase& database, SessionRow row, const DiveLog& log) {
    return Statement(database,
                     u"INSERT INTO logs (session_id, time_in_min, time_out_min, heads_in, "
                     "heads_out, note) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (session_id) "
                     "DO UPDATE SET time_in_min = excluded.time_in_min, "
                     "time_out_min = excluded.time_out_min, heads_in = excluded.heads_in, "
                     "heads_out = excluded.heads_out, note = excluded.note"_qs)
        .run(row.value, log.time_in, log.time_out, log.heads_in, log.heads_out, log.note);
}

/// Takes out the divers who are in the log no more, with their samples.
Result<Done> remove_others(const QSqlDatabase& database, SessionRow row, const DiveLog& before,
                           const DiveLog& now) {
    Statement remove(database,
                     u"DELETE FROM log_divers WHERE session_id = ? AND guest_id = ?"_qs);
    for (const LogEntry& diver : before.divers) {
        if (find_log(now, diver.guest) != nullptr) continue;
        const Result<Done> removed = remove.run(row.value, diver.guest);
        if (!removed) return removed;
    }
    return Done{};
}

Result<Done> write_divers(const QSqlDatabase& database, SessionRow row, const DiveLog& log) {
    Statement put(database,
                  u"INSERT INTO log_divers (session_id, guest_id, position, start_pressure_bar, "
                  "end_pressure_bar, duration_min, ears_troubled, note) "
                  "VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (session_id, guest_id) "
                  "DO UPDATE SET position = excluded.position, "
                  "start_pressure_bar = excluded.start_pressure_bar, "
                  "end_pressure_bar = excluded.end_pressure_bar, "
                  "duration_min = excluded.duration_min, "
                  "ears_troubled = excluded.ears_troubled, note = excluded.note"_qs);
    int position = 0;
    for (const LogEntry& diver : log.divers) {
        const Result<Done> done =
            put.run(row.value, diver.guest, position++, diver.start_pressure, diver.end_pressure,
                    diver.duration, diver.ears_troubled, diver.note);
        if (!done) return done;
    }
    return Done{};
}

/// Writes samples to one diver, in place of those there.
class SampleWriter {
public:
    SampleWriter(const QSqlDatabase& database, SessionRow row)
        : row_(row),
          remove_(database, u"DELETE FROM log_samples WHERE session_id = ? AND guest_id = ?"_qs),
          insert_(database, u"INSERT INTO log_samples (session_id, guest_id, position, time_min, "
                            "depth_m) VALUES (?, ?, ?, ?, ?)"_qs) {}

    Result<Done> replace(const LogEntry& diver) {
        const Result<Done> removed = remove_.run(row_.value, diver.guest);
        if (!removed) return removed;
        int position = 0;
        for (const DepthSample& sample : diver.samples) {
            const Result<Done> done = insert_.run(row_.value, diver.guest, position++, sample.time,
                                                  sample.depth.meters());
            if (!done) return done;
        }
        return Done{};
    }

private:
    SessionRow row_;
    Statement remove_;
    Statement insert_;
};

Result<Done> write_samples(const QSqlDatabase& database, SessionRow row, const DiveLog& before,
                           const DiveLog& now) {
    SampleWriter writer(database, row);
    for (const LogEntry& diver : now.divers) {
        const LogEntry* stored = find_log(before, diver.guest);
        const bool same = stored != nullptr ? stored->samples == diver.samples
                                            : diver.samples.empty();
        if (same) continue;
        const Result<Done> written = writer.replace(diver);
        if (!written) return written;
    }
    return Done{};
}

LogEntry read_diver(Row& row) {
    LogEntry diver;
    diver.guest = GuestId(row.text());
    diver.start_pressure = row.quantity<Bars>();
    diver.end_pressure = row.quantity<Bars>();
    diver.duration = row.quantity<Minutes>();
    diver.ears_troubled = row.yes();
    diver.note = row.text();
    return diver;
}

DepthSample read_sample(Row& row) {
    return DepthSample{row.quantity<Minutes>(), Depth(row.quantity<Meters>())};
}

Result<std::vector<LogEntry>> read_divers(const QSqlDatabase& database, SessionRow row) {
    auto divers = Statement(database, u"SELECT guest_id, start_pressure_bar, end_pressure_bar, "
                                      "duration_min, ears_troubled, note FROM log_divers "
                                      "WHERE session_id = ? ORDER BY position"_qs)
                      .all(read_diver, row.value);
    if (!divers) return divers;
    Statement select(database, u"SELECT time_min, depth_m FROM log_samples "
                               "WHERE session_id = ? AND guest_id = ? ORDER BY position"_qs);
    for (LogEntry& diver : *divers) {
        auto samples = select.all(read_sample, row.value, diver.guest);
        if (!samples) return samples.error();
        diver.samples = std::move(*samples);
    }
    return divers;
}

}  // namespace

Result<Done> write_log(const QSqlDatabase& database, SessionRow row,
                       const std::optional<DiveLog>& log) {
    if (!log) {
        return Statement(database, u"DELETE FROM logs WHERE session_id = ?"_qs).run(row.value);
    }
    const Result<std::optional<DiveLog>> stored = read_log(database, row);
    if (!stored) return stored.error();
    const DiveLog before = stored->value_or(DiveLog{});
    return in_turn([&] { return write_head(database, row, *log); },
                   [&] { return remove_others(database, row, before, *log); },
                   [&] { return write_divers(database, row, *log); },
                   [&] { return write_samples(database, row, before, *log); });
}

Result<std::optional<DiveLog>> read_log(const QSqlDatabase& database, SessionRow row) {
    const auto read_head = [](Row& found) {
        DiveLog log;
        log.time_in = found.time_of_day();
        log.time_out = found.time_of_day();
        log.heads_in = found.small_number();
        log.heads_out = found.small_number();
        log.note = found.text();
        return log;
    };
    auto log = Statement(database, u"SELECT time_in_min, time_out_min, heads_in, heads_out, note "
                                   "FROM logs WHERE session_id = ?"_qs)
                   .first(read_head, row.value);
    if (!log || !*log) return log;
    auto divers = read_divers(database, row);
    if (!divers) return divers.error();
    (*log)->divers = std::move(*divers);
    return log;
}

}  // namespace leadline
