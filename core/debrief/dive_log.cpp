// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/debrief/dive_log.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/physics/number_text.h"
#include "core/planning/text_length.h"

namespace leadline {
namespace {

std::string diver_place(std::size_t index, const std::string& field) {
    return "/log/divers/" + std::to_string(index) + "/" + field;
}

Error range_error(const std::string& place, double value, const std::string& allowed) {
    return {ErrorCode::out_of_range, place, number_text(value), allowed};
}

constexpr std::size_t longest_note = 2000;  // as in the session file's schema

Error note_error(const std::string& place, const std::string& note) {
    return {ErrorCode::bad_text, place, note, "0 to 2000 characters"};
}

Result<Done> check_samples(const LogEntry& diver, std::size_t index) {
    double last = -1.0;
    for (std::size_t i = 0; i < diver.samples.size(); ++i) {
        const double time = diver.samples[i].time.value();
        const double depth = diver.samples[i].depth.meters().value();
        const std::string place = diver_place(index, "samples/" + std::to_string(i));
        if (!(time >= 0.0 && time <= longest_profile.value())) {
            return range_error(place + "/0", time, "0 to 240");
        }
        if (!(depth >= 0.0 && depth <= deepest_profile.meters().value())) {
            return range_error(place + "/1", depth, "0 to 60");
        }
        if (time <= last) {
            return Error{ErrorCode::time_not_increasing, place + "/0", number_text(time),
                         number_text(last)};
        }
        last = time;
    }
    return Done{};
}

/// The most that a gauge in the water can show: a cylinder filled to its working pressure in the cold
/// (15 C, or the colder temperature it was filled at) reads more in warm water. Rounded up to the
/// next whole bar, as gauges are read. Without a cylinder on record, the highest of any kind.
Bars highest_reading(const Guest& guest, const Session& session) {
    constexpr Bars without_cylinder{350.0};
    constexpr Kelvins rated_at{288.15};
    constexpr Pascals atmosphere{101325.0};
    const CylinderType* type =
        guest.kit.cylinder ? find_cylinder_type(guest.kit.cylinder->type) : nullptr;
    if (type == nullptr) return without_cylinder;
    const Kelvins filled_at = std::min(rated_at, guest.kit.cylinder->fill_temperature);
    const Moles full = content_at_gauge(*type, type->working_pressure, filled_at, atmosphere);
    const Kelvins water = std::max(rated_at, session.conditions.water_temperature);
    return Bars(std::ceil(gauge_pressure(*type, full, water, atmosphere).value()));
}

Result<Done> check_diver(const LogEntry& diver, std::size_t index, const Session& session) {
    const Guest* guest = find_guest(session, diver.guest);
    if (guest == nullptr) {
        return Error{ErrorCode::unknown_reference, diver_place(index, "guest"), diver.guest.text,
                     ""};
    }
    const double ceiling = highest_reading(*guest, session).value();
    const double start = diver.start_pressure.value();
    const double end = diver.end_pressure.value();
    if (!(start >= 0.0)) {
        return range_error(diver_place(index, "start_pressure_bar"), start,
                           "0 to " + number_text(ceiling));
    }
    if (start > ceiling) {
        return Error{ErrorCode::overfilled_cylinder, diver_place(index, "start_pressure_bar"),
                     number_text(start), number_text(ceiling)};
    }
    if (!(end >= 0.0)) {
        return range_error(diver_place(index, "end_pressure_bar"), end,
                           "0 to " + number_text(start));
    }
    if (end > start) {
        return Error{ErrorCode::ends_at_higher_pressure, diver_place(index, "end_pressure_bar"),
                     number_text(end), number_text(start)};
    }
    const double minutes = diver.duration.value();
    if (!(minutes >= 0.0 && minutes <= longest_profile.value())) {
        return range_error(diver_place(index, "duration_min"), minutes, "0 to 240");
    }
    if (character_count(diver.note) > longest_note) {
        return note_error(diver_place(index, "note"), diver.note);
    }
    return check_samples(diver, index);
}

}  // namespace

const LogEntry* find_log(const DiveLog& log, const GuestId& id) {
    const auto found = std::find_if(log.divers.begin(), log.divers.end(),
                                    [&](const LogEntry& diver) { return diver.guest == id; });
    return found == log.divers.end() ? nullptr : &*found;
}

Result<Done> check(const DiveLog& log, const Session& session) {
    const int in = log.time_in.minutes_after_midnight;
    const int out = log.time_out.minutes_after_midnight;
    if (in < 0 || in > 1439) return range_error("/log/time_in", in, "00:00 to 23:59");
    if (out < 0 || out > 1439) return range_error("/log/time_out", out, "00:00 to 23:59");
    if (out < in) {
        return Error{ErrorCode::ends_before_start, "/log/time_out", to_text(log.time_out),
                     to_text(log.time_in)};
    }
    if (log.heads_in < 0 || log.heads_in > 500) {
        return range_error("/log/heads_in", log.heads_in, "0 to 500");
    }
    if (log.heads_out < 0 || log.heads_out > 500) {
        return range_error("/log/heads_out", log.heads_out, "0 to 500");
    }
    if (character_count(log.note) > longest_note) return note_error("/log/note", log.note);
    std::set<GuestId> seen;
    for (std::size_t i = 0; i < log.divers.size(); ++i) {
        if (const Result<Done> checked = check_diver(log.divers[i], i, session); !checked) {
            return checked;
        }
        if (!seen.insert(log.divers[i].guest).second) {
            return Error{ErrorCode::duplicate_id, diver_place(i, "guest"),
                         log.divers[i].guest.text, ""};
        }
    }
    return Done{};
}

}  // namespace leadline
