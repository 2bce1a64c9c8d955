// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

namespace leadline {

/// The title of a set of rules (core/planning/rules.h) in the window's language. Those that come
/// with the program are translated; what the centre typed stays.
QString rule_set_title(const std::string& title);
/// The titles that rule_set_title() translates.
std::vector<std::string> translated_rule_titles();
/// Where a value comes from, as the set gives it. Names of documents stay as they are, in quotation
/// marks where the language is not theirs; "common practice, no source", with which a source may
/// begin, is said in the window's language.
QString rule_source(const std::string& source);

}  // namespace leadline
