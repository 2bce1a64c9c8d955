// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>

namespace leadline {

/// A guest's name as it is shown: that which a removed guest leaves behind is said in the window's
/// language, what is stored stays.
QString guest_name(const std::string& name);

}  // namespace leadline
