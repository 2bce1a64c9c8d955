// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace leadline::fuzz {

// What a fuzzer feeds with bytes, and what the corpus is replayed through in every build. Each
// reads input from a place that is not trusted, and ends the program where something holds that
// must not: the fuzzer then keeps the input, and the test fails. A further reader gets a function
// here, a file of its own, a line in CMakeLists.txt and replay_test.cpp, and a corpus folder.

/// A session file: read or refused; what was read can be planned, and written and read again.
void session_file(std::string_view bytes);
/// A rule file: read or refused with a place.
void rule_file(std::string_view bytes);
/// A booking list: read or refused; its preview holds only guests a session takes, and the guests
/// written as CSV come back.
void booking_list(std::string_view bytes);

/// Ends the program, so that both a fuzzer and a test see it.
void must(bool holds, const char* what);

}  // namespace leadline::fuzz
