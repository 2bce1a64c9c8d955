// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/planning/session.h"

namespace leadline {

/// A depth read during the dive.
struct DepthSample {
    Minutes time{};  ///< after this diver's descent began
    Depth depth{};
    friend bool operator==(const DepthSample& a, const DepthSample& b) {
        return a.time.value() == b.time.value() && a.depth == b.depth;
    }
};

/// What happened to one guest.
struct LogEntry {
    GuestId guest;
    Bars start_pressure{};  ///< gauge, read in the water or with the cylinder at water temperature
    Bars end_pressure{};
    Minutes duration{};     ///< in the water breathing from the cylinder
    std::vector<DepthSample> samples;  ///< may be empty; then the group's or the plan's depth serves
    bool ears_troubled = false;
    std::string note;
    friend bool operator==(const LogEntry&, const LogEntry&) = default;
};

/// What happened: times, head count and one entry a guest.
struct DiveLog {
    TimeOfDay time_in;
    TimeOfDay time_out;
    int heads_in = 0;
    int heads_out = 0;
    std::vector<LogEntry> divers;
    std::string note;
    friend bool operator==(const DiveLog&, const DiveLog&) = default;
};

const LogEntry* find_log(const DiveLog& log, const GuestId& id);

/// Checks a log against its session: every guest known and named once; end pressure not above start
/// pressure; start not over what a cylinder at its working pressure reads in water so warm; duration
/// 0 to 240 min; sample times increasing, depths 0 to 60 m; the log does not end before it starts.
/// @returns Done, or the first error, its place a JSON pointer under "log"
Result<Done> check(const DiveLog& log, const Session& session);

}  // namespace leadline
