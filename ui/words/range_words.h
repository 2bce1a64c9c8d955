// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

namespace leadline {

/// A number as it stands in an Error, "0.5" or "400.5 K", with the decimal sign of the default
/// locale; other texts, dates and times among them, as they are.
QString number_words(const QString& number);

/// What an error says is allowed, "0.1 to 60" or "200 to 350 K", with the word between the ends of a
/// range in the language of the window and its decimal sign in the numbers; a number alone as
/// number_words() says it; other texts as they are.
QString range_words(const std::string& allowed);

}  // namespace leadline
