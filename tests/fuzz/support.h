// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace leadline::fuzz {

/// A file of the source tree, read once: "resources/schema/session.schema.json". Ends the program
/// when it cannot be read.
const std::string& source_file(const std::string& path);

}  // namespace leadline::fuzz
