// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/debrief/dive_log.h"
#include "core/physics/result.h"
#include "core/planning/session.h"

namespace leadline {

/// What a session file holds.
struct SessionFile {
    Session session;
    std::optional<DiveLog> log;
    friend bool operator==(const SessionFile&, const SessionFile&) = default;
};

/// Version of the session file written, and the newest that can be read.
inline constexpr int session_file_version = 1;

/// Reads a session: JSON, then the schema, then check(session) and check(log).
///
/// @param json         the file's text, at most `largest_text_file` bytes, nested at most 32 deep
/// @param schema_json  text of resources/schema/session.schema.json
/// @returns the session and its log, or the first thing wrong with its place as a JSON pointer
///          ("/guests/2/birth_date") or, when it is no JSON, as "line 3, column 7"
Result<SessionFile> read_session(std::string_view json, std::string_view schema_json);

/// The session as JSON, two spaces of indentation, keys in the schema's order, one depth sample a
/// line. read_session() of it gives the same values back, but for three things: numbers lose the
/// noise of arithmetic beyond their 12th digit (18.000000000000004 is written 18), control
/// characters become spaces (line breaks stay in notes and in the emergency plan), and bytes that
/// are no UTF-8 become U+FFFD. That holds for every session that check() lets pass and whose texts
/// are no longer than the schema allows.
std::string write_session(const SessionFile& file);

}  // namespace leadline
