// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

namespace leadline {

/// The title of a set of rules (core/planning/rules.h) in the window's language. Only that of the
/// house rules is translated: the others are names of documents, or what the centre typed.
QString rule_set_title(const std::string& title);
/// Where a value comes from, as the set gives it. Names of documents stay as they are; "common
/// practice, no source", with which a source may begin, is said in the window's language.
QString rule_source(const std::string& source);

}  // namespace leadline
