// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

namespace leadline {

/// What an error says is allowed, "0 to 60", with the word between the ends of a range in the
/// language of the window; other texts as they are.
QString range_words(const std::string& allowed);

}  // namespace leadline
