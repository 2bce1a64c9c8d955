// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/guest_words/guest_language.h"

namespace leadline {

/// The words of the guest screen, page by page.
enum class ScreenWord {
    welcome,  ///< "Welcome, %1"
};

QString screen_word(ScreenWord word, const GuestTongue& tongue);

}  // namespace leadline
