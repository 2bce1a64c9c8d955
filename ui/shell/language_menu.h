// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>

class QMenu;

namespace leadline {

class RecordKeeper;

/// Where the records keep the tag of the language chosen; empty: that of the system.
inline constexpr char language_setting[] = "language";

/// Adds a menu with the languages of the window under their own names. A choice is kept in the
/// records and counts from the next start: `say` is handed a sentence that tells so. Without
/// records nothing can be kept, and the menu cannot be opened.
void add_language_menu(QMenu& menu, RecordKeeper& keeper, std::function<void(const QString&)> say);

}  // namespace leadline
