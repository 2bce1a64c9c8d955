// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QWidget;

namespace leadline {

/// What to do with changes that could not be saved.
enum class UnsavedAnswer { try_again, write_file, give_up, stay };

/// Asks before a session with unsaved changes is left. Escape and Enter lose nothing.
/// @param reason  why they could not be saved
UnsavedAnswer ask_about_unsaved(const QString& reason, QWidget* parent);

}  // namespace leadline
