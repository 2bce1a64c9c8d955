// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

namespace leadline {

/// A title or a question of the health questions (core/planning/screening.h) in the window's
/// language. What no translation has is given in English, as it stands in the file.
QString health_question(const std::string& english);

/// The texts that translators are handed; a test compares them with the file of the questions.
std::vector<std::string> translated_health_texts();

}  // namespace leadline
